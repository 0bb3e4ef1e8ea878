//! The drying rack: `tray.*`, `weighing.*`.

mod page;
mod run;
mod weigh;
mod wire;
mod write;

pub(crate) use page::card;
pub(crate) use run::Run;
pub use wire::*;
