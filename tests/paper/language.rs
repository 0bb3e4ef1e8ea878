//! Papers in German: nothing of the catalogue stays English, and nothing that the maker wrote is translated.

use api::Language;
use calcard::icalendar::{ICalendar, ICalendarProperty, ICalendarValue};
use message::{Argument, Message};
use paper::calendar::{self, Entry};
use paper::chain::{self, Chain, Step};
use paper::season::{self, Season};
use paper::{Kind, Label, Origin, Paper, Plant, Size, items, single_pdf, single_svg};
use proptest::prelude::*;

use crate::records::{book, comfrey, day, full, lemon_balm, said, trace};
use crate::tools::{folder, text_of};

/// Names that a maker gave, each of them words that the catalogue translates.
const HOSTILE: [&str; 8] = [
    "Bay leaf",
    "harvest festival plot",
    "the marc of love",
    "From spirit and water",
    "Lot 7, dried root",
    "Due north",
    "spirit",
    "{ -strong }Made { $made }",
];

/// Makes `words` the maker's name for everything on a label.
fn owned(words: &str, kind: Kind) -> Label {
    let own = || Argument::own(words);
    Label {
        language: Language::German,
        plants: vec![Plant {
            common: own(),
            latin: Some(words.to_owned()),
            part: Message::new("part-leaf").into(),
            state: Message::new("state-dried").into(),
        }],
        liquids: vec![own()],
        origins: vec![Origin::Bed(words.to_owned())],
        storage: None,
        cautions: Vec::new(),
        poison_line: Some(words.to_owned()),
        maker: Some(words.to_owned()),
        ingredients: vec![own()],
        allergens: Vec::new(),
        note: Some(words.to_owned()),
        ..Label {
            name: words.to_owned(),
            ..full(kind)
        }
    }
}

fn owned_season(words: &str) -> Season {
    let mut season = book("none");
    season.language = Language::German;
    season.maker = Some(words.to_owned());
    season.entries.truncate(1);
    season.yields.truncate(1);
    season.jars.truncate(1);
    let entry = &mut season.entries[0];
    (entry.herb, entry.latin) = (Argument::own(words), Some(words.to_owned()));
    (entry.bed, entry.stage) = (Some(words.to_owned()), Some(words.to_owned()));
    entry.note = Some(words.to_owned());
    let row = &mut season.yields[0];
    (row.herb, row.bed) = (Argument::own(words), Some(words.to_owned()));
    let jar = &mut season.jars[0];
    (jar.name, jar.note) = (words.to_owned(), Some(words.to_owned()));
    jar.lines = vec![Message::new("season-failed").with("why", Argument::own(words))];
    season
}

fn owned_chain(words: &str) -> Chain {
    let own = || Argument::own(words);
    Chain {
        language: Language::German,
        title: said(words),
        steps: vec![Step {
            heading: Message::new("chain-given-to").with("to", own()),
            code: Some("tavo-472".to_owned()),
            on: day("2026-06-12"),
            lines: vec![
                Message::new("chain-bed").with("bed", own()),
                Message::new("chain-bottle-left-at")
                    .with("code", Argument::own("tavo-472"))
                    .with("ml", Argument::millilitres(40.0))
                    .with("place", own()),
            ],
            photo: None,
        }],
        notes: Vec::new(),
        ..trace("none")
    }
}

/// How often `words` stand in `text`, whatever the lines are broken like.
fn count(text: &str, words: &str) -> usize {
    let plain = |text: &str| text.split_whitespace().collect::<Vec<_>>().join(" ");
    plain(text).matches(&plain(words)).count()
}

/// The texts of an SVG, line after line.
fn shown(svg: &str) -> String {
    let texts = svg.lines().filter(|line| line.starts_with("<text"));
    let texts = texts.filter_map(|line| line.split_once('>')?.1.strip_suffix("</text>"));
    let joined = texts.collect::<Vec<_>>().join(" ");
    joined
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&quot;", "\"")
        .replace("&amp;", "&")
}

fn summary(words: &str) -> (String, String) {
    let entry = Entry {
        uid: "one@trugbook".into(),
        on: "2026-07-10".parse().unwrap(),
        title: Message::new("calendar-strain").with("what", Argument::own(words)),
        text: Some(Message::new("chain-bed").with("bed", Argument::own(words))),
        alarm: None,
    };
    let stamp = "2026-07-01T06:30:00Z".parse().unwrap();
    let written = calendar::text(&[entry], Language::German, stamp);
    let calendar = ICalendar::parse(&written).unwrap();
    let event = &calendar.components[1];
    let read = |property: ICalendarProperty| {
        let entry = event.entries.iter().find(|it| it.name == property);
        match entry.unwrap().values.first() {
            Some(ICalendarValue::Text(text)) => text.clone(),
            other => panic!("{other:?}"),
        }
    };
    (
        read(ICalendarProperty::Summary),
        read(ICalendarProperty::Description),
    )
}

