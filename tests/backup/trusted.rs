//! A backup that says done can be restored, and counts once it lies elsewhere.

use std::fs;
use std::path::Path;

use serde_json::{Value, json};

use super::commands::{World, number, text};
use super::season::{backed_up, done, everything, failed, outside, pick, told};

const PASSPHRASE: &str = "nettle and balm";

/// Bytes of a chunk of the `age` format with its tag (age-encryption.org/v1, "Payload").
const CHUNK: usize = 64 * 1024 + 16;

#[test]
#[ignore = "long"]
fn a_flipped_bit_in_a_sealed_backup_costs_what_its_chunk_holds_and_nothing_else() {
    let (world, outside) = (World::new(), outside());
    told(&world);
    for number in 0..3_u8 {
        let mut picture = fs::read(super::commands::samples().join("gray.jpg")).unwrap();
        picture.extend((0..150_000_u32).map(|at| (at % 251) as u8 ^ number));
        world
            .app()
            .take_photo(picture.as_slice(), Some("leaf.jpg"))
            .unwrap();
    }
    let before = everything(&world);
    let file = outside.path().join("b.zip.age");
    let request = json!({ "file": file, "passphrase": PASSPHRASE });
    done(&world, "backup.make", request.clone());
    let whole = fs::read(&file).unwrap();
    let chunks = whole.len() / CHUNK;
    assert!(chunks >= 5, "{chunks} chunks");
    let (mut lost_journal, mut lost_photos, mut lost_list) = (0, 0, 0);
    for chunk in (0..chunks).step_by((chunks / 4).max(1)).chain([chunks]) {
        let mut bytes = whole.clone();
        let at = (chunk * CHUNK + 2000).min(whole.len() - 100);
        bytes[at] ^= 4;
        fs::write(&file, &bytes).unwrap();
        let look = done(&world, "restore.look", request.clone());
        let damaged: Vec<&str> = look["damaged"]
            .as_array()
            .unwrap()
            .iter()
            .map(|name| name.as_str().unwrap())
            .collect();
        assert!(!damaged.is_empty(), "chunk {chunk}: {look}");
        assert!(
            number(&look, "/photos") == 6.0 || damaged.contains(&"manifest.json"),
            "chunk {chunk}: {look}"
        );
        lost_list += u32::from(damaged.contains(&"manifest.json"));
        lost_photos += damaged
            .iter()
            .filter(|name| name.starts_with("photos/"))
            .count();
        if damaged.contains(&"journal.trugbook") {
            lost_journal += 1;
            assert_eq!(look["restorable"], false, "chunk {chunk}: {look}");
            continue;
        }
        // What is whole comes back: the log, and every photo outside the chunk.
        let other = World::new();
        assert_eq!(
            failed(&other, "restore.apply", request.clone())["field"],
            "without_damaged"
        );
        let mut without = request.clone();
        without["without_damaged"] = json!(true);
        done(&other, "restore.apply", without);
        let after = everything(&other);
        assert_eq!(after.deeds, before.deeds, "chunk {chunk}");
        let gone = before.originals.len() - after.originals.len();
        assert!(
            gone <= damaged.len(),
            "chunk {chunk}: {gone} photos gone, {damaged:?} damaged"
        );
        for (hash, bytes) in &after.originals {
            assert_eq!(&before.originals[hash], bytes, "chunk {chunk}");
        }
    }
    assert!(
        lost_journal > 0 && lost_photos > 0 && lost_list > 0,
        "{lost_journal} journals, {lost_photos} photos, {lost_list} lists were hit"
    );
}

#[test]
fn a_backup_whose_list_is_damaged_or_cut_off_gives_what_stands_before_it() {
    let (world, outside) = (World::new(), outside());
    told(&world);
    let before = everything(&world);
    let file = backed_up(&world, outside.path(), "b.zip");
    let whole = fs::read(&file).unwrap();
    let list = whole
        .windows(4)
        .rposition(|four| four == b"PK\x03\x04")
        .unwrap();
    let mut scratched = whole.clone();
    scratched[list + 100] ^= 1;
    for (what, bytes) in [
        ("a scratched list", scratched),
        ("no end", whole[..list + 50].to_vec()),
    ] {
        fs::write(&file, &bytes).unwrap();
        let other = World::new();
        let look = done(&other, "restore.look", json!({ "file": file }));
        assert_eq!(look["damaged"], json!(["manifest.json"]), "{what}: {look}");
        failed(&other, "restore.apply", json!({ "file": file }));
        done(
            &other,
            "restore.apply",
            json!({ "file": file, "without_damaged": true }),
        );
        assert_eq!(everything(&other), before, "{what}");
    }
    // Half of a journal is no journal; its photos were behind it.
    fs::write(&file, &whole[..100_000]).unwrap();
    let look = done(&World::new(), "restore.look", json!({ "file": file }));
    assert_eq!(look["restorable"], false, "{look}");
    fs::write(&file, b"PK\x03\x04 and nothing of ours").unwrap();
    assert_eq!(
        failed(&world, "restore.look", json!({ "file": file }))["field"],
        "file"
    );
}

