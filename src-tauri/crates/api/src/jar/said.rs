//! What the formulary says, in the shapes of the wire.

use formulary::compose::{self, PlantLine as Line};
use formulary::{keep, preparations};
use physics::mixture::{self, Ingredient, Kind, Remark};

use super::proposal::{
    Control, Controls, Days, GateLine, JarRoom, Keeping, PourLine, ShelfLife, Verdict,
};
use crate::mixture::{IngredientKind, Shortfall, noted};
use crate::wire::{Interval, Note};
use crate::{Code, Failure};

impl From<compose::Refusal> for Failure {
    fn from(refusal: compose::Refusal) -> Self {
        let code = match refusal.asks {
            true => Code::ConfirmPlant,
            false => Code::Invalid,
        };
        Self {
            field: Some(refusal.field),
            ..Self::new(code, refusal.message)
        }
    }
}

impl From<compose::Control> for Control {
    fn from(control: compose::Control) -> Self {
        Self {
            value: control.value,
            low: control.low,
            high: control.high,
            step: control.step,
            usual: control.usual,
            because: control.because,
            status: control.status.into(),
        }
    }
}

impl From<compose::Controls> for Controls {
    fn from(controls: compose::Controls) -> Self {
        Self {
            ratio_ml_per_g: controls.ratio_ml_per_g.into(),
            strength_percent_vol: controls.strength_percent_vol.map(Control::from),
            glycerin_percent_vol: controls.glycerin_percent_vol.map(Control::from),
            fortify_percent_vol: controls.fortify_percent_vol.map(Control::from),
        }
    }
}

impl From<&compose::PourLine> for PourLine {
    fn from(line: &compose::PourLine) -> Self {
        Self {
            kind: kind_of(&line.ingredient),
            name: line.name.clone(),
            ml: line.ml,
            g: line.g,
            supply: line.supply.clone(),
        }
    }
}

impl From<compose::Shortfall> for Shortfall {
    fn from(short: compose::Shortfall) -> Self {
        Self {
            target: short.target,
            wanted: short.wanted,
            got: short.got,
        }
    }
}

impl From<preparations::Verdict> for Verdict {
    fn from(verdict: preparations::Verdict) -> Self {
        match verdict {
            preparations::Verdict::Keeps => Self::Keeps,
            preparations::Verdict::KeepsCold => Self::KeepsCold,
            preparations::Verdict::UseNow => Self::UseNow,
            preparations::Verdict::DoNotMake => Self::DoNotMake,
        }
    }
}

impl From<keep::Keeping> for Keeping {
    fn from(keeping: keep::Keeping) -> Self {
        let gate = |gate: keep::Gate| GateLine {
            gate: gate.gate,
            limit: gate.limit,
            predicted: gate.predicted.into(),
            unit: gate.unit,
            margin: gate.margin,
            decided: gate.decided,
            source: gate.source,
            status: gate.status.into(),
        };
        Self {
            verdict: keeping.verdict.into(),
            text: keeping.text,
            gates: keeping.gates.into_iter().map(gate).collect(),
            outside_only: keeping.outside_only,
        }
    }
}

impl From<keep::ShelfLife> for ShelfLife {
    fn from(shelf_life: keep::ShelfLife) -> Self {
        Self {
            days: shelf_life.days.map(Interval::from),
            notes: shelf_life.notes.into_iter().map(Note::from).collect(),
        }
    }
}

impl From<compose::Room> for JarRoom {
    fn from(room: compose::Room) -> Self {
        Self {
            needed_ml: room.needed_ml.into(),
            jar_ml: room.jar_ml,
            fits: room.fits,
            largest_mass_g: room.largest_mass_g,
        }
    }
}

impl From<preparations::Ends> for Days {
    fn from(ends: preparations::Ends) -> Self {
        // Whole days: a steeping time of hours is today's.
        Self {
            low: ends.low.max(0.0).floor() as u32,
            high: ends.high.max(0.0).ceil() as u32,
        }
    }
}

/// What to know about the figures of a liquid; a jar without acid shows no pH to explain.
pub(super) fn remarked(liquid: &mixture::Liquid) -> Vec<Note> {
    let remarks: Vec<Remark> = liquid
        .remarks
        .iter()
        .copied()
        .filter(|remark| *remark != Remark::NoAcid)
        .collect();
    noted(&remarks)
}

/// Fresh or dried, as the formulary has it.
pub(super) fn state(state: crate::wire::PlantState) -> preparations::PlantState {
    match state {
        crate::wire::PlantState::Fresh => preparations::PlantState::Fresh,
        crate::wire::PlantState::Dried => preparations::PlantState::Dried,
        crate::wire::PlantState::Cooked => preparations::PlantState::Cooked,
    }
}

/// Fresh or dried, as the wire has it.
pub(super) fn state_of(line: &Line) -> crate::wire::PlantState {
    match line.state {
        preparations::PlantState::Fresh => crate::wire::PlantState::Fresh,
        preparations::PlantState::Dried => crate::wire::PlantState::Dried,
        preparations::PlantState::Cooked => crate::wire::PlantState::Cooked,
    }
}

/// The kind of an ingredient in the words of the wire.
pub(super) fn kind_of(ingredient: &Ingredient) -> IngredientKind {
    match ingredient.kind() {
        Kind::Water => IngredientKind::Water,
        Kind::Spirit { .. } => IngredientKind::Spirit,
        Kind::Glycerin { .. } => IngredientKind::Glycerin,
        Kind::Vinegar { .. } => IngredientKind::Vinegar,
        Kind::Wine { .. } => IngredientKind::Wine,
        Kind::Sugar => IngredientKind::Sugar,
        Kind::Syrup { .. } => IngredientKind::Syrup,
        Kind::Honey { .. } => IngredientKind::Honey,
        Kind::Juice { .. } => IngredientKind::Juice,
        Kind::Oil(_) => IngredientKind::Oil,
    }
}
