//! Every name that a herb goes by, in English, German and Latin, and the search among them.

pub(crate) mod spelling;

use std::{
    collections::{BTreeMap, BTreeSet},
    sync::LazyLock,
};

use serde::Deserialize;

use crate::{
    herbs::{self, Herb},
    note::Status,
    table,
};
use spelling::{folded, is_a_slip, singulars, words_of};

/// A name of a herb.
#[derive(Debug, Clone, Deserialize)]
pub struct Name {
    /// The herb it is a name of; it need not stand in the table of herbs.
    pub key: String,
    /// The name as it is written.
    pub name: String,
    /// `en` or `de`.
    pub language: String,
    /// `common`, `regional`, `trade` (the Latin among them) or `spelling`.
    pub kind: String,
    /// Where the name comes from.
    pub source: String,
    /// How sure it is.
    pub status: Status,
}

/// A herb that goes by names.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Named {
    /// Its key.
    pub key: String,
    /// Its common name in English, with a capital.
    pub common: String,
    /// Its Latin name.
    pub latin: String,
}

struct Names {
    rows: Vec<Name>,
    herbs: BTreeMap<String, Named>,
    /// The keys by folded name, as it is written.
    exact: BTreeMap<String, BTreeSet<String>>,
    /// What follows the first word, the second and so on, by the folded name.
    ends: BTreeMap<String, BTreeSet<String>>,
}

static NAMES: LazyLock<Names> = LazyLock::new(|| {
    let rows: Vec<Name> = table::rows("herb_names.tsv");
    let mut herbs: BTreeMap<String, Named> = BTreeMap::new();
    for herb in herbs::all() {
        herbs.insert(
            herb.key.clone(),
            Named {
                key: herb.key.clone(),
                common: herb.common.clone(),
                latin: herb.latin.clone(),
            },
        );
    }
    // A herb that the table lacks is called by the first of its common names.
    for row in &rows {
        if !herbs.contains_key(&row.key) {
            let mut own = rows.iter().filter(|other| other.key == row.key);
            let latin = own.clone().find(|other| other.source == "Latin name");
            let common = own.find(|other| other.language == "en" && other.kind == "common");
            herbs.insert(
                row.key.clone(),
                Named {
                    key: row.key.clone(),
                    common: raised(&common.unwrap_or(row).name),
                    latin: latin.map(|name| name.name.clone()).unwrap_or_default(),
                },
            );
        }
    }
    let mut exact: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
    let mut add = |name: &str, key: &str| {
        let names = exact.entry(folded(name)).or_default();
        names.insert(key.to_owned());
    };
    for row in &rows {
        add(&row.name, &row.key);
    }
    for herb in herbs.values() {
        add(&herb.common, &herb.key);
        add(&herb.key, &herb.key);
    }
    let mut ends: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
    let common = herbs.values().map(|herb| &herb.common);
    for name in rows.iter().map(|row| &row.name).chain(common) {
        let words = words_of(name);
        let later = (1..words.len()).map(|at| words[at..].concat());
        ends.entry(words.concat()).or_default().extend(later);
    }
    Names {
        rows,
        herbs,
        exact,
        ends,
    }
});

fn raised(name: &str) -> String {
    let mut letters = name.chars();
    letters.next().map_or_else(String::new, |first| {
        first.to_uppercase().chain(letters).collect()
    })
}

/// Every row of the table.
pub fn all() -> &'static [Name] {
    &NAMES.rows
}

/// Whether a herb of the names stands in the table of herbs too.
pub fn is_in_the_table(key: &str) -> bool {
    herbs::all().iter().any(|herb| herb.key == key)
}

/// The keys that a folded name means as it is written, or as the plural of one.
pub(crate) fn exactly(folded: &str) -> Option<&'static BTreeSet<String>> {
    NAMES.exact.get(folded).or_else(|| {
        singulars(folded)
            .iter()
            .find_map(|one| NAMES.exact.get(one))
    })
}

/// The herb of the table that a name means beyond doubt: written so, in either number, and of no other herb.
pub(crate) fn meant(name: &str) -> Option<&'static Herb> {
    let keys = exactly(&folded(name))?;
    let mut keys = keys.iter();
    let only = keys.next().filter(|_| keys.next().is_none())?;
    herbs::all().iter().find(|herb| herb.key == *only)
}

/// The keys of the herbs that a name means: as it is written, in either number, and else with one slip in the typing.
pub fn keys_of(name: &str) -> Vec<&'static str> {
    let typed = folded(name);
    if let Some(keys) = exactly(&typed) {
        return keys.iter().map(String::as_str).collect();
    }
    let slips = NAMES
        .exact
        .iter()
        .filter(|(name, _)| is_a_slip(&typed, name));
    let keys: BTreeSet<&str> = slips
        .flat_map(|(_, keys)| keys)
        .map(String::as_str)
        .collect();
    keys.into_iter().collect()
}

