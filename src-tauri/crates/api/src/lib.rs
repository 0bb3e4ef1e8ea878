//! Every command that a page or a script may give: one file a noun, one list.
//!
//! A command is a Rust value with a name, a request, a reply and a body. What
//! lives here is the meeting of the journal, the photos, the formulary and the
//! clock; no formula, no SQL, no picture format and no transport does.

mod about;
mod app;
mod asked;
mod bed;
#[cfg(feature = "ts")]
mod bindings;
mod bottle;
mod claim;
mod clock;
mod command;
mod deed;
mod demo;
mod discard;
mod drying;
mod due;
mod failure;
mod harvest;
mod herb;
mod jar;
mod label;
mod mixture;
mod ph;
mod photo;
mod safe;
mod search;
mod season;
mod setting;
mod speech;
mod supply;
mod trace;
mod tray;
mod wire;
mod words;

pub use app::App;
pub use clock::{Clock, StandingClock, SystemClock};
pub use command::{Command, carried, envelope, names};
pub use demo::Season;
pub use failure::{Code, Failure};
pub use photo::Picture;
pub use safe::MadeFile;
pub use speech::{Language, call, call_in, core_words, spoken};

#[cfg(feature = "ts")]
pub use command::bindings;
