//! Water activity: one relation for each solute, two rules for mixing them.

use super::{
    acid,
    composition::{Component, Composition},
    glycerol, sugar,
    unmixable::Unmixable,
    water,
};
use crate::{
    error::within,
    interval::Interval,
    quantity::{ThermodynamicTemperature, degrees_celsius},
};
use libm::{exp, log};
use message::{Unit, say};

/// Water activity by both mixing rules.
#[derive(Debug, Clone, Copy, PartialEq, serde::Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct WaterActivity {
    /// The higher of the two rules, never below either: keeping is judged by this.
    pub highest: Interval,
    /// Ross 1975: the product of the activities of each solute alone in all of the water.
    pub by_ross: Interval,
    /// Multi-solute Norrish (FAO Agricultural Services Bulletin 149), held in honey to what was measured.
    pub by_norrish: Interval,
    /// What keeping is judged by: `highest`, with the doubt of a mixture above it whatever is dissolved, so that a
    /// little more of a solute can never count against a liquid.
    #[serde(skip)]
    pub judged: Interval,
}

/// Water activity of a composition at a temperature.
///
/// Ross: `aw = product of aw_i`, each solute alone in all of the water. Norrish:
/// `aw = X_w exp(-sum K_i X_i^2)` over all species. Glycerol alone follows Zhang, Grace and Sun 2022,
/// ethanol alone a reduction of measured pressures at 30 C, sugars alone Norrish 1966, and where glucose and
/// fructose are as thick as honey the line fitted to measured honeys, see [`honey_water_activity`].
///
/// *Valid for* 0 to 40 C; within 0.006 (ethanol to 60 % vol), 0.012 (above), 0.01 (sugars) and 0.015 (glycerol
/// to 60 %) alone, about 0.03 in mixtures.
///
/// # Errors
/// [`Unmixable`] outside -20 to 60 C, or without any liquid.
///
/// *Source*: Ross 1975; FAO Agricultural Services Bulletin 149 ch. 4.
///
/// ```
/// use physics::{mixture::{Component, Composition, water_activity}, quantity::{celsius, grams}};
/// let syrup = Composition::none()
///     .with(Component::Sucrose, grams(67.9))?
///     .with(Component::Water, grams(32.1))?;
/// // Saturated sucrose at 25 C: 0.843.
/// assert!((water_activity(&syrup, celsius(25.0))?.highest.value - 0.843).abs() < 0.006);
/// # Ok::<(), physics::mixture::Unmixable>(())
/// ```
pub fn water_activity(
    liquid: &Composition,
    temperature: ThermodynamicTemperature,
) -> Result<WaterActivity, Unmixable> {
    let t = within(
        say!("what-temperature"),
        degrees_celsius(temperature),
        -20.0,
        60.0,
        Unit::Celsius,
    )?;
    if liquid.liquid_g() <= 0.0 {
        return Err(Unmixable::NoLiquid);
    }
    let activity = of(liquid, 0.0, t);
    Ok(WaterActivity {
        highest: activity.interval(activity.highest),
        by_ross: activity.interval(activity.ross),
        by_norrish: activity.interval(activity.norrish),
        judged: activity.judged(),
    })
}

/// Norrish constants, positive where the solute lowers the activity below Raoult's.
///
/// *Source*: Norrish 1966, Chirife, FAO Agricultural Services Bulletin 149 ch. 4;
/// the ethanol figure is a fit to measured pressures at 30 C, for 10 to 80 % vol.
mod norrish {
    pub const SUCROSE: f64 = 6.47;
    pub const GLUCOSE: f64 = 2.25;
    pub const FRUCTOSE: f64 = 2.15;
    pub const GLYCEROL: f64 = 1.16;
    pub const ETHANOL: f64 = -1.6;
}

/// Water activity of honey of `water_percent` by mass, at 25 C.
///
/// `aw = 0.267 + 0.0177 MC`: the weighted average of the lines that were fitted to floral honeys.
///
/// *Valid for* 10 to 25 % water, within 0.03.
///
/// *Source*: Perez, Sanchez, Baeza, Zamora and Chirife 2009, Food and Bioprocess Technology 2(4) (coefficients
/// from memory). Honeys of 13.4 to 20.4 % water were measured at 0.47 to 0.591 (Abramovic et al. 2008; Serin,
/// Turhan and Turhan 2017).
///
/// ```
/// assert!((physics::mixture::honey_water_activity(17.0) - 0.568).abs() < 0.001);
/// ```
pub fn honey_water_activity(water_percent: f64) -> f64 {
    0.267 + 0.0177 * water_percent
}

/// Mass fraction of glucose and fructose in their own water from which honey's line counts alone, and up to which
/// Norrish does; between the two they are blended (our own choice: honey holds 75 % or more).
const AS_THICK_AS_HONEY: f64 = 0.75;
const THIN: f64 = 0.60;
/// The driest honey that the line is used for, as mass fraction of its sugars.
const THICKEST_HONEY: f64 = 0.90;

