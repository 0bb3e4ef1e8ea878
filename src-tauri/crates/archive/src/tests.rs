use std::io::Write as _;
use std::path::{Path, PathBuf};
use std::sync::Arc;

use disk::{Disk, Fault, Faults};
use proptest::prelude::*;
use serde_json::json;
use tempfile::TempDir;
use zip::write::SimpleFileOptions;

use super::*;

fn packed(disk: &Disk, target: &Path, passphrase: Option<&str>) -> Result<u64, Failure> {
    let progress = Progress::default();
    let mut packer = Packer::begin(disk, target, passphrase, &progress)?;
    packer.add("journal.trugbook", 5000, &[7_u8; 5000][..])?;
    packer.add("photos/ab/abcd.jpg", 300, &[9_u8; 300][..])?;
    packer.finish("trugbook backup", json!({ "harvests": 3 }))
}

fn sample(passphrase: Option<&str>) -> (TempDir, PathBuf, Vec<u8>) {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("backup.zip");
    let size = packed(&Disk::default(), &path, passphrase).unwrap();
    let bytes = std::fs::read(&path).unwrap();
    assert_eq!(bytes.len() as u64, size);
    (folder, path, bytes)
}

fn checked(path: &Path, passphrase: Option<&str>) -> Result<Damage, Failure> {
    Unpacker::open(path, passphrase)?.verify(&Progress::default())
}

#[test]
fn what_goes_in_comes_out_and_the_file_is_the_same_every_time() {
    let (_folder, path, bytes) = sample(None);
    assert_eq!(
        sample(None).2,
        bytes,
        "the same content makes the same file"
    );
    let mut file = Unpacker::open(&path, None).unwrap();
    assert_eq!(file.manifest().about, json!({ "harvests": 3 }));
    assert_eq!(file.manifest().entries.len(), 2);
    assert!(file.verify(&Progress::default()).unwrap().is_none());
    let mut out = Vec::new();
    file.copy("photos/ab/abcd.jpg", &Progress::default(), |piece| {
        out.extend_from_slice(piece);
        Ok(())
    })
    .unwrap();
    assert_eq!(out, [9; 300]);
}

#[test]
fn any_flipped_bit_is_found_and_what_it_hit_is_named() {
    let (folder, _, bytes) = sample(None);
    let path = folder.path().join("flipped.zip");
    let (mut journal, mut photo, mut around, mut refused) = (0, 0, 0, 0);
    for at in 0..bytes.len() {
        // One bit of every byte; inside the long run of the journal every 50th byte will do.
        if (200..4900).contains(&at) && at % 50 != 0 {
            continue;
        }
        let mut flipped = bytes.clone();
        flipped[at] ^= 1 << (at % 8);
        std::fs::write(&path, &flipped).unwrap();
        match checked(&path, None) {
            Ok(damage) => {
                assert!(!damage.is_none(), "the flip at {at} was not found");
                match damage.entries.as_slice() {
                    [name] if name == "journal.trugbook" => journal += 1,
                    [name] if name.starts_with("photos/") => photo += 1,
                    [] => around += 1,
                    both => panic!("one flip hit {both:?}"),
                }
            }
            Err(_) => refused += 1,
        }
    }
    assert!(journal > 90, "{journal} flips were in the journal");
    assert!(photo >= 300, "{photo} flips were in the photo");
    assert!(
        around > 50 && refused > 50,
        "{around} around, {refused} refused at once"
    );
}

#[test]
fn a_sealed_file_opens_with_its_passphrase_alone_and_shows_every_change() {
    let (folder, path, bytes) = sample(Some("eleven trugs"));
    assert!(bytes.starts_with(b"age-encryption.org/v1\n"));
    assert!(checked(&path, Some("eleven trugs")).unwrap().is_none());
    assert!(matches!(checked(&path, None), Err(Failure::Sealed)));
    assert!(matches!(
        checked(&path, Some("ten trugs")),
        Err(Failure::WrongPassphrase)
    ));
    let other = folder.path().join("other.age");
    for at in [30, 100, 150, bytes.len() / 2, bytes.len() - 1] {
        let mut flipped = bytes.clone();
        flipped[at] ^= 4;
        std::fs::write(&other, &flipped).unwrap();
        assert!(
            !matches!(checked(&other, Some("eleven trugs")), Ok(damage) if damage.is_none()),
            "the flip at {at} was not found"
        );
    }
}

