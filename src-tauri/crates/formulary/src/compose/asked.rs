//! What is asked for, and how it is refused.

use crate::herbs::OwnHerb;
use message::Message;
use physics::{Interval, mixture::Ingredient};

use crate::preparations::PlantState;

/// A herb that goes into the jar.
#[derive(Debug, Clone, PartialEq)]
pub struct Plant {
    /// Any of its names; an unknown one is a herb of the maker's own.
    pub herb: String,
    /// Its part.
    pub part: String,
    /// Fresh or dried.
    pub state: PlantState,
    /// Its mass, g.
    pub mass_g: f64,
    /// Its water, % of the weight, where the maker knows it; else the tables say.
    pub moisture_wet_percent: Option<Interval>,
    /// By what that water is known, as it stands inside a sentence.
    pub told: Option<Message>,
    /// What else is known of which plant it is.
    pub identity: Identity,
}

/// Which plant it is, besides the name.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Identity {
    /// The Latin name that the maker gave.
    pub latin: Option<String>,
    /// Whether the maker said a deliberate yes to what the list of poisonous plants asks.
    pub is_confirmed: bool,
    /// What the maker knows of a herb that no table has.
    pub own: OwnHerb,
}

/// A liquid at hand.
#[derive(Debug, Clone, PartialEq)]
pub struct Stock {
    /// What it is.
    pub ingredient: Ingredient,
    /// How much of it there is, mL.
    pub available_ml: Option<f64>,
    /// The amount to take, mL.
    pub exactly_ml: Option<f64>,
    /// The supply it comes from.
    pub supply: Option<String>,
}

/// What is asked for.
#[derive(Debug, Clone, PartialEq)]
pub struct Composition {
    /// Key of a preparation or the name of a family.
    pub preparation: String,
    /// The herbs.
    pub plants: Vec<Plant>,
    /// The liquids at hand; what is missing is taken as usually bought, and a reason says so.
    pub stock: Vec<Stock>,
    /// mL to a gram of herb.
    pub ratio_ml_per_g: Option<f64>,
    /// Size of the jar, mL.
    pub jar_ml: Option<f64>,
    /// Strength wanted in the jar at the end, % vol.
    pub strength_percent_vol: Option<f64>,
    /// Glycerin in what is poured, % by volume.
    pub glycerin_percent_vol: Option<f64>,
    /// Alcohol added for keeping, % vol at the end.
    pub fortify_percent_vol: Option<f64>,
    /// Temperature for volume and density, C.
    pub temperature_c: f64,
}

impl Composition {
    /// One herb in a preparation, everything else as usual, at 20 C.
    pub fn of(preparation: &str, plant: Plant) -> Self {
        Self {
            preparation: preparation.to_owned(),
            plants: vec![plant],
            stock: Vec::new(),
            ratio_ml_per_g: None,
            jar_ml: None,
            strength_percent_vol: None,
            glycerin_percent_vol: None,
            fortify_percent_vol: None,
            temperature_c: 20.0,
        }
    }
}
