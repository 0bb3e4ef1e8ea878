//! What the trade's own tables say, carried to where a decision is made.

use api::Language;
use checks::{Row, Verdict, table};
use formulary::{
    Status, cautions,
    compose::{Proposal, compose},
    constituents::{self, Grade},
    herbs, keep,
    preparations::{self, PlantState, Preparation, Verdict as Keeps},
};
use message::Message;
use physics::{
    MassFraction,
    mixture::{Acidity, Ingredient, flash::flash_point_c},
};

use super::{herb, mixed, spirit, stock, strength, wish};

fn key_of(row: &Row) -> &'static str {
    match row.text("id") {
        "P01" => "oil-dried",
        "P02" => "oil-fresh",
        "P03" => "oil-acidified",
        "P04" => "oil-warm",
        "P05" => "tincture-fresh-strong",
        "P06" => "tincture-dried",
        "P07" => "tincture-fresh",
        "P08" => "tincture-percolated",
        "P09" => "tincture-double",
        "P10" => "glycerite-fresh",
        "P11" => "glycerite-dried",
        "P12" => "glycerite-fortified",
        "P13" => "cordial",
        "P14" => "elixir",
        "P15" => "bitters",
        "P16" => "wine-table",
        "P17" => "wine-fortified",
        "P18" => "vinegar",
        "P19" => "shrub",
        "P20" => "spiced-vinegar",
        "P21" => "oxymel",
        other => panic!("{other} is no preparation"),
    }
}

fn preparation(key: &str) -> &'static Preparation {
    let mut all = preparations::all().iter();
    all.find(|one| one.key == key)
        .unwrap_or_else(|| panic!("{key}"))
}

#[test]
fn times_retention_and_shelf_life_are_those_of_the_table() {
    let mut verdict = Verdict::default();
    for row in table("trade_preparations") {
        let (id, known) = (row.text("id"), preparation(key_of(&row)));
        // Of a glycerite with alcohol the table tells the spirit that is stirred in, not the steeping.
        if id != "P12" {
            verdict.absolute(id, known.steep_days.low, row.number("days_min"), 0.0);
            let longest = row.number_or_blank("days_max");
            verdict.absolute(id, known.steep_days.high, longest.unwrap_or(1.0), 0.0);
        }
        match (
            row.number_or_blank("shelf_life_months_max"),
            &known.shelf_months,
        ) {
            (Some(months), Some(span)) => {
                let least = row.number("shelf_life_months_min");
                verdict.absolute(id, span.low, least, 0.0);
                verdict.absolute(id, span.high, months, 0.0);
                let is_practice = row.text("shelf_life_status").contains("practice");
                let says = span.status == Status::Practice || !is_practice;
                verdict.holds(id, says, "practice is called practice");
            }
            // Four days are 0.13 of a month.
            (Some(months), None) => {
                let days = known.use_within_days.as_ref().map_or(0.0, |days| days.high);
                verdict.absolute(id, days / 30.44, months, 0.005);
            }
            // No figure was read; the glycerite with alcohol is not promised more than one without.
            (None, Some(span)) => {
                let plain = preparation("glycerite-dried")
                    .shelf_months
                    .as_ref()
                    .unwrap();
                verdict.holds(
                    id,
                    id == "P12" && span.high <= plain.high,
                    "no longer than plain",
                );
            }
            (None, None) => {
                let (days, note) = keep::best_before_days(known, Keeps::KeepsCold);
                verdict.holds(
                    id,
                    days.is_none() && said(&note.text).contains("no shelf life"),
                    &said(&note.text),
                );
            }
        }
        if let Some(pressed) = row.number_or_blank("retention_mL_per_g_dry_pressed") {
            let kept = known.retention.as_ref().unwrap();
            verdict.absolute(id, kept.pressed, pressed, 0.0);
            let wrung = format!("{}-{}", kept.wrung_low, kept.wrung_high);
            let printed = row.text("retention_mL_per_g_dry_handwrung");
            verdict.holds(id, wrung == printed, &wrung);
        }
        let keeping = known.storage(Keeps::Keeps);
        for (column, told) in [
            ("storage", Some(keeping)),
            ("spoilage_signs", known.spoilage()),
        ] {
            let printed = row.text(column);
            let stands = told.is_some_and(|told| !said(&told).is_empty()) || printed.is_empty();
            verdict.holds(id, stands, &format!("{column}: {printed}"));
        }
    }
    verdict.conclude(20 * 2 + 18 * 3 + 3 + 2 * 2 + 21 * 2);
}

fn grade(cell: &str) -> Grade {
    // "forms on cutting with water" is good in water; "fair, short-lived" is fair.
    let words: Vec<&str> = cell.split([' ', ',']).collect();
    match words.as_slice() {
        ["very", "good", ..] => Grade::VeryGood,
        ["good" | "forms", ..] => Grade::Good,
        ["fair", ..] => Grade::Fair,
        ["poor", ..] => Grade::Poor,
        ["no", ..] => Grade::No,
        _ => panic!("{cell} is no grade"),
    }
}

