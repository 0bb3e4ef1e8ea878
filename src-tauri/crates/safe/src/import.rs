//! A table of harvests, looked at before anything is written.

pub mod line;
pub mod table;

use std::collections::BTreeSet;

use chrono::{DateTime, FixedOffset};
use journal::{Harvest, Noun};
use message::{Failure, say};

use crate::folder::{Keep, held, source};
use crate::import::line::{Understood, is_unlike};
use crate::import::table::Table;
use crate::tables;

const MOST_BYTES: u64 = 16_000_000;

pub fn understood(
    keep: &Keep,
    file: &str,
    now: DateTime<FixedOffset>,
) -> Result<Understood, Failure> {
    let path = source(keep, file)?;
    let bytes = tables::read(&path, MOST_BYTES)?;
    let text =
        std::str::from_utf8(&bytes).map_err(|_| Failure::invalid("file", say!("table-no-csv")))?;
    let text = text.trim_start_matches('\u{feff}');
    let (mut ids, mut likes) = (BTreeSet::new(), BTreeSet::new());
    keep.door()?.each_row(Noun::Harvest, |id, body| {
        let harvest: Harvest = serde_json::from_str(body).map_err(store::Failure::from)?;
        ids.insert(id.to_owned());
        is_unlike(&mut likes, &harvest);
        Ok::<_, Failure>(())
    })?;
    held(&keep.reader).read(|reading| Table::new(reading, text, now)?.read(text, ids, likes))
}
