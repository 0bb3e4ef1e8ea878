//! `lot.list`, `preparation.list`, `jar.*` and `plan.bottles`.

use serde_json::{Value, json};

use crate::world::{World, is_interval, number, text};

/// 300 g of fresh peppermint leaf and a bottle each of spirit and glycerin.
struct Pantry {
    world: World,
    harvest: Value,
    spirit: Value,
    glycerin: Value,
}

impl Pantry {
    fn stocked() -> Self {
        let world = World::new();
        let request = json!({"herb": "peppermint", "part": "leaf", "gross_g": 300, "surface": "dry",
            "bed_name": "Lower bank"});
        let harvest = world.call("harvest.record", request)["harvest"].clone();
        let bottle = |name: &str, item: Value| {
            let request = json!({"name": name, "item": item, "size_ml": 700});
            world.call("supply.add", request)["supply"].clone()
        };
        let spirit = bottle(
            "Grain spirit",
            json!({"kind": "spirit", "strength_percent_vol": 95}),
        );
        let glycerin = bottle(
            "Glycerin",
            json!({"kind": "glycerin", "purity_percent_mass": 99.5}),
        );
        Self {
            world,
            harvest,
            spirit,
            glycerin,
        }
    }

    fn composition(&self, preparation: &str, grams: f64) -> Value {
        json!({
            "preparation": preparation,
            "plants": [{"lot": {"kind": "harvest", "id": self.harvest["id"]}, "herb": "peppermint",
                "part": "leaf", "state": "fresh", "mass_g": grams}],
            "stock": [{"kind": "spirit", "supply": self.spirit["id"]},
                {"kind": "glycerin", "supply": self.glycerin["id"]}, {"kind": "water"}],
        })
    }

    fn left(&self) -> f64 {
        let page = self
            .world
            .call("harvest.show", json!({"id": self.harvest["id"]}));
        number(&page, "/harvest/fresh_left_g")
    }
}

fn value(proposal: &Value, field: &str) -> f64 {
    number(proposal, &format!("/liquid/{field}/value"))
}

#[test]
fn a_glycerite_of_fresh_herb_is_poured_eighty_to_twenty() {
    let pantry = Pantry::stocked();
    let proposal = pantry
        .world
        .call("jar.compose", pantry.composition("glycerite", 100.0));
    // Common practice, no source: fresh herb 1:2 in 80 parts glycerin to 20 of water.
    let ml = |at: usize| number(&proposal, &format!("/pours/{at}/ml"));
    assert!(
        (ml(0) - 160.0).abs() < 1e-6 && (ml(1) - 40.0).abs() < 1e-6,
        "{}",
        proposal["pours"]
    );
    assert_eq!(proposal["pours"][0]["supply"], pantry.glycerin["id"]);
    assert_eq!(proposal["reached"], true);
    assert_eq!(text(&proposal, "/keeping/verdict"), "keeps");
    is_interval(&proposal, "/liquid/glycerol_percent_mass");
    is_interval(&proposal, "/liquid/water_activity/highest");
    let poured = 160.0 + 40.0;
    assert!(
        value(&proposal, "volume_ml") > poured,
        "the plant's water has joined the liquid"
    );
}

#[test]
fn fresh_and_dried_glycerites_end_alike() {
    // Common practice, no source: fresh 1:2 in 80:20 and dried 1:5 in 60:40 end within a few
    // percent of the same glycerol fraction, for water is what drying took away.
    let world = World::new();
    let compose = |state: &str, share: f64, ratio: f64| {
        let plant = json!({"herb": "peppermint", "part": "leaf", "state": state, "mass_g": 100});
        let request = json!({"preparation": "glycerite", "plants": [plant], "stock": [],
            "ratio_ml_per_g": ratio, "glycerin_percent_vol": share});
        value(&world.call("jar.compose", request), "glycerol_percent_mass")
    };
    let (fresh, dried) = (compose("fresh", 80.0, 2.0), compose("dried", 60.0, 5.0));
    assert!(
        (fresh - dried).abs() < 5.0,
        "{fresh} and {dried} % glycerol"
    );
}