/// A ZIP of another making with our comment at its end.
fn forged(path: &Path, entries: &[(&str, &[u8])], manifest: Option<serde_json::Value>) {
    let mut zip = zip::ZipWriter::new(std::fs::File::create(path).unwrap());
    let plain = SimpleFileOptions::default().compression_method(zip::CompressionMethod::Stored);
    for (name, bytes) in entries {
        zip.start_file(*name, plain).unwrap();
        zip.write_all(bytes).unwrap();
    }
    let listed: Vec<_> = entries
        .iter()
        .map(|(name, bytes)| {
            json!({ "name": name, "bytes": bytes.len(), "blake3": blake3::hash(bytes).to_hex().as_str() })
        })
        .collect();
    let manifest = manifest.unwrap_or_else(
        || json!({ "format": 1, "kind": "trugbook backup", "about": {}, "entries": listed }),
    );
    zip.start_file("manifest.json", plain).unwrap();
    zip.write_all(manifest.to_string().as_bytes()).unwrap();
    zip.set_comment(format!("blake3 {}", "0".repeat(64)))
        .unwrap();
    zip.finish().unwrap();
}

#[test]
fn names_that_lead_out_of_a_folder_are_refused_before_anything_is_read() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("forged.zip");
    for name in [
        "../evil",
        "/etc/evil",
        "a/../../evil",
        "C:\\evil",
        "photos/..\\evil",
    ] {
        forged(&path, &[(name, b"x")], None);
        assert!(
            matches!(Unpacker::open(&path, None), Err(Failure::Foreign(_))),
            "{name}"
        );
    }
    forged(&path, &[("plain", b"x")], None);
    let damage = checked(&path, None).unwrap();
    assert!(
        damage.around,
        "a forged file of good names lacks the witness"
    );
}

#[test]
fn entries_that_are_not_listed_listed_twice_or_of_a_newer_layout_are_refused() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("forged.zip");
    let none = json!({ "format": 1, "kind": "k", "about": {}, "entries": [] });
    forged(&path, &[("a", b"x")], Some(none));
    assert!(matches!(
        Unpacker::open(&path, None),
        Err(Failure::Foreign(_))
    ));
    let hash = blake3::hash(b"x").to_hex().to_string();
    let one = json!({ "name": "a", "bytes": 1, "blake3": hash });
    let twice = json!({ "format": 1, "kind": "k", "about": {}, "entries": [one, one] });
    forged(&path, &[("a", b"x")], Some(twice));
    assert!(matches!(
        Unpacker::open(&path, None),
        Err(Failure::Foreign(_))
    ));
    let newer = json!({ "format": 2, "tiles": [] });
    forged(&path, &[("a", b"x")], Some(newer));
    assert!(matches!(Unpacker::open(&path, None), Err(Failure::Newer)));
    std::fs::write(&path, b"not a zip at all").unwrap();
    assert!(matches!(Unpacker::open(&path, None), Err(Failure::NotOurs)));
}

#[test]
fn a_disk_that_fails_at_any_call_leaves_the_file_that_was_there() {
    let counting = Arc::new(Faults::default());
    let folder = tempfile::tempdir().unwrap();
    packed(
        &Disk::failing(counting.clone()),
        &folder.path().join("b.zip"),
        None,
    )
    .unwrap();
    for fault in [
        Fault::InputOutput,
        Fault::Full,
        Fault::Short,
        Fault::ShortThenFull,
    ] {
        for nth in 1..=counting.calls() {
            let folder = tempfile::tempdir().unwrap();
            let path = folder.path().join("b.zip");
            std::fs::write(&path, b"the backup of last week").unwrap();
            let disk = Disk::failing(Arc::new(Faults::at(nth, fault)));
            match packed(&disk, &path, None) {
                Ok(_) => assert!(
                    checked(&path, None).unwrap().is_none(),
                    "{fault:?} at {nth}"
                ),
                Err(why) => {
                    // A rename whose folder could not be synced may have happened: old or new.
                    let old = std::fs::read(&path).unwrap() == b"the backup of last week";
                    assert!(
                        old || checked(&path, None).unwrap().is_none(),
                        "{fault:?} at {nth}: {why}"
                    );
                    if fault != Fault::InputOutput {
                        assert!(
                            matches!(why, Failure::StorageFull),
                            "{fault:?} at {nth}: {why}"
                        );
                    }
                }
            }
            let names: Vec<_> = std::fs::read_dir(folder.path()).unwrap().collect();
            assert_eq!(names.len(), 1, "{fault:?} at {nth} left a part behind");
        }
    }
}

