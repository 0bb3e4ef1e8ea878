//! The journal's folder, kept safe: open, lock, backup, restore, merge, export, import, rescue.
//!
//! What a ZIP is, is known to `archive`; what a journal is, to `store`.

#![allow(
    missing_docs,
    reason = "a field of a report says by its name and its unit what it is"
)]
#![allow(
    rustdoc::broken_intra_doc_links,
    reason = "a reply names the command that it answers, which stands in api"
)]

pub mod aside;
pub mod backup;
pub mod check;
pub mod damaged;
pub mod export;
pub mod folder;
pub mod import;
pub mod incoming;
pub mod job;
pub mod lock;
pub mod lost;
pub mod merge;
pub mod open;
pub mod outcome;
pub mod readme;
pub mod report;
pub mod rescue;
pub mod restore;
pub mod tables;
