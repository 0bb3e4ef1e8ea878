//! The drying rack: `tray.*`, `weighing.*`.

mod wire;

pub use wire::*;
