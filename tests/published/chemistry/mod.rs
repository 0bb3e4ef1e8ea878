//! Densities, conversions, dilutions, water activities and the rest of the chemistry.
