//! What holds for any lot on the rack.

use physics::{
    WetBasis,
    drying::{
        Air, DryMatterPrior, Estimate, Lot, OvenSample, Reason, RelativeHumidity, Weighing, curve,
        estimate, sorption,
    },
    quantity::{celsius, grams},
};
use proptest::prelude::*;
use uom::si::{f64::Time, time::hour};

fn weighing(hours: f64, mass_g: f64) -> Weighing {
    Weighing::new(Time::new::<hour>(hours), grams(mass_g)).unwrap()
}

/// A lot that dries as Page's model says, rounded to the scale.
#[derive(Debug, Clone)]
struct Run {
    fresh_g: f64,
    mean: f64,
    sd: f64,
    step_g: f64,
    weighings: Vec<(f64, f64)>,
}

impl Run {
    fn scaled(&self, by: f64) -> Lot {
        Lot::new(
            grams(by * self.fresh_g),
            DryMatterPrior::new(self.mean, self.sd).unwrap(),
        )
        .unwrap()
        .scale_step(grams(by * self.step_g))
        .unwrap()
        .weighings(
            self.weighings
                .iter()
                .map(|w| weighing(w.0, by * w.1))
                .collect(),
        )
    }

    fn lot(&self) -> Lot {
        self.scaled(1.0)
    }
}

prop_compose! {
    fn run()(
        fresh_g in 50.0..2000.0_f64,
        mean in -2.8..-0.7_f64,
        sd in 0.08..0.4_f64,
        off in -1.5..1.5_f64,
        rate in 0.005..0.3_f64,
        exponent in 0.6..1.1_f64,
        end in 0.05..0.17_f64,
        step_g in prop_oneof![Just(0.1), Just(1.0), Just(5.0)],
        hours in prop::collection::vec(2.0..40.0_f64, 0..20),
    ) -> Run {
        let end_g = fresh_g * libm::exp(mean + off * sd).min(0.8) * (1.0 + end);
        let mut t = 0.0;
        let weighings = hours.iter().map(|gap| {
            t += gap;
            let ratio = libm::exp(-libm::pow(rate * t, exponent));
            let mass_g = end_g + (fresh_g - end_g) * ratio;
            (t, ((mass_g / step_g).round() * step_g).max(step_g).min(fresh_g))
        }).collect();
        Run { fresh_g, mean, sd, step_g, weighings }
    }
}

fn same(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-6 * a.abs().max(1e-3)
}

/// The reply without the list of odd weigh-ins and the reason that goes with it.
fn substance(estimate: Estimate) -> Estimate {
    let reasons = estimate
        .reasons
        .into_iter()
        .filter(|reason| *reason != Reason::OddWeighing)
        .collect();
    Estimate {
        reasons,
        odd: Vec::new(),
        ..estimate
    }
}

