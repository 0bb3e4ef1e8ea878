//! What a bottle on the shelf holds, by the figures of its label.

use message::{Argument, Failure, Message, say};
use physics::mixture::item::figure_name;
use physics::mixture::{IngredientKind, Item};
use serde::{Deserialize, Serialize};

/// A measured ingredient: exactly one of `g` and `ml` (at 20 °C), and what its kind needs.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct Pour {
    pub kind: IngredientKind,
    pub g: Option<f64>,
    pub ml: Option<f64>,
    pub strength_percent_vol: Option<f64>,
    pub purity_percent_mass: Option<f64>,
    pub acidity_g_per_100ml: Option<f64>,
    pub sugar_g_per_l: Option<f64>,
    pub sugar_percent_mass: Option<f64>,
    pub water_percent_mass: Option<f64>,
    pub oil: Option<String>,
}

/// A liquid at hand, and how much of it may or must be used.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct StockItem {
    pub kind: IngredientKind,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub strength_percent_vol: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub purity_percent_mass: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub acidity_g_per_100ml: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub sugar_g_per_l: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub sugar_percent_mass: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub water_percent_mass: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub oil: Option<String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub available_ml: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub exactly_ml: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub supply: Option<String>,
}

/// The figures of a label as they come over the wire, whichever of them are there.
struct Label<'a> {
    kind: IngredientKind,
    figures: [(&'static str, Option<f64>); 6],
    oil: Option<&'a str>,
}

impl Label<'_> {
    /// The liquid and one of its figures, as a refusal names them.
    fn named(&self, figure: &str) -> (Argument, Message) {
        let named = figure_name(figure).unwrap_or_else(|| Message::own(figure));
        (self.kind.name().into(), named)
    }

    /// The figure `name`, which must be there unless there is a usual one.
    fn figure(&mut self, name: &'static str, usual: Option<f64>) -> Result<f64, Failure> {
        let found = self.figures.iter_mut().find(|(known, _)| *known == name);
        found
            .and_then(|(_, figure)| figure.take())
            .or(usual)
            .ok_or_else(|| {
                let (liquid, figure) = self.named(name);
                Failure::invalid(name, say!("figure-missing", liquid, figure))
            })
    }

    fn item(mut self) -> Result<Item, Failure> {
        let (kind, oil) = (self.kind, self.oil);
        let figure = |name, unsaid| self.figure(name, unsaid);
        let which = || {
            oil.map(str::to_owned)
                .ok_or_else(|| Failure::invalid("oil", say!("oil-not-said")))
        };
        let item = Item::read(kind, figure, which)?;
        let too_many = self.figures.iter().find(|(_, figure)| figure.is_some());
        let too_many = too_many.map(|(name, _)| *name);
        let oil = oil.filter(|_| kind != IngredientKind::Oil);
        match too_many.or(oil.map(|_| "oil")) {
            Some(name) => {
                let (liquid, figure) = self.named(name);
                Err(Failure::invalid(
                    name,
                    say!("figure-too-much", liquid, figure),
                ))
            }
            None => Ok(item),
        }
    }
}

macro_rules! label {
    ($item:expr) => {
        Label {
            kind: $item.kind,
            figures: [
                ("strength_percent_vol", $item.strength_percent_vol),
                ("purity_percent_mass", $item.purity_percent_mass),
                ("acidity_g_per_100ml", $item.acidity_g_per_100ml),
                ("sugar_g_per_l", $item.sugar_g_per_l),
                ("sugar_percent_mass", $item.sugar_percent_mass),
                ("water_percent_mass", $item.water_percent_mass),
            ],
            oil: $item.oil.as_deref(),
        }
    };
}

/// What an item of the wire is.
pub fn item(item: &StockItem) -> Result<Item, Failure> {
    label!(item).item()
}

/// What is poured.
pub fn poured(pour: &Pour) -> Result<Item, Failure> {
    label!(pour).item()
}

/// A label as it goes over the wire.
pub fn as_item(item: &Item) -> StockItem {
    let mut shown = StockItem {
        kind: item.kind(),
        strength_percent_vol: None,
        purity_percent_mass: None,
        acidity_g_per_100ml: None,
        sugar_g_per_l: None,
        sugar_percent_mass: None,
        water_percent_mass: None,
        oil: item.oil().map(str::to_owned),
        available_ml: None,
        exactly_ml: None,
        supply: None,
    };
    for (name, figure) in item.figures() {
        let place = match name {
            "strength_percent_vol" => &mut shown.strength_percent_vol,
            "purity_percent_mass" => &mut shown.purity_percent_mass,
            "acidity_g_per_100ml" => &mut shown.acidity_g_per_100ml,
            "sugar_g_per_l" => &mut shown.sugar_g_per_l,
            "sugar_percent_mass" => &mut shown.sugar_percent_mass,
            _ => &mut shown.water_percent_mass,
        };
        *place = Some(figure);
    }
    shown
}
