//! From the format of the file to the present one, all or nothing.

use journal::DeviceId;
use rusqlite::Connection;

use crate::open::about;
use crate::sql::quoted;
use crate::{Failure, noun, project, seal, search};

/// "TRUG", so that other programs can tell what the file is.
pub(crate) const APPLICATION_ID: i32 = i32::from_be_bytes(*b"TRUG");

/// The n-th takes the log from format n to n + 1; none is ever edited.
const MIGRATIONS: &[&str] = &[
    include_str!("../migrations/0001_log.sql"),
    include_str!("../migrations/0002_pantry.sql"),
    include_str!("../migrations/0003_ph_and_lost.sql"),
    include_str!("../migrations/0004_sums.sql"),
    include_str!("../migrations/0005_messages.sql"),
    include_str!("../migrations/0006_portraits.sql"),
    include_str!("../migrations/0007_pictured_herbs.sql"),
];

/// The format from which every deed carries its checksum.
pub(crate) const SUMS: usize = 4;

/// As in the first migration: the one time a deed is changed, it is given its checksum.
const NEVER_CHANGED: &str = "CREATE TRIGGER deed_is_never_changed BEFORE UPDATE ON deed
BEGIN SELECT RAISE(ABORT, 'a deed is never changed'); END";

/// Raised when the tables that are made from the log are filled differently
/// although their shape is the same.
const FILLING: u32 = 4;

/// The latest format that this version knows.
pub(crate) const LATEST: usize = MIGRATIONS.len();

pub(crate) fn number(conn: &Connection, pragma: &str) -> Result<i32, Failure> {
    Ok(conn.pragma_query_value(None, pragma, |row| row.get(0))?)
}

/// The tables of the log alone, in the pages in which every journal has them: they are the first
/// that are made, and no page is ever moved. Columns that came later are empty where a deed has none.
pub(crate) fn log_alone(conn: &Connection) -> Result<(), Failure> {
    conn.execute_batch(MIGRATIONS[0])?;
    let later = "ALTER TABLE deed ADD COLUMN sum BLOB; ALTER TABLE deed ADD COLUMN message TEXT;";
    Ok(conn.execute_batch(later)?)
}

/// Refuses a file that is no journal, or that a newer version wrote.
pub(crate) fn recognise(conn: &Connection) -> Result<(), Failure> {
    let application = number(conn, "application_id")?;
    let format = number(conn, "user_version")?;
    let tables: i64 = conn.query_row("SELECT count(*) FROM sqlite_schema", [], |row| row.get(0))?;
    let new = application == 0 && format == 0 && tables == 0;
    if !new && application != APPLICATION_ID {
        return Err(Failure::NotAJournal);
    }
    if usize::try_from(format).map_or(true, |format| format > MIGRATIONS.len()) {
        return Err(Failure::NewerFile);
    }
    Ok(())
}

/// The name of this device, if nothing is to be brought up to date. Opening
/// then only reads, and need not wait for another program that writes.
pub(crate) fn device_of_current(conn: &Connection) -> Result<Option<DeviceId>, Failure> {
    if usize::try_from(number(conn, "user_version")?) != Ok(MIGRATIONS.len())
        || about(conn, "tables")?.as_deref() != Some(&stamp())
    {
        return Ok(None);
    }
    Ok(about(conn, "device")?
        .map(|text| text.parse())
        .transpose()?)
}

/// Runs the migrations that are missing and, if the tables made from the log
/// have another shape than this version's, makes them anew. Within the
/// caller's transaction. Returns the name of this device.
pub(crate) fn bring_up_to_date(
    conn: &Connection,
    new_device: DeviceId,
) -> Result<DeviceId, Failure> {
    recognise(conn)?;
    let format = usize::try_from(number(conn, "user_version")?).unwrap_or(0);
    migrate(conn, format, MIGRATIONS.len())?;
    if format < MIGRATIONS.len() {
        conn.pragma_update(None, "application_id", APPLICATION_ID)?;
        conn.pragma_update(None, "user_version", MIGRATIONS.len() as i64)?;
    }
    let stamp = stamp();
    if about(conn, "tables")?.as_deref() != Some(&stamp) {
        drop_made_tables(conn)?;
        conn.execute_batch(&noun::tables())?;
        project::rebuild(conn, None)?;
        search::follow(conn)?;
        tell(conn, "tables", &stamp)?;
    }
    match about(conn, "device")? {
        Some(text) => Ok(text.parse()?),
        None => {
            tell(conn, "device", &new_device.to_string())?;
            Ok(new_device)
        }
    }
}