#[test]
fn the_liquid_follows_the_controls() {
    let pantry = Pantry::stocked();
    let compose = |field: &str, moved: f64| {
        let mut request = pantry.composition("tincture", 50.0);
        request[field] = json!(moved);
        pantry.world.call("jar.compose", request)
    };
    let strong = compose("strength_percent_vol", 60.0);
    let weak = compose("strength_percent_vol", 45.0);
    let reached = |reply: &Value| value(reply, "strength_percent_vol");
    assert!((reached(&strong) - 60.0).abs() < 0.1 && (reached(&weak) - 45.0).abs() < 0.1);
    let ratio = compose("ratio_ml_per_g", 4.0);
    assert!(
        (number(&ratio, "/poured_ml") - 200.0).abs() < 1e-6,
        "4 mL to each of 50 g"
    );
    let control = &ratio["controls"]["ratio_ml_per_g"];
    assert_eq!(number(control, "/value"), 4.0);
    assert!(!text(control, "/because").is_empty());

    let small = compose("jar_ml", 100.0);
    assert_eq!(small["jar"]["fits"], false);
    assert!(number(&small, "/jar/largest_mass_g") < 50.0);
}

#[test]
fn a_strength_beyond_reach_comes_back_as_near_as_it_goes() {
    let pantry = Pantry::stocked();
    let mut request = pantry.composition("tincture", 100.0);
    request["strength_percent_vol"] = json!(90);
    let proposal = pantry.world.call("jar.compose", request);
    assert_eq!(proposal["reached"], false);
    assert!(number(&proposal, "/short_of/0/got") < 90.0);
    assert_ne!(proposal["would_help"], json!([]));
}

#[test]
fn a_wrong_composition_is_refused_at_its_field() {
    let pantry = Pantry::stocked();
    let ask = |pointer: &str, wrong: Value| {
        let mut request = pantry.composition("glycerite", 100.0);
        match request.pointer_mut(pointer) {
            Some(place) => *place = wrong,
            None => request[&pointer[1..]] = wrong,
        }
        pantry.world.refused("jar.compose", request)
    };
    ask("/preparation", json!("soup")).of("invalid", "preparation");
    ask("/ratio_ml_per_g", json!(0)).of("invalid", "ratio_ml_per_g");
    ask("/ratio_ml_per_g", json!(1e308)).of("invalid", "ratio_ml_per_g");
    ask("/jar_ml", json!(-5)).of("invalid", "jar_ml");
    ask("/plants/0/mass_g", json!(-1)).of("invalid", "plants[0].mass_g");
    ask("/plants/0/herb", json!("moon grass")).of("not_found", "plants[0].herb");
    ask("/plants/0/herb", json!("sage"))
        .of("invalid", "plants[0].lot")
        .says("This is not sage");
    ask("/plants/0/state", json!("dried")).of("invalid", "plants[0].state");
    ask("/plants/0/lot/id", json!("x")).of("invalid", "plants[0].lot.id");
    ask(
        "/plants/0/lot/id",
        json!("01a212d7-fbd9-7985-8141-77499dbbc0e6"),
    )
    .of("not_found", "plants[0].lot.id");
    ask(
        "/stock/0",
        json!({"kind": "spirit", "strength_percent_vol": 200}),
    )
    .of("invalid", "stock[0].strength_percent_vol");
    ask("/stock/0/supply", json!("x")).of("invalid", "stock[0].supply");
    ask("/stock/0/kind", json!("honey")).of("invalid", "stock[0].kind");
    ask("/colour", json!("red")).of("invalid", "colour");
}

