//! The trade's small sums. No dose is among them, and none for a child.

use message::{Unit, say};
use physics::{
    OutOfRange, Strength, WetBasis,
    error::within,
    mixture::ethanol,
    quantity::{grams_of, millilitres},
};

/// Dried herb that a millilitre stands for, g: `1/r` for a dried herb at 1:r.
///
/// # Errors
/// [`OutOfRange`] for a ratio outside 0.1 to 1000 mL to a gram.
///
/// *Source*: arithmetic; USP IX, 20 g per 100 mL is 1:5.
///
/// ```
/// assert_eq!(formulary::arithmetic::dried_equivalent_g_per_ml(5.0)?, 0.2);
/// # Ok::<(), physics::OutOfRange>(())
/// ```
pub fn dried_equivalent_g_per_ml(ratio_ml_per_g: f64) -> Result<f64, OutOfRange> {
    Ok(1.0 / ratio(ratio_ml_per_g)?)
}

/// Dry matter of a fresh herb that a millilitre stands for, g.
///
/// With the plant's own water in the liquid `(1-w)/(r+w)`, without it `(1-w)/r`.
///
/// # Errors
/// [`OutOfRange`] for a ratio outside 0.1 to 1000 mL to a gram.
///
/// *Source*: arithmetic on volumes; 80 % water at 1:2 is 0.071 g/mL, like 1:14 dried.
pub fn fresh_equivalent_g_per_ml(
    ratio_ml_per_g: f64,
    moisture: WetBasis,
    with_plant_water: bool,
) -> Result<f64, OutOfRange> {
    let (r, w) = (ratio(ratio_ml_per_g)?, moisture.get());
    Ok((1.0 - w) / if with_plant_water { r + w } else { r })
}

/// Ethanol in a volume, g: a spoon, a dropper, a whole bottle.
///
/// # Errors
/// [`OutOfRange`] for a volume outside 0 to 1 000 000 mL or a strength outside 0 to 100 %.
///
/// *Source*: `mL ABV/100 0.78924`, the density of ethanol at 20 C (OIML R 22).
pub fn ethanol_g(volume_ml: f64, strength_percent_vol: f64) -> Result<f64, OutOfRange> {
    let ml = within(say!("what-volume"), volume_ml, 0.0, 1e6, Unit::Millilitre)?;
    let strength = Strength::from_percent(strength_percent_vol)?;
    Ok(grams_of(ethanol::ethanol_in(millilitres(ml), strength)))
}

/// Drops in a millilitre by the maker's own dropper: the middle of the counts, and the counts' own range.
///
/// # Errors
/// [`OutOfRange`] without three counts, or for a count outside 5 to 120.
///
/// *Source*: the count itself; drops of one liquid say nothing of another's (Eschbaum 1895).
pub fn drops_per_ml(counts: &[f64]) -> Result<physics::Interval, OutOfRange> {
    within(
        say!("what-number-of-counts"),
        counts.len() as f64,
        3.0,
        100.0,
        Unit::None,
    )?;
    let mut sorted = Vec::with_capacity(counts.len());
    for count in counts {
        sorted.push(within(
            say!("what-drops-in-a-millilitre"),
            *count,
            5.0,
            120.0,
            Unit::None,
        )?);
    }
    sorted.sort_by(f64::total_cmp);
    let middle = sorted.len() / 2;
    let value = if sorted.len() % 2 == 1 {
        sorted[middle]
    } else {
        0.5 * (sorted[middle - 1] + sorted[middle])
    };
    Ok(physics::Interval::spanning(
        value,
        sorted[0],
        sorted[sorted.len() - 1],
    ))
}

/// What the inputs of one bottle cost: `(ml poured / size bottle bought) price`, summed and shared out.
///
/// # Errors
/// [`OutOfRange`] for a size of nothing, a negative price, or no bottle.
pub fn cost_per_bottle(inputs: &[Input], bottles: u32) -> Result<f64, OutOfRange> {
    within(
        say!("what-number-of-bottles"),
        f64::from(bottles),
        1.0,
        1e6,
        Unit::None,
    )?;
    let mut sum = 0.0;
    for input in inputs {
        let size = within(
            say!("what-size-bought"),
            input.bought_ml,
            1e-3,
            1e9,
            Unit::Millilitre,
        )?;
        let price = within(say!("what-price"), input.price, 0.0, 1e9, Unit::None)?;
        let used = within(
            say!("what-amount-used"),
            input.used_ml,
            0.0,
            1e9,
            Unit::None,
        )?;
        sum += used / size * price;
    }
    Ok(sum / f64::from(bottles))
}

