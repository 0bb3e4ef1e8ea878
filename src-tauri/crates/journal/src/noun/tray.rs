//! A drying run, and the dried lot that comes of it.

use chrono::{DateTime, FixedOffset};
use message::{Argument, Unit, say};
use serde::{Deserialize, Serialize};

use crate::refusal::{day, number, one_line, text};
use crate::{
    Amount, Draw, HarvestId, Kept, LotCode, Noun, PlantState, Refusal, RowRef, Source, TrayId,
};

/// The air around the rack.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Air {
    /// Temperature.
    pub temperature_c: f64,
    /// Relative humidity.
    pub relative_humidity_percent: f64,
}

impl Air {
    pub(crate) fn check(self) -> Result<(), Refusal> {
        number(
            "temperature_c",
            say!("what-temperature"),
            self.temperature_c,
            -20.0,
            90.0,
            Unit::Celsius,
        )?;
        number(
            "relative_humidity_percent",
            say!("what-relative-humidity"),
            self.relative_humidity_percent,
            0.0,
            100.0,
            Unit::Percent,
        )
    }
}

/// The end of a run.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct TakenDown {
    /// When.
    pub at: DateTime<FixedOffset>,
    /// Weight with the tray.
    pub gross_g: f64,
    /// Whether it passed the snap test when it came down; an earlier version knew none.
    #[serde(default)]
    pub snap_test: bool,
}

/// The end of a run whose plant never became a dried lot: it went mouldy or wet on the rack, and all of it was thrown
/// away.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Lost {
    /// When.
    pub at: DateTime<FixedOffset>,
    /// Why.
    pub reason: String,
}

/// A little of the lot, dried to constant weight; unless named, the scale shows what the figures show.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(
    feature = "ts",
    derive(ts_rs::TS),
    ts(optional_fields, rename = "PlantSample")
)]
pub struct OvenSample {
    /// Before.
    pub fresh_g: f64,
    /// After.
    pub dry_g: f64,
    /// The step of the scale it was weighed on.
    #[serde(default)]
    pub scale_step_g: Option<f64>,
}

/// Plant that was simmered in water or as its own juice, and strained: the lot is then the liquid in the pot.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Cooked {
    /// The dried lot that was cooked; none where the plant came fresh from the harvest.
    #[serde(default)]
    pub from: Option<TrayId>,
    /// Water that was poured on.
    #[serde(default)]
    pub water_ml: f64,
    /// What a refractometer showed of the strained liquid, % by mass.
    #[serde(default)]
    pub sugar_percent_mass: Option<f64>,
}

/// A drying run of fresh plant from one harvest, or what was cooked of it in a pot.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Tray {
    /// What is written on the bag afterwards.
    pub code: LotCode,
    /// What the maker calls it.
    pub name: String,
    /// Where the plant comes from.
    pub harvest: HarvestId,
    /// Fresh grams laid out; the ledger takes them from the harvest.
    pub fresh_mass_g: f64,
    /// The empty tray.
    pub tare_g: f64,
    /// When it was laid out.
    pub started_at: DateTime<FixedOffset>,
    /// The air at the start.
    #[serde(default)]
    pub air: Option<Air>,
    /// The end of the run; the net weight is the dried lot.
    #[serde(default)]
    pub taken_down: Option<TakenDown>,
    /// The end of the run if it was thrown away; an earlier version knew none.
    #[serde(default)]
    pub lost: Option<Lost>,
    /// Set where it was no drying: the tray is then the pot, and `taken_down` what it weighed strained.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub cooked: Option<Cooked>,
    /// A measured dry weight.
    #[serde(default)]
    pub sample: Option<OvenSample>,
    /// Anything else.
    #[serde(default)]
    pub note: Option<String>,
}

impl Tray {
    /// How it came down as a dried lot; nothing while it is drying, or when it was thrown away. One
    /// phone may take down what another throws away: what went mouldy must not become a lot by that.
    pub fn down(&self) -> Option<TakenDown> {
        self.taken_down.filter(|_| self.lost.is_none())
    }

    /// The state of the plant that came off it.
    pub fn plant_state(&self) -> PlantState {
        if self.cooked.is_some() {
            PlantState::Cooked
        } else {
            PlantState::Dried
        }
    }

    /// Whether the run goes on.
    pub fn is_drying(&self) -> bool {
        self.taken_down.is_none() && self.lost.is_none()
    }

    /// Dried plant that came off the tray; nothing while it is drying, or when it was thrown away.
    pub fn dried(&self) -> Amount {
        self.down().map_or(Amount::ZERO, |end| {
            Amount::of(end.gross_g - self.tare_g).max(Amount::ZERO)
        })
    }
}

impl Kept for Tray {
    type Id = TrayId;

