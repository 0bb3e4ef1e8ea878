//! Reads a whole journal and says what is wrong with it: the file, the log, the tables made from the
//! log. Tables are compared with those that the log gives, made anew in a file beside it.

use std::collections::BTreeMap;
use std::path::Path;

use rusqlite::types::ValueRef;

use crate::sql::quoted;
use crate::{Failure, Store, log, noun, seal, search};

/// What is wrong with a journal.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Fault {
    /// The file itself, as SQLite says it.
    File(String),
    /// An entry does not read as it was written; what it says now.
    Changed(String),
    /// An entry cannot be read; its number.
    Unreadable(i64),
    /// So many entries are gone.
    Missing(u64),
    /// Tables are not what the log gives; [`Store::rebuild`] mends that.
    Tables,
}

impl Fault {
    /// What SQLite says, without the sentence that a failure puts around it.
    fn of(failure: Failure) -> Self {
        Self::File(match failure {
            Failure::Damaged(why) | Failure::Storage(why) => why,
            other => other.to_string(),
        })
    }

    /// Whether the log itself is at fault: then nothing may be made anew from it, for the tables may
    /// still hold what the log lost.
    pub fn is_of_the_log(&self) -> bool {
        !matches!(self, Self::Tables)
    }
}

/// No maker reads more of them, and each may be a page of nonsense.
const MOST: usize = 100;

impl Store {
    /// Whether the file and every entry of the log read as they were written, and none is gone.
    ///
    /// # Errors
    /// [`Failure::Stopped`]. What cannot be read is a fault.
    pub fn check_log(&self) -> Result<Vec<Fault>, Failure> {
        let mut faults = Vec::new();
        match self.unsound() {
            Ok(lines) => faults.extend(lines.into_iter().take(20).map(Fault::File)),
            Err(Failure::Stopped) => return Err(Failure::Stopped),
            Err(failure) => faults.push(Fault::of(failure)),
        }
        if let Err(failure) = self.check_deeds(&mut faults) {
            match failure {
                Failure::Stopped => return Err(Failure::Stopped),
                other => faults.push(Fault::of(other)),
            }
        }
        faults.truncate(MOST);
        Ok(faults)
    }

    /// Whether the tables are those that the log gives. `beside` is the name of a file that is not
    /// there yet and may be as large as the journal; the caller removes it.
    ///
    /// # Errors
    /// [`Failure::Stopped`], [`Failure::StorageFull`], or a failure to read.
    pub fn check_tables(
        &self,
        beside: &Path,
        stop: impl FnMut() -> bool + Send + 'static,
    ) -> Result<Option<Fault>, Failure> {
        search::follow(&self.conn)?;
        self.snapshot(beside, |_, _| Ok::<_, Failure>(()))?;
        let mut copy = Store::scratch(beside, self.device)?;
        copy.stopped_by(stop)?;
        let here = copy.prints()?;
        copy.rebuild()?;
        let made = copy.prints()?;
        copy.unstopped()?;
        Ok((here != made).then_some(Fault::Tables))
    }

    fn check_deeds(&self, faults: &mut Vec<Fault>) -> Result<(), Failure> {
        let numbers = self
            .conn
            .prepare("SELECT number FROM deed NOT INDEXED ORDER BY number")?
            .query_map([], |row| row.get(0))?
            .collect::<Result<Vec<i64>, _>>()?;
        for number in &numbers {
            match seal::holds(&self.conn, *number) {
                Ok(true) => {}
                Ok(false) => {
                    let text = log::deed(&self.conn, *number).map(|deed| deed.text);
                    faults.push(match text {
                        Ok(text) => Fault::Changed(text),
                        Err(_) => Fault::Unreadable(*number),
                    });
                }
                Err(Failure::Stopped) => return Err(Failure::Stopped),
                Err(_) => faults.push(Fault::Unreadable(*number)),
            }
            if faults.len() > MOST {
                break;
            }
        }
        let last = numbers.last().copied().unwrap_or(0).unsigned_abs();
        let gaps = last.saturating_sub(numbers.len() as u64);
        let gone = seal::missing(&self.conn)?.max(gaps);
        if gone > 0 {
            faults.push(Fault::Missing(gone));
        }
        Ok(())
    }

    /// One number for each table made from the log: the sum of the hashes of its rows, which does
    /// not depend on their order.
    fn prints(&self) -> Result<BTreeMap<&'static str, (u64, u128)>, Failure> {
        let mut prints = BTreeMap::new();
        for table in noun::made() {
            let columns = if table == "page" {
                // A page is numbered by its arrival.
                "noun, id, words, links, at_ms"
            } else {
                "*"
            };
            let sql = format!("SELECT {columns} FROM {}", quoted(table));
            let mut statement = self.conn.prepare(&sql)?;
            let width = statement.column_count();
            let mut rows = statement.query([])?;
            let (mut count, mut sum) = (0_u64, 0_u128);
            while let Some(row) = rows.next()? {
                let mut hasher = blake3::Hasher::new();
                for column in 0..width {
                    take(&mut hasher, row.get_ref(column)?);
                }
                let mut half = [0; 16];
                half.copy_from_slice(&hasher.finalize().as_bytes()[..16]);
                sum = sum.wrapping_add(u128::from_le_bytes(half));
                count += 1;
            }
            prints.insert(table, (count, sum));
        }
        Ok(prints)
    }
}

