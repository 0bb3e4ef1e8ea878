//! From a name to the plant of the list that it means.

use std::{
    collections::{BTreeMap, BTreeSet},
    sync::LazyLock,
};

use serde::Deserialize;

use super::{Poison, all};
use crate::{
    herbs::{self, Herb},
    names::{
        self,
        spelling::{folded, is_a_slip, singulars, without_umlauts, words_of},
    },
    table,
};

/// A plant of the list as it was called.
#[derive(Debug, Clone, PartialEq)]
pub struct Called {
    /// The plant.
    pub plant: &'static Poison,
    /// The name that was typed, where it is that of harmless plants too.
    pub which: Option<String>,
    /// Whether all of its genus is deadly, so that no part of it is looked at twice.
    pub(super) is_deadly_throughout: bool,
}

impl PartialEq for Poison {
    fn eq(&self, other: &Self) -> bool {
        self.key == other.key
    }
}

#[derive(Deserialize)]
struct Genus {
    genus: String,
    members: Members,
}

#[derive(Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "lowercase")]
enum Members {
    Deadly,
    Mixed,
    /// So usual in kitchens that the bare genus is none of the few that harm.
    Harmless,
}

#[derive(Deserialize)]
struct Harmless {
    name: String,
}

/// The names of the list, folded.
struct Index {
    /// Common and Latin names.
    names: BTreeMap<String, &'static Poison>,
    /// Genera of the list and of the table of genera.
    genera: BTreeMap<String, Group>,
    /// Names of harmless plants, which no slip makes poisonous.
    harmless: BTreeSet<String>,
}

struct Group {
    plant: &'static Poison,
    members: Option<Members>,
    /// Whether the list itself names all of it ("Senecio spp.").
    is_listed: bool,
}

static INDEX: LazyLock<Index> = LazyLock::new(|| {
    let mut names = BTreeMap::new();
    let mut genera: BTreeMap<String, Group> = BTreeMap::new();
    for plant in all() {
        for name in plant.english().chain(plant.german()) {
            names.entry(folded(name)).or_insert(plant);
            if let Some(plain) = without_umlauts(name) {
                names.entry(plain).or_insert(plant);
            }
        }
        for latin in std::iter::once(plant.latin.as_str()).chain(plant.synonyms()) {
            let (latin, also) = latin.split_once('(').unwrap_or((latin, ""));
            let also = also.trim_end_matches(')');
            for name in [latin, also].map(folded) {
                if !name.is_empty() {
                    names.entry(name).or_insert(plant);
                }
            }
            let words = words_of(latin);
            if let [genus, species, ..] = words.as_slice() {
                names.entry(format!("{genus}{species}")).or_insert(plant);
                let group = genera.entry(genus.clone()).or_insert(Group {
                    plant,
                    members: None,
                    is_listed: false,
                });
                group.is_listed |= species == "spp";
            }
        }
    }
    // Names of a herb of ours that stands on the list are names of the plant of the list.
    let is_listed = |key: &str| {
        let latin = herbs::all().iter().find(|herb| herb.key == key);
        latin.and_then(|herb| names.get(&folded(&herb.latin)).copied())
    };
    let mut harmless = BTreeSet::new();
    let mut more = Vec::new();
    for row in names::all() {
        match is_listed(&row.key) {
            Some(plant) => more.push((folded(&row.name), plant)),
            None => drop(harmless.insert(folded(&row.name))),
        }
    }
    for herb in herbs::all() {
        if is_listed(&herb.key).is_none() {
            harmless.extend([&herb.key, &herb.common, &herb.latin].map(|name| folded(name)));
        }
    }
    more.retain(|(name, _)| !harmless.contains(name));
    names.extend(more);
    let rows: Vec<Harmless> = table::rows("harmless_names.tsv");
    harmless.extend(rows.iter().map(|row| folded(&row.name)));
    // A genus of harmless herbs of ours is mixed, whatever the table of genera leaves out.
    for name in herbs::all().iter().map(|herb| herb.latin.as_str()).chain(
        names::all()
            .iter()
            .filter(|row| row.source.ends_with("Latin)") || row.source == "Latin name")
            .map(|row| row.name.as_str()),
    ) {
        let words = words_of(name);
        if let [genus, ..] = words.as_slice()
            && !names.contains_key(&words.concat())
            && let Some(group) = genera.get_mut(genus)
        {
            group.members = Some(Members::Mixed);
        }
    }
    let rows: Vec<Genus> = table::rows("poison_genera.tsv");
    for row in rows {
        if let Some(group) = genera.get_mut(&folded(&row.genus)) {
            group.members = Some(row.members);
        }
    }
    Index {
        names,
        genera,
        harmless,
    }
});

