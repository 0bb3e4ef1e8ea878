//! A restored backup equals the original, and restoring can be undone.

use std::fs;

use serde_json::json;

use super::commands::{World, number, text};
use super::season::{backed_up, done, everything, failed, outside, pick, told};

#[test]
fn a_restored_backup_equals_the_original_in_every_row_and_byte() {
    let (world, outside) = (World::new(), outside());
    told(&world);
    let before = everything(&world);
    let file = backed_up(&world, outside.path(), "b.zip");

    let other = World::new();
    pick(&other, "progressive.jpg", 90.0, "Elsewhere");
    let look = done(&other, "restore.look", json!({ "file": file }));
    assert_eq!(
        number(&look, "/only_here"),
        2.0,
        "the photo and the harvest"
    );
    assert_eq!(number(&look, "/only_there"), before.deeds.len() as f64);
    assert_eq!(number(&look, "/photos"), 3.0);
    assert_eq!(look["damaged"], json!([]));
    let harvests = look["rows"]
        .as_array()
        .unwrap()
        .iter()
        .find(|row| row["noun"] == "harvest");
    assert_eq!(harvests.unwrap()["there"], 3);

    let restored = done(&other, "restore.apply", json!({ "file": file }));
    assert_eq!(number(&restored, "/photos_new"), 3.0);
    assert_eq!(number(&restored, "/photos_missing"), 0.0);
    assert_eq!(restored["faults"], json!([]));
    let mut after = everything(&other);
    assert_eq!(
        after.originals.len(),
        4,
        "the photo of before is still there"
    );
    after
        .originals
        .retain(|name, _| before.originals.contains_key(name));
    assert_eq!(after, before);
    assert_eq!(other.app().faults().unwrap(), []);

    let hash = before.originals.keys().next().unwrap();
    assert!(
        other.app().thumb(hash).unwrap().is_some(),
        "previews are made anew when asked for"
    );
}

#[test]
fn a_restore_is_taken_back_and_done_again() {
    let (world, outside) = (World::new(), outside());
    told(&world);
    let file = backed_up(&world, outside.path(), "b.zip");
    let backed = everything(&world);
    pick(&world, "gray.jpg", 77.0, "Terrace");
    let later = everything(&world);
    assert!(
        !world.call("backup.about", json!({}))["can_undo"]
            .as_bool()
            .unwrap()
    );
    done(&world, "restore.apply", json!({ "file": file }));
    assert_eq!(everything(&world).deeds, backed.deeds);
    world.call("restore.undo", json!({}));
    assert_eq!(everything(&world), later);
    let world = world.reopened();
    assert!(
        world.call("backup.about", json!({}))["can_undo"]
            .as_bool()
            .unwrap()
    );
    world.call("restore.undo", json!({}));
    assert_eq!(everything(&world).tables, backed.tables);
    let aside = fs::read_dir(world.folder()).unwrap().flatten();
    let aside = aside.filter(|entry| entry.file_name().to_string_lossy().starts_with("before-"));
    assert_eq!(
        aside.count(),
        1,
        "one journal of before is kept, not all of them"
    );
    pick(&world, "gray.jpg", 78.0, "Terrace");
}

#[test]
fn a_sealed_backup_needs_its_passphrase() {
    let (world, outside) = (World::new(), outside());
    told(&world);
    let file = outside.path().join("b.zip.age");
    let made = done(
        &world,
        "backup.make",
        json!({ "file": file, "passphrase": "nettle and balm", "photos": false }),
    );
    assert_eq!(made["sealed"], true);
    assert_eq!(
        failed(&world, "restore.look", json!({ "file": file }))["field"],
        "passphrase"
    );
    let wrong = failed(
        &world,
        "restore.look",
        json!({ "file": file, "passphrase": "balm" }),
    );
    assert_eq!(wrong["field"], "passphrase");
    let request = json!({ "file": file, "passphrase": "nettle and balm" });
    let look = done(&world, "restore.look", request);
    assert_eq!(look["with_photos"], false);
    assert_eq!(
        number(&look, "/photos_missing"),
        0.0,
        "they are on this device"
    );
    world
        .refused(
            "backup.make",
            json!({ "file": file, "passphrase": "short" }),
        )
        .of("invalid", "passphrase");
}

