//! `plan.*`: the bottles that are wanted, and what they ask for.

use journal::{PlantState, Wish, WishId};
use message::{Failure, say};
use reckon::herb::Known;
use reckon::plan::bottles::{BottlePlan, PlanBottles};
use reckon::plan::merged::MergedPlan;
use reckon::plan::wish::{WishLine, lines};
use reckon::{asked, told};
use serde::{Deserialize, Serialize};

use crate::changed::Changed;
use crate::open::Open;
use crate::request::{Command, bare_request};

impl Command for PlanBottles {
    const NAME: &'static str = "plan.bottles";
    type Reply = BottlePlan;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        app.read(|reading| self.planned(reading, app.now()))
    }
}

bare_request!(
    /// All wishes as one list of what to pick and what to buy.
    MergePlans
);

impl Command for MergePlans {
    const NAME: &'static str = "plan.all";
    type Reply = MergedPlan;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        app.read(|reading| MergedPlan::of(reading, app.now()))
    }
}

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

impl Command for SavePlan {
    const NAME: &'static str = "plan.save";
    type Reply = PlanWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let id = WishId(app.new_id());
        let ready_on = asked::date("ready_on", &self.ready_on)?;
        let (done, wish) = app.perform(|writing| {
            let known = Known::asked(writing, &self.herb)?;
            let is_confirmed = self.confirmed.unwrap_or(false);
            known.refuse_poison(&self.part, &self.preparation, is_confirmed)?;
            let herb = told::herb(&known);
            let wish = Wish {
                herb: known.key,
                part: self.part,
                preparation: self.preparation,
                state: self.state,
                bottles: self.bottles,
                bottle_ml: self.bottle_ml,
                ready_on,
                gifts: self.gifts.unwrap_or(false),
            };
            writing.record(&id, &wish)?;
            let line = say!("deed-plan-saved", count = wish.bottles, herb);
            Ok((line, WishLine::of(writing, &id, wish)?))
        })?;
        Ok(PlanWritten { done, wish })
    }
}

impl Command for ListPlans {
    const NAME: &'static str = "plan.list";
    type Reply = Wishes;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        app.read(|reading| {
            Ok(Wishes {
                wishes: lines(reading)?,
            })
        })
    }
}

impl Command for StrikePlan {
    const NAME: &'static str = "plan.strike";
    type Reply = PlanWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let id: WishId = asked::id("id", &self.id)?;
        let (done, wish) = app.perform(|writing| {
            let wish = WishLine::of(writing, &id, writing.get::<Wish>(&id)?)?;
            writing.strike::<Wish>(&id)?;
            let herb = told::herb_of(&wish.herb, &wish.common);
            Ok((say!("deed-plan-deleted", herb), wish))
        })?;
        Ok(PlanWritten { done, wish })
    }
}
