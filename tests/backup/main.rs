//! A backup restores, a second phone merges, an export can be read, a past year can be imported,
//! and a damaged journal gives what it can.

#![allow(clippy::unwrap_used, reason = "in a test a panic is the report")]

mod altered;
mod check;
#[path = "../api/world.rs"]
#[allow(dead_code, reason = "the other tests of the commands use the rest")]
mod commands;
mod damage;
mod export;
mod foreign;
mod frozen;
mod fuzz;
mod histories;
mod household;
mod import;
mod opening;
mod restore;
mod season;
mod trusted;
mod used_twice;
