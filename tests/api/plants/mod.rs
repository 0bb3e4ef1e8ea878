//! Names of plants: the poisonous ones get no recipe, and every name finds its herb.

mod names;
mod poison;
