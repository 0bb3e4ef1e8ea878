//! Papers as a screen reader meets them: poppler walks the tree, and qpdf finds no fault in the file.

use api::Language;
use message::{Argument, say};
use paper::{Herb, Kind, Label, Paper, Size, card, chain, season, single_pdf};

use crate::records::{book, card_of_sage, comfrey, full, lemon_balm, trace};
use crate::tools::{Heard, folder, heard, objects_of, shown, text_of};

/// The last two kinds of each piece, and its words.
fn brief(heard: &[Heard]) -> Vec<(String, String)> {
    let kind = |path: &str| {
        let kinds: Vec<&str> = path.split('/').collect();
        kinds[kinds.len().saturating_sub(2)..].join("/")
    };
    let each = heard.iter();
    each.map(|it| (kind(&it.path), it.words.clone())).collect()
}

fn words(heard: &[Heard]) -> String {
    let words: Vec<&str> = heard.iter().map(|it| it.words.as_str()).collect();
    words.join(" ")
}

fn photo(name: &str) -> Option<Vec<u8>> {
    let pictures = concat!(env!("CARGO_MANIFEST_DIR"), "/../demo-data/pictures");
    std::fs::read(format!("{pictures}/{name}.jpg")).ok()
}

fn pieces(of: &[(&str, &str)]) -> Vec<(String, String)> {
    let owned = |(kind, words): &(&str, &str)| ((*kind).to_owned(), (*words).to_owned());
    of.iter().map(owned).collect()
}

#[test]
fn a_card_is_heard_in_the_order_of_its_meaning_in_both_languages() {
    let folder = folder("heard");
    for (language, expected, pictures) in [
        (
            Language::English,
            [
                ("Document/H1", "Sage for winter"),
                ("Document/P", "Tincture of dried herb"),
                ("Document/P", "Salvia officinalis"),
                ("LI/LBody", "100 g sage"),
                ("LI/LBody", "289 mL 95 % vol"),
                ("LI/LBody", "Steeps 10 to 28 days"),
                ("Document/P", "Scan this with Trugbook to get the recipe."),
                ("Document/H2", "Steps"),
                ("LI/Lbl", "1"),
                ("LI/LBody", "Weigh it."),
                ("LI/Lbl", "2"),
                ("LI/LBody", "Pour it."),
                ("Document/H2", "Take care"),
                ("LI/LBody", "Stop. EXTERNAL USE ONLY. Never swallow it."),
                ("LI/LBody", "Keep it (well) closed."),
                ("LI/LBody", "Made in May."),
                ("Document/P", "My own note."),
            ],
            [
                "Code for the phone: this recipe",
                "Drawing: sage",
                "Take care",
                "Good to know",
            ],
        ),
        (
            Language::German,
            [
                ("Document/H1", "Sage for winter"),
                ("Document/P", "Tinktur aus getrocknetem Kraut"),
                ("Document/P", "Salvia officinalis"),
                ("LI/LBody", "100 g Salbei"),
                ("LI/LBody", "289 mL 95 % vol"),
                ("LI/LBody", "Zieht 10 bis 28 Tage"),
                (
                    "Document/P",
                    "Scann das mit Korbbuch, dann hast du das Rezept.",
                ),
                ("Document/H2", "Schritt für Schritt"),
                ("LI/Lbl", "1"),
                ("LI/LBody", "Weigh it."),
                ("LI/Lbl", "2"),
                ("LI/LBody", "Pour it."),
                ("Document/H2", "Vorsicht"),
                ("LI/LBody", "Stopp. NUR ÄUSSERLICH ANWENDEN. Nie schlucken."),
                ("LI/LBody", "Keep it (well) closed."),
                ("LI/LBody", "Made in May."),
                ("Document/P", "My own note."),
            ],
            [
                "Code fürs Handy: dieses Rezept",
                "Zeichnung: Salbei",
                "Vorsicht",
                "Gut zu wissen",
            ],
        ),
    ] {
        let name = format!("card-{}", language.tag());
        let drawn = card::pdf(&[card_of_sage(language, 2)], card::Size::A5).unwrap();
        let heard = heard(&folder, &name, &drawn.bytes);
        assert_eq!(brief(&heard), pieces(&expected));
        assert_eq!(words(&heard), text_of(&folder, &name, &drawn.bytes));
        assert_eq!(shown(&folder, &name, &drawn.bytes), pictures);
        let objects = objects_of(&folder, &name, &drawn.bytes);
        let catalog = objects.iter().find(|it| it["/Type"] == "/Catalog").unwrap();
        assert_eq!(catalog["/Lang"], format!("u:{}", language.tag()));
        assert_eq!(catalog["/MarkInfo"]["/Marked"], true);
        println!("{name}: {} bytes", drawn.bytes.len());
    }
}

