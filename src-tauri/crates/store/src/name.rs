//! What the maker calls a row, for sentences.

use journal::{
    Act, Bed, Bottle, Check, Discard, Dropper, Fields, Harvest, Herb, Jar, Noun, Recipe, Row,
    Shake, Straining, Supply, Tray, Use, Weighing, Wish,
};
use rusqlite::Connection;

use crate::noun::{Table, find};
use crate::{Failure, log};

/// A row as the maker knew it last: a name is asked for while the row is being taken back too.
fn known<T: Table>(conn: &Connection, id: &str) -> Result<Option<T>, Failure> {
    if let Some(there) = find::<T>(conn, id)? {
        return Ok(Some(there));
    }
    let mut statement = conn.prepare_cached(
        "SELECT change.act, change.fields FROM change JOIN deed ON deed.number = change.deed
         WHERE change.noun = ?1 AND change.row = ?2
         ORDER BY milliseconds, counter, device, id, position",
    )?;
    let mut rows = statement.query([T::NOUN.as_str(), id])?;
    let mut last = Row::default();
    while let Some(row) = rows.next()? {
        if row.get::<_, String>(0)? != Act::Strike.as_str() {
            let fields: Fields = serde_json::from_str(&row.get::<_, String>(1)?)?;
            last.apply(Act::Record, &fields);
        }
    }
    Ok(last.read().ok().flatten())
}

fn tenths(amount: f64) -> f64 {
    (amount * 10.0).round() / 10.0
}

/// What was done to a row, with the name of that row.
fn of(conn: &Connection, what: &str, noun: Noun, id: &str) -> Result<Option<String>, Failure> {
    Ok(Some(format!("{what} {}", name_of(conn, noun, id)?)))
}

/// The name of a row, to stand within a sentence.
pub(crate) fn name_of(conn: &Connection, noun: Noun, id: &str) -> Result<String, Failure> {
    let name = match noun {
        Noun::Herb => known::<Herb>(conn, id)?.map(|it| format!("“{}”", it.common)),
        Noun::Bed => known::<Bed>(conn, id)?.map(|it| format!("bed “{}”", it.name)),
        Noun::Harvest => known::<Harvest>(conn, id)?.map(|it| format!("harvest {}", it.code)),
        Noun::Tray => {
            known::<Tray>(conn, id)?.map(|it| format!("tray “{}” ({})", it.name, it.code))
        }
        Noun::Supply => known::<Supply>(conn, id)?.map(|it| format!("“{}”", it.name)),
        Noun::Jar => known::<Jar>(conn, id)?.map(|it| format!("jar “{}” ({})", it.name, it.code)),
        Noun::Bottle => known::<Bottle>(conn, id)?.map(|it| format!("bottle {}", it.code)),
        Noun::Recipe => known::<Recipe>(conn, id)?.map(|it| format!("recipe “{}”", it.name)),
        Noun::Dropper => known::<Dropper>(conn, id)?.map(|it| format!("dropper “{}”", it.name)),
        Noun::Weighing => match known::<Weighing>(conn, id)? {
            Some(it) => {
                let what = format!("the weigh-in at {} g of", tenths(it.gross_g));
                of(conn, &what, Noun::Tray, &it.tray.to_string())?
            }
            None => None,
        },
        Noun::Discard => match known::<Discard>(conn, id)? {
            Some(it) => {
                let (noun, id) = it.from.row();
                let what = if it.used {
                    "what was used of"
                } else {
                    "what was thrown away of"
                };
                of(conn, what, noun, &id)?
            }
            None => None,
        },
        Noun::Straining => match known::<Straining>(conn, id)? {
            Some(it) => {
                let what = format!("the straining of {} mL off", tenths(it.came_out_ml));
                of(conn, &what, Noun::Jar, &it.jar.to_string())?
            }
            None => None,
        },
        Noun::Use => match known::<Use>(conn, id)? {
            Some(it) => {
                let what = format!("the use of {} mL from", tenths(it.ml));
                of(conn, &what, Noun::Bottle, &it.bottle.to_string())?
            }
            None => None,
        },
        Noun::Check => match known::<Check>(conn, id)? {
            Some(it) => of(conn, "a look at", Noun::Bottle, &it.bottle.to_string())?,
            None => None,
        },
        Noun::Shake => match known::<Shake>(conn, id)? {
            Some(it) => of(conn, "a shake of", Noun::Jar, &it.jar.to_string())?,
            None => None,
        },
        Noun::Plan => match known::<Wish>(conn, id)? {
            Some(it) => {
                let own = known::<Herb>(conn, it.herb.as_str())?.map(|herb| herb.common);
                let herb = own.unwrap_or_else(|| it.herb.as_str().replace('-', " "));
                Some(format!("the plan for {} bottles of {herb}", it.bottles))
            }
            None => None,
        },
        Noun::Photo | Noun::Setting => None,
    };
    Ok(name.unwrap_or_else(|| format!("a {}", noun.as_str())))
}