/// A value with its kind and its length, so that no two rows read alike.
fn take(hasher: &mut blake3::Hasher, value: ValueRef<'_>) {
    let (kind, bytes): (u8, &[u8]) = match &value {
        ValueRef::Null => (0, &[]),
        ValueRef::Integer(number) => (1, &number.to_le_bytes()),
        ValueRef::Real(number) => (2, &number.to_bits().to_le_bytes()),
        ValueRef::Text(text) => (3, text),
        ValueRef::Blob(blob) => (4, blob),
    };
    hasher.update(&[kind]);
    hasher.update(&(bytes.len() as u64).to_le_bytes());
    hasher.update(bytes);
}

#[cfg(test)]
mod tests {
    use journal::{Bed, BedId, DeedId, DeviceId};
    use uuid::Uuid;

    use super::*;

    fn journal() -> (tempfile::TempDir, Store) {
        let folder = tempfile::tempdir().unwrap();
        let device = DeviceId(Uuid::from_u128(1));
        let mut store = Store::open(&folder.path().join("j"), device).unwrap();
        let now = chrono::DateTime::parse_from_rfc3339("2025-06-01T08:00:00Z").unwrap();
        for number in 10..30_i32 {
            let bed = Bed {
                name: format!("Bed {number}"),
                wild: false,
                area_m2: Some(f64::from(number)),
                note: None,
            };
            let id = Uuid::from_u128(u128::from(number.unsigned_abs()));
            store
                .perform(DeedId(id), now, |w| {
                    w.record(&BedId(id), &bed)?;
                    Ok::<_, Failure>((format!("Added the bed {number}").into(), ()))
                })
                .unwrap();
        }
        (folder, store)
    }

    fn tables(store: &Store, folder: &tempfile::TempDir) -> Option<Fault> {
        let beside = folder.path().join("beside");
        let found = store.check_tables(&beside, || false).unwrap();
        std::fs::remove_file(beside).unwrap();
        found
    }

    #[test]
    fn a_whole_journal_has_no_fault() {
        let (folder, store) = journal();
        assert_eq!(store.check_log().unwrap(), []);
        assert_eq!(tables(&store, &folder), None);
    }

    #[test]
    fn a_row_that_the_log_does_not_give_is_found_and_mended_from_the_log() {
        for sql in [
            "UPDATE bed SET name = 'Bed 99' WHERE name = 'Bed 12'",
            "DELETE FROM bed WHERE name = 'Bed 12'",
            "INSERT INTO revoked VALUES (3)",
            "UPDATE tally SET count = 7",
            "UPDATE page SET words = 'nothing' WHERE number = (SELECT max(number) FROM page)",
        ] {
            let (folder, mut store) = journal();
            search::follow(&store.conn).unwrap();
            store.conn.execute_batch(sql).unwrap();
            assert_eq!(store.check_log().unwrap(), [], "{sql}");
            assert_eq!(tables(&store, &folder), Some(Fault::Tables), "{sql}");
            store.rebuild().unwrap();
            assert_eq!(tables(&store, &folder), None, "{sql}");
        }
    }

    #[test]
    fn each_of_fifteen_changes_in_the_log_is_found() {
        let changes = [
            "UPDATE deed SET text = 'Added the bed 99' WHERE number = 3",
            "UPDATE deed SET milliseconds = milliseconds + 1 WHERE number = 3",
            "UPDATE deed SET milliseconds = milliseconds - 86400000 WHERE number = 3",
            "UPDATE deed SET counter = counter + 1 WHERE number = 3",
            "UPDATE deed SET device = '00000000-0000-0000-0000-000000000009' WHERE number = 3",
            "UPDATE deed SET id = '00000000-0000-0000-0000-000000000009' WHERE number = 3",
            "UPDATE deed SET revokes = '00000000-0000-0000-0000-00000000000a' WHERE number = 3",
            "UPDATE deed SET sum = zeroblob(16) WHERE number = 3",
            "UPDATE change SET fields = replace(fields, '12.0', '12.5') WHERE deed = 3",
            "UPDATE change SET fields = replace(fields, 'Bed 12', 'Bed 13') WHERE deed = 3",
            "UPDATE change SET row = '00000000-0000-0000-0000-000000000009' WHERE deed = 3",
            "UPDATE change SET act = 'correct' WHERE deed = 3",
            "UPDATE change SET noun = 'herb' WHERE deed = 3",
            "DELETE FROM change WHERE deed = 3",
            "INSERT INTO change VALUES (3, 9, 'bed', '00000000-0000-0000-0000-000000000009', 'strike', '{}')",
            "DELETE FROM change WHERE deed = 3; DELETE FROM deed WHERE number = 3",
            "DELETE FROM change WHERE deed = 20; DELETE FROM deed WHERE number = 20",
        ];
        for sql in changes {
            let (_folder, store) = journal();
            store
                .conn
                .execute_batch(&format!(
                    "PRAGMA foreign_keys = OFF;
                     DROP TRIGGER deed_is_never_changed; DROP TRIGGER deed_is_never_erased;
                     DROP TRIGGER change_is_never_changed; DROP TRIGGER change_is_never_erased; {sql};"
                ))
                .unwrap();
            let faults = store.check_log().unwrap();
            assert!(faults.iter().any(Fault::is_of_the_log), "{sql}: {faults:?}");
        }
    }
}
