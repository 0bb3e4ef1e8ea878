//! What came out of a jar, and what its marc kept.

use chrono::{DateTime, FixedOffset};
use message::{Unit, say};
use physics::interval::Interval;
use physics::mixture::ph::PhReading;
use serde::{Deserialize, Serialize};

use crate::log::worded;
use crate::refusal::{day, number};
use crate::{Amount, JarId, Kept, Noun, Refusal, RowRef, StrainingId};

worded!(
    /// How the liquid was got out of the marc.
    How {
        /// It ran off by itself.
        Dripped = "dripped",
        /// Wrung in a cloth by hand.
        Wrung = "wrung",
        /// Pressed.
        Pressed = "pressed",
    }
);

/// Liquid taken off a jar. The same marc may be strained more than once.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Straining {
    /// Which jar.
    pub jar: JarId,
    /// When.
    pub at: DateTime<FixedOffset>,
    /// How.
    pub how: How,
    /// What came out, at 20 C.
    pub came_out_ml: f64,
    /// The weight it was reckoned from, if it was weighed.
    #[serde(default)]
    pub came_out_g: Option<f64>,
    /// The liquid that there was in the jar before anything came out, as it was reckoned.
    pub liquid_ml: Interval,
    /// The dry matter of the plants, as it was reckoned.
    pub dry_matter_g: Interval,
    /// The pH that was read of all that came out.
    #[serde(default)]
    pub ph: Option<PhReading>,
    /// Anything else.
    #[serde(default)]
    pub note: Option<String>,
}

impl Straining {
    /// What came out.
    pub fn out(&self) -> Amount {
        Amount::of(self.came_out_ml)
    }

    /// What the marc still holds once `out_ml` in all has come out of the jar.
    pub fn retained_ml(&self, out_ml: f64) -> Interval {
        self.liquid_ml
            .map_monotone(|liquid| (liquid - out_ml).max(0.0))
    }

    /// The same for each gram of dry matter; `None` where no plant is in the jar.
    pub fn retained_ml_per_g_dry(&self, out_ml: f64) -> Option<Interval> {
        let retained = self.retained_ml(out_ml);
        let dry = self.dry_matter_g;
        // A damper plant brings more liquid and less dry matter, so the ends go with each other.
        (dry.low > 0.0).then(|| Interval {
            low: retained.low / dry.high,
            value: retained.value / dry.value,
            high: retained.high / dry.low,
        })
    }
}

fn ends(interval: Interval) -> [f64; 3] {
    [interval.low, interval.value, interval.high]
}

impl Kept for Straining {
    type Id = StrainingId;

    fn check(&self) -> Result<(), Refusal> {
        super::volume("came_out_ml", say!("what-what-came-out"), self.came_out_ml)?;
        if let Some(grams) = self.came_out_g {
            super::mass("came_out_g", say!("what-what-came-out"), grams)?;
        }
        for end in ends(self.liquid_ml) {
            number("jar", say!("what-liquid"), end, 0.0, 1e6, Unit::Millilitre)?;
        }
        for end in ends(self.dry_matter_g) {
            number("jar", say!("what-dry-matter"), end, 0.0, 1e7, Unit::Gram)?;
        }
        day("at", self.at)?;
        super::ph(self.ph)?;
        super::remark(self.note.as_deref())
    }

    fn needs(&self) -> Vec<RowRef> {
        vec![(Noun::Jar, self.jar.to_string())]
    }
}

/// Two-sided 90 % points of Student's t for 1, 2, ... degrees of freedom (from memory; a test
/// holds them to the closed forms for 1 and 2).
const STUDENT: [f64; 9] = [
    6.314, 2.920, 2.353, 2.132, 2.015, 1.943, 1.895, 1.860, 1.833,
];

/// The two-sided 90 % point of Student's t for so many degrees of freedom, 1 or more; beyond nine that of nine, which is
/// never too small.
pub fn student_90(freedom: usize) -> f64 {
    let last = STUDENT[STUDENT.len() - 1];
    STUDENT.get(freedom.max(1) - 1).copied().unwrap_or(last)
}

/// What the next marc will keep, by what the maker's own kept: their mean, with the interval in
/// which one more is expected. One alone is taken with its own interval, two or more with
/// `mean +- t s sqrt(1 + 1/n)`.
pub fn expected_retention(own: &[Interval]) -> Option<Interval> {
    let count = own.len() as f64;
    let mean = own.iter().map(|one| one.value).sum::<f64>() / count;
    match own {
        [] => None,
        [only] => Some(*only),
        _ => {
            let squares: f64 = own.iter().map(|one| (one.value - mean).powi(2)).sum();
            let deviation = (squares / (count - 1.0)).sqrt();
            let t = student_90(own.len() - 1);
            // It is never known better than a single straining tells it.
            let own_half = own
                .iter()
                .map(|one| (one.high - one.low) / 2.0)
                .fold(0.0, f64::max);
            let half = (t * deviation * (1.0 + 1.0 / count).sqrt()).max(own_half);
            Some(Interval {
                low: (mean - half).max(0.0),
                value: mean,
                high: mean + half,
            })
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_points_of_student_agree_with_their_closed_forms() {
        // One degree: tan(0.45 pi); two: (2 p - 1) sqrt(2 / (4 p (1 - p))) at p = 0.95.
        assert!((STUDENT[0] - (0.45 * std::f64::consts::PI).tan()).abs() < 5e-4);
        let p = 0.95_f64;
        let two = (2.0 * p - 1.0) * (2.0 / (4.0 * p * (1.0 - p))).sqrt();
        assert!((STUDENT[1] - two).abs() < 5e-4);
    }

    #[test]
    fn what_is_expected_lies_around_what_was_learned() {
        let one = |value| Interval {
            low: value - 0.1,
            value,
            high: value + 0.1,
        };
        assert_eq!(expected_retention(&[]), None);
        assert_eq!(expected_retention(&[one(1.6)]), Some(one(1.6)));
        let both = expected_retention(&[one(1.5), one(1.7)]).unwrap();
        assert!((both.value - 1.6).abs() < 1e-12);
        // t = 6.314, s = 0.1414, sqrt(1.5): plus or minus 1.094.
        assert!((both.high - 2.694).abs() < 1e-3 && (both.low - 0.506).abs() < 1e-3);
        let many = expected_retention(&[one(1.5), one(1.6), one(1.6), one(1.7)]).unwrap();
        assert!(many.high < both.high, "more strainings tell more");
    }
}
