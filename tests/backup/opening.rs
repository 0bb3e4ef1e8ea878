//! Opening never deletes and never begins anew in silence.

use std::fs;
use std::path::{Path, PathBuf};

use serde_json::{Value, json};
use tempfile::TempDir;

use super::commands::{World, number, text};
use super::season::{Everything, backed_up, done, everything, failed, outside, pick, told};

fn journal(folder: &Path) -> PathBuf {
    folder.join("journal.trugbook")
}

/// The restore points in a folder by their names, with their bytes.
fn points(folder: &Path) -> Vec<(String, Vec<u8>)> {
    let mut found: Vec<_> = fs::read_dir(folder)
        .unwrap()
        .flatten()
        .map(|entry| {
            (
                entry.file_name().to_string_lossy().into_owned(),
                entry.path(),
            )
        })
        .filter(|(name, _)| name.starts_with("before-") && name.ends_with(".trugbook"))
        .map(|(name, path)| (name, fs::read(path).unwrap()))
        .collect();
    found.sort();
    found
}

/// A closed journal that was restored once: its folder, what it was before, and what it is.
fn restored_once() -> (TempDir, Everything, Everything) {
    let (world, outside) = (World::new(), outside());
    told(&world);
    let file = backed_up(&world, outside.path(), "b.zip");
    pick(&world, "gray.jpg", 77.0, "Terrace");
    let before = everything(&world);
    done(&world, "restore.apply", json!({ "file": file }));
    let now = everything(&world);
    (world.closed(), before, now)
}

type Harm = fn(&Path);

/// What may happen to the file of a journal.
const HARM: [(&str, Harm); 5] = [
    ("missing", |path| fs::remove_file(path).unwrap()),
    ("empty", |path| fs::write(path, b"").unwrap()),
    ("halved", |path| {
        let bytes = fs::read(path).unwrap();
        fs::write(path, &bytes[..bytes.len() / 2]).unwrap();
    }),
    ("overwritten", |path| {
        fs::write(path, vec![0xA5; 60_000]).unwrap();
    }),
    ("damaged at its head", |path| {
        let mut bytes = fs::read(path).unwrap();
        bytes[..100].fill(0);
        fs::write(path, bytes).unwrap();
    }),
];

#[test]
fn a_restore_point_beside_a_journal_that_came_to_harm_is_kept_offered_and_taken() {
    for (harm, harmed) in HARM {
        let (folder, before, _) = restored_once();
        let kept = points(folder.path());
        assert_eq!(kept.len(), 1);
        harmed(&journal(folder.path()));
        let world = World::at_folder(folder).reopened();
        assert_eq!(
            points(world.folder()),
            kept,
            "{harm}: opening deletes nothing"
        );
        let offered = world.call("restore.points", json!({}));
        let point = offered["points"][0].clone();
        assert_eq!(number(&point, "/bytes"), kept[0].1.len() as f64, "{harm}");
        assert_eq!(text(&point, "/at"), "2026-07-14T09:00:00+02:00", "{harm}");
        world.call("restore.back", json!({ "point": point["point"] }));
        let back = everything(&world);
        assert_eq!(back.deeds, before.deeds, "{harm}");
        assert_eq!(back.tables, before.tables, "{harm}");
        assert_eq!(world.call("restore.points", json!({}))["lost"], Value::Null);
        pick(&world, "progressive.jpg", 60.0, "Terrace");
        let world = world.reopened();
        assert_eq!(
            everything(&world).deeds.len(),
            before.deeds.len() + 2,
            "{harm}"
        );
    }
}

