//! From herbs, liquids and wishes to what is poured and what it becomes.
//!
//! One path for every preparation: the block of data says what is solved for, the
//! mixture engine says what the liquid is, the gates say whether it keeps.

mod controls;
mod help;
mod liquids;
mod parts;
mod plants;
mod poured;
mod pours;
mod room;
mod shelf;
mod strength;
mod usual;

use physics::{
    Interval,
    mixture::{Ingredient, Kind, Liquid},
};
use serde::Serialize;

pub use controls::{Control, Controls};
pub use liquids::name;
pub(crate) use plants::{LEAST_G, MOST_G};
pub use plants::{PlantLine, TOLD_WATER};
pub use poured::{AsPoured, as_poured};
pub use room::Room;

pub(crate) use liquids::kind_word;
pub(crate) use room::room;

use crate::{
    cautions,
    constituents::Grade,
    herbs::{Herb, Limit},
    keep::{self, Keeping},
    note::{Note, Status},
    preparations::{self, Ends, PlantState, Preparation, Purpose, Solvent},
    words,
};

/// A herb that goes into the jar.
#[derive(Debug, Clone, PartialEq)]
pub struct Plant {
    /// Any of its names; an unknown one is a herb of the maker's own.
    pub herb: String,
    /// Its part.
    pub part: String,
    /// Fresh or dried.
    pub state: PlantState,
    /// Its mass, g.
    pub mass_g: f64,
    /// Its water, % of the weight, where the maker knows it; else the tables say.
    pub moisture_wet_percent: Option<Interval>,
}

/// A liquid at hand.
#[derive(Debug, Clone, PartialEq)]
pub struct Stock {
    /// What it is.
    pub ingredient: Ingredient,
    /// How much of it there is, mL.
    pub available_ml: Option<f64>,
    /// The amount to take, mL.
    pub exactly_ml: Option<f64>,
    /// The supply it comes from.
    pub supply: Option<String>,
}

/// What is asked for.
#[derive(Debug, Clone, PartialEq)]
pub struct Composition {
    /// Key of a preparation or the name of a family.
    pub preparation: String,
    /// The herbs.
    pub plants: Vec<Plant>,
    /// The liquids at hand; what is missing is taken as usually bought, and a reason says so.
    pub stock: Vec<Stock>,
    /// mL to a gram of herb.
    pub ratio_ml_per_g: Option<f64>,
    /// Size of the jar, mL.
    pub jar_ml: Option<f64>,
    /// Strength wanted in the jar at the end, % vol.
    pub strength_percent_vol: Option<f64>,
    /// Glycerin in what is poured, % by volume.
    pub glycerin_percent_vol: Option<f64>,
    /// Alcohol added for keeping, % vol at the end.
    pub fortify_percent_vol: Option<f64>,
    /// Temperature for volume and density, C.
    pub temperature_c: f64,
}

impl Composition {
    /// One herb in a preparation, everything else as usual, at 20 C.
    pub fn of(preparation: &str, plant: Plant) -> Self {
        Self {
            preparation: preparation.to_owned(),
            plants: vec![plant],
            stock: Vec::new(),
            ratio_ml_per_g: None,
            jar_ml: None,
            strength_percent_vol: None,
            glycerin_percent_vol: None,
            fortify_percent_vol: None,
            temperature_c: 20.0,
        }
    }
}

/// A refusal: the field and a finished sentence.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{message}")]
pub struct Refusal {
    /// The field, as a path in the request.
    pub field: String,
    /// What is wrong with it and what is accepted.
    pub message: String,
}

impl Refusal {
    pub(crate) fn new(field: impl Into<String>, message: impl Into<String>) -> Self {
        Self {
            field: field.into(),
            message: message.into(),
        }
    }
}

/// One liquid of the recipe.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PourLine {
    /// Its kind in the words of the wire.
    pub kind: &'static str,
    /// Its name with the figure on its label.
    pub name: String,
    /// How much, mL at 20 C as it is measured out.
    pub ml: f64,
    /// How much, g.
    pub g: f64,
    /// The supply it comes from.
    pub supply: Option<String>,
    /// What it is.
    #[serde(skip)]
    pub ingredient: Ingredient,
}

