//! Kitchen and apothecary measures, each from its definition.

/// A named measure of volume.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum VolumeUnit {
    /// US gallon, 231 cubic inches.
    UsGallon,
    /// US liquid quart.
    UsQuart,
    /// US liquid pint.
    UsPint,
    /// US cup.
    UsCup,
    /// US fluid ounce.
    UsFluidOunce,
    /// US tablespoon.
    UsTablespoon,
    /// US teaspoon.
    UsTeaspoon,
    /// US fluid dram.
    UsFluidDram,
    /// US minim.
    UsMinim,
    /// Imperial gallon, 4.54609 L.
    UkGallon,
    /// Imperial pint.
    UkPint,
    /// Imperial fluid ounce.
    UkFluidOunce,
    /// Imperial fluid drachm.
    UkFluidDrachm,
    /// Imperial minim.
    UkMinim,
    /// Fluid ounce of US food labels (21 CFR 101.9).
    UsLabelFluidOunce,
}

impl VolumeUnit {
    /// Millilitres in one, exact by definition.
    pub fn millilitres(self) -> f64 {
        const US_GALLON: f64 = 231.0 * 2.54 * 2.54 * 2.54;
        const UK_GALLON: f64 = 4546.09;
        match self {
            Self::UsGallon => US_GALLON,
            Self::UsQuart => US_GALLON / 4.0,
            Self::UsPint => US_GALLON / 8.0,
            Self::UsCup => US_GALLON / 16.0,
            Self::UsFluidOunce => US_GALLON / 128.0,
            Self::UsTablespoon => US_GALLON / 256.0,
            Self::UsTeaspoon => US_GALLON / 768.0,
            Self::UsFluidDram => US_GALLON / 1024.0,
            Self::UsMinim => US_GALLON / 61440.0,
            Self::UkGallon => UK_GALLON,
            Self::UkPint => UK_GALLON / 8.0,
            Self::UkFluidOunce => UK_GALLON / 160.0,
            Self::UkFluidDrachm => UK_GALLON / 1280.0,
            Self::UkMinim => UK_GALLON / 76800.0,
            Self::UsLabelFluidOunce => 30.0,
        }
    }
}

/// A named measure of mass.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum MassUnit {
    /// Avoirdupois pound, 453.59237 g.
    Pound,
    /// Avoirdupois ounce.
    Ounce,
    /// Grain, a 7000th of a pound.
    Grain,
    /// Apothecary scruple.
    Scruple,
    /// Apothecary dram.
    ApothecaryDram,
    /// Troy or apothecary ounce.
    TroyOunce,
}

impl MassUnit {
    /// Grams in one, exact by definition.
    pub fn grams(self) -> f64 {
        const POUND: f64 = 453.59237;
        match self {
            Self::Pound => POUND,
            Self::Ounce => POUND / 16.0,
            Self::Grain => POUND / 7000.0,
            Self::Scruple => POUND * 20.0 / 7000.0,
            Self::ApothecaryDram => POUND * 60.0 / 7000.0,
            Self::TroyOunce => POUND * 480.0 / 7000.0,
        }
    }
}
