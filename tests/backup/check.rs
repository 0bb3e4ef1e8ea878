//! The book proves itself to its maker: whatever was changed behind the app's back is named, and mended where it can be.

use std::fs;

use rusqlite::Connection;
use serde_json::{Value, json};

use super::commands::{World, text};
use super::season::{backed_up, done, everything, outside, pick, told};

fn faults(world: &World) -> Vec<Value> {
    world.call("journal.check", json!({}))["faults"]
        .as_array()
        .unwrap()
        .clone()
}

/// The world with its journal changed by another program.
fn changed(world: World, sql: &str) -> World {
    let folder = world.closed();
    let conn = Connection::open(folder.path().join("journal.trugbook")).unwrap();
    conn.execute_batch(&format!("PRAGMA foreign_keys = OFF; {sql}"))
        .unwrap();
    drop(conn);
    World::at_folder(folder)
}

fn season() -> World {
    let world = World::new();
    told(&world);
    world
}

#[test]
fn a_whole_book_has_no_fault_and_says_when_it_was_read() {
    let world = season();
    assert_eq!(faults(&world), Vec::<Value>::new());
    let checked = world.call("backup.about", json!({}))["checked"].clone();
    assert_eq!(
        (text(&checked, "/at"), &checked["faults"]),
        ("2026-07-14T09:00:00+02:00", &json!(0))
    );
    let job = done(&world, "journal.begin_check", json!({}));
    assert_eq!(job, json!({"kind": "checked", "faults": []}));
}

#[test]
fn a_table_that_does_not_match_the_log_is_made_anew() {
    let world = season();
    let before = everything(&world);
    let world = changed(world, "UPDATE bed SET name = 'Elsewhere'; DELETE FROM tray");
    let found = faults(&world);
    assert_eq!(found.len(), 1, "{found:?}");
    assert_eq!(found[0]["mended"], true, "{found:?}");
    assert_eq!(everything(&world), before);
    assert_eq!(faults(&world), Vec::<Value>::new());
}

#[test]
fn a_digit_changed_in_the_log_is_named_and_the_tables_are_left_as_they_stand() {
    let world = changed(
        season(),
        "DROP TRIGGER change_is_never_changed;
         UPDATE change SET fields = replace(fields, '520.0', '5200.0') WHERE noun = 'harvest'",
    );
    let tables = everything(&world).tables;
    let found = faults(&world);
    assert_eq!(found.len(), 1, "{found:?}");
    assert_eq!(found[0]["mended"], false);
    assert!(
        text(&found[0], "/where").contains("500 g of peppermint"),
        "{found:?}"
    );
    assert_eq!(
        everything(&world).tables,
        tables,
        "nothing was made anew from a log that lies"
    );
}

#[test]
fn an_entry_that_is_gone_is_counted_and_a_backup_brings_it_back() {
    let (world, outside) = (season(), outside());
    let before = everything(&world);
    let file = backed_up(&world, outside.path(), "b.zip");
    let world = changed(
        world,
        "DROP TRIGGER change_is_never_erased; DROP TRIGGER deed_is_never_erased;
         DELETE FROM change WHERE deed = (SELECT max(number) FROM deed);
         DELETE FROM deed WHERE number = (SELECT max(number) FROM deed)",
    );
    let found = faults(&world);
    assert!(
        text(&found[0], "/what").contains("One entry is missing"),
        "{found:?}"
    );
    done(&world, "merge.apply", json!({ "file": file }));
    assert_eq!(everything(&world).deeds, before.deeds);
    assert_eq!(faults(&world), Vec::<Value>::new());
}

#[test]
fn a_photo_that_was_changed_is_named_and_healed_by_adding_it_again_or_from_a_backup() {
    let (world, outside) = (season(), outside());
    let file = backed_up(&world, outside.path(), "b.zip");
    let mut paths = Vec::new();
    for part in fs::read_dir(world.folder().join("photos/originals"))
        .unwrap()
        .flatten()
    {
        paths.extend(
            fs::read_dir(part.path())
                .unwrap()
                .flatten()
                .map(|file| file.path()),
        );
    }
    paths.sort();
    for path in &paths {
        // One bit, so that the length stays.
        let mut bytes = fs::read(path).unwrap();
        let middle = bytes.len() / 2;
        bytes[middle] ^= 1;
        fs::write(path, bytes).unwrap();
    }
    assert_eq!(faults(&world).len(), paths.len());
    world.photo("place_and_zone.jpg");
    assert_eq!(
        faults(&world).len(),
        paths.len() - 1,
        "adding it again heals it"
    );
    done(&world, "merge.apply", json!({ "file": file }));
    assert_eq!(faults(&world), Vec::<Value>::new(), "and so does a backup");
    fs::remove_file(&paths[0]).unwrap();
    let found = faults(&world);
    assert!(text(&found[0], "/what").contains("missing"), "{found:?}");
    assert!(!text(&found[0], "/where").is_empty());
}

#[test]
fn a_check_can_be_asked_for_in_german() {
    let world = changed(season(), "UPDATE bed SET name = 'Elsewhere'");
    pick(&world, "gray.jpg", 130.0, "Terrace");
    let said = api::call_in(world.app(), api::Language::German, "journal.check", "{}").unwrap();
    assert!(
        said.contains("Die Listen passten nicht zu den Einträgen."),
        "{said}"
    );
}
