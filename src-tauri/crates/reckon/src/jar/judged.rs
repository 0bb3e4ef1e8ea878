//! A poured jar as the formulary judges it: its liquid, its keeping, its dry matter, its dates.

use chrono::{Days, NaiveDate};
use formulary::cautions::Caution;
use formulary::compose::{self, AsPoured, as_poured};
use formulary::keep;
use formulary::preparations::{self, PlantState as State, Preparation, Solvent};
use journal::{Interval, Item, Jar, PhRead, PlantState, Supply, SupplyId};
use message::{Argument, At, Code, Failure, Message, say};
use physics::quantity::grams;
use store::Reading;

use crate::herb::Known;

/// A jar as the formulary judges it.
pub struct Judged {
    pub preparation: &'static Preparation,
    pub poured: AsPoured,
    /// The herbs of the jar's plants, in their order.
    pub known: Vec<Known>,
    /// What there is to strain: the liquid, and the oil that stands beside it.
    pub liquid_ml: Interval,
    /// The plants without their water.
    pub dry_matter_g: Interval,
    /// Whether fresh plant lies in oil, so that no look and no smell can tell that it went bad.
    pub only_the_date_counts: bool,
    /// What was read of its acid, where acid keeps it.
    read: Option<PhRead>,
}

/// When a bottle should be looked at and when it should be used up.
pub struct BottleDates {
    pub best_before: Option<NaiveDate>,
    pub check_on: Option<NaiveDate>,
}

impl Judged {
    /// Judges a jar by what went into it.
    pub fn of(reading: &Reading<'_>, jar: &Jar) -> Result<Self, Failure> {
        Self::with_ph(reading, jar, None)
    }

    /// As [`Self::of`], and by the pH that was read of what came of it.
    pub fn with_ph(
        reading: &Reading<'_>,
        jar: &Jar,
        read: Option<&PhRead>,
    ) -> Result<Self, Failure> {
        let preparation = preparation_of(jar).ok_or_else(|| {
            let name = Argument::own(&jar.preparation);
            Failure::new(Code::NotFound, say!("jar-preparation-unknown", name))
        })?;
        let (mut known, mut plants) = (Vec::new(), Vec::new());
        let mut dry_matter_g = Interval::exact(0.0);
        for plant in &jar.plants {
            let herb = Known::written(reading, &plant.herb)?;
            plants.push(compose::Plant {
                // Whatever was asked when it was poured was answered then.
                identity: herb.identity(true),
                herb: herb.table_name().to_owned(),
                part: plant.part.clone(),
                state: plant.state,
                mass_g: plant.mass_g,
                moisture_wet_percent: Some(plant.moisture_wet_percent),
                told: None,
            });
            known.push(herb);
            let dry = |moisture: f64| plant.mass_g * (1.0 - moisture / 100.0);
            let moisture = plant.moisture_wet_percent;
            dry_matter_g.low += dry(moisture.high);
            dry_matter_g.value += dry(moisture.value);
            dry_matter_g.high += dry(moisture.low);
        }
        let mut poured = Vec::new();
        let mut oil_ml = 0.0;
        for pour in &jar.pours {
            poured.push((pour.item.ingredient()?, grams(pour.g)));
            if matches!(pour.item, Item::Oil { .. }) {
                oil_ml += pour.ml;
            }
        }
        let read = read.filter(|_| preparation.is_kept_by_acid());
        let poured = as_poured(preparation, &poured, &plants, read.map(|read| read.ph))?;
        let is_oil = preparation.grade == Solvent::Oil;
        let liquid_ml = if is_oil {
            // The herb's water does not come out with the oil.
            Interval::exact(oil_ml)
        } else {
            poured.liquid.volume_ml.map_monotone(|ml| ml + oil_ml)
        };
        Ok(Self {
            preparation,
            poured,
            known,
            liquid_ml,
            dry_matter_g,
            only_the_date_counts: is_oil && is_fresh(jar),
            read: read.copied(),
        })
    }

    /// What to beware of, the gravest first.
    pub fn cautions(&self) -> Vec<Caution> {
        let mut cautions = self.poured.cautions(self.preparation);
        if let Some(read) = &self.read {
            cautions.retain(|note| note.code != keep::IS_MEASURED);
            if !read.ph.is_acid_enough() {
                let told = keep::told(read.ph, read.at.date_naive());
                cautions.insert(0, Caution::of_reading(told));
            }
        }
        cautions
    }

