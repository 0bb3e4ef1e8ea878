//! The herbs: names, parts, what they hold, what is published of their tinctures,
//! what to beware of. Look-ups take a key, a common name, a binomial or a table key.

mod drying;
mod facts;
mod look_alikes;
mod months;
mod own;
pub mod part;
mod strength;

use std::{collections::BTreeMap, sync::LazyLock};

use message::Message;
use serde::Deserialize;

pub use drying::{
    MoistureLimit, WaterPrior, dried_moisture, moisture_limit, water, water_of, water_table,
};
pub use facts::Fact;
pub use look_alikes::LookAlike;
pub use months::Picking;
pub use own::OwnHerb;
pub use part::part_name;
pub use strength::{Form, Published, Strength};

use crate::{
    cautions::{self, Caution},
    constituents,
    constituents::{Class, Grade},
    note::{Note, Status},
    preparations::Solvent,
    table,
};

/// One herb of the built-in list. An empty cell means that nothing was looked up.
#[derive(Debug, Clone, Deserialize)]
pub struct Herb {
    /// Stable key, the slug of the common name.
    pub key: String,
    /// Common name.
    pub common: String,
    /// Binomial, or binomials of those traded under one name.
    pub latin: String,
    /// Family.
    pub family: String,
    parts: String,
    classes: String,
    fresh_ratio: Option<f64>,
    dried_ratio: Option<f64>,
    /// How well each liquid suits it (judgement): a grade, or a grade with more behind it.
    glycerite: String,
    oil: String,
    vinegar: String,
    wine: String,
    #[serde(rename = "use")]
    limit: Option<Limit>,
    /// What the sentence on that limit rests on.
    use_source: String,
    use_status: Option<Status>,
    aliases: String,
}

/// A hard limit on what may be made of a herb.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Limit {
    /// Nothing is made of it.
    Poisonous,
    /// No medicine is made of it.
    No,
    /// On whole skin only, never inside.
    Outside,
    /// Only after cooking.
    Cook,
}

impl Herb {
    /// Its name inside a sentence; a title is `say!("title", name = herb.name())`.
    pub fn name(&self) -> Message {
        Message::of_table(self.entry())
    }

    /// The entry of the catalogue that names it.
    pub(crate) fn entry(&self) -> String {
        format!("herb-{}", self.key)
    }

    /// What it holds (from memory and judgement); none where nothing was looked up.
    pub(crate) fn holds(&self) -> Option<Message> {
        (!self.classes.is_empty()).then(|| Message::of_table(format!("{}-holds", self.entry())))
    }

    fn limit_entry(&self) -> String {
        format!("{}-limit", self.entry())
    }

    /// How well liquids suit it by its own grades, where it has any: the liquid with the entry of the grade.
    pub(crate) fn grades(&self) -> Vec<(Solvent, String)> {
        [
            (Solvent::Glycerite, &self.glycerite),
            (Solvent::Oil, &self.oil),
            (Solvent::Vinegar, &self.vinegar),
            (Solvent::Wine, &self.wine),
        ]
        .into_iter()
        .filter(|(_, grade)| !grade.is_empty())
        .map(|(solvent, grade)| (solvent, format!("grade-{grade}")))
        .collect()
    }

    /// The entries of the catalogue that its row implies.
    pub(crate) fn entries(&self) -> Vec<String> {
        let holds = self.holds().map(|_| format!("{}-holds", self.entry()));
        let limit = self.limit.map(|_| self.limit_entry());
        let grades = self.grades().into_iter().map(|(_, entry)| entry);
        let entry = self.entry();
        std::iter::once(entry)
            .chain(holds)
            .chain(limit)
            .chain(grades)
            .collect()
    }

    /// The parts that are used.
    pub fn parts(&self) -> Vec<&str> {
        table::items(&self.parts).collect()
    }

    /// The part worked with where none is named.
    pub fn first_part(&self) -> &str {
        table::items(&self.parts).next().unwrap_or("herb")
    }

