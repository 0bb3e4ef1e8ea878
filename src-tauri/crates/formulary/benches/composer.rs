//! How long the jar composer takes to work everything out again when a slider moves.
//!
//! Prints the median and the slowest of many runs, adviser included; fails above the 4 ms that leave
//! the page room in a 16 ms frame.

use std::{
    hint::black_box,
    time::{Duration, Instant},
};

use formulary::{
    advise::{Request, advise},
    compose::{Composition, Plant, compose},
    preparations::{PlantState, Purpose},
};

const BUDGET: Duration = Duration::from_millis(4);

fn main() {
    let plant = |state| Plant {
        herb: "lemon balm".into(),
        part: "leaf".into(),
        state,
        mass_g: 180.0,
        moisture_wet_percent: None,
        told: None,
        identity: Default::default(),
    };
    let mut failed = false;
    for (name, preparation, state) in [
        ("glycerite, fresh", "glycerite", PlantState::Fresh),
        ("tincture, fresh", "tincture", PlantState::Fresh),
        ("tincture, dried", "tincture", PlantState::Dried),
    ] {
        let mut times: Vec<Duration> = (0..400)
            .map(|step| {
                let mut asked = Composition::of(preparation, plant(state));
                asked.ratio_ml_per_g = Some(2.0 + 0.005 * f64::from(step));
                let request = Request {
                    plant: plant(state),
                    also: Vec::new(),
                    purpose: Purpose::Inside,
                    without: Vec::new(),
                    jar_ml: Some(2000.0),
                    stock: None,
                };
                let start = Instant::now();
                black_box(compose(&asked)).expect("a proposal");
                black_box(advise(&request)).expect("candidates");
                start.elapsed()
            })
            .skip(1)
            .collect();
        times.sort_unstable();
        let (median, slowest) = (times[times.len() / 2], times[times.len() - 1]);
        println!("{name}: median {median:?}, slowest {slowest:?}");
        failed |= median > BUDGET;
    }
    assert!(!failed, "the composer is slower than {BUDGET:?}");
}
