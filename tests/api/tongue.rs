//! What the core says must be said in every language it speaks, and what the maker wrote must stay.

use api::Language;
use base64::prelude::{BASE64_STANDARD, Engine as _};
use calcard::icalendar::{ICalendar, ICalendarProperty, ICalendarValue};
use serde_json::{Value, json};

use crate::world::World;

fn german(world: &World, command: &str, request: &Value) -> Value {
    let reply = api::call_in(world.app(), Language::German, command, &request.to_string());
    serde_json::from_str(&reply.unwrap()).unwrap()
}

#[test]
fn the_demo_season_is_said_in_every_language() {
    let world = World::new();
    world.call("demo.begin", json!({}));
    for command in [
        "bed.list",
        "harvest.list",
        "herb.list",
        "tray.list",
        "supply.list",
        "lot.list",
        "preparation.list",
        "jar.list",
        "bottle.list",
        "recipe.list",
        "dropper.list",
        "plan.list",
        "due.list",
        "deed.list",
        "journal.about",
    ] {
        world.call(command, json!({}));
    }
    world.call("season.show", json!({"year": 2026}));
    for (list, show) in [
        ("harvest", "harvest.show"),
        ("tray", "tray.show"),
        ("jar", "jar.show"),
        ("bottle", "bottle.show"),
    ] {
        let reply = world.call(&format!("{list}.list"), json!({}));
        for row in reply[format!("{list}s")].as_array().unwrap() {
            world.call(show, json!({"id": row["id"]}));
        }
    }
    for herb in formulary::herbs::all() {
        world.call("herb.show", json!({"key": herb.key}));
        let part = herb.parts().first().map_or("leaf", |part| *part);
        world.call(
            "harvest.estimate",
            json!({"herb": herb.key, "part": part, "fresh_mass_g": 250}),
        );
    }
    for purpose in ["inside", "outside", "food"] {
        for herb in ["lemon-balm", "garlic", "comfrey", "elder-berry", "valerian"] {
            let part = formulary::herbs::find(herb).unwrap().parts()[0];
            for state in ["fresh", "dried"] {
                world.call(
                    "jar.advise",
                    json!({"herb": herb, "part": part, "state": state, "mass_g": 200, "purpose": purpose}),
                );
            }
        }
    }
}

#[test]
fn what_the_maker_wrote_stays_and_what_the_core_says_is_german() {
    let world = World::new();
    let bed = json!({"name": "Leaf", "note": "Nothing was changed."});
    let written = german(&world, "bed.add", &bed);
    assert_eq!(written["bed"]["name"], "Leaf");
    assert_eq!(written["bed"]["note"], "Nothing was changed.");
    let deeds = german(&world, "deed.list", &json!({}));
    assert_eq!(deeds["deeds"][0]["text"], "Beet Leaf angelegt");
    let herb = german(&world, "herb.show", &json!({"key": "lemon-balm"}));
    assert_eq!(herb["herb"]["common"], "Melisse");
    assert_eq!(herb["herb"]["key"], "lemon-balm");
    assert_eq!(
        herb["herb"]["parts"][0], "leaf",
        "a part is asked for by its key"
    );
    let refused = api::call_in(
        world.app(),
        Language::German,
        "harvest.record",
        &json!({"herb": "chamomile", "part": "flower", "gross_g": -5.5, "surface": "dry"})
            .to_string(),
    )
    .unwrap_err();
    assert_eq!(refused.field.as_deref(), Some("gross_g"));
    assert!(
        refused.message.to_string().contains("zwischen 0,01\u{a0}g"),
        "{}",
        refused.message
    );
    assert!(
        refused.message.to_string().contains("-5,5"),
        "{}",
        refused.message
    );
}

#[test]
fn labels_and_the_calendar_speak_the_language_of_the_call() {
    let world = World::new();
    world.call("demo.begin", json!({}));
    let bottles = world.call("bottle.list", json!({}));
    let bottle = &bottles["bottles"][0]["id"];
    let label = json!({"bottle": bottle, "label": {"width_mm": 100, "height_mm": 80},
        "gift": false, "ethanol": false});
    let drawn = german(&world, "label.single", &label);
    let svg = drawn["svg"].as_str().unwrap();
    assert!(svg.contains("haltbar"), "{svg}");
    assert!(!svg.contains("Best\u{a0}before"), "{svg}");
    let plain = world.call("label.single", label.clone());
    assert!(plain["svg"].as_str().unwrap().contains("before"));
}

/// What stands for a name until one of the catalogue takes its place.
const NEUTRAL: &str = "Qqzzw";

