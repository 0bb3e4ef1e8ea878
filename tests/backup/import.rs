//! Harvests of past years from a spreadsheet.

use std::path::PathBuf;

use serde_json::{Value, json};

use super::commands::{World, number, text};
use super::season::{done, everything, outside, told};

fn table(folder: &tempfile::TempDir, content: &str) -> PathBuf {
    let file = folder.path().join("past.csv");
    std::fs::write(&file, content).unwrap();
    file
}

fn fault(look: &Value, number: usize) -> (u64, String, String) {
    let fault = &look["faults"][number];
    let said = |name: &str| fault[name].as_str().unwrap().to_owned();
    (
        fault["line"].as_u64().unwrap(),
        said("column"),
        said("message"),
    )
}

#[test]
fn a_table_of_a_past_year_is_shown_recorded_at_once_and_taken_back_at_once() {
    let (world, outside) = (World::new(), outside());
    let file = table(
        &outside,
        "picked_at,herb,part,gross_g,tare_g,bed,surface,weather\n\
         2024-06-01,Peppermint,leaf,412.5,12.5,Lower bank,dew,fair\n\
         2024-06-08 10:30,peppermint,leaf,300,,lower bank,,\n\n\
         2024-06-08 10:30,peppermint,leaf,300,,lower bank,,twice\n",
    );
    let look = world.call("import.look", json!({ "file": file }));
    assert_eq!(
        (number(&look, "/new"), number(&look, "/known")),
        (2.0, 1.0),
        "{look}"
    );
    assert_eq!(look["ignored_columns"], json!(["weather"]));
    assert_eq!(number(&look, "/sample/0/fresh_mass_g"), 400.0);
    assert_eq!(
        text(&look, "/sample/0/picked_at"),
        "2024-06-01T12:00:00+02:00"
    );
    assert_eq!(
        world.call("journal.about", json!({}))["harvests"],
        0,
        "a look changes nothing"
    );
    let done = world.call("import.apply", json!({ "file": file }));
    assert_eq!(number(&done, "/recorded"), 2.0);
    let list = world.call("harvest.list", json!({}));
    assert_eq!(list["harvests"].as_array().unwrap().len(), 2);
    assert_eq!(
        world.call("bed.list", json!({}))["beds"]
            .as_array()
            .unwrap()
            .len(),
        1,
        "one bed"
    );
    world
        .refused("import.apply", json!({ "file": file }))
        .says("already");
    world.call("deed.undo", json!({ "deed": done["deed"] }));
    assert_eq!(world.call("journal.about", json!({}))["harvests"], 0);
}

#[test]
fn every_faulty_line_is_named_and_then_nothing_is_recorded() {
    let (world, outside) = (World::new(), outside());
    let file = table(
        &outside,
        "picked_at;herb;part;gross_g;surface\n\
         2024-06-01;Peppermint;leaf;412,5;dry\n\
         01.06.2024;Peppermint;leaf;1;dry\n\
         2024-06-01;Unobtainium;leaf;1;dry\n\
         2024-06-01;Peppermint;leaf;heavy;dry\n\
         2024-06-01;Peppermint;leaf;-4;dry\n\
         2024-06-01;Peppermint;;4;dry\n\
         2031-06-01;Peppermint;leaf;4;dry\n\
         2024-06-01;Peppermint;leaf;4;soggy\n\
         2024-06-01;Peppermint\n",
    );
    let look = world.call("import.look", json!({ "file": file }));
    assert_eq!(
        (number(&look, "/new"), number(&look, "/fault_count")),
        (1.0, 8.0),
        "{look}"
    );
    let expected = [
        (3, "picked_at"),
        (4, "herb"),
        (5, "gross_g"),
        (6, "gross_g"),
        (7, "part"),
        (8, "picked_at"),
        (9, "surface"),
        (10, ""),
    ];
    for (number, (line, column)) in expected.into_iter().enumerate() {
        let fault = fault(&look, number);
        assert_eq!((fault.0, fault.1.as_str()), (line, column), "{}", fault.2);
        assert!(fault.2.ends_with('.'), "{}", fault.2);
    }
    world
        .refused("import.apply", json!({ "file": file }))
        .of("invalid", "file")
        .says("Line 3");
    let short = "picked_at,herb,part,gross_g\n2024-06-01,Peppermint\n";
    let file = table(&outside, short);
    world
        .refused("import.apply", json!({ "file": file }))
        .says("Nothing was imported. Line 2: The line has 2 cells");
    assert_eq!(world.call("journal.about", json!({}))["harvests"], 0);
    let file = table(&outside, "date,plant\n2024-06-01,Mint\n");
    world
        .refused("import.look", json!({ "file": file }))
        .of("invalid", "file")
        .says("picked_at");
    std::fs::write(outside.path().join("past.csv"), [0xff, 0xfe, 0, 1]).unwrap();
    world
        .refused("import.look", json!({ "file": file }))
        .of("invalid", "file")
        .says("UTF-8");
}

#[test]
fn what_was_exported_is_imported_again_by_an_empty_journal_and_known_to_its_own() {
    let (world, outside) = (World::new(), outside());
    told(&world);
    let zip = outside.path().join("e.zip");
    done(&world, "export.make", json!({ "file": zip }));
    let mut zip = archive::Unpacker::open(&zip, None).unwrap();
    let mut bytes = Vec::new();
    zip.copy("harvests.csv", &archive::Progress::default(), |piece| {
        bytes.extend_from_slice(piece);
        Ok(())
    })
    .unwrap();
    let file = table(&outside, std::str::from_utf8(&bytes).unwrap());
    let look = world.call("import.look", json!({ "file": file }));
    assert_eq!(
        (number(&look, "/new"), number(&look, "/known")),
        (0.0, 3.0),
        "{look}"
    );
    let other = World::new();
    let done = other.call("import.apply", json!({ "file": file }));
    assert_eq!(number(&done, "/recorded"), 3.0);
    let codes = |world: &World| -> Vec<String> {
        let tables = everything(world).tables;
        tables
            .into_iter()
            .filter(|line| line.starts_with("bed |") || line.starts_with("herb |"))
            .collect()
    };
    assert_eq!(
        codes(&other).len(),
        codes(&world).len(),
        "the beds came along by name"
    );
    let [a, b] = [&world, &other].map(|world| {
        let list = world.call("harvest.list", json!({}));
        let rows = list["harvests"].as_array().unwrap().iter().map(|row| {
            (
                row["id"].clone(),
                row["code"].clone(),
                row["fresh_mass_g"].clone(),
                row["picked_at"].clone(),
            )
        });
        rows.collect::<Vec<_>>()
    });
    assert_eq!(a, b, "ids, codes, weights and times are the same");
}