/// A target that was missed.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Shortfall {
    /// Which.
    pub target: String,
    /// What was wanted.
    pub wanted: f64,
    /// What comes nearest.
    pub got: f64,
}

/// What to pour and what it becomes.
#[derive(Debug, Clone, PartialEq)]
pub struct Proposal {
    /// The preparation.
    pub preparation: &'static str,
    /// What can be moved and where it stands.
    pub controls: Controls,
    /// The liquids to pour.
    pub pours: Vec<PourLine>,
    /// Their sum, mL.
    pub poured_ml: f64,
    /// The herbs with their water.
    pub plants: Vec<PlantLine>,
    /// What the liquid is at the end.
    pub liquid: Liquid,
    /// Whether every target is met.
    pub reached: bool,
    /// What is missed.
    pub short_of: Vec<Shortfall>,
    /// What would meet it, or would keep longer.
    pub would_help: Vec<Note>,
    /// Whether it keeps.
    pub keeping: Keeping,
    /// Whether it fits the jar.
    pub jar: Room,
    /// Days from pouring to straining.
    pub steep_days: Ends,
    /// What to beware of, the gravest first.
    pub cautions: Vec<Note>,
    /// Why the figures are what they are.
    pub reasons: Vec<Note>,
}

/// Proposes what to pour.
///
/// # Errors
/// [`Refusal`] with the field and the accepted range for an unknown preparation, a herb in the
/// wrong state, a vinegar under 5 %, a ratio of nothing, a jar smaller than the herb, and any
/// figure that is no number.
///
/// ```
/// use formulary::{compose::{Composition, Plant, compose}, preparations::PlantState};
/// let mint = Plant {
///     herb: "peppermint".into(), part: "leaf".into(), state: PlantState::Fresh,
///     mass_g: 100.0, moisture_wet_percent: None,
/// };
/// let jar = compose(&Composition::of("glycerite", mint))?;
/// assert_eq!(jar.pours[0].name, "glycerin of 99.5 %");
/// assert!((jar.poured_ml - 200.0).abs() < 1e-6); // 1:2
/// # Ok::<(), formulary::compose::Refusal>(())
/// ```
pub fn compose(composition: &Composition) -> Result<Proposal, Refusal> {
    let preparation = named(composition)?;
    compose_as(preparation, composition)
}

/// As [`compose`], by a preparation that need not be in the table.
///
/// # Errors
/// As [`compose`].
pub fn compose_as(
    preparation: &Preparation,
    composition: &Composition,
) -> Result<Proposal, Refusal> {
    let draft = draft(preparation, composition)?;
    if let Some(weak) = draft.weak_vinegar() {
        return Err(weak);
    }
    let room = room(&draft, composition.jar_ml)?;
    let would_help = help::would_help(preparation, composition, &draft);
    let Draft {
        controls,
        pours,
        plants,
        liquid,
        short_of,
        keeping,
        mut reasons,
        ..
    } = draft;
    reasons.extend(soak(preparation, &plants));
    if !plants.is_empty() {
        reasons.push(room::assumption());
    }
    reasons.extend(preparation.notes.iter().map(|text| {
        Note::new(
            "preparation",
            text,
            &preparation.method_source,
            preparation.method_status,
        )
    }));
    let subject = cautions::Subject {
        preparation,
        plants: &plants,
        purpose: None,
        kinds: &pours.iter().map(|pour| pour.kind).collect::<Vec<_>>(),
        strength_percent_vol: liquid.strength_percent_vol.high,
    };
    Ok(Proposal {
        preparation: static_key(preparation),
        controls,
        poured_ml: pours.iter().map(|pour| pour.ml).sum(),
        reached: short_of.is_empty(),
        short_of,
        would_help,
        jar: room,
        steep_days: preparation.steep_days,
        cautions: cautions::for_jar(&subject),
        pours,
        plants,
        liquid,
        keeping,
        reasons,
    })
}

