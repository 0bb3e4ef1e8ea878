//! The journal: what must hold whatever is written in whatever order.

#![allow(clippy::unwrap_used, reason = "in a test a panic is the report")]

mod fold;
mod ledger;
