//! `tray.bin` on a tray that is still drying: what goes mouldy on the rack is thrown away whole.

use serde_json::{Value, json};

use crate::bin::Lot;
use crate::world::{number, text};

const WEIGHED: &str = "2026-07-15T09:00:00+02:00";
const FOUND: &str = "2026-07-17T18:30:00+02:00";

/// The tray of 200 g, weighed once a day later.
fn drying() -> Lot {
    let lot = Lot::drying();
    lot.world.at(WEIGHED);
    let request = json!({"tray": lot.tray, "gross_g": 190});
    lot.world.call("tray.weigh", request);
    lot.world.at(FOUND);
    lot
}

impl Lot {
    fn lose(&self) -> Value {
        self.world.call(
            "tray.bin",
            json!({"id": self.tray, "reason": " mould under the leaves "}),
        )
    }

    fn page(&self) -> Value {
        self.world.call("tray.show", json!({"id": self.tray}))["tray"].clone()
    }

    fn due(&self) -> Vec<Value> {
        let due = self.world.call("due.list", json!({"days": 60}));
        let lines = due["due"].as_array().unwrap().iter();
        lines
            .filter(|line| line["id"] == self.tray)
            .cloned()
            .collect()
    }
}

#[test]
fn a_tray_that_goes_mouldy_leaves_the_rack_and_says_why() {
    let lot = drying();
    assert_eq!(lot.due().len(), 1, "a drying tray is to be weighed");
    let before = lot.page();
    let reply = lot.lose();
    assert_eq!(reply["changed"], json!(["harvest", "tray"]));
    let page = lot.page();
    assert_eq!(reply["tray"], page);
    assert_eq!(text(&page, "/state"), "lost");
    assert_eq!(
        page["lost"],
        json!({"at": FOUND, "reason": "mould under the leaves"})
    );
    assert_eq!(text(&page, "/says"), "thrown away while it was drying");
    for nothing in [
        "taken_down_at",
        "dried_left_g",
        "hours_left",
        "weigh_at",
        "why",
        "telling_gross_g",
        "ends_hours",
    ] {
        assert_eq!(page[nothing], Value::Null, "{nothing}");
    }
    for no in ["is_dry", "forgotten"] {
        assert_eq!(page[no], false, "{no}");
    }
    assert_eq!(
        (&page["reasons"], &page["binned"]),
        (&json!([]), &json!([]))
    );
    let hours = |point: &Value| number(point, "/hours");
    let forecast = before["curve"].as_array().unwrap();
    assert!(hours(forecast.last().unwrap()) > 81.5, "{forecast:?}");
    let so_far: Vec<_> = forecast.iter().filter(|it| hours(it) <= 81.5).collect();
    assert!(so_far.len() > 1, "{forecast:?}");
    assert_eq!(page["curve"], json!(so_far), "nothing is foretold of it");
    for kept in ["weighings", "fresh_mass_g"] {
        assert_eq!(page[kept], before[kept], "{kept} is kept");
    }

    let world = &lot.world;
    assert_eq!(world.call("tray.list", json!({}))["trays"], json!([]));
    assert_eq!(lot.due(), Vec::<Value>::new());
    let lots = world.call("lot.list", json!({}))["lots"].clone();
    assert_eq!(lots.as_array().unwrap().len(), 1, "the fresh rest alone");
    assert_eq!(lots[0]["state"], "fresh");
    let harvest = world.call("harvest.show", json!({"id": lot.harvest}));
    assert_eq!(number(&harvest, "/harvest/fresh_left_g"), 100.0);
    assert_eq!(text(&harvest, "/harvest/state"), "fresh");
    assert_eq!(text(&harvest, "/harvest/trays/0/state"), "lost");
    let deeds = world.call("deed.list", json!({"limit": 1}));
    let told = text(&deeds, "/deeds/0/text");
    assert!(
        told.starts_with("Threw away peppermint (")
            && told.ends_with(") while it was drying, 200 g (fresh weight)"),
        "{told}"
    );
}

#[test]
fn one_undo_brings_it_back_drying_with_its_weigh_ins() {
    let lot = drying();
    let (before, due) = (lot.page(), lot.due());
    let lost = lot.lose();
    lot.world.call("deed.undo", json!({"deed": lost["deed"]}));
    assert_eq!(lot.page(), before);
    assert_eq!(lot.due(), due);
    lot.world
        .call("tray.take_down", json!({"tray": lot.tray, "gross_g": 140}));
    assert_eq!(number(&lot.page(), "/dried_left_g"), 40.0);
}

#[test]
fn it_survives_the_next_start_of_the_program() {
    let lot = drying();
    lot.lose();
    let page = lot.page();
    let Lot { world, tray, .. } = lot;
    let world = world.reopened();
    let again = world.call("tray.show", json!({"id": tray}));
    assert_eq!(again["tray"], page);
    assert_eq!(world.app().faults().unwrap(), []);
}

