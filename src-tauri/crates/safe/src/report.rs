//! What reports share: counts, times, and what the device remembers of its last backup.

use chrono::{DateTime, FixedOffset, SecondsFormat};
use journal::{HybridTime, Noun};
use serde::{Deserialize, Serialize};
use store::Contents;

/// How many rows a noun has.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct NounCount {
    pub noun: Noun,
    pub count: u64,
}

pub fn counts(contents: &Contents) -> Vec<NounCount> {
    let rows = contents.rows.iter().filter(|(_, count)| *count > 0);
    rows.map(|(noun, count)| NounCount {
        noun: *noun,
        count: *count,
    })
    .collect()
}

pub fn told_time(at: DateTime<FixedOffset>) -> String {
    at.to_rfc3339_opts(SecondsFormat::Secs, false)
}

pub fn hybrid_time(at: HybridTime, zone: DateTime<FixedOffset>) -> String {
    let at = DateTime::from_timestamp_millis(at.milliseconds).unwrap_or_default();
    told_time(at.with_timezone(zone.offset()))
}
/// Under this key the device remembers its last backup.
pub const LAST: &str = "backup";

/// A backup of this device.
#[derive(Debug, Clone, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct LastBackup {
    pub at: String,
    pub file_name: String,
    pub bytes: u64,
    pub sealed: bool,
    pub photos: bool,
    /// Deeds that were in it.
    pub deeds: u64,
}

/// Under this key the device remembers a backup that lies among the made files: it counts as made
/// once it was taken away.
pub const WAITING: &str = "backup_waiting";
