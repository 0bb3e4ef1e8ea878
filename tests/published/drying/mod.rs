//! Drying: the published equations row by row, and open curves of real plants.

mod curves;
mod equations;
