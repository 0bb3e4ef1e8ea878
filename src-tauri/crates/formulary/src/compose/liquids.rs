//! The liquids: what is at hand, what is usually bought, what each is called.

use physics::{
    MassFraction, Strength,
    mixture::{Acidity, Ingredient, Kind, Oil, Pour},
    quantity::{grams_of, kg_per_m3, millilitres, millilitres_of},
};

use super::{PourLine, Refusal, Stock};
use crate::{
    preparations::{Part, sentence},
    words,
};

/// A liquid that is chosen for a part.
#[derive(Debug, Clone)]
pub(super) struct Chosen {
    pub(super) ingredient: Ingredient,
    pub(super) available_ml: Option<f64>,
    pub(super) exactly_ml: Option<f64>,
    pub(super) supply: Option<String>,
    pub(super) assumed: bool,
}

pub(super) fn line(chosen: Chosen, ml: f64) -> Result<PourLine, Refusal> {
    let pour = Pour::measured(chosen.ingredient, millilitres(ml))
        .map_err(|error| Refusal::new("stock", sentence(&error.to_string())))?;
    Ok(PourLine {
        kind: kind_word(&chosen.ingredient),
        name: name(&chosen.ingredient),
        ml: millilitres_of(pour.volume()),
        g: grams_of(pour.mass()),
        supply: chosen.supply,
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
    let refused =
        |error: physics::OutOfRange| Refusal::new("preparation", sentence(&error.to_string()));
    let percent = |value: Option<f64>, usual: f64| value.unwrap_or(usual);
    let share = |value: f64| MassFraction::from_percent(value).map_err(refused);
    let strength = |value: f64| Strength::from_percent(value).map_err(refused);
    let acidity = |value: Option<f64>| Acidity::new(value.unwrap_or(0.0)).map_err(refused);
    let ingredient =
        match part.kind.as_str() {
            "water" => Ingredient::water(),
            "spirit" => Ingredient::spirit(strength(percent(part.strength_percent_vol, 95.0))?),
            "glycerin" => Ingredient::glycerin(share(percent(part.purity_percent_mass, 99.5))?),
            "vinegar" => Ingredient::vinegar(
                Acidity::new(percent(part.acidity_g_per_100ml, 5.0)).map_err(refused)?,
            ),
            "wine" => Ingredient::wine(
                strength(percent(part.strength_percent_vol, 12.0))?,
                kg_per_m3(percent(part.sugar_g_per_l, 0.0)),
                acidity(part.acidity_g_per_100ml)?,
            )
            .map_err(refused)?,
            "sugar" => Ingredient::sugar(),
            "syrup" => Ingredient::syrup(share(percent(part.sugar_percent_mass, 65.0))?)
                .map_err(refused)?,
            "honey" => Ingredient::honey(share(percent(part.water_percent_mass, 17.0))?)
                .map_err(refused)?,
            "juice" => Ingredient::juice(
                share(percent(part.sugar_percent_mass, 11.0))?,
                acidity(part.acidity_g_per_100ml)?,
            )
            .map_err(refused)?,
            "oil" => {
                let key = part.oil.as_deref().unwrap_or("olive");
                let oil = Oil::from_key(key).ok_or_else(|| {
                    Refusal::new("preparation", format!("\"{key}\" is no oil known here."))
                })?;
                Ingredient::oil(oil)
            }
            other => {
                return Err(Refusal::new(
                    "preparation",
                    format!("\"{other}\" is no liquid known here."),
                ));
            }
        };
    Ok(Chosen {
        ingredient,
        available_ml: None,
        exactly_ml: None,
        supply: None,
        assumed: part.kind != "water",
    })
}

/// The kind in the words of the wire.
pub(crate) fn kind_word(ingredient: &Ingredient) -> &'static str {
    match ingredient.kind() {
        Kind::Water => "water",
        Kind::Spirit { .. } => "spirit",
        Kind::Glycerin { .. } => "glycerin",
        Kind::Vinegar { .. } => "vinegar",
        Kind::Wine { .. } => "wine",
        Kind::Sugar => "sugar",
        Kind::Syrup { .. } => "syrup",
        Kind::Honey { .. } => "honey",
        Kind::Juice { .. } => "juice",
        Kind::Oil(_) => "oil",
    }
}

pub(super) fn strength_of(ingredient: &Ingredient) -> f64 {
    match ingredient.kind() {
        Kind::Spirit { strength } | Kind::Wine { strength, .. } => strength.percent(),
        _ => 0.0,
    }
}

/// What a liquid is called in a recipe: two that differ on their labels differ in this.
pub fn name(ingredient: &Ingredient) -> String {
    let number = |value: f64| words::number(value, 1);
    match ingredient.kind() {
        Kind::Water => "water".to_owned(),
        Kind::Spirit { strength } => format!("spirit of {} % vol", number(strength.percent())),
        Kind::Glycerin { purity } => format!("glycerin of {} %", number(purity.percent())),
        Kind::Vinegar { acidity } => format!("vinegar of {} %", number(acidity.grams_per_100_ml())),
        Kind::Wine { strength, .. } => format!("wine of {} % vol", number(strength.percent())),
        Kind::Sugar => "sugar".to_owned(),
        Kind::Syrup { sugar } => format!("syrup of {} % sugar", number(sugar.percent())),
        Kind::Honey { water } => format!("honey of {} % water", number(water.percent())),
        Kind::Juice { sugar, .. } => format!("juice of {} % sugar", number(sugar.percent())),
        Kind::Oil(oil) => format!("{} oil", oil.key()),
    }
}
