//! Elderberries are poisonous raw and food cooked: from the bush through the pot into syrup and shrub.

use serde_json::{Value, json};

use crate::world::{World, number, text};

const PREPARATIONS: [&str; 6] = ["syrup", "shrub", "oxymel", "cordial", "elixir", "vinegar"];

struct Berries {
    world: World,
    bed: String,
    harvest: String,
}

fn berries() -> Berries {
    let world = World::new();
    let bed = world.call("bed.add", json!({"name": "The old hedge"}))["bed"]["id"].clone();
    let request = json!({"herb": "elder-berry", "part": "berry", "gross_g": 1000.0, "bed": bed,
        "surface": "dry", "look_alike_ruled_out": true});
    let harvest = world.call("harvest.record", request)["harvest"]["id"].clone();
    Berries {
        bed: bed.as_str().unwrap().to_owned(),
        harvest: harvest.as_str().unwrap().to_owned(),
        world,
    }
}

impl Berries {
    fn lot(&self, state: &str) -> Value {
        let lots = self.world.call("lot.list", json!({}))["lots"].clone();
        let found = lots
            .as_array()
            .unwrap()
            .iter()
            .find(|line| line["state"] == state);
        found
            .unwrap_or_else(|| panic!("no {state} lot in {lots}"))
            .clone()
    }

    fn dried(&self) -> Value {
        let request = json!({"harvest": self.harvest, "mass_g": 500.0});
        let tray = self.world.call("tray.start", request)["tray"]["id"].clone();
        self.world
            .call("tray.take_down", json!({"tray": tray, "gross_g": 110.0}));
        self.lot("dried")["lot"].clone()
    }

    fn cook(&self, lot: &Value, mass_g: f64, water_ml: f64, out_g: f64) -> Value {
        let request = json!({"lot": lot, "mass_g": mass_g, "water_ml": water_ml, "tare_g": 800.0,
            "gross_g": 800.0 + out_g});
        self.world.call("lot.cook", request)
    }

    fn plant(&self, lot: Option<&Value>, state: &str, mass_g: f64) -> Value {
        let mut plant =
            json!({"herb": "elder-berry", "part": "berry", "state": state, "mass_g": mass_g});
        if let Some(lot) = lot {
            plant["lot"] = lot.clone();
        }
        plant
    }

    fn composed(&self, preparation: &str, plant: Value) -> Value {
        let composition = json!({"preparation": preparation, "plants": [plant], "stock": []});
        self.world.call("jar.compose", composition)
    }
}

#[test]
fn cooked_elderberries_pass_and_raw_ones_stop_in_every_preparation_alike() {
    let berries = berries();
    for preparation in PREPARATIONS {
        let cooked = berries.composed(preparation, berries.plant(None, "cooked", 200.0));
        assert_ne!(
            text(&cooked, "/keeping/verdict"),
            "do not make",
            "{preparation}"
        );
        assert!(
            cooked["cautions"]
                .as_array()
                .unwrap()
                .iter()
                .all(|note| note["code"] != "cook-first"
                    && !(note["code"] == "handling" && note["severity"] == "stop"))
        );
    }
    // Whatever takes raw berries at all, double maceration and decoction too.
    let all = berries.world.call("preparation.list", json!({}))["preparations"].clone();
    let mut tried = 0;
    for preparation in all.as_array().unwrap() {
        for state in ["fresh", "dried"] {
            if preparation[state] == true {
                tried += 1;
                let key = preparation["key"].as_str().unwrap();
                let raw = berries.composed(key, berries.plant(None, state, 200.0));
                assert_eq!(
                    text(&raw, "/keeping/verdict"),
                    "do not make",
                    "{key} of {state} berries"
                );
            }
        }
    }
    assert!(tried >= 15, "{tried} were tried");
    for state in ["fresh", "dried", "cooked"] {
        let request = json!({"herb": "elder-berry", "part": "berry", "state": state, "mass_g": 200.0,
            "purpose": "food"});
        let advice = berries.world.call("jar.advise", request)["candidates"].clone();
        let made = advice
            .as_array()
            .unwrap()
            .iter()
            .filter(|one| one["verdict"] != "do not make");
        assert_eq!(made.count() > 0, state == "cooked", "{state}");
    }
}