/// How well a name answers what was typed; the best first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Fit {
    Exact,
    Plural,
    Begins,
    Slip,
    Holds,
}

/// The herbs that a text may mean, the likeliest first: a name as it is written, its plural, a name that begins so, a
/// name with one slip in the typing where none is written so, a name with a later word that begins so.
///
/// ```
/// let found = formulary::names::find("elderberries", 5);
/// assert_eq!(found[0].key, "elder-berry");
/// assert_eq!(formulary::names::find("tumeric", 5)[0].key, "turmeric");
/// ```
pub fn find(text: &str, limit: usize) -> Vec<&'static Named> {
    let typed = folded(text);
    if typed.is_empty() {
        return Vec::new();
    }
    let singular = singulars(&typed);
    let mut fits: BTreeMap<&str, (Fit, usize)> = BTreeMap::new();
    for (name, keys) in &NAMES.exact {
        let fit = if *name == typed {
            Fit::Exact
        } else if singular.contains(name) || singulars(name).contains(&typed) {
            Fit::Plural
        } else if name.starts_with(&typed) {
            Fit::Begins
        } else if is_a_slip(&typed, name) || singular.iter().any(|one| is_a_slip(one, name)) {
            Fit::Slip
        } else if has_word(name, &typed) {
            Fit::Holds
        } else {
            continue;
        };
        for key in keys {
            let better = (fit, name.len());
            fits.entry(key)
                .and_modify(|known| *known = better.min(*known))
                .or_insert(better);
        }
    }
    let mut ranked: Vec<_> = fits.into_iter().collect();
    ranked.sort_by_key(|(_, fit)| *fit);
    // Where a name is written so, nobody slipped: "pepperm" is no black pepper.
    let is_written = ranked
        .first()
        .is_some_and(|(_, (fit, _))| *fit <= Fit::Begins);
    ranked.retain(|(_, (fit, _))| !is_written || *fit != Fit::Slip);
    ranked
        .into_iter()
        .take(limit)
        .map(|(key, _)| &NAMES.herbs[key])
        .collect()
}

/// Whether a word of the name other than the first begins so: "mint" in "licorice mint", but not in "cichorium intybus".
fn has_word(name: &str, typed: &str) -> bool {
    let ends = NAMES.ends.get(name);
    ends.is_some_and(|ends| ends.iter().any(|end| end.starts_with(typed)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_name_of_the_table_finds_its_herb() {
        let mut several = BTreeSet::new();
        for row in all() {
            let meanings = exactly(&folded(&row.name)).expect("it is a name");
            let found = find(&row.name, 12);
            let first: BTreeSet<&str> = found
                .iter()
                .take(meanings.len())
                .map(|herb| herb.key.as_str())
                .collect();
            assert!(first.contains(row.key.as_str()), "{}: {first:?}", row.name);
            if meanings.len() > 1 {
                several.insert(folded(&row.name));
            }
        }
        assert_eq!(all().len(), 1820, "rows of the table of names");
        assert_eq!(several.len(), 12, "{several:?}");
    }

    #[test]
    fn a_name_with_one_slip_or_in_the_other_number_finds_its_herb() {
        for (typed, key) in [
            ("elderberries", "elder-berry"),
            ("rosehips", "rose"),
            ("chilli", "cayenne"),
            ("nettles", "nettle"),
            ("coneflower", "echinacea"),
            ("marigold", "calendula"),
            ("black peper", "black-pepper"),
            ("cinamon", "cinnamon"),
            ("catnip", "catnip"),
            ("Brennesseln", "nettle"),
            ("Ringelblumen", "calendula"),
        ] {
            let found = find(typed, 5);
            assert_eq!(
                found.first().map(|it| it.key.as_str()),
                Some(key),
                "{typed}"
            );
        }
    }

    #[test]
    fn what_means_several_herbs_is_not_decided_here() {
        assert!(meant("mint").is_none() && meant("Elder").is_none());
        assert_eq!(
            meant("Elderberries").map(|it| it.key.as_str()),
            Some("elder-berry")
        );
        let mints: Vec<&str> = find("mint", 2).iter().map(|it| it.key.as_str()).collect();
        assert_eq!(mints, ["peppermint", "spearmint"]);
        let all = find("mint", 20);
        assert!(
            all.iter().all(|it| it.key != "chicory"),
            "cichoriu-m int-ybus"
        );
    }
}
