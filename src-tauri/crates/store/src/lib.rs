//! The journal on disk: one SQLite file, the log of deeds in it, and tables
//! made from the log for fast lists.
//!
//! Nothing SQL leaves this crate. It asks neither the time nor chance: ids and
//! times are given. Photo bytes live elsewhere; only what is known about a
//! photo is kept here.
//!
//! ```
//! use journal::{Bed, BedId, DeedId, DeviceId};
//! use store::{Failure, Store};
//! use uuid::Uuid;
//!
//! let mut store = Store::in_memory(DeviceId(Uuid::from_u128(1)))?;
//! let now = chrono::DateTime::parse_from_rfc3339("2025-06-01T10:00:00+02:00").unwrap();
//! let id = BedId(Uuid::from_u128(2));
//! let bed = Bed { name: "Lower bank".into(), wild: false, area_m2: None, note: None };
//! let (done, ()) = store.perform(DeedId(Uuid::from_u128(3)), now, |w| {
//!     w.record(&id, &bed)?;
//!     Ok::<_, Failure>(("Added the bed Lower bank".into(), ()))
//! })?;
//! assert_eq!(store.read(|r| r.get::<Bed>(&id))?, bed);
//! store.undo(DeedId(Uuid::from_u128(4)), now, done.deed, |line| line.to_string())?;
//! assert_eq!(store.read(|r| r.find::<Bed>(&id))?, None);
//! # Ok::<(), Failure>(())
//! ```

mod audit;
mod check;
mod failure;
mod foreign;
mod gate;
mod ledger;
mod log;
mod merge;
mod migrate;
mod name;
mod noun;
mod open;
mod project;
mod read;
mod rescue;
#[cfg(test)]
mod sample;
mod seal;
mod search;
mod settle;
mod shelf;
mod sound;
mod sql;
mod trace;
mod undo;
mod whole;
mod write;

pub use check::Fault;
pub use failure::Failure;
pub use foreign::Foreign;
pub use log::DeedRow;
pub use merge::{Absorbed, RowTally};
pub use noun::bottle::BottleRow;
pub use noun::harvest::{
    HarvestFilter, HarvestPage, HarvestRow, HerbUse, JarUse, PickingDay, YieldSum,
};
pub use noun::jar::{JarFilter, JarRow, JarSum};
pub use noun::kind::{Kind, KindSum};
pub use noun::lot::{FreshLeft, LotFilter, LotRow, Overdrawn};
pub use noun::shelf::{BottleDue, BottleFilter};
pub use noun::straining::MarcKept;
pub use noun::supply::SupplyRow;
pub use noun::tray::{OwnBatch, OwnDry, TrayRow};
pub use noun::{Table, counted};
pub use open::Store;
pub use read::{Counts, Page, Reading};
pub use rescue::{Rescued, rescue};
pub use search::Sought;
pub use sound::{is_blank, unsound};
pub use trace::{Came, CameBottle, Fate, TraceFrom};
pub use whole::Contents;
pub use write::{Done, Writing};
