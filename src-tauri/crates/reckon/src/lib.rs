//! What follows from the journal without being stored.
//!
//! Nothing here asks the clock or the disk: `now` is passed in.

#![allow(
    missing_docs,
    reason = "a field of the wire says by its name and its unit what it is"
)]
#![allow(
    rustdoc::broken_intra_doc_links,
    reason = "a reply names the command that it answers, which stands in api"
)]

pub mod asked;
pub mod bottle;
pub mod day;
pub mod drying;
pub mod due;
pub mod herb;
pub mod item;
pub mod jar;
pub mod label;
pub mod liquid;
pub mod picking;
pub mod plan;
pub mod season;
pub mod serving;
pub mod told;
pub mod trace;
pub mod tray;
pub mod wire;
