use journal::{BedId, DeedId, DeviceId};
use uuid::Uuid;

use super::*;
use crate::Store;
use crate::sample::{bed, now, store};

/// Adds a bed by a deed of the same number.
fn add(store: &mut Store, number: u128, name: &str) {
    store
        .perform(DeedId(Uuid::from_u128(number)), now(), |w| {
            w.record(&BedId(Uuid::from_u128(number)), &bed(name))?;
            Ok::<_, Failure>(("Added a bed".into(), ()))
        })
        .unwrap();
}

fn undo(store: &mut Store, number: u128, target: u128) {
    let target = DeedId(Uuid::from_u128(target));
    store
        .undo(DeedId(Uuid::from_u128(number)), now(), target, |line| {
            line.to_string()
        })
        .unwrap();
}

fn found(store: &Store, word: &str) -> usize {
    let sought = Sought {
        word: word.into(),
        keys: Vec::new(),
    };
    let found = store.read(|reading| reading.search(&[sought], 100));
    found.unwrap().len()
}

/// How many rows can be found without the log being asked.
fn pages(store: &Store) -> i64 {
    let sql = "SELECT count(*) FROM page";
    store.conn.query_row(sql, [], |row| row.get(0)).unwrap()
}

#[test]
fn what_was_just_done_is_found_and_stays_so() {
    let mut store = store();
    add(&mut store, 1, "Terrace");
    assert_eq!(pages(&store), 0, "a deed does not wait for the index");
    assert_eq!(found(&store, "terr"), 1);
    assert_eq!(pages(&store), 1);
    assert_eq!(found(&store, "terr"), 1);
}

#[test]
fn a_search_follows_corrections_and_what_is_taken_back_and_done_again() {
    let mut store = store();
    add(&mut store, 1, "Terrace");
    assert_eq!(found(&store, "terrace"), 1);
    store
        .perform(DeedId(Uuid::from_u128(2)), now(), |w| {
            w.correct(&BedId(Uuid::from_u128(1)), &bed("North wall"))?;
            Ok::<_, Failure>(("Renamed a bed".into(), ()))
        })
        .unwrap();
    assert_eq!((found(&store, "terrace"), found(&store, "wall")), (0, 1));
    undo(&mut store, 3, 2);
    assert_eq!((found(&store, "terrace"), found(&store, "wall")), (1, 0));
    undo(&mut store, 4, 3);
    assert_eq!((found(&store, "terrace"), found(&store, "wall")), (0, 1));
    undo(&mut store, 5, 4);
    undo(&mut store, 6, 1);
    assert_eq!((found(&store, "terrace"), found(&store, "wall")), (0, 0));
    store
        .conn
        .execute(
            "INSERT INTO found (found, rank) VALUES ('integrity-check', 1)",
            [],
        )
        .expect("the index holds what the pages say, and nothing else");
}

#[test]
fn no_more_than_a_batch_waits() {
    let mut store = store();
    for number in 1..BATCH as u128 {
        add(&mut store, number, "Terrace");
    }
    assert_eq!(pages(&store), 0);
    add(&mut store, BATCH as u128, "Terrace");
    assert_eq!(pages(&store), BATCH);
    undo(&mut store, 1000, 1);
    assert_eq!(found(&store, "terrace") as i64, BATCH - 1);
}

#[test]
fn what_came_from_another_phone_or_was_made_anew_waits_for_nothing() {
    let mut store = store();
    add(&mut store, 1, "Terrace");
    add(&mut store, 2, "North wall");
    let mut deeds = Vec::new();
    store
        .each_deed(|deed| {
            deeds.push(deed);
            Ok(())
        })
        .unwrap();
    let mut other = Store::in_memory(DeviceId(Uuid::from_u128(9))).unwrap();
    other.absorb(deeds).unwrap();
    assert_eq!(pages(&other), 2);
    other.rebuild().unwrap();
    assert_eq!(pages(&other), 2);
    assert_eq!(found(&other, "wall"), 1);
}
