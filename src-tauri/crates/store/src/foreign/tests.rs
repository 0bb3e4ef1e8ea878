use std::path::PathBuf;

use journal::{Act, Bed, BedId, Change, DeedId, Noun};
use serde_json::json;
use uuid::Uuid;

use super::*;
use crate::Store;

fn now() -> chrono::DateTime<chrono::FixedOffset> {
    chrono::DateTime::parse_from_rfc3339("2025-06-01T08:00:00Z").unwrap()
}

fn id(number: u128) -> Uuid {
    Uuid::from_u128(number)
}

fn open(path: &Path) -> Result<Foreign, Failure> {
    Foreign::open(path, || false)
}

/// A journal of three beds, one of which was taken back, as one plain file.
fn journal() -> (tempfile::TempDir, PathBuf) {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("other.trugbook");
    let mut store = Store::in_memory(DeviceId(id(1))).unwrap();
    for number in 10..13 {
        let bed = Bed {
            name: format!("Bed {number}"),
            wild: false,
            area_m2: Some(4.5),
            note: None,
        };
        store
            .perform(DeedId(id(number)), now(), |w| {
                w.record(&BedId(id(number)), &bed)?;
                Ok::<_, Failure>((format!("Added the bed {number}").into(), ()))
            })
            .unwrap();
    }
    store
        .undo(DeedId(id(20)), now(), DeedId(id(11)), |line| {
            line.to_string()
        })
        .unwrap();
    store.snapshot(&path, |_, _| Ok::<_, Failure>(())).unwrap();
    (folder, path)
}

/// Lets a stranger write to a journal file.
fn altered(path: &Path, sql: &str) {
    let conn = Connection::open(path).unwrap();
    conn.execute_batch(
        "PRAGMA foreign_keys = OFF; DROP TRIGGER deed_is_never_changed; DROP TRIGGER deed_is_never_erased;
         DROP TRIGGER change_is_never_changed; DROP TRIGGER change_is_never_erased;",
    )
    .unwrap();
    conn.execute_batch(sql).unwrap();
    for trigger in migrate::log_schema(migrate::LATEST).unwrap() {
        if trigger.0 == "trigger" {
            conn.execute_batch(&trigger.3.unwrap()).unwrap();
        }
    }
}

fn filled(path: &Path) -> Result<Store, Failure> {
    let mut store = Store::in_memory(DeviceId(id(2)))?;
    store.fill_from(&open(path)?)?;
    Ok(store)
}

#[test]
fn a_journal_of_ours_is_carried_whole() {
    let (_folder, path) = journal();
    let store = filled(&path).unwrap();
    let here = Store::open(&path, DeviceId(id(1))).unwrap();
    assert_eq!(store.tables().unwrap(), here.tables().unwrap());
    assert_eq!(store.contents().unwrap().deeds, 4);
    assert_eq!(store.device(), DeviceId(id(2)), "a device keeps its name");
    let mut merged = Store::in_memory(DeviceId(id(3))).unwrap();
    merged.absorb_from(&open(&path).unwrap(), None).unwrap();
    assert_eq!(merged.tables().unwrap(), here.tables().unwrap());
}

#[test]
fn everything_that_this_version_makes_is_on_the_list_of_released_objects() {
    let store = Store::in_memory(DeviceId(id(1))).unwrap();
    let log: BTreeSet<SchemaRow> = migrate::log_schema(migrate::LATEST)
        .unwrap()
        .into_iter()
        .collect();
    let unlisted: Vec<String> = migrate::schema(&store.conn)
        .unwrap()
        .iter()
        .filter(|row| !log.contains(row) && !is_made(row))
        .map(|(kind, name, ..)| format!("{kind} {name}"))
        .collect();
    assert_eq!(unlisted, Vec::<String>::new(), "add them to released.txt");
}

#[test]
fn a_file_with_anything_that_no_version_wrote_is_no_journal() {
    for sql in [
        "CREATE TABLE \"x\"\"; ATTACH 'out' AS o; --\" (y)",
        "CREATE TABLE cupboard (x)",
        "CREATE VIEW cupboard AS SELECT 1",
        "CREATE TRIGGER t AFTER INSERT ON bed BEGIN DELETE FROM bed; END",
        "CREATE TRIGGER bed_comes_too AFTER INSERT ON deed BEGIN DELETE FROM bed; END",
        "CREATE INDEX i ON deed (text)",
        "DROP INDEX deed_in_order",
        "DROP TABLE writer",
        "ALTER TABLE deed ADD COLUMN more TEXT",
        "DROP TABLE bed; CREATE VIEW bed AS WITH RECURSIVE n(x) AS (SELECT 1 UNION ALL SELECT x FROM n) SELECT x FROM n",
        "PRAGMA application_id = 7",
        "PRAGMA user_version = 0",
    ] {
        let (_folder, path) = journal();
        altered(&path, sql);
        let failure = open(&path).err();
        assert_eq!(failure, Some(Failure::NotAJournal), "{sql}");
    }
    let (_folder, path) = journal();
    altered(&path, "PRAGMA user_version = 99");
    assert_eq!(open(&path).err(), Some(Failure::NewerFile));
}

