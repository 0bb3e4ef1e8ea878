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
        assert!(told.contains("110 g of peppermint"), "{told}");
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
    assert_eq!(here.app().faults().unwrap(), []);
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

/// What the core puts into a text that it has yet to say, as somebody outside could write it.
const FORGED: &str = "\u{fdd0}{\"id\":\"stopped\"}\u{fdd1}";

#[test]
fn what_looks_like_a_message_is_read_as_none_from_whichever_door_it_comes() {
    let (here, there, outside) = (World::new(), World::new(), outside());
    let bed = format!("Terrace {FORGED}");
    let typed = there.call("bed.add", json!({"name": bed, "note": FORGED}));
    assert_eq!(text(&typed, "/bed/name"), bed);
    let pour = json!({"kind": FORGED, "ml": 100});
    let request = json!({"pours": [pour], "plants": [], "temperature_c": 20});
    there.refused("mixture.describe", request).says(FORGED);

    let table = outside.path().join("past.csv");
    let lines = format!(
        "picked_at,herb,part,gross_g,bed\n2024-06-01,peppermint,leaf,400,\"Row {}\"\n",
        FORGED.replace('"', "\"\"")
    );
    std::fs::write(&table, lines).unwrap();
    let look = there.call("import.look", json!({ "file": table }));
    assert_eq!(text(&look, "/sample/0/bed"), format!("Row {FORGED}"));
    there.call("import.apply", json!({ "file": table }));

    let file = backed_up(&there, outside.path(), "there.zip");
    done(&here, "merge.apply", json!({ "file": file }));
    let restored = World::new();
    done(&restored, "restore.apply", json!({ "file": file }));
    for world in [&here, &restored] {
        let beds = world.call("bed.list", json!({}));
        let deeds = world.call("deed.list", json!({}));
        for name in [bed.clone(), format!("Row {FORGED}")] {
            let quoted = json!(name).to_string();
            assert!(beds.to_string().contains(&quoted), "{beds}");
        }
        assert!(
            deeds.to_string().contains(&json!(bed).to_string()[1..]),
            "{deeds}"
        );
    }
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
            .contains("gave 400 g more than it had"),
        "{merged}"
    );
}

#[test]
fn a_tray_that_one_phone_threw_away_and_the_other_took_down_is_no_dried_lot() {
    let (here, there, outside) = (World::new(), World::new(), outside());
    let picked = pick(&here, "gray.jpg", 420.0, "Terrace");
    let laid = json!({ "harvest": picked["id"], "name": "Sieve", "mass_g": 400, "tare_g": 0 });
    let tray = here.call("tray.start", laid)["tray"]["id"].clone();
    let file = backed_up(&here, outside.path(), "here.zip");
    done(&there, "restore.apply", json!({ "file": file }));
    for world in [&here, &there] {
        world.at("2026-07-20T09:00:00+02:00");
    }
    here.call("tray.bin", json!({ "id": tray, "reason": "mould" }));
    there.at("2026-07-20T10:00:00+02:00");
    there.call("tray.take_down", json!({ "tray": tray, "gross_g": 90 }));
    let [here_file, there_file] = [(&here, "h.zip"), (&there, "t.zip")]
        .map(|(world, name)| backed_up(world, outside.path(), name));
    done(&here, "merge.apply", json!({ "file": there_file }));
    done(&there, "merge.apply", json!({ "file": here_file }));
    for world in [&here, &there] {
        let page = world.call("tray.show", json!({ "id": tray }));
        assert_eq!(page["tray"]["state"], "lost");
        assert_eq!(page["tray"]["dried_left_g"], serde_json::Value::Null);
        let dried = world.call("lot.list", json!({ "state": "dried" }));
        assert_eq!(dried["lots"], json!([]));
        assert_eq!(world.app().faults().unwrap(), []);
    }
}

