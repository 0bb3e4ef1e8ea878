//! How much water a plant brings, and how dry it should be.

use std::sync::LazyLock;

use message::{Argument, Message, say};
use physics::{Interval, drying::DryMatterPrior};
use serde::Deserialize;

use super::{Herb, find, part};
use crate::{
    note::{Status, source_of},
    table,
};

#[derive(Debug, Deserialize)]
pub(super) struct WaterRow {
    pub(super) herb: String,
    part: String,
    pub(super) prior_key: String,
    basis: String,
    tables: u32,
    ln_mean: f64,
    ln_sd: f64,
    source: String,
    status: Status,
}

static WATER: LazyLock<Vec<WaterRow>> = LazyLock::new(|| table::rows("water.tsv"));

pub(super) fn water_rows() -> &'static [WaterRow] {
    &WATER
}

/// What is known beforehand of the water in a fresh plant part.
#[derive(Debug, Clone, PartialEq)]
pub struct WaterPrior {
    /// The part the figures are of.
    pub part: String,
    /// Mean of the logarithm of the dry-matter fraction.
    pub ln_mean: f64,
    /// Its standard deviation, as the table gives it (not widened).
    pub ln_sd: f64,
    /// Water, % of the fresh weight, 90 % interval for a first batch.
    pub water_wet_percent: Interval,
    /// Fresh grams for one gram dried to 10 % moisture.
    pub ratio_fresh_per_dry: Interval,
    /// Where it comes from.
    pub source: Option<String>,
    /// How sure it is.
    pub status: Status,
    /// Why these figures, as it stands inside a sentence.
    pub reason: Message,
    /// Whether the general figure of a part class had to stand in.
    pub is_part_default: bool,
}

/// The prior of a herb and part by any of their names; an unknown herb or part gets the general figure and says so.
///
/// The interval is widened by what one batch differs from the table
/// ([`DryMatterPrior::widened_for_new_user`]); `ln_sd` is not.
///
/// ```
/// let leaf = formulary::herbs::water("Peppermint", "leaf");
/// assert_eq!(leaf.reason.id(), "water-published");
/// assert!((leaf.water_wet_percent.value - 78.65).abs() < 0.01); // USDA SR26 2064
/// ```
pub fn water(herb: &str, part: &str) -> WaterPrior {
    match find(herb) {
        Some(found) => water_of(found, part),
        None => general(Argument::own(herb), part),
    }
}

/// As [`water`], for a herb of the list.
pub fn water_of(herb: &Herb, part_name: &str) -> WaterPrior {
    let named = part_name.trim().to_lowercase();
    let class = part::class_of(&named);
    let own = || WATER.iter().filter(|row| row.herb == herb.key);
    let row = own()
        .find(|row| row.part == named)
        .or_else(|| {
            own()
                .filter(|row| !row.part.starts_with("blanched"))
                .find(|row| class != part::PartClass::Other && part::class_of(&row.part) == class)
        })
        .or_else(|| {
            // Elder flower and elder berry stand apart in the list but grow on one shrub.
            let same_species = |row: &&WaterRow| {
                find(&row.herb).is_some_and(|other| {
                    !herb.latin.is_empty() && species(&other.latin) == species(&herb.latin)
                })
            };
            WATER
                .iter()
                .filter(same_species)
                .find(|row| row.part == named)
        });
    row.map_or_else(
        || general(herb.name().into(), part_name),
        |row| prior(row, reason(row, herb), false),
    )
}

/// The table of a herb: one row for each part that has figures of its own.
pub fn water_table(herb: &Herb) -> Vec<WaterPrior> {
    WATER
        .iter()
        .filter(|row| row.herb == herb.key)
        .map(|row| prior(row, reason(row, herb), false))
        .collect()
}

fn species(latin: &str) -> Vec<&str> {
    latin.split_whitespace().take(2).collect()
}

fn reason(row: &WaterRow, herb: &Herb) -> Message {
    let name = Argument::from(herb.name());
    let plant = if herb.common.to_lowercase().ends_with(&row.part) {
        name
    } else {
        with_part(name, &row.part)
    };
    if row.status == Status::Memory {
        return say!("water-from-memory", plant);
    }
    let tables = row.tables;
    match row.basis.as_str() {
        "food table" => say!("water-published", plant, tables),
        "dry-down ratio" => say!("water-dry-down", plant, tables),
        _ => say!("water-and-dry-down", plant, tables),
    }
}

pub(super) fn with_part(herb: Argument, part: &str) -> Argument {
    say!("herb-with-part", herb, part = part::part_name(part)).into()
}

fn general(herb: Argument, part_name: &str) -> WaterPrior {
    let key = part::class_of(&part_name.trim().to_lowercase()).default_key();
    let row = WATER
        .iter()
        .find(|row| row.herb == "*" && row.part == key)
        .unwrap_or_else(|| panic!("water.tsv has no general row for {key}"));
    let kind = match key {
        "leaf" => say!("general-leaf"),
        "flower" => say!("general-flower"),
        "herb" => say!("general-herb"),
        "root" => say!("general-root"),
        "bark" => say!("general-bark"),
        _ => say!("general-any"),
    };
    let plant = with_part(herb, part_name);
    prior(row, say!("water-general", plant, kind), true)
}

