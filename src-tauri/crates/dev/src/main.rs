//! The way in for developers.
fn main(){}
