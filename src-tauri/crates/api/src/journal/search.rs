//! `search`: anything by an herb, a binomial, a lot, a note, a person or a bed.

use std::collections::BTreeSet;

use journal::{BedId, Bottle, Harvest, HerbId, HerbKey, Jar, LotCode, Noun, Recipe, Supply, Tray};
use message::{Argument, Failure, Message, Unit, say};
use reckon::herb::Known;
use reckon::{asked, told};
use serde::{Deserialize, Serialize};
use store::{Reading, Sought};

use crate::open::Open;
use crate::request::Command;
use crate::speech;

/// What is looked for; every word must be found, its beginning is enough.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct Search {
    pub text: String,
    pub limit: Option<u32>,
}

/// Something that was found.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Hit {
    pub noun: Noun,
    pub id: String,
    pub title: Message,
    pub line: Message,
    pub at: Option<String>,
}

/// The answer to [`Search`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Hits {
    pub hits: Vec<Hit>,
}

/// More words than anybody remembers.
const MOST_WORDS: usize = 12;

impl Command for Search {
    const NAME: &'static str = "journal.search";
    type Reply = Hits;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let limit = asked::limit(self.limit, 50)?;
        // A search may have to catch up with what was written.
        app.read_back(|reading| {
            let mut hits: Vec<Hit> = named(&self.text).chain(book(&self.text)).collect();
            let mut seen = BTreeSet::new();
            hits.retain(|hit| seen.insert(hit.id.clone()));
            hits.truncate(limit);
            let words = sought(reading, &self.text)?;
            for (noun, id) in reading.search(&words, limit)? {
                if hits.len() == limit {
                    break;
                }
                hits.extend(hit(reading, noun, &id)?);
            }
            Ok(Hits { hits })
        })
    }
}

/// Whether every typed word begins a word of the name.
fn goes_by<'a>(name: &str, mut words: impl Iterator<Item = &'a str>) -> bool {
    let name = name.to_lowercase();
    let parts: Vec<&str> = name.split(|c: char| !c.is_alphanumeric()).collect();
    words.all(|word| {
        let word = word.to_lowercase();
        parts.iter().any(|part| part.starts_with(&word))
    })
}

/// The herbs of the book whose name begins so.
fn book(text: &str) -> impl Iterator<Item = Hit> {
    let is_asked = !text.trim().is_empty();
    formulary::herbs::all()
        .iter()
        .filter(move |herb| {
            is_asked
                && (goes_by(&herb.common, text.split_whitespace())
                    || goes_by(&speech::line(&herb.name()), text.split_whitespace())
                    || goes_by(&herb.latin, text.split_whitespace()))
        })
        .map(of_book)
}

fn of_book(herb: &formulary::herbs::Herb) -> Hit {
    Hit {
        noun: Noun::Herb,
        id: herb.key.clone(),
        title: say!("title", name = herb.name()),
        line: Message::own(&herb.latin),
        at: None,
    }
}

/// The herbs of the book that go by this name, or by one a slip away.
fn named(text: &str) -> impl Iterator<Item = Hit> {
    let keys = formulary::names::keys_of(text);
    formulary::herbs::all()
        .iter()
        .filter(move |herb| keys.contains(&herb.key.as_str()))
        .map(of_book)
}

