//! Labels, sheets, calendar, season and chain, read back by programs that know nothing of ours.

#![allow(clippy::unwrap_used, reason = "in a test a panic is the report")]

mod calendar;
mod documents;
mod fit;
mod heard;
mod items;
mod language;
mod read_back;
mod records;
mod sheets;
mod tools;