#[test]
fn every_class_of_constituents_has_the_grades_of_the_table() {
    let mut verdict = Verdict::default();
    for row in table("trade_constituents") {
        let name = row.text("constituent_class");
        let class = constituents::all()
            .iter()
            .find(|class| class.printed == name)
            .unwrap_or_else(|| panic!("{name}"));
        for (column, ours) in [
            ("water_infusion", class.water),
            ("ethanol_25", class.ethanol_25),
            ("ethanol_45", class.ethanol_45),
            ("ethanol_60_70", class.ethanol_65),
            ("ethanol_90_96", class.ethanol_95),
            ("glycerin_60_80", class.glycerin),
            ("vinegar_5pct", class.vinegar),
            ("oil", class.oil),
        ] {
            verdict.holds(name, ours == grade(row.text(column)), column);
        }
    }
    verdict.conclude(16 * 8);
}

#[test]
fn every_look_alike_is_named_where_its_herb_is_picked() {
    let mut verdict = Verdict::default();
    for row in table("trade_look_alikes") {
        // The plant by its first word: later texts name some of them more closely.
        let plant = row.text("dangerous_lookalike");
        let plant = plant.split([' ', ';', ',']).next().unwrap_or_default();
        let wanted = row.text("wanted_plant").to_lowercase();
        let warned = herbs::all().iter().filter(|herb| {
            let words = herb.common.to_lowercase();
            let first = words.split([' ', ',']).next().unwrap_or_default();
            wanted.contains(first)
        });
        let says = |herb: &herbs::Herb| {
            cautions::for_picking(herb)
                .iter()
                .any(|note| said(&note.text).contains(plant))
        };
        verdict.holds(plant, warned.into_iter().any(says), &wanted);
    }
    verdict.conclude(15);
}

fn jar(key: &str, name: &str, part: &str, state: PlantState, moisture: f64) -> Proposal {
    compose(&wish(key, herb(name, part, state, 50.0, moisture))).expect("a jar of the table")
}

/// A text with its messages in English.
fn said(text: &Message) -> String {
    Language::English.tell(text)
}

fn warns(jar: &Proposal, code: &str) -> bool {
    jar.cautions.iter().any(|note| note.code == code)
}

