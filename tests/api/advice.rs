//! The adviser over every herb, part, state and purpose: nothing it says contradicts itself.

use std::collections::BTreeSet;

use serde_json::{Value, json};

use crate::world::World;

/// What is wrong with an answer, in words.
fn contradictions(advice: &Value) -> Vec<String> {
    let candidates = advice["candidates"].as_array().unwrap();
    let mut wrong = Vec::new();
    let mut names = BTreeSet::new();
    let mut refused = false;
    for one in candidates {
        let name = one["preparation"].as_str().unwrap();
        let verdict = one["verdict"].as_str().unwrap();
        let mut says = |what: &str| wrong.push(format!("{name}, {verdict}: {what}"));
        if !names.insert(name) {
            says("is named twice");
        }
        let made = verdict != "do not make";
        if made && refused {
            says("stands behind what must not be made");
        }
        refused |= !made;
        if one["keeping"]["verdict"] != verdict {
            says("its keeping has another verdict");
        }
        let text = one["keeping"]["text"].as_str().unwrap();
        let heads = ["Keeps: ", "Keeps cold: ", "Use now: ", "Do not make it"];
        let head = match verdict {
            "keeps" => 0,
            "keeps cold" => 1,
            "use now" => 2,
            _ => 3,
        };
        if !text.starts_with(heads[head]) {
            says(&format!("its text is {text:?}"));
        }
        let poured = one["pours"].as_array().unwrap().len();
        if made == (poured == 0) {
            says(&format!("has {poured} pours"));
        }
        let best_before = &one["best_before_days"];
        if !made && !best_before.is_null() {
            says("has a date");
        }
        if verdict == "use now" && best_before["high"].as_f64().is_some_and(|days| days > 31.0) {
            says("is for now and has months");
        }
        let reasons = one["reasons"].as_array().unwrap();
        let speaks = |way: &'static str| {
            let of = reasons.iter().filter(move |reason| reason["speaks"] == way);
            of.map(|reason| reason["text"].as_str().unwrap())
                .collect::<BTreeSet<_>>()
        };
        if speaks("for")
            .intersection(&speaks("against"))
            .next()
            .is_some()
        {
            says("says one thing for and against");
        }
        let keeps = verdict == "keeps" || verdict == "keeps cold";
        if reasons
            .first()
            .is_none_or(|first| (first["speaks"] == "for") != keeps)
        {
            says("its first reason speaks the other way");
        }
        let liquid = &one["liquid"];
        let of = |figure: &str| liquid[figure]["value"].as_f64().unwrap();
        if made && of("ethanol_g") > 0.01 && of("strength_percent_vol") <= 0.0 {
            says("has alcohol and no strength");
        }
        if liquid["water_activity"]["highest"]["value"].as_f64()
            < liquid["water_activity"]["by_ross"]["value"].as_f64()
        {
            says("its highest activity is below one of the rules");
        }
        // The rule decides where nothing but sugar, glycerin and alcohol keeps it.
        let acid = of("acidity_g_per_100ml") > 0.2;
        let poured_wet = one["pours"]
            .as_array()
            .unwrap()
            .iter()
            .any(|pour| pour["kind"] != "oil");
        let alcohol_ml = of("ethanol_g") / 0.78924;
        if verdict == "keeps"
            && poured_wet
            && !acid
            && alcohol_ml + 0.1 < liquid["alcohol_to_keep_ml"]["low"].as_f64().unwrap()
        {
            says("keeps with less alcohol than its free water needs");
        }
    }
    wrong
}

#[test]
fn the_adviser_never_contradicts_itself_over_every_herb_part_state_and_purpose() {
    let world = World::new();
    let herbs = world.call("herb.list", json!({}))["herbs"].clone();
    let mut wrong = Vec::new();
    let mut asked = 0;
    for herb in herbs.as_array().unwrap() {
        for part in herb["parts"].as_array().unwrap() {
            for state in ["fresh", "dried", "cooked"] {
                for purpose in ["inside", "outside", "food"] {
                    asked += 1;
                    let request = json!({"herb": herb["key"], "part": part, "state": state, "mass_g": 100.0,
                        "purpose": purpose});
                    let advice = world.call("jar.advise", request);
                    let at = format!("{} {part} {state} {purpose}", herb["key"]);
                    wrong.extend(
                        contradictions(&advice)
                            .into_iter()
                            .map(|what| format!("{at}: {what}")),
                    );
                }
            }
        }
    }
    assert!(asked > 1000, "only {asked} were asked");
    let shown: Vec<&String> = wrong.iter().take(40).collect();
    assert!(wrong.is_empty(), "{} of {asked}: {shown:#?}", wrong.len());
}

