//! A writer that works on another thread.

use std::io::{self, Write};
use std::sync::mpsc::{Receiver, SyncSender, sync_channel};
use std::thread::{Builder, JoinHandle};

const PIECE: usize = 1 << 20;
/// Pieces that may wait for the writer.
const WAITING: usize = 4;

/// Gathers what is written into pieces and hands them to a thread that writes them: reading and
/// hashing one piece goes on beside the writing of the last. It holds a few pieces at most.
///
/// A failure to write shows at a later write, or at [`ThreadWriter::finish`].
pub(crate) struct ThreadWriter<W> {
    piece: Vec<u8>,
    full: Option<SyncSender<Vec<u8>>>,
    empty: Receiver<Vec<u8>>,
    thread: Option<JoinHandle<io::Result<W>>>,
}

impl<W: Write + Send + 'static> ThreadWriter<W> {
    pub(crate) fn new(mut out: W) -> io::Result<Self> {
        let (full, filled) = sync_channel::<Vec<u8>>(WAITING);
        let (emptied, empty) = sync_channel(WAITING);
        let thread = Builder::new().spawn(move || {
            for mut piece in filled {
                out.write_all(&piece)?;
                piece.clear();
                // One too many is let go.
                let _ = emptied.try_send(piece);
            }
            Ok(out)
        })?;
        Ok(Self {
            piece: Vec::with_capacity(PIECE),
            full: Some(full),
            empty,
            thread: Some(thread),
        })
    }

    /// Waits until all is written; returns the writer.
    pub(crate) fn finish(mut self) -> io::Result<W> {
        self.hand_over()?;
        self.ended()
    }
}

impl<W> ThreadWriter<W> {
    fn hand_over(&mut self) -> io::Result<()> {
        let next = self.empty.try_recv();
        let next = next.unwrap_or_else(|_| Vec::with_capacity(PIECE));
        let piece = std::mem::replace(&mut self.piece, next);
        match self.full.as_ref().map(|full| full.send(piece)) {
            Some(Ok(())) => Ok(()),
            _ => match self.ended() {
                Err(why) => Err(why),
                Ok(_) => Err(broken_off()),
            },
        }
    }

    fn ended(&mut self) -> io::Result<W> {
        self.full = None;
        let thread = self.thread.take().ok_or_else(broken_off)?;
        thread.join().unwrap_or_else(|_| Err(broken_off()))
    }
}

fn broken_off() -> io::Error {
    io::Error::other("the writing broke off")
}

impl<W> Write for ThreadWriter<W> {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        let count = bytes.len().min(PIECE - self.piece.len());
        self.piece.extend_from_slice(&bytes[..count]);
        if self.piece.len() == PIECE {
            self.hand_over()?;
        }
        Ok(count)
    }

    fn flush(&mut self) -> io::Result<()> {
        Ok(())
    }
}

impl<W> Drop for ThreadWriter<W> {
    fn drop(&mut self) {
        // What is dropped is not wanted; the file must be closed before it can be removed.
        let _ = self.ended();
    }
}