/// Parts and states that stand beside a name without changing the plant.
const BESIDE: [&str; 65] = [
    "leaf",
    "leaves",
    "flower",
    "flowers",
    "root",
    "roots",
    "seed",
    "seeds",
    "herb",
    "bark",
    "berry",
    "berries",
    "fruit",
    "fruits",
    "bulb",
    "bulbs",
    "rhizome",
    "rhizomes",
    "stem",
    "stems",
    "stalk",
    "stalks",
    "twig",
    "twigs",
    "tops",
    "petals",
    "blossom",
    "blossoms",
    "bud",
    "buds",
    "plant",
    "dried",
    "dry",
    "fresh",
    "cut",
    "own",
    "my",
    "the",
    "a",
    "an",
    "blatt",
    "blaetter",
    "bluete",
    "blueten",
    "wurzel",
    "wurzeln",
    "samen",
    "kraut",
    "rinde",
    "beere",
    "beeren",
    "frucht",
    "fruechte",
    "knolle",
    "zwiebel",
    "frisch",
    "frische",
    "getrocknet",
    "getrocknete",
    "spp",
    "tea",
    "tee",
    "tincture",
    "tinktur",
    "sp",
];
/// Parts at the end of a German word.
const ENDINGS: [&str; 16] = [
    "blaetter", "blatt", "blueten", "bluete", "wurzeln", "wurzel", "samen", "kraut", "rinde",
    "beeren", "beere", "fruechte", "nadeln", "knolle", "zwiebel", "zweige",
];

/// The plant of the list that a name means, common or Latin, in either language, number and with one slip.
///
/// ```
/// use formulary::poison;
/// assert_eq!(poison::of("Fingerhutblätter").unwrap().plant.key, "foxglove");
/// assert_eq!(poison::of("foxgolve").unwrap().plant.key, "foxglove");
/// assert!(poison::of("mullein").is_none());
/// ```
pub fn of(name: &str) -> Option<Called> {
    called(name, true).or_else(|| {
        // "Foxglove (garden)", "mint / pennyroyal": each piece is a name of its own.
        let marks = ['(', ')', '[', ']', ',', ';', '/', '|', ':', '+', '&'];
        let pieces = name.split(marks);
        if let Some(found) = pieces.clone().find_map(|piece| called(piece, true)) {
            return Some(found);
        }
        let pieces = pieces
            .flat_map(|piece| piece.split(" - "))
            .flat_map(|piece| piece.split(" and "))
            .flat_map(|piece| piece.split(" und "));
        let pieces: Vec<&str> = pieces.map(str::trim).filter(|it| !it.is_empty()).collect();
        (pieces.len() > 1)
            .then(|| pieces.into_iter().find_map(|piece| called(piece, true)))
            .flatten()
    })
}

/// As [`of`] for a name of the tables, where nothing was typed and nothing slipped.
pub(super) fn of_table(name: &str) -> Option<Called> {
    called(name, false)
}

/// The plant of the list that a herb of our own table is.
pub fn of_herb(herb: &Herb) -> Option<&'static Called> {
    static OF_HERBS: LazyLock<BTreeMap<&'static str, Called>> = LazyLock::new(|| {
        let herbs = herbs::all().iter();
        herbs
            .filter_map(|herb| Some((herb.key.as_str(), of_table(&herb.latin)?)))
            .collect()
    });
    OF_HERBS.get(herb.key.as_str())
}

