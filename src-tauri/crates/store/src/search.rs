//! Finding rows by words.
//!
//! What was done becomes searchable when something is looked for, or by the [`BATCH`]: an index of
//! words takes several deeds at once for little more than one, and a deed need not wait for it.

use journal::{Noun, of_noun};
use rusqlite::{Connection, OptionalExtension, params};

use crate::migrate::tell;
use crate::noun::{Table, find};
use crate::open::about;
use crate::{Failure, Reading, log};

/// What a row is found by.
#[derive(Debug, Default)]
pub struct Words {
    text: String,
    links: String,
    at_ms: i64,
}

impl Words {
    pub(crate) fn of(texts: &[Option<&str>]) -> Self {
        let text: Vec<&str> = texts.iter().flatten().copied().collect();
        Self {
            text: text.join(" "),
            ..Self::default()
        }
    }

    pub(crate) fn linked<'a>(mut self, keys: impl IntoIterator<Item = &'a str>) -> Self {
        for key in keys {
            self.links.push_str(&letters(key));
            self.links.push(' ');
        }
        self
    }

    pub(crate) fn at(mut self, ms: i64) -> Self {
        self.at_ms = ms;
        self
    }
}

/// A key as one word: dashes would split it.
fn letters(key: &str) -> String {
    key.chars().filter(|c| c.is_alphanumeric()).collect()
}

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

/// How many deeds become searchable at once if nothing is looked for meanwhile.
const BATCH: i64 = 64;

/// In the table `about`: the number of the last deed of which what it changed can be found.
const FOLLOWED: &str = "searchable";

/// After a deed was appended: lets the search follow if enough of them wait.
pub(crate) fn after(conn: &Connection, deed: i64) -> Result<(), Failure> {
    if deed % BATCH == 0 {
        follow(conn)?;
    }
    Ok(())
}

/// Empties the index together with the table of pages; all of the log waits to be followed.
pub(crate) fn empty(conn: &Connection) -> Result<(), Failure> {
    conn.execute("INSERT INTO found (found) VALUES ('delete-all')", [])?;
    tell(conn, FOLLOWED, "0")
}

/// Makes everything searchable by what it says now.
pub(crate) fn follow(conn: &Connection) -> Result<(), Failure> {
    let last: i64 = conn
        .prepare_cached("SELECT coalesce(max(number), 0) FROM deed")?
        .query_row([], |row| row.get(0))?;
    let followed = about(conn, FOLLOWED)?.and_then(|number| number.parse().ok());
    let followed = followed.unwrap_or(0);
    if followed >= last {
        return Ok(());
    }
    // What is taken back changes what an earlier deed wrote.
    let mut rows = conn.prepare_cached(
        "WITH RECURSIVE reached (number) AS (
             SELECT number FROM deed WHERE number > ?1
             UNION
             SELECT target.number FROM reached CROSS JOIN deed ON deed.number = reached.number
                 CROSS JOIN deed AS target ON target.id = deed.revokes)
         SELECT DISTINCT noun, row FROM reached CROSS JOIN change ON change.deed = reached.number",
    )?;
    let mut rows = rows.query([followed])?;
    let mut some = Vec::with_capacity(AT_ONCE);
    while let Some(row) = rows.next()? {
        some.push((log::noun(&row.get::<_, String>(0)?)?, row.get(1)?));
        if some.len() == AT_ONCE {
            put(conn, &some)?;
            some.clear();
        }
    }
    put(conn, &some)?;
    tell(conn, FOLLOWED, &last.to_string())
}

/// How many rows are held in memory.
const AT_ONCE: usize = 1000;

/// What the index is told of a page that comes or goes; of the latter what it held, for it keeps no copy.
struct Line {
    number: i64,
    comes: bool,
    words: String,
    links: String,
}

/// Makes rows searchable by what they say now, or no longer if they are gone.
fn put(conn: &Connection, rows: &[(Noun, String)]) -> Result<(), Failure> {
    let mut lines = Vec::with_capacity(rows.len());
    for (noun, id) in rows {
        lines.extend(removed(conn, *noun, id)?);
        if let Some(words) = words(conn, *noun, id)? {
            lines.push(inserted(conn, *noun, id, words)?);
        }
    }
    // Only numbers that rise are gathered by the index, and put down together.
    lines.sort_unstable_by_key(|line| (line.number, line.comes));
    let mut goes = conn.prepare_cached(
        "INSERT INTO found (found, rowid, words, links) VALUES ('delete', ?1, ?2, ?3)",
    )?;
    let mut comes =
        conn.prepare_cached("INSERT INTO found (rowid, words, links) VALUES (?1, ?2, ?3)")?;
    for line in lines {
        let told = if line.comes { &mut comes } else { &mut goes };
        told.execute(params![line.number, line.words, line.links])?;
    }
    Ok(())
}

/// What a row says now; nothing of one that is gone, or is found through what it belongs to.
fn words(conn: &Connection, noun: Noun, id: &str) -> Result<Option<Words>, Failure> {
    of_noun!(noun, N => match N::WORDS {
        Some(words) => Ok(find::<N>(conn, id)?.map(|row| words(&row))),
        None => Ok(None),
    })
}

fn removed(conn: &Connection, noun: Noun, id: &str) -> Result<Option<Line>, Failure> {
    Ok(conn
        .prepare_cached(
            "DELETE FROM page WHERE noun = ?1 AND id = ?2 RETURNING number, words, links",
        )?
        .query_row([noun.as_str(), id], |row| {
            Ok(Line {
                number: row.get(0)?,
                comes: false,
                words: row.get(1)?,
                links: row.get(2)?,
            })
        })
        .optional()?)
}

fn inserted(conn: &Connection, noun: Noun, id: &str, words: Words) -> Result<Line, Failure> {
    let mut insert = conn.prepare_cached(
        "INSERT OR IGNORE INTO page (number, noun, id, words, links, at_ms)
         VALUES (?1, ?2, ?3, ?4, ?5, ?6)",
    )?;
    let mut number = place(words.at_ms, id);
    while insert.execute(params![
        number,
        noun.as_str(),
        id,
        words.text,
        words.links,
        words.at_ms
    ])? == 0
    {
        number += 1;
    }
    Ok(Line {
        number,
        comes: true,
        words: words.text,
        links: words.links,
    })
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
        follow(self.conn)?;
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

#[cfg(test)]
mod tests;
