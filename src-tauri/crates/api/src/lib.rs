//! Every command that a page or a script may give: one file a noun, one list.
//!
//! A command is a Rust value with a name, a request, a reply and a body. What
//! lives here is the meeting of the journal, the photos, the formulary and the
//! clock; no formula, no SQL, no picture format and no transport does.

mod backup;
mod bed;
#[cfg(feature = "ts")]
mod bindings;
mod bottle;
mod changed;
mod clock;
mod command;
mod deed;
mod demo;
mod discard;
mod door;
mod dropper;
mod drying;
mod due;
mod export;
mod file;
mod harvest;
mod herb;
mod import;
mod jar;
mod job;
mod journal;
mod label;
mod lot;
mod merge;
mod mixture;
mod open;
mod ph;
mod photo;
mod plan;
mod portrait;
mod preparation;
mod printed;
mod recipe;
mod refused;
mod reply;
mod request;
mod rescue;
mod restore;
mod season;
mod setting;
mod speech;
mod supply;
mod trace;
mod tray;
mod weighing;

#[cfg(feature = "ts")]
pub use bindings::shared_names;
pub use clock::Clock;
pub use clock::StandingClock;
pub use clock::SystemClock;
pub use demo::season::Season;
pub use door::App;
#[cfg(feature = "ts")]
pub use door::bindings;
pub use door::call;
pub use door::call_in;
pub use door::carried;
pub use door::names;
pub use file::MadeFile;
pub use message::Code;
pub use message::Failure;
pub use photo::Picture;
pub use reply::envelope;
pub use reply::spoken;
pub use speech::Language;