/// The names of the rows that need a row or draw from it.
pub(crate) fn resting_on(conn: &Connection, noun: Noun, id: &str) -> Result<Vec<String>, Failure> {
    let sql = match noun {
        Noun::Herb => {
            "SELECT 'harvest', id FROM harvest WHERE herb = ?1
             UNION SELECT 'jar', jar FROM jar_herb WHERE herb = ?1
             UNION SELECT 'recipe', recipe FROM recipe_herb WHERE herb = ?1
             UNION SELECT 'plan', id FROM plan WHERE herb = ?1"
        }
        Noun::Bed => "SELECT 'harvest', id FROM harvest WHERE bed = ?1",
        Noun::Photo => "SELECT 'harvest', harvest FROM harvest_photo WHERE hash = ?1",
        Noun::Harvest => {
            "SELECT owner_noun, owner FROM draw WHERE source_noun = 'harvest' AND source = ?1"
        }
        Noun::Supply => {
            "SELECT owner_noun, owner FROM draw WHERE source_noun = 'supply' AND source = ?1"
        }
        Noun::Tray => {
            "SELECT owner_noun, owner FROM draw WHERE source_noun = 'tray' AND source = ?1
             UNION SELECT 'weighing', id FROM weighing WHERE tray = ?1"
        }
        Noun::Jar => {
            "SELECT owner_noun, owner FROM draw WHERE source_noun = 'jar' AND source = ?1
             UNION SELECT 'shake', id FROM shake WHERE jar = ?1
             UNION SELECT 'straining', id FROM straining WHERE jar = ?1
             UNION SELECT 'recipe', id FROM recipe WHERE jar = ?1
             UNION SELECT 'jar', id FROM jar WHERE marc_of = ?1"
        }
        Noun::Bottle => {
            "SELECT owner_noun, owner FROM draw WHERE source_noun = 'bottle' AND source = ?1
             UNION SELECT 'check', id FROM \"check\" WHERE bottle = ?1"
        }
        Noun::Weighing
        | Noun::Discard
        | Noun::Setting
        | Noun::Shake
        | Noun::Straining
        | Noun::Use
        | Noun::Check
        | Noun::Recipe
        | Noun::Dropper
        | Noun::Plan => return Ok(Vec::new()),
    };
    let mut statement = conn.prepare_cached(sql)?;
    let mut rows = statement.query([id])?;
    let mut names = Vec::new();
    while let Some(row) = rows.next()? {
        let noun = log::noun(&row.get::<_, String>(0)?)?;
        names.push(name_of(conn, noun, &row.get::<_, String>(1)?)?);
    }
    names.sort_unstable();
    names.dedup();
    Ok(names)
}

/// A few names as one phrase.
pub(crate) fn joined(names: &[String]) -> String {
    match names {
        [] => "something".into(),
        [one] => one.clone(),
        [one, two] => format!("{one} and {two}"),
        [one, two, rest @ ..] => format!("{one}, {two} and {} more", rest.len()),
    }
}

pub(crate) fn capitalised(phrase: &str) -> String {
    let mut letters = phrase.chars();
    letters.next().map_or_else(String::new, |first| {
        first.to_uppercase().chain(letters).collect()
    })
}