/// The words with the herbs and beds that go by each: what hangs together with one is found by it.
fn sought(reading: &Reading<'_>, text: &str) -> Result<Vec<Sought>, Failure> {
    // A code is one word however it is typed.
    if let Ok(code) = text.parse::<LotCode>() {
        let word = code.to_string();
        return Ok(vec![Sought {
            word,
            keys: Vec::new(),
        }]);
    }
    let (own, beds) = (reading.herbs()?, reading.beds()?);
    let words = text.split_whitespace().take(MOST_WORDS).map(|word| {
        let by = |name: &str| goes_by(name, std::iter::once(word));
        let mut keys: Vec<String> = formulary::herbs::all()
            .iter()
            .filter(|herb| by(&herb.common) || by(&speech::line(&herb.name())) || by(&herb.latin))
            .map(|herb| herb.key.clone())
            .collect();
        keys.extend(
            formulary::names::keys_of(word)
                .into_iter()
                .map(str::to_owned),
        );
        let own = own
            .iter()
            .filter(|(_, herb)| by(&herb.common) || herb.latin.as_deref().is_some_and(by));
        keys.extend(own.map(|(id, _)| HerbKey::from(*id).to_string()));
        keys.extend(
            beds.iter()
                .filter(|(_, bed)| by(&bed.name))
                .map(|(id, _)| id.to_string()),
        );
        Sought {
            word: word.to_owned(),
            keys,
        }
    });
    Ok(words.collect())
}

/// What the maker calls it, with its code.
fn coded(name: &str, code: &LotCode) -> Message {
    Message::own(format!("{name} ({code})"))
}

/// A row as a line of the list; nothing for what has no page of its own.
fn hit(reading: &Reading<'_>, noun: Noun, id: &str) -> Result<Option<Hit>, Failure> {
    let line = |noun, title: Message, line: Message, at: Option<String>| Hit {
        noun,
        id: id.to_owned(),
        title,
        line,
        at,
    };
    Ok(Some(match noun {
        Noun::Herb => {
            let herb: journal::Herb = reading.get(&id.parse::<HerbId>()?)?;
            line(
                Noun::Herb,
                Message::own(herb.common),
                Message::own(herb.latin.unwrap_or_default()),
                None,
            )
        }
        Noun::Bed => {
            let bed: journal::Bed = reading.get(&id.parse::<BedId>()?)?;
            line(
                Noun::Bed,
                Message::own(bed.name),
                Message::own(bed.note.unwrap_or_default()),
                None,
            )
        }
        Noun::Harvest => {
            let it: Harvest = reading.get(&id.parse()?)?;
            let plant = told::plant(&Known::written(reading, &it.herb)?, &it.part);
            let at = Some(it.picked_at.to_rfc3339());
            let text = it.note.clone().unwrap_or_else(|| it.code.to_string());
            line(
                Noun::Harvest,
                say!("lot-with-plant", plant, code = &it.code),
                Message::own(text),
                at,
            )
        }
        Noun::Tray => {
            let it: Tray = reading.get(&id.parse()?)?;
            let at = Some(it.started_at.to_rfc3339());
            line(
                Noun::Tray,
                coded(&it.name, &it.code),
                Message::own(it.note.unwrap_or_default()),
                at,
            )
        }
        Noun::Supply => {
            let it: Supply = reading.get(&id.parse()?)?;
            let size = Argument::exact(it.size_ml, Unit::Millilitre);
            line(
                Noun::Supply,
                Message::own(it.name),
                say!("alone", what = size),
                None,
            )
        }
        Noun::Jar => {
            let it: Jar = reading.get(&id.parse()?)?;
            let at = Some(it.poured_at.to_rfc3339());
            let text = it.note.or(it.place).unwrap_or_default();
            line(Noun::Jar, coded(&it.name, &it.code), Message::own(text), at)
        }
        Noun::Bottle => {
            let it: Bottle = reading.get(&id.parse()?)?;
            let jar: Jar = reading.get(&it.jar)?;
            let to = it.end.as_ref().and_then(|end| end.to.as_ref());
            let text = match to {
                Some(to) => say!("given-to", to = Argument::own(to)),
                None => Message::own(it.note.clone().or(it.place.clone()).unwrap_or_default()),
            };
            let at = Some(it.filled_at.to_rfc3339());
            line(Noun::Bottle, coded(&jar.name, &it.code), text, at)
        }
        Noun::Recipe => {
            let it: Recipe = reading.get(&id.parse()?)?;
            line(
                Noun::Recipe,
                Message::own(it.name),
                Message::own(it.note.unwrap_or_default()),
                None,
            )
        }
        _ => return Ok(None),
    }))
}
