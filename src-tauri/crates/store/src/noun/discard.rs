//! What was thrown away.

use journal::{Amount, Discard, DiscardId, Noun, Source};
use message::{Message, say};
use rusqlite::{Connection, params};

use super::{RestsOn, Table, WordsOf, all};
use crate::name::name_of;
use crate::{Failure, Reading};

impl Table for Discard {
    const SQL: &'static str = include_str!("discard.sql");
    const RESTS_ON: RestsOn = &[];
    const WORDS: WordsOf<Self> = None;
    const NOT_THERE: fn() -> Message = || say!("not-there-discard");
    const COUNTED: fn(u64) -> Message = |count| say!("counted-discard", count);

    fn name(&self, conn: &Connection) -> Result<Message, Failure> {
        let (noun, id) = self.from.row();
        let of = name_of(conn, noun, &id)?;
        Ok(match self.used {
            true => say!("row-used", of),
            false => say!("row-thrown-away", of),
        })
    }

    fn insert(&self, conn: &Connection, id: &str, body: &str) -> Result<(), Failure> {
        let (noun, source) = self.from.row();
        let binned = if self.used { 0.0 } else { self.amount };
        conn.prepare_cached(
            "INSERT INTO discard (id, body, source_noun, source, binned, at_ms)
             VALUES (?1, ?2, ?3, ?4, ?5, ?6)",
        )?
        .execute(params![
            id,
            body,
            noun.as_str(),
            source,
            Amount::of(binned).thousandths(),
            self.at.timestamp_millis(),
        ])?;
        Ok(())
    }
}

/// Thousandths that were thrown away of the row at hand of `harvest` or `tray`; what was used in
/// another way is not among them.
pub(crate) fn binned_of(noun: Noun) -> String {
    let noun = noun.as_str();
    format!(
        "(SELECT coalesce(sum(binned), 0) FROM discard INDEXED BY discard_binned
          WHERE source_noun = '{noun}' AND source = {noun}.id AND binned > 0)"
    )
}

impl Reading<'_> {
    /// What was thrown away between two moments, of fresh plants and of dried ones. A tray that was
    /// thrown away while it was drying counts as what was laid out on it fresh.
    ///
    /// # Errors
    /// A failure to read.
    pub fn binned(&self, from_ms: i64, to_ms: i64) -> Result<(Amount, Amount), Failure> {
        let mut statement = self.conn.prepare_cached(
            "SELECT coalesce(sum(binned) FILTER (WHERE source_noun = ?3), 0) + coalesce(
                        (SELECT sum(lost) FROM tray INDEXED BY tray_lost
                         WHERE lost > 0 AND lost_ms >= ?1 AND lost_ms < ?2), 0),
                    coalesce(sum(binned) FILTER (WHERE source_noun = ?4), 0)
             FROM discard INDEXED BY discard_in_time
             WHERE binned > 0 AND at_ms >= ?1 AND at_ms < ?2",
        )?;
        let (harvest, tray) = (Noun::Harvest.as_str(), Noun::Tray.as_str());
        Ok(
            statement.query_row(params![from_ms, to_ms, harvest, tray], |row| {
                let sum = |at| Ok::<_, rusqlite::Error>(Amount::from_thousandths(row.get(at)?));
                Ok((sum(0)?, sum(1)?))
            })?,
        )
    }

    /// What was thrown away of a lot or supply, in order of recording.
    ///
    /// # Errors
    /// A failure to read.
    pub fn discards(&self, from: Source) -> Result<Vec<(DiscardId, Discard)>, Failure> {
        let (noun, id) = from.row();
        all(
            self.conn,
            "SELECT discard.id, discard.body
             FROM draw JOIN discard ON discard.id = draw.owner
             WHERE draw.owner_noun = 'discard' AND draw.source_noun = ?1 AND draw.source = ?2
             ORDER BY discard.id",
            [noun.as_str(), &id],
        )
    }
}
