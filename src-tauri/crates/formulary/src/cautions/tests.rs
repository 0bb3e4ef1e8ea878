use super::*;
use crate::{
    compose::{Composition, Plant, Proposal, compose},
    herbs, preparations,
    preparations::{PlantState, Verdict},
};

fn jar(preparation: &str, plants: &[(&str, &str, PlantState)]) -> Proposal {
    let plants = plants.iter().map(|(herb, part, state)| Plant {
        herb: (*herb).to_owned(),
        part: (*part).to_owned(),
        state: *state,
        mass_g: 50.0,
        moisture_wet_percent: None,
        told: None,
        identity: Default::default(),
    });
    let plants: Vec<Plant> = plants.collect();
    let mut wish = Composition::of(preparation, plants[0].clone());
    wish.plants = plants;
    compose(&wish).unwrap()
}

fn of(preparation: &str, herb: &str, part: &str, state: PlantState) -> Vec<Caution> {
    jar(preparation, &[(herb, part, state)]).cautions
}

fn codes(cautions: &[Caution]) -> Vec<&str> {
    cautions.iter().map(|one| one.code.as_str()).collect()
}

fn clause<'a>(cautions: &'a [Caution], code: &str) -> &'a Caution {
    let mut found = cautions.iter().filter(|one| one.code == code);
    found.next().unwrap_or_else(|| panic!("no {code}"))
}