#[test]
fn bay_leaf_stays_bay_leaf_on_every_paper() {
    let folder = folder("own");
    for (at, words) in HOSTILE.into_iter().enumerate() {
        let label = owned(words, Kind::Bottle);
        // Name, herb, binomial, liquid, bed, ingredient of none, poison centre, maker, note.
        let text: Vec<String> = items::of(&label)
            .iter()
            .flat_map(items::Item::text)
            .collect();
        assert_eq!(count(&text.join("\n"), words), 7, "{words}: {text:?}");
        let size = Size::new(120.0, 110.0).unwrap();
        let svg = single_svg(&label, size).unwrap().bytes;
        assert_eq!(
            count(&shown(&svg), words),
            8,
            "{words} in the SVG: {}",
            shown(&svg)
        );
        let pdf = single_pdf(&label, size).unwrap().bytes;
        let read = text_of(&folder, &format!("label-{at}"), &pdf);
        assert_eq!(count(&read, words), 8, "{words} in {read}");

        let pdf = season::pdf(&owned_season(words), Paper::A4, &mut |_| None).bytes;
        let read = text_of(&folder, &format!("season-{at}"), &pdf);
        // Maker; herb, binomial, bed, stage and note of the harvest; herb and bed of the row; name, line and note of the jar.
        assert_eq!(count(&read, words), 11, "{words} in {read}");

        let pdf = chain::pdf(&owned_chain(words), Paper::A4, &mut |_| None).bytes;
        let read = text_of(&folder, &format!("chain-{at}"), &pdf);
        // Title, foot, and three of its step.
        assert_eq!(count(&read, words), 5, "{words} in {read}");
        let (title, text) = summary(words);
        assert_eq!(
            (title, text),
            (format!("Abseihen: {words}"), format!("Beet: {words}."))
        );
    }
}

/// What the catalogue says in either language where nothing is put into it.
fn whole() -> Vec<String> {
    let all = Language::ALL.into_iter().flat_map(|language| {
        let entries = language.messages().iter();
        let alone = entries.filter(|(_, places)| places.is_empty());
        alone.map(move |(id, _)| language.tell(&Message::of_table(id.clone())))
    });
    all.map(|text| text.trim().to_owned())
        .filter(|text| !text.is_empty())
        .collect()
}

/// Words of the catalogue's own, which a maker may use as well.
fn catalogue() -> Vec<String> {
    let mut words = std::collections::BTreeSet::new();
    for text in whole() {
        let letters = |it: char| it.is_alphanumeric() || "'-.%".contains(it);
        for word in text.split(|it| !letters(it)) {
            words.insert(word.to_owned());
        }
    }
    words.retain(|word| word.chars().any(char::is_alphabetic));
    assert!(words.len() > 500, "the catalogue was not found");
    words.into_iter().collect()
}

fn names() -> impl Strategy<Value = String> {
    let whole: Vec<String> = whole()
        .into_iter()
        .filter(|text| !text.contains(['\n', '\u{a0}']) && text.len() < 60)
        .collect();
    let some = prop::collection::vec(prop::sample::select(catalogue()), 1..5);
    prop_oneof![
        prop::sample::select(whole),
        some.prop_map(|words| words.join(" ")),
    ]
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(2000) })]

    #[test]
    fn names_of_the_catalogue_s_own_words_come_back_unchanged(words in names()) {
        let label = owned(&words, Kind::Gift);
        let text: Vec<String> = items::of(&label).iter().flat_map(items::Item::text).collect();
        for (row, start) in [
            (items::Row::Maker, "Hergestellt von: "),
            (items::Row::PoisonLine, "Giftnotruf "),
            (items::Row::Lot, "Herkunft: "),
        ] {
            let item = items::of(&label).into_iter().find(|item| item.row() == row).unwrap();
            prop_assert_eq!(item.text().join(" "), format!("{start}{words}"));
        }
        prop_assert!(text.contains(&format!("{words} {words}, Blatt getrocknet")), "{:?}", text);
        prop_assert!(text.contains(&format!("Zutaten: {words}")), "{:?}", text);
        let (title, told) = summary(&words);
        prop_assert_eq!(title, format!("Abseihen: {words}"));
        prop_assert_eq!(told, format!("Beet: {words}."));
    }
}

