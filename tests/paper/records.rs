//! An invented pantry.

use api::Language;
use chrono::NaiveDate;
use message::{Argument, Message, Unit, say};
use paper::card::{Card, Weight};
use paper::chain::{Chain, Step};
use paper::season::{Entry, Jar, Portrait, Season, Yield};
use paper::{Figure, Herb, Kind, Label, Meaning, Origin, Plant, Ratio, Strength, Use};

pub fn day(text: &str) -> Option<NaiveDate> {
    Some(text.parse().unwrap())
}

pub fn plant(common: &str, latin: &str, part: &str, state: &str) -> Plant {
    Plant {
        common: named(common),
        latin: Some(latin.into()),
        part: named(part),
        state: named(state),
    }
}

/// What the tables name so in English, and else the text as it stands.
fn named(english: &str) -> Argument {
    use formulary::herbs;
    use physics::mixture::IngredientKind;
    let shared = formulary::said::shared().into_iter();
    let mut parts = shared
        .filter(|(group, _)| *group == "part")
        .flat_map(|(_, parts)| parts);
    let part = parts.find(|(key, _)| *key == english);
    let message = match english {
        "fresh" => say!("state-fresh"),
        "dried" => say!("state-dried"),
        "cooked" => say!("state-cooked"),
        _ if part.is_some() => part.unwrap().1,
        other => match (herbs::find(other), IngredientKind::of(other)) {
            (Some(herb), _) => herb.name(),
            (_, Some(liquid)) => liquid.name(),
            _ => Message::own(other),
        },
    };
    message.into()
}

fn names<const N: usize>(names: [&str; N]) -> Vec<Argument> {
    names.map(named).to_vec()
}

/// A text that no catalogue holds, as it stands.
pub fn said(text: &str) -> Message {
    Message::new("alone").with("what", Argument::own(text))
}

/// How a jar looked so many days after 12 June.
fn portrait(number: u64) -> Portrait {
    let on: NaiveDate = "2026-06-12".parse().unwrap();
    let day = Argument::day(on + chrono::Days::new(number));
    Portrait {
        photo: "lemon-balm".into(),
        caption: say!("season-jar-on-day", number, day),
    }
}

/// Messages in English, with plain spaces.
pub fn told(messages: &[Message]) -> Vec<String> {
    let told = |message| Language::English.tell(message).replace('\u{a0}', " ");
    messages.iter().map(told).collect()
}

/// A label with every field filled.
pub fn full(kind: Kind) -> Label {
    Label {
        plants: vec![plant("Valerian", "Valeriana officinalis", "root", "dried")],
        ratio: Some(Ratio {
            ml_per_g: 5.0,
            meaning: Meaning::PouredOn,
        }),
        liquids: names(["spirit", "water"]),
        strengths: vec![Strength::Alcohol(match kind {
            Kind::Jar => Figure::exact(60.0),
            Kind::Bottle | Kind::Gift => Figure {
                low: 57.2,
                value: 58.4,
                high: 59.3,
            },
        })],
        made_on: day("2026-09-14"),
        due_from: day("2026-09-24"),
        due_to: day("2026-10-12"),
        strained_on: day("2026-10-08"),
        bottled_on: day("2026-10-09"),
        best_before: day("2029-10-08"),
        origins: vec![
            Origin::Harvest("mira-204".into()),
            Origin::Bed("Long bed".into()),
        ],
        storage: Some(said("Keep at 15–25 °C in the dark, cap tight.")),
        use_for: Use::Inside,
        cautions: vec![said(
            "Not in pregnancy. May add to medicines that make sleepy.",
        )],
        ethanol_in_bottle_g: Some(Figure {
            low: 22.6,
            value: 23.0,
            high: 23.4,
        }),
        poison_line: Some("1-800-222-1222".into()),
        maker: Some("The kitchen at the north wall".into()),
        net_ml: Some(50.0),
        ingredients: vec![
            named("spirit"),
            named("water"),
            say!("plant-part", herb = named("valerian"), part = named("root")).into(),
        ],
        allergens: vec![Argument::own("none known")],
        note: Some("Second pressing, a little cloudy.".into()),
        ..Label::new(kind, "Valerian tincture", "sora-318")
    }
}

pub fn lemon_balm() -> Label {
    Label {
        plants: vec![plant("Lemon balm", "Melissa officinalis", "leaf", "fresh")],
        ratio: Some(Ratio {
            ml_per_g: 3.0,
            meaning: Meaning::PouredOn,
        }),
        liquids: names(["glycerin", "water"]),
        strengths: vec![Strength::Glycerol(Figure {
            low: 54.6,
            value: 57.9,
            high: 60.8,
        })],
        made_on: day("2026-06-12"),
        strained_on: day("2026-07-10"),
        bottled_on: day("2026-07-10"),
        best_before: day("2027-07-10"),
        origins: vec![
            Origin::Harvest("kelo-118".into()),
            Origin::Bed("North wall".into()),
        ],
        storage: Some(said("Keep cold, use within a year.")),
        cautions: vec![said("Glycerin counts like sugar for people with diabetes.")],
        poison_line: Some("1-800-222-1222".into()),
        ..Label::new(Kind::Bottle, "Lemon balm glycerite", "tavo-472")
    }
}

