//! `due.list`: everything that is due, by harm and then by day.

pub(crate) mod calendar;

use message::{Failure, say};
use reckon::asked;
use reckon::due::{Due, later};
use serde::Deserialize;

use crate::open::Open;
use crate::request::Command;
use crate::speech::is_said;

/// Everything that is due by a day, today if none is named, and in the days after it.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct ListDue {
    pub on: Option<String>,
    pub days: Option<u32>,
    /// At most so many lines, the first that there are; what is counted counts them all.
    pub limit: Option<u32>,
}

/// Ten years.
const MOST_DAYS: u32 = 3660;

impl Command for ListDue {
    const NAME: &'static str = "due.list";
    type Reply = Due;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let today = match &self.on {
            Some(day) => asked::date("on", day)?,
            None => app.now().date_naive(),
        };
        let days = self.days.unwrap_or(30);
        if days > MOST_DAYS {
            let message = say!("due-days-ahead", most = MOST_DAYS, given = days);
            return Err(Failure::invalid("days", message));
        }
        let until = later(today, u64::from(days));
        app.read(|reading| Due::of(reading, (today, until), app.now(), self.limit, is_said))
    }
}