/// A closed journal of many pages in which one was overwritten where opening does not look.
fn scratched() -> (tempfile::TempDir, usize) {
    let world = World::new();
    told(&world);
    for number in 0..120 {
        pick(&world, "gray.jpg", 100.0 + f64::from(number), "Long bed");
    }
    let deeds = everything(&world).deeds;
    let folder = world.closed();
    let path = folder.path().join("journal.trugbook");
    let mut bytes = fs::read(&path).unwrap();
    let words = deeds[60].text.as_bytes();
    let at = bytes
        .windows(words.len())
        .position(|window| window == words)
        .unwrap()
        / 4096
        * 4096;
    bytes[at..at + 4096].fill(0xA5);
    fs::write(&path, &bytes).unwrap();
    (folder, deeds.len())
}

#[test]
fn a_backup_of_a_damaged_journal_says_so_in_its_name_and_holds_what_can_be_read() {
    let (folder, deeds) = scratched();
    let (world, outside) = (World::at_folder(folder), outside());
    let file = outside.path().join("b.zip");
    fs::write(&file, b"the backup of last week").unwrap();
    let made = done(&world, "backup.make", json!({ "file": file }));
    assert_eq!(text(&made, "/file_name"), "b-damaged.zip", "{made}");
    assert_eq!(fs::read(&file).unwrap(), b"the backup of last week");
    let read = number(&made, "/damage/deeds");
    assert!(read > 60.0 && read < deeds as f64, "{made}");
    assert!(number(&made, "/damage/deeds_lost") > 0.0, "{made}");
    assert!(
        made["damage"]["sentences"].as_array().unwrap().len() >= 3,
        "{made}"
    );
    let about = world.call("backup.about", json!({}));
    assert_eq!(
        (&about["last"], &about["remind"]),
        (&Value::Null, &json!(true))
    );
    let other = World::new();
    let request = json!({ "file": outside.path().join("b-damaged.zip") });
    done(&other, "restore.apply", request);
    assert!(everything(&other).deeds.len() as f64 >= read);
    assert_eq!(other.app().faults().unwrap(), []);
}

#[test]
fn a_backup_counts_when_it_was_taken_away_and_not_while_it_lies_in_the_app() {
    let world = World::new();
    told(&world);
    let made = done(&world, "backup.make", json!({}));
    let name = text(&made, "/file_name").to_owned();
    let about = world.call("backup.about", json!({}));
    assert_eq!(
        (&about["last"], &about["remind"]),
        (&Value::Null, &json!(true))
    );
    let lies = |world: &World, name: &str| world.folder().join("made").join(name).is_file();
    // Neither another start nor an export lets it go.
    let world = world.reopened();
    done(&world, "export.make", json!({}));
    assert!(lies(&world, &name));
    let taken = world.call("backup.taken", json!({ "file_name": "other.zip" }));
    assert_eq!(taken["counts"], false);
    let taken = world.call("backup.taken", json!({ "file_name": name }));
    assert_eq!(taken["counts"], true);
    let about = world.call("backup.about", json!({}));
    assert_eq!(
        (text(&about, "/last/file_name"), &about["remind"]),
        (name.as_str(), &json!(false))
    );
    // A newer one that is whole takes its place; one that failed does not.
    world.at("2026-07-15T09:00:00+02:00");
    let begun = world.call("backup.make", json!({ "passphrase": PASSPHRASE }));
    world.call("job.cancel", json!({ "job": begun["job"] }));
    super::season::ended(&world, &begun);
    assert!(lies(&world, &name));
    done(&world, "backup.make", json!({}));
    assert!(!lies(&world, &name) && lies(&world, "trugbook-2026-07-15.zip"));
    assert!(lies(&world, "trugbook-export-2026-07-14.zip"));
}

#[test]
fn no_backup_goes_into_the_folder_of_the_journal_by_any_spelling() {
    let (world, outside) = (World::new(), outside());
    told(&world);
    let folder = world.folder().canonicalize().unwrap();
    let name = folder.file_name().unwrap().to_owned();
    let beside = folder
        .parent()
        .unwrap()
        .join("..")
        .join(folder.parent().unwrap().file_name().unwrap());
    let mut spellings = vec![
        folder.join("b.zip"),
        folder.join("photos/../b.zip"),
        folder.join("photos/originals/b.zip"),
        beside.join(&name).join("b.zip"),
    ];
    #[cfg(unix)]
    {
        std::os::unix::fs::symlink(&folder, outside.path().join("link")).unwrap();
        std::os::unix::fs::symlink(folder.join("photos"), outside.path().join("inner")).unwrap();
        spellings.extend(
            ["link/b.zip", "inner/b.zip", "link/photos/b.zip"]
                .map(|name| outside.path().join(name)),
        );
    }
    for file in spellings {
        for command in ["backup.make", "export.make"] {
            world
                .refused(command, json!({ "file": file }))
                .of("invalid", "file");
        }
    }
    done(
        &world,
        "backup.make",
        json!({ "file": outside.path().join("../").join(outside.path().file_name().unwrap()).join("b.zip") }),
    );
}

