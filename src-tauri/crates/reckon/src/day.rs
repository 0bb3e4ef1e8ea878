//! Days where the clock stands.

use chrono::{FixedOffset, NaiveDate, NaiveTime, TimeZone};

/// The first moment of a day where the clock stands.
pub fn midnight(day: NaiveDate, offset: FixedOffset) -> i64 {
    offset
        .from_local_datetime(&day.and_time(NaiveTime::MIN))
        .single()
        .map_or(0, |moment| moment.timestamp_millis())
}
