//! Published tables, each row with its citation, against the numbers the app computes.

mod chemistry;
