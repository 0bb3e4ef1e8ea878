//! What is published of a herb's strength: each figure with its form and its ratio.

use std::sync::LazyLock;

use message::{Argument, Message, Unit, say};
use serde::Deserialize;

use super::{Herb, part, part::PartClass};
use crate::{
    note::{Status, source_of},
    preparations::Range,
    table,
};

/// The form that a figure was published for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Form {
    /// A tincture.
    Tincture,
    /// A liquid extract, made by industry; its figure stands alone and never widens a tincture's.
    #[serde(rename = "liquid extract")]
    LiquidExtract,
    /// A medicated wine.
    Wine,
}

/// One published form of a herb.
#[derive(Debug, Clone, Deserialize)]
pub struct Published {
    key: String,
    /// The part that it is made of, fresh where it says so.
    pub part: String,
    /// The form.
    pub form: Form,
    ratio_low: Option<f64>,
    ratio_high: Option<f64>,
    ethanol_low: Option<f64>,
    ethanol_high: Option<f64>,
    /// The text that was read.
    pub source: String,
    /// How sure it is.
    pub status: Status,
}

static PUBLISHED: LazyLock<Vec<Published>> = LazyLock::new(|| table::rows("strengths.tsv"));

impl Published {
    /// Lowest and highest ratio, mL to a gram; none where it was not printed in what was read.
    pub fn ratio_ml_per_g(&self) -> Option<(f64, f64)> {
        self.ratio_low.zip(self.ratio_high)
    }

    /// Lowest and highest strength, % vol; none where it was not printed in what was read.
    pub fn strength_percent_vol(&self) -> Option<(f64, f64)> {
        self.ethanol_low.zip(self.ethanol_high)
    }

    fn is_fresh(&self) -> bool {
        self.part.starts_with("fresh")
    }

    /// The form in words, with its ratio: "tincture 1:5".
    pub fn in_words(&self) -> Message {
        let form = match self.form {
            Form::Tincture => say!("form-tincture"),
            Form::LiquidExtract => say!("form-liquid-extract"),
            Form::Wine => say!("form-wine"),
        };
        self.with_ratio(form)
    }

    /// The same as the label of a fact: "Tincture 1:5".
    pub(super) fn as_label(&self) -> Message {
        let form = match self.form {
            Form::Tincture => say!("published-tincture"),
            Form::LiquidExtract => say!("published-liquid-extract"),
            Form::Wine => say!("published-wine"),
        };
        self.with_ratio(form)
    }

    fn with_ratio(&self, form: Message) -> Message {
        let Some((low, high)) = self.ratio_ml_per_g() else {
            return form;
        };
        say!("form-with-ratio", form, ratio = ratio(low, high))
    }

    /// How far its ratio lies from another, as a factor; 1 inside its range.
    fn away_from(&self, ratio: f64) -> f64 {
        let Some((low, high)) = self.ratio_ml_per_g() else {
            return f64::INFINITY;
        };
        (low / ratio).max(ratio / high).max(1.0)
    }

    fn is_of(&self, part_name: &str) -> bool {
        use PartClass::{Flower, Herb, Leaf};
        let named = self.part.trim_start_matches("fresh ");
        let above = |class| matches!(class, Leaf | Flower | Herb);
        let (one, other) = (part::class_of(named), part::class_of(part_name));
        if named.contains(" with ") {
            return named.contains(part_name);
        }
        named == part_name || one == other || (above(one) && above(other))
    }
}

/// "1:5", "1:3.5 to 4.5", and "2:1" where more herb than liquid goes in.
fn ratio(low: f64, high: f64) -> Message {
    let number = |figure| Argument::exact(figure, Unit::None);
    if high < 1.0 {
        say!("ratio-of-herb", herb = number((10.0 / high).round() / 10.0))
    } else if low == high {
        say!("ratio-one-to", liquid = number(high))
    } else {
        say!(
            "ratio-one-to-between",
            low = number(low),
            high = number(high)
        )
    }
}

/// The strength that is published for what is made here, with the form that it was published for.
#[derive(Debug, Clone)]
pub struct Strength<'a> {
    /// Lowest and highest, % vol, of the rows that lie nearest to the ratio.
    pub percent_vol: (f64, f64),
    /// The form whose figure it is.
    pub of: &'a Published,
    /// Every text that it rests on.
    pub source: String,
    /// How sure it is.
    pub status: Status,
}

impl Strength<'_> {
    /// "45 % vol" or "45 to 53 % vol".
    pub fn in_words(&self) -> Message {
        let (low, high) = self.percent_vol;
        between(low, high)
    }
}