#[test]
fn a_journal_that_is_missing_or_empty_becomes_no_new_one_until_the_maker_says_so() {
    for (how, harmed) in &HARM[..2] {
        let (folder, _, _) = restored_once();
        harmed(&journal(folder.path()));
        let mut world = World::at_folder(folder);
        for _ in 0..2 {
            let size = fs::metadata(journal(world.folder())).map_or(0, |meta| meta.len());
            assert_eq!(size, 0, "{how}: nothing was begun");
            let offered = world.call("restore.points", json!({}));
            assert_eq!(offered["lost"]["how"], *how, "{offered}");
            assert_eq!(number(&offered, "/lost/photos"), 4.0);
            assert_eq!(world.call("setting.show", json!({}))["is_lost"], true);
            for (command, request) in [
                ("harvest.list", json!({})),
                ("bed.add", json!({ "name": "New bed" })),
                ("backup.make", json!({})),
                ("demo.begin", json!({})),
                ("setting.change", json!({ "units": "us" })),
            ] {
                world
                    .refused(command, request)
                    .of("lost", "")
                    .says("First choose what to open in its place");
            }
            world = world.reopened();
        }
        world
            .refused("restore.anew", json!({}))
            .of("invalid", "sure");
        world.call("restore.anew", json!({ "sure": true }));
        assert_eq!(world.call("restore.points", json!({}))["lost"], Value::Null);
        let about = world.call("backup.about", json!({}));
        assert_eq!(number(&about, "/photos_without_entry"), 4.0);
        pick(&world, "progressive.jpg", 60.0, "Terrace");
        let world = world.reopened();
        let points = world.call("restore.points", json!({}));
        assert_eq!(
            points["points"].as_array().unwrap().len(),
            1,
            "it is still offered"
        );
        world
            .refused("restore.anew", json!({ "sure": true }))
            .of("invalid", "");
    }
}

#[test]
fn a_backup_restores_a_journal_that_is_missing() {
    let (world, outside) = (World::new(), outside());
    told(&world);
    let before = everything(&world);
    let file = backed_up(&world, outside.path(), "b.zip");
    let folder = world.closed();
    fs::remove_file(journal(folder.path())).unwrap();
    let world = World::at_folder(folder);
    let look = done(&world, "restore.look", json!({ "file": file }));
    assert_eq!(number(&look, "/only_here"), 0.0, "{look}");
    assert!(!journal(world.folder()).exists(), "a look begins nothing");
    done(&world, "restore.apply", json!({ "file": file }));
    assert_eq!(everything(&world), before);
    assert_eq!(everything(&world.reopened()), before);
}

#[test]
fn a_backup_that_was_never_taken_away_is_offered_where_the_journal_is_missing() {
    let world = World::new();
    told(&world);
    let before = everything(&world);
    done(&world, "backup.make", json!({}));
    let folder = world.closed();
    fs::remove_file(journal(folder.path())).unwrap();
    let world = World::at_folder(folder);
    let offered = world.call("restore.points", json!({}));
    let file = offered["lost"]["backups"][0].clone();
    assert_eq!(file, "made:trugbook-2026-07-14.zip");
    done(&world, "restore.apply", json!({ "file": file }));
    assert_eq!(everything(&world), before);
    world
        .refused("restore.look", json!({ "file": "made:../journal.lock" }))
        .of("not_found", "file");
}

#[test]
fn a_damaged_file_that_was_kept_is_read_again_where_the_journal_is_missing() {
    let world = World::new();
    told(&world);
    let before = everything(&world);
    let folder = world.closed();
    let damaged = folder.path().join("damaged-1.trugbook");
    fs::rename(journal(folder.path()), &damaged).unwrap();
    let bytes = fs::read(&damaged).unwrap();
    let world = World::at_folder(folder);
    let offered = world.call("restore.points", json!({}));
    assert_eq!(offered["lost"]["can_rescue"], true, "{offered}");
    let report = world.call("rescue.make", json!({}));
    assert_eq!(text(&report, "/damaged_file"), "damaged-1.trugbook");
    assert_eq!(everything(&world), before);
    let world = world.reopened();
    assert_eq!(everything(&world), before);
    assert_eq!(
        fs::read(world.folder().join("damaged-1.trugbook")).unwrap(),
        bytes
    );
}