#[test]
fn a_stopped_backup_leaves_nothing() {
    let folder = tempfile::tempdir().unwrap();
    let progress = Progress::default();
    let (disk, path) = (Disk::default(), folder.path().join("b.zip"));
    let mut packer = Packer::begin(&disk, &path, None, &progress).unwrap();
    packer.add("a", 1, &b"x"[..]).unwrap();
    progress.cancel();
    assert!(matches!(
        packer.add("b", 1, &b"x"[..]),
        Err(Failure::Cancelled)
    ));
    drop(packer);
    assert_eq!(std::fs::read_dir(folder.path()).unwrap().count(), 0);
}

#[test]
fn a_file_that_the_disk_wrote_otherwise_is_not_given_its_name() {
    let counting = Arc::new(Faults::default());
    let folder = tempfile::tempdir().unwrap();
    let target = folder.path().join("b.zip");
    packed(&Disk::failing(counting.clone()), &target, None).unwrap();
    let mut found = 0;
    for nth in 1..=counting.calls() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("b.zip");
        std::fs::write(&path, b"the backup of last week").unwrap();
        let disk = Disk::failing(Arc::new(Faults::at(nth, Fault::Altered)));
        match packed(&disk, &path, None) {
            // No write, so nothing was altered.
            Ok(_) => assert!(checked(&path, None).unwrap().is_none(), "call {nth}"),
            Err(why) => {
                assert!(!matches!(why, Failure::Disk(_)), "call {nth}: {why}");
                assert_eq!(std::fs::read(&path).unwrap(), b"the backup of last week");
                found += 1;
            }
        }
        assert_eq!(std::fs::read_dir(folder.path()).unwrap().count(), 1);
    }
    assert!(found > 0, "no write was altered");
}

#[test]
fn what_is_packed_can_be_unpacked_up_to_the_last_entry_that_is_taken() {
    let folder = tempfile::tempdir().unwrap();
    let (disk, progress) = (Disk::default(), Progress::default());
    let path = folder.path().join("many.zip");
    let mut packer = Packer::begin(&disk, &path, None, &progress).unwrap();
    // The manifest is one more.
    for number in 1..MOST_ENTRIES {
        let hash = blake3::hash(&number.to_le_bytes()).to_hex();
        let name = format!("photos/{}/{hash}.jpg", &hash[..2]);
        packer.add(&name, 0, std::io::empty()).unwrap();
    }
    assert!(matches!(
        packer.add("one-more", 0, std::io::empty()),
        Err(Failure::TooMuch(_))
    ));
    packer.finish("trugbook backup", json!({})).unwrap();
    let file = Unpacker::open(&path, None).unwrap();
    assert_eq!(file.manifest().entries.len() as u64 + 1, MOST_ENTRIES);
}

#[test]
fn what_a_reader_would_refuse_is_not_written() {
    let folder = tempfile::tempdir().unwrap();
    let (disk, progress) = (Disk::default(), Progress::default());
    let path = folder.path().join("about.zip");
    let packer = Packer::begin(&disk, &path, None, &progress).unwrap();
    let about = json!({ "said": "x".repeat(70_000) });
    assert!(matches!(
        packer.finish("trugbook backup", about),
        Err(Failure::TooMuch(_))
    ));
    assert_eq!(std::fs::read_dir(folder.path()).unwrap().count(), 0);
}

