//! All wishes together: what to pick, what to buy.

use formulary::compose::PourLine;
use std::collections::BTreeMap;

use chrono::{DateTime, FixedOffset};
use formulary::{Note, Status};
use journal::{PlantState, PlantState as Dryness};
use message::{Argument, Failure, Message, say};
use physics::Interval;
use physics::mixture::IngredientKind;
use serde::Serialize;
use store::{LotFilter, Reading};

use crate::herb::Known;
use crate::plan::bottles::{BottlePlan, MORE_THAN_A_YEAR, own_use};
use crate::plan::wish::{WishLine, lines};
use crate::told;
use crate::tray::card;

/// What there must be of one plant for all wishes, and what of it is there.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ToPick {
    pub herb: String,
    pub common: Message,
    pub part: String,
    /// Whether it goes into the jars fresh or dried: the two are picked on days of their own.
    pub state: PlantState,
    /// What is still to be picked, what trimming takes and what is there already reckoned in.
    pub pick_fresh_g: Interval,
    /// The dried plant for the wishes that are made of dried plant.
    pub dry_needed_g: Option<Interval>,
    /// Dried lots of it that are left.
    pub dried_left_g: f64,
    /// What will be dry of that which is on the rack.
    pub drying_dry_g: Option<Interval>,
    pub pick_by: String,
    pub start_on: String,
}

/// What the shelf lacks for all wishes.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ToBuyAll {
    pub kind: IngredientKind,
    pub name: Message,
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
    pub problem: Option<Message>,
}

/// The answer to [`MergePlans`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct MergedPlan {
    pub wishes: Vec<WishPlan>,
    pub pick: Vec<ToPick>,
    pub buy: Vec<ToBuyAll>,
    pub notes: Vec<Note>,
}