#[test]
fn a_list_that_goes_on_overleaf_stays_one_list() {
    let folder = folder("heard");
    let long = card_of_sage(Language::English, 60);
    let drawn = card::pdf(&[long], card::Size::A6).unwrap();
    let heard = heard(&folder, "overleaf", &drawn.bytes);
    let labels: Vec<&str> = heard
        .iter()
        .filter(|it| it.path.ends_with("/Lbl"))
        .map(|it| it.words.as_str())
        .collect();
    let numbers: Vec<String> = (1..=60).map(|number| number.to_string()).collect();
    assert_eq!(labels, numbers);
    let objects = objects_of(&folder, "overleaf", &drawn.bytes);
    let pages = objects.iter().filter(|it| it["/Type"] == "/Page").count();
    assert!(pages > 1, "{pages} pages");
    let lists = objects.iter().filter(|it| it["/S"] == "/L").count();
    assert_eq!(lists, 4, "amounts, facts, steps and cautions");
    // The number of the side is for the eye alone.
    assert!(!words(&heard).contains("side 1 of"));
}

#[test]
fn a_label_is_heard_name_first_and_its_code_last_without_losing_a_word() {
    let folder = folder("heard");
    let gift = Label {
        drawn: Some(Herb {
            name: say!("herb-valerian").into(),
            key: "valerian".into(),
            part: "root".into(),
        }),
        ..full(Kind::Gift)
    };
    let german = Label {
        language: Language::German,
        ..gift.clone()
    };
    for (at, (label, pictures)) in [
        (lemon_balm(), vec!["Code for the phone: lot tavo-472"]),
        (comfrey(), vec!["Code for the phone: lot nuba-655"]),
        (full(Kind::Jar), vec!["Code for the phone: lot sora-318"]),
        (
            gift,
            vec!["Code for the phone: lot sora-318", "Drawing: valerian"],
        ),
        (
            german,
            vec!["Code fürs Handy: Charge sora-318", "Zeichnung: Baldrian"],
        ),
    ]
    .into_iter()
    .enumerate()
    {
        let name = format!("label-{at}");
        let size = Size::new(100.0, 80.0).unwrap();
        let drawn = single_pdf(&label, size).unwrap();
        let heard = heard(&folder, &name, &drawn.bytes);
        assert_eq!(heard[0].path, "Document/H1");
        assert_eq!(heard[0].words, label.name);
        assert!(
            heard[1]
                .words
                .contains(&label.plants[0].latin.clone().unwrap())
        );
        assert_eq!(heard[2].words, label.lot);
        assert!(heard[1..].iter().all(|it| it.path == "Document/P"));
        assert_eq!(words(&heard), text_of(&folder, &name, &drawn.bytes));
        let mut shown = shown(&folder, &name, &drawn.bytes);
        shown.sort();
        assert_eq!(shown, pictures);
    }
}

