//! Labels, sheets, calendar, book and trace, read back by programs that know nothing of ours.

mod calendar;
mod documents;
mod fit;
mod items;
mod read_back;
mod records;
mod sheets;
mod tools;