proptest! {
    #[test]
    fn every_interval_holds_its_value_and_no_mass_is_impossible(run in run()) {
        let now = estimate(&run.lot());
        let intervals = [Some(now.dry_matter_g), Some(now.target_mass_g), now.moisture_now_wet_percent, now.hours_left];
        for held in intervals.into_iter().flatten() {
            prop_assert!(held.low <= held.value && held.value <= held.high, "{held:?}");
            prop_assert!(held.low >= 0.0 && held.high.is_finite(), "{held:?}");
        }
        prop_assert!(now.dry_matter_g.low > 0.0 && now.dry_matter_g.high <= run.fresh_g);
        if let Some(moisture) = now.moisture_now_wet_percent {
            prop_assert!(moisture.high < 100.0);
        }
        let explains = |reason: &Reason| !matches!(reason, Reason::OddWeighing | Reason::AirNotNoted);
        prop_assert!(now.hours_left.is_some() || now.reasons.iter().any(explains), "no time left and no reason");
        prop_assert_eq!(now.next_weighing_hours.is_none(), now.is_dry);
        if let Some(hours) = now.next_weighing_hours {
            prop_assert!((12.0..=72.0).contains(&hours), "{} h to the next weigh-in", hours);
        }
        if let Some(mass_g) = now.telling_mass_g {
            prop_assert!(now.hours_left.is_none() && mass_g < run.fresh_g && mass_g > now.dry_matter_g.low);
        }
    }

    #[test]
    fn more_dry_matter_makes_a_heavier_stop_weight(fresh_g in 20.0..5000.0_f64, mean in -3.0..-0.5_f64, more in 0.01..0.4_f64) {
        let stop = |mean: f64| {
            let lot = Lot::new(grams(fresh_g), DryMatterPrior::new(mean, 0.2).unwrap()).unwrap();
            estimate(&lot).target_mass_g.value
        };
        prop_assert!(stop(mean + more) > stop(mean));
    }

    #[test]
    fn a_drier_target_makes_a_lighter_stop_weight(run in run(), percent in 5.0..14.0_f64) {
        let stop = |percent: f64| {
            let target = WetBasis::from_percent(percent).unwrap();
            estimate(&run.lot().target(target).unwrap()).target_mass_g.value
        };
        prop_assert!(stop(percent) < stop(percent + 1.0));
    }

    #[test]
    fn an_odd_weighing_changes_nothing_but_is_named(run in run(), heavy in any::<bool>(), at in 0.0..400.0_f64) {
        let before = estimate(&run.lot());
        let mass_g = if heavy { 1.1 * run.fresh_g + 10.0 * run.step_g } else { 0.0 };
        let mut weighings: Vec<Weighing> = run.weighings.iter().map(|w| weighing(w.0, w.1)).collect();
        weighings.push(weighing(at, mass_g));
        let after = estimate(&run.lot().weighings(weighings));
        prop_assert!(after.odd.contains(&run.weighings.len()));
        prop_assert!(after.reasons.contains(&Reason::OddWeighing));
        prop_assert_eq!(substance(after), substance(before));
    }

    #[test]
    fn scaling_every_mass_and_the_step_scales_the_result(run in run(), by in 0.5..20.0_f64) {
        let (one, many) = (estimate(&run.lot()), estimate(&run.scaled(by)));
        let pairs = [(one.dry_matter_g, many.dry_matter_g), (one.target_mass_g, many.target_mass_g)];
        for (a, b) in pairs {
            prop_assert!(same(by * a.low, b.low) && same(by * a.value, b.value) && same(by * a.high, b.high), "{a:?} {b:?}");
        }
        prop_assert_eq!(one.is_dry, many.is_dry);
        prop_assert_eq!(one.reasons, many.reasons);
    }

    #[test]
    fn the_order_of_the_weighings_does_not_matter(run in run()) {
        let mut backwards = run.clone();
        backwards.weighings.reverse();
        let (a, b) = (estimate(&run.lot()), estimate(&backwards.lot()));
        prop_assert_eq!(a.dry_matter_g, b.dry_matter_g);
        prop_assert_eq!(a.hours_left, b.hours_left);
    }

    #[test]
    fn a_plateau_narrows_what_is_known(fresh_g in 300.0..2000.0_f64, mean in -2.5..-1.0_f64, off in -1.5..1.5_f64) {
        let prior = DryMatterPrior::new(mean, 0.25).unwrap();
        let end_g = fresh_g * libm::exp(mean + 0.25 * off) * 1.11;
        let dry_down = |last_h: f64| {
            let mut weighings = Vec::new();
            let mut t = 12.0;
            while t <= last_h {
                let mass_g = end_g + (fresh_g - end_g) * libm::exp(-0.06 * t);
                weighings.push(weighing(t, mass_g.round()));
                t += 12.0;
            }
            let lot = Lot::new(grams(fresh_g), prior).unwrap().weighings(weighings);
            let held = estimate(&lot).dry_matter_g;
            held.high / held.low
        };
        prop_assert!(dry_down(156.0) < 0.5_f64.mul_add(dry_down(0.0) - 1.0, 1.0), "half as wide at least");
        prop_assert!(dry_down(180.0) <= dry_down(144.0), "two more weigh-ins on the plateau");
    }

    #[test]
    fn a_fine_sample_takes_the_place_of_the_prior(fresh_g in 100.0..2000.0_f64, fraction in 0.1..0.5_f64) {
        let dry_g = (150.0 * fraction).round() / 10.0;
        let sample = OvenSample::new(grams(15.0), grams(dry_g), grams(0.1)).unwrap();
        let prior = DryMatterPrior::new(-1.5, 0.4).unwrap();
        let now = estimate(&Lot::new(grams(fresh_g), prior).unwrap().sample(sample));
        prop_assert_eq!(now.basis.name(), "sample");
        prop_assert!((now.dry_matter_g.value / (fresh_g * dry_g / 15.0) - 1.0).abs() < 0.03);
    }

    #[test]
    fn the_curve_starts_at_the_fresh_weight_and_stays_within_it(run in run()) {
        let points = curve(&run.lot());
        prop_assert!(points.len() > 10);
        prop_assert!(same(points[0].mass_g.value, run.fresh_g) && points[0].hours == 0.0);
        let last = run.weighings.last().map_or(0.0, |w| w.0);
        prop_assert!(points[points.len() - 1].hours > last);
        for pair in points.windows(2) {
            prop_assert!(pair[1].hours > pair[0].hours);
            prop_assert!(pair[1].mass_g.value <= pair[0].mass_g.value + 1e-9, "a drying lot gets no heavier");
        }
        for point in points {
            let band = point.mass_g;
            prop_assert!(0.0 <= band.low && band.low <= band.value && band.value <= band.high);
            prop_assert!(band.high <= run.fresh_g * (1.0 + 1e-9));
        }
    }

    #[test]
    fn a_damper_room_stops_at_a_damper_herb(t in 10.0..40.0_f64, percent in 10.0..79.0_f64) {
        let limit = |percent: f64| {
            let humidity = RelativeHumidity::from_percent(percent).unwrap();
            sorption::room_limit_wet_percent(Air { temperature: celsius(t), humidity }).unwrap().value
        };
        prop_assert!(limit(percent + 1.0) > limit(percent));
    }
}

#[test]
fn a_scale_too_coarse_for_the_lot_never_calls_it_dry() {
    let weighings = (1..40)
        .map(|i| weighing(12.0 * f64::from(i), 12.0))
        .collect();
    let lot = Lot::new(grams(60.0), DryMatterPrior::new(-1.7, 0.2).unwrap()).unwrap();
    let now = estimate(&lot.weighings(weighings));
    assert!(!now.is_dry && now.reasons.contains(&Reason::ScaleTooCoarse));
}

#[test]
fn a_room_too_damp_for_the_target_is_named() {
    let air = Air {
        temperature: celsius(20.0),
        humidity: RelativeHumidity::from_percent(70.0).unwrap(),
    };
    let lot = Lot::new(grams(500.0), DryMatterPrior::new(-1.7, 0.2).unwrap()).unwrap();
    let now = estimate(&lot.air(Some(air)));
    assert!(now.reasons.contains(&Reason::RoomTooDamp));
    let limit = now.air_limit_wet_percent.unwrap();
    assert!(
        (limit.value - 13.6).abs() < 0.2,
        "modified Oswin at 20 C and 70 %: 13.6 % wet basis"
    );
}