fn called(name: &str, may_slip: bool) -> Option<Called> {
    let index = &*INDEX;
    let words = words_of(name);
    let typed = words.concat();
    let genus = words.first().and_then(|word| index.genera.get(word));
    // A bare genus, such as "Solanum" or "Sambucus spp.".
    let is_bare = words.len() == 1 || (words.len() == 2 && matches!(&*words[1], "spp" | "sp"));
    if is_bare
        && let Some(group) = genus
        && group.members == Some(Members::Mixed)
        && !index.harmless.contains(&typed)
    {
        return Some(Called {
            plant: group.plant,
            which: Some(name.trim().to_owned()),
            is_deadly_throughout: false,
        });
    }
    let sure = |plant: &'static Poison| Called {
        plant,
        which: None,
        is_deadly_throughout: is_deadly(plant),
    };
    if let Some(plant) = index.names.get(&typed) {
        return Some(sure(plant));
    }
    if index.harmless.contains(&typed) {
        return None;
    }
    let mut ways = vec![typed.clone()];
    ways.extend(without_umlauts(name));
    ways.extend(trimmed(&words));
    let as_typed = ways.clone();
    for ending in ENDINGS {
        if let Some(stem) = typed.strip_suffix(ending)
            && stem.len() >= 4
        {
            ways.push(stem.to_owned());
        }
    }
    // The longest piece that is a name is the plant.
    ways.sort_by_key(|way| std::cmp::Reverse(way.len()));
    for way in &ways {
        if let Some(plant) = index.names.get(way) {
            return Some(sure(plant));
        }
        if index.harmless.contains(way) {
            return None;
        }
    }
    let plurals: Vec<String> = ways.iter().flat_map(|way| singulars(way)).collect();
    if plurals.iter().any(|one| index.harmless.contains(one)) {
        return None;
    }
    if let Some(plant) = plurals.iter().find_map(|one| index.names.get(one)) {
        return Some(sure(plant));
    }
    // Genus and species, whatever follows them; a bare genus whose members are all alike.
    if let [genus_word, rest @ ..] = words.as_slice()
        && let Some(group) = genus
    {
        let species = rest.first();
        let listed = species.and_then(|species| index.names.get(&format!("{genus_word}{species}")));
        if let Some(plant) = listed {
            return Some(sure(plant));
        }
        let all_of_it = group.members == Some(Members::Deadly)
            || (group.is_listed && group.members != Some(Members::Mixed));
        if all_of_it || (is_bare && group.members.is_none()) {
            return Some(sure(group.plant));
        }
    }
    if !may_slip {
        return None;
    }
    let first_two = match words.as_slice() {
        [genus, species, _, ..] => Some(format!("{genus}{species}")),
        _ => None,
    };
    let mut ways = as_typed;
    ways.extend(
        plurals
            .into_iter()
            .filter(|one| one.len() + 2 >= typed.len()),
    );
    ways.extend(first_two);
    let mut hits = index
        .names
        .iter()
        .filter(|(name, _)| ways.iter().any(|way| is_a_slip(way, name)));
    hits.next().map(|(_, plant)| sure(plant))
}

/// The name without the parts and states at either end of it, one less at a time.
fn trimmed(words: &[String]) -> Vec<String> {
    let beside = |word: &String| BESIDE.contains(&word.as_str());
    let front = words.iter().take_while(|word| beside(word)).count();
    let back = words.iter().rev().take_while(|word| beside(word)).count();
    let mut found = Vec::new();
    for start in 0..=front {
        for end in (words.len() - back)..=words.len() {
            if start < end && (start, end) != (0, words.len()) {
                found.push(words[start..end].concat());
            }
        }
    }
    found
}

fn is_deadly(plant: &Poison) -> bool {
    let genus = words_of(&plant.latin).into_iter().next();
    genus
        .and_then(|genus| INDEX.genera.get(&genus))
        .is_some_and(|group| group.members == Some(Members::Deadly))
}