/// How far the relations leave `highest` open in honey: measured honeys lie 0.03 about the line.
const HONEY_DOUBT: f64 = 0.03;

/// By what Norrish's rule is multiplied where `honey_g` of the glucose and fructose came in with honey and they are
/// as thick as in it: there its constants are stretched and read 0.01 to 0.04 high. Also how far the honey line
/// counts, 0 to 1.
fn as_in_honey(liquid: &Composition, honey_g: f64) -> (f64, f64) {
    let hexoses_g = liquid.hexoses_g();
    let share = hexoses_g / (hexoses_g + liquid.grams(Component::Water));
    let thick = ((share - THIN) / (AS_THICK_AS_HONEY - THIN)).clamp(0.0, 1.0);
    let counts = thick * (honey_g / hexoses_g).min(1.0);
    if counts.is_nan() || counts <= 0.0 {
        return (1.0, 0.0);
    }
    // Thicker than any honey the line ends, and what it says there goes on.
    let share = share.min(THICKEST_HONEY);
    let water = hexoses_g * (1.0 / share - 1.0) / water::MOLAR_MASS;
    let glucose = liquid.grams(Component::Glucose) / sugar::HEXOSE_MOLAR_MASS;
    let fructose = liquid.grams(Component::Fructose) / sugar::HEXOSE_MOLAR_MASS;
    let all = glucose + fructose + water;
    let pull = |moles: f64, k: f64| k * (moles / all) * (moles / all);
    let stretched =
        (water / all) * exp(-(pull(glucose, norrish::GLUCOSE) + pull(fructose, norrish::FRUCTOSE)));
    let measured = honey_water_activity(100.0 * (1.0 - share));
    (1.0 + counts * (measured / stretched - 1.0), counts)
}

/// Above this share of ethanol in ethanol and water (75 % vol) the constant Norrish term of
/// ethanol leaves the measured activities.
const ETHANOL_LIMIT: f64 = 0.68;

/// Molar mass of ethanol, g/mol.
const ETHANOL_MOLAR_MASS: f64 = 46.069;

/// Water activity of a mixture by both rules, without the doubt about them.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Activity {
    pub ross: f64,
    pub norrish: f64,
    /// The higher of the two: what keeping is judged by.
    pub highest: f64,
    /// Half-width of the 90 % interval around each of them.
    pub doubt: f64,
}

/// How far the rules leave the activity of a mixture open.
const MIXTURE_DOUBT: f64 = 0.03;

impl Activity {
    /// See [`WaterActivity::judged`].
    pub fn judged(&self) -> Interval {
        Interval {
            high: (self.highest + MIXTURE_DOUBT).min(1.0),
            ..self.interval(self.highest)
        }
    }

    /// One of the figures with the doubt about it.
    pub fn interval(&self, figure: f64) -> Interval {
        Interval {
            low: (figure - self.doubt).max(0.0),
            value: figure,
            high: (figure + self.doubt).min(1.0),
        }
    }
}

/// Evaluates both rules at `t` in C, where `honey_g` of the glucose and fructose came in with honey.
pub(crate) fn of(liquid: &Composition, honey_g: f64, t: f64) -> Activity {
    let grams = |component| liquid.grams(component);
    let water_g = grams(Component::Water);
    if water_g <= 0.0 {
        return Activity {
            ross: 0.0,
            norrish: 0.0,
            highest: 0.0,
            doubt: 0.0,
        };
    }
    let water = water_g / water::MOLAR_MASS;
    let ethanol = grams(Component::Ethanol) / ETHANOL_MOLAR_MASS;
    let glycerol = grams(Component::Glycerol) / glycerol::MOLAR_MASS;
    let glucose = grams(Component::Glucose) / sugar::HEXOSE_MOLAR_MASS;
    let fructose = grams(Component::Fructose) / sugar::HEXOSE_MOLAR_MASS;
    let acid = grams(Component::AceticAcid) / acid::MOLAR_MASS;
    // Sugar that lies undissolved at the bottom binds no water.
    let all_sucrose = grams(Component::Sucrose);
    let dissolved = all_sucrose - sugar::undissolved(liquid, all_sucrose, t);
    let sucrose = dissolved / sugar::SUCROSE_MOLAR_MASS;
    let (in_honey, honey_counts) = as_in_honey(liquid, honey_g);

    let alone = |moles: f64, k: f64| {
        let x = moles / (moles + water);
        (1.0 - x) * exp(-k * x * x)
    };
    let ross = by_share(ethanol, water, ethanol_alone)
        * by_share(glycerol, water, |x| glycerol_alone(x, t))
        * alone(sucrose, norrish::SUCROSE)
        * alone(glucose, norrish::GLUCOSE)
        * alone(fructose, norrish::FRUCTOSE)
        * alone(acid, 0.0);

    let all = water + ethanol + glycerol + sucrose + glucose + fructose + acid;
    let pull = |moles: f64, k: f64| k * (moles / all) * (moles / all);
    let norrish = in_honey
        * (water / all)
        * exp(-(pull(ethanol, norrish::ETHANOL)
            + pull(glycerol, norrish::GLYCEROL)
            + pull(sucrose, norrish::SUCROSE)
            + pull(glucose, norrish::GLUCOSE)
            + pull(fructose, norrish::FRUCTOSE)));

    let ethanol_share = grams(Component::Ethanol) / (grams(Component::Ethanol) + water_g);
    // There the constant term of ethanol reads high, and the rule is held to the other.
    let norrish = if ethanol_share > ETHANOL_LIMIT {
        norrish.min(ross)
    } else {
        norrish
    };
    let highest = ross.max(norrish);
    let groups = [ethanol, glycerol, sucrose + glucose + fructose, acid];
    Activity {
        ross,
        norrish,
        highest,
        doubt: doubt(groups, ethanol_share, highest, t)
            .max(honey_counts * HONEY_DOUBT.min(1.0 - highest)),
    }
}

