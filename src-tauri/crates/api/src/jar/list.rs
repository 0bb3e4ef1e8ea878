//! `jar.list`.

use journal::JarState;
use message::Failure;
use reckon::asked;
use reckon::jar::card::{JarCard, card};
use serde::{Deserialize, Serialize};
use store::JarFilter;

use crate::open::Open;
use crate::request::Command;

/// Jars, what is due first, then what steeps, then the strained and the failed, the latest poured
/// first; `after` is the id of the last one seen.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct ListJars {
    pub state: Option<JarState>,
    pub after: Option<String>,
    pub limit: Option<u32>,
}

/// The answer to [`ListJars`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Jars {
    pub jars: Vec<JarCard>,
    pub more: bool,
}

impl Command for ListJars {
    const NAME: &'static str = "jar.list";
    type Reply = Jars;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let now = app.now();
        let after = asked::id_if_any("after", self.after.as_deref())?;
        let filter = JarFilter {
            today: now.date_naive(),
            state: self.state,
            after,
            limit: asked::limit(self.limit, 50)?,
        };
        app.read(|reading| {
            let page = reading.jars(&filter)?;
            let cards: Result<Vec<_>, Failure> = page
                .rows
                .iter()
                .map(|row| card(reading, row, now))
                .collect();
            Ok(Jars {
                jars: cards?,
                more: page.more,
            })
        })
    }
}