/// One input with its price.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Input {
    /// mL (or g) used.
    pub used_ml: f64,
    /// mL (or g) bought for the price.
    pub bought_ml: f64,
    /// The price.
    pub price: f64,
}

/// Parts of a high and a low strength for one between, by alligation: `target - low : high - target`.
///
/// It takes volumes as additive, which errs by up to about 2 % vol; the mixture engine does not.
///
/// # Errors
/// [`OutOfRange`] when the target does not lie between the two.
///
/// *Source*: textbook rule of alligation.
pub fn alligation(high: f64, low: f64, target: f64) -> Result<(f64, f64), OutOfRange> {
    within(
        say!("what-strength-wanted"),
        target,
        low,
        high,
        Unit::PercentVol,
    )?;
    Ok((target - low, high - target))
}

/// What comes out of a jar, mL: `poured + plant water - k dry matter`.
///
/// *Source*: Herbal Materia Medica 1995: k = 0.78 mL/g pressed, 1.57 to 1.83 wrung by hand.
pub fn yield_ml(
    poured_ml: f64,
    plant_water_ml: f64,
    dry_matter_g: f64,
    retention_ml_per_g: f64,
) -> f64 {
    (poured_ml + plant_water_ml - retention_ml_per_g * dry_matter_g).max(0.0)
}

/// Fresh herb that gives a weight of dry herb, g, with the share lost in trimming.
///
/// `dry (1 - m)/(1 - w) / (1 - loss)`.
///
/// # Errors
/// [`OutOfRange`] for a loss outside 0 to 0.9.
pub fn fresh_for_dry(
    dry_g: f64,
    dried: WetBasis,
    fresh: WetBasis,
    trim_loss: f64,
) -> Result<f64, OutOfRange> {
    let loss = within(
        say!("what-share-lost-in-trimming"),
        trim_loss,
        0.0,
        0.9,
        Unit::None,
    )?;
    Ok(dry_g * (1.0 - dried.get()) / (1.0 - fresh.get()) / (1.0 - loss))
}

fn ratio(ratio: f64) -> Result<f64, OutOfRange> {
    within(
        say!("what-ratio"),
        ratio,
        0.1,
        1000.0,
        Unit::MillilitrePerGram,
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    fn wet(percent: f64) -> WetBasis {
        WetBasis::from_percent(percent).unwrap()
    }

    #[test]
    fn fresh_mint_at_1_to_2_is_like_1_to_14_dried() {
        // Trade notes, section 5: 0.071 g dry per mL.
        let with = fresh_equivalent_g_per_ml(2.0, wet(80.0), true).unwrap();
        assert!((with - 0.0714).abs() < 0.0001);
        assert!((1.0 / with - 14.0).abs() < 0.01);
        assert!((fresh_equivalent_g_per_ml(2.0, wet(80.0), false).unwrap() - 0.1).abs() < 1e-12);
    }

    #[test]
    fn two_millilitres_of_60_percent_hold_0_95_g() {
        assert!((ethanol_g(2.0, 60.0).unwrap() - 0.95).abs() < 0.005);
        assert!((ethanol_g(1.0, 60.0).unwrap() - 0.47).abs() < 0.005);
        assert!(ethanol_g(f64::NAN, 60.0).is_err() && ethanol_g(1.0, 140.0).is_err());
    }

    #[test]
    fn drops_are_counted_three_times() {
        let drops = drops_per_ml(&[21.0, 19.0, 20.0]).unwrap();
        assert_eq!((drops.low, drops.value, drops.high), (19.0, 20.0, 21.0));
        assert!(drops_per_ml(&[20.0, 20.0]).is_err() && drops_per_ml(&[20.0, 20.0, 0.0]).is_err());
    }

    #[test]
    fn a_bottle_costs_its_share() {
        let spirit = Input {
            used_ml: 250.0,
            bought_ml: 1000.0,
            price: 40.0,
        };
        assert_eq!(cost_per_bottle(&[spirit], 5).unwrap(), 2.0);
        assert!(cost_per_bottle(&[spirit], 0).is_err());
        assert!(
            cost_per_bottle(
                &[Input {
                    bought_ml: 0.0,
                    ..spirit
                }],
                1
            )
            .is_err()
        );
    }

    #[test]
    fn fresh_herb_for_a_dry_weight() {
        // drying notes: r = (100 - MC_dry)/(100 - MC_fresh).
        let fresh = fresh_for_dry(100.0, wet(10.0), wet(80.0), 0.0).unwrap();
        assert!((fresh - 450.0).abs() < 1e-9);
        assert!((fresh_for_dry(100.0, wet(10.0), wet(80.0), 0.1).unwrap() - 500.0).abs() < 1e-9);
    }
}
