//! What was thrown away.

use journal::{Amount, Discard, DiscardId, Noun, Source};
use rusqlite::{Connection, params};

use super::{Table, all};
use crate::{Failure, Reading};

impl Table for Discard {
    fn insert(&self, conn: &Connection, id: &str, body: &str) -> Result<(), Failure> {
        let (noun, source) = self.from.row();
        let binned = if self.used { 0.0 } else { self.amount };
        conn.prepare_cached(
            "INSERT INTO discard (id, body, source_noun, source, binned)
             VALUES (?1, ?2, ?3, ?4, ?5)",
        )?
        .execute(params![
            id,
            body,
            noun.as_str(),
            source,
            Amount::of(binned).thousandths()
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
    /// What was thrown away, fresh and dried, of all plants picked between two moments.
    ///
    /// # Errors
    /// A failure to read.
    pub fn binned_of_picked(&self, from_ms: i64, to_ms: i64) -> Result<(Amount, Amount), Failure> {
        let sum = |noun: Noun, harvest: &str| -> Result<Amount, Failure> {
            let sql = format!(
                "SELECT coalesce(sum(binned), 0)
                 FROM discard INDEXED BY discard_binned CROSS JOIN harvest ON harvest.id = {harvest}
                 WHERE source_noun = ?1 AND binned > 0 AND picked_ms >= ?2 AND picked_ms < ?3"
            );
            let mut statement = self.conn.prepare_cached(&sql)?;
            let sum =
                statement.query_row(params![noun.as_str(), from_ms, to_ms], |row| row.get(0))?;
            Ok(Amount::from_thousandths(sum))
        };
        let of_tray = "(SELECT harvest FROM tray WHERE tray.id = source)";
        Ok((sum(Noun::Harvest, "source")?, sum(Noun::Tray, of_tray)?))
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
