//! `bottle.list`: what there is.

use ::words::Language;
use chrono::{DateTime, FixedOffset};
use formulary::preparations::Preparation;
use journal::BottleState;
use message::Failure;
use reckon::asked;
use reckon::bottle::card::{BottleCard, Jars};
use reckon::bottle::stock::{StockLine, Summed, lines};
use reckon::jar::judged::preparation_named;
use safe::folder::held;
use serde::{Deserialize, Serialize};
use store::{BottleFilter, Kind, Reading};

use crate::open::Open;
use crate::request::Command;

/// Bottles, those to look at first; without a state those that are still here. Those that are gone
/// come the latest filled first. `after` is the id of the last one seen.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct ListBottles {
    pub state: Option<BottleState>,
    pub herb: Option<String>,
    pub preparation: Option<String>,
    pub after: Option<String>,
    pub limit: Option<u32>,
}

/// The answer to [`ListBottles`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Bottles {
    pub bottles: Vec<BottleCard>,
    pub more: bool,
    /// Of all that is on the shelf and was asked for, not only of the bottles listed here.
    pub stock: Vec<StockLine>,
}

impl Command for ListBottles {
    const NAME: &'static str = "bottle.list";
    type Reply = Bottles;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let now = app.now();
        let today = now.date_naive();
        let after = asked::id_if_any("after", self.after.as_deref())?;
        let limit = asked::limit(self.limit, 50)?;
        app.read(|reading| {
            let herb = asked::herb_if_any(reading, self.herb.as_deref())?;
            let preparations = match &self.preparation {
                None => None,
                Some(asked) => Some(poured_as(reading, asked)?),
            };
            let filter = BottleFilter {
                state: self.state,
                herb: herb.clone(),
                preparations: preparations.clone(),
                after,
                limit,
            };
            let page = reading.bottles(&filter, today)?;
            let mut jars = Jars::default();
            let mut bottles = Vec::new();
            for row in &page.rows {
                let shown = jars.of(reading, &row.bottle.jar)?;
                bottles.push(shown.card(row, today));
            }
            let mut stock = app.stock(reading, now)?;
            stock.retain(|(kind, _)| {
                let made_as = (kind.preparation.clone(), kind.is_fresh);
                herb.as_ref().is_none_or(|herb| kind.herbs.contains(herb))
                    && preparations.as_ref().is_none_or(|it| it.contains(&made_as))
            });
            Ok(Bottles {
                bottles,
                more: page.more,
                stock: stock.into_iter().map(|(_, line)| line).collect(),
            })
        })
    }
}

/// Whether that is its name in any language.
fn is_called(preparation: &Preparation, asked: &str) -> bool {
    let title = preparation.title();
    Language::ALL
        .into_iter()
        .any(|language| language.tell(&title) == asked)
}

/// What jars of a preparation were poured as, given its key or its name.
fn poured_as(reading: &Reading<'_>, asked: &str) -> Result<Vec<(String, bool)>, Failure> {
    let mut poured = reading.preparations_poured()?;
    poured.retain(|(preparation, is_fresh)| {
        preparation == asked
            || preparation_named(preparation, *is_fresh)
                .is_some_and(|known| is_called(known, asked))
    });
    Ok(poured)
}

impl Open {
    /// What there is of each kind. A year of use is summed up once for each state of the journal.
    pub(crate) fn stock(
        &self,
        reading: &Reading<'_>,
        now: DateTime<FixedOffset>,
    ) -> Result<Vec<(Kind, StockLine)>, Failure> {
        let of = (reading.state()?, now.date_naive());
        if let Some(summed) = held(&self.summed).as_ref().filter(|summed| summed.of == of) {
            return Ok(summed.lines.clone());
        }
        let lines = lines(reading, now)?;
        *held(&self.summed) = Some(Summed {
            of,
            lines: lines.clone(),
        });
        Ok(lines)
    }
}
