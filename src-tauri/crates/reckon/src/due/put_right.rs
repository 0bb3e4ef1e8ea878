//! What stands below nothing, as two phones leave it that used the same lot: it is due until its maker says what is
//! true.

use journal::{Harvest, Jar, Noun, Source, Supply, Tray};
use message::{Argument, Failure, Message, say};
use serde::Serialize;
use store::{Overdrawn, Reading};

use crate::due::{About, DueWhat, List};
use crate::herb::Known;
use crate::told;

/// What may be true of it, each a command: `bottle.finish`, `bottle.give`, `bottle.bin`, the `correct` of the noun,
/// and `deed.undo`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum DueChoice {
    #[serde(rename = "finish")]
    Finish,
    #[serde(rename = "give")]
    Give,
    #[serde(rename = "bin")]
    Bin,
    #[serde(rename = "correct")]
    Correct,
    #[serde(rename = "take back")]
    TakeBack,
}

/// The text about a lot of which more was taken than there was.
pub fn put_right_text(lot: &Overdrawn) -> Message {
    let amount = |it: journal::Amount| match lot.source.unit() {
        journal::Unit::Gram => Argument::grams(it.get()),
        journal::Unit::Millilitre => Argument::millilitres(it.get()),
    };
    say!(
        "more-taken-than-there-was",
        taken = amount(lot.drawn),
        there = amount(lot.came_in)
    )
}

impl List {
    /// It is due from the day on which it is looked at, since the day on which both were told of it is in no row.
    pub fn below_nothing(&mut self, reading: &Reading<'_>) -> Result<(), Failure> {
        for lot in reading.overdrawn()? {
            let (noun, title, choices) = named(reading, lot.source, self.today)?;
            let about = About {
                noun,
                id: lot.source.row().1,
                title,
                at: None,
            };
            self.add(
                DueWhat::PutRight,
                self.today,
                1,
                &about,
                put_right_text(&lot),
            );
            if let Some(line) = self.lines.last_mut() {
                line.choices = choices.to_vec();
            }
        }
        Ok(())
    }
}

/// What a lot is called, and what may be true of it.
fn named(
    reading: &Reading<'_>,
    source: Source,
    today: chrono::NaiveDate,
) -> Result<(Noun, Message, &'static [DueChoice]), Failure> {
    use DueChoice::{Bin, Correct, Finish, Give, TakeBack};
    Ok(match source {
        Source::Bottle(id) => {
            let row = reading.bottle(&id)?;
            let (name, ..) = reading.jar_named(&row.bottle.jar)?;
            // What must not be used is neither given away nor used up.
            let is_bad = (row.bottle).is_to_be_binned(row.last_check.as_ref(), today);
            let choices: &[DueChoice] = if is_bad {
                &[Bin, Correct]
            } else {
                &[Finish, Give, Bin, Correct]
            };
            let title = called(&name, &row.bottle.code);
            (Noun::Bottle, title, choices)
        }
        Source::Harvest(id) => {
            let harvest = reading.get::<Harvest>(&id)?;
            let title = say!(
                "due-herb",
                herb = told::herb(&Known::written(reading, &harvest.herb)?),
                code = Argument::own(harvest.code.to_string())
            );
            (Noun::Harvest, title, &[Correct, TakeBack])
        }
        Source::Supply(id) => {
            let supply = reading.get::<Supply>(&id)?;
            (
                Noun::Supply,
                Message::own(supply.name),
                &[Correct, TakeBack],
            )
        }
        // What dried and what came out are weighed and measured once: only what was taken of it can be wrong.
        Source::Tray(id) => {
            let tray = reading.get::<Tray>(&id)?;
            let title = called(&tray.name, &tray.code);
            (Noun::Tray, title, &[TakeBack])
        }
        Source::Jar(id) => {
            let jar = reading.get::<Jar>(&id)?;
            let title = called(&jar.name, &jar.code);
            (Noun::Jar, title, &[TakeBack])
        }
    })
}

/// What the maker named, with its code.
fn called(name: &str, code: &impl ToString) -> Message {
    say!(
        "due-named",
        name = Argument::own(name),
        code = Argument::own(code.to_string())
    )
}
