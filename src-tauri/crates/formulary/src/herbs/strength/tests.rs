use super::*;
use crate::herbs::{all, find};

fn strength(herb: &str, part: &str, ratio: f64) -> (f64, f64) {
    let found = find(herb).unwrap().strength(part, ratio);
    found.unwrap_or_else(|| panic!("{herb} {part}")).percent_vol
}

#[test]
fn every_row_is_of_a_listed_herb_and_in_order() {
    assert_eq!(PUBLISHED.len(), 121);
    for row in PUBLISHED.iter() {
        assert!(
            find(&row.key).is_some_and(|herb| herb.key == row.key),
            "{}",
            row.key
        );
        for (low, high) in [row.ratio_ml_per_g(), row.strength_percent_vol()]
            .into_iter()
            .flatten()
        {
            assert!(0.0 < low && low <= high, "{}", row.key);
        }
        assert!(
            row.status != Status::Confirmed || !row.source.is_empty(),
            "{}",
            row.key
        );
    }
}

/// Front pages and section 2 of the HMPC texts named in the rows.
#[test]
fn an_extract_of_one_to_one_never_widens_a_tincture() {
    for (herb, part, ratio, expected) in [
        ("agrimony", "flowering tops", 5.0, (45.0, 45.0)),
        ("eyebright", "herb", 5.0, (45.0, 45.0)),
        ("goldenrod", "flowering tops", 5.0, (45.0, 45.0)),
        ("gentian", "root", 5.0, (70.0, 70.0)),
        ("meadowsweet", "flowering tops", 5.0, (45.0, 45.0)),
        ("juniper", "berry", 5.0, (45.0, 45.0)),
        ("lavender", "flower", 5.0, (50.0, 60.0)),
        ("lime-flower", "flower", 5.0, (45.0, 45.0)),
        ("calendula", "flower", 5.0, (70.0, 90.0)),
        ("yarrow", "flowering tops", 5.0, (31.5, 45.0)),
        ("valerian", "root", 5.0, (60.0, 80.0)),
        ("valerian", "root", 10.0, (56.0, 56.0)),
        ("valerian", "root", 8.0, (60.0, 60.0)),
        ("burdock", "root", 5.0, (25.0, 43.0)),
        ("burdock", "root", 10.0, (45.0, 45.0)),
    ] {
        assert_eq!(strength(herb, part, ratio), expected, "{herb} 1:{ratio}");
    }
}

#[test]
fn an_extract_speaks_only_where_no_tincture_was_published_and_says_that_it_is_one() {
    for (herb, part, expected) in [
        ("rosemary", "leaf", (45.0, 45.0)),
        ("white-horehound", "flowering tops", (20.0, 30.0)),
        ("plantain", "leaf", (20.0, 40.0)),
    ] {
        let found = find(herb).unwrap().strength(part, 5.0).unwrap();
        assert_eq!(found.percent_vol, expected, "{herb}");
        assert_eq!(found.of.form, Form::LiquidExtract, "{herb}");
    }
}

#[test]
fn the_extract_of_a_measured_cream_is_no_figure_for_a_jar_of_comfrey() {
    let comfrey = find("comfrey").unwrap();
    assert!(
        comfrey
            .published()
            .any(|row| row.strength_percent_vol() == Some((65.0, 65.0)))
    );
    assert!(comfrey.strength("root", 5.0).is_none());
}

#[test]
fn a_figure_of_one_part_is_none_of_another() {
    let hawthorn = find("hawthorn").unwrap();
    assert!(hawthorn.strength("leaf and flower", 4.0).is_some());
    assert!(hawthorn.strength("berry", 4.0).is_none());
    assert_eq!(strength("dandelion", "root", 5.0), (30.0, 30.0));
    assert_eq!(strength("dandelion", "leaf", 5.0), (25.0, 25.0));
}

#[test]
fn a_usual_ratio_that_no_text_prints_is_practice() {
    let printed = find("sage").unwrap().dried_ratio("leaf").unwrap();
    assert_eq!((printed.usual, printed.status), (10.0, Status::Confirmed));
    let thyme = find("thyme")
        .unwrap()
        .dried_ratio("flowering tops")
        .unwrap();
    assert_eq!((thyme.low, thyme.usual, thyme.high), (5.0, 10.0, 10.0));
    let practice = find("oregano")
        .unwrap()
        .dried_ratio("flowering tops")
        .unwrap();
    assert_eq!((practice.usual, practice.status), (5.0, Status::Practice));
    assert!(practice.source.is_empty());
}

#[test]
fn no_school_no_firm_and_no_private_site_is_a_source() {
    for herb in all() {
        for row in herb.published() {
            for word in [
                "Moore",
                "Materia Medica, 5th",
                "drugs.com",
                "selfheal",
                "Physicians' Desk",
                "http",
            ] {
                assert!(!row.source.contains(word), "{}: {}", herb.key, row.source);
            }
        }
    }
}
