//! `herb.find`: every name finds its herb, and a poisonous plant is said to be one while it is typed.

use std::collections::BTreeSet;

use ::words::Language;
use formulary::Status;
use formulary::names::{self, Named};
use formulary::poison::{self, Called, Kind};
use message::{Failure, Message, say};
use reckon::herb::Known;
use reckon::{asked, told};
use serde::{Deserialize, Serialize};

use crate::open::Open;
use crate::request::Command;
use crate::speech::language;

/// Which herb is meant by a name, in either language, number and with one slip in the typing.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct FindHerb {
    pub text: String,
    pub limit: Option<u32>,
}

/// A herb that a name may mean; one that is not `known` has a name and nothing else in the book.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct FoundHerb {
    pub key: String,
    pub common: Message,
    pub latin: Option<String>,
    pub known: bool,
}

/// What the list of poisonous plants says of a name.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct HerbStop {
    pub kind: Kind,
    pub text: Message,
    pub source: Option<String>,
    pub status: Status,
}

/// The answer to [`FindHerb`], the herb meant first.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct FoundHerbs {
    pub herbs: Vec<FoundHerb>,
    pub stop: Option<HerbStop>,
}

/// More than a screen shows at once.
const USUAL: u32 = 8;

impl Command for FindHerb {
    const NAME: &'static str = "herb.find";
    type Reply = FoundHerbs;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let limit = asked::limit(self.limit, USUAL)?;
        let stop = poison::of(&self.text).map(|called| HerbStop::of(&called));
        let mut herbs: Vec<FoundHerb> = names::find(&self.text, limit)
            .into_iter()
            .map(FoundHerb::of_names)
            .collect();
        let own = app.read(|reading| Ok(reading.herbs()?))?;
        let own = own
            .into_iter()
            .filter(|(_, herb)| is_like(&self.text, &herb.common, herb.latin.as_deref()))
            .map(|(id, herb)| {
                let name = herb.common.clone();
                (name, FoundHerb::own(&Known::of_maker(id.into(), herb)))
            });
        // The maker's own name for a herb is the one that is meant.
        let (same, like): (Vec<_>, Vec<_>) = own
            .into_iter()
            .partition(|(name, _)| name.to_lowercase() == self.text.trim().to_lowercase());
        herbs.splice(0..0, same.into_iter().map(|(_, herb)| herb));
        herbs.extend(like.into_iter().map(|(_, herb)| herb));
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
        // Of a herb that the table does not hold only the names are there.
        let german = || {
            names::all()
                .iter()
                .find(|row| row.key == named.key && row.language == "de")
                .map(|row| row.name.clone())
        };
        let name = match language() {
            Language::German => german(),
            Language::English | Language::Strange => None,
        };
        let common = match formulary::herbs::find(&named.key).filter(|_| is_known) {
            Some(entry) => say!("title", name = entry.name()),
            None => Message::own(name.unwrap_or_else(|| named.common.clone())),
        };
        Self {
            key: named.key.clone(),
            common,
            latin: Some(named.latin.clone()).filter(|latin| !latin.is_empty()),
            known: is_known,
        }
    }

    fn own(known: &Known) -> Self {
        Self {
            key: known.key.to_string(),
            common: told::title(known),
            latin: known.latin.clone(),
            known: true,
        }
    }
}

impl HerbStop {
    fn of(called: &Called) -> Self {
        let stop = called.told();
        Self {
            kind: stop.kind,
            text: stop.note.text,
            source: stop.note.source,
            status: stop.note.status,
        }
    }
}
