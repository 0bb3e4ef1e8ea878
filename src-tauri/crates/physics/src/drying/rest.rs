//! Rests on the way: cut leaves close their stomata, a room cools or gets damp, and the lot keeps still for a while.
//!
//! No lot dries faster late than early by itself. So where one kept still and then lost more again, the hours
//! of its rest were no drying time, and the curve is fitted on a clock without them. Until a lot loses more
//! again, its rest may be the end, and nothing is taken out. All figures are engineering defaults.

/// A rest loses no more than this share of the pace that comes later.
const AT_REST: f64 = 0.25;
/// A rest lasts so many hours at least; less may be a cold night.
const LEAST_HOURS: f64 = 18.0;
/// After a rest a lot loses at least this share of its weight, or it was its end.
const LOSES_AGAIN: f64 = 0.08;
/// The pace is taken over so many hours at least, so that one wrong step of the scale does not make it.
const PACE_HOURS: f64 = 6.0;

/// The weigh-ins, hours and grams by time, on a clock that stands still during rests that are over.
pub(crate) fn without_rests(
    fresh_g: f64,
    weighings: &[(f64, f64)],
    step_g: f64,
) -> Vec<(f64, f64)> {
    let course: Vec<(f64, f64)> = core::iter::once((0.0, fresh_g))
        .chain(weighings.iter().copied())
        .collect();
    let spans: Vec<(f64, f64)> = course
        .windows(2)
        .map(|pair| (pair[1].0 - pair[0].0, pair[0].1 - pair[1].1))
        .collect();
    // The fastest pace from each span on.
    let mut later = vec![0.0_f64; spans.len() + 1];
    for at in (0..spans.len()).rev() {
        let (hours, lost_g) = spans[at];
        // A step of the scale more or less tells no pace.
        let sure_g = if lost_g > 1.5 * step_g {
            lost_g - step_g
        } else {
            0.0
        };
        let pace = sure_g / hours.max(PACE_HOURS);
        later[at] = later[at + 1].max(pace);
    }
    let lightest_g = weighings.iter().map(|w| w.1).fold(f64::MAX, f64::min);
    let rests = |at: usize| {
        let (hours, lost_g) = spans[at];
        lost_g <= AT_REST * later[at + 1] * hours + 1e-9 * fresh_g
            && lightest_g <= (1.0 - LOSES_AGAIN) * (1.0 + 1e-9) * course[at + 1].1
    };
    let mut awake: Vec<f64> = spans.iter().map(|span| span.0).collect();
    let mut at = 0;
    while at < spans.len() {
        let first = at;
        while at < spans.len() && rests(at) {
            at += 1;
        }
        let rest_h: f64 = spans[first..at].iter().map(|span| span.0).sum();
        if rest_h >= LEAST_HOURS {
            // It fell asleep and woke up between two weigh-ins, and dried for a part of those hours only.
            for near in first.saturating_sub(1)..(at + 1).min(spans.len()) {
                let (hours, lost_g) = spans[near];
                let pace = later[near + 1];
                if pace > 0.0 {
                    awake[near] = hours.min(lost_g.max(0.0) / pace);
                }
            }
        }
        at += 1;
    }
    let mut clock = 0.0;
    weighings
        .iter()
        .zip(awake)
        .map(|(&(_, mass_g), hours)| {
            clock += hours.max(1e-3);
            (clock, mass_g)
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_rest_that_is_over_is_no_drying_time() {
        let weighings = [
            (24.0, 380.0),
            (48.0, 378.0),
            (72.0, 378.0),
            (96.0, 270.0),
            (120.0, 190.0),
        ];
        let clock = without_rests(500.0, &weighings, 1.0);
        assert!(clock[4].0 < 80.0, "{clock:?}");
        assert!(
            clock.windows(2).all(|pair| pair[0].0 < pair[1].0),
            "{clock:?}"
        );
    }

    #[test]
    fn a_rest_that_may_be_the_end_and_a_steady_loss_keep_their_hours() {
        let ended = [
            (24.0, 250.0),
            (48.0, 150.0),
            (72.0, 121.0),
            (96.0, 120.0),
            (120.0, 120.0),
        ];
        assert_eq!(without_rests(500.0, &ended, 1.0), ended);
    }
}
