//! A foreign journal is data, never a program: whatever lies in a backup, a look at it changes nothing here, and
//! nothing of it counts before all of it obeys the rules of what is typed.

use std::fs;
use std::path::{Path, PathBuf};

use archive::{Packer, Progress};
use rusqlite::Connection;
use serde_json::{Value, json};

use super::commands::{World, text};
use super::season::{backed_up, done, everything, failed, outside, told};

/// Packs a journal file as a backup, with proper hashes, as any stranger can.
pub fn packed(journal: &Path, to: &Path) {
    let (disk, progress) = (disk::Disk::default(), Progress::default());
    let mut packer = Packer::begin(&disk, to, None, &progress).unwrap();
    let bytes = fs::read(journal).unwrap();
    packer
        .add("journal.trugbook", bytes.len() as u64, bytes.as_slice())
        .unwrap();
    packer.finish("trugbook backup", json!({})).unwrap();
}

/// The journal of a told season as one plain file.
pub fn plain_journal(folder: &Path) -> PathBuf {
    let world = World::new();
    told(&world);
    let from = world.closed();
    let path = folder.join("plain.trugbook");
    fs::copy(from.path().join("journal.trugbook"), &path).unwrap();
    Connection::open(&path)
        .unwrap()
        .pragma_update(None, "journal_mode", "DELETE")
        .unwrap();
    path
}

/// A backup whose journal a stranger wrote to.
fn crafted(folder: &Path, sql: &str) -> PathBuf {
    let journal = plain_journal(folder);
    let conn = Connection::open(&journal).unwrap();
    conn.execute_batch("PRAGMA foreign_keys = OFF; PRAGMA writable_schema = OFF;")
        .unwrap();
    conn.execute_batch(sql).unwrap();
    drop(conn);
    let file = folder.join("crafted.zip");
    packed(&journal, &file);
    file
}

fn bytes_here(world: &World) -> Vec<(String, Vec<u8>)> {
    ["journal.trugbook", "journal.trugbook-wal"]
        .iter()
        .filter_map(|name| {
            Some((
                (*name).to_owned(),
                fs::read(world.folder().join(name)).ok()?,
            ))
        })
        .collect()
}

#[test]
fn a_table_name_that_is_sql_writes_no_file_and_leaves_the_live_journal_byte_for_byte() {
    let outside = outside();
    let out = outside.path().join("written-elsewhere");
    // What a name in a script could do: end the statement, leave the transaction, write a file, empty the log.
    let name = format!(
        "x\"\"; COMMIT; ATTACH '{}' AS o; CREATE TABLE o.t (x); DETACH o; DELETE FROM deed; --",
        out.display()
    );
    let file = crafted(outside.path(), &format!("CREATE TABLE \"{name}\" (y)"));
    let here = World::new();
    told(&here);
    let (before, bytes) = (everything(&here), bytes_here(&here));
    for command in ["restore.look", "merge.look", "restore.apply", "merge.apply"] {
        let failure = failed(&here, command, json!({ "file": file }));
        assert_eq!(failure["field"], "file", "{command}: {failure}");
        assert!(!out.exists(), "{command} wrote a file elsewhere");
        assert_eq!(
            bytes_here(&here),
            bytes,
            "{command} touched the live journal"
        );
    }
    assert_eq!(everything(&here), before);
}

#[test]
fn a_view_or_trigger_in_a_foreign_journal_is_never_run() {
    for sql in [
        "DROP TABLE bed; CREATE VIEW bed AS WITH RECURSIVE n(x) AS (SELECT 1 UNION ALL SELECT x FROM n) SELECT x AS id, x AS body FROM n",
        "CREATE TRIGGER t AFTER INSERT ON harvest BEGIN DELETE FROM harvest; END",
        "CREATE TABLE cupboard (x)",
    ] {
        let (outside, here) = (outside(), World::new());
        let file = crafted(outside.path(), sql);
        for command in ["restore.look", "merge.look", "restore.apply", "merge.apply"] {
            failed(&here, command, json!({ "file": file }));
        }
        assert_eq!(everything(&here).deeds, []);
    }
}

pub const WITHOUT_TRIGGERS: &str = "
    DROP TRIGGER deed_is_never_changed; DROP TRIGGER deed_is_never_erased;
    DROP TRIGGER change_is_never_changed; DROP TRIGGER change_is_never_erased;";
pub const TRIGGERS: &str = "
    CREATE TRIGGER deed_is_never_changed BEFORE UPDATE ON deed
BEGIN SELECT RAISE(ABORT, 'a deed is never changed'); END;
    CREATE TRIGGER deed_is_never_erased BEFORE DELETE ON deed
BEGIN SELECT RAISE(ABORT, 'a deed is never erased'); END;
    CREATE TRIGGER change_is_never_changed BEFORE UPDATE ON change
BEGIN SELECT RAISE(ABORT, 'a change is never changed'); END;
    CREATE TRIGGER change_is_never_erased BEFORE DELETE ON change
BEGIN SELECT RAISE(ABORT, 'a change is never erased'); END;";

