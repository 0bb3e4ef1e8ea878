//! The drying rack: `tray.*`, `weighing.*`.

pub(crate) mod bin;
pub(crate) mod list;
pub(crate) mod page;
pub(crate) mod weigh;
pub(crate) mod write;