#[test]
fn every_limit_of_safety_is_said_or_enforced_where_the_jar_is_composed() {
    use PlantState::{Dried, Fresh};
    let mut verdict = Verdict::default();
    for row in table("trade_safety_limits") {
        let id = row.text("id");
        let value = || row.number("value");
        let oil = || jar("oil-fresh", "garlic", "bulb", Fresh, 60.0);
        let tincture = |percent: f64| {
            let mut asked = wish("tincture-dried", herb("sage", "leaf", Dried, 50.0, 10.0));
            asked.stock = vec![stock(spirit(95.0))];
            asked.strength_percent_vol = Some(percent);
            compose(&asked).unwrap()
        };
        let holds = match id {
            "L01" => said(&oil().cautions[0].text).contains(&format!("{} \u{b0}C", value())),
            "L02" => preparation("oil-fresh")
                .use_within_days
                .as_ref()
                .is_some_and(|days| days.high == value()),
            "L03" => {
                let other = jar("oil-acidified", "thyme", "flowering tops", Fresh, 70.0);
                warns(
                    &jar("oil-acidified", "basil", "leaf", Fresh, 90.0),
                    "acid-soak",
                ) && other.keeping.verdict == Keeps::DoNotMake
            }
            "L04" => ["vinegar", "shrub", "spiced-vinegar", "oxymel"]
                .iter()
                .all(|key| {
                    let sour = jar(key, "horseradish", "root", Fresh, 75.0);
                    let above = format!("above {}", value());
                    let says =
                        |one: &cautions::Caution| said(&one.text).to_lowercase().contains(&above);
                    warns(&sour, "ph-strip") && sour.cautions.iter().any(says)
                }),
            "L05" => {
                let sweet = jar("glycerite-fresh", "lemon balm", "leaf", Fresh, 80.0);
                sweet.keeping.gates.iter().any(|gate| gate.limit == value())
            }
            // No growth below 0.6: a figure of dried herb, which is gated by its own water.
            "L06" => {
                jar("oil-dried", "calendula", "flower", Dried, 20.0)
                    .keeping
                    .verdict
                    > Keeps::KeepsCold
            }
            "L07" => tincture(value()).keeping.verdict == Keeps::Keeps,
            "L08" => tincture(value()).keeping.verdict == Keeps::KeepsCold,
            "L09" => tincture(value() - 0.1).keeping.verdict == Keeps::UseNow,
            "L10" => {
                let weak = |share| {
                    let mut asked =
                        wish("glycerite-dried", herb("sage", "leaf", Dried, 50.0, 10.0));
                    asked.glycerin_percent_vol = Some(share);
                    compose(&asked).unwrap()
                };
                // 1:1 by volume is 55.8 % by weight before the herb's own water.
                weak(56.0).keeping.verdict == Keeps::Keeps
                    && weak(40.0).keeping.verdict == Keeps::DoNotMake
            }
            "L11" => {
                let half = Ingredient::glycerin(MassFraction::from_percent(50.0).unwrap());
                let activity = mixed(&[(half, 100.0)], None).water_activity.highest.value;
                (activity - value()).abs() < 0.05
            }
            "L12" => {
                let syrup = Ingredient::syrup(MassFraction::from_percent(62.0).unwrap()).unwrap();
                let keeping = keep::judge(
                    preparation("cordial"),
                    &keep::Prospect {
                        liquid: Some(&mixed(&[(syrup, 100.0)], None)),
                        vinegar_acidity_g_per_100ml: None,
                        herb_water_percent: None,
                        measured_ph: None,
                        state: Fresh,
                    },
                );
                // The free-water rule asks for more: all of the water must be kept.
                keeping.gates.iter().any(|gate| gate.unit == "%")
                    && keeping.verdict == Keeps::KeepsCold
            }
            "L13" => {
                let mut asked = wish("vinegar", herb("sage", "leaf", Fresh, 50.0, 80.0));
                asked.stock = vec![stock(Ingredient::vinegar(
                    Acidity::new(value() - 0.1).unwrap(),
                ))];
                compose(&asked).is_err()
            }
            "L14" => {
                let wine = jar("wine-table", "rosemary", "leaf", Dried, 10.0);
                wine.keeping.verdict == Keeps::UseNow && warns(&wine, "wine-perishable")
            }
            "L15" => {
                let raw = jar("cordial", "elder berry", "berry", Fresh, 80.0);
                raw.keeping.verdict == Keeps::DoNotMake && warns(&raw, "handling")
            }
            "L16" => {
                let printed = [(20.0, 36.0), (40.0, 26.0), (70.0, 21.0), (96.0, 17.0)];
                let agrees = |(percent, celsius): (f64, f64)| {
                    flash_point_c(strength(percent)).is_some_and(|band| band.value == celsius)
                };
                printed.into_iter().all(agrees) && warns(&tincture(60.0), "flame")
            }
            // The flame is what is warned of; the share of vapour in air is nothing one can see.
            "L17" => warns(&tincture(60.0), "flame"),
            "L18" => warns(&tincture(60.0), "wrong-alcohol"),
            "L19" => warns(
                &jar("oxymel", "thyme", "flowering tops", Dried, 10.0),
                "infant-honey",
            ),
            "L20" => warns(&tincture(60.0), "children-alcohol"),
            "L21" => {
                let strong = tincture(60.0);
                strong.liquid.ethanol_g.value > 0.0 && warns(&strong, "alcohol-bottle")
            }
            "L22" => warns(
                &jar("tincture-dried", "cayenne", "fruit", Dried, 10.0),
                "gloves",
            ),
            "L23" => ["comfrey", "coltsfoot", "borage"].iter().all(|name| {
                let part = herbs::find(name).unwrap().first_part();
                // Refused by the list of poisonous plants, or judged as what must not be made.
                compose(&wish("cordial", herb(name, part, Dried, 50.0, 10.0)))
                    .map_or(true, |jar| jar.keeping.verdict == Keeps::DoNotMake)
            }),
            "L24" => ["sage", "wormwood"].iter().all(|name| {
                let part = herbs::find(name).unwrap().first_part();
                warns(&jar("tincture-dried", name, part, Dried, 10.0), "duration")
            }),
            "L25" => [
                "St John's wort",
                "garlic",
                "willow",
                "licorice",
                "hawthorn",
                "valerian",
                "echinacea",
            ]
            .iter()
            .all(|name| {
                let part = herbs::find(name).unwrap().first_part();
                warns(
                    &jar("tincture-dried", name, part, Dried, 10.0),
                    "interaction",
                )
            }),
            "L26" => {
                warns(
                    &jar("oil-warm", "calendula", "flower", Dried, 8.0),
                    "hot-glass",
                ) && warns(
                    &jar("shrub", "thyme", "flowering tops", Fresh, 70.0),
                    "fermenting",
                )
            }
            "L27" => warns(&jar("vinegar", "sage", "leaf", Fresh, 80.0), "acid-vessel"),
            // Nothing distils here; what the law says of it stands with the general wording.
            "L28" => cautions::general()
                .iter()
                .any(|note| said(&note.text).contains("Do not distil spirit at home")),
            other => panic!("{other} has no test"),
        };
        verdict.holds(id, holds, row.text("rule"));
    }
    verdict.conclude(28);
}
