//! The trade's table of label items, row by row, against what each kind of label carries.

use checks::{Row, Verdict, table};
use paper::items::{self, Carries, Row as Item};
use paper::{Kind, Use};

use crate::records::{comfrey, full};

/// Each row of the table beside words that stand for it on the full label: common name, strength and so on.
const WORDS: [(&str, Item, &[&str]); 12] = [
    (
        "B01",
        Item::Names,
        &["Valerian", "Valeriana officinalis", "root"],
    ),
    (
        "B02",
        Item::Liquid,
        &["spirit and water", "1\u{a0}g to 5\u{a0}mL poured on", "vol"],
    ),
    ("B03", Item::Begun, &["Made", "Due"]),
    ("B04", Item::Dates, &["bottled 9\u{a0}Oct", "Best before"]),
    ("B05", Item::Lot, &["mira-204", "Long bed"]),
    ("B06", Item::Keeping, &["in the dark"]),
    ("B07", Item::Use, &["internal use"]),
    ("B08", Item::Warnings, &["Not in pregnancy"]),
    (
        "B09",
        Item::Alcohol,
        &["Contains alcohol", "children and flame"],
    ),
    ("B10", Item::PoisonLine, &["1-800-222-1222"]),
    ("B11", Item::Maker, &["The kitchen at the north wall"]),
    (
        "B12",
        Item::Contents,
        &["50\u{a0}mL", "valerian root", "none known"],
    ),
];

/// The column of the table for a kind, and what its words ask.
fn asked(row: &Row, kind: Kind) -> Carries {
    let column = match kind {
        Kind::Jar => "home_jar",
        Kind::Bottle => "home_bottle",
        Kind::Gift => "gift",
    };
    match row.text(column) {
        "yes" => Carries::Yes,
        "optional" | "helpful" => Carries::Maybe,
        "no" => Carries::No,
        other => panic!("`{other}` in {row:?}"),
    }
}

#[test]
fn each_kind_of_label_carries_the_rows_the_trade_asks_for() {
    let mut verdict = Verdict::default();
    for row in table("trade_label_items") {
        let id = row.text("id");
        let (_, item, words) = WORDS
            .iter()
            .find(|(known, ..)| *known == id)
            .expect("a row we know");
        assert_eq!(item.id(), Some(id));
        for kind in [Kind::Jar, Kind::Bottle, Kind::Gift] {
            let name = format!("{id} on {kind:?}");
            let asked = asked(&row, kind);
            verdict.holds(
                &name,
                item.on(kind) == asked,
                "the rule differs from the table",
            );
            let carried = items::of(&full(kind));
            let text: String = carried
                .iter()
                .filter(|carried| carried.row() == *item)
                .flat_map(items::Item::text)
                .collect::<Vec<_>>()
                .join("\n");
            let says = words.iter().all(|word| text.contains(word));
            verdict.holds(
                &name,
                says == (asked != Carries::No),
                &format!("the label says `{text}`"),
            );
        }
    }
    verdict.conclude(12 * 3 * 2);
}

#[test]
fn a_gift_carries_no_private_note() {
    let note = full(Kind::Gift).note.expect("the full label has a note");
    for (kind, carries) in [(Kind::Jar, true), (Kind::Bottle, true), (Kind::Gift, false)] {
        let text: Vec<String> = items::of(&full(kind))
            .iter()
            .flat_map(items::Item::text)
            .collect();
        assert_eq!(text.contains(&note), carries, "{kind:?}");
    }
}

#[test]
fn a_jar_names_what_was_poured_and_a_bottle_what_came_of_it() {
    let liquid = |kind| {
        let items = items::of(&full(kind));
        items
            .iter()
            .find(|item| item.row() == Item::Liquid)
            .unwrap()
            .text()
            .join(" ")
    };
    assert!(
        liquid(Kind::Jar).contains("Poured at 60"),
        "{}",
        liquid(Kind::Jar)
    );
    assert!(
        liquid(Kind::Bottle).contains("In the bottle 58"),
        "{}",
        liquid(Kind::Bottle)
    );
}

#[test]
fn an_oil_for_the_skin_says_so_first_and_names_its_oil() {
    let label = comfrey();
    assert_eq!(label.use_for, Use::OutsideOnly);
    let text: Vec<String> = items::of(&label)
        .iter()
        .flat_map(items::Item::text)
        .collect();
    assert!(
        text.iter()
            .any(|line| line.starts_with("EXTERNAL USE ONLY")),
        "{text:?}"
    );
    assert!(
        text.iter().any(|line| line.contains("olive oil")),
        "{text:?}"
    );
    assert!(
        !text.iter().any(|line| line.contains("alcohol")),
        "an oil holds none: {text:?}"
    );
}
