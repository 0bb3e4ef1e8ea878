//! `plan.save`, `plan.list`, `plan.strike`, `plan.all`: wishes, and the one list they come to.

use std::collections::BTreeMap;

use journal::{Wish, WishId};
use serde::{Deserialize, Serialize};
use store::Reading;

use super::plan::{BottlePlan, PlanBottles};
use crate::herb::Known;
use crate::mixture::IngredientKind;
use crate::wire::{Changed, Interval, PlantState, bare_request};
use crate::{App, Command, Failure, asked};

/// Bottles that are wanted by a day.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct SavePlan {
    pub herb: String,
    pub part: String,
    pub preparation: String,
    pub state: PlantState,
    pub bottles: u32,
    pub bottle_ml: f64,
    pub ready_on: String,
    pub gifts: Option<bool>,
}

bare_request!(
    /// The bottles that are wanted.
    ListPlans
);
bare_request!(
    /// All wishes as one list of what to pick and what to buy.
    MergePlans
);

/// A wish is given up or come true.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct StrikePlan {
    pub id: String,
}

/// A wish.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct WishLine {
    pub id: String,
    pub herb: String,
    pub common: String,
    pub part: String,
    pub preparation: String,
    pub state: PlantState,
    pub bottles: u32,
    pub bottle_ml: f64,
    pub ready_on: String,
    pub gifts: bool,
}

/// The answer to [`ListPlans`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Wishes {
    pub wishes: Vec<WishLine>,
}

/// A wish was written.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct PlanWritten {
    #[serde(flatten)]
    pub done: Changed,
    pub wish: WishLine,
}

/// What there must be of one plant for all wishes, and what of it is there.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ToPick {
    pub herb: String,
    pub common: String,
    pub part: String,
    /// Fresh plant for all wishes, before what is there already.
    pub pick_fresh_g: Interval,
    /// Dried lots of it that are left.
    pub dried_left_g: f64,
    /// Fresh plant of it that is on the rack.
    pub drying_fresh_g: f64,
    pub pick_by: String,
}

/// What the shelf lacks for all wishes.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ToBuyAll {
    pub kind: IngredientKind,
    pub name: String,
    pub needed_ml: f64,
    pub on_the_shelf_ml: f64,
    pub buy_ml: f64,
}

/// A wish with its own plan, or why there is none.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct WishPlan {
    pub wish: WishLine,
    pub plan: Option<BottlePlan>,
    pub problem: Option<String>,
}

/// The answer to [`MergePlans`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct MergedPlan {
    pub wishes: Vec<WishPlan>,
    pub pick: Vec<ToPick>,
    pub buy: Vec<ToBuyAll>,
}

impl WishLine {
    fn of(reading: &Reading<'_>, id: &WishId, wish: Wish) -> Result<Self, Failure> {
        Ok(Self {
            id: id.to_string(),
            common: Known::written(reading, &wish.herb)?.common,
            herb: wish.herb.to_string(),
            part: wish.part,
            preparation: wish.preparation,
            state: wish.state.into(),
            bottles: wish.bottles,
            bottle_ml: wish.bottle_ml,
            ready_on: wish.ready_on.to_string(),
            gifts: wish.gifts,
        })
    }

    fn request(&self) -> PlanBottles {
        PlanBottles {
            herb: self.herb.clone(),
            part: self.part.clone(),
            preparation: self.preparation.clone(),
            state: self.state,
            bottles: self.bottles,
            bottle_ml: self.bottle_ml,
            ready_on: self.ready_on.clone(),
            stock: None,
            yearly_use_ml: None,
            gifts: Some(self.gifts),
        }
    }
}

impl Command for SavePlan {
    const NAME: &'static str = "plan.save";
    type Reply = PlanWritten;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let id = WishId(app.new_id());
        let ready_on = asked::date("ready_on", &self.ready_on)?;
        let (done, wish) = app.perform(|writing| {
            let known = Known::asked(writing, &self.herb)?;
            let wish = Wish {
                herb: known.key,
                part: self.part,
                preparation: self.preparation,
                state: self.state.into(),
                bottles: self.bottles,
                bottle_ml: self.bottle_ml,
                ready_on,
                gifts: self.gifts.unwrap_or(false),
            };
            writing.record(&id, &wish)?;
            let text = format!("Planned {} bottles of {}", wish.bottles, known.common);
            Ok((text, WishLine::of(writing, &id, wish)?))
        })?;
        Ok(PlanWritten { done, wish })
    }
}

