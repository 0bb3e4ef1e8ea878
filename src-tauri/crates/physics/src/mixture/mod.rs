//! Liquids: what they are made of, how dense they are, how strong, whether they can spoil.
//!
//! Mass is conserved and nothing else: volumes come from densities. What does not live here: which
//! preparation wants which liquid, and whether one keeps.

pub mod acid;
mod activity;
mod composition;
mod describe;
pub mod dilution;
pub mod ethanol;
pub mod flash;
mod free_water;
pub mod glycerol;
mod icumsa1986;
mod ingredient;
pub mod item;
pub mod oil;
mod oiml1975;
pub mod ph;
mod pour;
mod remark;
pub mod sugar;
mod unmixable;
mod volume;
pub mod water;

pub use acid::Acidity;
pub use activity::{WaterActivity, honey_water_activity, water_activity};
pub use composition::{Component, Composition};
pub use describe::{Liquid, describe};
pub use ingredient::Ingredient;
pub use item::{IngredientKind, Item, Kind, Without};
pub use oil::Oil;
pub use pour::{MOST_POURED, Plant, Pour};
pub use remark::Remark;
pub use unmixable::Unmixable;

pub(crate) use ethanol::PURE_AT_20 as PURE_ETHANOL_AT_20;
pub(crate) use pour::amount;
pub(crate) use volume::partial_millilitres;
