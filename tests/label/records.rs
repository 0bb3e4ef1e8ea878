//! An invented pantry.

use chrono::NaiveDate;
use label::book::{Book, Entry, Jar, Yield};
use label::trace::{Step, Trace};
use label::{Figure, Kind, Label, Meaning, Plant, Ratio, State, Strength, Use};

pub fn day(text: &str) -> Option<NaiveDate> {
    Some(text.parse().unwrap())
}

pub fn plant(common: &str, latin: &str, part: &str, state: State) -> Plant {
    Plant {
        common: common.into(),
        latin: Some(latin.into()),
        part: part.into(),
        state,
    }
}

/// A label with every field filled.
pub fn full(kind: Kind) -> Label {
    Label {
        plants: vec![plant(
            "Valerian",
            "Valeriana officinalis",
            "root",
            State::Dried,
        )],
        ratio: Some(Ratio {
            ml_per_g: 5.0,
            meaning: Meaning::PouredOn,
        }),
        menstruum: "spirit and water".into(),
        oil: None,
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
        origins: vec!["harvest mira-204".into(), "Long bed".into()],
        storage: Some("Keep at 15–25 °C in the dark, cap tight.".into()),
        use_for: Use::Inside,
        cautions: vec!["Not in pregnancy. May add to medicines that make sleepy.".into()],
        ethanol_in_bottle_g: Some(Figure {
            low: 22.6,
            value: 23.0,
            high: 23.4,
        }),
        poison_line: Some("1-800-222-1222".into()),
        maker: Some("The kitchen at the north wall".into()),
        net_ml: Some(50.0),
        ingredients: vec!["spirit".into(), "water".into(), "valerian root".into()],
        allergens: vec!["none known".into()],
        note: Some("Second pressing, a little cloudy.".into()),
        ..Label::new(kind, "Valerian tincture", "sora-318")
    }
}

pub fn lemon_balm() -> Label {
    Label {
        plants: vec![plant(
            "Lemon balm",
            "Melissa officinalis",
            "leaf",
            State::Fresh,
        )],
        ratio: Some(Ratio {
            ml_per_g: 3.0,
            meaning: Meaning::PouredOn,
        }),
        menstruum: "glycerin and water".into(),
        strengths: vec![Strength::Glycerol(Figure {
            low: 54.6,
            value: 57.9,
            high: 60.8,
        })],
        made_on: day("2026-06-12"),
        strained_on: day("2026-07-10"),
        bottled_on: day("2026-07-10"),
        best_before: day("2027-07-10"),
        origins: vec!["harvest kelo-118".into(), "North wall".into()],
        storage: Some("Keep cold, use within a year.".into()),
        cautions: vec!["Glycerin counts like sugar for people with diabetes.".into()],
        poison_line: Some("1-800-222-1222".into()),
        ..Label::new(Kind::Bottle, "Lemon balm glycerite", "tavo-472")
    }
}

pub fn comfrey() -> Label {
    Label {
        plants: vec![plant(
            "Comfrey",
            "Symphytum officinale",
            "leaf",
            State::Dried,
        )],
        ratio: Some(Ratio {
            ml_per_g: 8.0,
            meaning: Meaning::PouredOn,
        }),
        oil: Some("olive oil".into()),
        made_on: day("2026-06-20"),
        strained_on: day("2026-07-18"),
        bottled_on: day("2026-07-19"),
        best_before: day("2027-04-01"),
        storage: Some("Keep cool and dark. Look for rancidity every month.".into()),
        use_for: Use::OutsideOnly,
        cautions: vec!["Not on broken skin. Not in pregnancy or while nursing.".into()],
        poison_line: Some("1-800-222-1222".into()),
        ..Label::new(Kind::Bottle, "Comfrey leaf oil", "nuba-655")
    }
}

/// Five plants and a name longer than any line.
pub fn bitters() -> Label {
    Label {
        plants: vec![
            plant("Dandelion", "Taraxacum officinale", "root", State::Dried),
            plant("Angelica", "Angelica archangelica", "root", State::Dried),
            plant("Yarrow", "Achillea millefolium", "flowering top", State::Fresh),
            plant("Bitter orange", "Citrus × aurantium", "peel", State::Dried),
            plant("Rosemary", "Salvia rosmarinus", "leaf", State::Fresh),
        ],
        cautions: vec![
            "Not in pregnancy.".into(),
            "Yarrow and angelica: beware allergy to the daisy and carrot families; angelica makes skin burn in the sun.".into(),
        ],
        ..Label {
            name: "Old orchard evening bitters with dandelion, angelica and orange".into(),
            lot: "pire-201".into(),
            ..full(Kind::Gift)
        }
    }
}

pub fn book(photo: &str) -> Book {
    let entry = |herb: &str,
                 latin: &str,
                 part: &str,
                 on: &str,
                 bed: &str,
                 code: &str,
                 fresh_g: f64,
                 dry: Option<(f64, f64, f64)>,
                 note: &str| Entry {
        herb: herb.into(),
        latin: Some(latin.into()),
        part: part.into(),
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
        herb: herb.into(),
        part: part.into(),
        bed: Some(bed.into()),
        fresh_g,
        dry_g: dry.map(|(low, value, high)| Figure { low, value, high }),
        harvests,
    };
    Book {
        language: Default::default(),
        title: "The season of 2026".into(),
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
                    "200 g of fresh leaf under 600 mL of glycerin and water.".into(),
                    "Strained 10 July: 540 mL, nine bottles of 60 mL.".into(),
                ],
                note: Some("Sweeter than last year.".into()),
            },
            Jar {
                name: "Valerian tincture".into(),
                lot: "sora-318".into(),
                poured_on: "2026-09-14".parse().unwrap(),
                lines: vec![
                    "100 g of dried root under 500 mL of spirit and water at 60 % vol.".into(),
                ],
                note: None,
            },
        ],
    }
}

pub fn trace(photo: &str) -> Trace {
    let step = |heading: &str, code: Option<&str>, on: &str, lines: &[&str]| Step {
        heading: heading.into(),
        code: code.map(Into::into),
        on: day(on),
        lines: lines.iter().map(|line| (*line).into()).collect(),
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
    Trace {
        language: Default::default(),
        title: "Lemon balm glycerite".into(),
        lot: Some("tavo-472".into()),
        asked: "Back from the bottle to the bed".into(),
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
        notes: vec!["Every amount is as it was written down on the day.".into()],
    }
}