#[test]
fn pouring_takes_the_grams_and_the_millilitres() {
    let pantry = Pantry::stocked();
    let composition = pantry.composition("glycerite", 100.0);
    let proposal = pantry.world.call("jar.compose", composition.clone());
    let request =
        json!({"composition": composition, "place": "Cellar", "note": "first try", "shake": true});
    let poured = pantry.world.call("jar.pour", request);
    assert_eq!(poured["changed"], json!(["harvest", "supply", "jar"]));
    let jar = &poured["jar"];
    assert_eq!(
        jar["pours"], proposal["pours"],
        "the recipe is stored as it was proposed"
    );
    assert_eq!(text(jar, "/name"), "Peppermint glycerite");
    assert_eq!(text(jar, "/state"), "steeping");
    assert_eq!(number(jar, "/day"), 0.0);
    let glycerol = (
        value(jar, "glycerol_percent_mass"),
        value(&proposal, "glycerol_percent_mass"),
    );
    // Absolute; the amounts went through the journal in decimal.
    assert!((glycerol.0 - glycerol.1).abs() < 1e-9);
    assert_eq!(jar["keeping"]["verdict"], proposal["keeping"]["verdict"]);
    assert_eq!(jar["cautions"], proposal["cautions"]);
    assert_ne!(jar["steps"], json!([]));

    assert_eq!(pantry.left(), 200.0);
    let supplies = pantry.world.call("supply.list", json!({}));
    assert!(
        (number(&supplies, "/supplies/0/left_ml") - 540.0).abs() < 1e-6,
        "{supplies}"
    );

    pantry
        .world
        .call("deed.undo", json!({"deed": poured["deed"]}));
    assert_eq!(pantry.left(), 300.0, "undo puts the grams back");
    assert_eq!(pantry.world.call("jar.list", json!({}))["jars"], json!([]));
    assert!(pantry.world.app().faults().unwrap().is_empty());
}

#[test]
fn no_more_is_poured_than_there_is() {
    let pantry = Pantry::stocked();
    pantry
        .world
        .refused(
            "jar.pour",
            json!({"composition": pantry.composition("glycerite", 301.0)}),
        )
        .of("not_enough", "composition.plants[0].mass_g")
        .says("300 g left");
    // Two plants of one lot, each of which alone would fit.
    let mut twice = pantry.composition("tincture", 160.0);
    let plant = twice["plants"][0].clone();
    twice["plants"].as_array_mut().unwrap().push(plant);
    assert_eq!(
        pantry
            .world
            .refused("jar.pour", json!({"composition": twice}))
            .code,
        "not_enough"
    );
    assert_eq!(pantry.left(), 300.0, "nothing half-written");
}

#[test]
fn what_must_not_be_made_is_not_poured() {
    let world = World::new();
    let plant = json!({"herb": "alder-buckthorn", "part": "bark", "state": "dried", "mass_g": 20});
    let request = json!({"preparation": "glycerite", "plants": [plant], "stock": []});
    world
        .refused("jar.compose", request.clone())
        .of("invalid", "plants[0].herb");
    world
        .refused("jar.pour", json!({"composition": request}))
        .of("invalid", "composition.plants[0].herb");
    let raw = json!({"herb": "elder-berry", "part": "berry", "state": "fresh", "mass_g": 20});
    let request = json!({"preparation": "cordial", "plants": [raw], "stock": []});
    let proposal = world.call("jar.compose", request.clone());
    assert_eq!(text(&proposal, "/keeping/verdict"), "do not make");
    world
        .refused("jar.pour", json!({"composition": request}))
        .of("invalid", "composition.preparation");
}

#[test]
fn a_jar_becomes_due_is_corrected_and_given_up() {
    let pantry = Pantry::stocked();
    let request = json!({"composition": pantry.composition("glycerite", 100.0)});
    let id = pantry.world.call("jar.pour", request)["jar"]["id"].clone();
    pantry.world.at("2026-08-20T09:00:00+02:00");
    let list = pantry.world.call("jar.list", json!({"state": "due"}));
    assert_eq!(
        (&list["jars"][0]["id"], number(&list, "/jars/0/day")),
        (&id, 37.0)
    );
    let request = json!({"id": id, "name": "Mint", "place": "", "note": "smells right"});
    let jar = pantry.world.call("jar.correct", request)["jar"].clone();
    assert_eq!((text(&jar, "/name"), &jar["place"]), ("Mint", &Value::Null));
    pantry
        .world
        .refused("jar.correct", json!({"id": id, "name": " "}))
        .of("invalid", "name");
    pantry
        .world
        .refused("jar.fail", json!({"id": id, "reason": ""}))
        .of("invalid", "reason");
    let jar = pantry
        .world
        .call("jar.fail", json!({"id": id, "reason": "mould"}))["jar"]
        .clone();
    assert_eq!(
        (text(&jar, "/state"), text(&jar, "/failed_because")),
        ("failed", "mould")
    );
    assert_eq!(
        pantry.world.call("jar.list", json!({"state": "due"}))["jars"],
        json!([])
    );
    pantry
        .world
        .refused("jar.show", json!({"id": "x"}))
        .of("invalid", "id");
}