impl MergedPlan {
    /// All wishes as one list of what to pick and what to buy.
    pub fn of(reading: &Reading<'_>, now: DateTime<FixedOffset>) -> Result<Self, Failure> {
        let lines = lines(reading)?;
        let wishes: Vec<WishPlan> = lines
            .into_iter()
            .map(|wish| match wish.request().planned(reading, now) {
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
        Ok(Self {
            pick: pick(reading, &wishes, now)?,
            notes: more_than_a_year(reading, &wishes, now)?,
            buy: buy(reading, &wishes)?,
            wishes,
        })
    }
}

/// More dried lots of one plant than any shelf holds.
const MOST_LOTS: usize = 1000;

/// What all wishes need of one plant in one state, and what of it is there.
struct Needed {
    line: ToPick,
    /// Fresh to dry, with what trimming takes.
    fresh_per_dry: Option<Interval>,
}

const NOTHING: Interval = Interval {
    low: 0.0,
    value: 0.0,
    high: 0.0,
};

/// The sum of two amounts that err alike, so that their ends add up.
fn plus(a: Interval, b: Interval) -> Interval {
    Interval {
        low: a.low + b.low,
        value: a.value + b.value,
        high: a.high + b.high,
    }
}

pub fn pick(
    reading: &Reading<'_>,
    wishes: &[WishPlan],
    now: DateTime<FixedOffset>,
) -> Result<Vec<ToPick>, Failure> {
    let mut pick: BTreeMap<(String, String, bool), Needed> = BTreeMap::new();
    for (wish, plan) in planned(wishes) {
        let is_dried = wish.state == PlantState::Dried;
        let key = (wish.herb.clone(), wish.part.clone(), is_dried);
        let needed = pick.entry(key).or_insert_with(|| Needed {
            line: ToPick {
                herb: wish.herb.clone(),
                common: wish.common.clone(),
                part: wish.part.clone(),
                state: wish.state,
                pick_fresh_g: NOTHING,
                dry_needed_g: None,
                dried_left_g: 0.0,
                drying_dry_g: None,
                pick_by: plan.pick_by.clone(),
                start_on: plan.start_on.clone(),
            },
            fresh_per_dry: None,
        });
        let line = &mut needed.line;
        match plan.dry_g {
            None => line.pick_fresh_g = plus(line.pick_fresh_g, plan.pick_fresh_g),
            Some(dry) => {
                line.dry_needed_g = Some(plus(line.dry_needed_g.unwrap_or(NOTHING), dry));
                let fresh = plan.pick_fresh_g;
                needed.fresh_per_dry = Some(Interval {
                    low: fresh.low / dry.low,
                    value: fresh.value / dry.value,
                    high: fresh.high / dry.high,
                });
            }
        }
        line.pick_by = line.pick_by.clone().min(plan.pick_by.clone());
        line.start_on = line.start_on.clone().min(plan.start_on.clone());
    }
    for Needed { line, .. } in pick.values_mut() {
        if line.state == PlantState::Fresh {
            continue;
        }
        let dried = LotFilter {
            herb: Some(Known::asked(reading, &line.herb)?.key),
            state: Some(Dryness::Dried),
            after: None,
            limit: MOST_LOTS,
        };
        let lots = reading.lots(&dried)?.rows;
        let such = lots.iter().filter(|lot| lot.harvest.part == line.part);
        line.dried_left_g = such.map(|lot| lot.left_g).sum();
    }
    for row in reading.trays_drying()? {
        let (herb, part) = (row.harvest.herb.to_string(), row.harvest.part.clone());
        if let Some(Needed { line, .. }) = pick.get_mut(&(herb, part, true)) {
            let dry = card::card(reading, &row, now)?.target_mass_g;
            line.drying_dry_g = Some(plus(line.drying_dry_g.unwrap_or(NOTHING), dry));
        }
    }
    Ok(pick.into_values().map(Needed::still_to_pick).collect())
}

impl Needed {
    fn still_to_pick(self) -> ToPick {
        let mut line = self.line;
        if let (Some(dry), Some(ratio)) = (line.dry_needed_g, self.fresh_per_dry) {
            let drying = line.drying_dry_g.unwrap_or(NOTHING);
            let lacking = |needed: f64, drying: f64| (needed - line.dried_left_g - drying).max(0.0);
            let fresh = Interval {
                low: lacking(dry.low, drying.high) * ratio.low,
                value: lacking(dry.value, drying.value) * ratio.value,
                high: lacking(dry.high, drying.low) * ratio.high,
            };
            line.pick_fresh_g = plus(line.pick_fresh_g, fresh);
        }
        line
    }
}

/// Wishes that each stay below a year's use may together come to more.
pub fn more_than_a_year(
    reading: &Reading<'_>,
    wishes: &[WishPlan],
    now: DateTime<FixedOffset>,
) -> Result<Vec<Note>, Failure> {
    let mut alike: BTreeMap<(&str, &str), (f64, &WishLine)> = BTreeMap::new();
    for (wish, _) in planned(wishes).filter(|(wish, _)| !wish.gifts) {
        let key = (wish.herb.as_str(), wish.preparation.as_str());
        let (ml, _) = alike.entry(key).or_insert((0.0, wish));
        *ml += f64::from(wish.bottles) * wish.bottle_ml;
    }
    let mut notes = Vec::new();
    for (ml, wish) in alike.into_values() {
        let Some(used) = own_use(reading, now, &wish.herb, &wish.preparation)? else {
            continue;
        };
        if ml > used.ml {
            notes.push(Note {
                code: MORE_THAN_A_YEAR.to_owned(),
                text: say!(
                    "plans-more-than-a-year",
                    planned = Argument::millilitres(ml),
                    herb = told::herb_of(&wish.herb, &wish.common),
                    yearly = Argument::millilitres(used.ml)
                ),
                source: None,
                status: Status::Own,
            });
            notes.push(used.note());
        }
    }
    Ok(notes)
}

/// Each wish alone would be served from the whole shelf; together they share it.
pub fn buy(reading: &Reading<'_>, wishes: &[WishPlan]) -> Result<Vec<ToBuyAll>, Failure> {
    to_buy(
        reading,
        planned(wishes).flat_map(|(_, plan)| &plan.pours),
        1.0,
    )
}

/// What so many times these pours take, less what the shelf holds by the same label.
pub fn to_buy<'a>(
    reading: &Reading<'_>,
    pours: impl Iterator<Item = &'a PourLine>,
    times: f64,
) -> Result<Vec<ToBuyAll>, Failure> {
    let mut buy: BTreeMap<String, ToBuyAll> = BTreeMap::new();
    for pour in pours {
        let line = buy
            .entry(pour.name.to_string())
            .or_insert_with(|| ToBuyAll {
                kind: pour.kind,
                name: pour.name.clone(),
                needed_ml: 0.0,
                on_the_shelf_ml: 0.0,
                buy_ml: 0.0,
            });
        line.needed_ml += pour.ml * times;
    }
    let mut supplies = Vec::new();
    for row in reading.supplies()? {
        let ingredient = row.supply.item.ingredient()?;
        supplies.push((ingredient.name(), row.left_ml.max(0.0)));
    }
    for line in buy.values_mut() {
        let like = supplies.iter().filter(|(name, _)| *name == line.name);
        line.on_the_shelf_ml = like.fold(0.0, |sum, (_, left_ml)| sum + left_ml);
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