impl Command for ListPlans {
    const NAME: &'static str = "plan.list";
    type Reply = Wishes;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        app.read(|reading| {
            Ok(Wishes {
                wishes: lines(reading)?,
            })
        })
    }
}

fn lines(reading: &Reading<'_>) -> Result<Vec<WishLine>, Failure> {
    reading
        .wishes()?
        .into_iter()
        .map(|(id, wish)| WishLine::of(reading, &id, wish))
        .collect()
}

impl Command for StrikePlan {
    const NAME: &'static str = "plan.strike";
    type Reply = PlanWritten;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let id: WishId = asked::id("id", &self.id)?;
        let (done, wish) = app.perform(|writing| {
            let wish = WishLine::of(writing, &id, writing.get::<Wish>(&id)?)?;
            writing.strike::<Wish>(&id)?;
            Ok((format!("Struck the plan for {}", wish.common), wish))
        })?;
        Ok(PlanWritten { done, wish })
    }
}

impl Command for MergePlans {
    const NAME: &'static str = "plan.all";
    type Reply = MergedPlan;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let lines = app.read(lines)?;
        let wishes: Vec<WishPlan> = lines
            .into_iter()
            .map(|wish| match wish.request().run(app) {
                Ok(plan) => WishPlan {
                    wish,
                    plan: Some(plan),
                    problem: None,
                },
                Err(why) => WishPlan {
                    wish,
                    plan: None,
                    problem: Some(why.message),
                },
            })
            .collect();
        app.read(|reading| {
            Ok(MergedPlan {
                pick: pick(reading, &wishes)?,
                buy: buy(reading, &wishes)?,
                wishes,
            })
        })
    }
}

fn pick(reading: &Reading<'_>, wishes: &[WishPlan]) -> Result<Vec<ToPick>, Failure> {
    let mut pick: BTreeMap<(String, String), ToPick> = BTreeMap::new();
    for (wish, plan) in planned(wishes) {
        let key = (wish.common.clone(), wish.part.clone());
        let line = pick.entry(key).or_insert_with(|| ToPick {
            herb: wish.herb.clone(),
            common: wish.common.clone(),
            part: wish.part.clone(),
            pick_fresh_g: Interval {
                low: 0.0,
                value: 0.0,
                high: 0.0,
            },
            dried_left_g: 0.0,
            drying_fresh_g: 0.0,
            pick_by: plan.pick_by.clone(),
        });
        // The water of the same herb errs alike in every wish, so the ends add up.
        line.pick_fresh_g.low += plan.pick_fresh_g.low;
        line.pick_fresh_g.value += plan.pick_fresh_g.value;
        line.pick_fresh_g.high += plan.pick_fresh_g.high;
        line.pick_by = line.pick_by.clone().min(plan.pick_by.clone());
    }
    for row in reading.trays()? {
        let common = Known::written(reading, &row.harvest.herb)?.common;
        if let Some(line) = pick.get_mut(&(common, row.harvest.part.clone())) {
            match row.tray.taken_down {
                Some(_) => line.dried_left_g += row.dried_left_g,
                None => line.drying_fresh_g += row.tray.fresh_mass_g,
            }
        }
    }
    Ok(pick.into_values().collect())
}

/// Each wish alone would be served from the whole shelf; together they share it.
fn buy(reading: &Reading<'_>, wishes: &[WishPlan]) -> Result<Vec<ToBuyAll>, Failure> {
    let mut buy: BTreeMap<String, ToBuyAll> = BTreeMap::new();
    for (_, plan) in planned(wishes) {
        for pour in &plan.pours {
            let line = buy.entry(pour.name.clone()).or_insert_with(|| ToBuyAll {
                kind: pour.kind,
                name: pour.name.clone(),
                needed_ml: 0.0,
                on_the_shelf_ml: 0.0,
                buy_ml: 0.0,
            });
            line.needed_ml += pour.ml;
        }
    }
    let supplies = reading.supplies()?;
    for line in buy.values_mut() {
        let like = supplies
            .iter()
            .filter(|row| crate::mixture::as_item(&row.supply.item).kind == line.kind);
        line.on_the_shelf_ml = like.map(|row| row.left_ml.max(0.0)).sum();
        let tap = line.kind == IngredientKind::Water;
        line.buy_ml = if tap {
            0.0
        } else {
            (line.needed_ml - line.on_the_shelf_ml).max(0.0)
        };
    }
    Ok(buy.into_values().collect())
}

fn planned(wishes: &[WishPlan]) -> impl Iterator<Item = (&WishLine, &BottlePlan)> {
    wishes
        .iter()
        .filter_map(|it| it.plan.as_ref().map(|plan| (&it.wish, plan)))
}