#[test]
fn a_clock_that_is_set_back_does_not_silence_the_reminder() {
    let (world, outside) = (World::new(), outside());
    told(&world);
    world.at("2031-07-14T09:00:00+02:00");
    backed_up(&world, outside.path(), "b.zip");
    world.at("2026-07-15T09:00:00+02:00");
    assert_eq!(
        world.call("backup.about", json!({}))["remind"],
        false,
        "nothing was written since"
    );
    pick(&world, "gray.jpg", 50.0, "Terrace");
    let about = world.call("backup.about", json!({}));
    assert_eq!(
        (&about["remind"], &about["days_ago"]),
        (&json!(true), &Value::Null),
        "{about}"
    );
}

#[test]
#[cfg(unix)]
fn nobody_else_can_read_what_the_maker_writes_down() {
    use std::os::unix::fs::PermissionsExt as _;
    fn open_to_others(folder: &Path, found: &mut Vec<String>) {
        for entry in fs::read_dir(folder).unwrap().flatten() {
            let mode = entry.metadata().unwrap().permissions().mode() & 0o777;
            let wanted = if entry.path().is_dir() { 0o700 } else { 0o600 };
            if mode != wanted {
                found.push(format!("{} is {mode:o}", entry.path().display()));
            }
            if entry.path().is_dir() {
                open_to_others(&entry.path(), found);
            }
        }
    }
    let (world, outside) = (World::new(), outside());
    told(&world);
    world
        .app()
        .thumb(everything(&world).originals.keys().next().unwrap())
        .unwrap();
    let file = backed_up(&world, outside.path(), "b.zip");
    done(&world, "backup.make", json!({}));
    done(&world, "export.make", json!({}));
    done(&world, "restore.apply", json!({ "file": file }));
    world.call("rescue.make", json!({}));
    let mut found = Vec::new();
    open_to_others(world.folder(), &mut found);
    open_to_others(outside.path(), &mut found);
    assert_eq!(found, Vec::<String>::new());
    // What an earlier version left open is closed at the next opening.
    let folder = world.closed();
    let path = folder.path().join("journal.trugbook");
    fs::set_permissions(&path, fs::Permissions::from_mode(0o644)).unwrap();
    fs::set_permissions(folder.path(), fs::Permissions::from_mode(0o755)).unwrap();
    let world = World::at_folder(folder);
    let mode = |path: &Path| fs::metadata(path).unwrap().permissions().mode() & 0o777;
    assert_eq!((mode(world.folder()), mode(&path)), (0o700, 0o600));
}

#[test]
fn stray_folders_and_stale_files_do_not_keep_the_journal_from_opening() {
    let (world, outside) = (World::new(), outside());
    told(&world);
    let before = everything(&world);
    let folder = world.closed();
    for stray in ["work/folder/inner", "brought/folder", "made/x.part"] {
        fs::create_dir_all(folder.path().join(stray)).unwrap();
    }
    for stale in [
        "work/a.part",
        "work/snapshot-1-wal",
        "made/trugbook-2026-01-01.zip.part",
        "before-x.trugbook-wal",
    ] {
        fs::write(folder.path().join(stale), b"stale").unwrap();
    }
    let world = World::at_folder(folder);
    assert_eq!(everything(&world), before);
    assert!(!world.folder().join("work/folder").exists());
    assert!(
        !world
            .folder()
            .join("made/trugbook-2026-01-01.zip.part")
            .exists()
    );
    // A folder in the way of the file beside the target, and one of the maker's that stays.
    let file = outside.path().join("b.zip");
    fs::create_dir_all(outside.path().join("b.zip.part/mine")).unwrap();
    done(&world, "backup.make", json!({ "file": file }));
    assert!(outside.path().join("b.zip.part/mine").is_dir());
    done(&world, "restore.look", json!({ "file": file }));
}

#[test]
fn what_cannot_be_opened_is_named_by_its_path() {
    use api::{App, StandingClock};
    let now = chrono::DateTime::parse_from_rfc3339(super::commands::MORNING).unwrap();
    for (taken, by) in [
        ("photos", "a file"),
        ("work", "a file"),
        ("journal.trugbook", "a folder"),
    ] {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join(taken);
        if by == "a file" {
            fs::write(&path, b"").unwrap();
        } else {
            fs::create_dir(&path).unwrap();
        }
        let Err(failure) = App::open(folder.path(), Box::new(StandingClock::at(now))) else {
            panic!("it opened with {by} called {taken}");
        };
        let named = path.display().to_string();
        assert!(
            failure.message.to_string().contains(&named),
            "{failure:?} does not name {named}"
        );
    }
}

