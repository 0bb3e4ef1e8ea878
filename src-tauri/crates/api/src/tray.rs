//! The drying rack: `tray.*`, `weighing.*`.

mod bin;
mod cook;
mod page;
mod run;
mod weigh;
mod wire;
mod write;

pub use bin::BinTray;
pub use cook::CookLot;
pub(crate) use page::{card, card_of};
pub(crate) use run::Run;
pub use wire::*;
pub(crate) use write::refuse_if_lost;
