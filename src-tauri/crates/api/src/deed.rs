//! What was done, and taking it back: `deed.*`.

use chrono::{DateTime, SecondsFormat};
use message::{Failure, Message};
use reckon::asked;
use serde::{Deserialize, Serialize};

use crate::changed::Changed;
use crate::open::Open;
use crate::request::Command;

/// Takes a deed back; taking back an undo does it again.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct UndoDeed {
    pub deed: String,
}

/// A deed was taken back.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct DeedUndone {
    #[serde(flatten)]
    pub done: Changed,
    pub undone: Message,
}

/// The latest deeds, newest first.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct ListDeeds {
    pub limit: Option<u32>,
}

/// One deed.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct DeedLine {
    pub deed: String,
    pub at: String,
    pub text: Message,
    pub undone: bool,
}

/// The answer to [`ListDeeds`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Deeds {
    pub deeds: Vec<DeedLine>,
}

impl Command for UndoDeed {
    const NAME: &'static str = "deed.undo";
    type Reply = DeedUndone;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let (done, undone) = app.undo(asked::id("deed", &self.deed)?)?;
        Ok(DeedUndone { done, undone })
    }
}

impl Command for ListDeeds {
    const NAME: &'static str = "deed.list";
    type Reply = Deeds;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let limit = asked::limit(self.limit, 50)?;
        let offset = *app.now().offset();
        let deeds = app
            .read(|reading| Ok(reading.deeds(limit)?))?
            .into_iter()
            .map(|row| DeedLine {
                deed: row.deed.to_string(),
                at: DateTime::from_timestamp_millis(row.at.milliseconds)
                    .unwrap_or_default()
                    .with_timezone(&offset)
                    .to_rfc3339_opts(SecondsFormat::Secs, false),
                text: row.line.told(),
                undone: row.undone,
            });
        Ok(Deeds {
            deeds: deeds.collect(),
        })
    }
}