#[test]
fn every_preparation_is_listed_and_can_be_composed_from_nothing_at_hand() {
    let world = World::new();
    let list = world.call("preparation.list", json!({}));
    let all = list["preparations"].as_array().unwrap();
    assert!(all.len() > 15);
    let mut composed = 0;
    for preparation in all {
        for state in ["fresh", "dried"] {
            if preparation[state] != true {
                continue;
            }
            let plant = json!({"herb": "rosemary", "part": "leaf", "state": state, "mass_g": 50});
            let request =
                json!({"preparation": preparation["key"], "plants": [plant], "stock": []});
            let proposal = world.call("jar.compose", request);
            assert!(number(&proposal, "/poured_ml") > 0.0, "{preparation}");
            composed += 1;
        }
    }
    assert!(composed >= 15, "{composed} were composed");
}

#[test]
fn advice_is_ranked_with_reasons_and_heeds_what_must_be_left_out() {
    let world = World::new();
    let ask = |without: Value| {
        json!({"herb": "peppermint", "part": "leaf", "state": "fresh", "mass_g": 100,
            "purpose": "inside", "without": without})
    };
    let all = world.call("jar.advise", ask(json!([])));
    let candidates = all["candidates"].as_array().unwrap();
    assert!(candidates.len() > 3);
    for candidate in candidates {
        assert_ne!(candidate["reasons"], json!([]), "{candidate}");
        is_interval(candidate, "/liquid/strength_percent_vol");
    }
    let sober = world.call("jar.advise", ask(json!(["alcohol"])));
    assert_ne!(sober["candidates"], json!([]));
    for candidate in sober["candidates"].as_array().unwrap() {
        assert!(
            !text(candidate, "/preparation").starts_with("tincture"),
            "{candidate}"
        );
    }
    world
        .refused("jar.advise", ask(json!(["gravity"])))
        .of("invalid", "without[0]")
        .says("glycerin");
    let mut heavy = ask(json!([]));
    heavy["mass_g"] = json!(-1);
    world.refused("jar.advise", heavy).of("invalid", "mass_g");
}

#[test]
fn a_plan_counts_backwards_and_knows_the_shelf() {
    let world = World::new();
    let ask = json!({"herb": "lemon balm", "part": "leaf", "preparation": "glycerite",
        "state": "fresh", "bottles": 6, "bottle_ml": 60, "ready_on": "2026-12-01"});
    let plan = world.call("plan.bottles", ask.clone());
    is_interval(&plan, "/pick_fresh_g");
    let days = (text(&plan, "/pick_by"), text(&plan, "/start_on"));
    assert!(days.0 <= days.1 && days.1 < "2026-12-01", "{days:?}");
    let buy = |plan: &Value| {
        plan["buy"]
            .as_array()
            .unwrap()
            .iter()
            .any(|it| it["kind"] == "glycerin")
    };
    assert!(buy(&plan), "an empty shelf has no glycerin");
    let glycerin = json!({"name": "Glycerin", "item": {"kind": "glycerin"}, "size_ml": 5000});
    world.call("supply.add", glycerin);
    assert!(!buy(&world.call("plan.bottles", ask.clone())), "now it has");
    let refused = |field: &str, wrong: Value| {
        let mut request = ask.clone();
        request[field] = wrong;
        world.refused("plan.bottles", request)
    };
    refused("bottles", json!(0)).of("invalid", "bottles");
    refused("bottles", json!(1.5)).of("invalid", "bottles");
    refused("bottle_ml", json!(-60)).of("invalid", "bottle_ml");
    refused("ready_on", json!("winter")).of("invalid", "ready_on");
    refused("preparation", json!("soup")).of("invalid", "preparation");
}
