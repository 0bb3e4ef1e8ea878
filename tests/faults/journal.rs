//! A journal whose last write was torn, or that is read while it is written.

#![allow(clippy::unwrap_used, reason = "in a test a panic is the report")]

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;
use std::sync::atomic::{AtomicU64, Ordering};

use chrono::{DateTime, FixedOffset};
use journal::{
    Bed, BedId, Deed, DeedId, DeviceId, Harvest, HarvestId, Surface, TimeFrom, Tray, TrayId,
    Weighed,
};
use store::{Done, Failure, HarvestFilter, Store};
use uuid::Uuid;

fn now() -> DateTime<FixedOffset> {
    DateTime::parse_from_rfc3339("2025-06-01T08:00:00+02:00").unwrap()
}

fn open(path: &Path) -> Store {
    Store::open(path, DeviceId(Uuid::from_u128(1))).unwrap()
}

/// A harvest and the tray that takes all of it, in one deed.
fn pick_and_lay_out(store: &mut Store, number: u128) -> Result<Done, Failure> {
    let (harvest, tray) = (
        HarvestId(Uuid::from_u128(2 * number)),
        TrayId(Uuid::from_u128(2 * number + 1)),
    );
    let done = store.perform(DeedId(Uuid::from_u128(number)), now(), |w| {
        let code = w.free_code(harvest.0)?;
        w.record(
            &harvest,
            &Harvest {
                code,
                herb: "lemon-balm".parse()?,
                part: "leaf".into(),
                weighed: Weighed {
                    gross_g: 500.0,
                    tare_g: 100.0,
                },
                picked_at: now(),
                time_from: TimeFrom::Clock,
                bed: None,
                stage: None,
                surface: Surface::Dry,
                note: None,
                photos: Vec::new(),
                place: None,
                look_alike_ruled_out: true,
            },
        )?;
        let code = w.free_code(tray.0)?;
        w.record(
            &tray,
            &Tray {
                code,
                name: "Sieve".into(),
                harvest,
                fresh_mass_g: 400.0,
                tare_g: 0.0,
                started_at: now(),
                air: None,
                taken_down: None,
                lost: None,
                cooked: None,
                sample: None,
                note: None,
            },
        )?;
        Ok::<_, Failure>((format!("Picked and laid out {number}").into(), ()))
    })?;
    Ok(done.0)
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

#[test]
fn a_torn_log_loses_whole_deeds_from_its_end_and_nothing_else() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("journal.sqlite");
    drop(open(&path));
    let mut store = open(&path);
    for number in 1..=12 {
        pick_and_lay_out(&mut store, number).unwrap();
    }
    let written = deeds(&store);
    // A copy of both files is what a kill leaves: the store still has them open.
    let main = fs::read(&path).unwrap();
    let log = fs::read(folder.path().join("journal.sqlite-wal")).unwrap();
    assert!(
        log.len() > 12 * 4096,
        "the deeds are in the log: {} bytes",
        log.len()
    );
    drop(store);

    let mut kept = BTreeSet::new();
    for cut in (0..=log.len()).step_by(log.len() / 97).chain([log.len()]) {
        let torn = tempfile::tempdir().unwrap();
        let path = torn.path().join("journal.sqlite");
        fs::write(&path, &main).unwrap();
        fs::write(torn.path().join("journal.sqlite-wal"), &log[..cut]).unwrap();
        let mut store = open(&path);
        let found = deeds(&store);
        assert_eq!(
            found,
            written[..found.len()],
            "cut at {cut}: the first deeds, each whole"
        );
        assert_eq!(store.audit().unwrap(), [], "cut at {cut}");
        let tables = store.tables().unwrap();
        store.rebuild().unwrap();
        assert_eq!(
            store.tables().unwrap(),
            tables,
            "cut at {cut}: tables and log agree"
        );
        pick_and_lay_out(&mut store, 100).unwrap();
        kept.insert(found.len());
    }
    assert_eq!(
        kept.last(),
        Some(&12),
        "the whole log gives everything back"
    );
    assert!(kept.len() > 6, "the cuts fell between many deeds: {kept:?}");
}

#[test]
fn a_reader_sees_all_of_a_deed_or_nothing_of_it() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("journal.sqlite");
    let mut writer = open(&path);
    // How many different states the reader has seen; the writer goes on until they are enough.
    let states = AtomicU64::new(0);
    std::thread::scope(|scope| {
        let reader = scope.spawn(|| {
            let store = open(&path);
            let mut seen = BTreeSet::new();
            while seen.len() < 20 {
                let counts = store
                    .read(|r| {
                        let before = r.counts()?;
                        let all = HarvestFilter {
                            before: None,
                            limit: 5000,
                            herb: None,
                            bed: None,
                        };
                        let rows = r.harvests(&all)?.rows;
                        assert_eq!(
                            rows.len() as u64,
                            before.harvests,
                            "one reading is one state"
                        );
                        for row in rows {
                            assert_eq!(row.fresh_left_g, 0.0, "its tray took all in the same deed");
                        }
                        assert_eq!(r.counts()?, before, "one reading is one state");
                        Ok::<_, Failure>(before)
                    })
                    .unwrap();
                assert_eq!(counts.harvests, counts.trays);
                seen.insert(counts.harvests);
                states.store(seen.len() as u64, Ordering::SeqCst);
            }
        });
        let mut number = 0;
        while states.load(Ordering::SeqCst) < 20 && !reader.is_finished() {
            // A reader that gets no processor for a while is waited for, or its page would not hold them all.
            if number < 50 * (1 + states.load(Ordering::SeqCst)) {
                number += 1;
                pick_and_lay_out(&mut writer, number.into()).unwrap();
            } else {
                std::thread::yield_now();
            }
        }
        reader.join().unwrap();
    });
}

#[test]
fn a_deed_that_fails_halfway_leaves_nothing() {
    let mut store = Store::in_memory(DeviceId(Uuid::from_u128(1))).unwrap();
    pick_and_lay_out(&mut store, 1).unwrap();
    let before = (deeds(&store), store.tables().unwrap());
    let bed = BedId(Uuid::from_u128(50));
    let failure = store
        .perform(DeedId(Uuid::from_u128(2)), now(), |w| {
            w.record(
                &bed,
                &Bed {
                    name: "Terrace".into(),
                    wild: false,
                    area_m2: None,
                    note: None,
                },
            )?;
            assert!(
                w.find::<Bed>(&bed)?.is_some(),
                "a deed sees what it has written"
            );
            w.record(
                &bed,
                &Bed {
                    name: " ".into(),
                    wild: false,
                    area_m2: None,
                    note: None,
                },
            )?;
            Ok::<_, Failure>(("Added a bed".into(), ()))
        })
        .unwrap_err();
    let said = api::Language::English.tell(&failure.message());
    assert_eq!(said, "Fill in the name.");
    assert_eq!(failure.field(), Some("name"));
    assert_eq!((deeds(&store), store.tables().unwrap()), before);
}

#[test]
fn two_writers_wait_for_each_other() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("journal.sqlite");
    drop(open(&path));
    std::thread::scope(|scope| {
        for writer in 0..2_u128 {
            let path = &path;
            scope.spawn(move || {
                let mut store = open(path);
                for number in 0..40 {
                    pick_and_lay_out(&mut store, 1 + writer * 1000 + number).unwrap();
                }
            });
        }
    });
    let store = open(&path);
    let all = deeds(&store);
    assert_eq!(all.len(), 80);
    assert!(
        all.windows(2).all(|pair| pair[0].at < pair[1].at),
        "no two writes share a time"
    );
    assert_eq!(store.audit().unwrap(), []);
}
