//! What a liquid is: every figure, each with its interval.

use super::{
    acid,
    activity::{self, WaterActivity},
    composition::{Component, Composition},
    ethanol, flash, free_water, glycerol,
    item::Kind,
    pour::{Plant, Pour},
    remark::Remark,
    sugar,
    unmixable::Unmixable,
    volume, water,
};
use crate::{
    interval::Interval,
    quantity::{ThermodynamicTemperature, degrees_celsius},
};

/// How many amounts of plant water are tried between the ends of the interval, both included.
/// Density and contraction are not monotone in it, so the ends alone would not do.
const SAMPLES: usize = 9;

/// A liquid. Plant water has joined it, dry matter has not; oil is a phase of its own and no part of it, and so is
/// sugar that does not dissolve.
#[derive(Debug, Clone, PartialEq, serde::Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Liquid {
    /// Mass, g.
    pub mass_g: Interval,
    /// Volume at the asked temperature, mL.
    pub volume_ml: Interval,
    /// Density at the asked temperature, kg/m3.
    pub density_kg_m3: Interval,
    /// Sum of the volumes before mixing less the volume after, at the asked temperature, mL.
    pub contraction_ml: Interval,
    /// Strength at 20 C, % vol.
    pub strength_percent_vol: Interval,
    /// Twice the percentage by volume at 60 F.
    pub us_proof: Interval,
    /// Ethanol, % by mass.
    pub ethanol_percent_mass: Interval,
    /// Ethanol, g.
    pub ethanol_g: Interval,
    /// Ethanol in a millilitre at 20 C, g.
    #[serde(skip)]
    pub ethanol_g_per_ml: Interval,
    /// Glycerol, % by mass.
    pub glycerol_percent_mass: Interval,
    /// Volume of the pure glycerol over that of the liquid at 20 C, %.
    pub glycerol_percent_vol: Interval,
    /// All sugars, % by mass (Brix where nothing else is dissolved).
    pub sugar_percent_mass: Interval,
    /// Titratable acidity as acetic acid, g per 100 mL at 20 C.
    pub acidity_g_per_100ml: Interval,
    /// pH of the plain acid at that dilution: a floor. None without acid.
    pub acid_ph: Option<Interval>,
    /// Water activity.
    pub water_activity: WaterActivity,
    /// What neither sugar nor glycerin keeps by the free-water rule, mL at 20 C, its alcohol included.
    pub free_water_ml: Interval,
    /// Absolute ethanol that this needs to keep, mL; 0 where nothing is left over.
    pub alcohol_to_keep_ml: Interval,
    /// Absolute ethanol in the free water, % of its volume; 100 where nothing is free.
    #[serde(skip)]
    pub alcohol_in_free_water_percent: Interval,
    /// How much of the water sugar, glycerin and alcohol keep together, %; from 100 all of it.
    #[serde(skip)]
    pub water_kept_percent: Interval,
    /// Sugar that stays at the bottom and is no part of the other figures, g.
    #[serde(skip)]
    pub undissolved_sugar_g: Interval,
    /// Flash point, C; none under 20 % vol.
    pub flash_point_c: Option<Interval>,
    /// What it is made of, at the likeliest moisture; oil and dry matter stand beside the liquid.
    #[serde(skip)]
    pub composition: Composition,
    /// What the reader of these figures should know.
    #[serde(skip)]
    pub remarks: Vec<Remark>,
}

