//! What is thrown away of a lot, fresh or dried: `harvest.bin` and `tray.bin` alike.

use chrono::{DateTime, FixedOffset};
use journal::{Discard, DiscardId, Source};
use serde::Serialize;
use store::{Reading, Writing};

use crate::{App, Failure, asked, words};

/// Grams of a lot that were thrown away.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Binned {
    pub id: String,
    pub mass_g: f64,
    /// An earlier version did not insist on one.
    pub reason: Option<String>,
    pub at: String,
}

/// What is to be thrown away of a lot, and why.
pub(crate) struct Bin {
    entry: DiscardId,
    mass_g: Option<f64>,
    reason: String,
    at: DateTime<FixedOffset>,
}

impl Bin {
    /// Reads the fields that both commands have; all that is left goes unless `mass_g` says less.
    pub(crate) fn asked(
        app: &App,
        mass_g: Option<f64>,
        reason: String,
        at: Option<&str>,
    ) -> Result<Self, Failure> {
        let Some(reason) = asked::text(Some(reason)) else {
            return Err(Failure::invalid("reason", "Say why it is thrown away."));
        };
        Ok(Self {
            entry: DiscardId(app.new_id()),
            mass_g,
            reason,
            at: asked::past("at", at, app.now())?,
        })
    }

    /// Takes it out of a lot that was picked, or taken down dry, at `since`, and tells how many grams that were.
    pub(crate) fn of(
        self,
        writing: &mut Writing<'_>,
        from: Source,
        since: DateTime<FixedOffset>,
    ) -> Result<String, Failure> {
        if self.at < since {
            let since = since.format("%Y-%m-%d %H:%M");
            let message = match from {
                Source::Tray(_) => {
                    format!("It cannot be thrown away before it was taken down, {since}.")
                }
                _ => format!("It cannot be thrown away before it was picked, {since}."),
            };
            return Err(Failure::invalid("at", message));
        }
        let amount = match self.mass_g {
            Some(mass_g) => mass_g,
            None => writing.left(from)?.get(),
        };
        if self.mass_g.is_none() && amount <= 0.0 {
            return Err(Failure::invalid("mass_g", "Nothing is left of it."));
        }
        let discard = Discard {
            from,
            amount,
            at: self.at,
            reason: Some(self.reason),
            used: false,
        };
        writing.record(&self.entry, &discard)?;
        Ok(words::figure(amount))
    }
}

/// What was thrown away of a lot, the earliest first.
pub(crate) fn binned(reading: &Reading<'_>, from: Source) -> Result<Vec<Binned>, Failure> {
    let mut discards = reading.discards(from)?;
    discards.sort_by_key(|(_, it)| it.at);
    let lines = discards.into_iter().filter(|(_, it)| !it.used);
    let lines = lines.map(|(id, it)| Binned {
        id: id.to_string(),
        mass_g: it.amount,
        reason: it.reason,
        at: it.at.to_rfc3339(),
    });
    Ok(lines.collect())
}
