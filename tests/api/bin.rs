//! `harvest.bin` and `tray.bin`: what went mouldy or stale leaves the journal, and can come back.

use serde_json::{Value, json};

use crate::world::{World, number, text};

/// 300 g of peppermint leaf picked in the lower bank, 200 g of it dried to 40 g a week later.
pub struct Lot {
    pub world: World,
    pub harvest: Value,
    pub tray: Value,
}

const TAKEN_DOWN: &str = "2026-07-21T09:00:00+02:00";
const LATER: &str = "2027-10-02T18:30:00+02:00";

impl Lot {
    pub fn drying() -> Self {
        let world = World::new();
        let request = json!({"herb": "peppermint", "part": "leaf", "gross_g": 300, "surface": "dry",
            "bed_name": "Lower bank"});
        let harvest = world.call("harvest.record", request)["harvest"]["id"].clone();
        let request = json!({"harvest": harvest, "mass_g": 200, "tare_g": 100});
        let tray = world.call("tray.start", request)["tray"]["id"].clone();
        Self {
            world,
            harvest,
            tray,
        }
    }

    fn dry() -> Self {
        let lot = Self::drying();
        lot.world.at(TAKEN_DOWN);
        let request = json!({"tray": lot.tray, "gross_g": 140});
        lot.world.call("tray.take_down", request);
        lot.world.at(LATER);
        lot
    }

    fn bin(&self, request: Value) -> Value {
        self.world.call("tray.bin", request)
    }

    fn left(&self) -> f64 {
        let page = self.world.call("tray.show", json!({"id": self.tray}));
        number(&page, "/tray/dried_left_g")
    }
}

#[test]
fn fresh_plant_that_is_thrown_away_is_an_entry_of_the_ledger() {
    let Lot { world, harvest, .. } = Lot::drying();
    let request = json!({"id": harvest, "mass_g": 30, "reason": "  mould "});
    let reply = world.harvest("harvest.bin", request);
    assert_eq!(number(&reply, "/harvest/fresh_left_g"), 70.0);
    assert_eq!(text(&reply, "/harvest/binned/0/reason"), "mould");
    world
        .refused(
            "harvest.bin",
            json!({"id": harvest, "mass_g": 71, "reason": "mould"}),
        )
        .of("not_enough", "mass_g")
        .says("70 g left");
    world
        .refused(
            "harvest.bin",
            json!({"id": harvest, "mass_g": -1, "reason": "mould"}),
        )
        .of("invalid", "mass_g");
    world
        .refused("harvest.bin", json!({"id": harvest, "reason": " "}))
        .of("invalid", "reason");
    let before = "2026-07-14T08:59:00+02:00";
    world
        .refused(
            "harvest.bin",
            json!({"id": harvest, "reason": "mould", "at": before}),
        )
        .of("invalid", "at")
        .says("after it was picked, 14 Jul 2026, 09:00");
    let reply = world.harvest(
        "harvest.bin",
        json!({"id": harvest, "reason": "wilted", "at": "2026-07-14T20:00:00+02:00"}),
    );
    assert_eq!(number(&reply, "/harvest/fresh_left_g"), 0.0);
    assert_eq!(
        number(&reply, "/harvest/binned/1/mass_g"),
        70.0,
        "left out, all that is left goes"
    );
    assert_eq!(
        text(&reply, "/harvest/binned/1/at"),
        "2026-07-14T20:00:00+02:00"
    );
    world
        .refused("harvest.bin", json!({"id": harvest, "reason": "wilted"}))
        .of("invalid", "mass_g")
        .says("Nothing is left");
}

#[test]
fn a_dried_lot_is_thrown_away_in_part_or_whole_and_taken_back() {
    let lot = Lot::dry();
    let part = lot.bin(
        json!({"id": lot.tray, "mass_g": 12.5, "reason": "mouldy corner",
        "at": "2027-10-01T10:00:00+02:00"}),
    );
    assert_eq!(part["changed"], json!(["tray"]));
    assert_eq!(number(&part, "/tray/dried_left_g"), 27.5);
    assert_eq!(part["tray"]["binned"][0]["at"], "2027-10-01T10:00:00+02:00");
    let rest = lot.bin(json!({"id": lot.tray, "reason": "no scent left"}));
    assert_eq!(number(&rest, "/tray/dried_left_g"), 0.0);
    assert_eq!(number(&rest, "/tray/binned/1/mass_g"), 27.5);
    assert_eq!(text(&rest, "/tray/binned/1/reason"), "no scent left");

    let world = &lot.world;
    assert_eq!(
        world.call("lot.list", json!({}))["lots"][0]["state"],
        "fresh"
    );
    assert_eq!(world.call("lot.list", json!({}))["lots"][1], Value::Null);
    assert_eq!(world.call("tray.list", json!({}))["trays"], json!([]));
    let deeds = world.call("deed.list", json!({"limit": 2}));
    let told = [text(&deeds, "/deeds/0/text"), text(&deeds, "/deeds/1/text")];
    let of = |grams: &str| {
        told.iter()
            .any(|it| it.starts_with(&format!("Threw away {grams} g of dried peppermint (")))
    };
    assert!(of("27.5") && of("12.5"), "{told:?}");

    world.call("deed.undo", json!({"deed": rest["deed"]}));
    assert_eq!(lot.left(), 27.5);
    world.call("deed.undo", json!({"deed": part["deed"]}));
    assert_eq!(lot.left(), 40.0);
    let page = world.call("tray.show", json!({"id": lot.tray}));
    assert_eq!(page["tray"]["binned"], json!([]));
    assert_eq!(world.app().faults().unwrap(), []);
}

