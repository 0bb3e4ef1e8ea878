//! A herb that no table has, with what its maker knows of it.

use message::{Argument, Message, say};
use physics::{Interval, drying::DryMatterPrior};
use serde::Serialize;

use super::drying::{WaterPrior, fresh_per_dry, water, with_part};
use crate::{
    cautions::{Caution, Moment, Severity},
    note::{Note, Status},
};

/// What a maker wrote down of a herb of their own; nothing for a herb of the tables.
#[derive(Debug, Clone, Default, PartialEq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(rename = "OwnFigures"))]
pub struct OwnHerb {
    /// Water in the fresh plant, % of its weight.
    pub water_wet_percent: Option<Interval>,
    /// The strength it wants, % vol.
    pub strength_percent_vol: Option<f64>,
    /// What to beware of.
    pub caution: Option<String>,
    /// What it is mistaken for.
    pub look_alikes: Option<String>,
}

impl OwnHerb {
    /// What is known beforehand of the water in a part: the maker's own figure, else that of the tables.
    pub fn water(&self, herb: &str, part: &str) -> WaterPrior {
        let known = self
            .water_wet_percent
            .and_then(|percent| Some((percent, DryMatterPrior::of_own_water(percent).ok()?)));
        let Some((percent, prior)) = known else {
            return water(herb, part);
        };
        // The maker reads what was typed; the belief behind it is even in its logarithm.
        let dry = percent.map_monotone(|percent| 1.0 - percent / 100.0);
        WaterPrior {
            part: part.to_owned(),
            ln_mean: prior.mean(),
            ln_sd: prior.sd(),
            water_wet_percent: percent,
            ratio_fresh_per_dry: fresh_per_dry(dry),
            source: None,
            status: Status::Own,
            reason: say!(
                "water-of-own-herb",
                plant = with_part(Argument::own(herb), part)
            ),
            is_part_default: false,
        }
    }

    /// The strength it wants with the reason.
    pub(crate) fn strength(&self) -> Option<(f64, Note)> {
        let note = || Note::new("strength", say!("strength-of-own-herb"), "", Status::Own);
        self.strength_percent_vol.map(|strength| (strength, note()))
    }

    /// What the maker wants to be warned of, in the maker's own words.
    pub fn caution(&self) -> Option<Caution> {
        let text = Message::own(self.caution.as_deref()?);
        Some(Caution {
            code: "own-caution".to_owned(),
            severity: Severity::Warn,
            herb: None,
            at: vec![Moment::Pick, Moment::Make, Moment::Use],
            text,
            source: None,
            status: Status::Own,
        })
    }
}