#[test]
fn where_nothing_can_be_read_the_rescue_says_so_and_begins_nothing() {
    let world = World::new();
    told(&world);
    let folder = world.closed();
    fs::write(journal(folder.path()), b"").unwrap();
    let world = World::at_folder(folder);
    world
        .refused("rescue.make", json!({}))
        .of("not_found", "rescue");
    assert_eq!(fs::metadata(journal(world.folder())).unwrap().len(), 0);
}

#[test]
fn a_database_that_lost_all_its_tables_is_no_new_journal() {
    let world = World::new();
    told(&world);
    let folder = world.closed();
    // The header of an empty database: one page without a table and without our name.
    let mut page = vec![0_u8; 4096];
    page[..16].copy_from_slice(b"SQLite format 3\0");
    page[16..24].copy_from_slice(&[16, 0, 1, 1, 0, 64, 32, 32]);
    page[24..32].copy_from_slice(&[0, 0, 0, 1, 0, 0, 0, 1]);
    page[44..48].copy_from_slice(&[0, 0, 0, 4]);
    page[56..60].copy_from_slice(&[0, 0, 0, 1]);
    page[92..96].copy_from_slice(&[0, 0, 0, 1]);
    page[100] = 13;
    page[105] = 16;
    fs::write(journal(folder.path()), &page).unwrap();
    let world = World::at_folder(folder);
    let offered = world.call("restore.points", json!({}));
    assert_eq!(offered["lost"]["how"], "empty", "{offered}");
    assert_eq!(fs::read(journal(world.folder())).unwrap(), page);
}

#[test]
fn only_a_folder_without_any_trace_begins_anew() {
    // What a first opening leaves that was killed before it had begun a journal.
    let folder = tempfile::tempdir().unwrap();
    fs::create_dir_all(folder.path().join("photos/originals")).unwrap();
    fs::write(folder.path().join("journal.lock"), b"").unwrap();
    let world = World::at_folder(folder);
    assert_eq!(world.call("restore.points", json!({}))["lost"], Value::Null);
    // Nothing but the lock tells of this one.
    let folder = world.closed();
    fs::remove_file(journal(folder.path())).unwrap();
    let world = World::at_folder(folder);
    let offered = world.call("restore.points", json!({}));
    assert_eq!(offered["lost"]["how"], "missing", "{offered}");
    for trace in [
        "before-0198c0de-0000-7000-8000-000000000001.trugbook",
        "damaged-3.trugbook",
        "journal.trugbook-wal",
        "photos/originals/ab/abcd",
        "journal.trugbook",
    ] {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join(trace);
        fs::create_dir_all(path.parent().unwrap()).unwrap();
        let content: &[u8] = if trace == "journal.trugbook" {
            b""
        } else {
            b"x"
        };
        fs::write(&path, content).unwrap();
        let world = World::at_folder(folder);
        let offered = world.call("restore.points", json!({}));
        assert_ne!(offered["lost"], Value::Null, "{trace}");
        world.call("restore.anew", json!({ "sure": true }));
        let found = walk(world.folder());
        let kept = |name: &str| found.iter().any(|found| found.ends_with(name));
        assert!(
            kept(trace) || kept("damaged-1.trugbook") || kept("damaged-1.trugbook-wal"),
            "{trace}: {found:?}"
        );
    }
}

fn walk(folder: &Path) -> Vec<String> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder).unwrap().flatten() {
        if entry.path().is_dir() {
            found.extend(walk(&entry.path()));
        } else {
            found.push(entry.path().display().to_string());
        }
    }
    found
}

