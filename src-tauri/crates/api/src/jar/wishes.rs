//! `plan.save`, `plan.list`, `plan.strike`: the bottles that are wanted.

use formulary::preparations;
use journal::{Wish, WishId};
use serde::{Deserialize, Serialize};
use store::Reading;

use super::plan::PlanBottles;
use super::said::state;
use crate::herb::Known;
use crate::wire::{Changed, PlantState, bare_request};
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
    /// A deliberate yes to what the list of poisonous plants asks.
    pub confirmed: Option<bool>,
}

bare_request!(
    /// The bottles that are wanted.
    ListPlans
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
    pub preparation_name: String,
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

impl WishLine {
    fn of(reading: &Reading<'_>, id: &WishId, wish: Wish) -> Result<Self, Failure> {
        Ok(Self {
            id: id.to_string(),
            common: Known::written(reading, &wish.herb)?.common,
            herb: wish.herb.to_string(),
            part: wish.part,
            preparation_name: preparations::find(&wish.preparation, state(wish.state.into()))
                .map_or_else(|| wish.preparation.clone(), |it| it.name.clone()),
            preparation: wish.preparation,
            state: wish.state.into(),
            bottles: wish.bottles,
            bottle_ml: wish.bottle_ml,
            ready_on: wish.ready_on.to_string(),
            gifts: wish.gifts,
        })
    }

    pub(super) fn request(&self) -> PlanBottles {
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
            // Whatever asks was answered when the wish was written down.
            confirmed: Some(true),
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
            let is_confirmed = self.confirmed.unwrap_or(false);
            known.refuse_poison(&self.part, &self.preparation, is_confirmed)?;
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

pub(super) fn lines(reading: &Reading<'_>) -> Result<Vec<WishLine>, Failure> {
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
