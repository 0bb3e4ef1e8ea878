//! Files of earlier versions open in this one; files of later versions are left alone.

#![allow(clippy::unwrap_used, reason = "in a test a panic is the report")]

use std::fs;
use std::path::{Path, PathBuf};

use chrono::{DateTime, NaiveDate};
use journal::{
    Bed, Deed, DeviceId, Harvest, HarvestState, Jar, JarId, Lot, PhotoHash, Pictured, Portrait,
    PortraitId, Source, Tray, TrayId, Weighing, fold,
};
use message::Message;
use store::{Failure, HarvestFilter, JarFilter, LotFilter, Store};
use uuid::Uuid;

/// Bytes 60 to 63 of an SQLite file are its user version, big-endian (SQLite file format, 1.3).
const USER_VERSION: std::ops::Range<usize> = 60..64;

fn frozen(name: &str) -> (tempfile::TempDir, PathBuf) {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("journal.sqlite");
    let original = Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("migration")
        .join(name);
    fs::copy(original, &path).unwrap();
    (folder, path)
}

fn open(path: &Path) -> Result<Store, Failure> {
    Store::open(path, DeviceId(Uuid::from_u128(77)))
}

fn deeds(store: &Store) -> Vec<Deed> {
    let mut deeds = Vec::new();
    store
        .each_deed(|deed| {
            deeds.push(deed);
            Ok(())
        })
        .unwrap();
    deeds
}

fn jars(limit: usize) -> JarFilter {
    JarFilter {
        today: NaiveDate::from_ymd_opt(2025, 7, 1).unwrap(),
        state: None,
        after: None,
        limit,
    }
}

#[test]
fn an_empty_file_becomes_a_journal_that_opens_again() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("journal.sqlite");
    fs::write(&path, []).unwrap();
    let first = open(&path).unwrap().device();
    let again = Store::open(&path, DeviceId(Uuid::from_u128(78))).unwrap();
    assert_eq!(
        again.device(),
        first,
        "the device keeps the name it was given first"
    );
    assert_eq!(again.audit().unwrap(), []);
}

#[test]
fn a_file_of_version_1_opens_with_everything_in_it() {
    let (_folder, path) = frozen("v1.sqlite");
    let mut store = open(&path).unwrap();
    assert_eq!(store.audit().unwrap(), []);
    assert_eq!(
        store.device(),
        DeviceId(Uuid::from_u128(1)),
        "as it was written"
    );

    // The figures of its maker's season, as they were written by version 1.
    store
        .read(|r| {
            let counts = r.counts()?;
            assert_eq!((counts.harvests, counts.trays, counts.jars), (2, 1, 1));
            let harvests = r.harvests(&HarvestFilter {
                before: None,
                limit: 9,
                herb: None,
                bed: None,
            })?;
            let [sage, mint] = &harvests.rows[..] else {
                panic!("{harvests:?}")
            };
            assert_eq!(mint.harvest.herb.as_str(), "peppermint");
            assert_eq!(
                mint.harvest.picked_at.to_rfc3339(),
                "2025-06-01T09:30:00+02:00"
            );
            assert_eq!((mint.fresh_left_g, mint.dried_left_g), (300.0, 61.5));
            assert_eq!(
                mint.harvest.note.as_deref(),
                Some("Morning, dry leaves"),
                "as corrected"
            );
            assert_eq!(mint.state, HarvestState::Fresh);
            assert_eq!(
                mint.bed.as_ref().map(|(_, bed)| bed.name.as_str()),
                Some("Lower bank")
            );
            assert_eq!(
                (sage.harvest.weighed.gross_g, sage.fresh_left_g),
                (250.0, 210.0)
            );
            let page = r.harvest(&mint.id)?;
            assert_eq!(page.trays.len(), 1);
            assert_eq!(
                r.weighings(&page.trays[0].id)?.len(),
                2,
                "the third was struck"
            );
            assert_eq!(page.jars[0].mass_g, 40.5);
            let jars = r.jars(&jars(9))?;
            assert_eq!(jars.rows[0].jar.due().0.to_string(), "2025-07-08");
            assert_eq!(r.supplies()?[0].left_ml, 1000.0 - 202.5);
            let every_lot = LotFilter {
                herb: None,
                state: None,
                after: None,
                limit: 99,
            };
            assert_eq!(r.lots(&every_lot)?.rows.len(), 3);
            let list = r.deeds(99)?;
            assert_eq!(list.iter().filter(|deed| deed.undone).count(), 1);
            for deed in list {
                let (line, told) = (&deed.line, deed.line.told());
                assert_eq!(line.message, None, "it was written before there were any");
                assert_eq!(told, Message::own(&line.text), "so it stays as it stands");
            }
            Ok::<_, Failure>(())
        })
        .unwrap();

    // The log is untouched, the tables say what it says, and a rebuild changes nothing.
    let log = deeds(&store);
    for ((noun, id), row) in fold(&log) {
        let found = store
            .read(|r| {
                Ok::<_, Failure>(match noun.as_str() {
                    "bed" => r.find::<Bed>(&id.parse()?)?.is_some(),
                    "harvest" => r.find::<Harvest>(&id.parse()?)?.is_some(),
                    "tray" => r.find::<Tray>(&id.parse()?)?.is_some(),
                    "weighing" => r.find::<Weighing>(&id.parse()?)?.is_some(),
                    "jar" => r.find::<Jar>(&id.parse()?)?.is_some(),
                    _ => row.is_present(),
                })
            })
            .unwrap();
        assert_eq!(found, row.is_present(), "{} {id}", noun.as_str());
    }
    let tables = store.tables().unwrap();
    store.rebuild().unwrap();
    assert_eq!(store.tables().unwrap(), tables);
    drop(store);
    assert_eq!(deeds(&open(&path).unwrap()), log);
}