    fn check(&self) -> Result<(), Refusal> {
        super::name(&self.name)?;
        super::mass("mass_g", say!("what-fresh-weight"), self.fresh_mass_g)?;
        super::tare(self.tare_g)?;
        day("started_at", self.started_at)?;
        if let Some(air) = self.air {
            air.check()?;
        }
        if let Some(end) = self.taken_down {
            super::mass("gross_g", say!("what-weight"), end.gross_g)?;
            day("at", end.at)?;
        }
        if let Some(lost) = &self.lost {
            text("reason", say!("what-reason"), &lost.reason, 1000)?;
            day("at", lost.at)?;
        }
        if let Some(cooked) = self.cooked {
            number(
                "water_ml",
                say!("what-water"),
                cooked.water_ml,
                0.0,
                100_000.0,
                Unit::Millilitre,
            )?;
            if let Some(sugar) = cooked.sugar_percent_mass {
                number(
                    "sugar_percent_mass",
                    say!("what-sugar"),
                    sugar,
                    0.0,
                    75.0,
                    Unit::PercentMass,
                )?;
            }
        }
        if let Some(sample) = self.sample {
            super::mass("fresh_g", say!("what-fresh-weight"), sample.fresh_g)?;
            super::mass("dry_g", say!("what-dry-weight"), sample.dry_g)?;
            if sample.dry_g >= sample.fresh_g {
                return Err(Refusal::new(
                    "dry_g",
                    say!(
                        "refused-dry-weight",
                        fresh = Argument::exact(sample.fresh_g, Unit::Gram),
                        given = Argument::exact(sample.dry_g, Unit::Gram),
                    ),
                ));
            }
            if let Some(step) = sample.scale_step_g {
                number(
                    "scale_step_g",
                    say!("what-step-of-the-scale"),
                    step,
                    0.001,
                    50.0,
                    Unit::Gram,
                )?;
            }
        }
        super::remark(self.note.as_deref())
    }

    fn check_typed(&self) -> Result<(), Refusal> {
        one_line("name", &self.name)?;
        if let Some(end) = self.taken_down {
            if end.gross_g <= self.tare_g {
                return Err(Refusal::new(
                    "gross_g",
                    say!(
                        "refused-more-than-tare",
                        tare = Argument::exact(self.tare_g, Unit::Gram),
                        given = Argument::exact(end.gross_g, Unit::Gram),
                    ),
                ));
            }
            if end.at < self.started_at {
                return Err(Refusal::new("at", say!("refused-down-before")));
            }
        }
        if self
            .lost
            .as_ref()
            .is_some_and(|lost| lost.at < self.started_at)
        {
            return Err(Refusal::new("at", say!("refused-thrown-before")));
        }
        Ok(())
    }

    fn draws(&self) -> Vec<Draw> {
        let from = self.cooked.and_then(|cooked| cooked.from);
        vec![Draw {
            from: from.map_or(Source::Harvest(self.harvest), Source::Tray),
            amount: Amount::of(self.fresh_mass_g),
        }]
    }

    fn needs(&self) -> Vec<RowRef> {
        let dried = self.cooked.and_then(|cooked| cooked.from);
        let dried = dried.map(|id| (Noun::Tray, id.to_string()));
        std::iter::once((Noun::Harvest, self.harvest.to_string()))
            .chain(dried)
            .collect()
    }
}

#[cfg(test)]
mod tests {
    use serde_json::{Value, json};

    use super::*;

    /// A tray that was taken down at 40 g, as an earlier version wrote it, and more.
    fn tray(lost: Option<Value>) -> Tray {
        let mut fields = json!({
            "code": "BADO 113", "name": "Sieve", "harvest": uuid::Uuid::nil(),
            "fresh_mass_g": 200.0, "tare_g": 100.0, "started_at": "2026-07-14T09:00:00+02:00",
            "taken_down": {"at": "2026-07-21T09:00:00+02:00", "gross_g": 140.0},
        });
        if let Some(lost) = lost {
            fields["lost"] = lost;
        }
        serde_json::from_value(fields).unwrap()
    }

    #[test]
    fn what_was_thrown_away_is_no_dried_lot_whoever_took_it_down() {
        let kept = tray(None);
        assert_eq!((kept.dried(), kept.is_drying()), (Amount::of(40.0), false));
        let lost = tray(Some(
            json!({"at": "2026-07-20T09:00:00+02:00", "reason": "mould"}),
        ));
        assert_eq!(lost.check(), Ok(()));
        assert_eq!((lost.dried(), lost.down()), (Amount::ZERO, None));
        let drying = Tray {
            taken_down: None,
            ..kept
        };
        assert!(drying.is_drying() && drying.dried() == Amount::ZERO);
    }

    #[test]
    fn it_is_thrown_away_with_a_reason_and_not_before_it_was_laid_out() {
        let field = |at: &str, reason: &str| {
            let lost = tray(Some(json!({"at": at, "reason": reason})));
            lost.check()
                .and_then(|()| lost.check_typed())
                .unwrap_err()
                .field
        };
        assert_eq!(field("2026-07-20T09:00:00+02:00", " "), "reason");
        assert_eq!(field("2026-07-14T08:59:00+02:00", "mould"), "at");
    }
}
