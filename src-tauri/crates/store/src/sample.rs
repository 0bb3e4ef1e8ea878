//! What the tests of this crate begin with.

use chrono::{DateTime, FixedOffset};
use journal::{Bed, DeviceId};
use uuid::Uuid;

use crate::Store;

pub(crate) fn now() -> DateTime<FixedOffset> {
    DateTime::parse_from_rfc3339("2025-06-01T08:00:00Z").unwrap()
}

pub(crate) fn store() -> Store {
    Store::in_memory(DeviceId(Uuid::from_u128(1))).unwrap()
}

pub(crate) fn bed(name: &str) -> Bed {
    Bed {
        name: name.into(),
        wild: false,
        area_m2: None,
        note: None,
    }
}