    /// Its classes of constituents, the leading one first.
    pub fn classes(&self) -> Vec<&'static Class> {
        table::items(&self.classes)
            .filter_map(constituents::class)
            .collect()
    }

    /// The keys of its classes.
    pub fn class_keys(&self) -> Vec<&str> {
        table::items(&self.classes).collect()
    }

    /// How well a liquid takes up what it holds: the herb's own grade, else that of its leading class.
    ///
    /// Judgement, not measurement. None where nothing was looked up; of spirit the strength decides.
    pub fn grade_in(&self, solvent: Solvent) -> Option<Grade> {
        let own = match solvent {
            Solvent::Glycerite => &self.glycerite,
            Solvent::Oil => &self.oil,
            Solvent::Vinegar => &self.vinegar,
            Solvent::Wine => &self.wine,
            Solvent::Ethanol | Solvent::Water => "",
        };
        match own.split('-').next().unwrap_or_default() {
            "good" => Some(Grade::Good),
            "fair" | "outside" => Some(Grade::Fair),
            "poor" => Some(Grade::Poor),
            "no" => Some(Grade::No),
            _ => self.classes().first().map(|class| match solvent {
                Solvent::Glycerite => class.glycerin,
                Solvent::Oil => class.oil,
                Solvent::Vinegar => class.vinegar,
                Solvent::Water => class.water,
                Solvent::Wine | Solvent::Ethanol => class.ethanol_25,
            }),
        }
    }

    /// What must not be made of any part of it.
    pub fn limit(&self) -> Option<Limit> {
        self.limit.or_else(|| {
            let mut limits = self.parts().into_iter().map(|part| self.clause_of(part));
            let first = limits.next()??.0;
            let all = limits.all(|other| other.is_some_and(|(limit, _)| limit == first));
            all.then_some(first)
        })
    }

    /// What must not be made of one part, with the sentence that says so.
    pub fn limit_of(&self, part_name: &str) -> Option<(Limit, Note)> {
        let own = || Some((self.limit?, self.own_limit()?.1));
        own().or_else(|| {
            let (limit, caution) = self.clause_of(part_name)?;
            let source = caution.source.unwrap_or_default();
            Some((
                limit,
                Note::new(&caution.code, caution.text, &source, caution.status),
            ))
        })
    }

    fn clause_of(&self, part_name: &str) -> Option<(Limit, Caution)> {
        cautions::limit_of(&self.key, part_name)
    }

    /// The limit that the table of herbs itself sets, by a word for programs, with its sentence.
    pub(crate) fn own_limit(&self) -> Option<(&'static str, Note)> {
        let code = match self.limit? {
            Limit::Poisonous => "poisonous",
            Limit::No => "not-a-medicine",
            Limit::Outside => "outside-only",
            Limit::Cook => "cook-first",
        };
        let status = self.use_status.unwrap_or(Status::Memory);
        let text = Message::of_table(self.limit_entry());
        Some((code, Note::new(code, text, &self.use_source, status)))
    }

    /// Whether it may be offered as a herb to make something of.
    pub fn is_offered(&self) -> bool {
        !matches!(self.limit(), Some(Limit::Poisonous | Limit::No))
    }

    /// Whether anything beyond its water was looked up.
    pub fn is_described(&self) -> bool {
        self.holds().is_some() || cautions::is_read(self)
    }

    /// Other names it is found under.
    pub fn aliases(&self) -> Vec<&str> {
        table::items(&self.aliases).collect()
    }
}

struct Herbs {
    list: Vec<Herb>,
    index: BTreeMap<String, usize>,
}

static HERBS: LazyLock<Herbs> = LazyLock::new(|| {
    let list: Vec<Herb> = table::rows("herbs.tsv");
    let mut index = BTreeMap::new();
    let mut add = |name: &str, at: usize| {
        let name = slug(name);
        if !name.is_empty() {
            index.entry(name).or_insert(at);
        }
    };
    for (at, herb) in list.iter().enumerate() {
        add(&herb.key, at);
    }
    for (at, herb) in list.iter().enumerate() {
        add(&herb.common, at);
        herb.aliases().into_iter().for_each(|alias| add(alias, at));
    }
    for (at, herb) in list.iter().enumerate() {
        add(&herb.latin, at);
        for latin in binomials(&herb.latin) {
            add(&latin, at);
            add(&latin.replace(" x ", " "), at);
        }
    }
    for row in drying::water_rows() {
        if let Some(at) = list.iter().position(|herb| herb.key == row.herb) {
            add(&row.prior_key, at);
        }
    }
    Herbs { list, index }
});

/// "Rosa canina / damascena" names two: the genus is carried over.
fn binomials(latin: &str) -> Vec<String> {
    let mut genus = "";
    let mut all = Vec::new();
    for piece in latin
        .split(['/', ',', '(', ')'])
        .map(str::trim)
        .filter(|piece| !piece.is_empty())
    {
        if piece.starts_with(char::is_uppercase) {
            genus = piece.split(' ').next().unwrap_or_default();
            all.push(piece.to_owned());
        } else {
            all.push(format!("{genus} {piece}"));
        }
    }
    all
}

/// Lower case, apostrophes dropped, everything else that is no letter or digit a hyphen.
pub fn slug(name: &str) -> String {
    let mut slug = String::with_capacity(name.len());
    for c in name.chars().filter(|c| !matches!(c, '\'' | '\u{2019}')) {
        if c.is_alphanumeric() {
            slug.extend(c.to_lowercase());
        } else if !slug.ends_with('-') && !slug.is_empty() {
            slug.push('-');
        }
    }
    slug.trim_end_matches('-').to_owned()
}

/// All herbs by common name.
pub fn all() -> &'static [Herb] {
    &HERBS.list
}

/// The herb of that key, common name, other name, binomial or table key, in any case and number, where it means no other.
///
/// ```
/// for name in ["peppermint", "Peppermint", "Mentha x piperita", "peppermint_leaf"] {
///     assert_eq!(formulary::herbs::find(name).unwrap().key, "peppermint");
/// }
/// ```
pub fn find(name: &str) -> Option<&'static Herb> {
    let at = HERBS.index.get(&slug(name));
    at.map(|at| &HERBS.list[*at])
        .or_else(|| crate::names::meant(name))
}

#[cfg(test)]
mod tests;
