//! A herb as the book knows it: of the tables or the maker's own, by any of its names.

use formulary::compose::{self, Identity};
use formulary::herbs::{OwnHerb, WaterPrior};
use formulary::poison::{self, Called, Use};
use journal::HerbKey;
use message::{Argument, Code, Failure, say};
use store::Reading;

/// A herb by whatever the maker calls it.
pub struct Known {
    pub key: HerbKey,
    pub common: String,
    pub latin: Option<String>,
    pub parts: Vec<String>,
    pub note: Option<String>,
    /// What the maker knows of a herb of their own.
    pub own: OwnHerb,
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
                let message = say!("herb-unknown", name = Argument::own(text));
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
                own: OwnHerb::default(),
                entry: None,
            },
        })
    }

    pub fn of_book(entry: &'static formulary::herbs::Herb) -> Self {
        let key = entry.key.parse();
        Self {
            key: key.unwrap_or_else(|why| unreachable!("the book's key {:?}: {why}", entry.key)),
            common: entry.common.clone(),
            latin: Some(entry.latin.clone()).filter(|latin| !latin.is_empty()),
            parts: entry.parts().into_iter().map(str::to_owned).collect(),
            note: None,
            own: OwnHerb::default(),
            entry: Some(entry),
        }
    }

    pub fn of_maker(key: HerbKey, herb: journal::Herb) -> Self {
        Self {
            key,
            common: herb.common,
            latin: herb.latin,
            parts: herb.parts,
            note: herb.note,
            own: OwnHerb {
                water_wet_percent: herb.water_wet_percent,
                strength_percent_vol: herb.strength_percent_vol,
                caution: herb.caution,
                look_alikes: herb.look_alikes,
            },
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
            own: self.own.clone(),
        }
    }

    /// What is known beforehand of the water in a part of it.
    pub fn water(&self, part: &str) -> WaterPrior {
        self.own.water(self.table_name(), part)
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
        self.entry.map_or(self.own.look_alikes.is_some(), |entry| {
            entry.look_alikes().next().is_some()
        })
    }

    /// What the tables of the book call it; an own herb is asked for by its name.
    pub fn table_name(&self) -> &str {
        self.entry.map_or(&self.common, |entry| &entry.key)
    }
}

/// A herb by any name; one that nobody looked up is asked about as it was typed.
pub fn herb_name(reading: &Reading<'_>, text: &str) -> String {
    Known::asked(reading, text)
        .map_or_else(|_| text.to_owned(), |known| known.table_name().to_owned())
}

/// Which plant a herb of any name is.
pub fn identity(reading: &Reading<'_>, text: &str, is_confirmed: bool) -> compose::Identity {
    let unknown = compose::Identity {
        is_confirmed,
        ..compose::Identity::default()
    };
    Known::asked(reading, text).map_or(unknown, |known| known.identity(is_confirmed))
}
