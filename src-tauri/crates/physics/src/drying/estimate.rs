//! The estimate of a lot: prior and weigh-ins together.

use super::{
    ahead::{self, Ahead},
    balance,
    lot::{Basis, Lot},
    reading::Reading,
    reason::Reason,
    sorption,
    spread::Spread,
};
use crate::interval::Interval;

/// What can be said of a lot now. Masses are net grams, moisture is per cent on wet basis.
#[derive(Debug, Clone, PartialEq)]
pub struct Estimate {
    /// Dry matter in the whole lot.
    pub dry_matter_g: Interval,
    /// What the lot weighs when it has dried to its target: the stop weight.
    pub target_mass_g: Interval,
    /// Moisture at the last weigh-in that counts; `None` when there is none.
    pub moisture_now_wet_percent: Option<Interval>,
    /// Hours from the last weigh-in that counts until the lot is ready, which is at its target
    /// or at 12 % moisture, whichever is damper; `None` with a reason.
    pub hours_left: Option<Interval>,
    /// Hours from the last weigh-in that counts, or from the fresh weighing, until the next one is
    /// worth the walk; `None` once the lot is dry.
    pub next_weighing_hours: Option<f64>,
    /// The weight from which on weigh-ins tell of the end; `None` once they do.
    pub telling_mass_g: Option<f64>,
    /// Whether the lot is dry by the done rule.
    pub is_dry: bool,
    /// Whether it rests at its stop weight, and only a snap test can tell that it is dry.
    pub is_probably_dry: bool,
    /// What the dry matter rests on.
    pub basis: Basis,
    /// Why, in order of importance, without repeats.
    pub reasons: Vec<Reason>,
    /// Indices of the weigh-ins that are impossible and were left out.
    pub odd: Vec<usize>,
    /// What moisture this air can reach at all; `None` without air or where it is not known.
    pub air_limit_wet_percent: Option<Interval>,
}

/// Moisture (wet basis) up to which a dry herb is thought safe from mould; text read in a
/// Tasmanian grower guide: at most 10-12 % final moisture.
const SAFE_MOISTURE: f64 = 0.12;
/// How far above ready the moisture must not be when a lot is called dry.
const CALL_MARGIN: f64 = 0.02;
/// Probability that the moisture lies within the margin, at least, when a lot is called dry.
const CALL_PROBABILITY: f64 = 0.85;
/// The same where the air tells nothing and the hand alone does.
const CALL_PROBABILITY_BY_HAND: f64 = 0.9;
/// While the rest may be one on the way and nobody has tried the lot by hand, the damp end of the interval of
/// moisture must not reach what moulds: the moisture, and the probability that the lot holds no more.
const FAR_FROM_DRY: f64 = 0.20;
const NOT_FAR_PROBABILITY: f64 = 0.95;
/// Whatever the hand says, the weights must say at this probability that the lot is within the margin.
const LEAST_PROBABILITY_BY_WEIGHT: f64 = 0.5;
/// Fewer scale steps than this in the final weight cannot tell dry from nearly dry:
/// in the reference simulation 37 % of such calls were wrong even by the strictest rule.
const LEAST_STEPS: f64 = 100.0;
/// Above this humidity, as where nobody noted it, a weight that keeps still does not tell a dry herb from a
/// damp one: the isotherm comes near to 12 % there. Only a snap test does.
const HIGHEST_HUMIDITY: f64 = 0.60;
/// No interval of a mass is narrower than a step of the scale, nor than this share of it.
const NARROWEST: f64 = 0.005;
/// Below this share of the water lost, weigh-ins tell almost nothing of what comes.
const TELLING_SHARE: f64 = 0.85;

/// Hours to the next weigh-in: no sooner than half a day and night, over which a weight mostly
/// shows the weather, and no later than three days, since a rack is looked over for mould anyway.
/// Near the end every two days at least, because only a weight that keeps still is dry. Common
/// practice, no source.
const SOONEST_LOOK: f64 = 12.0;
const DAILY_LOOK: f64 = 24.0;
const LATEST_LOOK_NEAR_THE_END: f64 = 48.0;
const LATEST_LOOK: f64 = 72.0;