#[test]
fn a_table_is_recognised_in_another_time_zone() {
    let (world, outside) = (World::new(), outside());
    let file = outside.path().join("past.csv");
    fs::write(
        &file,
        "picked_at,herb,part,gross_g\n2024-06-01,Peppermint,leaf,412\n2024-06-08 10:30,Peppermint,leaf,300\n\
         2024-06-09T10:30:00+02:00,Peppermint,leaf,310\n",
    )
    .unwrap();
    world.call("import.apply", json!({ "file": file }));
    world.at("2026-07-14T09:00:00-07:00");
    let look = world.call("import.look", json!({ "file": file }));
    assert_eq!(
        (number(&look, "/new"), number(&look, "/known")),
        (0.0, 3.0),
        "{look}"
    );
    // The same moment told by another clock.
    fs::write(
        &file,
        "picked_at,herb,part,gross_g\n2024-06-09T08:30:00Z,Peppermint,leaf,310\n",
    )
    .unwrap();
    let look = world.call("import.look", json!({ "file": file }));
    assert_eq!(number(&look, "/known"), 1.0, "{look}");
}

#[test]
fn no_cell_of_an_export_runs_in_a_spreadsheet_and_each_comes_back_as_it_was() {
    let (world, outside) = (World::new(), outside());
    let notes = [
        "=HYPERLINK(\"x\")",
        "+1+2",
        "-2+3",
        "@SUM(1)",
        "'=quoted",
        "''@twice",
        "'plain",
        "-5",
        "fine = fine",
    ];
    for (place, note) in notes.iter().enumerate() {
        world.call(
            "harvest.record",
            json!({
                "herb": "peppermint", "part": "leaf", "surface": "dry", "gross_g": 100 + place,
                "bed_name": format!("={place}"), "note": note,
            }),
        );
    }
    let file = outside.path().join("e.zip");
    done(&world, "export.make", json!({ "file": file }));
    let mut zip = archive::Unpacker::open(&file, None).unwrap();
    let names: Vec<String> = zip
        .manifest()
        .entries
        .iter()
        .map(|entry| entry.name.clone())
        .collect();
    let (mut cells, mut harvests) = (0, Vec::new());
    for name in names.iter().filter(|name| name.ends_with(".csv")) {
        let mut bytes = Vec::new();
        zip.copy(name, &archive::Progress::default(), |piece| {
            bytes.extend_from_slice(piece);
            Ok(())
        })
        .unwrap();
        let mut reader = csv::ReaderBuilder::new()
            .has_headers(false)
            .from_reader(bytes.as_slice());
        for record in reader.records() {
            for cell in record.unwrap().iter() {
                cells += 1;
                let runs = cell.starts_with(['=', '+', '-', '@', '\t', '\r'])
                    && cell.parse::<f64>().is_err();
                assert!(!runs, "{name}: {cell:?}");
            }
        }
        if name == "harvests.csv" {
            harvests = bytes;
        }
    }
    assert!(cells > 100);
    let table = outside.path().join("harvests.csv");
    fs::write(&table, harvests).unwrap();
    let other = World::new();
    other.call("import.apply", json!({ "file": table }));
    let mut found = Vec::new();
    for harvest in other.call("harvest.list", json!({}))["harvests"]
        .as_array()
        .unwrap()
    {
        let page = other.call("harvest.show", json!({ "id": harvest["id"] }));
        assert!(text(&page, "/harvest/bed/name").starts_with('='), "{page}");
        found.push(text(&page, "/harvest/note").to_owned());
    }
    found.sort();
    let mut expected = notes.map(str::to_owned);
    expected.sort();
    assert_eq!(found, expected);
}

#[test]
fn a_line_break_in_a_name_is_refused_at_its_field() {
    let world = World::new();
    let harvest = pick(&world, "gray.jpg", 420.0, "Terrace");
    let picked = json!({ "herb": "peppermint", "part": "leaf", "surface": "dry", "gross_g": 100, "bed_name": "Upper\nbank" });
    let laid =
        json!({ "harvest": harvest["id"], "name": "Sieve\r\n2", "mass_g": 100, "tare_g": 0 });
    for (command, field, request) in [
        ("bed.add", "name", json!({ "name": "Upper\u{2028}bank" })),
        ("harvest.record", "bed_name", picked),
        ("tray.start", "name", laid),
    ] {
        world
            .refused(command, request)
            .of("invalid", field)
            .says("one line");
    }
}