#[test]
fn a_season_is_heard_by_headings_photos_and_one_table() {
    let folder = folder("heard");
    let book = book("lavender");
    let drawn = season::pdf(&book, Paper::A4, &mut |key| photo(key));
    let heard = heard(&folder, "book", &drawn.bytes);
    let of = |kind: &str| -> Vec<&str> {
        let these = heard.iter().filter(|it| it.path == kind);
        these.map(|it| it.words.as_str()).collect()
    };
    assert_eq!(of("Document/H1"), ["The season of 2026"]);
    assert_eq!(
        of("Document/H2"),
        ["June", "July", "What the beds gave", "What was made"]
    );
    assert_eq!(of("Document/H3").len(), 5 + 2);
    assert_eq!(
        of("Document/Table/TR/TH"),
        ["Herb", "Part", "Bed", "Harvests", "Fresh", "Dry"]
    );
    // Of the lime flower nothing dry was weighed, and its cell stays empty.
    assert_eq!(of("Document/Table/TR/TD").len(), 5 * 6 - 1);
    let objects = objects_of(&folder, "book", &drawn.bytes);
    let cells = objects.iter().filter(|it| it["/S"] == "/TD").count();
    assert_eq!(cells, 5 * 6, "an empty cell is there all the same");
    let mut read = text_of(&folder, "book", &drawn.bytes);
    for number in 2..=5 {
        read = read.replace(&format!(" The season of 2026 {number}"), "");
    }
    assert_eq!(words(&heard), read, "all but the feet, in the same order");
    let shown = shown(&folder, "book", &drawn.bytes);
    assert_eq!(
        shown[..3],
        [
            "Photo: lemon balm",
            "Photo: lemon balm",
            "Photo: German chamomile"
        ]
    );
    assert_eq!(shown[3], "Drawing: lime flower");
    assert_eq!(
        shown
            .iter()
            .filter(|it| *it == "Photo: Lemon balm glycerite")
            .count(),
        5
    );
}

#[test]
fn a_table_over_pages_has_its_head_once_and_a_long_note_is_one_paragraph() {
    let folder = folder("heard");
    let mut long = book("none");
    long.yields = vec![long.yields[0].clone(); 90];
    long.entries.truncate(1);
    long.entries[0].note = Some("A long wet morning. ".repeat(400));
    let drawn = season::pdf(&long, Paper::A4, &mut |_| None);
    let heard = heard(&folder, "long", &drawn.bytes);
    let heads = heard.iter().filter(|it| it.path.ends_with("/TH")).count();
    assert_eq!(heads, 6);
    let objects = objects_of(&folder, "long", &drawn.bytes);
    let count = |kind: &str| objects.iter().filter(|it| it["/S"] == kind).count();
    assert_eq!((count("/Table"), count("/TR")), (1, 91));
    assert_eq!(words(&heard).matches("wet morning").count(), 400);
    let parts = heard.iter().filter(|it| it.words.contains("wet morning"));
    assert!(parts.count() > 1, "it goes over pages");
    let notes = objects.iter().filter(|it| {
        let kids = it["/K"].as_array();
        it["/S"] == "/P" && kids.is_some_and(|kids| kids.len() > 1)
    });
    assert_eq!(notes.count(), 1, "and is one paragraph all the same");
}

#[test]
fn a_trace_is_heard_step_by_step() {
    let folder = folder("heard");
    let drawn = chain::pdf(&trace("lemon-balm"), Paper::A4, &mut |key| photo(key));
    let heard = heard(&folder, "trace", &drawn.bytes);
    let headings = heard.iter().filter(|it| it.path == "Document/H2");
    let headings: Vec<&str> = headings.map(|it| it.words.as_str()).collect();
    assert_eq!(headings.len(), 4);
    assert!(headings[2].starts_with("Harvest kelo-118"), "{headings:?}");
    let shown = shown(&folder, "trace", &drawn.bytes);
    assert_eq!(shown, ["Photo: Harvest"]);
}

#[test]
fn what_a_picture_shows_stays_intact_whatever_the_maker_writes() {
    let folder = folder("heard");
    for (at, hostile) in [
        r"a\ (b)) (( >> << [x] {y} /Alt () % \( \051",
        "Müllers „Kraut“ – 100 % 茶 🌿",
        "endobj\nstream\nendstream",
        "\u{feff}(\u{202e})",
    ]
    .into_iter()
    .enumerate()
    {
        let mut card = card_of_sage(Language::English, 1);
        card.herb = Some(Herb {
            name: Argument::own(hostile),
            key: "own".into(),
            part: "leaf".into(),
        });
        let drawn = card::pdf(&[card], card::Size::A6).unwrap();
        let shown = shown(&folder, &format!("hostile-{at}"), &drawn.bytes);
        assert_eq!(shown[1], format!("Drawing: {hostile}"));
        assert_eq!(shown.len(), 4);
    }
}
