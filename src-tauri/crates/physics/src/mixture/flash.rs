//! How easily the vapour over a spirit catches fire.

use crate::{fraction::Strength, interval::Interval};

/// Flash point by strength, C.
///
/// *Source*: table circulated on DCHAS-L 2015, confirmed in part; other pages give pure ethanol 12 to 17 C.
const TABLE: [(f64, f64); 8] = [
    (20.0, 36.0),
    (30.0, 29.0),
    (40.0, 26.0),
    (50.0, 24.0),
    (60.0, 22.0),
    (70.0, 21.0),
    (80.0, 20.0),
    (96.0, 17.0),
];

/// How far published flash points lie below the table (pure ethanol: 12 against 17 C).
const LOWER_ELSEWHERE: f64 = 5.0;

/// The band in which the flash point of ethanol-water lies, C; nothing under 20 % vol, where the
/// table ends (a heated liquid can still give off vapour).
///
/// *Valid for* 20 to 100 % vol; the figure for 96 % holds above it.
pub fn flash_point_c(strength: Strength) -> Option<Interval> {
    band(strength.percent())
}

/// The same for a strength that is not known exactly, both in % vol.
pub(crate) fn band_of(strength: Interval) -> Option<Interval> {
    band(strength.value).map(|middle| {
        let low = band(strength.high).map_or(middle.low, |end| end.low);
        // Where the weakest possible liquid is below the table, the table's own end is the highest.
        let high = band(strength.low).map_or(TABLE[0].1, |end| end.high);
        Interval::spanning(middle.value, low, high)
    })
}

fn band(percent: f64) -> Option<Interval> {
    if percent < TABLE[0].0 {
        return None;
    }
    let value = TABLE
        .windows(2)
        .find(|pair| percent <= pair[1].0)
        .map_or(TABLE[7].1, |pair| {
            let ((q0, t0), (q1, t1)) = (pair[0], pair[1]);
            t0 + (t1 - t0) * (percent - q0) / (q1 - q0)
        });
    Some(Interval {
        low: value - LOWER_ELSEWHERE,
        value,
        high: value,
    })
}
