//! Laws of the mixture engine.