/// The moisture (wet basis) at which a lot counts as ready.
pub(crate) fn ready_moisture(lot: &Lot) -> f64 {
    lot.target.get().max(SAFE_MOISTURE)
}

/// Estimates a lot from its prior and its weigh-ins.
///
/// `W(t) = D (1 + Me + (M0 - Me) exp(-(K t)^n))`, `D` being the dry matter, `Me` the
/// equilibrium moisture and `M0` the fresh moisture on dry basis. While the lot is heavier
/// than a dry lot of its kind could be, the prior stands. Weigh-ins that are impossible or fit
/// no course are left out and listed. The interval also holds what else the weights may mean: a
/// damper room than an ordinary one where nobody noted the air, an oven, a rest on the way.
///
/// A lot is called dry when its weight has kept still for 36 hours (72 for roots, fruit and bark),
/// it is probably ready and at 85 % within two points of it, it dries like its kind, and the scale
/// is fine enough. Above 60 % humidity, where nobody noted the air, and where it came to rest all of a
/// sudden, it must have snapped as well;
/// until then it is probably dry. Until it has kept still for twice as long, or snapped, the weights must
/// also rule out at 95 % that it holds more than 20 %: it may rest on its way. A snap test counts by Bayes' rule and not against the weights.
///
/// Valid for drying in moving or still air without added water, 15-40 C.
/// Source: own derivation from Page's model and mass balance, not published; its constants are
/// engineering defaults whose accuracy on simulated batches `cargo dev accuracy` prints.
///
/// ```
/// use physics::{drying::{DryMatterPrior, Lot, estimate}, quantity::grams};
/// // Lemon balm leaf: dry matter 23 % of the fresh mass, give or take a fifth.
/// let lot = Lot::new(grams(400.0), DryMatterPrior::new(-1.4621, 0.2)?)?;
/// let now = estimate(&lot);
/// assert!((now.dry_matter_g.value - 92.7).abs() < 0.1);
/// assert!(now.hours_left.is_none() && !now.is_dry);
/// # Ok::<(), physics::OutOfRange>(())
/// ```
pub fn estimate(lot: &Lot) -> Estimate {
    let reading = Reading::of(lot);
    let dry_matter_g = dry_matter_g(&reading);
    let target_mass_g = dry_matter_g.map_monotone(|dry_g| dry_g / (1.0 - lot.target.get()));
    let now = reading.weighings.last().map(|w| w.1);

    let ready = ready_moisture(lot);
    let probably_ready = reading.probability_at_most(ready);
    let air_limit = lot.air.and_then(sorption::room_limit_wet_percent);
    let room_is_too_damp = air_limit.is_some_and(|limit| limit.value > 100.0 * ready - 0.5);
    let air_is_unknown = lot.air.is_some() && air_limit.is_none();
    let scale_is_too_coarse = target_mass_g.value < LEAST_STEPS * reading.step_g;
    let is_unlike = reading.is_unlike_prior();
    let air_tells = lot
        .air
        .is_some_and(|air| air.humidity.get() <= HIGHEST_HUMIDITY);
    let seems_ready =
        now.is_some_and(|mass_g| 1.0 - dry_matter_g.value / mass_g <= ready + CALL_MARGIN);
    let (by_weight, not_far) = (
        reading.probability_by_weight(ready + CALL_MARGIN),
        reading.probability_by_weight(FAR_FROM_DRY),
    );
    let is_at_rest = seems_ready
        && reading.is_still
        && reading.gate_is_open
        && !is_unlike
        && probably_ready >= 0.5;
    let is_dry = is_at_rest
        && (!scale_is_too_coarse || reading.has_snapped)
        && ((air_tells && !reading.is_sudden) || reading.has_snapped)
        && (reading.has_snapped || reading.is_long_still || not_far >= NOT_FAR_PROBABILITY)
        && by_weight >= LEAST_PROBABILITY_BY_WEIGHT
        && (!(room_is_too_damp || air_is_unknown) || probably_ready >= 0.95)
        && reading.probability_at_most(ready + CALL_MARGIN)
            >= if air_tells {
                CALL_PROBABILITY
            } else {
                CALL_PROBABILITY_BY_HAND
            };
    let is_probably_dry = is_at_rest && !is_dry;

    let mut reasons = Vec::new();
    let mut note = |holds: bool, reason: Reason| {
        if holds {
            reasons.push(reason);
        }
    };
    note(!reading.odd.is_empty(), Reason::OddWeighing);
    note(is_unlike, Reason::UnlikePrior);
    note(is_probably_dry, Reason::ProbablyDry);
    note(room_is_too_damp, Reason::RoomTooDamp);
    note(air_is_unknown, Reason::AirOutOfRange);
    let too_early = reading.share_lost() < TELLING_SHARE;
    let hours_left = if is_dry {
        Some(Interval::spanning(0.0, 0.0, ahead::SHORTEST))
    } else if now.is_none() {
        note(true, Reason::NotWeighedYet);
        None
    } else if !reading.gate_is_open {
        note(too_early, Reason::CannotSayYet);
        note(true, Reason::StillTooHeavy);
        None
    } else if too_early {
        note(true, Reason::CannotSayYet);
        None
    } else if (room_is_too_damp || air_is_unknown) && probably_ready < 0.5 {
        None
    } else {
        match ahead::hours_left(&reading) {
            Ahead::Hours(hours) => Some(hours),
            Ahead::MayNotGetThere => {
                note(true, Reason::MayNotGetThere);
                None
            }
            Ahead::TooUncertain => {
                note(true, Reason::TimeTooUncertain);
                None
            }
        }
    };
    note(
        reading.gate_is_open && scale_is_too_coarse,
        Reason::ScaleTooCoarse,
    );
    note(
        reading.gate_is_open && lot.air.is_none(),
        Reason::AirNotNoted,
    );
    let telling_mass_g =
        (!is_dry && (too_early || !reading.gate_is_open)).then(|| reading.telling_g(TELLING_SHARE));

    let has_taught = reading.gate_is_open
        && libm::log(dry_matter_g.high / dry_matter_g.low)
            < 0.9 * 2.0 * super::prior::Z90 * lot.prior.sd;
    Estimate {
        dry_matter_g,
        target_mass_g,
        moisture_now_wet_percent: now.map(|mass_g| {
            let moisture = balance::moisture_wet_percent(mass_g, dry_matter_g);
            let least = 100.0 * reading.step_g / (mass_g + reading.step_g);
            let high = moisture
                .high
                .max(moisture.low + least)
                .min(0.5 * (moisture.high + 100.0));
            Interval::spanning(moisture.value, moisture.low, moisture.high.max(high))
        }),
        hours_left,
        next_weighing_hours: (!is_dry).then(|| next_look(&reading, hours_left, telling_mass_g)),
        telling_mass_g,
        is_dry,
        is_probably_dry,
        basis: if has_taught {
            Basis::WeighIns
        } else {
            lot.prior_basis
        },
        reasons,
        odd: reading.odd,
        air_limit_wet_percent: air_limit,
    }
}