#[test]
fn without_sugar_leaves_out_sweet_wine() {
    let world = World::new();
    let request = json!({"herb": "rosemary", "part": "leaf", "state": "dried", "mass_g": 50.0, "purpose": "food",
        "without": ["sugar"]});
    let advice = world.call("jar.advise", request.clone())["candidates"].clone();
    let named = |key: &str| {
        advice
            .as_array()
            .unwrap()
            .iter()
            .any(|one| one["preparation"] == key)
    };
    assert!(!named("wine-fortified") && named("wine-table"), "{advice}");
}

#[test]
fn garlic_ginger_horseradish_onion_and_chilli_together_put_the_spiced_vinegar_first() {
    let world = World::new();
    let plant = |herb: &str, part: &str| json!({"herb": herb, "part": part, "state": "fresh", "mass_g": 50.0});
    let mut request = plant("garlic", "bulb");
    request["purpose"] = json!("food");
    request["also"] = json!([
        plant("ginger", "rhizome"),
        plant("horseradish", "root"),
        plant("onion", "bulb"),
        plant("cayenne", "fruit")
    ]);
    let advice = world.call("jar.advise", request);
    assert_eq!(
        advice["candidates"][0]["preparation"], "spiced-vinegar",
        "{}",
        advice["candidates"][0]
    );
}

#[test]
fn a_plan_carries_the_stops_of_what_it_plans() {
    let world = World::new();
    let request = json!({"herb": "garlic", "part": "bulb", "preparation": "oil-fresh", "state": "fresh", "bottles": 2,
        "bottle_ml": 100.0, "ready_on": "2026-12-01"});
    let plan = world.call("plan.bottles", request);
    let codes: Vec<&Value> = plan["notes"]
        .as_array()
        .unwrap()
        .iter()
        .map(|note| &note["code"])
        .collect();
    assert!(
        codes.iter().any(|code| **code == "botulism-fresh-oil"),
        "{codes:?}"
    );
}

#[test]
fn an_acidified_oil_says_peel_chop_and_keep_it_under() {
    let world = World::new();
    let composition = json!({"preparation": "oil-acidified", "stock": [],
        "plants": [{"herb": "garlic", "part": "bulb", "state": "fresh", "mass_g": 100.0}]});
    let said = world.call("jar.compose", composition)["reasons"].to_string();
    for word in ["Peel", "chop", "6 mm", "under", "300 g"] {
        assert!(said.contains(word), "{word}: {said}");
    }
}

#[test]
fn no_herb_page_praises_an_oil_of_fresh_buds_or_an_ear_oil() {
    let world = World::new();
    for herb in world.call("herb.list", json!({}))["herbs"]
        .as_array()
        .unwrap()
    {
        let page = world
            .call("herb.show", json!({"key": herb["key"]}))
            .to_string()
            .to_lowercase();
        for praised in ["fresh buds", "ear oil", "wilted/dried"] {
            assert!(!page.contains(praised), "{}: {praised}", herb["key"]);
        }
    }
}

#[test]
fn sugar_that_does_not_dissolve_is_said_and_no_part_of_the_liquid() {
    let world = World::new();
    let with = |sugar_g: f64| {
        let pours = json!([{"kind": "spirit", "strength_percent_vol": 60.0, "ml": 100.0}, {"kind": "sugar", "g": sugar_g}]);
        world.call("mixture.describe", json!({"pours": pours, "plants": []}))
    };
    // 60 % spirit dissolves far less than the 200 g to 100 g that water does.
    let (some, much, more) = (with(20.0), with(150.0), with(250.0));
    let of = |reply: &Value, figure: &str| reply["liquid"][figure]["value"].as_f64().unwrap();
    let said = |reply: &Value| reply["notes"].to_string().contains("sugar_undissolved");
    assert!(!said(&some) && said(&much) && said(&more));
    for figure in [
        "strength_percent_vol",
        "volume_ml",
        "mass_g",
        "sugar_percent_mass",
    ] {
        assert!(
            (of(&much, figure) - of(&more, figure)).abs() < 1e-9,
            "{figure}"
        );
    }
}