/// Takes the log from one format to another.
fn migrate(conn: &Connection, from: usize, to: usize) -> Result<(), Failure> {
    for (done, migration) in MIGRATIONS.iter().enumerate().take(to).skip(from) {
        conn.execute_batch(migration)?;
        if done + 1 == SUMS {
            conn.execute_batch("DROP TRIGGER deed_is_never_changed")?;
            seal::seal_all(conn)?;
            conn.execute_batch(NEVER_CHANGED)?;
        }
    }
    Ok(())
}

/// What the log's own part of a file of this format looks like: type, name, table and SQL of each
/// object.
pub(crate) fn log_schema(format: usize) -> Result<Vec<SchemaRow>, Failure> {
    let conn = Connection::open_in_memory()?;
    migrate(&conn, 0, format)?;
    schema(&conn)
}

/// Type, name, table and SQL of an object in a file.
pub(crate) type SchemaRow = (String, String, String, Option<String>);

/// Every object in a file, by name.
pub(crate) fn schema(conn: &Connection) -> Result<Vec<SchemaRow>, Failure> {
    let mut statement =
        conn.prepare("SELECT type, name, tbl_name, sql FROM sqlite_schema ORDER BY name, type")?;
    let rows = statement.query_map([], |row| {
        Ok((row.get(0)?, row.get(1)?, row.get(2)?, row.get(3)?))
    })?;
    Ok(rows.collect::<Result<_, _>>()?)
}

pub(crate) fn tell(conn: &Connection, key: &str, value: &str) -> Result<(), Failure> {
    conn.execute(
        "INSERT OR REPLACE INTO about (key, value) VALUES (?1, ?2)",
        [key, value],
    )?;
    Ok(())
}

fn drop_made_tables(conn: &Connection) -> Result<(), Failure> {
    let mut statement = conn.prepare(
        "SELECT name FROM sqlite_schema WHERE type = 'table'
         AND name NOT IN ('about', 'deed', 'change', 'writer') AND name NOT LIKE 'sqlite_%'
         -- A virtual table takes the tables behind it along.
         ORDER BY sql LIKE 'CREATE VIRTUAL%' DESC",
    )?;
    let names: Vec<String> = statement
        .query_map([], |row| row.get(0))?
        .collect::<Result<_, _>>()?;
    for name in names {
        conn.execute_batch(&format!("DROP TABLE IF EXISTS {}", quoted(&name)))?;
    }
    Ok(())
}

/// Stands for the SQL of the tables made from the log (64-bit FNV-1a), so that
/// an edit of theirs can never be forgotten here.
fn stamp() -> String {
    let hash = noun::tables()
        .bytes()
        .fold(0xcbf2_9ce4_8422_2325_u64, |hash, byte| {
            (hash ^ u64::from(byte)).wrapping_mul(0x0000_0100_0000_01b3)
        });
    format!("{hash:016x}-{FILLING}")
}

#[cfg(test)]
mod tests {
    use std::path::Path;

    use journal::{BedId, DeedId};
    use uuid::Uuid;

    use super::*;
    use crate::Store;
    use crate::sample::{bed, now};

    fn open(path: &Path) -> Store {
        Store::open(path, DeviceId(Uuid::from_u128(1))).unwrap()
    }

    #[test]
    fn tables_of_another_shape_are_made_anew_from_the_log() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("journal.sqlite");
        let mut store = open(&path);
        let (bed, now) = (bed("Terrace"), now());
        for number in 0..3 {
            store
                .perform(DeedId(Uuid::from_u128(10 + number)), now, |w| {
                    w.record(&BedId(Uuid::from_u128(20 + number)), &bed)?;
                    Ok::<_, Failure>(("Added a bed".into(), ()))
                })
                .unwrap();
        }
        store
            .undo(
                DeedId(Uuid::from_u128(30)),
                now,
                DeedId(Uuid::from_u128(11)),
                |line| line.to_string(),
            )
            .unwrap();
        let tables = store.tables().unwrap();
        store
            .conn
            .execute_batch(
                "DROP TABLE jar; DELETE FROM bed; DELETE FROM revoked; CREATE TABLE cupboard (x);
                 UPDATE about SET value = 'of another version' WHERE key = 'tables';",
            )
            .unwrap();
        drop(store);
        let store = open(&path);
        assert_eq!(store.tables().unwrap(), tables);
        let shelves: i64 = store
            .conn
            .query_row(
                "SELECT count(*) FROM sqlite_schema WHERE name = 'cupboard'",
                [],
                |row| row.get(0),
            )
            .unwrap();
        assert_eq!(shelves, 0, "a table that is no longer made is gone");
    }

    #[test]
    fn the_file_names_its_application_and_format() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("journal.sqlite");
        drop(open(&path));
        // SQLite file format 1.3: user version at 60, application id at 68, both big-endian.
        let bytes = std::fs::read(&path).unwrap();
        assert_eq!(bytes[60..64], 7_u32.to_be_bytes());
        assert_eq!(&bytes[68..72], b"TRUG");
    }
}