/// A small book of the maker's own names: a bed, a herb, its harvest, a tray, a supply, a jar, notes.
struct Named {
    world: World,
    /// The id of each.
    ids: Value,
}

impl Named {
    fn new() -> Self {
        let world = World::new();
        let bed = world.call("bed.add", json!({"name": NEUTRAL}))["bed"]["id"].clone();
        let herb = json!({"common": NEUTRAL, "parts": ["leaf"]});
        let herb = world.call("herb.add", herb)["herb"]["key"].clone();
        let picked = json!({"herb": herb, "part": "leaf", "gross_g": 400, "surface": "dry", "bed": bed,
            "confirm_odd": true});
        let harvest = world.call("harvest.record", picked)["harvest"]["id"].clone();
        let laid = json!({"harvest": harvest, "mass_g": 200, "tare_g": 100});
        let tray = world.call("tray.start", laid)["tray"]["id"].clone();
        let spirit = json!({"name": NEUTRAL, "size_ml": 2000,
            "item": {"kind": "spirit", "strength_percent_vol": 96}});
        let supply = world.call("supply.add", spirit)["supply"]["id"].clone();
        let lot = json!({"kind": "harvest", "id": harvest});
        let plant =
            json!({"herb": herb, "part": "leaf", "state": "fresh", "mass_g": 100, "lot": lot});
        let stock = json!([{"kind": "spirit", "strength_percent_vol": 96, "supply": supply}]);
        let composition = json!({"preparation": "tincture", "plants": [plant], "stock": stock, "confirmed": true});
        let jar = world.call(
            "jar.pour",
            json!({"composition": composition, "name": NEUTRAL}),
        );
        let jar = &jar["jar"]["id"];
        let ids = json!({"bed": bed, "herb": herb, "harvest": harvest, "tray": tray, "supply": supply, "jar": jar});
        Self { world, ids }
    }

    /// A request about one of them.
    fn about(&self, noun: &str, field: &str) -> Value {
        json!({ field: self.ids[noun] })
    }

    /// Gives all of it this name.
    fn call_it(&self, name: &str) {
        for (noun, field, fields) in [
            ("bed", "id", &["name", "note"][..]),
            ("herb", "key", &["common", "note"]),
            ("harvest", "id", &["stage", "note"]),
            ("tray", "tray", &["name", "note"]),
            ("supply", "id", &["name"]),
            ("jar", "id", &["name", "place", "note"]),
        ] {
            let mut request = self.about(noun, field);
            for field in fields {
                request[field] = json!(name);
            }
            german(&self.world, &format!("{noun}.correct"), &request);
        }
    }

    /// What is read of it in German, line by line.
    fn read(&self) -> Vec<String> {
        let lists = ["bed", "herb", "harvest", "tray", "lot", "supply", "jar"];
        let lists = lists.map(|noun| (format!("{noun}.list"), json!({})));
        let pages = [
            ("herb", "key"),
            ("harvest", "id"),
            ("tray", "id"),
            ("jar", "id"),
        ];
        let pages = pages.map(|(noun, id)| (format!("{noun}.show"), self.about(noun, id)));
        let others = [
            ("due.list".to_owned(), json!({"days": 60})),
            ("season.show".to_owned(), json!({"year": 2026})),
        ];
        let asked = lists.into_iter().chain(pages).chain(others);
        asked
            .map(|(command, request)| {
                let reply = german(&self.world, &command, &request);
                format!("{command} {reply}")
            })
            .collect()
    }
}

/// Names that a maker may give, put together from the catalogue's own words; never the name of a herb or a poison.
fn names_of_the_catalogue(count: usize) -> Vec<String> {
    let whole: Vec<String> = Language::ALL
        .into_iter()
        .flat_map(|language| {
            let entries = language.messages().iter();
            let alone = entries.filter(|(_, places)| places.is_empty());
            alone.map(move |(id, _)| language.tell(&message::Message::of_table(id.clone())))
        })
        .collect();
    let is_nobodys = |name: &str| {
        formulary::herbs::find(name).is_none() && formulary::poison::called(name, None).is_none()
    };
    let mut random = checks::Random::of(20);
    let mut names = Vec::new();
    while names.len() < count {
        let mut one = || whole[random.place(whole.len())].clone();
        let (first, second) = (one(), one());
        let words = |text: &str| {
            text.split_whitespace()
                .next()
                .unwrap_or_default()
                .to_owned()
        };
        let name = match names.len() % 3 {
            0 => first,
            1 => format!("{} {}", words(&first), words(&second)),
            _ => format!("{} {first}", words(&second)),
        };
        let name = name.trim();
        let is_short = (1..=80).contains(&name.chars().count()) && !name.contains(['\n', '\u{a0}']);
        if !is_short || !is_nobodys(name) {
            continue;
        }
        names.push(name.to_owned());
    }
    names
}

