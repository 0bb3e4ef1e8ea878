use std::path::PathBuf;

use journal::{BedId, DeedId, DeviceId};
use uuid::Uuid;

use super::*;
use crate::sample;

fn bed(store: &mut Store, number: u128, name: &str) {
    store
        .perform(DeedId(Uuid::from_u128(number)), sample::now(), |w| {
            w.record(&BedId(Uuid::from_u128(number)), &sample::bed(name))?;
            Ok::<_, Failure>(("Added a bed".into(), ()))
        })
        .unwrap();
}

fn folder() -> (tempfile::TempDir, PathBuf, PathBuf) {
    let folder = tempfile::tempdir().unwrap();
    let (a, b) = (folder.path().join("a"), folder.path().join("b"));
    (folder, a, b)
}

#[test]
fn a_snapshot_has_every_row_and_no_log_beside_it() {
    let (folder, path, copy) = folder();
    let mut store = Store::open(&path, DeviceId(Uuid::from_u128(1))).unwrap();
    bed(&mut store, 10, "Terrace");
    store.snapshot(&copy, |_, _| Ok::<_, Failure>(())).unwrap();
    assert_eq!(
        std::fs::read_dir(folder.path()).unwrap().count(),
        4,
        "a with two, and b"
    );
    let there = Store::open(&copy, DeviceId(Uuid::from_u128(2))).unwrap();
    assert_eq!(there.tables().unwrap(), store.tables().unwrap());
    assert_eq!(there.device(), store.device());
    drop(there);
    let there = crate::Foreign::open(&copy, || false).unwrap();
    assert_eq!(store.differs_from(&there).unwrap(), (0, 0));
}

#[test]
fn another_journal_takes_the_place_under_open_readers_and_the_device_keeps_its_name() {
    let (_folder, path, other) = folder();
    let mut here = Store::open(&path, DeviceId(Uuid::from_u128(1))).unwrap();
    let reader = Store::open(&path, DeviceId(Uuid::from_u128(1))).unwrap();
    let mut there = Store::open(&other, DeviceId(Uuid::from_u128(2))).unwrap();
    bed(&mut here, 10, "Terrace");
    for number in 20..60 {
        bed(&mut there, number, "Lower bank");
    }
    let expected = there.tables().unwrap();
    drop(there);
    assert_eq!(reader.contents().unwrap().of(Noun::Bed), 1);
    here.replace(&other, "before-1").unwrap();
    for store in [&here, &reader] {
        assert_eq!(store.tables().unwrap(), expected);
        assert_eq!(store.aside().unwrap().as_deref(), Some("before-1"));
    }
    assert_eq!(here.audit().unwrap(), []);
    bed(&mut here, 99, "Upper bank");
    drop((here, reader));
    let again = Store::open(&path, DeviceId(Uuid::from_u128(3))).unwrap();
    assert_eq!(again.device(), DeviceId(Uuid::from_u128(1)));
    assert_eq!(again.contents().unwrap().of(Noun::Bed), 41);
}
