//! `herb.find`: every name finds its herb, and a poisonous plant is said to be one while it is typed.

use std::collections::BTreeSet;

use formulary::names::{self, Named};
use formulary::poison::{self, Called};

use super::known::Known;
use super::wire::{FindHerb, FoundHerb, FoundHerbs, HerbStop};
use crate::speech::{Language, language};
use crate::{App, Command, Failure, asked};

/// More than a screen shows at once.
const USUAL: u32 = 8;

impl Command for FindHerb {
    const NAME: &'static str = "herb.find";
    type Reply = FoundHerbs;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let limit = asked::limit(self.limit, USUAL)?;
        let stop = poison::of(&self.text).map(|called| HerbStop::of(&called));
        let mut herbs: Vec<FoundHerb> = names::find(&self.text, limit)
            .into_iter()
            .map(FoundHerb::of_names)
            .collect();
        let own = app.read(|reading| Ok(reading.herbs()?))?;
        let own: Vec<FoundHerb> = own
            .into_iter()
            .filter(|(_, herb)| is_like(&self.text, &herb.common, herb.latin.as_deref()))
            .map(|(id, herb)| FoundHerb::own(&Known::of_maker(id.into(), herb)))
            .collect();
        // The maker's own name for a herb is the one that is meant.
        let (same, like): (Vec<_>, Vec<_>) = own
            .into_iter()
            .partition(|herb| herb.common.to_lowercase() == self.text.trim().to_lowercase());
        herbs.splice(0..0, same);
        herbs.extend(like);
        let mut seen = BTreeSet::new();
        herbs.retain(|herb| seen.insert(herb.key.clone()));
        herbs.truncate(limit);
        Ok(FoundHerbs { herbs, stop })
    }
}

/// Whether what was typed begins a word of the maker's name for a herb, or of its Latin.
fn is_like(text: &str, common: &str, latin: Option<&str>) -> bool {
    let text = text.trim().to_lowercase();
    let begins = |name: &str| {
        let name = name.to_lowercase();
        name.starts_with(&text) || name.split(' ').any(|word| word.starts_with(&text))
    };
    !text.is_empty() && (begins(common) || latin.is_some_and(begins))
}

impl FoundHerb {
    fn of_names(named: &Named) -> Self {
        let is_known = names::is_in_the_table(&named.key);
        // A herb of the table is named by whoever says the reply; of the others only the names are there.
        let german = || {
            names::all()
                .iter()
                .find(|row| row.key == named.key && row.language == "de")
                .map(|row| row.name.clone())
        };
        let common = match language() {
            Language::German if !is_known => german(),
            _ => None,
        };
        Self {
            key: named.key.clone(),
            common: common.unwrap_or_else(|| named.common.clone()),
            latin: Some(named.latin.clone()).filter(|latin| !latin.is_empty()),
            known: is_known,
        }
    }

    fn own(known: &Known) -> Self {
        Self {
            key: known.key.to_string(),
            common: known.common.clone(),
            latin: known.latin.clone(),
            known: true,
        }
    }
}

impl HerbStop {
    fn of(called: &Called) -> Self {
        let stop = called.told();
        Self {
            kind: stop.kind.into(),
            text: stop.note.text,
            source: stop.note.source,
            status: stop.note.status.into(),
        }
    }
}