#[test]
fn a_dried_lot_gives_no_more_than_it_has() {
    let lot = Lot::dry();
    let refused = |request: Value| lot.world.refused("tray.bin", request);
    refused(json!({"id": lot.tray, "mass_g": 40.5, "reason": "mouldy"}))
        .of("not_enough", "mass_g")
        .says("40 g left");
    refused(json!({"id": lot.tray, "mass_g": 0, "reason": "mouldy"})).of("invalid", "mass_g");
    refused(json!({"id": lot.tray, "reason": ""})).of("invalid", "reason");
    refused(json!({"id": lot.tray, "reason": "mouldy", "at": "2026-07-20T09:00:00+02:00"}))
        .of("invalid", "at")
        .says("after it was taken down, 21 Jul 2026, 09:00");
    refused(json!({"id": lot.harvest, "reason": "mouldy"})).of("not_found", "id");
    assert_eq!(lot.left(), 40.0, "what is refused changes nothing");
}

#[test]
fn taking_down_is_not_taken_back_before_what_was_thrown_away_of_it() {
    let lot = Lot::drying();
    lot.world.at(TAKEN_DOWN);
    let request = json!({"tray": lot.tray, "gross_g": 140});
    let down = lot.world.call("tray.take_down", request);
    let gone = lot.bin(json!({"id": lot.tray, "mass_g": 10, "reason": "mouldy"}));
    lot.world
        .refused("deed.undo", json!({"deed": down["deed"]}))
        .says("what was thrown away of tray");
    lot.world
        .refused("tray.correct", json!({"tray": lot.tray, "tare_g": 135}))
        .says("already gave 10 g");
    lot.world.call("deed.undo", json!({"deed": gone["deed"]}));
    lot.world.call("deed.undo", json!({"deed": down["deed"]}));
}

#[test]
fn what_is_drunk_as_tea_is_told_apart_from_what_is_thrown_away() {
    let lot = Lot::dry();
    let some = lot.bin(json!({"id": lot.tray, "mass_g": 5, "went_to": "used"}));
    assert_eq!(number(&some, "/tray/dried_left_g"), 35.0);
    assert_eq!(some["tray"]["binned"][0]["went_to"], "used");
    assert_eq!(some["tray"]["binned"][0]["reason"], Value::Null);
    let deeds = lot.world.call("deed.list", json!({"limit": 1}));
    assert!(text(&deeds, "/deeds/0/text").starts_with("Used 5 g of dried peppermint"));
    let season = lot.world.call("season.show", json!({"year": 2027}));
    assert_eq!(season["binned"], json!({"fresh_g": 0.0, "dry_g": 0.0}));
    lot.world
        .refused("tray.bin", json!({"id": lot.tray}))
        .of("invalid", "reason");
}

#[test]
fn the_trace_and_the_season_say_what_was_thrown_away() {
    let lot = Lot::dry();
    let world = &lot.world;
    let binned = |year: i32| world.call("season.show", json!({"year": year}))["binned"].clone();
    assert_eq!(binned(2027), json!({"fresh_g": 0.0, "dry_g": 0.0}));
    world.call(
        "harvest.bin",
        json!({"id": lot.harvest, "mass_g": 60, "reason": "stalks"}),
    );
    lot.bin(json!({"id": lot.tray, "mass_g": 15, "reason": "mouldy"}));
    world.at("2028-04-01T10:00:00+02:00");
    lot.bin(json!({"id": lot.tray, "reason": "too old"}));
    assert_eq!(binned(2027), json!({"fresh_g": 60.0, "dry_g": 15.0}));
    assert_eq!(
        binned(2028),
        json!({"fresh_g": 0.0, "dry_g": 25.0}),
        "it belongs to the year in which it was thrown away"
    );
    let left = world.call("season.show", json!({"year": 2026}));
    assert_eq!(number(&left, "/left/dry_g"), 0.0);
    let traced = world.call("trace.forward", json!({"harvest": lot.harvest}));
    assert_eq!(number(&traced, "/harvests/0/binned_g"), 60.0);
    assert_eq!(number(&traced, "/trays/0/binned_g"), 40.0);
}