/// How much acid each plant lies in before the oil.
fn soak(preparation: &Preparation, plants: &[PlantLine]) -> Vec<Note> {
    let Some(soak) = &preparation.soak else {
        return Vec::new();
    };
    let line = |plant: &PlantLine| {
        let parts = if plant.herb == "garlic" {
            soak.garlic_parts
        } else {
            soak.parts
        };
        let text = format!(
            "Lay {} g of {} wholly under {} g of {} % citric acid for {} hours.",
            words::amount(plant.mass_g),
            words::herb(&plant.common),
            words::amount(parts * plant.mass_g),
            words::number(soak.percent, 1),
            words::number(soak.hours, 0)
        );
        Note::new("soak", text, &soak.source, soak.status)
    };
    plants.iter().map(line).collect()
}

fn static_key(preparation: &Preparation) -> &'static str {
    preparations::all()
        .iter()
        .find(|one| one.key == preparation.key)
        .map_or("own", |one| &one.key)
}

/// The preparation that is named, or the refusal that lists the names.
///
/// # Errors
/// [`Refusal`] for a name that no preparation and no family has.
pub fn named(composition: &Composition) -> Result<&'static Preparation, Refusal> {
    let fresh = composition
        .plants
        .iter()
        .any(|plant| plant.state == PlantState::Fresh);
    let state = if fresh {
        PlantState::Fresh
    } else {
        PlantState::Dried
    };
    preparations::find(&composition.preparation, state).ok_or_else(|| {
        let mut families: Vec<String> = Vec::new();
        for preparation in preparations::all() {
            if !families.contains(&preparation.family) {
                families.push(preparation.family.clone());
            }
        }
        let known = words::list(&families);
        Refusal::new(
            "preparation",
            format!(
                "\"{}\" is no preparation known here; known are {known}.",
                composition.preparation
            ),
        )
    })
}

/// A proposal before the jar, the cautions and the helps.
#[derive(Debug, Clone)]
pub(crate) struct Draft {
    pub(crate) controls: Controls,
    pub(crate) pours: Vec<PourLine>,
    pub(crate) plants: Vec<PlantLine>,
    pub(crate) liquid: Liquid,
    pub(crate) short_of: Vec<Shortfall>,
    pub(crate) keeping: Keeping,
    pub(crate) reasons: Vec<Note>,
}

impl Draft {
    /// The vinegar under 5 %, as a refusal.
    pub(crate) fn weak_vinegar(&self) -> Option<Refusal> {
        self.pours.iter().find_map(|pour| match pour.ingredient.kind() {
            Kind::Vinegar { acidity } if acidity.grams_per_100_ml() < LEAST_ACIDITY => Some(Refusal::new(
                "stock",
                format!(
                    "The vinegar must hold between 5 and 30 g of acid per 100 mL to keep plants safe; {} is not enough.",
                    words::number(acidity.grams_per_100_ml(), 1)
                ),
            )),
            _ => None,
        })
    }
}

/// The least acidity of a vinegar that plants are put into, g per 100 mL.
///
/// *Source*: UC ANR, 27 Nov 2024.
const LEAST_ACIDITY: f64 = 5.0;

