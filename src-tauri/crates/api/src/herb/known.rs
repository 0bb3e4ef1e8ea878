//! The herb behind a key: one of the book, or one of the maker's own.

use formulary::compose::Identity;
use formulary::poison::{self, Called, Use};
use journal::HerbKey;
use store::Reading;

use crate::{Code, Failure};

/// A herb by whatever the maker calls it.
pub(crate) struct Known {
    pub key: HerbKey,
    pub common: String,
    pub latin: Option<String>,
    pub parts: Vec<String>,
    pub note: Option<String>,
    /// The entry of the book; none for a herb of the maker's own.
    pub entry: Option<&'static formulary::herbs::Herb>,
}

impl Known {
    /// The herb that a request names: a key, a name or a binomial of the book, or an own herb's key.
    pub fn asked(reading: &Reading<'_>, text: &str) -> Result<Self, Failure> {
        if let Some(entry) = formulary::herbs::find(text) {
            return Ok(Self::of_book(entry));
        }
        let own = text.parse::<HerbKey>().ok().and_then(|key| key.as_own());
        match own
            .map(|id| Ok::<_, Failure>((id, reading.find::<journal::Herb>(&id)?)))
            .transpose()?
        {
            Some((id, Some(herb))) => Ok(Self::of_maker(id.into(), herb)),
            _ => {
                let message =
                    format!("There is no herb called {text:?}; add it as your own first.");
                Err(Failure::not_found("herb", message))
            }
        }
    }

    /// The herb that a row of the journal names; one that is gone is called by its key.
    pub fn written(reading: &Reading<'_>, key: &HerbKey) -> Result<Self, Failure> {
        if let Some(entry) = formulary::herbs::find(key.as_str()) {
            return Ok(Self::of_book(entry));
        }
        let own = key
            .as_own()
            .map(|id| reading.find::<journal::Herb>(&id))
            .transpose()?
            .flatten();
        Ok(match own {
            Some(herb) => Self::of_maker(key.clone(), herb),
            None => Self {
                key: key.clone(),
                common: key.to_string(),
                latin: None,
                parts: Vec::new(),
                note: None,
                entry: None,
            },
        })
    }

    pub(super) fn of_book(entry: &'static formulary::herbs::Herb) -> Self {
        let key = entry.key.parse();
        Self {
            key: key.unwrap_or_else(|why| unreachable!("the book's key {:?}: {why}", entry.key)),
            common: entry.common.clone(),
            latin: Some(entry.latin.clone()).filter(|latin| !latin.is_empty()),
            parts: entry.parts().into_iter().map(str::to_owned).collect(),
            note: None,
            entry: Some(entry),
        }
    }

    pub(super) fn of_maker(key: HerbKey, herb: journal::Herb) -> Self {
        Self {
            key,
            common: herb.common,
            latin: herb.latin,
            parts: herb.parts,
            note: herb.note,
            entry: None,
        }
    }

    /// Which plant it is, for the formulary.
    pub fn identity(&self, is_confirmed: bool) -> Identity {
        let latin = match self.entry {
            Some(_) => None,
            None => self.latin.clone(),
        };
        Identity {
            latin,
            is_confirmed,
        }
    }

    /// The plant of the list of poisonous ones that it is, by any of its names.
    pub fn called(&self) -> Option<Called> {
        let latin = self.latin.as_deref().filter(|_| self.entry.is_none());
        poison::called(self.table_name(), latin)
    }

    /// Gives no recipe of a plant that the list of poisonous ones stops.
    pub fn refuse_poison(
        &self,
        part: &str,
        preparation: &str,
        is_confirmed: bool,
    ) -> Result<(), Failure> {
        let is_for_skin = formulary::preparations::all()
            .iter()
            .filter(|one| one.key == preparation || one.family == preparation)
            .any(|one| {
                one.uses
                    .contains(&formulary::preparations::Purpose::Outside)
            });
        let use_ = match is_for_skin {
            true => Use::Outside,
            false => Use::Inside,
        };
        let called = self.called();
        let Some(stop) = called.and_then(|called| called.stop(part, use_, is_confirmed)) else {
            return Ok(());
        };
        let code = match stop.asks {
            true => Code::ConfirmPlant,
            false => Code::Invalid,
        };
        Err(Failure::new(code, stop.note.text).at("herb"))
    }

    /// Whether a poisonous plant is taken for it.
    pub fn has_look_alike(&self) -> bool {
        self.entry
            .is_some_and(|entry| entry.look_alikes().next().is_some())
    }

    /// What the tables of the book call it; an own herb is asked for by its name.
    pub fn table_name(&self) -> &str {
        self.entry.map_or(&self.common, |entry| &entry.key)
    }
}
