//! Why a mixture was refused.

use crate::error::OutOfRange;

/// A mixture that cannot be answered for.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum Unmixable {
    /// A figure outside its range.
    #[error(transparent)]
    OutOfRange(#[from] OutOfRange),
    /// Neither a liquid nor a plant that brings water.
    #[error(
        "there is no liquid here; give at least one liquid, or a plant that holds water, with an amount above nothing"
    )]
    NoLiquid,
    /// A temperature at which one of the formulas says nothing.
    #[error("the temperature must be {allowed} for this liquid; {celsius} C is not")]
    TooColdOrHot {
        /// The refused temperature, C.
        celsius: f64,
        /// The range, as a phrase that follows "must be".
        allowed: &'static str,
    },
    /// Nothing on the shelf to reach a target with.
    #[error("there is nothing to pour; name at least one liquid on the shelf")]
    NoStock,
    /// Plants to be covered, but no size.
    #[error(
        "say how much to make, as the volume at the end or the volume poured, or fix the amount of one liquid; the plants alone do not tell"
    )]
    NoSize,
    /// More of an item asked for than there is.
    #[error("exactly {exactly_ml} mL were asked for, but only {available_ml} mL are on the shelf")]
    MoreThanAvailable {
        /// Position of the item in the stock.
        index: usize,
        /// What was asked for, mL.
        exactly_ml: f64,
        /// What there is, mL.
        available_ml: f64,
    },
    /// The solver gave up, which no input is known to cause.
    #[error(
        "these amounts could not be worked out; change one of the targets a little and try again"
    )]
    Unsolved,
}