#[test]
fn the_last_three_restore_points_are_kept_and_nothing_of_the_makers_own() {
    let (world, outside) = (World::new(), outside());
    told(&world);
    let own = [
        "before-holiday.trugbook",
        "before-.trugbook",
        "before-0198C0DE-0000-7000-8000-000000000001.trugbook",
        "damaged-by-rain.trugbook",
    ];
    for name in own {
        fs::write(world.folder().join(name), b"my own").unwrap();
    }
    let file = backed_up(&world, outside.path(), "b.zip");
    let mut states = Vec::new();
    for number in 0..5 {
        // A clock that is set back must not make the latest the first to go.
        world.at(&format!(
            "2026-07-{:02}T09:00:00+02:00",
            [15, 16, 17, 18, 14][number]
        ));
        pick(&world, "gray.jpg", 50.0 + number as f64, "Terrace");
        states.push(everything(&world));
        done(&world, "restore.apply", json!({ "file": file }));
    }
    let world = world.reopened();
    let listed = world.call("restore.points", json!({}))["points"].clone();
    let listed = listed.as_array().unwrap();
    assert_eq!(listed.len(), 3, "{listed:?}");
    let days: Vec<&str> = listed
        .iter()
        .map(|point| &text(point, "/at")[..10])
        .collect();
    assert_eq!(days, ["2026-07-18", "2026-07-17", "2026-07-14"]);
    for name in own {
        assert_eq!(
            fs::read(world.folder().join(name)).unwrap(),
            b"my own",
            "{name}"
        );
    }
    world.call("restore.back", json!({ "point": listed[1]["point"] }));
    assert_eq!(everything(&world).tables, states[2].tables);
    world.call("restore.undo", json!({}));
    world
        .refused("restore.back", json!({ "point": "before-holiday" }))
        .of("not_found", "point");
}

#[test]
fn going_to_and_fro_pushes_no_older_restore_point_out() {
    let (world, outside) = (World::new(), outside());
    told(&world);
    let file = backed_up(&world, outside.path(), "b.zip");
    for number in 0..3 {
        pick(&world, "gray.jpg", 50.0 + f64::from(number), "Terrace");
        done(&world, "restore.apply", json!({ "file": file }));
        world.at(&format!("2026-07-{}T09:00:00+02:00", 15 + number));
    }
    let oldest = |world: &World| {
        let points = world.call("restore.points", json!({}))["points"].clone();
        points.as_array().unwrap().last().unwrap().clone()
    };
    let first = oldest(&world);
    for _ in 0..4 {
        world.call("restore.undo", json!({}));
    }
    assert_eq!(oldest(&world), first);
}

#[test]
fn a_damaged_restore_point_is_refused_and_changes_nothing() {
    let (folder, _, now) = restored_once();
    let (name, mut bytes) = points(folder.path()).remove(0);
    for page in (0..bytes.len() / 4096).step_by(3) {
        bytes[page * 4096..(page + 1) * 4096].fill(0);
    }
    fs::write(folder.path().join(&name), &bytes).unwrap();
    let world = World::at_folder(folder);
    let point = world.call("restore.points", json!({}))["points"][0]["point"].clone();
    world
        .refused("restore.back", json!({ "point": point }))
        .of("invalid", "point");
    assert_eq!(everything(&world), now);
    assert_eq!(points(world.folder()), [(name, bytes)]);
}

#[test]
fn a_merge_waits_until_there_is_a_journal_to_merge_into() {
    let (other, outside) = (World::new(), outside());
    told(&other);
    let file = backed_up(&other, outside.path(), "b.zip");
    let (folder, _, _) = restored_once();
    fs::remove_file(journal(folder.path())).unwrap();
    let world = World::at_folder(folder);
    world
        .refused("merge.apply", json!({ "file": file }))
        .of("lost", "");
    let failure = failed(&world, "restore.apply", json!({ "file": damaged(&file) }));
    assert_eq!(failure["field"], "file", "{failure}");
    assert!(
        !journal(world.folder()).exists(),
        "a refusal begins nothing"
    );
}

fn damaged(file: &Path) -> PathBuf {
    let bytes = fs::read(file).unwrap();
    let half = file.with_extension("half.zip");
    fs::write(&half, &bytes[..bytes.len() / 2]).unwrap();
    half
}
