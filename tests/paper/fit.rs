//! Whatever the maker writes and however small the label: nothing overlaps, nothing leaves the label, nothing goes unsaid.

use api::Language;
use paper::{Herb, Kind, Label, Size, single_pdf, single_svg};
use proptest::prelude::*;

use crate::records::{bitters, comfrey, full, lemon_balm, said, told};
use crate::tools::{folder, pictures_of, text_of};

/// A text or the code, as the box of its ink in mm.
#[derive(Debug, Clone)]
struct Ink {
    left: f64,
    top: f64,
    right: f64,
    bottom: f64,
    words: String,
}

fn number(line: &str, name: &str) -> f64 {
    let start = line
        .find(&format!(" {name}=\""))
        .unwrap_or_else(|| panic!("no {name} in {line}"))
        + name.len()
        + 3;
    line[start..].split('"').next().unwrap().parse().unwrap()
}

/// What an SVG shows: each text from a third below its base line to a capital's height above it.
fn inks(svg: &str) -> Vec<Ink> {
    let mut inks = Vec::new();
    for line in svg.lines() {
        if line.starts_with("<text") {
            let (x, y, size) = (
                number(line, "x"),
                number(line, "y"),
                number(line, "font-size"),
            );
            inks.push(Ink {
                left: x,
                top: y - 0.65 * size,
                right: x + number(line, "textLength"),
                bottom: y + 0.2 * size,
                words: line
                    .split('>')
                    .nth(1)
                    .unwrap()
                    .split('<')
                    .next()
                    .unwrap()
                    .to_owned(),
            });
        } else if line.starts_with("<path") {
            let place = line
                .split("translate(")
                .nth(1)
                .unwrap()
                .split(')')
                .next()
                .unwrap();
            let (x, y) = place.split_once(' ').unwrap();
            let module: f64 = line
                .split("scale(")
                .nth(1)
                .unwrap()
                .split(')')
                .next()
                .unwrap()
                .parse()
                .unwrap();
            // The finder pattern of the top right corner ends the first row.
            let first: Vec<&str> = line
                .split(" d=\"")
                .nth(1)
                .unwrap()
                .split('M')
                .filter(|run| {
                    run.split(' ')
                        .nth(1)
                        .is_some_and(|rest| rest.starts_with("0h"))
                })
                .collect();
            let (column, length) = first.last().unwrap().split_once(" 0h").unwrap();
            let side: f64 = column.parse::<f64>().unwrap()
                + length.split('v').next().unwrap().parse::<f64>().unwrap();
            let (left, top): (f64, f64) = (x.parse().unwrap(), y.parse().unwrap());
            // Its white rim of four modules belongs to it.
            let rim = 4.0 * module;
            inks.push(Ink {
                left: left - rim,
                top: top - rim,
                right: left + side * module + rim,
                bottom: top + side * module,
                words: "the code".into(),
            });
        }
    }
    inks
}

fn is_sound(svg: &str, size: Size) -> Result<(), String> {
    let inks = inks(svg);
    for (at, one) in inks.iter().enumerate() {
        if one.left < -1e-3
            || one.top < -1e-3
            || one.right > size.width_mm + 1e-3
            || one.bottom > size.height_mm + 1e-3
        {
            return Err(format!("leaves the label: {one:?} on {size:?}"));
        }
        for other in &inks[at + 1..] {
            let across = one.right.min(other.right) - one.left.max(other.left);
            let down = one.bottom.min(other.bottom) - one.top.max(other.top);
            if across > 0.02 && down > 0.02 {
                return Err(format!("overlap on {size:?}: {one:?} and {other:?}"));
            }
        }
    }
    Ok(())
}

#[test]
fn the_measure_itself_finds_what_overlaps_or_leaves() {
    let size = Size::new(70.0, 42.0).unwrap();
    let svg = single_svg(&lemon_balm(), size).unwrap().bytes;
    assert_eq!(is_sound(&svg, size), Ok(()));
    let narrower = Size::new(60.0, 42.0).unwrap();
    assert!(
        is_sound(&svg, narrower)
            .unwrap_err()
            .contains("leaves the label")
    );
    let second = svg
        .lines()
        .filter(|line| line.starts_with("<text"))
        .nth(1)
        .unwrap();
    let doubled = svg.replacen(second, &format!("{second}\n{second}"), 1);
    assert!(is_sound(&doubled, size).unwrap_err().contains("overlap"));
}

#[test]
fn a_small_label_says_what_it_left_out_and_the_rest_still_stands() {
    let label = full(Kind::Gift);
    let drawn = single_svg(&label, Size::new(60.0, 36.0).unwrap()).unwrap();
    let remarks = told(&drawn.remarks);
    let remark = remarks
        .iter()
        .find(|remark| remark.contains("no room"))
        .expect("something had to go");
    assert!(
        remark.starts_with("A label of 60 × 36 mm has no room for "),
        "{remark}"
    );
    let text: Vec<String> = inks(&drawn.bytes)
        .into_iter()
        .map(|ink| ink.words)
        .collect();
    let text = text.join(" ").replace('\u{a0}', " ");
    for words in [
        "Valeriana officinalis",
        "Best before",
        "sora-318",
        "Contains alcohol",
        "Not in pregnancy",
    ] {
        assert!(text.contains(words), "`{words}` must stand: {text}");
    }
}

