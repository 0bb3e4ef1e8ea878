//! The variable-length codes of a JPEG's scan data.

use super::bits::Bits;

/// How many bits the quick table of a Huffman code looks at.
const QUICK: u32 = 11;

/// More places than a block has: the code that says that only zeros follow.
const REST: u16 = 128;

/// What a coefficient's code and symbol mean for stepping over it, as in [`Table::once`].
fn places(entry: u16) -> u16 {
    let (length, run, size) = (entry >> 8, entry >> 4 & 15, entry & 15);
    match (length, run, size) {
        (0, ..) => 0,
        (_, 0, 0) => length << 8 | REST,
        (_, 15, 0) => length << 8 | 16,
        (_, _, 0) => 0,
        _ => (length + size) << 8 | (run + 1),
    }
}

/// A Huffman code (T.81 annex C and F.2.2.3).
pub(super) struct Table {
    /// By the next bits: length of the code times 256, plus the symbol; 0 for a longer code.
    quick: Vec<u16>,
    /// By the next bits, read as coefficients to step over: bits of one code and its value times 256,
    /// plus the places it fills; 0 where that cannot be said. In `twice` of as many as two.
    once: Vec<u16>,
    twice: Vec<u16>,
    /// By length: the first code of that length beyond the last, left-aligned in 16 bits.
    beyond: [u32; 17],
    /// By length: index of a symbol minus its code.
    offset: [i32; 17],
    symbols: Vec<u8>,
}

impl Table {
    pub(super) fn new(counts: &[u8], symbols: Vec<u8>) -> Option<Self> {
        let mut table = Self {
            quick: vec![0; 1 << QUICK],
            once: Vec::new(),
            twice: Vec::new(),
            beyond: [0; 17],
            offset: [0; 17],
            symbols,
        };
        let (mut code, mut index) = (0_u32, 0_usize);
        for length in 1..=16_u32 {
            let count = usize::from(*counts.get(length as usize - 1)?);
            let slot = length as usize;
            table.offset[slot] = i32::try_from(index).ok()? - i32::try_from(code).ok()?;
            for _ in 0..count {
                let symbol = *table.symbols.get(index)?;
                if code >= 1 << length {
                    return None;
                }
                if length <= QUICK {
                    let first = (code << (QUICK - length)) as usize;
                    let entry = u16::try_from(length).ok()? << 8 | u16::from(symbol);
                    table
                        .quick
                        .get_mut(first..first + (1 << (QUICK - length)))?
                        .fill(entry);
                }
                code += 1;
                index += 1;
            }
            table.beyond[slot] = code << (16 - length);
            code <<= 1;
        }
        table.once = table.quick.iter().map(|entry| places(*entry)).collect();
        table.twice = (0..1 << QUICK).map(|bits| table.two(bits)).collect();
        Some(table)
    }

    /// The entry of `twice` for these bits.
    fn two(&self, bits: usize) -> u16 {
        let first = self.once[bits];
        let (used, filled) = (u32::from(first >> 8), first & 0xFF);
        if first == 0 || filled >= REST || used >= QUICK {
            return first;
        }
        let next = bits << used & ((1 << QUICK) - 1);
        let length = u32::from(self.quick[next] >> 8);
        let second = self.once[next];
        // The second code must lie wholly in the bits that are known; its value need not.
        if second == 0 || used + length > QUICK {
            first
        } else {
            first + second
        }
    }

    /// Steps over the 63 coefficients that follow a block's first (T.81 F.2.2.2).
    #[inline]
    pub(super) fn step_over(&self, bits: &mut Bits<'_>) -> Option<()> {
        let mut place = 1_u16;
        while place < 64 {
            bits.fill();
            let ahead = bits.peek(QUICK) as usize & ((1 << QUICK) - 1);
            // One code fills at most 16 places, so that below 48 the second is still of this block.
            let entry = if place < 48 {
                self.twice[ahead]
            } else {
                self.once[ahead]
            };
            if entry == 0 {
                let entry = places(1 << 8 | u16::from(self.symbol(bits)?));
                if entry == 0 {
                    return None;
                }
                bits.skip(u32::from(entry >> 8) - 1);
                place += entry & 0xFF;
            } else {
                bits.skip(u32::from(entry >> 8));
                place += entry & 0xFF;
            }
        }
        (place == 64 || place >= REST).then_some(())
    }

    /// The next symbol, or `None` where the bits are no code.
    #[inline]
    pub(super) fn symbol(&self, bits: &mut Bits<'_>) -> Option<u8> {
        let entry = self.quick[bits.peek(QUICK) as usize & ((1 << QUICK) - 1)];
        if entry != 0 {
            bits.skip(u32::from(entry >> 8));
            return Some((entry & 0xFF) as u8);
        }
        let ahead = bits.peek(16);
        for length in QUICK + 1..=16 {
            if ahead < self.beyond[length as usize] {
                bits.skip(length);
                let code = i32::try_from(ahead >> (16 - length)).ok()?;
                let index = usize::try_from(code + self.offset[length as usize]).ok()?;
                return self.symbols.get(index).copied();
            }
        }
        None
    }
}