    /// How long it keeps once strained; an oil ages from the day of pouring.
    pub fn shelf_life(&self, reading: &Reading<'_>, jar: &Jar) -> Result<keep::ShelfLife, Failure> {
        let state = if is_fresh(jar) {
            State::Fresh
        } else {
            State::Dried
        };
        Ok(keep::shelf_life(
            self.preparation,
            self.poured.keeping.verdict,
            state,
            oil_best_before(reading, jar)?,
            jar.poured_at.date_naive(),
        ))
    }

    /// The dates of a bottle of this jar, strained on a day.
    pub fn dates(
        &self,
        reading: &Reading<'_>,
        jar: &Jar,
        strained_on: NaiveDate,
    ) -> Result<BottleDates, Failure> {
        self.dates_at(reading, jar, strained_on, None)
    }

    /// As [`Self::dates`]; of an oil they come sooner where it stands warm.
    ///
    /// The formulary counts from the last day of the usual time; a jar strained sooner or later is
    /// counted from the day it was strained on, and what must be used now from the day of pouring.
    pub fn dates_at(
        &self,
        reading: &Reading<'_>,
        jar: &Jar,
        strained_on: NaiveDate,
        stored_at_c: Option<f64>,
    ) -> Result<BottleDates, Failure> {
        let verdict = self.poured.keeping.verdict;
        let poured_on = jar.poured_at.date_naive();
        let is_counted_in_days = self.preparation.use_within_days.is_some();
        let counted_from = if verdict == preparations::Verdict::UseNow && is_counted_in_days {
            poured_on
        } else {
            let usual = self.preparation.steep_days.high.ceil().max(0.0) as u64;
            strained_on
                .checked_sub_days(Days::new(usual))
                .unwrap_or(poured_on)
        };
        let label = oil_best_before(reading, jar)?;
        let oil_lasts_until = match (label, stored_at_c) {
            (Some(label), Some(temperature_c)) => {
                let until = keep::oil_lasts_until(label, poured_on, temperature_c);
                Some(until.at("stored_at_c")?)
            }
            (label, _) => label,
        };
        let dates = keep::dates(self.preparation, verdict, counted_from, oil_lasts_until);
        Ok(BottleDates {
            best_before: dates.stop_using,
            check_on: dates.check_on.filter(|_| !self.only_the_date_counts),
        })
    }
}

/// The earliest date on the labels of the oils that were poured.
fn oil_best_before(reading: &Reading<'_>, jar: &Jar) -> Result<Option<NaiveDate>, Failure> {
    let oils = jar
        .pours
        .iter()
        .filter(|pour| matches!(pour.item, Item::Oil { .. }));
    oil_label(reading, oils.filter_map(|pour| pour.supply))
}

/// The earliest date on the labels of bottles of oil.
pub fn oil_label(
    reading: &Reading<'_>,
    oils: impl IntoIterator<Item = SupplyId>,
) -> Result<Option<NaiveDate>, Failure> {
    let mut earliest: Option<NaiveDate> = None;
    for id in oils {
        let label = reading
            .find::<Supply>(&id)?
            .and_then(|supply| supply.best_before);
        earliest = earliest.into_iter().chain(label).min();
    }
    Ok(earliest)
}

/// Whether any of its plants went in fresh.
pub fn is_fresh(jar: &Jar) -> bool {
    jar.plants
        .iter()
        .any(|plant| plant.state == PlantState::Fresh)
}

/// What the formulary says of the jar's preparation.
pub fn preparation_of(jar: &Jar) -> Option<&'static Preparation> {
    preparation_named(&jar.preparation, is_fresh(jar))
}

/// What a preparation is called as a title; one that the formulary lacks by its key.
pub fn preparation_title(name: &str, is_fresh: bool) -> Message {
    preparation_named(name, is_fresh).map_or_else(|| Message::own(name), Preparation::title)
}

/// What the formulary says of a preparation, with fresh plant in it or without.
pub fn preparation_named(name: &str, is_fresh: bool) -> Option<&'static Preparation> {
    let state = if is_fresh { State::Fresh } else { State::Dried };
    preparations::find(name, state)
}