#[test]
fn every_rule_has_a_source_or_says_that_it_has_none() {
    for row in rules::all() {
        let is_said = !row.source.is_empty() || row.status > Status::PartlyConfirmed;
        assert!(is_said, "{}", row.code);
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
fn every_clause_is_of_a_listed_herb_is_said_somewhere_and_names_its_text() {
    assert_eq!(clause::all().len(), 387);
    for row in clause::all() {
        let is_known = row.key.starts_with('*')
            || herbs::find(&row.key).is_some_and(|herb| herb.key == row.key);
        assert!(is_known, "{}", row.key);
        let caution = row.caution(None);
        assert!(!caution.at.is_empty(), "{}", row.key);
        assert!(
            caution.source.is_some() || caution.status != Status::Confirmed,
            "{}",
            row.key
        );
    }
}

#[test]
fn a_stop_for_some_people_forbids_no_jar() {
    // Health Canada 2018 and the US safety review of 2019 bar both in pregnancy; the jar is made all the same.
    for (herb, part) in [
        ("rosemary", "leaf"),
        ("willow", "bark"),
        ("gentian", "root"),
    ] {
        let jar = jar("tincture", &[(herb, part, PlantState::Dried)]);
        let pregnancy = clause(&jar.cautions, "pregnancy");
        assert_eq!(pregnancy.severity, Severity::NotFor, "{herb}");
        assert_eq!(pregnancy.herb, Some(herbs::find(herb).unwrap().name()));
        assert!(jar.keeping.verdict < Verdict::DoNotMake, "{herb}");
    }
}

#[test]
fn borage_flower_holds_the_alkaloids_too() {
    // Borago (not approved), German Commission E, 12 July 1991.
    for part in ["flower", "leaf"] {
        let refused = compose(&Composition::of("glycerite", jar_plant("borage", part)));
        assert_eq!(
            refused.unwrap_err().refusal().field,
            "plants[0].herb",
            "{part}"
        );
        let limit = herbs::find("borage").unwrap().limit_of(part).unwrap();
        assert_eq!(limit.1.code, "do-not-use", "{part}");
    }
    let said = of_herb(herbs::find("borage").unwrap());
    assert_eq!(
        (said[0].code.as_str(), said[0].severity),
        ("do-not-use", Severity::Stop)
    );
}

#[test]
fn interactions_that_were_missing_are_said() {
    for (herb, part) in [
        ("ginger", "rhizome"),
        ("feverfew", "leaf"),
        ("red-clover", "flower"),
        ("meadowsweet", "flowering tops"),
        ("horsetail", "sterile stem"),
        ("nettle", "leaf"),
    ] {
        let said = of("tincture", herb, part, PlantState::Dried);
        let row = clause(&said, "interaction");
        assert!(
            row.severity <= Severity::Warn && row.is_said_at(Moment::Use),
            "{herb}"
        );
    }
    let schisandra = of_herb(herbs::find("schisandra").unwrap());
    assert_eq!(
        clause(&schisandra, "interaction").severity,
        Severity::NotFor
    );
    // Package leaflets of St John's wort medicines: cancer and transplant medicines too, and not in pregnancy.
    let wort = of(
        "tincture",
        "st-johns-wort",
        "flowering tops",
        PlantState::Dried,
    );
    assert_eq!(clause(&wort, "pregnancy").severity, Severity::NotFor);
    assert_eq!(clause(&wort, "interaction").status, Status::Confirmed);
}

#[test]
fn pregnancy_and_nursing_that_were_missing_are_said() {
    for herb in [
        "skullcap",
        "rosemary",
        "gentian",
        "burdock",
        "fennel",
        "red-clover",
    ] {
        let said = of_herb(herbs::find(herb).unwrap());
        assert_eq!(
            clause(&said, "pregnancy").severity,
            Severity::NotFor,
            "{herb}"
        );
    }
    let fennel = of_herb(herbs::find("fennel").unwrap());
    assert_eq!(clause(&fennel, "nursing").severity, Severity::NotFor);
    let sage = of_herb(herbs::find("sage").unwrap());
    let ages = sage.iter().filter(|one| one.code == "age");
    assert!(ages.into_iter().any(|one| one.severity == Severity::NotFor));
}

#[test]
fn thujone_is_said_of_mugwort_and_no_milligram_is_left() {
    let mugwort = of("tincture", "mugwort", "flowering tops", PlantState::Dried);
    assert!(
        clause(&mugwort, "duration")
            .text
            .to_string()
            .contains("clause-mugwort-duration")
    );
    let sage = of("tincture", "sage", "leaf", PlantState::Dried);
    assert!(codes(&sage).contains(&"duration"));
    for herb in herbs::all() {
        assert!(
            of_herb(herb).iter().all(|one| one.code != "thujone"),
            "{}",
            herb.key
        );
    }
}

#[test]
fn arnica_is_thinned_before_it_touches_skin() {
    let arnica = of("tincture", "arnica", "flower", PlantState::Dried);
    assert_eq!(arnica[0].code, "outside-only");
    let thin = arnica.iter().find(|one| {
        one.text
            .to_string()
            .contains("clause-arnica-flower-handling")
    });
    assert!(thin.is_some_and(Caution::is_for_a_label));
}

#[test]
fn comfrey_names_the_garden_plant_and_says_that_its_jar_was_never_measured() {
    let comfrey = herbs::find("comfrey").unwrap();
    assert!(
        for_picking(comfrey)
            .iter()
            .any(|one| one.text.to_string().contains("clause-comfrey-do-not-use"))
    );
    let jar = jar("tincture", &[("comfrey", "root", PlantState::Dried)]);
    assert!(jar.cautions.iter().any(|one| {
        one.text
            .to_string()
            .contains("clause-comfrey-root-handling")
    }));
    assert!(
        jar.keeping.verdict < Verdict::DoNotMake,
        "on whole skin it may be used"
    );
    let wine = compose(&Composition::of("cordial", jar_plant("comfrey", "root")));
    assert_eq!(wine.unwrap_err().refusal().field, "plants[0].herb");
}

fn jar_plant(herb: &str, part: &str) -> Plant {
    Plant {
        herb: herb.to_owned(),
        part: part.to_owned(),
        state: PlantState::Dried,
        mass_g: 50.0,
        moisture_wet_percent: None,
        told: None,
        identity: Default::default(),
    }
}

#[test]
fn weeds_in_the_cut_are_said_once_where_a_herb_is_picked() {
    for herb in [
        "oregano",
        "thyme",
        "nettle",
        "st-johns-wort",
        "chamomile",
        "peppermint",
        "fennel",
        "lemon-balm",
    ] {
        let said = for_picking(herbs::find(herb).unwrap());
        let weeds = said.iter().filter(|one| one.code == "weeds-in-the-cut");
        assert_eq!(weeds.count(), 1, "{herb}");
    }
    let gentian = for_picking(herbs::find("gentian").unwrap());
    assert!(
        !codes(&gentian).contains(&"weeds-in-the-cut"),
        "a root is dug, not cut"
    );
    let jar = of("tincture", "thyme", "flowering tops", PlantState::Dried);
    assert!(
        !codes(&jar).contains(&"weeds-in-the-cut"),
        "it was picked long ago"
    );
}

#[test]
fn gloves_are_said_where_the_plant_irritates() {
    for herb in ["cayenne", "jalapeno", "nettle", "angelica", "comfrey"] {
        let said = for_picking(herbs::find(herb).unwrap());
        assert!(codes(&said).contains(&"gloves"), "{herb}");
    }
    let chilli = of("tincture", "cayenne", "fruit", PlantState::Dried);
    assert!(codes(&chilli).contains(&"gloves"));
}

#[test]
fn glazed_pottery_is_named_beside_metal_for_every_acid() {
    for (preparation, herb, part) in [
        ("vinegar", "rosemary", "leaf"),
        ("oxymel", "thyme", "flowering tops"),
        ("wine-table", "hawthorn", "berry"),
    ] {
        let said = of(preparation, herb, part, PlantState::Dried);
        let vessels = said.iter().filter(|one| one.code == "acid-vessel");
        assert_eq!(vessels.count(), 1, "{preparation}");
    }
    let tincture = of("tincture", "thyme", "flowering tops", PlantState::Dried);
    assert!(!codes(&tincture).contains(&"acid-vessel"));
}

#[test]
fn standing_notes_are_notes_and_stand_together_once() {
    let said = jar(
        "tincture",
        &[
            ("valerian", "root", PlantState::Dried),
            ("hops", "cone", PlantState::Dried),
        ],
    )
    .cautions;
    let standing = ["wrong-alcohol", "flame", "children-alcohol"];
    let last: Vec<&str> = said
        .iter()
        .rev()
        .take(3)
        .map(|one| one.code.as_str())
        .collect();
    for code in standing {
        assert!(last.contains(&code), "{code}");
        assert_eq!(said.iter().filter(|one| one.code == code).count(), 1);
        assert_eq!(clause(&said, code).severity, Severity::Note);
    }
    let order: Vec<Severity> = said.iter().map(|one| one.severity).collect();
    assert!(order.is_sorted(), "the gravest first: {order:?}");
}

#[test]
fn fresh_garlic_in_oil_warns_of_botulism_first_and_once() {
    let said = of("oil", "garlic", "bulb", PlantState::Fresh);
    assert_eq!(said[0].code, "botulism-fresh-oil");
    assert!(codes(&said).contains(&"no-smell-test"));
    assert!(
        !said
            .iter()
            .any(|one| one.text.to_string().contains("clause-garlic-bulb-handling"))
    );
    assert!(said[0].is_for_a_label());
}

#[test]
fn an_oxymel_warns_of_infants_and_the_strip() {
    let said = of("oxymel", "thyme", "flowering tops", PlantState::Dried);
    assert!(codes(&said).contains(&"infant-honey") && codes(&said).contains(&"ph-strip"));
    assert!(clause(&said, "infant-honey").is_for_a_label());
    assert!(!clause(&said, "ph-strip").is_for_a_label());
}

#[test]
fn what_is_said_of_extracts_with_alcohol_is_not_said_of_an_oil() {
    let said = |preparation: &str| of(preparation, "thyme", "flowering tops", PlantState::Dried);
    assert!(codes(&said("tincture")).contains(&"pregnancy"));
    let oil = said("oil");
    assert!(
        !oil.iter()
            .any(|one| one.text.to_string().contains("clause-thyme-pregnancy"))
    );
    assert!(
        codes(&oil).contains(&"allergy"),
        "what holds of every form stays"
    );
}

#[test]
fn a_jar_for_the_skin_says_nothing_of_swallowing_its_alcohol() {
    let arnica = of("tincture", "arnica", "flower", PlantState::Dried);
    assert!(!codes(&arnica).contains(&"no-data-nursing"));
    assert!(codes(&arnica).contains(&"flame"));
}

#[test]
fn cooked_berries_are_not_told_to_be_cooked() {
    // EM 9446, Oregon State University Extension, 2024: every berry is cooked, dried and frozen ones too.
    let tells = |state: PlantState| {
        let said = of("shrub", "elder-berry", "berry", state);
        said.iter().any(|one| {
            one.text
                .to_string()
                .contains("clause-elder-berry-berry-handling\"")
        })
    };
    assert!(tells(PlantState::Fresh) && tells(PlantState::Dried));
    assert!(!tells(PlantState::Cooked));
}

#[test]
fn silence_is_said_as_what_it_is() {
    for herb in ["chickweed", "spearmint"] {
        let said = of_herb(herbs::find(herb).unwrap());
        assert!(codes(&said).contains(&"not-looked-up"), "{herb}");
    }
    for herb in herbs::all().iter().filter(|herb| is_read(herb)) {
        assert!(
            of_herb(herb).iter().all(|one| one.code != "not-looked-up"),
            "{}",
            herb.key
        );
    }
}

#[test]
fn a_label_says_what_the_holder_must_know_and_nothing_of_our_sources() {
    let willow = of("tincture", "willow", "bark", PlantState::Dried);
    let lines = for_a_label(&willow);
    assert!(lines.iter().any(|line| {
        line.to_string()
            .contains("caution-not-for-pregnant-or-nursing")
    }));
    assert!(
        lines
            .iter()
            .all(|line| !line.to_string().contains("cadmium")
                && !line.to_string().contains("wrong-alcohol"))
    );
    let several = jar(
        "tincture",
        &[
            ("valerian", "root", PlantState::Dried),
            ("willow", "bark", PlantState::Dried),
        ],
    );
    let named = for_a_label(&several.cautions);
    let of_willow = named
        .iter()
        .filter(|line| line.to_string().contains("\"herb-willow\""));
    assert!(of_willow.count() > 3, "{named:?}");
}

#[test]
fn no_wording_names_a_telephone_number() {
    for note in general() {
        assert!(
            !note.text.to_string().contains("1-800") && !note.text.to_string().contains("222"),
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
