//! The estimate of a lot: prior and weigh-ins together.

use super::{
    balance,
    lot::{Basis, Lot},
    reason::Reason,
    sorption,
};
use crate::{interval::Interval, quantity::grams};

/// What can be said of a lot now. Masses are net grams, moisture is per cent on wet basis.
#[derive(Debug, Clone, PartialEq)]
pub struct Estimate {
    /// Dry matter in the whole lot.
    pub dry_matter_g: Interval,
    /// What the lot weighs when it has dried to its target: the stop weight.
    pub target_mass_g: Interval,
    /// Moisture at the last weigh-in that counts; `None` when there is none.
    pub moisture_now_wet_percent: Option<Interval>,
    /// Hours from the last weigh-in until the lot is ready; `None` with a reason.
    pub hours_left: Option<Interval>,
    /// Whether the lot is dry by the done rule.
    pub is_dry: bool,
    /// What the dry matter rests on.
    pub basis: Basis,
    /// Why, in order of importance, without repeats.
    pub reasons: Vec<Reason>,
    /// Indices of the weigh-ins that are impossible and were left out.
    pub odd: Vec<usize>,
    /// What moisture this air can reach at all; `None` without air or where it is not known.
    pub air_limit_wet_percent: Option<Interval>,
}

/// The expected weight at one time, for drawing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CurvePoint {
    /// Hours since the fresh weighing.
    pub hours: f64,
    /// Net mass in grams with its 90 % band.
    pub mass_g: Interval,
}

/// Estimates a lot.
pub fn estimate(lot: &Lot) -> Estimate {
    let dry_matter_g = lot.prior.dry_matter_g(grams(lot.fresh_g));
    let now = lot
        .weighings
        .iter()
        .max_by(|a, b| a.hours.total_cmp(&b.hours));
    Estimate {
        dry_matter_g,
        target_mass_g: dry_matter_g.map_monotone(|d| d / (1.0 - lot.target.get())),
        moisture_now_wet_percent: now
            .map(|w| balance::moisture_wet_percent(w.mass_g, dry_matter_g)),
        hours_left: None,
        is_dry: false,
        basis: lot.prior_basis,
        reasons: vec![if now.is_some() {
            Reason::CannotSayYet
        } else {
            Reason::NotWeighedYet
        }],
        odd: Vec::new(),
        air_limit_wet_percent: lot.air.and_then(sorption::room_limit_wet_percent),
    }
}

/// The drying curve of a lot from the fresh weighing on, with its band.
pub fn curve(_lot: &Lot) -> Vec<CurvePoint> {
    Vec::new()
}
