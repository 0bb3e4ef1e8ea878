//! How one device shows the journal.

use serde::{Deserialize, Serialize};

use super::LONGEST_NAME;
use crate::refusal::note;
use crate::{DeviceId, Kept, Noun, Refusal};

/// Units that numbers are shown in.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
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
pub enum Scheme {
    /// As the device.
    #[default]
    System,
    /// Dark on light.
    Light,
    /// Light on dark.
    Dark,
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
}

impl Kept for Setting {
    const NOUN: Noun = Noun::Setting;
    type Id = DeviceId;

    fn check(&self) -> Result<(), Refusal> {
        let line = self.poison_line.as_deref();
        note("maker", "The maker", self.maker.as_deref(), LONGEST_NAME)?;
        note("poison_line", "The poison line", line, LONGEST_NAME)
    }
}
