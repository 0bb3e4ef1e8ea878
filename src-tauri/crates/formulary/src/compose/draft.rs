//! The liquid and its keeping, before the jar, the cautions and the helps.

use physics::{
    Interval,
    mixture::{Kind, Liquid},
};

use message::{Argument, Refusal, Unit, say};

use super::{
    Composition, Controls, PlantLine, Portion, Shortfall, controls,
    forbidden::{forbidden, is_for_outside_only},
    plants, pours,
};
use crate::{
    keep::{self, Keeping},
    note::Note,
    preparations::{PlantState, Preparation},
};

/// A proposal before the jar, the cautions and the helps.
#[derive(Debug, Clone)]
pub(crate) struct Draft {
    pub(crate) controls: Controls,
    pub(crate) pours: Vec<Portion>,
    pub(crate) plants: Vec<PlantLine>,
    pub(crate) liquid: Liquid,
    pub(crate) short_of: Vec<Shortfall>,
    pub(crate) keeping: Keeping,
    pub(crate) reasons: Vec<Note>,
}

impl Draft {
    /// The vinegar under 5 %, as a refusal.
    pub(crate) fn weak_vinegar(&self) -> Option<Refusal> {
        self.pours
            .iter()
            .find_map(|pour| match pour.ingredient.kind() {
                Kind::Vinegar {
                    acidity_g_per_100ml,
                } if acidity_g_per_100ml < LEAST_ACIDITY => {
                    let acidity = Argument::amount(acidity_g_per_100ml, Unit::GramPer100Ml);
                    Some(Refusal::new("stock", say!("vinegar-too-weak", acidity)))
                }
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
    let mut keeping = judge(preparation, &plants, &poured, None);

    // A published strength right on the limit of keeping is raised by what the plant's water may take from it.
    let mut wishes = wishes;
    if let Some(raised) = pours::raised(preparation, composition, &wishes, &poured, &keeping) {
        let mut again = wishes.clone();
        again.strength = Some(raised);
        let better = pours::pour(preparation, composition, &plants, &again)?;
        let judged = judge(preparation, &plants, &better, None);
        if judged.verdict < keeping.verdict {
            reasons.push(Note::computed(
                "strength-raised",
                say!("strength-raised", strength = Argument::strength(raised)),
            ));
            (poured, keeping, wishes) = (better, judged, again);
        }
    }
    reasons.extend(plants.iter().map(PlantLine::reason));
    reasons.extend(poured.reasons.iter().cloned());
    if let Some(text) = forbidden(preparation, &plants) {
        keeping = keeping.refused(text);
    }
    reasons.extend(keep::remarks(preparation, &poured.liquid, keeping.verdict));
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

pub(super) fn judge(
    preparation: &Preparation,
    plants: &[PlantLine],
    poured: &pours::Poured,
    measured_ph: Option<Interval>,
) -> Keeping {
    let acidity = poured
        .lines
        .iter()
        .filter_map(|pour| match pour.ingredient.kind() {
            Kind::Vinegar {
                acidity_g_per_100ml,
            } => Some(acidity_g_per_100ml),
            _ => None,
        });
    let dampest = plants
        .iter()
        .map(|plant| plant.moisture_wet_percent)
        .max_by(|a, b| a.high.total_cmp(&b.high));
    let any = |state| plants.iter().any(|plant| plant.state == state);
    let keeping = keep::judge(
        preparation,
        &keep::Prospect {
            liquid: Some(&poured.liquid),
            vinegar_acidity_g_per_100ml: acidity.min_by(f64::total_cmp),
            herb_water_percent: dampest,
            measured_ph,
            state: if any(PlantState::Fresh) {
                PlantState::Fresh
            } else if any(PlantState::Cooked) {
                PlantState::Cooked
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
