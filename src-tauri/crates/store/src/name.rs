//! What the maker calls a row, for sentences.

use journal::{
    Bed, Bottle, Discard, Dropper, Harvest, Herb, Jar, Noun, Recipe, Straining, Supply, Tray, Use,
    Weighing,
};
use rusqlite::Connection;

use crate::noun::find;
use crate::{Failure, log};

/// The name of a row, to stand within a sentence.
pub(crate) fn name_of(conn: &Connection, noun: Noun, id: &str) -> Result<String, Failure> {
    Ok(match noun {
        Noun::Herb => find::<Herb>(conn, id)?.map(|herb| format!("“{}”", herb.common)),
        Noun::Bed => find::<Bed>(conn, id)?.map(|bed| format!("bed “{}”", bed.name)),
        Noun::Harvest => find::<Harvest>(conn, id)?.map(|it| format!("harvest {}", it.code)),
        Noun::Tray => find::<Tray>(conn, id)?.map(|it| format!("tray {}", it.code)),
        Noun::Supply => find::<Supply>(conn, id)?.map(|it| format!("“{}”", it.name)),
        Noun::Jar => find::<Jar>(conn, id)?.map(|jar| format!("jar “{}” ({})", jar.name, jar.code)),
        Noun::Weighing => match find::<Weighing>(conn, id)? {
            Some(it) => Some(format!(
                "a weigh-in of {}",
                name_of(conn, Noun::Tray, &it.tray.to_string())?
            )),
            None => None,
        },
        Noun::Discard => match find::<Discard>(conn, id)? {
            Some(it) => {
                let (noun, id) = it.from.row();
                Some(format!(
                    "what was thrown away of {}",
                    name_of(conn, noun, &id)?
                ))
            }
            None => None,
        },
        Noun::Bottle => find::<Bottle>(conn, id)?.map(|it| format!("bottle {}", it.code)),
        Noun::Recipe => find::<Recipe>(conn, id)?.map(|it| format!("recipe “{}”", it.name)),
        Noun::Dropper => find::<Dropper>(conn, id)?.map(|it| format!("dropper “{}”", it.name)),
        Noun::Straining => match find::<Straining>(conn, id)? {
            Some(it) => Some(format!(
                "a straining of {}",
                name_of(conn, Noun::Jar, &it.jar.to_string())?
            )),
            None => None,
        },
        Noun::Use => match find::<Use>(conn, id)? {
            Some(it) => Some(format!(
                "a use of {}",
                name_of(conn, Noun::Bottle, &it.bottle.to_string())?
            )),
            None => None,
        },
        Noun::Check => Some("a check of a bottle".to_owned()),
        Noun::Shake => Some("a shake of the jar".to_owned()),
        Noun::Plan => Some("a plan".to_owned()),
        Noun::Photo | Noun::Setting => None,
    }
    .unwrap_or_else(|| format!("a {} that is gone", noun.as_str())))
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