#[test]
fn a_file_of_version_1_can_be_written_on() {
    let (_folder, path) = frozen("v1.sqlite");
    let mut store = open(&path).unwrap();
    let now = DateTime::parse_from_rfc3339("2025-07-01T12:00:00+02:00").unwrap();
    let (tray, jar) = store
        .read(|r| {
            let jar: JarId = r.jars(&jars(1))?.rows[0].id;
            let tray: TrayId = match r.get::<Jar>(&jar)?.plants[0].lot {
                Some(Lot::Tray(id)) => id,
                other => panic!("{other:?}"),
            };
            Ok::<_, Failure>((tray, jar))
        })
        .unwrap();
    let before = store.tables().unwrap();
    let poured = deeds(&store)
        .into_iter()
        .find(|deed| deed.changes.iter().any(|c| c.row == jar.to_string()))
        .unwrap();
    let (done, line) = store
        .undo(
            journal::DeedId(Uuid::from_u128(900)),
            now,
            poured.id,
            |line| api::Language::English.tell(line),
        )
        .unwrap();
    assert!(line.text.starts_with("Undid: "), "{line:?}");
    assert_eq!(store.read(|r| r.tray(&tray)).unwrap().dried_left_g, 102.0);
    store
        .undo(
            journal::DeedId(Uuid::from_u128(901)),
            now,
            done.deed,
            |line| line.to_string(),
        )
        .unwrap();
    assert_eq!(store.tables().unwrap(), before);
}

#[test]
fn a_file_of_version_2_opens_with_the_whole_pantry_in_it() {
    let (_folder, path) = frozen("v2.sqlite");
    let mut store = open(&path).unwrap();
    assert_eq!(store.audit().unwrap(), []);
    store
        .read(|r| {
            let jar = r.jars(&jars(1))?.rows.remove(0);
            assert!(jar.is_strained);
            assert_eq!(jar.jar.poured_ml(), 202.5 + 20.0, "topped up");
            assert_eq!(r.shakes(&jar.id)?.len(), 1, "the second was taken back");
            assert_eq!(r.strainings(&jar.id)?[0].1.came_out_ml, 160.5);
            // 160.5 mL came out, 3 x 50 went into bottles and 10.5 were spilt.
            assert_eq!(r.left(Source::Jar(jar.id))?.get(), 0.0);
            let bottles = r.bottles_of(&jar.id)?;
            assert_eq!(bottles.len(), 3);
            assert_eq!(bottles[0].left_ml, 45.0);
            assert_eq!(
                bottles[0]
                    .last_check
                    .as_ref()
                    .and_then(|check| check.note.as_deref()),
                Some("clear")
            );
            let given = bottles[1].bottle.end.as_ref().unwrap();
            assert_eq!(given.to.as_deref(), Some("the neighbour"));
            let standing = bottles.iter().filter(|it| it.bottle.end.is_none());
            assert_eq!(standing.count(), 2);
            let code = "BADO 113".parse()?;
            assert_eq!(r.bottle_coded(&code)?, Some(bottles[2].id));
            assert_eq!(r.recipes()?[0].1.stars, Some(4));
            assert_eq!(r.droppers()?[0].1.drops_in_1_ml, [30.0, 29.0, 31.0]);
            assert_eq!(r.wishes()?[0].1.ready_on.to_string(), "2025-12-01");
            Ok::<_, Failure>(())
        })
        .unwrap();
    let tables = store.tables().unwrap();
    store.rebuild().unwrap();
    assert_eq!(store.tables().unwrap(), tables);
}

#[test]
fn a_file_of_version_5_opens_with_its_photos_and_takes_in_a_portrait() {
    let (_folder, path) = frozen("v5.sqlite");
    let store = open(&path).unwrap();
    assert_eq!(store.audit().unwrap(), []);
    let (jar, photo) = store
        .read(|r| {
            let jar = r.jars(&jars(1))?.rows.remove(0);
            assert_eq!(r.strainings(&jar.id)?[0].1.came_out_ml, 160.5);
            assert_eq!(r.bottles_of(&jar.id)?.len(), 2);
            assert_eq!(
                r.portraits(Pictured::Jar(jar.id))?,
                [],
                "nobody could take one"
            );
            let photos = r.photos()?;
            assert_eq!(photos[0].1.name.as_deref(), Some("leaf.jpg"));
            assert_eq!(r.photo_uses(&photos[0].0)?.len(), 1, "the harvest has it");
            let said = r.deeds(99)?;
            assert!(said.iter().all(|deed| deed.line.message.is_some()));
            Ok::<_, Failure>((jar.id, photos[0].0.clone()))
        })
        .unwrap();
    takes_in_a_portrait(store, &path, Pictured::Jar(jar), photo);
}