#[test]
fn a_digit_changed_in_the_log_is_found() {
    for (sql, wanted) in [
        (
            "UPDATE deed SET text = 'Added the bed 99' WHERE number = 2",
            "Added the bed 99",
        ),
        (
            "UPDATE deed SET milliseconds = milliseconds + 1 WHERE number = 1",
            "Added the bed 10",
        ),
        (
            "UPDATE change SET fields = replace(fields, '4.5', '4.6') WHERE deed = 3",
            "Added the bed 12",
        ),
        (
            "UPDATE deed SET sum = NULL WHERE number = 1",
            "Added the bed 10",
        ),
        (
            "UPDATE deed SET message = NULL WHERE number = 4",
            "is not as it was written",
        ),
        (
            "UPDATE deed SET message = '{}' WHERE number = 1",
            "Added the bed 10",
        ),
        ("DELETE FROM deed WHERE number = 2", "1 of its entries"),
        ("DELETE FROM deed WHERE number = 4", "1 of its entries"),
        ("DELETE FROM change WHERE deed = 1", "Added the bed 10"),
    ] {
        let (_folder, path) = journal();
        altered(&path, sql);
        match filled(&path) {
            Err(Failure::Damaged(why)) => assert!(why.contains(wanted), "{sql}: {why}"),
            other => panic!("{sql}: {:?}", other.err()),
        }
    }
}

/// A deed that a stranger gave a proper checksum.
fn sealed(deed: &Deed) -> (tempfile::TempDir, PathBuf) {
    let (folder, path) = journal();
    let conn = Connection::open(&path).unwrap();
    log::append(&conn, deed).unwrap();
    seal::recount(&conn).unwrap();
    (folder, path)
}

fn change(row: &str, act: Act, fields: &serde_json::Value) -> Deed {
    Deed {
        id: DeedId(id(50)),
        at: HybridTime {
            milliseconds: now().timestamp_millis() + 60_000,
            counter: 0,
        },
        device: DeviceId(id(5)),
        text: "Did something".into(),
        message: None,
        revokes: None,
        changes: vec![Change {
            noun: Noun::Bed,
            row: row.into(),
            act,
            fields: fields.as_object().cloned().unwrap(),
        }],
    }
}

#[test]
fn a_row_that_nobody_could_type_is_refused_by_its_deed_and_field_before_anything_counts() {
    let bed = id(12).to_string();
    let upper = Uuid::from_u128(0xabcd).to_string().to_uppercase();
    for (deed, wanted) in [
        (
            change(&bed, Act::Correct, &json!({"area_m2": 1e300})),
            "area_m2",
        ),
        (
            change(&bed, Act::Correct, &json!({"name": "x".repeat(5000)})),
            "name",
        ),
        (change(&bed, Act::Correct, &json!({"name": 7})), "fields"),
        (
            change(
                "../../../etc/passwd",
                Act::Record,
                &json!({"name": "B", "wild": true}),
            ),
            "id",
        ),
        (
            change(&upper, Act::Record, &json!({"name": "B", "wild": true})),
            "id",
        ),
        (
            change(
                &id(60).to_string(),
                Act::Record,
                &json!({"name": " ", "wild": true}),
            ),
            "name",
        ),
        (
            change(&id(60).to_string(), Act::Record, &json!({"wild": true})),
            "fields",
        ),
    ] {
        let (_folder, path) = sealed(&deed);
        for failure in [
            filled(&path).err(),
            Store::in_memory(DeviceId(id(9)))
                .unwrap()
                .absorb_from(&open(&path).unwrap(), None)
                .err(),
        ] {
            match failure {
                Some(Failure::Unfit { deed, field, .. }) => {
                    assert_eq!((deed.as_str(), &*field), ("Did something", wanted));
                }
                other => panic!("{wanted}: {other:?}"),
            }
        }
    }
}

