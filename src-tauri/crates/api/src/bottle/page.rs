//! `bottle.show`: what it is, how it keeps, what was done with it, and the whole chain back.

use formulary::arithmetic::{self, Input};
use journal::{BottleId, EndKind, Jar, LotCode, Source, Supply};
use store::Reading;

use super::list::Shown;
use super::wire::{
    BottlePage, BottleShown, BottleSums, CheckLine, GivenTo, Outcome, ShowBottle, UseLine,
};
use crate::due::put_right_text;
use crate::jar::{DriedEquivalent, Judged};
use crate::mixture::Liquid;
use crate::trace;
use crate::wire::{Caution, Interval, Note, Status};
use crate::{App, Command, Failure, asked, ph};

impl Command for ShowBottle {
    const NAME: &'static str = "bottle.show";
    type Reply = BottleShown;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        app.read(|reading| {
            let id: BottleId = match (&self.id, &self.code) {
                (Some(id), None) => asked::id("id", id)?,
                (None, Some(code)) => by_code(reading, code)?,
                _ => {
                    let message = "Name the bottle either by its id or by its lot code.";
                    return Err(Failure::invalid("code", message));
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
    reading.bottle_coded(&code)?.ok_or_else(|| {
        let message = format!("No bottle in this journal bears the code {code}.");
        Failure::not_found("code", message)
    })
}

/// A bottle with everything about it.
pub(super) fn page(app: &App, reading: &Reading<'_>, id: &BottleId) -> Result<BottlePage, Failure> {
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
        outcome: it.outcome.into(),
        ph: it.ph.map(|ph| ph.value),
        read_with: it.ph.and_then(|ph| ph.read_with).map(Into::into),
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
        storage: storage(&judged),
        signs: signs(&judged, row.last_day()),
        uses: uses.collect(),
        checks: checks.collect(),
        given_to,
        ended_at: end.as_ref().map(|end| end.at.to_rfc3339()),
        binned_because: end
            .filter(|end| end.kind == EndKind::Binned)
            .and_then(|end| end.reason),
        chain: trace::chain(app, reading, &row.bottle.jar, Some(card.clone()))?,
        card,
        takes_ph: judged.preparation.is_kept_by_acid(),
        ph: ph::shown(reading, row.ph, Some(id))?,
        liquid: Liquid::from(&judged.poured.liquid),
        keeping: judged.poured.keeping.into(),
        cautions: judged
            .poured
            .cautions
            .into_iter()
            .map(Caution::from)
            .collect(),
        note: row.bottle.note,
    })
}

fn came_out(strainings: &[(journal::StrainingId, journal::Straining)]) -> f64 {
    strainings.iter().map(|(_, it)| it.came_out_ml).sum()
}

fn note(code: &str, text: String, source: &str, status: Status) -> Note {
    Note {
        code: code.to_owned(),
        text,
        source: Some(source.to_owned()).filter(|source| !source.is_empty()),
        status,
    }
}

fn storage(judged: &Judged) -> Vec<Note> {
    let known = judged.preparation;
    let text = crate::words::sentence(&known.storage);
    let mut notes = vec![note("storage", text, "", Status::Practice)];
    let ends = crate::words::sentence(&format!("what ends it: {}", known.ended_by));
    if !known.ended_by.is_empty() {
        notes.push(note("ends", ends, "", Status::Practice));
    }
    notes
}

/// What shows that it went bad; never for what cannot show it.
fn signs(judged: &Judged, best_before: Option<chrono::NaiveDate>) -> Vec<Note> {
    if judged.only_the_date_counts {
        let until = best_before.map_or_else(
            || "its date".to_owned(),
            |day| format!("{day}, and throw it away after that"),
        );
        let text = format!(
            "Fresh herb in oil can hold the poison of botulism without any sign; do not smell or taste it to find out. Keep it cold and use it by {until}."
        );
        let source = judged
            .preparation
            .use_within_days
            .as_ref()
            .map_or("", |days| days.source.as_str());
        return vec![note("only-the-date", text, source, Status::Confirmed)];
    }
    if judged.preparation.spoilage.is_empty() {
        return Vec::new();
    }
    let text = crate::words::sentence(&judged.preparation.spoilage);
    vec![note("spoilage", text, "", Status::Practice)]
}

/// The trade's sums: what a millilitre stands for, the alcohol in it, what it cost.
fn sums(
    reading: &Reading<'_>,
    jar: &Jar,
    judged: &Judged,
    size_ml: f64,
    came_out_ml: f64,
) -> Result<BottleSums, Failure> {
    let liquid = &judged.poured.liquid;
    let equivalent = DriedEquivalent::of(jar, judged)?;
    let Cost {
        amount: cost,
        currency,
        mut notes,
    } = cost(reading, jar, size_ml, came_out_ml)?;
    let droppers = reading.droppers()?;
    let dropper = droppers
        .iter()
        .find(|(_, dropper)| dropper.liquid.as_deref() == Some(jar.name.as_str()));
    let drops_per_ml = dropper
        .map(|(_, dropper)| arithmetic::drops_per_ml(&dropper.drops_in_1_ml))
        .transpose()?;
    if drops_per_ml.is_none() {
        let text = "Drops differ from liquid to liquid and from dropper to dropper: count three times how many of yours make one millilitre of this.";
        notes.push(note(
            "drops",
            text.to_owned(),
            "Eschbaum 1895",
            Status::Confirmed,
        ));
    }
    let per_ml = liquid.ethanol_g_per_ml;
    Ok(BottleSums {
        dried_equivalent_g_per_ml: equivalent.map(|it| it.alone_g_per_ml),
        dried_equivalent_with_plant_water_g_per_ml: equivalent
            .map(|it| it.with_plant_water_g_per_ml),
        ethanol_g_per_ml: per_ml.into(),
        ethanol_g_bottle: per_ml.map_monotone(|g| g * size_ml).into(),
        drops_per_ml: drops_per_ml.map(Interval::from),
        cost,
        currency,
        notes,
    })
}

/// What a bottle cost in its currency.
#[derive(Default)]
struct Cost {
    amount: Option<f64>,
    currency: Option<String>,
    notes: Vec<Note>,
}

/// The bottle's share of what its liquids cost, if any of them had a price.
fn cost(reading: &Reading<'_>, jar: &Jar, size_ml: f64, came_out_ml: f64) -> Result<Cost, Failure> {
    let (mut inputs, mut currencies, mut unpriced) = (Vec::new(), Vec::new(), Vec::new());
    for pour in &jar.pours {
        let Some(id) = pour.supply else {
            unpriced.push(pour.name.as_str());
            continue;
        };
        let supply = reading.get::<Supply>(&id)?;
        match supply.price {
            Some(price) => {
                inputs.push(Input {
                    used_ml: pour.ml,
                    bought_ml: supply.size_ml,
                    price: price.amount,
                });
                currencies.push(price.currency);
            }
            None => unpriced.push(pour.name.as_str()),
        }
    }
    currencies.sort_unstable();
    currencies.dedup();
    let [currency] = currencies.as_slice() else {
        return Ok(Cost::default());
    };
    let whole = arithmetic::cost_per_bottle(&inputs, 1)?;
    let notes = if unpriced.is_empty() {
        Vec::new()
    } else {
        let text = format!(
            "Without {}, for which no price is known.",
            unpriced.join(", ")
        );
        vec![note("cost", text, "", Status::Computed)]
    };
    let share = if came_out_ml > 0.0 {
        size_ml / came_out_ml
    } else {
        0.0
    };
    let cents = (whole * share * 100.0).round() / 100.0;
    Ok(Cost {
        amount: Some(cents),
        currency: Some(currency.clone()),
        notes,
    })
}

impl From<journal::Outcome> for Outcome {
    fn from(outcome: journal::Outcome) -> Self {
        match outcome {
            journal::Outcome::Good => Self::Good,
            journal::Outcome::Doubtful => Self::Doubtful,
            journal::Outcome::Bad => Self::Bad,
        }
    }
}

impl From<Outcome> for journal::Outcome {
    fn from(outcome: Outcome) -> Self {
        match outcome {
            Outcome::Good => Self::Good,
            Outcome::Doubtful => Self::Doubtful,
            Outcome::Bad => Self::Bad,
        }
    }
}
