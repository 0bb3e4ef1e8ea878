//! What was thrown away.

use journal::{Amount, Discard, DiscardId, Noun, Source};
use rusqlite::{Connection, params};

use super::{Table, all};
use crate::{Failure, Reading};

impl Table for Discard {
    fn insert(&self, conn: &Connection, id: &str, body: &str) -> Result<(), Failure> {
        conn.prepare_cached("INSERT INTO discard (id, body) VALUES (?1, ?2)")?
            .execute(params![id, body])?;
        Ok(())
    }
}

/// Thousandths that were thrown away of the row at hand of `harvest` or `tray`; what was used in
/// another way is not among them.
pub(crate) fn binned_of(noun: Noun) -> String {
    let noun = noun.as_str();
    format!(
        "(SELECT coalesce(sum(draw.amount), 0)
          FROM draw CROSS JOIN discard ON discard.id = draw.owner
          WHERE draw.source_noun = '{noun}' AND draw.source = {noun}.id
            AND draw.owner_noun = 'discard' AND discard.body ->> '$.used' IS NOT 1)"
    )
}

impl Reading<'_> {
    /// What was thrown away, fresh and dried, of all plants picked between two moments.
    ///
    /// # Errors
    /// A failure to read.
    pub fn binned_of_picked(&self, from_ms: i64, to_ms: i64) -> Result<(Amount, Amount), Failure> {
        let sum = |noun: Noun, trays: &str| -> Result<Amount, Failure> {
            let sql = format!(
                "SELECT coalesce(sum({}), 0) FROM harvest {trays}
                 WHERE harvest.picked_ms >= ?1 AND harvest.picked_ms < ?2",
                binned_of(noun)
            );
            let mut statement = self.conn.prepare_cached(&sql)?;
            let sum = statement.query_row([from_ms, to_ms], |row| row.get(0))?;
            Ok(Amount::from_thousandths(sum))
        };
        let trays = "CROSS JOIN tray ON tray.harvest = harvest.id";
        Ok((sum(Noun::Harvest, "")?, sum(Noun::Tray, trays)?))
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
