//! A whole year with the clock moved: pick, dry, pour, shake, strain, bottle, label, give, check,
//! finish; every list, the stock, the traces and the season on chosen days.

use serde_json::json;

use super::lists::{Lists, told};
use super::{Year, due, whats};
use crate::world::{number, text};

#[test]
fn every_list_is_right_on_every_chosen_day_of_a_year() {
    let year = Year::begin();
    let world = &year.world;

    // 10 June: 500 g of peppermint leaf go onto the rack.
    let mint = year.pick("peppermint", "leaf", 500.0);
    let mut all = Lists {
        harvests: told(["Peppermint fresh, 500 g fresh"]),
        lots: told(["Peppermint fresh, 500 g"]),
        supplies: told(["Grain spirit 2000 mL", "Olive oil 1000 mL"]),
        ..Lists::default()
    };
    assert_eq!(Lists::of(world), all);
    assert_eq!(whats(world), Vec::<String>::new());
    let tray = year.dry(&mint, 500.0, 0.22, 10);
    world.at("2026-06-16T20:00:00+02:00");
    let hung = due(world, 0);
    assert_eq!(hung.len(), 1, "{hung:?}");
    assert!(["weigh", "take down"].contains(&hung[0].0.as_str()));
    assert!(hung[0].3.contains("Peppermint, Tray 1"));
    all.due = told([format!("{} Peppermint, Tray 1", hung[0].0)]);
    all.harvests = told(["Peppermint on the rack, 0 g fresh"]);
    all.trays = told(["Peppermint drying"]);
    all.lots = Vec::new();
    assert_eq!(Lists::of(world), all);
    world.call(
        "tray.take_down",
        json!({"tray": tray["id"], "gross_g": 110}),
    );
    assert_eq!(
        whats(world),
        Vec::<String>::new(),
        "what hangs no more is not weighed"
    );
    all.due = Vec::new();
    all.harvests = told(["Peppermint dry, 0 g fresh"]);
    all.trays = told(["Peppermint dry"]);
    all.lots = told(["Peppermint dried, 110 g"]);
    assert_eq!(Lists::of(world), all);

    // 17 June: 100 g of it into spirit at 1:5, shaken daily, due after 10 to 28 days (USP, Herbal Materia Medica 1995).
    world.at("2026-06-17T10:00:00+02:00");
    let plant = json!({"lot": {"kind": "tray", "id": tray["id"]}, "herb": "peppermint", "part": "leaf",
        "state": "dried", "mass_g": 100});
    let tincture = year.jar(
        "tincture",
        plant,
        json!({"ratio_ml_per_g": 5, "strength_percent_vol": 50}),
    );
    assert_eq!(text(&tincture, "/due_from"), "2026-06-27");
    assert_eq!(
        whats(world),
        Vec::<String>::new(),
        "it is shaken from the morrow on"
    );
    let spirit = 2000.0 - number(&tincture, "/pours/0/ml");
    all.lots = told(["Peppermint dried, 10 g"]);
    all.supplies = told([
        format!("Grain spirit {spirit:.0} mL"),
        "Olive oil 1000 mL".to_owned(),
    ]);
    all.jars = told(["Peppermint tincture steeping"]);
    assert_eq!(Lists::of(world), all);
    world.at("2026-06-18T10:00:00+02:00");
    assert_eq!(whats(world), ["shake"]);
    world.call("jar.shake", json!({"jar": tincture["id"]}));
    assert_eq!(whats(world), Vec::<String>::new(), "one a day is enough");
    world.at("2026-06-20T10:00:00+02:00");
    let lines = due(world, 30);
    let strain = (
        "strain".to_owned(),
        "2026-06-27".to_owned(),
        1,
        text(&tincture, "/name").to_owned(),
    );
    assert_eq!(
        lines[0], strain,
        "harm before date: straining stands before shaking"
    );
    assert_eq!(
        (lines[1].0.as_str(), lines[1].1.as_str()),
        ("shake", "2026-06-19")
    );

    // 27 June: due; shaking ends. 20 July: overdue by 23 days from the first, its time ended on the 15th.
    world.at("2026-06-27T08:00:00+02:00");
    assert_eq!(whats(world), ["strain"]);
    all.due = told(["strain Peppermint tincture"]);
    all.jars = told(["Peppermint tincture due"]);
    assert_eq!(Lists::of(world), all);
    assert_eq!(
        world.call("jar.list", json!({"state": "due"}))["jars"]
            .as_array()
            .unwrap()
            .len(),
        1
    );
    world.at("2026-07-20T08:00:00+02:00");
    let overdue = world.call("due.list", json!({"days": 0}));
    assert_eq!(overdue["due"][0]["overdue_days"], 23);
    assert!(text(&overdue, "/due/0/text").contains("15 Jul 2026"));

    // 20 July: strained and bottled: 6 x 60 mL and the rest.
    let strained = world.call(
        "jar.strain",
        json!({"jar": tincture["id"], "came_out_ml": 370, "how": "wrung"}),
    );
    assert_eq!(strained["jar"]["state"], "strained");
    assert_eq!(whats(world), Vec::<String>::new());
    let filled = world.call(
        "bottle.fill",
        json!({"jar": tincture["id"], "bottles": [{"ml": 60, "count": 6}], "place": "Cellar"}),
    );
    assert_eq!(number(&filled, "/rest_ml"), 10.0);
    // 36 months from straining (practice), looked at half way.
    assert_eq!(text(&filled, "/bottles/0/best_before"), "2029-07-19");
    assert_eq!(text(&filled, "/bottles/0/check_on"), "2028-01-18");
    all.due = Vec::new();
    all.jars = told(["Peppermint tincture strained"]);
    all.bottles = told(["6 on the shelf"]);
    all.stock = told(["Tincture of dried herb 6 x, 360 mL"]);
    assert_eq!(Lists::of(world), all);
    year.labelled(&filled);

    // 1 August: fresh sage in oil keeps for 4 days and no nose can tell (NCHFP, reviewed 2015).
    world.at("2026-08-01T10:00:00+02:00");
    let sage = year.pick("sage", "leaf", 60.0);
    let plant = json!({"lot": {"kind": "harvest", "id": sage["id"]}, "herb": "sage", "part": "leaf",
        "state": "fresh", "mass_g": 30});
    let oil = year.jar(
        "oil",
        plant,
        json!({"stock": [{"kind": "oil", "supply": year.oil["id"]}]}),
    );
    let lines = due(world, 10);
    assert_eq!(lines.len(), 2, "the jar once, and the rest: {lines:?}");
    assert_eq!(
        (lines[0].0.as_str(), lines[0].2),
        ("strain", 3),
        "it can hurt, so it stands first"
    );
    assert_eq!(
        (lines[1].0.as_str(), lines[1].1.as_str(), lines[1].2),
        ("see to", "2026-08-02", 2),
        "the sage that no jar took does not stay fresh"
    );
    let soon = world.call("due.list", json!({"days": 10}));
    assert!(text(&soon, "/due/0/text").contains("keeps only until 5 Aug 2026"));
    all.due = told(["strain Sage oil"]);
    all.harvests = told(["Sage fresh, 30 g fresh", "Peppermint dry, 0 g fresh"]);
    all.lots = told(["Sage fresh, 30 g", "Peppermint dried, 10 g"]);
    all.supplies = told([
        format!("Grain spirit {spirit:.0} mL"),
        "Olive oil 850 mL".to_owned(),
    ]);
    all.jars = told(["Sage oil due", "Peppermint tincture strained"]);
    assert_eq!(Lists::of(world), all);
    world.call(
        "harvest.bin",
        json!({"id": sage["id"], "mass_g": 30, "reason": "wilted"}),
    );
    all.harvests = told(["Sage used up, 0 g fresh", "Peppermint dry, 0 g fresh"]);
    all.lots = told(["Peppermint dried, 10 g"]);
    assert_eq!(Lists::of(world), all);
    world.call(
        "jar.strain",
        json!({"jar": oil["id"], "came_out_ml": 60, "how": "dripped"}),
    );
    let oil_bottle = world.call(
        "bottle.fill",
        json!({"jar": oil["id"], "bottles": [{"ml": 60, "count": 1}]}),
    )["bottles"][0]
        .clone();
    world.at("2026-08-06T08:00:00+02:00");
    let lines = due(world, 0);
    assert_eq!(lines.len(), 1, "{lines:?}");
    assert_eq!(
        (lines[0].0.as_str(), lines[0].1.as_str(), lines[0].2),
        ("bin", "2026-08-06", 3)
    );
    let reply = world.call("due.list", json!({"days": 0}));
    assert!(
        !text(&reply, "/due/0/text").contains("smell it"),
        "no smell test is offered"
    );
    world.call(
        "bottle.bin",
        json!({"bottle": oil_bottle["id"], "reason": "past its date"}),
    );
    all.due = Vec::new();
    all.jars = told(["Sage oil strained", "Peppermint tincture strained"]);
    all.bottles = told(["1 binned", "6 on the shelf"]);
    assert_eq!(Lists::of(world), all);
    assert_eq!(whats(world), Vec::<String>::new());

    // Autumn: one bottle is used by the spoon, one is given away.
    let bottle = |n: usize| filled["bottles"][n].clone();
    for day in ["05", "12", "19", "26"] {
        world.at(&format!("2026-10-{day}T08:00:00+02:00"));
        world.call(
            "bottle.use",
            json!({"bottle": bottle(0)["id"], "teaspoons": 1}),
        );
    }
    world.at("2026-11-02T08:00:00+01:00");
    world.call(
        "bottle.give",
        json!({"bottle": bottle(1)["id"], "to": "the neighbour at the mill"}),
    );
    let stock = world.call("bottle.list", json!({}));
    assert_eq!(number(&stock, "/stock/0/left_ml"), 4.0 * 60.0 + 40.0);
    // 20 mL in 28 days, known to within 1.645/sqrt(4): 280 mL last 215 to 2208 days.
    assert_eq!(text(&stock, "/stock/0/runs_out/low_on"), "2027-06-05");
    assert_eq!(text(&stock, "/stock/0/runs_out/high_on"), "2032-11-18");
    assert_eq!(stock["bottles"].as_array().unwrap().len(), 5);
    let given = world.call("bottle.list", json!({"state": "given"}));
    assert_eq!(given["bottles"].as_array().unwrap().len(), 1);
    all.bottles = told(["1 binned", "1 given", "4 on the shelf", "1 open"]);
    all.stock = told(["Tincture of dried herb 5 x, 280 mL"]);
    assert_eq!(Lists::of(world), all);

    // Two years on: the bottles ask to be looked at; one is doubtful, one is bad.
    world.at("2028-01-18T08:00:00+01:00");
    assert_eq!(whats(world), ["check"; 5]);
    let check = |n: usize, outcome: &str| {
        world.call(
            "bottle.check",
            json!({"bottle": bottle(n)["id"], "outcome": outcome}),
        )
    };
    check(0, "good");
    check(2, "doubtful");
    check(3, "bad");
    let lines = due(world, 0);
    assert_eq!(
        lines.iter().map(|it| it.0.as_str()).collect::<Vec<_>>(),
        ["bin", "check", "check"]
    );
    world.call(
        "bottle.bin",
        json!({"bottle": bottle(3)["id"], "reason": "cloudy"}),
    );
    world.at("2028-01-25T08:00:00+01:00");
    assert_eq!(
        whats(world),
        ["check"; 3],
        "the doubtful one again after a week"
    );
    world.call("bottle.finish", json!({"bottle": bottle(0)["id"]}));
    all.due = told(["check Peppermint tincture"; 3]);
    all.bottles = told(["2 binned", "1 finished", "1 given", "3 to check"]);
    all.stock = told(["Tincture of dried herb 3 x, 180 mL"]);
    assert_eq!(Lists::of(world), all);

    // The chain back and forward.
    let back = world.call("trace.back", json!({"bottle": bottle(1)["id"]}))["chain"].clone();
    assert_eq!(text(&back, "/plants/0/bed"), "Lower bank");
    assert_eq!(back["plants"][0]["harvest"], mint["id"]);
    assert_eq!(
        back["plants"][0]["tray"]["weighings"]
            .as_array()
            .unwrap()
            .len(),
        3
    );
    assert_eq!(back["pours"][0]["supply"], year.spirit["id"]);
    let forward = world.call("trace.forward", json!({"bed": year.bed["id"]}));
    assert_eq!(forward["harvests"].as_array().unwrap().len(), 2);
    assert_eq!(forward["jars"].as_array().unwrap().len(), 2);
    assert_eq!(forward["bottles"].as_array().unwrap().len(), 7);
    assert_eq!(text(&forward, "/people/0/to"), "the neighbour at the mill");
    let poured = world.call("trace.forward", json!({"supply": year.oil["id"]}));
    assert_eq!(poured["bottles"].as_array().unwrap().len(), 1);
    let days = world.call(
        "trace.forward",
        json!({"from": "2026-06-10", "to": "2026-06-10"}),
    );
    assert_eq!(days["bottles"].as_array().unwrap().len(), 6);
    world
        .refused("trace.forward", json!({"from": "2026-06-10"}))
        .of("invalid", "to");
    world
        .refused("trace.forward", json!({}))
        .of("invalid", "bed");

    // The season.
    let season = world.call("season.show", json!({"year": 2026}));
    let row = |common: &str| {
        let rows = season["rows"].as_array().unwrap();
        rows.iter()
            .find(|row| row["common"] == common)
            .unwrap()
            .clone()
    };
    assert_eq!(
        (
            number(&row("Peppermint"), "/fresh_g"),
            number(&row("Peppermint"), "/dry_g")
        ),
        (500.0, 110.0)
    );
    assert_eq!(number(&row("Sage"), "/fresh_g"), 60.0);
    assert_eq!(
        (
            number(&season, "/left/fresh_g"),
            number(&season, "/left/dry_g")
        ),
        (0.0, 10.0)
    );
    assert_eq!(number(&season, "/left/unbottled_ml"), 10.0);
    assert_eq!(number(&season, "/left/bottled_ml"), 180.0);
    let made: u64 = season["made"]
        .as_array()
        .unwrap()
        .iter()
        .map(|row| row["bottles"].as_u64().unwrap())
        .sum();
    assert_eq!(made, 7);
    assert_eq!(
        world.call("season.show", json!({"year": 2027}))["rows"],
        json!([])
    );
    world
        .refused("season.show", json!({"year": 0}))
        .of("invalid", "year");
    assert_eq!(world.app().faults().unwrap(), []);
}
