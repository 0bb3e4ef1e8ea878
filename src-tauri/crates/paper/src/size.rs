//! The sizes of a label and of the paper in the printer.

use message::{Argument, Refusal, Unit, say};
use serde::Deserialize;

/// The size of a label.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Size {
    /// Across, in mm.
    pub width_mm: f64,
    /// Down, in mm.
    pub height_mm: f64,
}

impl Size {
    pub(crate) const TALLEST_MM: f64 = 280.0;

    /// A size between 25 x 15 mm and 200 x 280 mm.
    ///
    /// # Errors
    /// A size outside that range.
    pub fn new(width_mm: f64, height_mm: f64) -> Result<Self, Refusal> {
        if !(25.0..=200.0).contains(&width_mm) {
            let message = say!("label-width", width = mm(width_mm));
            return Err(Refusal::new("label.width_mm", message));
        }
        if !(15.0..=Self::TALLEST_MM).contains(&height_mm) {
            let message = say!("label-height", height = mm(height_mm));
            return Err(Refusal::new("label.height_mm", message));
        }
        Ok(Self {
            width_mm,
            height_mm,
        })
    }

    pub(crate) fn said(self) -> Argument {
        Argument::message(say!(
            "label-size",
            width = Argument::number(self.width_mm),
            height = Argument::number(self.height_mm)
        ))
    }
}

pub(crate) fn mm(length_mm: f64) -> Argument {
    Argument::amount(length_mm, Unit::Millimetre)
}

/// The paper in the printer.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum Paper {
    /// 210 x 297 mm.
    A4,
    /// US Letter, 8.5 x 11 in.
    Letter,
}

impl Paper {
    /// Width and height in mm.
    #[must_use]
    pub const fn size_mm(self) -> (f64, f64) {
        match self {
            Self::A4 => (210.0, 297.0),
            Self::Letter => (215.9, 279.4),
        }
    }

    pub(crate) fn said(self) -> Argument {
        match self {
            Self::A4 => Argument::own("A4"),
            Self::Letter => Argument::message(say!("paper-letter")),
        }
    }
}
