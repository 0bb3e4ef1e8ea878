//! Whatever lies in a file: no panic, no hang, and the journal stays as it is.

use proptest::prelude::*;
use serde_json::json;

use super::commands::World;
use super::season::{backed_up, ended, everything, outside, told};

fn cases() -> u32 {
    let asked = std::env::var("TRUGBOOK_FUZZ").ok();
    asked.and_then(|number| number.parse().ok()).unwrap_or(40)
}

#[test]
fn a_mangled_backup_changes_nothing_and_ends() {
    let (world, outside) = (World::new(), outside());
    told(&world);
    let file = backed_up(&world, outside.path(), "b.zip");
    let whole = std::fs::read(&file).unwrap();
    let other = World::new();
    let before = everything(&other);
    let cut = (
        any::<prop::sample::Index>(),
        prop::collection::vec(any::<u8>(), 0..40),
        0_usize..64,
    );
    let mut runner = proptest::test_runner::TestRunner::new(ProptestConfig::with_cases(cases()));
    let mangle = (prop::collection::vec(cut, 1..5), 0_u8..3);
    runner
        .run(&mangle, |(cuts, region)| {
            let mut bytes = whole.clone();
            for (index, insert, remove) in cuts {
                // Anywhere, in the journal, or in the directory at the end.
                let (from, to) = match region {
                    0 => (0, bytes.len()),
                    1 => (2000.min(bytes.len()), 60_000.min(bytes.len())),
                    _ => (bytes.len().saturating_sub(1500), bytes.len()),
                };
                let at = from + index.index((to - from).max(1));
                let end = (at + remove).min(bytes.len());
                bytes.splice(at..end, insert);
            }
            prop_assume!(bytes != whole);
            std::fs::write(&file, &bytes).unwrap();
            for command in ["restore.look", "restore.apply", "merge.apply"] {
                let card = ended(&other, &other.call(command, json!({ "file": file })));
                if command != "restore.look" {
                    prop_assert_eq!(&card["state"], "failed", "{}", card);
                }
                let said = card["failure"]["message"].as_str().unwrap_or_default();
                prop_assert!(!said.contains("error in the app"), "it panicked: {}", card);
            }
            Ok(())
        })
        .unwrap();
    assert_eq!(everything(&other).deeds, before.deeds);
}

#[test]
fn any_table_is_read_or_refused() {
    let (world, outside) = (World::new(), outside());
    let file = outside.path().join("t.csv");
    let mut runner =
        proptest::test_runner::TestRunner::new(ProptestConfig::with_cases(cases() * 4));
    let cell = prop_oneof![
        "[ -~]{0,12}",
        "\\PC{0,8}",
        Just("2024-06-01".to_owned()),
        Just("peppermint".to_owned()),
        Just("1e308".to_owned()),
        Just("-0".to_owned()),
        Just("\"".to_owned()),
        Just("\r".to_owned()),
    ];
    let line = prop::collection::vec(cell, 0..7);
    let lines = (
        prop::collection::vec(line, 0..8),
        prop_oneof![Just(","), Just(";"), Just("\t")],
    );
    runner
        .run(&lines, |(lines, mark)| {
            let mut text = ["picked_at", "herb", "part", "gross_g", "note"].join(mark);
            for line in lines {
                text.push('\n');
                text.push_str(&line.join(mark));
            }
            std::fs::write(&file, &text).unwrap();
            let before = checks::worked();
            let _ = api::call(
                world.app(),
                "import.look",
                &json!({ "file": file }).to_string(),
            );
            let took = checks::worked() - before;
            prop_assert!(took.as_secs() < 5, "it worked {took:?}");
            Ok(())
        })
        .unwrap();
}