#[test]
fn names_of_the_catalogue_s_own_words_come_back_unchanged_in_every_reply() {
    let named = Named::new();
    // A correction that changes nothing is refused.
    named.call_it("Qwx");
    named.call_it(NEUTRAL);
    let neutral = named.read();
    for name in names_of_the_catalogue(150) {
        named.call_it(&name);
        let quoted = json!(name).to_string();
        for (said, neutral) in named.read().iter().zip(&neutral) {
            let expected = neutral.replace(NEUTRAL, &quoted[1..quoted.len() - 1]);
            assert_eq!(*said, expected, "{name}");
        }
    }
}

fn calendar_of(file: &Value) -> ICalendar {
    let bytes = BASE64_STANDARD
        .decode(file["base64"].as_str().unwrap())
        .unwrap();
    ICalendar::parse(String::from_utf8(bytes).unwrap()).unwrap_or_else(|why| panic!("{why:?}"))
}

#[test]
fn names_of_the_catalogue_s_own_words_stand_on_labels_and_in_the_calendar() {
    let named = Named::new();
    named.call_it("Qwx");
    let names = names_of_the_catalogue(400);
    // A label breaks its lines where it likes, and has room for no more.
    let short = names.iter().filter(|name| name.chars().count() <= 24);
    let short: Vec<&String> = short.take(60).collect();
    assert_eq!(short.len(), 60);
    let squeezed = |text: &str| text.split_whitespace().collect::<String>();
    for name in short {
        let request = json!({"id": named.ids["jar"], "name": name});
        german(&named.world, "jar.correct", &request);
        let label = json!({"jar": named.ids["jar"], "gift": false, "ethanol": false,
            "label": {"width_mm": 100, "height_mm": 80}});
        let label = german(&named.world, "label.single", &label);
        let between_tags = label["svg"].as_str().unwrap().split('<');
        let texts = between_tags.filter_map(|piece| piece.split_once('>'));
        let said: String = texts.map(|(_, text)| text).collect();
        let entities = [
            ("&lt;", "<"),
            ("&gt;", ">"),
            ("&quot;", "\""),
            ("&apos;", "'"),
            ("&amp;", "&"),
        ];
        let said = entities
            .iter()
            .fold(said, |said, (of, is)| said.replace(of, is));
        let said = squeezed(&said);
        assert!(said.contains(&squeezed(name)), "{name} is not in {said}");

        let file = german(&named.world, "due.calendar", &json!({"days": 60}));
        let calendar = calendar_of(&file);
        let entries = calendar.components.iter().flat_map(|event| &event.entries);
        let mut titles = entries.filter_map(|entry| match (&entry.name, entry.values.as_slice()) {
            (ICalendarProperty::Summary, [ICalendarValue::Text(title)]) => Some(title),
            _ => None,
        });
        assert!(titles.any(|title| title.contains(name.as_str())), "{name}");
    }
}

#[test]
fn a_deed_is_said_in_the_language_of_whoever_reads_it() {
    let world = World::new();
    german(
        &world,
        "herb.add",
        &json!({"common": "Leaf", "parts": ["leaf"]}),
    );
    let picked = json!({"herb": "lemon-balm", "part": "leaf", "gross_g": 412.5, "surface": "dry"});
    let harvest = world.call("harvest.record", picked);
    let code = harvest["harvest"]["code"].as_str().unwrap();
    let undone = german(&world, "deed.undo", &json!({"deed": harvest["deed"]}));
    let said = |line: &str| line.replace('\u{a0}', " ");
    let wanted = format!("Rückgängig gemacht: 413 g Melisse (Blatt) ({code}) eingetragen");
    assert_eq!(said(undone["undone"].as_str().unwrap()), wanted);
    let lines = |deeds: Value| -> Vec<String> {
        let deeds = deeds["deeds"].as_array().unwrap().iter();
        deeds
            .map(|deed| said(deed["text"].as_str().unwrap()))
            .collect()
    };
    assert_eq!(
        lines(world.call("deed.list", json!({}))),
        [
            format!("Undid: Recorded 413 g of lemon balm leaf ({code})"),
            format!("Recorded 413 g of lemon balm leaf ({code})"),
            "Added the herb Leaf".to_owned(),
        ]
    );
    assert_eq!(
        lines(german(&world, "deed.list", &json!({}))),
        [
            wanted,
            format!("413 g Melisse (Blatt) ({code}) eingetragen"),
            "Pflanze Leaf angelegt".to_owned(),
        ]
    );
}