#[test]
fn fresh_and_dried_berries_become_syrup_and_shrub_and_lead_back_to_their_bed() {
    let berries = berries();
    let fresh = berries.lot("fresh")["lot"].clone();
    berries.cook(&fresh, 400.0, 200.0, 450.0);
    let from_fresh = berries.lot("cooked");
    assert_eq!(number(&from_fresh, "/left_g"), 450.0);
    assert_eq!(
        number(&berries.lot("fresh"), "/left_g"),
        600.0,
        "the ledger took it from the harvest"
    );
    let dried = berries.dried();
    assert_eq!(number(&berries.lot("fresh"), "/left_g"), 100.0);
    berries.cook(&dried, 100.0, 1000.0, 700.0);
    let lots = berries.world.call("lot.list", json!({}))["lots"].clone();
    let cooked: Vec<&Value> = lots
        .as_array()
        .unwrap()
        .iter()
        .filter(|line| line["state"] == "cooked")
        .collect();
    assert_eq!(cooked.len(), 2);
    let dried_left = lots
        .as_array()
        .unwrap()
        .iter()
        .find(|line| line["state"] == "dried")
        .unwrap();
    assert_eq!(
        number(dried_left, "/left_g"),
        10.0,
        "and from the dried lot"
    );

    for (line, preparation) in [
        (cooked[0], "syrup"),
        (cooked[1], "shrub"),
        (cooked[0], "shrub"),
        (cooked[1], "syrup"),
    ] {
        let plant = berries.plant(Some(&line["lot"]), "cooked", 150.0);
        let composition = json!({"preparation": preparation, "plants": [plant],
            "stock": [{"kind": "sugar"}, {"kind": "vinegar", "acidity_g_per_100ml": 6.0}]});
        let proposal = berries.world.call("jar.compose", composition.clone());
        assert_eq!(
            text(&proposal, "/keeping/verdict"),
            "keeps cold",
            "{preparation}: {}",
            proposal["keeping"]
        );
        let water = &proposal["plants"][0]["moisture_wet_percent"];
        assert!(
            number(water, "/low") < number(water, "/value")
                && number(water, "/value") < number(water, "/high")
        );
        let jar = berries
            .world
            .call("jar.pour", json!({"composition": composition}))["jar"]
            .clone();
        let shown = berries.world.call("jar.show", json!({"id": jar["id"]}))["jar"].clone();
        assert_eq!(shown["plants"][0]["state"], "cooked");
        assert_eq!(shown["plants"][0]["bed"], "The old hedge");
        if preparation == "shrub" {
            let cautions = shown["cautions"].as_array().unwrap();
            assert!(
                cautions.iter().any(|note| note["code"] == "ph-strip"),
                "the strip decides"
            );
        }
    }
    let traced = berries
        .world
        .call("trace.forward", json!({"bed": berries.bed}));
    assert_eq!(traced["jars"].as_array().unwrap().len(), 4, "{traced}");
}

#[test]
fn a_pot_is_no_drying_and_teaches_nothing_of_it() {
    let berries = berries();
    let before = berries
        .world
        .call("harvest.show", json!({"id": berries.harvest}))["harvest"]["estimate"]
        .clone();
    let fresh = berries.lot("fresh")["lot"].clone();
    let pot = berries.cook(&fresh, 400.0, 0.0, 300.0)["tray"].clone();
    assert_eq!(pot["state"], "cooked");
    assert_eq!(text(&pot, "/says"), "cooked, 300 g left");
    let after = berries
        .world
        .call("harvest.show", json!({"id": berries.harvest}))["harvest"]["estimate"]
        .clone();
    assert_eq!(before, after);
    let season = berries.world.call("season.show", json!({"year": 2026}));
    assert!(!season.to_string().contains("\"dry_g\":300"), "{season}");
}

#[test]
fn a_measured_juice_brings_its_sugar() {
    let berries = berries();
    let fresh = berries.lot("fresh")["lot"].clone();
    let request =
        json!({"lot": fresh, "mass_g": 400.0, "out_ml": 300.0, "sugar_percent_mass": 12.0});
    let pot = berries.world.call("lot.cook", request)["tray"].clone();
    // A millilitre of 12 Brix weighs 1.046 g.
    assert!(
        (number(&pot, "/dried_left_g") - 313.8).abs() < 1.0,
        "{}",
        pot["dried_left_g"]
    );
    let line = berries.lot("cooked");
    assert_eq!(number(&line, "/moisture_wet_percent/value"), 88.0);
    let proposal = berries.composed(
        "vinegar",
        berries.plant(Some(&line["lot"]), "cooked", 100.0),
    );
    // 100 g of juice with at least 11.5 g of sugar in about 500 g.
    assert!(
        number(&proposal, "/liquid/sugar_percent_mass/value") > 2.0,
        "{}",
        proposal["liquid"]
    );
}

#[test]
fn cooking_is_taken_back_and_refuses_what_cannot_be() {
    let berries = berries();
    let fresh = berries.lot("fresh")["lot"].clone();
    let deed = berries.cook(&fresh, 400.0, 200.0, 450.0)["deed"].clone();
    berries.world.call("deed.undo", json!({"deed": deed}));
    assert_eq!(number(&berries.lot("fresh"), "/left_g"), 1000.0);

    let refused = |change: Value| {
        let mut request = json!({"lot": fresh, "mass_g": 100.0, "gross_g": 90.0});
        for (key, value) in change.as_object().unwrap() {
            request[key] = value.clone();
        }
        berries.world.refused("lot.cook", request).field
    };
    assert_eq!(refused(json!({"mass_g": 1001.0})), "mass_g");
    assert_eq!(refused(json!({"out_ml": 80.0})), "gross_g");
    assert_eq!(
        refused(json!({"sugar_percent_mass": 90.0})),
        "sugar_percent_mass"
    );
    assert_eq!(
        refused(json!({"cooked_at": "2026-07-01T09:00:00+02:00"})),
        "cooked_at"
    );

    berries.cook(&fresh, 100.0, 0.0, 80.0);
    let cooked = berries.lot("cooked")["lot"].clone();
    let again = json!({"lot": cooked, "mass_g": 10.0, "gross_g": 9.0});
    assert_eq!(berries.world.refused("lot.cook", again).field, "lot");
    // A cooked lot is not dried, and a raw one is not cooked.
    for (lot, state) in [(&cooked, "dried"), (&fresh, "cooked")] {
        let plant = berries.plant(Some(lot), state, 10.0);
        let composition = json!({"preparation": "shrub", "plants": [plant], "stock": []});
        assert_eq!(
            berries.world.refused("jar.compose", composition).field,
            "plants[0].state"
        );
    }
}
