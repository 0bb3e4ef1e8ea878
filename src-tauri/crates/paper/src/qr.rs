//! The QR code as a grid of dark and light modules.

use qrcode::{Color, EcLevel, QrCode};

/// A square grid, row by row.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Modules {
    pub(crate) side: usize,
    pub(crate) dark: Vec<bool>,
}

/// Encodes a text with correction level M, which still reads with a drop or a scratch on the label (15 % of the code).
///
/// Nothing where the text is too long for any code that fits on a label.
pub(crate) fn encode(text: &str) -> Option<Modules> {
    let code = QrCode::with_error_correction_level(text, EcLevel::M).ok()?;
    let dark = code
        .to_colors()
        .into_iter()
        .map(|color| color == Color::Dark)
        .collect();
    Some(Modules {
        side: code.width(),
        dark,
    })
}

impl Modules {
    /// Dark stretches as row, first column and length: a stretch drawn as one box shows no seams.
    pub(crate) fn runs(&self) -> Vec<(usize, usize, usize)> {
        let mut runs: Vec<(usize, usize, usize)> = Vec::new();
        for (at, _) in self
            .dark
            .iter()
            .enumerate()
            .filter(|(_, is_dark)| **is_dark)
        {
            let (row, column) = (at / self.side, at % self.side);
            match runs.last_mut() {
                Some((r, first, length)) if *r == row && *first + *length == column => *length += 1,
                _ => runs.push((row, column, 1)),
            }
        }
        runs
    }
}
