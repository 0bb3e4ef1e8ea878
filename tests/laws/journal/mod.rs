//! The journal: what must hold whatever is written in whatever order.

mod fold;
mod ledger;
