//! The season's book and the trace sheet as a reader finds them.

use paper::{Paper, chain, season};

use crate::records;
use crate::tools::{folder, pictures_of, text_of};

fn photo(name: &str) -> Option<Vec<u8>> {
    std::fs::read(format!(
        "{}/../demo-data/pictures/{name}.jpg",
        env!("CARGO_MANIFEST_DIR")
    ))
    .ok()
}

#[test]
fn the_book_holds_months_yields_and_jars_with_page_numbers() {
    let folder = folder("book");
    let drawn = season::pdf(&records::book("lavender"), Paper::A4, &mut |key| photo(key));
    assert_eq!(drawn.remarks, []);
    let pages = pictures_of(&folder, "book", &drawn.bytes);
    assert_eq!(pages.len(), 5, "title, two months, yields, jars");
    let text = text_of(&folder, "book", &drawn.bytes);
    let mut from = 0;
    for words in [
        "The season of 2026",
        "5 harvests, 2 jars",
        "June",
        "Lemon balm",
        "Melissa officinalis, leaf, just open",
        "12 Jun 2026, North wall",
        "640 g fresh, 131 g (118 to 146) dry",
        "The bees were at the thyme",
        "The season of 2026 2",
        "July",
        "Lavender",
        "The season of 2026 3",
        "What the beds gave",
        "Harvests",
        "South terrace",
        "The season of 2026 4",
        "What was made",
        "tavo-472, started 12 Jun 2026",
        "nine bottles of 60 mL",
        "Sweeter than last year.",
        // Four photos side by side, their captions on one line; the fifth begins a row.
        "Day 0, 12 Jun 2026 Day 1, 13 Jun 2026 Day 2, 14 Jun 2026 Day 3, 15 Jun 2026 Day 4, 16 Jun 2026",
        "The season of 2026 5",
    ] {
        let at = text[from..]
            .find(words)
            .unwrap_or_else(|| panic!("`{words}` does not come after {from} in:\n{text}"));
        from += at;
    }
    assert!(
        !text.contains("The season of 2026 1 "),
        "a title page has no number"
    );
}

#[test]
fn photos_are_asked_for_one_by_one_and_may_be_missing() {
    let mut asked = Vec::new();
    let drawn = season::pdf(&records::book("none"), Paper::Letter, &mut |key| {
        asked.push(key.to_owned());
        Some(b"no JPEG".to_vec())
    });
    assert_eq!(
        asked.len(),
        10,
        "the title once, four entries with a photo, five of a jar: {asked:?}"
    );
    let text = text_of(&folder("book"), "without", &drawn.bytes);
    assert!(text.contains("Lavandula angustifolia"), "{text}");
    assert!(
        !text.contains("Day 4"),
        "no caption without its photo: {text}"
    );
}

#[test]
fn a_long_season_breaks_into_pages_without_losing_an_entry() {
    let mut long = records::book("lavender");
    let first = long.entries[0].clone();
    long.entries = (0..40)
        .map(|at| paper::season::Entry {
            code: format!("code-{at}"),
            note: Some("A long wet morning. ".repeat(at)),
            ..first.clone()
        })
        .collect();
    let row = long.yields[0].clone();
    long.yields = vec![row; 90];
    let drawn = season::pdf(&long, Paper::A4, &mut |_| None);
    assert_eq!(
        drawn,
        season::pdf(&long, Paper::A4, &mut |_| None),
        "the same bytes twice"
    );
    let text = text_of(&folder("book"), "long", &drawn.bytes);
    for at in 0..40 {
        assert!(text.contains(&format!("code-{at} ")), "code-{at}");
    }
    let heads = text.matches("Herb Part Bed Harvests Fresh Dry").count();
    assert!(
        heads >= 2,
        "the head comes again on each page of the table, {heads} times"
    );
}

#[test]
fn a_trace_sheet_tells_the_chain_in_order() {
    let folder = folder("trace");
    let drawn = chain::pdf(&records::trace("lemon-balm"), Paper::Letter, &mut |key| {
        photo(key)
    });
    pictures_of(&folder, "trace", &drawn.bytes);
    let text = text_of(&folder, "trace", &drawn.bytes);
    let mut from = 0;
    for words in [
        "tavo-472. Where this bottle came from. Printed 2 Nov 2026.",
        "Bottle tavo-472",
        "42 mL left",
        "Jar tavo-4",
        "540 mL came out",
        "Harvest kelo-118, 12 Jun 2026",
        "640 g fresh",
        "Bed",
        "half shade",
        "Lemon balm glycerite, tavo-472 1",
    ] {
        let at = text[from..]
            .find(words)
            .unwrap_or_else(|| panic!("`{words}` does not come after {from} in:\n{text}"));
        from += at;
    }
}