pub fn comfrey() -> Label {
    Label {
        plants: vec![plant("Comfrey", "Symphytum officinale", "leaf", "dried")],
        ratio: Some(Ratio {
            ml_per_g: 8.0,
            meaning: Meaning::PouredOn,
        }),
        liquids: names(["olive oil"]),
        made_on: day("2026-06-20"),
        strained_on: day("2026-07-18"),
        bottled_on: day("2026-07-19"),
        best_before: day("2027-04-01"),
        storage: Some(said("Keep cool and dark. Look for rancidity every month.")),
        use_for: Use::OutsideOnly,
        cautions: vec![said(
            "Not on broken skin. Not in pregnancy or while nursing.",
        )],
        poison_line: Some("1-800-222-1222".into()),
        ..Label::new(Kind::Bottle, "Comfrey leaf oil", "nuba-655")
    }
}

/// A card with everything on it, and so many steps.
pub fn card_of_sage(language: Language, steps: usize) -> Card {
    let alone = |what: Argument| say!("alone", what);
    let amount = |amount, what| (alone(amount), alone(what));
    let herb = say!("herb-sage");
    let spirit = Argument::amount(95.0, Unit::PercentVol);
    let use_outside = say!("label-use-outside");
    Card {
        language,
        name: "Sage for winter".into(),
        preparation: say!("title", name = say!("preparation-tincture-dried")),
        latin: vec!["Salvia officinalis".into()],
        herb: Some(Herb {
            name: herb.clone().into(),
            key: "sage".into(),
            part: "leaf".into(),
        }),
        amounts: vec![
            amount(Argument::grams(100.0), herb.into()),
            amount(Argument::millilitres(289.0), spirit),
        ],
        facts: vec![(
            say!("card-takes"),
            say!("card-days", from = 10_u32, to = 28_u32),
        )],
        steps: (0..steps)
            .map(|at| said(["Weigh it.", "Pour it."][at % 2]))
            .collect(),
        keeping: Vec::new(),
        ways: Vec::new(),
        cautions: vec![
            (Weight::Stop, say!("card-stop", text = use_outside)),
            (Weight::Care, said("Keep it (well) closed.")),
            (Weight::Note, said("Made in May.")),
        ],
        note: Some("My own note.".into()),
        code: Some("trugbook:recipe/1/N2LOL4CFRQYQVABQBRC26IUZUPKK".into()),
    }
}

/// Five plants and a name longer than any line.
pub fn bitters() -> Label {
    Label {
        plants: vec![
            plant("Dandelion", "Taraxacum officinale", "root", "dried"),
            plant("Angelica", "Angelica archangelica", "root", "dried"),
            plant("Yarrow", "Achillea millefolium", "flowering top", "fresh"),
            plant("Bitter orange", "Citrus × aurantium", "peel", "dried"),
            plant("Rosemary", "Salvia rosmarinus", "leaf", "fresh"),
        ],
        cautions: vec![
            said("Not in pregnancy."),
            said(
                "Yarrow and angelica: beware allergy to the daisy and carrot families; angelica makes skin burn in the sun.",
            ),
        ],
        ..Label {
            name: "Old orchard evening bitters with dandelion, angelica and orange".into(),
            lot: "pire-201".into(),
            ..full(Kind::Gift)
        }
    }
}

