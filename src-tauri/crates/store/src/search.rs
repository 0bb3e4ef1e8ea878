//! Finding rows by words.

use journal::{Bed, Bottle, Harvest, Herb, Jar, Kept, Noun, Recipe, Supply, Tray};
use rusqlite::{Connection, params};

use crate::{Failure, Reading, log};

/// What a row is found by.
#[derive(Debug, Default)]
pub(crate) struct Words {
    text: String,
    links: String,
    at_ms: i64,
}

impl Words {
    fn of(texts: &[Option<&str>]) -> Self {
        let text: Vec<&str> = texts.iter().flatten().copied().collect();
        Self {
            text: text.join(" "),
            ..Self::default()
        }
    }

    fn linked<'a>(mut self, keys: impl IntoIterator<Item = &'a str>) -> Self {
        for key in keys {
            self.links.push_str(&letters(key));
            self.links.push(' ');
        }
        self
    }

    fn at(mut self, ms: i64) -> Self {
        self.at_ms = ms;
        self
    }
}

/// A key as one word: dashes would split it.
fn letters(key: &str) -> String {
    key.chars().filter(|c| c.is_alphanumeric()).collect()
}

/// What a noun is found by; nothing for what is found through what it belongs to.
pub(crate) trait Worded {
    fn words(&self) -> Option<Words> {
        None
    }
}

impl Worded for Herb {
    fn words(&self) -> Option<Words> {
        Some(Words::of(&[
            Some(&self.common),
            self.latin.as_deref(),
            self.note.as_deref(),
        ]))
    }
}

impl Worded for Bed {
    fn words(&self) -> Option<Words> {
        Some(Words::of(&[Some(&self.name), self.note.as_deref()]))
    }
}

impl Worded for Harvest {
    fn words(&self) -> Option<Words> {
        let bed = self.bed.map(|id| id.to_string());
        Some(
            Words::of(&[
                Some(self.code.as_str()),
                Some(&self.part),
                self.stage.as_deref(),
                self.note.as_deref(),
            ])
            .linked([self.herb.as_str()].into_iter().chain(bed.as_deref()))
            .at(self.picked_at.timestamp_millis()),
        )
    }
}

impl Worded for Tray {
    fn words(&self) -> Option<Words> {
        Some(
            Words::of(&[
                Some(self.code.as_str()),
                Some(&self.name),
                self.note.as_deref(),
            ])
            .at(self.started_at.timestamp_millis()),
        )
    }
}

impl Worded for Supply {
    fn words(&self) -> Option<Words> {
        Some(Words::of(&[Some(&self.name)]))
    }
}

impl Worded for Jar {
    fn words(&self) -> Option<Words> {
        let failed = self.failed.as_ref().map(|failed| failed.reason.as_str());
        Some(
            Words::of(&[
                Some(self.code.as_str()),
                Some(&self.name),
                Some(&self.preparation),
                self.place.as_deref(),
                self.note.as_deref(),
                failed,
            ])
            .linked(self.plants.iter().map(|plant| plant.herb.as_str()))
            .at(self.poured_at.timestamp_millis()),
        )
    }
}

impl Worded for Bottle {
    fn words(&self) -> Option<Words> {
        let end = self.end.as_ref();
        Some(
            Words::of(&[
                Some(self.code.as_str()),
                self.place.as_deref(),
                self.note.as_deref(),
                end.and_then(|end| end.to.as_deref()),
                end.and_then(|end| end.reason.as_deref()),
            ])
            .at(self.filled_at.timestamp_millis()),
        )
    }
}

impl Worded for Recipe {
    fn words(&self) -> Option<Words> {
        Some(
            Words::of(&[
                Some(&self.name),
                Some(&self.preparation),
                self.note.as_deref(),
            ])
            .linked(self.plants.iter().map(|plant| plant.herb.as_str())),
        )
    }
}

macro_rules! found_through_others {
    ($($noun:ident),*) => { $(impl Worded for journal::$noun {})* };
}
found_through_others!(
    Photo, Weighing, Discard, Setting, Shake, Straining, Use, Check, Dropper, Wish
);

/// Where a page stands among all, so that those found come out latest first without being sorted:
/// by its time, and behind everything that has none, as herbs and beds have. Within a millisecond
/// the id decides (64-bit FNV-1a), so that two devices agree.
fn place(at_ms: i64, id: &str) -> i64 {
    const TIMELESS: i64 = 1 << 42;
    let hash = id.bytes().fold(0xcbf2_9ce4_8422_2325_u64, |hash, byte| {
        (hash ^ u64::from(byte)).wrapping_mul(0x0000_0100_0000_01b3)
    });
    let time = if at_ms == 0 {
        TIMELESS
    } else {
        at_ms.clamp(0, TIMELESS - 1)
    };
    time << 20 | (hash >> 44) as i64
}

/// Makes a row searchable by what it says now; `None` for a row that is gone.
pub(crate) fn put<N: Worded + Kept>(
    conn: &Connection,
    id: &str,
    noun: Option<&N>,
) -> Result<(), Failure> {
    conn.prepare_cached("DELETE FROM page WHERE noun = ?1 AND id = ?2")?
        .execute([N::NOUN.as_str(), id])?;
    if let Some(words) = noun.and_then(Worded::words) {
        let mut insert = conn.prepare_cached(
            "INSERT OR IGNORE INTO page (number, noun, id, words, links, at_ms)
             VALUES (?1, ?2, ?3, ?4, ?5, ?6)",
        )?;
        let noun = N::NOUN.as_str();
        let mut number = place(words.at_ms, id);
        while insert.execute(params![
            number,
            noun,
            id,
            words.text,
            words.links,
            words.at_ms
        ])? == 0
        {
            number += 1;
        }
    }
    Ok(())
}

/// One word that is looked for.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Sought {
    /// The word as it was typed; its beginning is enough.
    pub word: String,
    /// Herbs and beds that go by it: what hangs together with one of them is found too.
    pub keys: Vec<String>,
}

impl Sought {
    fn expression(&self) -> String {
        let mut either = vec![format!("words:\"{}\"*", self.word.replace('"', " "))];
        either.extend(
            self.keys
                .iter()
                .map(|key| format!("links:\"{}\"", letters(key))),
        );
        format!("({})", either.join(" OR "))
    }
}

impl Reading<'_> {
    /// The rows in which every word is found: what has no time first, then the latest.
    ///
    /// # Errors
    /// A failure to read.
    pub fn search(&self, words: &[Sought], limit: usize) -> Result<Vec<(Noun, String)>, Failure> {
        let words = words
            .iter()
            .filter(|sought| sought.word.chars().any(char::is_alphanumeric));
        let all: Vec<String> = words.map(Sought::expression).collect();
        if all.is_empty() {
            return Ok(Vec::new());
        }
        let mut statement = self.conn.prepare_cached(
            "SELECT page.noun, page.id FROM found JOIN page ON page.number = found.rowid
             WHERE found MATCH ?1 ORDER BY found.rowid DESC LIMIT ?2",
        )?;
        let mut rows = statement.query(params![all.join(" AND "), limit as i64])?;
        let mut found = Vec::new();
        while let Some(row) = rows.next()? {
            found.push((log::noun(&row.get::<_, String>(0)?)?, row.get(1)?));
        }
        Ok(found)
    }
}
