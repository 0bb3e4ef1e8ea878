//! What leaves a lot, fresh or dried, without going into a jar: `harvest.bin` and `tray.bin` alike.

use chrono::{DateTime, FixedOffset};
use journal::{Discard, DiscardId, Lost, Source};
use message::{Argument, Failure, Unit, say};
use reckon::asked;
use serde::{Deserialize, Serialize};
use store::{Reading, Writing};

use crate::open::Open;

/// Where a part of a lot went that became nothing else in the journal.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum WentTo {
    /// As tea, in the kitchen, in an ointment.
    Used,
    #[default]
    ThrownAway,
}

impl WentTo {
    pub(crate) fn of(discard: &Discard) -> Self {
        if discard.used {
            Self::Used
        } else {
            Self::ThrownAway
        }
    }

    /// Why, or for what, which must be said of what is thrown away.
    pub(crate) fn why(self, reason: Option<String>) -> Result<Option<String>, Failure> {
        let reason = asked::text(reason);
        if self == Self::ThrownAway && reason.is_none() {
            return Err(Failure::invalid("reason", say!("thrown-away-why")));
        }
        Ok(reason)
    }
}

/// Grams of a lot that were used in another way than in a jar, or thrown away.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Binned {
    pub id: String,
    pub mass_g: f64,
    pub went_to: WentTo,
    /// An earlier version did not insist on one.
    pub reason: Option<String>,
    pub at: String,
}

/// What is to leave a lot, and for what or why.
pub(crate) struct Bin {
    entry: DiscardId,
    mass_g: Option<f64>,
    went_to: WentTo,
    reason: Option<String>,
    at: DateTime<FixedOffset>,
}

impl Bin {
    /// Reads the fields that both commands have; all that is left goes unless `mass_g` says less.
    pub(crate) fn asked(
        app: &Open,
        mass_g: Option<f64>,
        went_to: Option<WentTo>,
        reason: Option<String>,
        at: Option<&str>,
    ) -> Result<Self, Failure> {
        let went_to = went_to.unwrap_or_default();
        let reason = went_to.why(reason)?;
        Ok(Self {
            entry: DiscardId(app.new_id()),
            mass_g,
            went_to,
            reason,
            at: asked::past("at", at, app.now())?,
        })
    }

    /// Takes it out of a lot that was picked, or taken down dry, at `since`, and says where how much of it went.
    pub(crate) fn of(
        self,
        writing: &mut Writing<'_>,
        from: Source,
        since: DateTime<FixedOffset>,
    ) -> Result<(WentTo, Argument), Failure> {
        if self.at < since {
            let (day, time) = (since.date_naive(), Argument::time(since.time()));
            let message = match from {
                Source::Tray(_) => say!("out-before-taken-down", day, time),
                _ => say!("out-before-picked", day, time),
            };
            return Err(Failure::invalid("at", message));
        }
        let amount = match self.mass_g {
            Some(mass_g) => mass_g,
            None => match writing.left(from)?.get() {
                left if left > 0.0 => left,
                _ => return Err(Failure::invalid("mass_g", say!("nothing-left-of-it"))),
            },
        };
        let discard = Discard {
            from,
            amount,
            at: self.at,
            reason: self.reason,
            used: self.went_to == WentTo::Used,
        };
        writing.record(&self.entry, &discard)?;
        // As it was typed: the ledger keeps tenths of a gram.
        Ok((self.went_to, Argument::tenths(amount, Unit::Gram)))
    }
}

impl Bin {
    /// The end of a run of which all is thrown away; `since` is the last time that the tray was weighed, or laid out.
    pub(crate) fn of_drying(self, since: DateTime<FixedOffset>) -> Result<Lost, Failure> {
        if self.went_to == WentTo::Used {
            return Err(Failure::invalid("went_to", say!("tray-drying-not-used")));
        }
        if self.mass_g.is_some() {
            return Err(Failure::invalid("mass_g", say!("tray-drying-whole")));
        }
        if self.at < since {
            let (day, time) = (since.date_naive(), Argument::time(since.time()));
            let message = say!("tray-lost-before-weighed", day, time);
            return Err(Failure::invalid("at", message));
        }
        Ok(Lost {
            at: self.at,
            reason: self.reason.unwrap_or_default(),
        })
    }
}

/// What left a lot without going into a jar, the earliest first.
pub(crate) fn binned(reading: &Reading<'_>, from: Source) -> Result<Vec<Binned>, Failure> {
    let mut discards = reading.discards(from)?;
    discards.sort_by_key(|(_, it)| it.at);
    let lines = discards.into_iter().map(|(id, it)| Binned {
        id: id.to_string(),
        mass_g: it.amount,
        went_to: WentTo::of(&it),
        reason: it.reason,
        at: it.at.to_rfc3339(),
    });
    Ok(lines.collect())
}