pub fn book(photo: &str) -> Season {
    let entry = |herb: &str,
                 latin: &str,
                 part: &str,
                 on: &str,
                 bed: &str,
                 code: &str,
                 fresh_g: f64,
                 dry: Option<(f64, f64, f64)>,
                 note: &str| Entry {
        drawn: Herb {
            name: named(herb),
            key: herb.to_lowercase().replace(' ', "-"),
            part: part.into(),
        },
        herb: named(herb),
        latin: Some(latin.into()),
        part: named(part),
        on: on.parse().unwrap(),
        bed: Some(bed.into()),
        code: code.into(),
        fresh_g,
        dry_g: dry.map(|(low, value, high)| Figure { low, value, high }),
        stage: Some("just open".into()),
        note: (!note.is_empty()).then(|| note.into()),
        photo: Some(photo.into()),
    };
    let mut entries = vec![
        entry(
            "Lemon balm",
            "Melissa officinalis",
            "leaf",
            "2026-06-12",
            "North wall",
            "kelo-118",
            640.0,
            Some((118.0, 131.0, 146.0)),
            "Cut before the flowers. The bees were at the thyme and left us alone.",
        ),
        entry(
            "Chamomile",
            "Matricaria chamomilla",
            "flower",
            "2026-06-18",
            "South terrace",
            "bilu-230",
            210.0,
            Some((40.2, 43.1, 46.0)),
            "",
        ),
        entry(
            "Lime flower",
            "Tilia cordata",
            "flower",
            "2026-06-29",
            "Upper hedge",
            "mano-507",
            420.0,
            None,
            "The whole tree hums.",
        ),
        entry(
            "Calendula",
            "Calendula officinalis",
            "flower",
            "2026-06-30",
            "Kitchen step",
            "rafi-044",
            96.0,
            Some((11.0, 13.0, 15.0)),
            "",
        ),
        entry(
            "Lavender",
            "Lavandula angustifolia",
            "flower",
            "2026-07-06",
            "South terrace",
            "sedo-712",
            380.0,
            Some((128.0, 133.0, 138.0)),
            "Dry wind for a week; it came down in four days.",
        ),
    ];
    entries[2].photo = None;
    let row = |herb: &str,
               part: &str,
               bed: &str,
               fresh_g: f64,
               dry: Option<(f64, f64, f64)>,
               harvests: u32| Yield {
        herb: named(herb),
        part: named(part),
        bed: Some(bed.into()),
        fresh_g,
        dry_g: dry.map(|(low, value, high)| Figure { low, value, high }),
        harvests,
    };
    Season {
        language: Default::default(),
        year: 2026,
        maker: Some("The kitchen at the north wall".into()),
        entries,
        yields: vec![
            row(
                "Calendula",
                "flower",
                "Kitchen step",
                96.0,
                Some((11.0, 13.0, 15.0)),
                1,
            ),
            row(
                "Chamomile",
                "flower",
                "South terrace",
                210.0,
                Some((40.2, 43.1, 46.0)),
                1,
            ),
            row(
                "Lavender",
                "flower",
                "South terrace",
                380.0,
                Some((128.0, 133.0, 138.0)),
                1,
            ),
            row(
                "Lemon balm",
                "leaf",
                "North wall",
                640.0,
                Some((118.0, 131.0, 146.0)),
                1,
            ),
            row("Lime flower", "flower", "Upper hedge", 420.0, None, 1),
        ],
        jars: vec![
            Jar {
                name: "Lemon balm glycerite".into(),
                lot: "tavo-472".into(),
                poured_on: "2026-06-12".parse().unwrap(),
                lines: vec![
                    said("200 g of fresh leaf under 600 mL of glycerin and water."),
                    said("Strained 10 July: 540 mL, nine bottles of 60 mL."),
                ],
                note: Some("Sweeter than last year.".into()),
                // Five, so that a row is full and a second one begins.
                portraits: (0..5).map(portrait).collect(),
            },
            Jar {
                name: "Valerian tincture".into(),
                lot: "sora-318".into(),
                poured_on: "2026-09-14".parse().unwrap(),
                lines: vec![said(
                    "100 g of dried root under 500 mL of spirit and water at 60 % vol.",
                )],
                note: None,
                portraits: Vec::new(),
            },
        ],
    }
}

pub fn trace(photo: &str) -> Chain {
    let step = |heading: &str, code: Option<&str>, on: &str, lines: &[&str]| Step {
        heading: said(heading),
        code: code.map(Into::into),
        on: day(on),
        lines: lines.iter().map(|line| said(line)).collect(),
        photo: None,
    };
    let mut harvest = step(
        "Harvest",
        Some("kelo-118"),
        "2026-06-12",
        &[
            "Lemon balm, leaf, 640 g fresh, from North wall.",
            "200 g of it went into the jar fresh.",
        ],
    );
    harvest.photo = Some(photo.into());
    Chain {
        language: Default::default(),
        title: said("Lemon balm glycerite"),
        lot: Some("tavo-472".into()),
        asked: Message::new("chain-back-from-bottle"),
        printed_on: "2026-11-02".parse().unwrap(),
        steps: vec![
            step(
                "Bottle",
                Some("tavo-472"),
                "2026-07-10",
                &["60 mL, on the shelf in the cellar, 42 mL left."],
            ),
            step(
                "Jar",
                Some("tavo-4"),
                "2026-06-12",
                &[
                    "600 mL poured on 200 g of fresh leaf: glycerin 99.5 % 420 mL, water 180 mL.",
                    "Shaken 21 times, strained 10 July, wrung: 540 mL came out.",
                ],
            ),
            harvest,
            step(
                "Bed",
                None,
                "2026-04-12",
                &["North wall, 4 m², half shade, stays moist."],
            ),
        ],
        notes: vec![said("Every amount is as it was written down on the day.")],
    }
}
