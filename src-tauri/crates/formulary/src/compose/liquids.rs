//! The liquids: what is at hand, what is usually bought.

use message::{Failure, Refusal};
use physics::{
    mixture::{Ingredient, IngredientKind, Item, Kind, Pour},
    quantity::{grams_of, millilitres, millilitres_of},
};

use super::{Portion, PourLine, Stock};
use crate::preparations::Part;

/// A liquid that is chosen for a part.
#[derive(Debug, Clone)]
pub(super) struct Chosen {
    pub(super) ingredient: Ingredient,
    pub(super) available_ml: Option<f64>,
    pub(super) exactly_ml: Option<f64>,
    pub(super) supply: Option<String>,
    pub(super) assumed: bool,
}

impl Chosen {
    pub(super) fn kind(&self) -> IngredientKind {
        self.ingredient.kind().into()
    }
}

pub(super) fn line(chosen: Chosen, ml: f64) -> Result<Portion, Refusal> {
    let pour = Pour::measured(chosen.ingredient, millilitres(ml))
        .map_err(|error| Refusal::new("stock", error.message()))?;
    Ok(Portion {
        line: PourLine {
            kind: chosen.kind(),
            name: chosen.ingredient.name(),
            ml: millilitres_of(pour.volume()),
            g: grams_of(pour.mass()),
            supply: chosen.supply,
        },
        ingredient: chosen.ingredient,
    })
}

pub(super) fn chosen(stock: &Stock) -> Chosen {
    Chosen {
        ingredient: stock.ingredient,
        available_ml: stock.available_ml,
        exactly_ml: stock.exactly_ml,
        supply: stock.supply.clone(),
        assumed: false,
    }
}

/// What is usually bought for a part.
pub(super) fn usual(part: &Part) -> Result<Chosen, Refusal> {
    let bought = Item::bought(part.kind, |figure| part.figure(figure), part.oil.as_deref());
    let refused = |failure: Failure| Refusal::new("preparation", failure.message);
    Ok(Chosen {
        ingredient: bought.ingredient().map_err(refused)?,
        available_ml: None,
        exactly_ml: None,
        supply: None,
        assumed: part.kind != IngredientKind::Water,
    })
}

pub(super) fn strength_of(ingredient: &Ingredient) -> f64 {
    match ingredient.kind() {
        Kind::Spirit {
            strength_percent_vol,
        }
        | Kind::Wine {
            strength_percent_vol,
            ..
        } => strength_percent_vol,
        _ => 0.0,
    }
}