/// What liquid comes of these pours on these plants, at a temperature.
///
/// Mass is conserved; the volume comes from each solute's own density formula. The intervals carry
/// the moisture of the plants, taken to err together, and 1 % of volume where more than
/// one kind of solute is present. Sugar that does not dissolve is left out of every figure but its own.
///
/// *Valid for* 0 to 40 C; down to -20 C with ethanol and without glycerol and sugar; up to
/// 100 C for water, sugar and acid alone.
///
/// # Errors
/// [`Unmixable`] without any liquid or outside those temperatures.
///
/// ```
/// use physics::{Strength, mixture::{Ingredient, Pour, describe}, quantity::{celsius, millilitres}};
/// let spirit = Ingredient::spirit(Strength::from_percent(94.9)?);
/// let pours = [
///     Pour::measured(spirit, millilitres(500.0))?,
///     Pour::measured(Ingredient::water(), millilitres(500.0))?,
/// ];
/// let liquid = describe(&pours, &[], celsius(20.0))?;
/// // USP 29, Diluted Alcohol: about 970 mL.
/// assert!((liquid.volume_ml.value - 970.0).abs() < 4.0);
/// # Ok::<(), physics::mixture::Unmixable>(())
/// ```
pub fn describe(
    pours: &[Pour],
    plants: &[Plant],
    temperature: ThermodynamicTemperature,
) -> Result<Liquid, Unmixable> {
    let t = degrees_celsius(temperature);
    let mut dry = Composition::none();
    for pour in pours {
        dry.add_scaled(pour.ingredient().unit(), pour.grams());
    }
    let mut plant_water = [0.0; 3];
    for plant in plants {
        for (sum, water) in plant_water.iter_mut().zip(plant.water()) {
            *sum += water;
        }
        dry = dry
            .plus(Component::DryMatter, plant.dry_matter())
            .plus(Component::Glucose, 0.5 * plant.sugar())
            .plus(Component::Fructose, 0.5 * plant.sugar());
    }
    let [low, value, high] = plant_water;
    let liquid = dry.plus(Component::Water, value);
    if liquid.liquid_g() <= 0.0 {
        return Err(Unmixable::NoLiquid);
    }
    refuse_temperature(&liquid, t)?;

    let came_as = CameAs {
        crystals_g: pours
            .iter()
            .filter(|pour| matches!(pour.ingredient().kind(), Kind::Sugar {}))
            .map(Pour::grams)
            .sum(),
        honey_g: pours
            .iter()
            .filter(|pour| matches!(pour.ingredient().kind(), Kind::Honey { .. }))
            .map(|pour| pour.grams() * pour.ingredient().unit().hexoses_g())
            .sum(),
    };
    let own: f64 = pours.iter().map(|pour| pour.own_millilitres(t)).sum();
    let brought: f64 = plants.iter().map(Plant::sugar).sum();
    let before = own + 1000.0 * brought / sugar::CRYSTAL;
    let figures = |water_g: f64| {
        Figures::of(
            &dry.plus(Component::Water, water_g),
            came_as,
            before + 1000.0 * water_g / water::rho(t),
            t,
        )
    };
    let mut described = Spread::around(figures(value));
    if low < high {
        for sample in 0..SAMPLES {
            let share = sample as f64 / (SAMPLES - 1) as f64;
            let water_g = low + share * (high - low);
            // No plant water may leave no liquid at all, which has no figures.
            if dry.liquid_g() + water_g > 0.0 {
                described.widen(figures(water_g));
            }
        }
    }
    Ok(described.into_liquid(liquid, t))
}

fn refuse_temperature(liquid: &Composition, t: f64) -> Result<(), Unmixable> {
    let has = |component| liquid.grams(component) > 0.0;
    let (low, high) =
        if has(Component::Glycerol) || (has(Component::Ethanol) && liquid.sugars_g() > 0.0) {
            (0.0, 40.0)
        } else if has(Component::Ethanol) {
            (-20.0, 40.0)
        } else {
            (0.0, 100.0)
        };
    if t.is_finite() && (low..=high).contains(&t) {
        Ok(())
    } else {
        Err(Unmixable::TooColdOrHot {
            celsius: t,
            low,
            high,
        })
    }
}

/// Of the sugars, what was poured as crystals and what as honey, g.
#[derive(Debug, Clone, Copy)]
struct CameAs {
    crystals_g: f64,
    honey_g: f64,
}

/// Every figure of a liquid of known composition, each as low, value, high.
struct Figures {
    each: [Interval; COUNT],
    acid_ph: Option<Interval>,
}

const MASS: usize = 0;
const VOLUME: usize = 1;
const DENSITY: usize = 2;
const CONTRACTION: usize = 3;
const STRENGTH: usize = 4;
const PROOF: usize = 5;
const ETHANOL_MASS_SHARE: usize = 6;
const ETHANOL: usize = 7;
const ETHANOL_PER_ML: usize = 8;
const GLYCEROL_MASS_SHARE: usize = 9;
const GLYCEROL_VOLUME_SHARE: usize = 10;
const SUGAR: usize = 11;
const ACIDITY: usize = 12;
const ROSS: usize = 13;
const NORRISH: usize = 14;
const HIGHEST: usize = 15;
const FREE: usize = 16;
const TO_KEEP: usize = 17;
const IN_FREE: usize = 18;
const KEPT: usize = 19;
const UNDISSOLVED: usize = 20;
const JUDGED: usize = 21;
const COUNT: usize = 22;

