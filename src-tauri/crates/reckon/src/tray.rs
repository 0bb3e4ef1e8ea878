//! A tray as its weigh-ins tell of it.

pub mod card;
pub mod course;
pub mod reasons;
pub mod run;
