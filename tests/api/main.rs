//! The commands as a page or a script sees them: JSON in, JSON out, nothing of the inside.

#![allow(clippy::unwrap_used, reason = "in a test a panic is the report")]

mod advice;
mod bin;
mod calendar;
mod composer;
mod cooked;
mod deeds;
mod demo;
mod doubts;
mod drying;
mod garden;
mod herbs;
mod jars;
mod ledger;
mod lost;
mod mixtures;
mod nonsense;
mod pantry;
mod papers;
mod photos;
mod plants;
mod portraits;
mod rack;
#[path = "../paper/tools.rs"]
mod readers;
mod refusals;
mod shelf;
mod spine;
mod tongue;
mod world;
mod year;