impl Figures {
    fn of(everything: &Composition, came_as: CameAs, before_ml: f64, t: f64) -> Self {
        let undissolved = sugar::undissolved(everything, came_as.crystals_g, t);
        let liquid = &everything.plus(Component::Sucrose, -undissolved);
        let before_ml = before_ml - 1000.0 * undissolved / sugar::CRYSTAL;
        let mass = liquid.liquid_g();
        let ethanol_g = liquid.grams(Component::Ethanol);
        let glycerol_g = liquid.grams(Component::Glycerol);
        let acid_g = liquid.grams(Component::AceticAcid);

        let at_20 = volume::millilitres(liquid, 20.0);
        let doubt_at_20 = volume::doubt(liquid, 20.0);
        let at_t = if t == 20.0 {
            at_20
        } else {
            volume::millilitres(liquid, t)
        };
        let doubt_at_t = volume::doubt(liquid, t);
        let exact = Interval::exact;
        // The volume is in the denominator of all of these.
        let per_volume = |amount: f64, most: f64| {
            let value = (amount / at_20).min(most);
            Interval {
                low: value / (1.0 + doubt_at_20),
                value,
                high: (value / (1.0 - doubt_at_20)).min(most),
            }
        };
        let proof = if ethanol_g > 0.0 {
            let at_60f = volume::millilitres(liquid, ethanol::SIXTY_FAHRENHEIT);
            let doubt = volume::doubt(liquid, ethanol::SIXTY_FAHRENHEIT);
            let value =
                (200_000.0 * ethanol_g / ethanol::rho(1.0, ethanol::SIXTY_FAHRENHEIT) / at_60f)
                    .min(200.0);
            Interval {
                low: value / (1.0 + doubt),
                value,
                high: (value / (1.0 - doubt)).min(200.0),
            }
        } else {
            exact(0.0)
        };
        let volume = Interval {
            low: at_t * (1.0 - doubt_at_t),
            value: at_t,
            high: at_t * (1.0 + doubt_at_t),
        };
        let activity = activity::of(liquid, came_as.honey_g, t);
        let [thin, usual, thick] = [1.0 + doubt_at_20, 1.0, 1.0 - doubt_at_20]
            .map(|share| free_water::of(liquid, share * at_20));
        let acidity = per_volume(100.0 * acid_g, f64::INFINITY);
        Self {
            each: [
                exact(mass),
                volume,
                Interval {
                    low: 1000.0 * mass / volume.high,
                    value: 1000.0 * mass / at_t,
                    high: 1000.0 * mass / volume.low,
                },
                Interval {
                    low: before_ml - volume.high,
                    value: before_ml - at_t,
                    high: before_ml - volume.low,
                },
                per_volume(100_000.0 * ethanol_g / ethanol::PURE_AT_20, 100.0),
                proof,
                exact(100.0 * ethanol_g / mass),
                exact(ethanol_g),
                per_volume(ethanol_g, f64::INFINITY),
                exact(100.0 * glycerol_g / mass),
                per_volume(100_000.0 * glycerol_g / glycerol::rho(1.0, 20.0), 100.0),
                exact(100.0 * liquid.sugars_g() / mass),
                acidity,
                activity.interval(activity.ross),
                activity.interval(activity.norrish),
                activity.interval(activity.highest),
                Interval {
                    low: thick.free_ml,
                    value: usual.free_ml,
                    high: thin.free_ml,
                },
                Interval {
                    low: thick.alcohol_to_keep_ml,
                    value: usual.alcohol_to_keep_ml,
                    high: thin.alcohol_to_keep_ml,
                },
                Interval {
                    low: thin.alcohol_in_free_water_percent,
                    value: usual.alcohol_in_free_water_percent,
                    high: thick.alcohol_in_free_water_percent,
                },
                Interval {
                    low: thin.water_kept_percent,
                    value: usual.water_kept_percent,
                    high: thick.water_kept_percent,
                },
                exact(undissolved),
                activity.judged(),
            ],
            acid_ph: acid::ph(acidity.value).map(|ph| {
                let end = |a| acid::ph(a).unwrap_or(ph);
                Interval::spanning(ph, end(acidity.low), end(acidity.high))
            }),
        }
    }
}

/// The figures at the likeliest moisture, widened by those at other moistures.
struct Spread {
    figures: Figures,
}

impl Spread {
    fn around(figures: Figures) -> Self {
        Self { figures }
    }

    fn widen(&mut self, other: Figures) {
        for (mine, theirs) in self.figures.each.iter_mut().zip(other.each) {
            *mine = hull(*mine, theirs);
        }
        if let (Some(mine), Some(theirs)) = (self.figures.acid_ph, other.acid_ph) {
            self.figures.acid_ph = Some(hull(mine, theirs));
        }
    }

    fn into_liquid(self, composition: Composition, t: f64) -> Liquid {
        let f = self.figures.each;
        let strength = f[STRENGTH];
        Liquid {
            mass_g: f[MASS],
            volume_ml: f[VOLUME],
            density_kg_m3: f[DENSITY],
            contraction_ml: f[CONTRACTION],
            strength_percent_vol: strength,
            us_proof: f[PROOF],
            ethanol_percent_mass: f[ETHANOL_MASS_SHARE],
            ethanol_g: f[ETHANOL],
            ethanol_g_per_ml: f[ETHANOL_PER_ML],
            glycerol_percent_mass: f[GLYCEROL_MASS_SHARE],
            glycerol_percent_vol: f[GLYCEROL_VOLUME_SHARE],
            sugar_percent_mass: f[SUGAR],
            acidity_g_per_100ml: f[ACIDITY],
            acid_ph: self.figures.acid_ph,
            water_activity: WaterActivity {
                highest: f[HIGHEST],
                by_ross: f[ROSS],
                by_norrish: f[NORRISH],
                judged: f[JUDGED],
            },
            free_water_ml: f[FREE],
            alcohol_to_keep_ml: f[TO_KEEP],
            alcohol_in_free_water_percent: f[IN_FREE],
            water_kept_percent: f[KEPT],
            undissolved_sugar_g: f[UNDISSOLVED],
            flash_point_c: flash::band_of(strength),
            remarks: Remark::about(&composition, f[UNDISSOLVED].value, t),
            composition,
        }
    }
}

fn hull(a: Interval, b: Interval) -> Interval {
    Interval {
        low: a.low.min(b.low),
        value: a.value,
        high: a.high.max(b.high),
    }
}