/// "45 % vol" or "45 to 53 % vol".
pub(super) fn between(low: f64, high: f64) -> Message {
    if low == high {
        say!("strength-of", strength = Argument::strength(low))
    } else {
        say!(
            "strength-between",
            low = Argument::exact(low, Unit::None),
            high = Argument::exact(high, Unit::PercentVol)
        )
    }
}

impl Herb {
    /// Every published form, in the order of the table.
    pub fn published(&self) -> impl Iterator<Item = &'static Published> {
        let key = self.key.clone();
        PUBLISHED.iter().filter(move |row| row.key == key)
    }

    /// The strength that is published for a part at a ratio of mL to a gram of the dried herb.
    ///
    /// A tincture's figure comes before an extract's, the nearest ratio before the others, what was read before what
    /// was read in part. None where nothing was found for that part.
    ///
    /// ```
    /// let agrimony = formulary::herbs::find("agrimony").unwrap();
    /// let strength = agrimony.strength("flowering tops", 5.0).unwrap();
    /// assert_eq!(strength.percent_vol, (45.0, 45.0)); // 25 % vol is the liquid extract of 1:1
    /// ```
    pub fn strength(&self, part_name: &str, ratio_ml_per_g: f64) -> Option<Strength<'static>> {
        let rows: Vec<&Published> = self
            .published()
            .filter(|row| row.strength_percent_vol().is_some() && row.is_of(part_name))
            // More herb than liquid goes into a measured product, such as a cream, and no home jar.
            .filter(|row| row.ratio_high.is_none_or(|high| high >= 1.0))
            .collect();
        let form = rows.iter().map(|row| row.form).min()?;
        let rows = rows.into_iter().filter(|row| row.form == form);
        let rank = |row: &Published| {
            let away = row.away_from(ratio_ml_per_g);
            (away, row.is_fresh(), row.status)
        };
        let mut rows: Vec<&Published> = rows.collect();
        rows.sort_by(|one, other| {
            let (one, other) = (rank(one), rank(other));
            let by_ratio = one.0.total_cmp(&other.0);
            by_ratio.then((one.1, one.2).cmp(&(other.1, other.2)))
        });
        let best = *rows.first()?;
        rows.retain(|row| {
            let (one, other) = (rank(row), rank(best));
            one.0.total_cmp(&other.0).is_eq() && (one.1, one.2) == (other.1, other.2)
        });
        let ends = || rows.iter().filter_map(|row| row.strength_percent_vol());
        let mut sources: Vec<&str> = Vec::new();
        for row in &rows {
            if !sources.contains(&row.source.as_str()) && !row.source.is_empty() {
                sources.push(&row.source);
            }
        }
        Some(Strength {
            percent_vol: (
                ends().map(|(low, _)| low).fold(f64::INFINITY, f64::min),
                ends().map(|(_, high)| high).fold(0.0, f64::max),
            ),
            of: best,
            source: sources
                .into_iter()
                .filter_map(source_of)
                .collect::<Vec<_>>()
                .join("; "),
            status: best.status,
        })
    }

    /// The ratio that is usual for a tincture of the dried herb, with its range, mL to a gram.
    ///
    /// The range spans the published tinctures of that part; none where no ratio is given.
    pub fn dried_ratio(&self, part_name: &str) -> Option<Range> {
        let usual = self.dried_ratio?;
        let rows = self
            .published()
            .filter(|row| row.form != Form::Wine && !row.is_fresh() && row.is_of(part_name));
        // An extract of one to one is made by industry; what is thinner than that can be made at home.
        let rows: Vec<(&Published, (f64, f64))> = rows
            .filter_map(|row| Some((row, row.ratio_ml_per_g()?)))
            .filter(|(row, (low, _))| row.form == Form::Tincture || *low >= HOME_RATIO)
            .collect();
        let ends = || rows.iter().map(|(_, ends)| *ends);
        let of_usual = rows
            .iter()
            .find(|(_, (low, high))| *low <= usual && usual <= *high)
            .map(|(row, _)| *row);
        Some(Range {
            low: ends().map(|(low, _)| low).fold(usual, f64::min),
            usual,
            high: ends().map(|(_, high)| high).fold(usual, f64::max),
            source: of_usual.map_or_else(String::new, |row| row.source.clone()),
            status: of_usual.map_or(Status::Practice, |row| row.status),
        })
    }
}

/// Liquid extracts from this ratio on are as thin as a tincture, mL to a gram.
const HOME_RATIO: f64 = 3.0;

#[cfg(test)]
mod tests;
