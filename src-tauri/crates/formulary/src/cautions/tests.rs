use super::*;
use crate::{
    compose::{Composition, Plant, compose},
    herbs, preparations,
};

fn codes(preparation: &str, herb: &str, part: &str, state: PlantState) -> Vec<String> {
    let plant = Plant {
        herb: herb.to_owned(),
        part: part.to_owned(),
        state,
        mass_g: 50.0,
        moisture_wet_percent: None,
    };
    let jar = compose(&Composition::of(preparation, plant)).unwrap();
    jar.cautions.into_iter().map(|note| note.code).collect()
}

#[test]
fn every_row_has_a_source_or_says_that_it_has_none() {
    for row in CAUTIONS.iter() {
        assert!(
            !row.source.is_empty() || row.status > Status::PartlyConfirmed,
            "{}",
            row.code
        );
        assert!(row.text.ends_with('.'), "{}", row.code);
        for key in table::items(&row.herbs).filter(|key| *key != "*") {
            assert!(
                herbs::find(key).is_some_and(|herb| herb.key == key),
                "{key}"
            );
        }
        for key in table::items(&row.preparations).filter(|key| *key != "*") {
            let known = |one: &preparations::Preparation| one.key == key || one.family == key;
            assert!(preparations::all().iter().any(known), "{key}");
        }
    }
}

#[test]
fn fresh_garlic_in_oil_warns_of_botulism_first() {
    let codes = codes("oil", "garlic", "bulb", PlantState::Fresh);
    assert_eq!(codes[0], "botulism-fresh-oil");
    assert!(codes.iter().any(|code| code == "no-smell-test"));
}

#[test]
fn a_tincture_warns_of_flame_wrong_alcohol_and_children() {
    let codes = codes("tincture", "valerian", "root", PlantState::Dried);
    for code in [
        "flame",
        "wrong-alcohol",
        "children-alcohol",
        "interactions",
        "herb",
    ] {
        assert!(codes.iter().any(|one| one == code), "{code}");
    }
    assert!(!codes.iter().any(|one| one == "infant-honey"));
}

#[test]
fn an_oxymel_warns_of_infants_and_the_strip() {
    let codes = codes("oxymel", "thyme", "flowering tops", PlantState::Dried);
    assert!(codes.contains(&"infant-honey".to_owned()) && codes.contains(&"ph-strip".to_owned()));
}

#[test]
fn no_wording_names_a_telephone_number() {
    for note in general() {
        assert!(
            !note.text.contains("1-800") && !note.text.contains("222"),
            "{}",
            note.code
        );
    }
    let all = general();
    for code in [
        "not-medical-advice",
        "no-dose",
        "interactions",
        "poison",
        "oil",
        "alcohol",
        "selling",
    ] {
        assert!(all.iter().any(|note| note.code == code), "{code}");
    }
}

#[test]
fn memory_is_said_in_the_line_itself() {
    let notes = of_herb(herbs::find("arnica").unwrap());
    assert_eq!(notes[0].code, "outside-only");
    assert!(notes[1].text.contains("not checked") && notes[1].status == Status::Memory);
    let picking = for_picking(herbs::find("wild garlic").unwrap());
    assert!(
        picking
            .iter()
            .any(|note| note.text.contains("Autumn crocus"))
    );
}
