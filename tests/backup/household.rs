//! Two phones become one household.

use serde_json::json;

use super::commands::{World, number, text};
use super::season::{backed_up, done, everything, outside, pick, told};

#[test]
fn what_a_second_phone_wrote_comes_in_and_is_told() {
    let (here, there, outside) = (World::new(), World::new(), outside());
    told(&here);
    let file = backed_up(&here, outside.path(), "here.zip");
    done(&there, "restore.apply", json!({ "file": file }));
    there.at("2026-07-15T09:00:00+02:00");
    let picked = pick(&there, "gray.jpg", 130.0, "Woodland edge");
    let file = backed_up(&there, outside.path(), "there.zip");

    let before = everything(&here);
    let look = done(&here, "merge.look", json!({ "file": file }));
    assert_eq!(everything(&here), before, "a look changes nothing");
    let merged = done(&here, "merge.apply", json!({ "file": file }));
    for report in [&look, &merged] {
        assert_eq!(number(report, "/deeds"), 2.0, "{report}");
        assert_eq!(number(report, "/photos_new"), 1.0);
        let told = text(report, "/told/1");
        assert!(told.contains("110 g of Peppermint"), "{told}");
        assert_eq!(report["faults"], json!([]));
        let harvests = report["rows"]
            .as_array()
            .unwrap()
            .iter()
            .find(|row| row["noun"] == "harvest");
        assert_eq!(harvests.unwrap()["new"], 1, "{report}");
    }
    let page = here.call("harvest.show", json!({ "id": picked["id"] }));
    assert_eq!(number(&page, "/harvest/fresh_mass_g"), 110.0);
    assert_eq!(here.app().faults().unwrap(), Vec::<String>::new());
    let again = done(&here, "merge.apply", json!({ "file": file }));
    assert_eq!(
        number(&again, "/deeds"),
        0.0,
        "a second time brings nothing"
    );
    here.call("restore.undo", json!({}));
    assert_eq!(
        everything(&here).tables,
        before.tables,
        "a merge is taken back like a restore"
    );
}

#[test]
fn a_lot_that_both_phones_used_up_is_named() {
    let (here, there, outside) = (World::new(), World::new(), outside());
    let picked = pick(&here, "gray.jpg", 420.0, "Terrace");
    let file = backed_up(&here, outside.path(), "here.zip");
    done(&there, "restore.apply", json!({ "file": file }));
    for world in [&here, &there] {
        world.call(
            "tray.start",
            json!({ "harvest": picked["id"], "name": "Sieve", "mass_g": 400, "tare_g": 0 }),
        );
    }
    let file = backed_up(&there, outside.path(), "there.zip");
    let merged = done(&here, "merge.apply", json!({ "file": file }));
    let faults = merged["faults"].as_array().unwrap();
    assert_eq!(faults.len(), 1, "{merged}");
    assert!(
        faults[0]
            .as_str()
            .unwrap()
            .contains("has given 400 g more than came in"),
        "{merged}"
    );
}
