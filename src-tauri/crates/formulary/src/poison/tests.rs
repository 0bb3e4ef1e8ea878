use super::*;
use crate::{herbs, names, poison::called::of_table};

fn every_name() -> impl Iterator<Item = (&'static Poison, String)> {
    all().iter().flat_map(|row| {
        let latin = std::iter::once(row.latin.as_str()).chain(row.synonyms());
        let latin = latin.map(|name| name.split('(').next().unwrap_or(name).trim());
        let named = row.english().chain(row.german()).chain(latin);
        named.map(move |name| (row, name.to_owned()))
    })
}

/// The letters of a name with one slip of each kind in the middle of it.
fn slips(name: &str) -> Vec<String> {
    let letters: Vec<char> = name.chars().collect();
    let at = letters.len() / 2;
    let mut gone = letters.clone();
    gone.remove(at);
    let mut doubled = letters.clone();
    doubled.insert(at, letters[at]);
    let mut swapped = letters.clone();
    swapped.swap(at - 1, at);
    let mut wrong = letters;
    wrong[at] = 'q';
    [gone, doubled, swapped, wrong]
        .map(String::from_iter)
        .into()
}

#[test]
fn every_name_of_the_list_is_found_in_either_number_and_with_a_part_beside_it() {
    let mut seen = 0;
    for (row, name) in every_name() {
        seen += 1;
        for typed in [
            name.clone(),
            name.to_uppercase(),
            format!("{name} leaf"),
            format!("dried {name}"),
            format!("{name} (from the garden)"),
            format!("{name}s"),
        ] {
            let found = of(&typed);
            assert!(found.is_some(), "{typed} ({})", row.key);
        }
    }
    assert_eq!(all().len(), 136, "rows of the list");
    assert!(seen > 700, "{seen}");
}

#[test]
fn every_name_of_the_list_is_found_with_one_slip() {
    let mut missed = Vec::new();
    for (_, name) in every_name() {
        // The cross of a hybrid is no letter of its name.
        if name.contains(" x ") || name.chars().filter(|it| it.is_alphabetic()).count() < 5 {
            continue;
        }
        for typed in slips(&name) {
            // A slip that spells a harmless plant is that plant.
            if of(&typed).is_none() && names::find(&typed, 1).is_empty() {
                missed.push(typed);
            }
        }
    }
    assert!(missed.is_empty(), "{missed:?}");
}

#[test]
fn no_name_of_a_harmless_herb_is_stopped() {
    let listed = |key: &str| {
        let herb = herbs::all().iter().find(|herb| herb.key == key);
        herb.is_some_and(|herb| of_table(&herb.latin).is_some())
    };
    let mut passed = 0;
    for row in names::all() {
        if !listed(&row.key) {
            let found = of(&row.name);
            assert!(
                found.is_none(),
                "{}: {:?}",
                row.name,
                found.map(|it| &it.plant.key)
            );
            passed += 1;
        }
    }
    assert!(passed > 1700, "{passed}");
    for name in KITCHEN {
        let found = of(name);
        assert!(
            found.is_none(),
            "{name}: {:?}",
            found.map(|it| &it.plant.key)
        );
    }
}

/// What stands in kitchens and gardens; common practice, no source.
const KITCHEN: [&str; 72] = [
    "marsh mallow",
    "wild strawberry",
    "ginger",
    "cloves",
    "clover",
    "pansy",
    "rocket",
    "rye",
    "Distel",
    "Rauke",
    "Buche",
    "Eiche",
    "bay",
    "bay leaf",
    "Lorbeer",
    "parsley root",
    "parsnips and carrots",
    "hemp seed",
    "poppy seed",
    "Mohn",
    "Hanfsamen",
    "sumac",
    "hibiscus",
    "honeysuckle",
    "black cohosh",
    "Actaea racemosa",
    "Lonicera japonica",
    "Solanum tuberosum",
    "Iris pallida",
    "Sambucus canadensis",
    "Ilex paraguariensis",
    "Prunus spinosa",
    "Papaver rhoeas",
    "Lactuca sativa",
    "Piper nigrum",
    "Mentha spicata",
    "sweet woodruff",
    "lemon thyme",
    "Eibisch",
    "Malve",
    "Linde",
    "tomato",
    "potato",
    "sweet potato",
    "mate",
    "green tea",
    "coffee",
    "cocoa",
    "vanilla",
    "saffron",
    "Safran",
    "crocus",
    "onion",
    "shallot",
    "chervil",
    "Mispel",
    "day lily",
    "chrysanthemum",
    "Chrysanthemum morifolium",
    "medlar",
    "Eberraute",
    "Wiesenraute",
    "meadow rue",
    "horse mint",
    "wood sorrel",
    "ground elder",
    "Giersch",
    "mixed herbs",
    "my blend",
    "Kräutermischung",
    "roses",
    "sage",
];

#[test]
fn a_genus_that_is_deadly_throughout_stops_and_a_mixed_one_asks_which() {
    for name in [
        "Aconitum",
        "Aconitum lycoctonum",
        "Digitalis lanata",
        "Taxus sp.",
        "Helleborus argutifolius",
        "Senecio inaequidens",
    ] {
        let found = of(name).unwrap_or_else(|| panic!("{name}"));
        let stop = found.stop("seed", Use::Outside, true);
        assert!(stop.is_some_and(|stop| !stop.asks), "{name}");
    }
    for name in ["Actaea", "Lonicera", "Solanum", "Iris", "Prunus spp."] {
        let found = of(name).unwrap_or_else(|| panic!("{name}"));
        assert!(
            found
                .stop("flower", Use::Inside, false)
                .is_some_and(|stop| stop.asks),
            "{name}"
        );
        assert_eq!(found.stop("flower", Use::Inside, true), None, "{name}");
    }
}

#[test]
fn a_stop_goes_as_far_as_the_list_says_and_no_farther() {
    let stop = |name: &str, part: &str, use_, confirmed| {
        let found = of(name).unwrap_or_else(|| panic!("{name}"));
        found.stop(part, use_, confirmed).map(|stop| stop.asks)
    };
    assert_eq!(stop("foxglove", "leaf", Use::Outside, true), Some(false));
    assert_eq!(stop("comfrey", "leaf", Use::Inside, true), Some(false));
    assert_eq!(stop("comfrey", "leaf", Use::Outside, false), None);
    assert_eq!(stop("cannabis", "leaf", Use::Outside, true), Some(false));
    assert_eq!(stop("opium poppy", "seed", Use::Inside, false), None);
    assert_eq!(stop("black locust", "bark", Use::Inside, false), Some(true));
    assert_eq!(stop("black locust", "bark", Use::Inside, true), None);
    assert_eq!(stop("black locust", "flower", Use::Inside, false), None);
    assert_eq!(stop("wild parsnip", "root", Use::Inside, false), None);
    // Nobody looked up the leaf of holly, so a deliberate yes is asked for.
    assert_eq!(stop("holly", "leaf", Use::Inside, false), Some(true));
    assert_eq!(stop("holly", "leaf", Use::Inside, true), None);
    assert_eq!(stop("holly", "berry", Use::Inside, true), Some(false));
}