pub(crate) fn draft(
    preparation: &Preparation,
    composition: &Composition,
) -> Result<Draft, Refusal> {
    let plants = plants::lines(preparation, composition)?;
    let wishes = controls::wishes(preparation, composition, &plants)?;
    let mut poured = pours::pour(preparation, composition, &plants, &wishes)?;
    let mut reasons = wishes.reasons.clone();
    let mut keeping = judge(preparation, &plants, &poured);

    // A published strength right on the limit of keeping is raised by what the plant's water may take from it.
    let mut wishes = wishes;
    if let Some(raised) = pours::raised(preparation, composition, &wishes, &poured, &keeping) {
        let mut again = wishes.clone();
        again.strength = Some(raised);
        let better = pours::pour(preparation, composition, &plants, &again)?;
        let judged = judge(preparation, &plants, &better);
        if judged.verdict < keeping.verdict {
            reasons.push(Note::computed(
                "strength-raised",
                format!(
                    "Raised to {} % vol so that it keeps even if the herb is as damp as it may be.",
                    words::number(raised, 1)
                ),
            ));
            (poured, keeping, wishes) = (better, judged, again);
        }
    }
    reasons.extend(plants.iter().map(PlantLine::reason));
    reasons.extend(poured.reasons.iter().cloned());
    if let Some(text) = forbidden(preparation, &plants) {
        keeping = keeping.refused(text);
    }
    let controls = controls::controls(preparation, composition, &plants, &wishes, &poured)?;
    Ok(Draft {
        controls,
        pours: poured.lines,
        plants,
        liquid: poured.liquid,
        short_of: poured.short_of,
        keeping,
        reasons,
    })
}

fn judge(preparation: &Preparation, plants: &[PlantLine], poured: &pours::Poured) -> Keeping {
    let acidity = poured
        .lines
        .iter()
        .filter_map(|pour| match pour.ingredient.kind() {
            Kind::Vinegar { acidity } => Some(acidity.grams_per_100_ml()),
            _ => None,
        });
    let dampest = plants
        .iter()
        .map(|plant| plant.moisture_wet_percent)
        .max_by(|a, b| a.high.total_cmp(&b.high));
    let fresh = plants.iter().any(|plant| plant.state == PlantState::Fresh);
    let keeping = keep::judge(
        preparation,
        &keep::Prospect {
            liquid: Some(&poured.liquid),
            vinegar_acidity_g_per_100ml: acidity.min_by(f64::total_cmp),
            herb_water_percent: dampest,
            state: if fresh {
                PlantState::Fresh
            } else {
                PlantState::Dried
            },
        },
    );
    Keeping {
        outside_only: is_for_outside_only(plants),
        ..keeping
    }
}

/// Why it must not be made at all, whatever the liquid.
pub(crate) fn forbidden(preparation: &Preparation, plants: &[PlantLine]) -> Option<String> {
    let limited = plants.iter().find_map(|plant| {
        let herb = plant.known?;
        match herb.limit()? {
            Limit::Poisonous | Limit::No | Limit::Cook => Some(&herb.use_text),
            Limit::Outside if !serves_outside(preparation, herb) => Some(&herb.use_text),
            Limit::Outside => None,
        }
    });
    if let Some(text) = limited {
        return Some(format!("Do not make it: {text}."));
    }
    let only = preparation.only.as_ref()?;
    let other = plants
        .iter()
        .find(|plant| plant.known.is_none_or(|herb| !only.contains(&herb.key)))?;
    Some(format!(
        "Do not make it: this was tested with {} only, not with {}.",
        words::list(only),
        words::herb(&other.common)
    ))
}

/// Whether a herb that must not be swallowed may go into it: a liquid that is used on the skin, and
/// that takes up something of the herb. A syrup of it would only wait to be taken by mistake.
fn serves_outside(preparation: &Preparation, herb: &Herb) -> bool {
    preparation.uses.contains(&Purpose::Outside)
        && (preparation.grade == Solvent::Ethanol
            || herb.grade_in(preparation.grade) != Some(Grade::No))
}

/// Whether what becomes of the herbs must never be swallowed.
pub(crate) fn is_for_outside_only(plants: &[PlantLine]) -> bool {
    plants
        .iter()
        .any(|plant| plant.known.and_then(Herb::limit) == Some(Limit::Outside))
}

/// The note that a liquid was assumed.
pub(crate) fn assumed(name: &str) -> Note {
    Note::new(
        "assumed-liquid",
        format!("Counted with {name}, since none is at hand."),
        "",
        Status::Practice,
    )
}

#[cfg(test)]
mod laws;
#[cfg(test)]
mod tests;
