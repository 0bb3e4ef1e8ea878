//! The pH that was read of a jar's liquid.

use journal::{BottleId, Check, JarId, PhRead, Straining};
use rusqlite::Connection;

use super::all;
use crate::{Failure, Reading};

/// Every reading of a jar's liquid, in the jar and in its bottles, the earliest first.
fn reads(conn: &Connection, jar: &JarId) -> Result<Vec<PhRead>, Failure> {
    let mut reads = Vec::new();
    let mut put = |at, bottle, ph: Option<_>| {
        reads.extend(ph.map(|ph| PhRead { at, bottle, ph }));
    };
    for (_, it) in all::<Straining>(
        conn,
        "SELECT id, body FROM straining INDEXED BY straining_ph
         WHERE jar = ?1 AND reads_ph ORDER BY at_ms, id",
        [jar.to_string()],
    )? {
        put(it.at, None, it.ph);
    }
    for (_, it) in all::<Check>(
        conn,
        "SELECT \"check\".id, \"check\".body
         FROM bottle CROSS JOIN \"check\" INDEXED BY check_ph ON \"check\".bottle = bottle.id
         WHERE bottle.jar = ?1 AND \"check\".reads_ph ORDER BY \"check\".at_ms, \"check\".id",
        [jar.to_string()],
    )? {
        put(it.at, Some(it.bottle), it.ph);
    }
    reads.sort_by_key(|read| read.at);
    Ok(reads)
}

pub(crate) fn that_counts(
    conn: &Connection,
    jar: &JarId,
    of: Option<BottleId>,
) -> Result<Option<PhRead>, Failure> {
    let reads = reads(conn, jar)?;
    Ok(PhRead::that_counts(&reads, of).copied())
}

impl Reading<'_> {
    /// The pH that counts for the liquid of a jar; that of a bottle stands in its row.
    ///
    /// # Errors
    /// A failure to read.
    pub fn ph_of(&self, jar: &JarId) -> Result<Option<PhRead>, Failure> {
        that_counts(self.conn, jar, None)
    }
}