#[test]
fn a_correction_without_its_row_is_judged_by_the_row_that_is_here() {
    let bed = id(12).to_string();
    let mut here = Store::in_memory(DeviceId(id(9))).unwrap();
    let (_folder, path) = journal();
    here.absorb_from(&open(&path).unwrap(), None).unwrap();
    let before = here.tables().unwrap();
    // A journal that holds the correction alone.
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("alone");
    let alone = Store::open(&path, DeviceId(id(5))).unwrap();
    log::append(
        &alone.conn,
        &change(&bed, Act::Correct, &json!({"area_m2": 1e300})),
    )
    .unwrap();
    seal::recount(&alone.conn).unwrap();
    drop(alone);
    let failure = here.absorb_from(&open(&path).unwrap(), None).err();
    assert!(
        matches!(&failure, Some(Failure::Unfit { field, .. }) if field == "area_m2"),
        "{failure:?}"
    );
    assert_eq!(here.tables().unwrap(), before);
}

#[test]
fn undo_links_that_form_a_circle_are_refused() {
    let undo = |number: u128, target: u128, later: i64| Deed {
        id: DeedId(id(number)),
        at: HybridTime {
            milliseconds: now().timestamp_millis() + later,
            counter: 0,
        },
        device: DeviceId(id(5)),
        text: "Took back: something".into(),
        message: None,
        revokes: Some(DeedId(id(target))),
        changes: Vec::new(),
    };
    let (_folder, path) = sealed(&undo(50, 51, 1_000));
    let conn = Connection::open(&path).unwrap();
    log::append(&conn, &undo(51, 50, 2_000)).unwrap();
    seal::recount(&conn).unwrap();
    drop(conn);
    let failure = filled(&path).err();
    assert!(
        matches!(&failure, Some(Failure::Unfit { field, .. }) if field == "revokes"),
        "{failure:?}"
    );
}

#[test]
fn a_long_piece_of_reading_is_stopped_when_asked() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("long");
    let mut store = Store::open(&path, DeviceId(id(1))).unwrap();
    let deeds = (0..3_000_u128).map(|number| Deed {
        id: DeedId(id(1_000 + number)),
        ..change(
            &id(5_000 + number).to_string(),
            Act::Record,
            &json!({"name": "B", "wild": true}),
        )
    });
    store.absorb(deeds).unwrap();
    drop(store);
    assert_eq!(Foreign::open(&path, || true).err(), Some(Failure::Stopped));
    assert!(open(&path).is_ok());
}

#[test]
fn a_chain_of_twenty_thousand_undos_is_carried_in_linear_time_and_constant_stack() {
    const LENGTH: u128 = 20_000;
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("chain");
    let store = Store::open(&path, DeviceId(id(1))).unwrap();
    let tx = store.conn.unchecked_transaction().unwrap();
    log::append(
        &tx,
        &change(
            &id(60).to_string(),
            Act::Record,
            &json!({"name": "B", "wild": true}),
        ),
    )
    .unwrap();
    for number in 0..LENGTH {
        let target = if number == 0 { 50 } else { 1_000 + number - 1 };
        let undo = Deed {
            id: DeedId(id(1_000 + number)),
            at: HybridTime {
                milliseconds: now().timestamp_millis() + 100_000 + number as i64,
                counter: 0,
            },
            device: DeviceId(id(5)),
            text: "Took back: it".into(),
            message: None,
            revokes: Some(DeedId(id(target))),
            changes: Vec::new(),
        };
        log::append(&tx, &undo).unwrap();
    }
    seal::recount(&tx).unwrap();
    tx.commit().unwrap();
    drop(store);
    let steps = |path: &Path| {
        // Steps of SQLite's machine, which do not depend on how busy this one is.
        let counted = std::sync::Arc::new(std::sync::atomic::AtomicU64::new(0));
        let mut store = Store::in_memory(DeviceId(id(7))).unwrap();
        let count = counted.clone();
        store
            .stopped_by(move || {
                count.fetch_add(1, std::sync::atomic::Ordering::Relaxed);
                false
            })
            .unwrap();
        // On a thread whose stack is small.
        let other = open(path).unwrap();
        std::thread::Builder::new()
            .stack_size(256 * 1024)
            .spawn(move || {
                store.absorb_from(&other, None).unwrap();
                let beds = store.contents().unwrap().of(Noun::Bed);
                assert_eq!(beds, 1, "an even number of undos leaves it");
            })
            .unwrap()
            .join()
            .unwrap();
        counted.load(std::sync::atomic::Ordering::Relaxed) * 10_000
    };
    let all = steps(&path);
    assert!(all < 1_000 * LENGTH as u64, "{all} steps");
}