#[test]
fn the_journal_says_when_a_backup_is_due() {
    let (world, outside) = (World::new(), outside());
    assert_eq!(
        world.call("backup.about", json!({}))["remind"],
        false,
        "nothing to lose yet"
    );
    told(&world);
    let about = world.call("backup.about", json!({}));
    assert_eq!(about["remind"], true);
    assert!(about["last"].is_null());
    backed_up(&world, outside.path(), "b.zip");
    let about = world.call("backup.about", json!({}));
    assert_eq!(
        (&about["remind"], number(&about, "/deeds_since")),
        (&json!(false), 0.0)
    );
    assert_eq!(text(&about, "/last/file_name"), "b.zip");
    world.at("2026-09-01T09:00:00+02:00");
    assert_eq!(
        world.call("backup.about", json!({}))["remind"],
        false,
        "nothing was written since"
    );
    pick(&world, "gray.jpg", 50.0, "Terrace");
    let about = world.call("backup.about", json!({}));
    assert_eq!(
        (&about["remind"], number(&about, "/days_ago")),
        (&json!(true), 49.0)
    );
}

#[test]
fn a_backup_without_a_path_lies_ready_to_be_fetched_and_a_picked_file_comes_in_pieces() {
    use base64::Engine as _;
    use std::io::Read as _;
    let world = World::new();
    told(&world);
    let made = done(&world, "backup.make", json!({}));
    assert_eq!(made["file_name"], "trugbook-2026-07-14.zip");
    let mut bytes = Vec::new();
    let mut file = world.app().made("trugbook-2026-07-14.zip").unwrap();
    file.file.read_to_end(&mut bytes).unwrap();
    assert!(world.app().made("../journal.trugbook").is_none());
    let other = World::new();
    let mut name = String::new();
    for (place, piece) in bytes.chunks(30_000).enumerate() {
        let base64 = base64::engine::general_purpose::STANDARD.encode(piece);
        let request = json!({ "upload": "pick-1", "base64": base64, "first": place == 0 });
        name = text(&other.call("file.chunk", request), "/file").to_owned();
    }
    done(&other, "restore.apply", json!({ "file": name }));
    assert_eq!(everything(&other), everything(&world));
    other
        .refused(
            "file.chunk",
            json!({ "upload": "../x", "base64": "", "first": true }),
        )
        .of("invalid", "upload");
    other
        .refused(
            "restore.look",
            json!({ "file": "brought:../journal.trugbook" }),
        )
        .of("not_found", "file");
    other
        .refused(
            "backup.make",
            json!({ "file": other.folder().join("photos/b.zip") }),
        )
        .of("invalid", "file");
}

#[test]
fn a_stopped_backup_leaves_no_file_and_says_so() {
    let (world, outside) = (World::new(), outside());
    told(&world);
    let file = outside.path().join("b.zip");
    let begun = world.call(
        "backup.make",
        json!({ "file": file, "passphrase": "a long enough one" }),
    );
    world.call("job.cancel", json!({ "job": begun["job"] }));
    let card = super::season::ended(&world, &begun);
    assert_eq!(card["state"], "cancelled", "{card}");
    assert!(text(&card, "/failure/message").contains("stopped"));
    assert_eq!(fs::read_dir(outside.path()).unwrap().count(), 0);
}

#[test]
fn anyone_can_read_a_backup_without_this_app() {
    let (world, outside) = (World::new(), outside());
    told(&world);
    let file = backed_up(&world, outside.path(), "b.zip");
    let found = std::process::Command::new("unzip")
        .arg("-t")
        .arg(&file)
        .output();
    let Ok(tested) = found else {
        eprintln!("skipped: this machine has no unzip");
        return;
    };
    let said = String::from_utf8_lossy(&tested.stdout);
    assert!(
        tested.status.success() && said.contains("No errors detected"),
        "{said}"
    );
    let into = outside.path().join("out");
    let unzip = std::process::Command::new("unzip")
        .args(["-q", "-d"])
        .arg(&into)
        .arg(&file)
        .status();
    assert!(unzip.unwrap().success());
    assert!(into.join("README.txt").is_file());
    let manifest: serde_json::Value =
        serde_json::from_slice(&fs::read(into.join("manifest.json")).unwrap()).unwrap();
    assert_eq!(manifest["kind"], "trugbook backup");
    let journal = rusqlite::Connection::open(into.join("journal.trugbook")).unwrap();
    let count = "SELECT count(*) FROM harvest";
    let harvests: i64 = journal.query_row(count, [], |row| row.get(0)).unwrap();
    assert_eq!(harvests, 3);
}
