//! Batches drawn afresh, of the kind that `simulated_truth` holds 300 of, for figures that nothing was
//! tuned on.
//!
//! Truth is two compartments of tissue, one drying slower than the other, with a capped early rate in
//! four batches of ten; air that swings by day and night and drifts with the weather; an equilibrium
//! that differs by lot; dry matter drawn from the prior; a scale of whole grams, read every 8 to 26
//! hours. It shares no code with the forecast but the published isotherm.

use checks::Random;
use physics::{
    drying::{DryMatterPrior, Pace, RelativeHumidity, sorption::HERB_LEAF},
    quantity::celsius,
};

use crate::{Batch, WeighIn};

/// Hours of one step; drying takes days.
const STEP: f64 = 0.25;

/// The air of a room: its means, how far it swings in a day, and how the weather stands.
struct Room {
    celsius: f64,
    humidity: f64,
    swing: (f64, f64),
    noon: f64,
    weather: (f64, f64),
}

impl Room {
    fn drawn(dice: &mut Random) -> Self {
        Self {
            celsius: (23.0 + 2.8 * dice.normal()).clamp(17.0, 29.0),
            humidity: dice.between(0.41, 0.64),
            swing: (dice.between(1.0, 4.0), dice.between(0.02, 0.10)),
            noon: dice.between(0.0, 24.0),
            weather: (0.0, 0.0),
        }
    }

    /// Temperature and humidity at an hour; the weather drifts over two days.
    fn at(&mut self, hours: f64, dice: &mut Random) -> (f64, f64) {
        let news = libm::sqrt(2.0 * STEP / 48.0);
        self.weather.0 += 1.5 * news * dice.normal() - self.weather.0 * STEP / 48.0;
        self.weather.1 += 0.05 * news * dice.normal() - self.weather.1 * STEP / 48.0;
        let sun = libm::sin(2.0 * std::f64::consts::PI * (hours - self.noon) / 24.0);
        (
            self.celsius + self.swing.0 * sun + self.weather.0,
            (self.humidity - self.swing.1 * sun + self.weather.1).clamp(0.2, 0.78),
        )
    }
}

/// As many batches as asked for, each of a kind of plant taken from `kinds`.
pub fn drawn(kinds: &[Batch], count: usize, seed: u64) -> Vec<Batch> {
    let mut dice = Random::of(seed);
    (0..count)
        .map(|_| {
            let at = (dice.unit() * kinds.len() as f64) as usize;
            batch(kinds[at].prior, kinds[at].pace, &mut dice)
        })
        .collect()
}

fn batch(prior: DryMatterPrior, pace: Pace, dice: &mut Random) -> Batch {
    let mut fraction = 1.0;
    // No plant is picked three quarters dry.
    while fraction >= 0.75 {
        fraction = libm::exp(prior.mean() + prior.sd() * dice.normal());
    }
    let fresh_g = libm::round(libm::exp(dice.between(libm::log(60.0), libm::log(1500.0))));
    let (dry_g, moisture_fresh) = (fresh_g * fraction, 1.0 / fraction - 1.0);
    let usual = match pace {
        Pace::Leafy => 13.0,
        Pace::Dense => 38.0,
    };
    let fast = libm::exp(0.5 * dice.normal()) / usual;
    let share = dice.between(0.5, 0.85);
    let slow = fast * dice.between(0.25, 0.6);
    let cap = if dice.unit() < 0.4 {
        dice.between(0.02, 0.06) * moisture_fresh * fast * 25.0
    } else {
        f64::MAX
    };
    let lot = libm::exp(0.12 * dice.normal());
    let mut room = Room::drawn(dice);

    let (mut quick, mut late) = (moisture_fresh, moisture_fresh);
    let (mut hours, mut next, mut until) = (0.0, 0.0, 600.0);
    let (mut ready_h, mut weigh_ins, mut masses) = (None, Vec::new(), Vec::new());
    while hours <= until {
        let (t, humidity) = room.at(hours, dice);
        let air = RelativeHumidity::new(humidity).unwrap();
        let end = lot * HERB_LEAF.moisture(air, celsius(t)).unwrap() / 100.0;
        // 45 kJ/mol, and the pull of the air.
        let warmth = libm::exp(-45_000.0 / 8.314 * (1.0 / (t + 273.15) - 1.0 / 296.15));
        let pull = warmth * ((1.0 - humidity) / 0.5).clamp(0.3, 1.6);
        let moisture = share * quick + (1.0 - share) * late;
        let mass_g = dry_g * (1.0 + moisture);
        if hours >= next {
            weigh_ins.push(WeighIn {
                hours,
                mass_g: libm::round(mass_g),
                celsius: t,
                humidity_percent: 100.0 * humidity,
                true_moisture: moisture / (1.0 + moisture),
            });
            next = hours + libm::round(dice.between(8.0, 26.0) / STEP) * STEP;
        }
        quick -= (fast * pull * (quick - end)).min(cap) * STEP;
        late -= slow * pull * (late - end) * STEP;
        masses.push(mass_g);
        if ready_h.is_none() && moisture <= 0.12 / 0.88 {
            ready_h = Some(hours);
            until = (hours + dice.between(96.0, 120.0)).min(until);
        }
        hours += STEP;
    }
    let last_day = &masses[masses.len().saturating_sub(96)..];
    Batch {
        fresh_g,
        prior,
        pace,
        dry_g,
        plateau_g: last_day.iter().sum::<f64>() / last_day.len() as f64,
        ready_h,
        weigh_ins,
    }
}