#[test]
fn a_file_of_version_6_opens_with_its_portraits_and_takes_in_one_of_a_herb() {
    let (_folder, path) = frozen("v6.sqlite");
    let store = open(&path).unwrap();
    assert_eq!(store.audit().unwrap(), []);
    let (herb, photo) = store
        .read(|r| {
            let jar = r.jars(&jars(1))?.rows.remove(0);
            let portraits = r.portraits(Pictured::Jar(jar.id))?;
            assert_eq!(portraits.len(), 1);
            let face = r.face(Pictured::Jar(jar.id))?;
            assert_eq!(face.as_ref(), Some(&portraits[0].1.photo));
            let (herb, own) = r.herbs()?.remove(0);
            assert_eq!(own.common, "Mountain tea");
            assert_eq!(
                r.portraits(Pictured::Herb(herb))?,
                [],
                "nobody could take one"
            );
            Ok::<_, Failure>((herb, portraits[0].1.photo.clone()))
        })
        .unwrap();
    takes_in_a_portrait(store, &path, Pictured::Herb(herb), photo);
}

/// A portrait is kept beside what was written, shows what it is of, and is in the tables made anew.
fn takes_in_a_portrait(mut store: Store, path: &Path, of: Pictured, photo: PhotoHash) {
    let log = deeds(&store);
    let portrait = Portrait {
        of,
        photo: photo.clone(),
        at: DateTime::parse_from_rfc3339("2026-12-01T12:00:00+02:00").unwrap(),
        shown: true,
    };
    let id = PortraitId(Uuid::from_u128(901));
    store
        .perform(journal::DeedId(Uuid::from_u128(900)), portrait.at, |w| {
            w.record(&id, &portrait)?;
            Ok::<_, Failure>(("Took a photo".into(), ()))
        })
        .unwrap();
    drop(store);
    let mut store = open(path).unwrap();
    assert_eq!(deeds(&store)[..log.len()], log, "what was written stays");
    let face = store.read(|r| r.face(of)).unwrap();
    assert_eq!(face, Some(photo));
    let tables = store.tables().unwrap();
    store.rebuild().unwrap();
    assert_eq!(store.tables().unwrap(), tables);
}

#[test]
fn the_version_before_is_told_to_be_updated() {
    // What a version did with any file above its own format: it refused it. So a log that speaks of
    // bottles must not lie in a file of format 1, nor one that may hold a measured pH in one of 2, nor one
    // that may hold portraits in one of 5, nor one that may hold those of herbs in one of 6.
    for (name, version) in [
        ("v1.sqlite", 1_u32),
        ("v2.sqlite", 2),
        ("v5.sqlite", 5),
        ("v6.sqlite", 6),
    ] {
        let (_folder, path) = frozen(name);
        assert_eq!(
            fs::read(&path).unwrap()[USER_VERSION],
            version.to_be_bytes(),
            "{name} as it was written"
        );
        drop(open(&path).unwrap());
        assert_eq!(fs::read(&path).unwrap()[USER_VERSION], 7_u32.to_be_bytes());
    }
}

#[test]
fn a_newer_file_is_refused_in_a_sentence_and_left_as_it_is() {
    let (_folder, path) = frozen("v1.sqlite");
    let mut bytes = fs::read(&path).unwrap();
    bytes[USER_VERSION].copy_from_slice(&1000_u32.to_be_bytes());
    fs::write(&path, &bytes).unwrap();
    let failure = open(&path).err().expect("it is refused");
    assert_eq!(
        api::Language::English.tell(&failure.message()),
        "A newer version of Trugbook made this book. Update Trugbook to open it."
    );
    assert_eq!(fs::read(&path).unwrap(), bytes, "not a byte was touched");
}

#[test]
fn a_file_that_is_no_journal_is_refused_and_left_as_it_is() {
    let folder = tempfile::tempdir().unwrap();
    for (name, bytes) in [
        ("text", b"Peppermint, 800 g, lower bank.\n".repeat(400)),
        ("zeros", vec![0; 8192]),
    ] {
        let path = folder.path().join(name);
        fs::write(&path, &bytes).unwrap();
        let failure = open(&path).err().expect("it is refused");
        assert_eq!(failure, Failure::NotAJournal, "{name}");
        assert_eq!(
            api::Language::English.tell(&failure.message()),
            "This file is not a Trugbook book."
        );
        assert_eq!(fs::read(&path).unwrap(), bytes, "{name}");
    }
}
