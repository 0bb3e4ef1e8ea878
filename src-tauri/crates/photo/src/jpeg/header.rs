//! The segments of a JPEG up to its first scan, as far as reading block means needs them.
//!
//! Source: ITU-T T.81 annex B. Anything unusual is `None`: the general decoder takes such files.

use super::bits::Bits;
use super::huffman::Table;

/// How one component (brightness or one of two colours) is coded.
pub(super) struct Component {
    id: u8,
    pub(super) across: usize,
    pub(super) down: usize,
    quantizer: usize,
    pub(super) step: i32,
    pub(super) dc: usize,
    pub(super) ac: usize,
}

/// What the first scan needs.
pub(super) struct Header {
    pub(super) width: usize,
    pub(super) height: usize,
    pub(super) components: Vec<Component>,
    pub(super) restart_interval: u32,
    pub(super) dc: [Option<Table>; 4],
    pub(super) ac: [Option<Table>; 4],
}

/// Reads up to the first byte of the first scan's data.
pub(super) fn read(bits: &mut Bits<'_>) -> Option<Header> {
    if bits.short()? != 0xFFD8 {
        return None;
    }
    let mut header = Header {
        width: 0,
        height: 0,
        components: Vec::new(),
        restart_interval: 0,
        dc: [None, None, None, None],
        ac: [None, None, None, None],
    };
    let mut steps = [0_i32; 4];
    loop {
        let marker = bits.short()?;
        let length = usize::from(bits.short()?).checked_sub(2)?;
        if marker == 0xFFE1 || marker == 0xFFE2 {
            bits.pass(length)?;
            continue;
        }
        let body = bits.take(length)?;
        match marker {
            0xFFDB => quantizers(&body, &mut steps)?,
            0xFFC4 => codes(&body, &mut header)?,
            0xFFC0 | 0xFFC1 if header.components.is_empty() => frame(&body, &mut header)?,
            0xFFDD => header.restart_interval = u32::from(short(&body, 0)?),
            0xFFDA => {
                scan(&body, &mut header)?;
                for component in &mut header.components {
                    component.step = steps[component.quantizer];
                    if component.step == 0 {
                        return None;
                    }
                }
                return Some(header);
            }
            // The colours of an Adobe file may not be the usual ones.
            0xFFEE if body.starts_with(b"Adobe") && body.get(11) != Some(&1) => return None,
            0xFFE0..=0xFFEF | 0xFFFE => {}
            _ => return None,
        }
    }
}

fn short(body: &[u8], at: usize) -> Option<u16> {
    Some(u16::from_be_bytes([*body.get(at)?, *body.get(at + 1)?]))
}

fn quantizers(mut body: &[u8], steps: &mut [i32; 4]) -> Option<()> {
    while let Some(kind) = body.first() {
        let slot = steps.get_mut(usize::from(kind & 15))?;
        let wide = match kind >> 4 {
            0 => false,
            1 => true,
            _ => return None,
        };
        *slot = if wide {
            i32::from(short(body, 1)?)
        } else {
            i32::from(*body.get(1)?)
        };
        body = body.get(if wide { 129 } else { 65 }..)?;
    }
    Some(())
}

fn codes(mut body: &[u8], header: &mut Header) -> Option<()> {
    while let Some(kind) = body.first() {
        let counts = body.get(1..17)?;
        let total = counts
            .iter()
            .map(|count| usize::from(*count))
            .sum::<usize>();
        let table = Table::new(counts, body.get(17..17 + total)?.to_vec())?;
        let tables = match kind >> 4 {
            0 => &mut header.dc,
            1 => &mut header.ac,
            _ => return None,
        };
        *tables.get_mut(usize::from(kind & 15))? = Some(table);
        body = body.get(17 + total..)?;
    }
    Some(())
}

fn frame(body: &[u8], header: &mut Header) -> Option<()> {
    let count = *body.get(5)?;
    if *body.first()? != 8 || !matches!(count, 1 | 3) {
        return None;
    }
    (header.height, header.width) = (usize::from(short(body, 1)?), usize::from(short(body, 3)?));
    for component in body.get(6..)?.chunks_exact(3).take(usize::from(count)) {
        let (across, down) = (
            usize::from(component[1] >> 4),
            usize::from(component[1] & 15),
        );
        let quantizer = usize::from(component[2]);
        if !(1..=2).contains(&across) || !(1..=2).contains(&down) || quantizer > 3 {
            return None;
        }
        // A single component is never interleaved, whatever its sampling says (T.81 A.2.2).
        let (across, down) = if count == 1 { (1, 1) } else { (across, down) };
        header.components.push(Component {
            id: component[0],
            across,
            down,
            quantizer,
            step: 0,
            dc: 0,
            ac: 0,
        });
    }
    // Other names may stand for other colours than brightness, blue and red.
    let names: Vec<u8> = header
        .components
        .iter()
        .map(|component| component.id)
        .collect();
    let usual = count == 1 || names == [1, 2, 3] || names == [0, 1, 2];
    (header.components.len() == usize::from(count)
        && usual
        && header.width > 0
        && header.height > 0)
        .then_some(())
}

fn scan(body: &[u8], header: &mut Header) -> Option<()> {
    let count = usize::from(*body.first()?);
    if count != header.components.len() || body.get(1 + 2 * count..) != Some(&[0, 63, 0]) {
        return None;
    }
    for (component, chosen) in header
        .components
        .iter_mut()
        .zip(body.get(1..)?.chunks_exact(2))
    {
        let (dc, ac) = (usize::from(chosen[1] >> 4), usize::from(chosen[1] & 15));
        if chosen[0] != component.id || header.dc.get(dc)?.is_none() || header.ac.get(ac)?.is_none()
        {
            return None;
        }
        (component.dc, component.ac) = (dc, ac);
    }
    Some(())
}
