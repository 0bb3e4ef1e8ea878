//! Plants that are taken for a herb and harm.

use std::sync::LazyLock;

use message::Message;
use serde::Deserialize;

use super::Herb;
use crate::{note::Status, table};

/// A dangerous plant that is taken for a herb.
#[derive(Debug, Clone, Deserialize)]
pub struct LookAlike {
    herbs: String,
    look_alike: String,
    why: String,
    tell_apart: String,
    /// Published case or source; empty where it is memory.
    pub source: String,
    /// How sure the mix-up is; a mark that no book was checked for says so itself.
    pub status: Status,
}

impl LookAlike {
    /// The dangerous plant.
    pub fn name(&self) -> Message {
        Message::of_table(self.look_alike.clone())
    }

    /// What it does.
    pub fn why(&self) -> Message {
        Message::of_table(self.why.clone())
    }

    /// How the two are told apart.
    pub fn tell_apart(&self) -> Message {
        Message::of_table(self.tell_apart.clone())
    }
}

static LOOK_ALIKES: LazyLock<Vec<LookAlike>> = LazyLock::new(|| table::rows("look_alikes.tsv"));

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
                row.look_alike
            );
        }
    }

    #[test]
    fn ramsons_and_burdock_and_plantain_name_what_people_were_poisoned_by() {
        let is_named = |herb: &str, plant: &str| {
            let mut rows = find(herb).unwrap().look_alikes();
            rows.any(|row| row.look_alike == plant)
        };
        // Incidents of 2003 to 2015, Tokyo Metropolitan Government, 2015; FDA letter of 6 October 1997.
        for (herb, plant) in [
            ("wild-garlic", "look-alike-white-hellebore"),
            ("garlic", "look-alike-daffodil"),
            ("onion", "look-alike-daffodil"),
            ("burdock", "look-alike-thorn-apple"),
            ("plantain", "look-alike-woolly-foxglove"),
            ("comfrey", "look-alike-russian-comfrey"),
        ] {
            assert!(is_named(herb, plant), "{herb} and {plant}");
        }
    }

    #[test]
    fn wild_garlic_warns_of_autumn_crocus() {
        let names: Vec<_> = find("ramsons")
            .unwrap()
            .look_alikes()
            .map(|row| row.look_alike.as_str())
            .collect();
        assert!(names.contains(&"look-alike-autumn-crocus"), "{names:?}");
        assert_eq!(find("peppermint").unwrap().look_alikes().count(), 0);
    }
}
