//! `herb.calendar`: when to pick, by the calendars and by one's own years.

use message::Failure;
use reckon::herb::Known;
use reckon::picking::Calendar;
use serde::Deserialize;

use crate::open::Open;
use crate::request::Command;

/// When to pick the parts of one herb, or every part that was ever picked.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct ShowCalendar {
    pub key: Option<String>,
}

impl Command for ShowCalendar {
    const NAME: &'static str = "herb.calendar";
    type Reply = Calendar;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        app.read(|reading| {
            let known = self.key.as_deref().map(|key| Known::asked(reading, key));
            let known = known.transpose().map_err(|why| why.renamed("key"))?;
            Calendar::of(reading, known.as_ref(), app.now().date_naive())
        })
    }
}