fn prior(row: &WaterRow, reason: Message, is_part_default: bool) -> WaterPrior {
    let prior = DryMatterPrior::new(row.ln_mean, row.ln_sd)
        .unwrap_or_else(|error| panic!("water.tsv, {}: {error}", row.prior_key))
        .widened_for_new_user();
    WaterPrior {
        part: row.part.clone(),
        ln_mean: row.ln_mean,
        ln_sd: row.ln_sd,
        water_wet_percent: prior.fresh_water_wet_percent(),
        ratio_fresh_per_dry: fresh_per_dry(prior.dry_matter_fraction()),
        source: source_of(&row.source),
        status: row.status,
        reason,
        is_part_default,
    }
}

const TARGET: f64 = 0.10;

/// Fresh grams for one gram dried to the usual moisture.
pub(super) fn fresh_per_dry(dry_matter_fraction: Interval) -> Interval {
    dry_matter_fraction.map_monotone(|dry| (1.0 - TARGET) / dry)
}

/// The moisture a dried herb should not exceed.
#[derive(Debug, Clone, PartialEq)]
pub struct MoistureLimit {
    /// % of its weight.
    pub limit_wet_percent: f64,
    /// Where it comes from.
    pub source: Option<String>,
    /// How sure it is.
    pub status: Status,
}

#[derive(Debug, Deserialize)]
struct LimitRow {
    herb: String,
    part: String,
    limit_percent: f64,
    source: String,
    status: Status,
}

static LIMITS: LazyLock<Vec<LimitRow>> = LazyLock::new(|| table::rows("moisture_limits.tsv"));

/// The published limit for a herb and part, or the 10 % the trade dries to.
pub fn moisture_limit(herb: &str, part_name: &str) -> MoistureLimit {
    let class = part::class_of(part_name);
    let key = find(herb).map(|herb| herb.key.as_str());
    let fits =
        |row: &&LimitRow| Some(row.herb.as_str()) == key && part::class_of(&row.part) == class;
    let row = LIMITS.iter().find(fits).or_else(|| {
        LIMITS
            .iter()
            .find(|row| row.herb == "*" && row.limit_percent == 100.0 * TARGET)
    });
    row.map_or(
        MoistureLimit {
            limit_wet_percent: 100.0 * TARGET,
            source: None,
            status: Status::Practice,
        },
        |row| MoistureLimit {
            limit_wet_percent: row.limit_percent,
            source: source_of(&row.source),
            status: row.status,
        },
    )
}

/// The moisture of a dried herb that was not measured: dried to 10 %, and what nine in ten dried herbs of the food tables hold.
///
/// Source: 35 rows of dried leaves, bulbs, roots, spices and seeds in USDA SR26, IFCT 2017, CIQUAL and CNF.
pub fn dried_moisture() -> Interval {
    Interval::spanning(100.0 * TARGET, 3.0, 12.0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::herbs::all;

    #[test]
    fn all_116_rows_are_of_a_listed_herb() {
        assert_eq!(WATER.len(), 116);
        let known = |row: &&WaterRow| row.herb == "*" || find(&row.herb).is_some();
        assert_eq!(WATER.iter().filter(known).count(), 116);
        assert!(
            WATER
                .iter()
                .all(|row| !row.source.is_empty() || row.status == Status::Memory)
        );
    }

    #[test]
    fn a_part_without_figures_says_so() {
        let root = water("peppermint", "root");
        assert!(root.is_part_default);
        assert_eq!(root.reason.id(), "water-general");
        assert!(
            (root.ln_mean - -1.1777).abs() < 1e-9,
            "the general row for roots"
        );
        let unknown = water("dragon's tail", "leaf");
        assert!(unknown.is_part_default && unknown.water_wet_percent.value > 80.0);
    }

    #[test]
    fn the_same_binomial_shares_its_water() {
        assert_eq!(
            water("elder-flower", "berry").ln_mean,
            water("elder-berry", "berry").ln_mean
        );
        assert_ne!(
            water("jalapeno", "fruit").ln_mean,
            water("cayenne", "fruit").ln_mean
        );
        assert!(!water("St John's wort", "herb").is_part_default);
        assert_ne!(water("nettle", "leaf").part, "blanched leaf");
    }

    #[test]
    fn figures_from_memory_never_look_checked() {
        let flower = water("calendula", "flower");
        assert_eq!(flower.status, Status::Memory);
        assert_eq!(flower.reason.id(), "water-from-memory");
        assert!(flower.source.is_none());
    }

    /// Ph. Eur. as the University of Zurich quotes it, drug by drug.
    #[test]
    fn a_limit_of_moisture_is_that_of_the_drug_and_says_whether_it_was_read() {
        for (herb, part, percent, status) in [
            ("peppermint", "leaf", 11.0, Status::Confirmed),
            ("marshmallow", "root", 12.0, Status::Confirmed),
            ("marshmallow", "leaf", 10.0, Status::Confirmed),
            ("thyme", "flowering tops", 10.0, Status::Confirmed),
            ("hops", "cone", 10.0, Status::Confirmed),
            ("willow", "bark", 11.0, Status::Confirmed),
            ("elder-flower", "flower", 10.0, Status::Memory),
        ] {
            let limit = moisture_limit(herb, part);
            assert_eq!(
                (limit.limit_wet_percent, limit.status),
                (percent, status),
                "{herb} {part}"
            );
        }
        assert_eq!(moisture_limit("vervain", "herb").limit_wet_percent, 10.0);
    }

    #[test]
    fn every_herb_and_part_has_a_water_interval_around_its_value() {
        for herb in all() {
            for part in herb.parts() {
                let water = water_of(herb, part).water_wet_percent;
                assert!(0.0 <= water.low && water.low < water.value && water.value < water.high);
            }
        }
    }
}
