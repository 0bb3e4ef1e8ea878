//! What is known of herbs and preparations, and the rules that judge a jar.
//!
//! The facts are tables in `data/`, each with its source and its status; the
//! rules here turn them into a proposal, a verdict, a caution. Nothing here
//! computes a dose, and nothing asks the time, the disk or the random generator.

pub mod advise;
pub mod arithmetic;
pub mod cautions;
pub mod compose;
pub mod constituents;
pub mod failure;
pub mod herbs;
pub mod keep;
pub mod names;
pub mod note;
pub mod plan;
pub mod poison;
pub mod preparations;
pub mod retention;
pub mod said;
pub mod serving;
mod table;

pub use failure::Failure;
pub use note::{Note, Reason, Speaks, Status, source_of};
pub use physics::Interval;