#[test]
fn a_phone_years_ahead_is_named_and_drags_nobody_along() {
    let (here, there, third, outside) = (World::new(), World::new(), World::new(), outside());
    told(&here);
    let harvest = here.call("harvest.list", json!({}))["harvests"][0]["id"].clone();
    let base = backed_up(&here, outside.path(), "base.zip");
    for world in [&there, &third] {
        done(world, "restore.apply", json!({ "file": base }));
    }
    // The second phone's clock runs five years ahead; it corrects one harvest and picks another.
    there.at("2031-05-03T09:00:00+02:00");
    let noted = |world: &World, note: &str| {
        world.call("harvest.correct", json!({ "id": harvest, "note": note }))
    };
    noted(&there, "by the phone ahead");
    pick(&there, "gray.jpg", 130.0, "Woodland edge");
    let file = backed_up(&there, outside.path(), "there.zip");
    for command in ["merge.look", "merge.apply"] {
        let report = done(&here, command, json!({ "file": file }));
        let faults = report["faults"].as_array().unwrap();
        assert_eq!(faults.len(), 1, "{report}");
        assert!(
            faults[0].as_str().unwrap().contains("dated 2031-05-03"),
            "{report}"
        );
    }
    here.at("2026-07-15T09:00:00+02:00");
    let latest = |world: &World| {
        let deeds = world.call("deed.list", json!({ "limit": 1 }));
        (
            text(&deeds, "/deeds/0/at").to_owned(),
            text(&deeds, "/deeds/0/text").to_owned(),
        )
    };
    // What has nothing to do with the phone ahead is written at its own time and heads the list.
    let bed = here.call("bed.add", json!({ "name": "New bed" }));
    assert_eq!(latest(&here).0, "2026-07-15T09:00:00+02:00");
    here.call("deed.undo", json!({ "deed": bed["deed"] }));
    assert_eq!(latest(&here).0, "2026-07-15T09:00:00+02:00");
    // What builds on it comes after it, so that a correction still corrects.
    let note = |world: &World| {
        let page = world.call("harvest.show", json!({ "id": harvest }));
        text(&page, "/harvest/note").to_owned()
    };
    assert_eq!(note(&here), "by the phone ahead");
    let correction = noted(&here, "put right");
    assert_eq!(note(&here), "put right");
    assert_eq!(latest(&here).0, "2031-05-03T09:00:00+02:00");
    here.call("deed.undo", json!({ "deed": correction["deed"] }));
    assert_eq!(note(&here), "by the phone ahead");

    // A third phone renames a bed later than this one did; its word stands, as this phone was
    // not lifted above it.
    let named = |world: &World, name: &str| {
        let beds = world.call("bed.list", json!({}));
        let bed = beds["beds"].as_array().unwrap().iter();
        let bed = bed
            .min_by_key(|bed| bed["id"].as_str().unwrap().to_owned())
            .unwrap();
        let request = json!({ "id": bed["id"], "name": name, "wild": false });
        world.call("bed.correct", request);
        bed["id"].clone()
    };
    let bed = named(&here, "Named here");
    third.at("2026-07-16T09:00:00+02:00");
    assert_eq!(named(&third, "Named later"), bed);
    let file = backed_up(&third, outside.path(), "third.zip");
    done(&here, "merge.apply", json!({ "file": file }));
    let beds = here.call("bed.list", json!({}));
    let mut beds = beds["beds"].as_array().unwrap().iter();
    let found = beds.find(|found| found["id"] == bed).unwrap();
    assert_eq!(found["name"], "Named later");
    assert_eq!(here.app().faults().unwrap(), []);
}

#[test]
fn two_phones_that_photograph_one_jar_keep_both_photos_through_merge_and_restore() {
    let (here, there, outside) = (World::new(), World::new(), outside());
    let dry = json!({"low": 0, "value": 0, "high": 0});
    let plant = json!({"herb": "peppermint", "part": "leaf", "state": "dried", "mass_g": 40,
        "moisture_wet_percent": dry});
    let composition = json!({"preparation": "tincture-dried", "plants": [plant], "ratio_ml_per_g": 5,
        "stock": [{"kind": "spirit", "strength_percent_vol": 95}, {"kind": "water"}],
        "strength_percent_vol": 50});
    let jar = here.call("jar.pour", json!({ "composition": composition }))["jar"]["id"].clone();
    let file = backed_up(&here, outside.path(), "here.zip");
    done(&there, "restore.apply", json!({ "file": file }));
    let photographed = |world: &World, sample: &str, at: &str| {
        world.at(at);
        let hash = world.photo(sample)["photo"]["hash"].clone();
        let request = json!({"kind": "jar", "id": jar, "photos": [hash]});
        let id = world.call("portrait.record", request)["portraits"][0]["id"].clone();
        world.call("portrait.correct", json!({"id": id, "shown": true}));
        hash
    };
    let first = photographed(&here, "gray.jpg", "2026-07-15T09:00:00+02:00");
    let second = photographed(&there, "no_exif.jpg", "2026-07-16T09:00:00+02:00");
    let file = backed_up(&there, outside.path(), "there.zip");
    let merged = done(&here, "merge.apply", json!({ "file": file }));
    assert_eq!(number(&merged, "/photos_new"), 1.0);
    assert_eq!(merged["faults"], json!([]));
    let file = backed_up(&here, outside.path(), "both.zip");
    let restored = World::new();
    done(&restored, "restore.apply", json!({ "file": file }));
    for world in [&here, &restored] {
        let page = world.call("jar.show", json!({ "id": jar }));
        let portraits = page["jar"]["portraits"].as_array().unwrap();
        let told: Vec<_> = portraits
            .iter()
            .map(|it| (&it["hash"], &it["shown"]))
            .collect();
        let (no, yes) = (json!(false), json!(true));
        assert_eq!(
            told,
            [(&first, &no), (&second, &yes)],
            "the later one stands"
        );
        for hash in [&first, &second] {
            let original = world.app().original(hash.as_str().unwrap()).unwrap();
            assert!(original.is_some(), "its bytes came along");
        }
    }
    assert_eq!(everything(&restored).tables, everything(&here).tables);
}
