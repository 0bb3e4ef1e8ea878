//! How one device shows the journal.

use message::say;
use serde::{Deserialize, Serialize};

use super::LONGEST_NAME;
use crate::refusal::note;
use crate::{DeviceId, Kept, Refusal};

/// Units that numbers are shown in.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum Units {
    /// Grams and millilitres.
    #[default]
    Metric,
    /// Ounces, pounds and US fluid ounces.
    Us,
}

/// Light or dark.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum Scheme {
    /// As the device.
    #[default]
    System,
    /// Dark on light.
    Light,
    /// Light on dark.
    Dark,
}

/// Which half of the globe the garden lies in, for the months of picking.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum Hemisphere {
    /// Summer in July.
    #[default]
    North,
    /// Summer in January.
    South,
}

/// How one device shows the journal. Its row is named after the device, so that
/// merging two phones does not turn one's kilograms into pounds.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Setting {
    /// Units.
    #[serde(default)]
    pub units: Units,
    /// Light or dark.
    #[serde(default)]
    pub scheme: Scheme,
    /// Whether the maker read the cautions.
    #[serde(default)]
    pub cautions_seen: bool,
    /// Whether this journal was filled from the demonstration data.
    #[serde(default)]
    pub demo: bool,
    /// Who made it and how to reach them, as labels say it.
    #[serde(default)]
    pub maker: Option<String>,
    /// The number of the poison line, as labels say it.
    #[serde(default)]
    pub poison_line: Option<String>,
    /// Which half of the globe the garden lies in.
    #[serde(default)]
    pub hemisphere: Hemisphere,
}

impl Kept for Setting {
    type Id = DeviceId;

    fn check(&self) -> Result<(), Refusal> {
        let line = self.poison_line.as_deref();
        note(
            "maker",
            say!("what-maker"),
            self.maker.as_deref(),
            LONGEST_NAME,
        )?;
        note("poison_line", say!("what-poison-line"), line, LONGEST_NAME)
    }
}