#[test]
fn the_smallest_labels_still_tell_what_they_are() {
    let folder = folder("small");
    for (width, height) in [(38.0, 34.0), (45.0, 32.0), (30.0, 70.0), (60.0, 36.0)] {
        let size = Size::new(width, height).unwrap();
        let drawn = single_pdf(&lemon_balm(), size).unwrap();
        let name = format!("lemon-balm-{width}");
        pictures_of(&folder, &name, &drawn.bytes);
        let text = text_of(&folder, &name, &drawn.bytes);
        for words in [
            "Lemon balm glycerite",
            "tavo-472",
            "10 Jul 2027",
            "Keep cold",
        ] {
            assert!(
                text.contains(words),
                "{width} x {height}: `{words}` in {text}"
            );
        }
    }
}

#[test]
fn a_label_too_small_for_what_must_stand_names_the_height_that_would_do() {
    let label = full(Kind::Bottle);
    let refusal = single_pdf(&label, Size::new(50.0, 15.0).unwrap()).unwrap_err();
    assert_eq!(refusal.field, "label.height_mm");
    let message = Language::English.tell(&refusal.message);
    let message = message.replace('\u{a0}', " ");
    let height: f64 = message
        .split("a height of ")
        .nth(1)
        .unwrap()
        .split(' ')
        .next()
        .unwrap()
        .parse()
        .unwrap();
    assert!(
        single_pdf(&label, Size::new(50.0, height).unwrap()).is_ok(),
        "{message}"
    );
    assert!(
        single_pdf(&label, Size::new(50.0, height - 1.0).unwrap()).is_err(),
        "a smaller one would not: {message}"
    );
}

#[test]
fn letters_the_type_lacks_are_named() {
    let label = Label {
        note: Some("良い 🌿".into()),
        ..full(Kind::Bottle)
    };
    let drawn = single_svg(&label, Size::new(100.0, 70.0).unwrap()).unwrap();
    assert!(
        told(&drawn.remarks)
            .iter()
            .any(|remark| remark.contains("い 良 🌿")),
        "{:?}",
        drawn.remarks
    );
}

#[test]
fn a_gift_without_its_maker_is_told() {
    let label = Label {
        maker: None,
        ..full(Kind::Gift)
    };
    let drawn = single_svg(&label, Size::new(100.0, 70.0).unwrap()).unwrap();
    assert!(
        told(&drawn.remarks)
            .iter()
            .any(|remark| remark.contains("who made it")),
        "{:?}",
        drawn.remarks
    );
}

fn labels() -> impl Strategy<Value = Label> {
    let texts = "[A-Za-zäöüßéčž ,.:-]{1,90}";
    let base = prop_oneof![
        Just(lemon_balm()),
        Just(comfrey()),
        Just(full(Kind::Jar)),
        Just(full(Kind::Bottle)),
        Just(full(Kind::Gift)),
        Just(bitters()),
    ];
    (
        base,
        "[A-Z][a-zäöüé]{1,14}( [a-zA-Zäöü]{1,18}){0,7}",
        prop::collection::vec(texts, 0..4),
        texts,
    )
        .prop_map(|(label, name, cautions, note)| Label {
            name,
            cautions: cautions.iter().map(|it| said(it)).collect(),
            note: Some(note),
            ..label
        })
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(400) })]

    #[test]
    fn nothing_overlaps_or_leaves_the_label(label in labels(), width in 25.0..140.0f64, height in 15.0..110.0f64) {
        let size = Size::new(width, height).unwrap();
        match single_svg(&label, size) {
            Ok(drawn) => is_sound(&drawn.bytes, size).map_err(TestCaseError::fail)?,
            Err(refusal) => {
                let message = Language::English.tell(&refusal.message);
                prop_assert!(message.ends_with('.'), "{message}");
            }
        }
    }
}

/// What a label says, without what it draws.
fn words_of(svg: &str) -> Vec<String> {
    let texts = svg.split("<text ").skip(1);
    let said = |text: &str| Some(text.split_once('>')?.1.split('<').next()?.to_owned());
    texts.filter_map(said).collect()
}

#[test]
fn a_gift_shows_its_plant_where_there_is_room_and_says_no_word_less() {
    let without = full(Kind::Gift);
    let with = Label {
        drawn: Some(Herb {
            name: message::say!("herb-valerian").into(),
            key: "valerian".into(),
            part: "root".into(),
        }),
        ..without.clone()
    };
    let plants = |svg: &str| svg.matches("stroke-linejoin").count();
    let mut drawn_on = Vec::new();
    for (width, height) in [(100.0, 70.0), (90.0, 55.0), (70.0, 50.0), (50.0, 30.0)] {
        let size = Size::new(width, height).unwrap();
        let (one, other) = (single_svg(&with, size), single_svg(&without, size));
        let (Ok(one), Ok(other)) = (one, other) else {
            continue;
        };
        assert_eq!(plants(&other.bytes), 0);
        if plants(&one.bytes) == 0 {
            assert_eq!(one.bytes, other.bytes, "{width}: as it was without");
            continue;
        }
        drawn_on.push(width);
        let joined = |svg: &str| words_of(svg).join(" ").replace(char::is_whitespace, "");
        assert_eq!(
            joined(&one.bytes).len(),
            joined(&other.bytes).len(),
            "{width}"
        );
    }
    assert!(drawn_on.contains(&100.0), "{drawn_on:?}");
    assert!(!drawn_on.contains(&50.0), "{drawn_on:?}");
}