#[test]
fn a_running_tray_goes_whole_with_a_reason_and_not_before_it_was_weighed() {
    let lot = drying();
    let refused = |more: Value| {
        let mut request = json!({"id": lot.tray, "reason": "mould"});
        for (name, value) in more.as_object().unwrap() {
            request[name] = value.clone();
        }
        lot.world.refused("tray.bin", request)
    };
    refused(json!({"reason": " "})).of("invalid", "reason");
    refused(json!({"mass_g": 50}))
        .of("invalid", "mass_g")
        .says("thrown away whole");
    refused(json!({"went_to": "used"}))
        .of("invalid", "went_to")
        .says("First take it down");
    refused(json!({"at": "2026-07-15T08:59:00+02:00"}))
        .of("invalid", "at")
        .says("15 Jul 2026, 09:00");
    refused(json!({"reason": "x".repeat(1001)})).of("invalid", "reason");
    assert_eq!(
        text(&lot.page(), "/state"),
        "drying",
        "nothing is half done"
    );
}

#[test]
fn nothing_is_weighed_taken_down_or_poured_of_what_was_thrown_away() {
    let lot = drying();
    lot.lose();
    let world = &lot.world;
    let refused = |command: &str, request: Value| world.refused(command, request);
    let gone = "thrown away on 17 Jul 2026";
    refused("tray.weigh", json!({"tray": lot.tray, "gross_g": 150}))
        .of("invalid", "tray")
        .says(gone);
    refused("tray.take_down", json!({"tray": lot.tray, "gross_g": 140}))
        .of("invalid", "tray")
        .says(gone);
    refused(
        "tray.sample",
        json!({"tray": lot.tray, "fresh_g": 10, "dry_g": 2}),
    )
    .of("invalid", "tray")
    .says(gone);
    refused("tray.bin", json!({"id": lot.tray, "reason": "again"}))
        .of("invalid", "id")
        .says(gone);
    let lot = json!({"kind": "tray", "id": lot.tray});
    let composition = json!({"preparation": "tincture",
        "plants": [{"lot": lot, "herb": "peppermint", "part": "leaf", "state": "dried", "mass_g": 20}],
        "stock": [{"kind": "spirit", "strength_percent_vol": 60}], "jar_ml": 200});
    for (command, request) in [
        ("jar.compose", composition.clone()),
        ("jar.pour", json!({"composition": composition})),
    ] {
        refused(command, request).says(gone);
    }
    assert_eq!(world.app().faults().unwrap(), []);
}

#[test]
fn the_forecast_learns_nothing_from_it() {
    let lot = drying();
    let world = &lot.world;
    let next = |herb: &str| {
        let request = json!({"herb": herb, "part": "leaf", "gross_g": 100, "surface": "dry"});
        world.harvest("harvest.record", request)["harvest"]["estimate"].clone()
    };
    let before = next("peppermint");
    let season =
        |field: &str| world.call("season.show", json!({"year": 2026}))["rows"][0][field].clone();
    let lost = lot.lose();
    assert_eq!(next("peppermint"), before, "as if it had never been dried");
    let herb = world.call("herb.show", json!({"key": "peppermint"}));
    assert_eq!(herb["own_ratios"], json!([]));
    assert_eq!(season("dry_g"), json!(0.0));
    assert_eq!(season("ratio_fresh_per_dry"), Value::Null);

    // What a maker had to do before: a run that ends on the scale teaches.
    world.call("deed.undo", json!({"deed": lost["deed"]}));
    world.call("tray.take_down", json!({"tray": lot.tray, "gross_g": 140}));
    assert_ne!(next("peppermint"), before);
}

#[test]
fn the_trace_and_the_season_count_what_was_laid_out_fresh() {
    let lot = drying();
    let world = &lot.world;
    let binned = |year: i32| world.call("season.show", json!({"year": year}))["binned"].clone();
    let traced =
        || world.call("trace.forward", json!({"harvest": lot.harvest}))["trays"][0].clone();
    assert_eq!(traced()["lost_fresh_g"], Value::Null);
    world.call(
        "harvest.bin",
        json!({"id": lot.harvest, "mass_g": 60, "reason": "stalks"}),
    );
    world.at("2027-01-02T10:00:00+01:00");
    let lost = lot.lose();
    assert_eq!(binned(2026), json!({"fresh_g": 60.0, "dry_g": 0.0}));
    assert_eq!(
        binned(2027),
        json!({"fresh_g": 200.0, "dry_g": 0.0}),
        "in the year in which it was thrown away"
    );
    assert_eq!(traced()["lost_fresh_g"], json!(200.0));
    assert_eq!(traced()["binned_g"], json!(0.0));
    world.call("deed.undo", json!({"deed": lost["deed"]}));
    assert_eq!(binned(2027), json!({"fresh_g": 0.0, "dry_g": 0.0}));
    assert_eq!(traced()["lost_fresh_g"], Value::Null);
}
