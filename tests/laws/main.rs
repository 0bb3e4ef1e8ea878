//! What must hold for any input whatever.

mod mixture;
