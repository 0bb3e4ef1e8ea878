//! Plants that are taken for a herb and harm.

use std::sync::LazyLock;

use serde::Deserialize;

use super::Herb;
use crate::{note::Status, table};

/// A dangerous plant that is taken for a herb.
#[derive(Debug, Clone, Deserialize)]
pub struct LookAlike {
    herbs: String,
    /// The dangerous plant.
    #[serde(rename = "look_alike")]
    pub name: String,
    /// What it does.
    pub why: String,
    /// How the two are told apart.
    pub tell_apart: String,
    /// Published case or source; empty where it is memory.
    pub source: String,
    /// How sure it is.
    pub status: Status,
}

static LOOK_ALIKES: LazyLock<Vec<LookAlike>> = LazyLock::new(|| {
    table::rows(
        "look_alikes.tsv",
        include_str!("../../data/look_alikes.tsv"),
    )
});

impl Herb {
    /// The dangerous plants it is mistaken for; picking it wild asks for a deliberate confirmation if there is one.
    pub fn look_alikes(&self) -> impl Iterator<Item = &'static LookAlike> {
        let key = self.key.clone();
        LOOK_ALIKES
            .iter()
            .filter(move |row| table::names(&row.herbs, &key))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::herbs::find;

    #[test]
    fn every_row_names_herbs_of_the_list() {
        for row in LOOK_ALIKES.iter() {
            for key in table::items(&row.herbs) {
                assert!(find(key).is_some(), "{key}");
            }
            assert!(
                !row.source.is_empty() || row.status == Status::Memory,
                "{}",
                row.name
            );
        }
    }

    #[test]
    fn wild_garlic_warns_of_autumn_crocus() {
        let names: Vec<_> = find("ramsons")
            .unwrap()
            .look_alikes()
            .map(|row| &row.name)
            .collect();
        assert!(
            names.iter().any(|name| name.contains("Autumn crocus")),
            "{names:?}"
        );
        assert_eq!(find("peppermint").unwrap().look_alikes().count(), 0);
    }
}
