//! Backwards from the bottles to what to pick, pour and buy, and when.

use chrono::{DateTime, FixedOffset};
use formulary::compose::PourLine;
use formulary::plan::{self, Buy};
use formulary::{Note, preparations};
use journal::PlantState;
use message::Failure;
use physics::Interval;
use serde::{Deserialize, Serialize};
use store::Reading;

use crate::asked;
use crate::bottle::usage::{self, YearlyUse};
use crate::herb::{Known, herb_name, identity};
use crate::item::{self, StockItem};
use crate::jar::retention;
use crate::jar::shelf::shelf;

/// What does it take to have these bottles by then?
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct PlanBottles {
    pub herb: String,
    pub part: String,
    pub preparation: String,
    pub state: PlantState,
    pub bottles: u32,
    pub bottle_ml: f64,
    pub ready_on: String,
    pub stock: Option<Vec<StockItem>>,
    pub yearly_use_ml: Option<f64>,
    pub gifts: Option<bool>,
    /// A deliberate yes to what the list of poisonous plants asks.
    pub confirmed: Option<bool>,
}

/// The code of the warning that more is planned than a year's use.
pub const MORE_THAN_A_YEAR: &str = "more-than-a-year";

/// The answer to [`PlanBottles`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct BottlePlan {
    pub pick_fresh_g: Interval,
    pub dry_g: Option<Interval>,
    pub pours: Vec<PourLine>,
    pub retained_ml: Interval,
    pub start_on: String,
    pub pick_by: String,
    pub buy: Vec<Buy>,
    pub notes: Vec<Note>,
}

/// What the marc of this herb kept in the maker's own jars, strained as the last of them was.
pub fn own_retention(
    reading: &Reading<'_>,
    wish: &PlanBottles,
) -> Result<Option<physics::Interval>, Failure> {
    let known = Known::asked(reading, &wish.herb);
    let preparation = preparations::find(&wish.preparation, wish.state);
    match (known, preparation) {
        (Ok(known), Some(preparation)) => retention::latest(reading, &known.key, &preparation.key),
        // What is no herb or no preparation the plan itself refuses.
        _ => Ok(None),
    }
}

/// What the maker uses of a preparation of an herb in a year, by what was written down.
pub fn own_use(
    reading: &Reading<'_>,
    now: DateTime<FixedOffset>,
    herb: &str,
    preparation: &str,
) -> Result<Option<YearlyUse>, Failure> {
    let Ok(known) = Known::asked(reading, herb) else {
        return Ok(None);
    };
    let family = |key: &str| {
        preparations::of_key(key).map_or_else(|| key.to_owned(), |one| one.family.clone())
    };
    let wanted = family(preparation);
    usage::yearly_use(reading, now, |jar| {
        let mut herbs = jar.plants.iter().map(|plant| &plant.herb);
        herbs.next() == Some(&known.key)
            && herbs.next().is_none()
            && family(&jar.preparation) == wanted
    })
}

impl PlanBottles {
    /// What the bottles ask for.
    pub fn planned(
        self,
        reading: &Reading<'_>,
        now: DateTime<FixedOffset>,
    ) -> Result<BottlePlan, Failure> {
        let ready_on = asked::date("ready_on", &self.ready_on)?;
        let (wish, own_use) = {
            let stock = match &self.stock {
                Some(stock) => shelf(reading, stock)?,
                // Whatever stands on the shelf need not be bought.
                None => {
                    let supplies = reading.supplies()?;
                    let items: Vec<StockItem> = supplies
                        .iter()
                        .map(|row| StockItem {
                            supply: Some(row.id.to_string()),
                            ..item::as_item(&row.supply.item)
                        })
                        .collect();
                    shelf(reading, &items)?
                }
            };
            let own_retention_ml_per_g = own_retention(reading, &self)?;
            let own_use = match self.yearly_use_ml {
                Some(_) => None,
                None => own_use(reading, now, &self.herb, &self.preparation)?,
            };
            let wish = plan::Wish {
                identity: identity(reading, &self.herb, self.confirmed.unwrap_or(false)),
                herb: herb_name(reading, &self.herb),
                part: self.part,
                preparation: self.preparation,
                state: self.state,
                bottles: self.bottles,
                bottle_ml: self.bottle_ml,
                ready_on,
                own_retention_ml_per_g,
                stock,
                yearly_use_ml: self.yearly_use_ml.or(own_use.as_ref().map(|it| it.ml)),
                gifts: self.gifts.unwrap_or(false),
            };
            (wish, own_use)
        };
        let plan = plan::plan(&wish)?;
        let mut notes: Vec<Note> = plan.notes;
        if let (Some(at), Some(own)) = (
            notes.iter().position(|note| note.code == MORE_THAN_A_YEAR),
            own_use,
        ) {
            notes.insert(at + 1, own.note());
        }
        let pours: Vec<PourLine> = plan.pours.iter().map(|pour| pour.line.clone()).collect();
        Ok(BottlePlan {
            pick_fresh_g: plan.pick_fresh_g,
            dry_g: plan.dry_g,
            buy: plan.buy,
            pours,
            retained_ml: plan.retained_ml,
            start_on: plan.start_on.to_string(),
            pick_by: plan.pick_by.to_string(),
            notes,
        })
    }
}
