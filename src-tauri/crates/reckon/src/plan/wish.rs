//! A wish: bottles that are wanted by a day.

use formulary::preparations;
use formulary::preparations::Preparation;
use journal::{PlantState, Wish, WishId};
use message::{Failure, Message};
use serde::Serialize;
use store::Reading;

use crate::herb::Known;
use crate::plan::bottles::PlanBottles;
use crate::told;

/// A wish.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct WishLine {
    pub id: String,
    pub herb: String,
    pub common: Message,
    pub part: String,
    pub preparation: String,
    pub preparation_name: Message,
    pub state: PlantState,
    pub bottles: u32,
    pub bottle_ml: f64,
    pub ready_on: String,
    pub gifts: bool,
}

impl WishLine {
    pub fn of(reading: &Reading<'_>, id: &WishId, wish: Wish) -> Result<Self, Failure> {
        Ok(Self {
            id: id.to_string(),
            common: told::title(&Known::written(reading, &wish.herb)?),
            herb: wish.herb.to_string(),
            part: wish.part,
            preparation_name: preparations::find(&wish.preparation, wish.state)
                .map_or_else(|| Message::own(&wish.preparation), Preparation::title),
            preparation: wish.preparation,
            state: wish.state,
            bottles: wish.bottles,
            bottle_ml: wish.bottle_ml,
            ready_on: wish.ready_on.to_string(),
            gifts: wish.gifts,
        })
    }

    pub fn request(&self) -> PlanBottles {
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

pub fn lines(reading: &Reading<'_>) -> Result<Vec<WishLine>, Failure> {
    reading
        .wishes()?
        .into_iter()
        .map(|(id, wish)| WishLine::of(reading, &id, wish))
        .collect()
}