/// How far the relations may be off: 0.03 for a mixture, and what each relation was
/// found to miss its own measurements by when it is alone; nothing in pure water.
fn doubt(
    [ethanol, glycerol, sugars, acid]: [f64; 4],
    ethanol_share: f64,
    activity: f64,
    t: f64,
) -> f64 {
    let dissolved = ethanol + glycerol + sugars + acid;
    let own = if dissolved <= 0.0 {
        0.0
    } else if ethanol.max(glycerol).max(sugars).max(acid) < 0.98 * dissolved {
        MIXTURE_DOUBT
    } else if ethanol >= 0.98 * dissolved {
        if ethanol_share > 0.5209 { 0.012 } else { 0.006 }
    } else if glycerol >= 0.98 * dissolved {
        if activity > 0.6 { 0.015 } else { 0.03 }
    } else {
        0.01
    };
    // CRC freezing points show ethanol's 30 C relation reading high by 15 % of the lowering near -7 C.
    let cold = if ethanol > 0.0 {
        ((20.0 - t) / 27.0).clamp(0.0, 1.0)
    } else {
        0.0
    };
    let own = own + 0.15 * cold * (1.0 - activity);
    // Close to pure water no relation can be off by more than the whole lowering.
    f64::min(own, 1.0 - activity)
}

fn by_share(solute: f64, water: f64, relation: impl Fn(f64) -> f64) -> f64 {
    if solute > 0.0 {
        relation(solute / (solute + water))
    } else {
        1.0
    }
}

/// Water activity of ethanol-water at 30 C, `x` the mole fraction of ethanol.
///
/// `g = x y sum c_k (x - y)^k`, `aw = y exp(g - x g')`, `y = 1 - x`: Redlich-Kister, six
/// terms fitted to measured total pressures at 30 C (rms 0.12 %). The two-constant van Laar
/// form of the same data misses them by 0.0075 near 40 % vol and is not used.
fn ethanol_alone(x: f64) -> f64 {
    const C: [f64; 6] = [
        1.20109241,
        -0.30439725,
        0.03899009,
        0.01085657,
        -0.12024078,
        0.05733863,
    ];
    let y = 1.0 - x;
    let z = x - y;
    let (sum, slope) = C
        .iter()
        .rev()
        .fold((0.0, 0.0), |(sum, slope), c| (sum * z + c, slope * z + sum));
    // d/dx of x y sum(z), with dz/dx = 2.
    let gibbs = x * y * sum;
    let gibbs_slope = (y - x) * sum + 2.0 * x * y * slope;
    y * exp(gibbs - x * gibbs_slope)
}

/// Water activity of glycerol-water at `t` in C, `x` the mole fraction of glycerol.
///
/// *Source*: Zhang, Grace and Sun 2022, in the form coded in aquasol 1.8.2 (its last numerator
/// is not the textbook Wilson form, but the numbers agree with every other table).
fn glycerol_alone(x: f64, t: f64) -> f64 {
    const A12: f64 = 0.89924067;
    const A21: f64 = -1.9173013;
    const B12: f64 = 127.07511;
    const B21: f64 = 91.465969;
    const V1: f64 = 0.0188311;
    const V2: f64 = 0.08685;
    let kelvin = t + 273.15;
    let y = 1.0 - x;
    if y <= 0.0 {
        return 0.0;
    }
    let r = x / y;
    let l = exp(-(A12 + B12 / kelvin));
    let m = exp(-(A21 + B21 / kelvin));
    let ln = -log(1.0 + (V2 / V1) * r * l) + r / ((V1 / V2) / l + r)
        - r * (V2 / V1) * l / (r + (V1 / V2) * m);
    exp(ln)
}
