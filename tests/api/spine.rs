//! From the bed to the jar, as a maker does it over a summer.

use serde_json::json;

use crate::world::{World, number, text};

#[test]
fn a_jar_on_the_shelf_leads_back_to_its_bed_and_the_ledger_balances() {
    let world = World::new();
    let photo = world.photo("place_and_zone.jpg")["photo"]["hash"].clone();
    let picked = json!({"herb": "lemon balm", "part": "leaf", "gross_g": 850, "tare_g": 50,
        "surface": "dry", "bed_name": "Lower bank", "photos": [photo]});
    let harvest = world.harvest("harvest.record", picked)["harvest"].clone();
    assert_eq!(text(&harvest, "/time_from"), "photo");
    let harvest_id = harvest["id"].clone();

    // 500 g onto the rack, 300 g stay fresh.
    let laid = json!({"harvest": harvest_id, "mass_g": 500, "tare_g": 200});
    let tray_id = world.call("tray.start", laid)["tray"]["id"].clone();
    for (day, gross) in [(15, 480), (16, 350), (17, 312)] {
        world.at(&format!("2026-07-{day}T09:00:00+02:00"));
        world.call("tray.weigh", json!({"tray": tray_id, "gross_g": gross}));
    }
    world.at("2026-07-18T09:00:00+02:00");
    let down = world.call("tray.take_down", json!({"tray": tray_id, "gross_g": 305}));
    assert_eq!(number(&down, "/tray/dried_left_g"), 105.0);

    let lots = world.call("lot.list", json!({"herb": "lemon balm"}));
    assert_eq!(
        lots["lots"].as_array().unwrap().len(),
        2,
        "one fresh, one dried"
    );
    let dried = json!({"kind": "tray", "id": tray_id});
    assert!(
        lots["lots"]
            .as_array()
            .unwrap()
            .iter()
            .any(|lot| lot["lot"] == dried)
    );

    let composition = json!({"preparation": "tincture",
        "plants": [{"lot": dried, "herb": "lemon-balm", "part": "leaf", "state": "dried", "mass_g": 80}],
        "stock": [{"kind": "spirit", "strength_percent_vol": 95}, {"kind": "water"}],
        "jar_ml": 600});
    let proposal = world.call("jar.compose", composition.clone());
    assert_eq!(text(&proposal, "/keeping/verdict"), "keeps");
    let poured = world.call("jar.pour", json!({"composition": composition}));

    let world = world.reopened();
    let jars = world.call("jar.list", json!({}));
    assert_eq!(jars["jars"][0]["id"], poured["jar"]["id"]);
    let jar = world.call("jar.show", json!({"id": poured["jar"]["id"]}))["jar"].clone();
    assert_eq!(jar["pours"], proposal["pours"]);
    let plant = &jar["plants"][0];
    assert_eq!(plant["harvest"], harvest_id);
    assert_eq!(text(plant, "/bed"), "Lower bank");
    assert_eq!(
        plant["code"], down["tray"]["code"],
        "what is written on the bag"
    );

    let page = world.call("harvest.show", json!({"id": harvest_id}))["harvest"].clone();
    assert_eq!(number(&page, "/fresh_left_g"), 300.0);
    assert_eq!(number(&page, "/trays/0/dried_left_g"), 25.0);
    assert_eq!(page["jars"][0]["jar"], jar["id"]);
    assert_eq!(number(&page, "/jars/0/mass_g"), 80.0);
    assert_eq!(page["photos"][0]["hash"], photo);
    assert!(world.app().faults().unwrap().is_empty());
}
