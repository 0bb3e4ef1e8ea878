//! `plan.bottles`: backwards from the bottles to what to pick, pour and buy, and when.

use formulary::{plan, preparations};
use serde::{Deserialize, Serialize};
use store::Reading;

use super::advise::{herb_name, identity};
use super::compose::shelf;
use super::proposal::PourLine;
use super::retention;
use super::said::{kind_of, state};
use crate::bottle::{self, YearlyUse};
use crate::herb::Known;
use crate::mixture::{self, IngredientKind, StockItem};
use crate::wire::{Interval, Note, PlantState};
use crate::{App, Command, Failure, asked};

/// The code of the warning that more is planned than a year's use.
pub(super) const MORE_THAN_A_YEAR: &str = "more-than-a-year";

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

/// A liquid that the shelf lacks.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ToBuy {
    pub kind: IngredientKind,
    pub name: String,
    pub ml: f64,
}

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
    pub buy: Vec<ToBuy>,
    pub notes: Vec<Note>,
}

/// What the marc of this herb kept in the maker's own jars, strained as the last of them was.
fn own_retention(
    reading: &Reading<'_>,
    wish: &PlanBottles,
) -> Result<Option<physics::Interval>, Failure> {
    let known = Known::asked(reading, &wish.herb);
    let preparation = preparations::find(&wish.preparation, state(wish.state));
    match (known, preparation) {
        (Ok(known), Some(preparation)) => retention::latest(reading, &known.key, &preparation.key),
        // What is no herb or no preparation the plan itself refuses.
        _ => Ok(None),
    }
}

/// What the maker uses of a preparation of an herb in a year, by what was written down.
pub(super) fn own_use(
    app: &App,
    reading: &Reading<'_>,
    herb: &str,
    preparation: &str,
) -> Result<Option<YearlyUse>, Failure> {
    let Ok(known) = Known::asked(reading, herb) else {
        return Ok(None);
    };
    let family = |key: &str| {
        let one = preparations::all().iter().find(|it| it.key == key);
        one.map_or_else(|| key.to_owned(), |one| one.family.clone())
    };
    let wanted = family(preparation);
    bottle::yearly_use(reading, app.now(), |jar| {
        let mut herbs = jar.plants.iter().map(|plant| &plant.herb);
        herbs.next() == Some(&known.key)
            && herbs.next().is_none()
            && family(&jar.preparation) == wanted
    })
}

impl Command for PlanBottles {
    const NAME: &'static str = "plan.bottles";
    type Reply = BottlePlan;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let ready_on = asked::date("ready_on", &self.ready_on)?;
        let (wish, own_use) = app.read(|reading| {
            let stock = match &self.stock {
                Some(stock) => shelf(reading, stock)?,
                // Whatever stands on the shelf need not be bought.
                None => {
                    let supplies = reading.supplies()?;
                    let items: Vec<StockItem> = supplies
                        .iter()
                        .map(|row| StockItem {
                            supply: Some(row.id.to_string()),
                            ..mixture::as_item(&row.supply.item)
                        })
                        .collect();
                    shelf(reading, &items)?
                }
            };
            let own_retention_ml_per_g = own_retention(reading, &self)?;
            let own_use = match self.yearly_use_ml {
                Some(_) => None,
                None => own_use(app, reading, &self.herb, &self.preparation)?,
            };
            let wish = plan::Wish {
                identity: identity(reading, &self.herb, self.confirmed.unwrap_or(false)),
                herb: herb_name(reading, &self.herb),
                part: self.part,
                preparation: self.preparation,
                state: state(self.state),
                bottles: self.bottles,
                bottle_ml: self.bottle_ml,
                ready_on,
                own_retention_ml_per_g,
                stock,
                yearly_use_ml: self.yearly_use_ml.or(own_use.as_ref().map(|it| it.ml)),
                gifts: self.gifts.unwrap_or(false),
            };
            Ok((wish, own_use))
        })?;
        let plan = plan::plan(&wish)?;
        let mut notes: Vec<Note> = plan.notes.into_iter().map(Note::from).collect();
        if let (Some(at), Some(own)) = (
            notes.iter().position(|note| note.code == MORE_THAN_A_YEAR),
            own_use,
        ) {
            notes.insert(at + 1, own.note());
        }
        let pours: Vec<PourLine> = plan.pours.iter().map(PourLine::from).collect();
        let buy = plan.buy.iter().filter_map(|buy| {
            let line = plan.pours.iter().find(|line| line.kind == buy.kind)?;
            Some(ToBuy {
                kind: kind_of(&line.ingredient),
                name: buy.name.clone(),
                ml: buy.ml,
            })
        });
        Ok(BottlePlan {
            pick_fresh_g: plan.pick_fresh_g.into(),
            dry_g: plan.dry_g.map(Interval::from),
            buy: buy.collect(),
            pours,
            retained_ml: plan.retained_ml.into(),
            start_on: plan.start_on.to_string(),
            pick_by: plan.pick_by.to_string(),
            notes,
        })
    }
}
