//! `tray.list`.

use chrono::Duration;
use message::Failure;
use reckon::asked;
use reckon::drying::batches::OwnBatches;
use reckon::tray::card::{FORGOTTEN_AFTER_DAYS, TrayCard, card_of};
use reckon::tray::course::{Course, course};
use reckon::tray::run::Run;
use serde::{Deserialize, Serialize};

use crate::open::Open;
use crate::request::Command;

/// Trays on the rack, forgotten ones first, then dried lots with grams left; `after` is the id of
/// the last one seen.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct ListTrays {
    pub after: Option<String>,
    pub limit: Option<u32>,
}

/// A tray of the rack; how it dries is drawn while it does.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct TrayLine {
    #[serde(flatten)]
    pub card: TrayCard,
    pub course: Option<Course>,
}

/// The answer to [`ListTrays`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Trays {
    pub trays: Vec<TrayLine>,
    pub more: bool,
}

/// How many trays are listed at a time unless the page asks otherwise.
const USUAL: u32 = 30;

impl Command for ListTrays {
    const NAME: &'static str = "tray.list";
    type Reply = Trays;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let after = asked::id_if_any("after", self.after.as_deref())?;
        let limit = asked::limit(self.limit, USUAL)?;
        let forgotten = app.now() - Duration::days(FORGOTTEN_AFTER_DAYS);
        app.read(|reading| {
            let page = reading.trays(forgotten.timestamp_millis(), after, limit)?;
            let mut own = OwnBatches::default();
            let cards: Result<Vec<_>, Failure> = page
                .rows
                .into_iter()
                .map(|row| {
                    let run = Run::among(reading, row, &mut own)?;
                    Ok(TrayLine {
                        card: card_of(&run, app.now()),
                        course: run.row.tray.is_drying().then(|| course(&run)),
                    })
                })
                .collect();
            Ok(Trays {
                trays: cards?,
                more: page.more,
            })
        })
    }
}