/// The frozen journal of format 2, which has no checksums, with a stranger's change in it.
fn crafted_old(folder: &Path, sql: &str) -> PathBuf {
    let journal = folder.join("old.trugbook");
    let frozen = Path::new(env!("CARGO_MANIFEST_DIR")).join("migration/v2.sqlite");
    fs::copy(frozen, &journal).unwrap();
    let conn = Connection::open(&journal).unwrap();
    conn.execute_batch(&format!(
        "PRAGMA foreign_keys = OFF; {WITHOUT_TRIGGERS} {sql}; {TRIGGERS}"
    ))
    .unwrap();
    drop(conn);
    let file = folder.join("old.zip");
    packed(&journal, &file);
    file
}

#[test]
fn a_row_that_nobody_could_type_is_refused_before_anything_is_committed() {
    let field = |path: &str, value: &str| {
        format!(
            "UPDATE change SET fields = json_set(fields, '$.{path}', json('{value}'))
             WHERE noun = 'harvest' AND act = 'record'"
        )
    };
    for (sql, wanted) in [
        (
            field("weighed", r#"{"gross_g": 1e300, "tare_g": 0}"#),
            "weight",
        ),
        (field("part", &format!("\"{}\"", "x".repeat(3000))), "part"),
        (
            field("picked_at", r#""+99999-01-01T00:00:00Z""#),
            "The year must be between 0 and 9999",
        ),
        (field("picked_at", r#""yesterday""#), "cannot be read"),
        (field("photos", r#"["../../../etc/passwd"]"#), "photo"),
        (field("herb", r#""""#), "herb"),
        (
            "UPDATE change SET row = 'not an id' WHERE noun = 'harvest'".into(),
            "does not name anything",
        ),
        (
            "UPDATE change SET row = upper(row) WHERE noun = 'harvest'".into(),
            "id",
        ),
        (
            "UPDATE change SET row = '../../../etc/passwd', noun = 'photo' WHERE noun = 'bed'"
                .into(),
            "photo",
        ),
        (
            "UPDATE change SET fields = '[]' WHERE noun = 'bed'".into(),
            "damaged",
        ),
        (
            "UPDATE deed SET milliseconds = 9000000000000000000 WHERE number = 1".into(),
            "time",
        ),
        ("UPDATE deed SET text = '' WHERE number = 1".into(), "line"),
        (
            "UPDATE deed SET revokes = id WHERE number = 2".into(),
            "undoes itself",
        ),
        ("DELETE FROM deed WHERE number = 2".into(), "missing"),
    ] {
        let (outside, here) = (outside(), World::new());
        told(&here);
        let before = everything(&here);
        let file = crafted_old(outside.path(), &sql);
        for command in ["restore.look", "merge.look", "restore.apply", "merge.apply"] {
            let failure = failed(&here, command, json!({ "file": file }));
            let message = text(&failure, "/message");
            assert!(message.contains(wanted), "{sql}, {command}: {message}");
        }
        assert_eq!(everything(&here), before, "{sql}");
        here.call("harvest.list", json!({}));
        here.call("backup.about", json!({}));
    }
}

#[test]
fn two_deeds_that_take_each_other_back_are_refused() {
    let (outside, here) = (outside(), World::new());
    let file = crafted_old(
        outside.path(),
        "UPDATE deed SET revokes = (SELECT id FROM deed WHERE number = 2) WHERE number = 1;
         DELETE FROM change WHERE deed IN (1, 2);
         UPDATE deed SET revokes = (SELECT id FROM deed WHERE number = 1) WHERE number = 2",
    );
    for command in ["restore.look", "merge.look", "restore.apply", "merge.apply"] {
        let failure = failed(&here, command, json!({ "file": file }));
        assert!(
            text(&failure, "/message").contains("came after it"),
            "{failure}"
        );
    }
}

#[test]
fn a_rule_that_came_after_an_entry_does_not_refuse_it() {
    // Two phones took a tray down and moved its beginning: no one of them typed what stands there now.
    let (outside, here) = (outside(), World::new());
    let file = crafted_old(
        outside.path(),
        "UPDATE change SET fields = json_set(fields, '$.started_at', '2027-06-01T10:00:00+02:00')
         WHERE noun = 'tray' AND act = 'record'",
    );
    let restored = done(&here, "restore.apply", json!({ "file": file }));
    let faults = restored["faults"].to_string();
    assert!(
        faults.contains("Choose a time after the tray was loaded"),
        "{faults}"
    );
}

#[test]
fn a_refused_merge_keeps_none_of_its_photos() {
    let (outside, there, here) = (outside(), World::new(), World::new());
    told(&there);
    let whole = backed_up(&there, outside.path(), "whole.zip");
    done(&here, "merge.apply", json!({ "file": whole }));
    let other = World::new();
    let file = crafted_old(
        outside.path(),
        "UPDATE change SET fields = json_set(fields, '$.part', '') WHERE noun = 'harvest' AND act = 'record'",
    );
    failed(&other, "merge.apply", json!({ "file": file }));
    assert_eq!(everything(&other).originals.len(), 0);
    let report: Value = other.call("journal.check", json!({}));
    assert_eq!(report["faults"], json!([]));
}
