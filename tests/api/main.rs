//! The commands as a page or a script sees them: JSON in, JSON out, nothing of the inside.

mod deeds;
mod drying;
mod garden;
mod herbs;
mod jars;
mod mixtures;
mod photos;
mod rack;
mod refusals;
mod shelf;
mod spine;
mod world;
