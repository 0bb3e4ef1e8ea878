//! What else the weights may mean: a room damper than an ordinary one, an oven, a rest that is not the end.
//!
//! Each is a share of belief laid beside the posterior, so that the interval holds it and a lot is not
//! called dry for sure where it may be true. The shares are engineering defaults; no source.

use super::{prior::DryMatterPrior, spread::normal_cdf};

/// A normal distribution of ln D with its share of belief.
pub(crate) type Part = (f64, f64, f64);

/// An end weight with another moisture (dry basis) than was assumed: share, mean, SD.
pub(crate) struct OtherEnd {
    pub share: f64,
    pub moisture: (f64, f64),
}

/// A room whose air nobody noted may be a damp one.
pub(crate) const DAMP_ROOM: OtherEnd = OtherEnd {
    share: 0.18,
    moisture: (0.175, 0.035),
};
/// What lost more than this air would take may have been in an oven.
pub(crate) const OVEN: OtherEnd = OtherEnd {
    share: 0.5,
    moisture: (0.045, 0.02),
};

/// Lays another end beside parts that assumed `assumed` (mean and SD of the end moisture, dry basis).
pub(crate) fn beside(
    parts: &mut Vec<Part>,
    other: &OtherEnd,
    assumed: (f64, f64),
    prior: DryMatterPrior,
) {
    let shift = libm::log1p(assumed.0) - libm::log1p(other.moisture.0);
    let own = |(mean, sd): (f64, f64)| sd * sd / ((1.0 + mean) * (1.0 + mean));
    let more = own(other.moisture) - own(assumed);
    let others: Vec<Part> = parts
        .iter()
        .map(|&(share, mean, variance)| {
            // Only what the weights have taught moves with the end that they are read by.
            let taught = (1.0 - variance / (prior.sd * prior.sd)).clamp(0.0, 1.0);
            let wider = (variance + taught * taught * more).max(0.25 * variance);
            (share * other.share, mean + taught * shift, wider)
        })
        .collect();
    for part in parts.iter_mut() {
        part.0 *= 1.0 - other.share;
    }
    parts.extend(others);
}

/// Share of lots that rest on their way, and the width in ln W over which they may.
const RESTS: f64 = 0.09;
const RESTS_WITHIN: f64 = 1.2;
/// Most rests on the way are over by the first figure, and fewer last longer, by the second (hours).
const RESTS_LAST: (f64, f64) = (36.0, 72.0);
/// A rest on the way lies at least this far above the end, in ln W.
const STILL_TO_GO: f64 = 0.12;

/// Lays beside parts that take the last weight, `ln_dry_now` being the dry matter that it would mean and
/// `rest_h` how long it has kept still, for the end: that it rests on its way down, and ends where a lot of its kind does.
///
/// The share is by Bayes' rule: how often lots rest at all, over how likely an end just here is.
pub(crate) fn rest_on_the_way(
    parts: &mut Vec<Part>,
    (ln_dry_now, rest_h): (f64, f64),
    ln_fresh: f64,
    prior: DryMatterPrior,
) {
    let (mean, sd) = (ln_fresh + prior.mean, prior.sd);
    let z = (ln_dry_now - STILL_TO_GO - mean) / sd;
    let below = normal_cdf(z);
    if below < 1e-6 {
        return;
    }
    let at = |z: f64| libm::exp(-0.5 * z * z) / libm::sqrt(2.0 * std::f64::consts::PI);
    let ends_here = at((ln_dry_now - mean) / sd) / sd;
    let lasts = libm::exp(-(rest_h - RESTS_LAST.0).max(0.0) / RESTS_LAST.1);
    let odds = RESTS * lasts * below / RESTS_WITHIN / ends_here.max(1e-9);
    let share = odds / (1.0 + odds);
    for part in parts.iter_mut() {
        part.0 *= 1.0 - share;
    }
    // The moments of a normal distribution cut from above.
    let pull = at(z) / below;
    let variance = sd * sd * (1.0 - z * pull - pull * pull).max(0.02);
    parts.push((share, mean - sd * pull, variance));
}
