//! One weigh-in of a tray.

use chrono::{DateTime, FixedOffset};
use message::{Argument, Unit, say};
use serde::{Deserialize, Serialize};

use crate::refusal::day;
use crate::{Air, Kept, Noun, Refusal, RowRef, Tray, TrayId, WeighingId};

/// One weigh-in.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Weighing {
    /// What was weighed.
    pub tray: TrayId,
    /// When.
    pub at: DateTime<FixedOffset>,
    /// With the tray.
    pub gross_g: f64,
    /// The air around the rack.
    #[serde(default)]
    pub air: Option<Air>,
    /// Whether the maker confirmed a weight that looks wrong.
    #[serde(default)]
    pub odd: bool,
    /// Whether it passed the snap test then: the thickest part broke, a leaf crumbled. An earlier version knew none.
    #[serde(default)]
    pub snap_test: bool,
}

impl Kept for Weighing {
    type Id = WeighingId;

    fn check(&self) -> Result<(), Refusal> {
        day("at", self.at)?;
        super::mass("gross_g", say!("what-weight"), self.gross_g)?;
        self.air.map_or(Ok(()), Air::check)
    }

    fn needs(&self) -> Vec<RowRef> {
        vec![(Noun::Tray, self.tray.to_string())]
    }
}

/// Whether a tray and its weigh-ins agree: none lighter than the empty tray,
/// none before it was laid out.
///
/// # Errors
/// [`Refusal`] naming the weigh-in's field and the accepted range.
pub fn weighings_fit(
    tray: &Tray,
    lightest_gross_g: f64,
    earliest: DateTime<FixedOffset>,
) -> Result<(), Refusal> {
    if lightest_gross_g < tray.tare_g {
        return Err(Refusal::new(
            "gross_g",
            say!(
                "refused-at-least-tare",
                tare = Argument::exact(tray.tare_g, Unit::Gram),
                given = Argument::exact(lightest_gross_g, Unit::Gram),
            ),
        ));
    }
    if earliest < tray.started_at {
        return Err(Refusal::new(
            "at",
            say!(
                "refused-weighed-before",
                day = tray.started_at.date_naive(),
                time = Argument::own(tray.started_at.format("%H:%M").to_string()),
            ),
        ));
    }
    Ok(())
}
