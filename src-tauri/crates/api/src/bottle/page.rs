//! `bottle.show`: what it is, how it keeps, what was done with it, and the whole chain back.

use formulary::Note;
use formulary::cautions::Caution;
use formulary::keep::Keeping;
use journal::{BottleId, EndKind, Jar, LotCode, Outcome, Pictured, Source};
use message::{Failure, say};
use physics::mixture::Liquid;
use physics::mixture::ph::ReadWith;
use reckon::asked;
use reckon::bottle::card::{BottleCard, Shown};
use reckon::bottle::sums::{BottleSums, came_out, signs, storage, sums};
use reckon::due::put_right::put_right_text;
use reckon::jar::judged::Judged;
use reckon::trace::back::{self, Chain};
use serde::{Deserialize, Serialize};
use store::Reading;

use crate::changed::Changed;
use crate::open::Open;
use crate::ph::{self, PhShown};
use crate::portrait::{self, PortraitLine};
use crate::request::Command;

/// One bottle, by its id or by the code on its label.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct ShowBottle {
    pub id: Option<String>,
    pub code: Option<String>,
}

/// One use.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct UseLine {
    pub id: String,
    pub at: String,
    pub ml: f64,
    pub note: Option<String>,
}

/// One look.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct CheckLine {
    pub id: String,
    pub at: String,
    pub outcome: Outcome,
    pub ph: Option<f64>,
    pub read_with: Option<ReadWith>,
    pub note: Option<String>,
}

/// Who was given it.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct GivenTo {
    pub to: String,
    pub at: String,
}

/// A bottle with everything about it.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct BottlePage {
    #[serde(flatten)]
    pub card: BottleCard,
    pub strained_on: Option<String>,
    pub liquid: Liquid,
    pub keeping: Keeping,
    pub storage: Vec<Note>,
    pub signs: Vec<Note>,
    pub cautions: Vec<Caution>,
    /// Whether its pH is worth reading, for acid keeps it.
    pub takes_ph: bool,
    pub ph: Option<PhShown>,
    pub arithmetic: BottleSums,
    pub uses: Vec<UseLine>,
    pub checks: Vec<CheckLine>,
    pub given_to: Option<GivenTo>,
    pub ended_at: Option<String>,
    pub binned_because: Option<String>,
    /// That more was taken from it than it held, as two phones may do; what may be true of it, `due.list` tells.
    pub put_right: Option<String>,
    pub chain: Chain,
    pub note: Option<String>,
    /// How it looked, the earliest first.
    pub portraits: Vec<PortraitLine>,
}

/// The answer to [`ShowBottle`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct BottleShown {
    pub bottle: BottlePage,
}

/// A bottle was written.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct BottleWritten {
    #[serde(flatten)]
    pub done: Changed,
    pub bottle: BottlePage,
}

impl Command for ShowBottle {
    const NAME: &'static str = "bottle.show";
    type Reply = BottleShown;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        app.read(|reading| {
            let id: BottleId = match (&self.id, &self.code) {
                (Some(id), None) => asked::id("id", id)?,
                (None, Some(code)) => by_code(reading, code)?,
                _ => {
                    return Err(Failure::invalid("code", say!("bottle-by-id-or-code")));
                }
            };
            Ok(BottleShown {
                bottle: page(app, reading, &id)?,
            })
        })
    }
}

fn by_code(reading: &Reading<'_>, text: &str) -> Result<BottleId, Failure> {
    let code: LotCode = asked::id("code", text)?;
    reading
        .bottle_coded(&code)?
        .ok_or_else(|| Failure::not_found("code", say!("bottle-code-nowhere", code = &code)))
}

/// A bottle with everything about it.
pub(crate) fn page(
    app: &Open,
    reading: &Reading<'_>,
    id: &BottleId,
) -> Result<BottlePage, Failure> {
    let row = reading.bottle(id)?;
    let jar = reading.get::<Jar>(&row.bottle.jar)?;
    let judged = Judged::with_ph(reading, &jar, row.ph.as_ref())?;
    let strainings = reading.strainings(&row.bottle.jar)?;
    let card = Shown::of(reading, &jar)?.card(&row, app.now().date_naive());
    let uses = reading.uses(id)?.into_iter().map(|(id, it)| UseLine {
        id: id.to_string(),
        at: it.at.to_rfc3339(),
        ml: it.ml,
        note: it.note,
    });
    let checks = reading.checks(id)?.into_iter().map(|(id, it)| CheckLine {
        id: id.to_string(),
        at: it.at.to_rfc3339(),
        outcome: it.outcome,
        ph: it.ph.map(|ph| ph.value),
        read_with: it.ph.and_then(|ph| ph.read_with),
        note: it.note,
    });
    let end = row.bottle.end.clone();
    let given_to = end
        .as_ref()
        .filter(|end| end.kind == EndKind::Given)
        .map(|end| GivenTo {
            to: end.to.clone().unwrap_or_default(),
            at: end.at.to_rfc3339(),
        });
    let overdrawn = reading.overdrawn()?;
    let put_right = overdrawn
        .iter()
        .find(|lot| lot.source == Source::Bottle(*id));
    Ok(BottlePage {
        put_right: put_right.map(|lot| put_right_text(lot).into()),
        strained_on: strainings
            .first()
            .map(|(_, it)| it.at.date_naive().to_string()),
        arithmetic: sums(
            reading,
            &jar,
            &judged,
            row.bottle.size_ml,
            came_out(&strainings),
        )?,
        portraits: portrait::lines(reading, Pictured::Bottle(*id))?,
        storage: storage(&judged),
        signs: signs(&judged, row.last_day()),
        uses: uses.collect(),
        checks: checks.collect(),
        given_to,
        ended_at: end.as_ref().map(|end| end.at.to_rfc3339()),
        binned_because: end
            .filter(|end| end.kind == EndKind::Binned)
            .and_then(|end| end.reason),
        chain: back::chain(reading, &row.bottle.jar, Some(card.clone()), app.now())?,
        card,
        takes_ph: judged.preparation.is_kept_by_acid(),
        ph: ph::shown(reading, row.ph, Some(id))?,
        liquid: judged.poured.liquid.clone(),
        cautions: judged.cautions(),
        keeping: judged.poured.keeping,
        note: row.bottle.note,
    })
}

pub(crate) fn written(app: &Open, done: Changed, id: &BottleId) -> Result<BottleWritten, Failure> {
    let bottle = app.read_back(|reading| page(app, reading, id))?;
    Ok(BottleWritten { done, bottle })
}
