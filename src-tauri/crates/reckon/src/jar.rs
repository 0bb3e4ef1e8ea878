//! A jar: what is proposed, how it is judged, what comes out, what may be done with it.

pub mod again;
pub mod allowed;
pub mod card;
pub mod compose;
pub mod cost;
pub mod equivalent;
pub mod judged;
pub mod marc;
pub mod proposal;
pub mod retention;
pub mod sample;
pub mod shelf;