/// The dry matter with its 90 % interval, which never closes below what the scale can show.
fn dry_matter_g(reading: &Reading) -> Interval {
    let fresh_g = reading.lot.fresh_g;
    let at = |spread: &Spread, p: f64| libm::exp(spread.quantile(p)).min(fresh_g);
    let value = if reading.gate_is_open {
        at(&reading.dry, 0.5)
    } else {
        libm::exp(reading.dry.middle_uncut()).min(fresh_g)
    };
    let (low, high) = (at(&reading.wide, 0.05), at(&reading.wide, 0.95));
    let half = 0.5 * reading.step_g.max(NARROWEST * value).min(value);
    let low = low.min(value - half).max(0.25 * value);
    Interval::spanning(value, low, high.max(value + half).min(fresh_g))
}

/// Hours from the last weigh-in to the next one.
fn next_look(reading: &Reading, hours_left: Option<Interval>, telling_g: Option<f64>) -> f64 {
    match (hours_left, telling_g) {
        (Some(left), _) => left.low.clamp(SOONEST_LOOK, LATEST_LOOK_NEAR_THE_END),
        (None, Some(goal_g)) => ahead::hours_until(reading, goal_g)
            .map_or(LATEST_LOOK, |hours| hours.clamp(SOONEST_LOOK, LATEST_LOOK)),
        (None, None) => DAILY_LOOK,
    }
}