#[test]
fn a_passphrase_opens_its_file_however_the_keyboard_writes_it() {
    // "Mädesüß" composed, and with its marks apart.
    let (composed, apart) = ("M\u{e4}des\u{fc}\u{df}", "Ma\u{308}desu\u{308}\u{df}");
    for (sealed, typed) in [(composed, apart), (apart, composed), (apart, apart)] {
        let (_folder, path, _) = sample(Some(sealed));
        assert!(checked(&path, Some(typed)).unwrap().is_none());
    }
    // A file that was sealed with the passphrase just as it came.
    let (folder, path, plain) = sample(None);
    for (sealed, typed) in [(apart, composed), (composed, apart)] {
        let recipient = age::scrypt::Recipient::new(sealed.to_owned().into());
        let mut recipient = recipient;
        recipient.set_work_factor(10);
        let file = std::fs::File::create(folder.path().join("old.age")).unwrap();
        let one = std::iter::once(&recipient as &dyn age::Recipient);
        let encryptor = age::Encryptor::with_recipients(one).unwrap();
        let mut writer = encryptor.wrap_output(file).unwrap();
        writer.write_all(&plain).unwrap();
        writer.finish().unwrap();
        let found = checked(&folder.path().join("old.age"), Some(typed));
        assert!(found.unwrap().is_none());
    }
    assert!(path.is_file());
}

#[test]
fn a_sealed_file_that_the_library_reads_is_read_alike() {
    use std::io::{Read as _, Seek as _, SeekFrom};
    let (_folder, path, _) = sample(None);
    let folder = tempfile::tempdir().unwrap();
    // Of every length around the ends of chunks.
    for length in [0, 1, 65_535, 65_536, 65_537, 131_072, 200_000] {
        let bytes: Vec<u8> = (0..length).map(|at| (at % 251) as u8).collect();
        let sealed = folder.path().join("s.age");
        let mut recipient = age::scrypt::Recipient::new("eleven trugs".to_owned().into());
        recipient.set_work_factor(4);
        let one = std::iter::once(&recipient as &dyn age::Recipient);
        let encryptor = age::Encryptor::with_recipients(one).unwrap();
        let file = std::fs::File::create(&sealed).unwrap();
        let mut writer = encryptor.wrap_output(file).unwrap();
        writer.write_all(&bytes).unwrap();
        writer.finish().unwrap();
        let file = std::fs::File::open(&sealed).unwrap();
        let mut input = crate::sealed::Input::open(file, Some("eleven trugs")).unwrap();
        let mut found = Vec::new();
        input.read_to_end(&mut found).unwrap();
        assert!(found == bytes, "{length} bytes");
        assert_eq!(input.seek(SeekFrom::End(0)).unwrap(), length as u64);
        input.seek(SeekFrom::Start(length as u64 / 2)).unwrap();
        found.clear();
        input.read_to_end(&mut found).unwrap();
        assert!(found == bytes[length / 2..], "the second half of {length}");
        assert!(!input.is_torn());
    }
    assert!(path.is_file());
}

#[test]
fn a_header_of_a_megabyte_is_refused_at_once() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("long.age");
    let mut bytes = b"age-encryption.org/v1\n".to_vec();
    while bytes.len() < 1_000_000 {
        bytes.extend(b"-> X25519 aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa\nAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA\n");
    }
    std::fs::write(&path, &bytes).unwrap();
    assert!(matches!(
        Unpacker::open(&path, Some("eleven trugs")),
        Err(Failure::Damaged(_))
    ));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(
        std::env::var("TRUGBOOK_FUZZ").ok().and_then(|n| n.parse().ok()).unwrap_or(400)
    ))]

    /// Cut, spliced and overwritten files are refused or told to be damaged: no panic, no hang.
    #[test]
    fn a_mangled_file_is_never_taken_for_whole(
        cuts in prop::collection::vec((any::<prop::sample::Index>(), prop::collection::vec(any::<u8>(), 0..24), 0_usize..40), 1..6),
        near_the_end in any::<bool>(),
    ) {
        let (folder, _, bytes) = sample(None);
        let mut mangled = bytes.clone();
        for (index, insert, remove) in cuts {
            let from = if near_the_end { mangled.len().saturating_sub(900) } else { 0 };
            let at = from + index.index(mangled.len() - from);
            let end = (at + remove).min(mangled.len());
            mangled.splice(at..end, insert);
            if mangled.is_empty() { mangled.push(0); }
        }
        prop_assume!(mangled != bytes);
        let path = folder.path().join("mangled.zip");
        std::fs::write(&path, &mangled).unwrap();
        if let Ok(damage) = checked(&path, None) {
            prop_assert!(!damage.is_none());
        }
    }
}
