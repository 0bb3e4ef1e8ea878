//! When something was written, and how many days ago something happened.

use chrono::{DateTime, FixedOffset};

/// Hybrid logical time: the wall clock in milliseconds, and a counter for
/// writes that the clock cannot tell apart or that it would put in the past.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct HybridTime {
    /// Milliseconds since 1970-01-01T00:00Z.
    pub milliseconds: i64,
    /// Order among writes of the same millisecond.
    pub counter: u32,
}

impl HybridTime {
    /// The time of the next write: `now`, but never before or equal to `last`,
    /// so that a clock that was set back cannot put a correction before what it
    /// corrects.
    pub fn after(last: Option<Self>, now: DateTime<FixedOffset>) -> Self {
        let clock = Self {
            milliseconds: now.timestamp_millis(),
            counter: 0,
        };
        match last {
            Some(last) if last >= clock => match last.counter.checked_add(1) {
                Some(counter) => Self {
                    milliseconds: last.milliseconds,
                    counter,
                },
                None => Self {
                    milliseconds: last.milliseconds + 1,
                    counter: 0,
                },
            },
            _ => clock,
        }
    }
}

/// Days on the calendar from `start` to `now`, both read where `now` is: 0 on
/// the day itself, 1 from the next midnight on, negative before.
pub fn days_since(start: DateTime<FixedOffset>, now: DateTime<FixedOffset>) -> i64 {
    let there = start.with_timezone(now.offset());
    (now.date_naive() - there.date_naive()).num_days()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(text: &str) -> DateTime<FixedOffset> {
        DateTime::parse_from_rfc3339(text).unwrap()
    }

    #[test]
    fn a_clock_set_back_never_writes_into_the_past() {
        let first = HybridTime::after(None, at("2025-06-01T10:00:00+02:00"));
        let second = HybridTime::after(Some(first), at("2024-01-01T00:00:00Z"));
        let third = HybridTime::after(Some(second), at("2025-06-01T10:00:00.001+02:00"));
        assert!(first < second && second < third);
        assert_eq!(third.counter, 0, "a later clock starts to count anew");
        let full = HybridTime {
            milliseconds: 5,
            counter: u32::MAX,
        };
        assert!(HybridTime::after(Some(full), at("1970-01-01T00:00:00Z")) > full);
    }

    #[test]
    fn a_day_begins_at_midnight_where_the_reader_is() {
        assert_eq!(
            days_since(
                at("2025-06-01T23:59:00+02:00"),
                at("2025-06-02T00:01:00+02:00")
            ),
            1
        );
        assert_eq!(
            days_since(
                at("2025-06-01T00:01:00+02:00"),
                at("2025-06-01T23:59:00+02:00")
            ),
            0
        );
        assert_eq!(
            days_since(at("2025-06-01T23:30:00Z"), at("2025-06-02T08:00:00+02:00")),
            0
        );
    }
}