proptest! {
    // A PDF is read by another program, which takes its time.
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(24) })]

    #[test]
    fn drawn_names_of_the_catalogue_s_own_words_come_back_unchanged(words in names()) {
        let label = owned(&words, Kind::Bottle);
        let size = Size::new(200.0, 200.0).unwrap();
        let svg = single_svg(&label, size).unwrap().bytes;
        prop_assert!(count(&shown(&svg), &words) >= 8, "{} in {}", words, shown(&svg));
        let read = text_of(&folder("own"), "drawn", &single_pdf(&label, size).unwrap().bytes);
        prop_assert!(count(&read, &words) >= 8, "{} in {}", words, read);
        let pdf = season::pdf(&owned_season(&words), Paper::A4, &mut |_| None).bytes;
        let read = text_of(&folder("own"), "drawn-season", &pdf);
        prop_assert!(count(&read, &words) >= 9, "{} in {}", words, read);
    }
}

/// The words of a text in small letters, without those that the maker wrote or that are names.
fn words_of(text: &str) -> Vec<String> {
    text.split(|it: char| !it.is_alphabetic())
        .filter(|word| word.chars().count() > 1)
        .map(str::to_lowercase)
        .collect()
}

#[test]
fn in_german_no_english_word_of_the_texts_stands_on_any_paper() {
    // What both languages write alike is told by the German texts.
    let german = words_of(&texts("de"));
    let english: Vec<String> = words_of(&texts("en"))
        .into_iter()
        .filter(|word| !german.contains(word))
        .collect();
    assert!(english.contains(&"poured".to_owned()) && english.len() > 300);
    let mut read = String::new();
    for label in [lemon_balm(), comfrey()]
        .into_iter()
        .chain([Kind::Jar, Kind::Bottle, Kind::Gift].map(full))
    {
        let label = Label {
            language: Language::German,
            name: "7".into(),
            maker: None,
            note: None,
            origins: vec![Origin::Harvest("7".into()), Origin::Marc("8".into())],
            cautions: Vec::new(),
            storage: Some(Message::new("keep-until-its-date")),
            allergens: vec![Argument::message(Message::new("allergen-wine"))],
            ..label
        };
        let size = Size::new(60.0, 36.0).unwrap();
        for item in items::of(&label) {
            read.push_str(&item.text().join("\n"));
        }
        match single_svg(&label, size) {
            Ok(drawn) => {
                let told = drawn.remarks.iter().map(|it| Language::German.tell(it));
                read.extend(told);
                read.push_str(&shown(&drawn.bytes));
            }
            Err(refusal) => read.push_str(&Language::German.tell(&refusal.message)),
        }
    }
    let folder = folder("german");
    let mut season = owned_season("7");
    season.jars[0].lines = vec![];
    season.entries[0].herb = Message::new("herb-lemon-balm").into();
    let pdf = season::pdf(&season, Paper::A4, &mut |_| None).bytes;
    read.push_str(&text_of(&folder, "season", &pdf));
    let pdf = chain::pdf(&owned_chain("7"), Paper::A4, &mut |_| None).bytes;
    read.push_str(&text_of(&folder, "chain", &pdf));
    let left: Vec<String> = words_of(&read)
        .into_iter()
        .filter(|word| english.contains(word))
        .collect();
    assert!(left.is_empty(), "{left:?} in {read}");
}

/// The texts of a language without their ids, places and remarks.
fn texts(language: &str) -> String {
    let path = format!(
        "{}/../src-tauri/crates/words/texts/{language}/papers.ftl",
        env!("CARGO_MANIFEST_DIR")
    );
    let file = std::fs::read_to_string(path).unwrap();
    let lines = file.lines().filter(|line| !line.starts_with(['#', '-']));
    let said = lines.map(|line| {
        let text = line.split_once(" = ").map_or(line, |(_, text)| text);
        let text = text.trim_start_matches([' ', '*', '}']);
        let text = match text.starts_with('[') {
            true => text.split_once(']').map_or("", |(_, text)| text),
            false => text,
        };
        let pieces = text.split('{');
        pieces
            .enumerate()
            .map(|(at, piece)| match at {
                0 => piece,
                _ => piece.split_once('}').map_or("", |(_, after)| after),
            })
            .collect::<Vec<_>>()
            .join(" ")
    });
    said.collect::<Vec<_>>().join("\n")
}

#[test]
fn a_pdf_names_its_language() {
    for (language, tag) in [(Language::English, "(en)"), (Language::German, "(de)")] {
        let season = Season {
            language,
            ..owned_season("7")
        };
        let label = Label {
            language,
            ..lemon_balm()
        };
        let size = Size::new(70.0, 42.0).unwrap();
        for pdf in [
            single_pdf(&label, size).unwrap().bytes,
            season::pdf(&season, Paper::A4, &mut |_| None).bytes,
        ] {
            let said = format!("/Lang{tag}");
            assert!(
                pdf.windows(said.len()).any(|it| it == said.as_bytes()),
                "{said}"
            );
        }
    }
}
