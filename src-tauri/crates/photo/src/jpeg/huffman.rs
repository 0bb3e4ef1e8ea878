//! The variable-length codes of a JPEG's scan data.

use super::bits::Bits;

/// How many bits the quick table of a Huffman code looks at.
const QUICK: u32 = 11;

/// How many bits the table for stepping over coefficients looks at.
const AHEAD: u32 = 13;
const SIGHTS: usize = 1 << AHEAD;

/// Says that only zeros follow in this block.
const REST: u16 = 128;

/// What a coefficient's code and symbol mean for stepping over it: bits of the code and its value
/// times 256, plus the places it fills or [`REST`]; 0 where it is no such code.
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
    /// By the next bits, read as coefficients to step over: as [`places`], of as many as they tell.
    many: Box<[u16; SIGHTS]>,
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
            many: Box::new([0; SIGHTS]),
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
        for bits in 0..SIGHTS {
            table.many[bits] = table.stepped(bits);
        }
        Some(table)
    }

    /// The entry of `many` for these bits.
    fn stepped(&self, bits: usize) -> u16 {
        let (mut used, mut filled) = (0_u32, 0_u16);
        while used < AHEAD && filled < 64 {
            let next = bits << used & (SIGHTS - 1);
            let code = self.quick[next >> (AHEAD - QUICK)];
            // The code must lie wholly in the bits that are known; its value need not.
            if code == 0 || used + u32::from(code >> 8) > AHEAD {
                break;
            }
            let step = places(code);
            if step == 0 {
                break;
            }
            used += u32::from(step >> 8);
            filled += step & 127;
            if step & REST != 0 {
                filled |= REST;
                break;
            }
        }
        u16::try_from(used).unwrap_or(0) << 8 | filled
    }

    /// Steps over the 63 coefficients that follow a block's first (T.81 F.2.2.2).
    #[inline]
    pub(super) fn step_over(&self, bits: &mut Bits<'_>) -> Option<()> {
        let mut place = 1_u16;
        loop {
            bits.fill();
            let mut entry = self.many[bits.peek(AHEAD) as usize & (SIGHTS - 1)];
            // Near its end the block may be full before all of the entry's codes, which then are
            // those of what follows it: they are taken one by one.
            if entry == 0 || place + (entry & 127) + (entry & REST) / REST > 64 {
                entry = places(1 << 8 | u16::from(self.symbol(bits)?));
                if entry == 0 {
                    return None;
                }
                entry -= 1 << 8;
            }
            bits.skip(u32::from(entry >> 8));
            place += entry & 127;
            if entry & REST != 0 || place == 64 {
                return Some(());
            }
            if place > 64 {
                return None;
            }
        }
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
