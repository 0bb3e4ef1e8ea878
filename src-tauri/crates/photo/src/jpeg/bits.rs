//! The bytes of a JPEG file, and the bits of its scan data without the stuffing.

use std::fs::File;
use std::io::{Read, Seek};

const BUFFER: usize = 64 * 1024;

/// A reader of one file from its beginning. In scan data it stops at the first marker and gives
/// zeros from there on, which [`Bits::overran`] tells.
pub(super) struct Bits<'a> {
    file: &'a File,
    buffer: Vec<u8>,
    at: usize,
    filled: usize,
    /// The next bits, left-aligned; what lies beyond `count` is not yet to be believed.
    ahead: u64,
    count: u32,
    /// How many of `count` were made up after a marker or the end.
    made_up: u32,
    marker: Option<u8>,
    stopped: bool,
}

impl<'a> Bits<'a> {
    pub(super) fn new(mut file: &'a File) -> Option<Self> {
        file.rewind().ok()?;
        let buffer = vec![0; BUFFER];
        Some(Self {
            file,
            buffer,
            at: 0,
            filled: 0,
            ahead: 0,
            count: 0,
            made_up: 0,
            marker: None,
            stopped: false,
        })
    }

    fn byte(&mut self) -> Option<u8> {
        if self.at == self.filled {
            self.at = 0;
            self.filled = self.file.read(&mut self.buffer).ok()?;
        }
        let byte = *self.buffer[..self.filled].get(self.at)?;
        self.at += 1;
        Some(byte)
    }

    pub(super) fn short(&mut self) -> Option<u16> {
        Some(u16::from_be_bytes([self.byte()?, self.byte()?]))
    }

    pub(super) fn take(&mut self, length: usize) -> Option<Vec<u8>> {
        (0..length).map(|_| self.byte()).collect()
    }

    pub(super) fn pass(&mut self, length: usize) -> Option<()> {
        (0..length).try_for_each(|_| self.byte().map(drop))
    }

    /// Makes sure that 32 bits lie ahead.
    #[inline]
    pub(super) fn fill(&mut self) {
        if self.count < 32 {
            self.refill();
        }
    }

    fn refill(&mut self) {
        if !self.stopped
            && let Some(next) = self.buffer[..self.filled].get(self.at..self.at + 8)
            && let Ok(next) = <[u8; 8]>::try_from(next)
        {
            let next = u64::from_be_bytes(next);
            let has_ff = (!next).wrapping_sub(0x0101_0101_0101_0101) & next & 0x8080_8080_8080_8080;
            if has_ff == 0 {
                let bytes = (64 - self.count) / 8;
                self.ahead |= next >> self.count;
                self.at += bytes as usize;
                self.count += bytes * 8;
                return;
            }
        }
        while self.count <= 56 {
            let byte = if self.stopped { None } else { self.data() };
            if byte.is_none() {
                self.stopped = true;
                self.made_up += 8;
            }
            self.ahead |= u64::from(byte.unwrap_or(0)) << (56 - self.count);
            self.count += 8;
        }
    }

    /// The next byte of scan data (T.81 B.1.1.5); `None` at a marker, which is remembered.
    fn data(&mut self) -> Option<u8> {
        let byte = self.byte()?;
        if byte != 0xFF {
            return Some(byte);
        }
        let mut next = self.byte()?;
        if next == 0 {
            return Some(0xFF);
        }
        while next == 0xFF {
            next = self.byte()?;
        }
        self.marker = Some(next);
        None
    }

    #[inline]
    pub(super) fn peek(&self, bits: u32) -> u32 {
        (self.ahead >> (64 - bits)) as u32
    }

    #[inline]
    pub(super) fn skip(&mut self, bits: u32) {
        self.ahead <<= bits;
        self.count = self.count.saturating_sub(bits);
    }

    /// Whether bits were used that the file does not have.
    pub(super) fn overran(&self) -> bool {
        self.count < self.made_up
    }

    /// Leaves the rest of the byte and gives the marker that must come now; reading goes on behind it.
    pub(super) fn marker(&mut self) -> Option<u8> {
        if !self.stopped {
            // Whole bytes still ahead would be data where a marker must stand.
            if self.count >= 8 || self.data().is_some() {
                return None;
            }
        } else if self.count >= self.made_up + 8 {
            return None;
        }
        (self.ahead, self.count, self.made_up, self.stopped) = (0, 0, 0, false);
        self.marker.take()
    }
}
