//! Requests and replies of what leaves the book as a file.

use serde::{Deserialize, Serialize};

use crate::jar::Purpose;

/// The paper in the printer.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum Paper {
    A4,
    Letter,
}

/// The paper that labels are printed on: a sheet of many, or one the size of the label itself.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum LabelPaper {
    A4,
    Letter,
    Label,
}

impl LabelPaper {
    pub(super) fn sheet(self) -> Option<::label::Paper> {
        match self {
            Self::A4 => Some(::label::Paper::A4),
            Self::Letter => Some(::label::Paper::Letter),
            Self::Label => None,
        }
    }
}

/// Width and height of a label, 25 to 200 by 15 to 280 mm.
#[derive(Debug, Clone, Copy, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct LabelSize {
    pub width_mm: f64,
    pub height_mm: f64,
}

/// One label as a picture. A gift's label leaves private notes out and says what is in it.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct DrawLabel {
    pub bottle: Option<String>,
    pub jar: Option<String>,
    pub label: LabelSize,
    pub gift: bool,
    /// Whether the alcohol in the whole bottle is printed.
    pub ethanol: bool,
    pub use_for: Option<Purpose>,
}

/// Labels on paper, one for each bottle and jar.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct PrintLabels {
    pub bottles: Option<Vec<String>>,
    pub jars: Option<Vec<String>>,
    pub paper: LabelPaper,
    pub label: LabelSize,
    pub gift: bool,
    pub ethanol: bool,
    pub use_for: Option<Purpose>,
    /// Places of the first sheet that are used already.
    pub skip: Option<u32>,
}

/// How many labels of a size a sheet takes.
#[derive(Debug, Clone, Copy, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct PerSheet {
    pub a4: u32,
    pub letter: u32,
}

/// The answer to [`DrawLabel`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct LabelDrawn {
    pub svg: String,
    /// What was left out, and what is not written down.
    pub remarks: Vec<String>,
    /// What it may be labelled for.
    pub uses: Vec<Purpose>,
    /// What it is labelled for.
    pub use_for: Purpose,
    pub per_sheet: PerSheet,
}

/// A file for the maker to keep.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct PrintedFile {
    pub file_name: String,
    pub media_type: String,
    pub base64: String,
    pub remarks: Vec<String>,
}

/// The chain from a bottle or a jar back to its beds, on paper.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct PrintTrace {
    pub bottle: Option<String>,
    pub jar: Option<String>,
    pub paper: Paper,
}

/// The season's book, on paper.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct PrintSeason {
    pub year: i32,
    pub paper: Paper,
}
