//! The drying curve for drawing: past and future, with its band.

use super::{
    estimate::ready_moisture, lot::Lot, posterior::model_error_g, prior::Z90, reading::Reading,
};
use crate::interval::Interval;

/// The expected weight at one time.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CurvePoint {
    /// Hours since the fresh weighing.
    pub hours: f64,
    /// Net mass in grams with its 90 % band.
    pub mass_g: Interval,
}

/// Points of a curve; enough for a smooth line on a phone.
const POINTS: u32 = 49;

/// The weight of a lot from the fresh weighing on, until a day or more after it should be ready.
///
/// While the weigh-ins may not speak of the end, the curve ends where the prior says.
/// The first point is the fresh weight, which is known.
pub fn curve(lot: &Lot) -> Vec<CurvePoint> {
    let reading = Reading::of(lot);
    let shapes: Vec<_> = reading
        .posterior
        .heaviest()
        .map(|c| (c, reading.ln_end(c)))
        .collect();
    let total: f64 = shapes.iter().map(|s| s.0.weight).sum();
    let last = reading.weighings.last().map_or(0.0, |w| w.0);
    let dry_g = libm::exp(reading.dry.quantile(0.5));
    let ready_g = dry_g / (1.0 - ready_moisture(lot));
    let mut until = 0.0;
    for (c, (ln_end, _)) in &shapes {
        let ratio = (ready_g - libm::exp(*ln_end)) / (lot.fresh_g - libm::exp(*ln_end)).max(1e-9);
        until += c.weight / total * c.hours_at(ratio.clamp(0.01, 1.0));
    }
    let horizon = (until * 1.1 + reading.hours_rested()).max(last + 24.0);

    (0..POINTS)
        .map(|i| {
            let hours = horizon * f64::from(i) / f64::from(POINTS - 1);
            let (mut mean, mut square, mut error) = (0.0, 0.0, 0.0);
            for (c, (ln_end, variance)) in &shapes {
                let share = c.weight / total;
                let ratio = c.moisture_ratio(reading.hours_dried(hours));
                let end_g = libm::exp(*ln_end).min(lot.fresh_g);
                let mass_g = lot.fresh_g * ratio + end_g * (1.0 - ratio);
                let end_sd = (1.0 - ratio) * end_g * libm::sqrt(*variance);
                let model = if i == 0 {
                    0.0
                } else {
                    model_error_g(lot.fresh_g, end_g, ratio)
                };
                mean += share * mass_g;
                square += share * (mass_g * mass_g + end_sd * end_sd);
                error += share * model * model;
            }
            let half = Z90 * libm::sqrt((square - mean * mean).max(0.0) + error);
            let low = (mean - half).max(0.0);
            let high = (mean + half).min(lot.fresh_g).max(mean);
            CurvePoint {
                hours,
                mass_g: Interval::spanning(mean, low, high),
            }
        })
        .collect()
}
