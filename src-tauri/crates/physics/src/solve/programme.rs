//! The linear programme behind [`reach`](super::reach).
//!
//! A strength is a quotient, ethanol over volume. Amounts are therefore sought per millilitre of the
//! liquid at the end, with the inverse of its volume as one more unknown (the transformation of Charnes
//! and Cooper, 1962): then nearness to a strength, to a mass fraction and to a size are all linear.

use crate::{
    mixture::Unmixable,
    mixture::{Component, Composition, PURE_ETHANOL_AT_20},
};
use good_lp::{
    Expression, ProblemVariables, Solution, SolverModel, Variable, constraint, microlp, variable,
};

/// Weights that rank what gives way first when not everything can be had. More than the asked size would
/// overflow the jar; a right mixture in a smaller amount is worth more than a wrong one in the
/// full amount; among mixtures that meet everything the one with the least poured out is taken.
mod weight {
    pub const OVER_SIZE: f64 = 1e6;
    pub const COMPOSITION: f64 = 1e2;
    pub const UNDER_SIZE: f64 = 1.0;
    pub const POURED: f64 = 1e-2;
}

/// A millilitre of water counts as this much of a millilitre of anything that was bought.
const WATER_COST: f64 = 0.01;

/// Without any size asked for, the liquid is at most this many times what is fixed.
const MOST_GROWTH: f64 = 10.0;

/// Something whose amount is free.
pub(super) struct Free {
    /// Composition of 1 g.
    pub unit: Composition,
    /// Millilitres, as measured out, in 1 g.
    pub ml_per_g: f64,
    /// How much of it there is, g.
    pub available_g: Option<f64>,
}

/// Everything that does not change between one linearisation and the next.
pub(super) struct Programme {
    /// What may be chosen.
    pub free: Vec<Free>,
    /// Plant water and what is poured in fixed amounts.
    pub fixed: Composition,
    /// Millilitres measured out in fixed amounts.
    pub fixed_ml: f64,
    /// Ethanol by volume, 0..=1.
    pub strength: Option<f64>,
    /// Glycerol by mass, 0..=1.
    pub glycerol: Option<f64>,
    /// Sugars by mass, 0..=1.
    pub sugar: Option<f64>,
    /// Acid, g/mL.
    pub acid: Option<f64>,
    /// Volume at the end, mL.
    pub volume_ml: Option<f64>,
    /// Volume measured out, mL.
    pub poured_ml: Option<f64>,
    /// A volume of the order of the answer, mL.
    pub scale_ml: f64,
}

impl Programme {
    /// Grams of each free item, when 1 g of each component takes `partial` millilitres.
    pub(super) fn solve(&self, partial: &[f64; 7]) -> Result<Vec<f64>, Unmixable> {
        let mut unknowns = ProblemVariables::new();
        let per_ml: Vec<Variable> = self
            .free
            .iter()
            .map(|_| unknowns.add(variable().min(0.0)))
            .collect();
        // scale_ml over the volume at the end: 1 where the size is as asked.
        let inverse = unknowns.add(variable().min(0.0));
        let mut model = Model {
            unknowns,
            cost: Expression::default(),
            constraints: Vec::new(),
        };

        // Linear in the mixture: sum over the free items and the fixed part.
        let sum = |of: &dyn Fn(&Composition) -> f64| {
            let mut expression = Expression::default();
            for (item, &amount) in self.free.iter().zip(&per_ml) {
                expression.add_mul(of(&item.unit), amount);
            }
            expression.add_mul(of(&self.fixed) / self.scale_ml, inverse);
            expression
        };
        let volume = |part: &Composition| -> f64 {
            Component::LIQUID
                .iter()
                .zip(partial)
                .map(|(&c, ml)| part.grams(c) * ml)
                .sum()
        };
        model.constraints.push(constraint!(sum(&volume) == 1.0));

        // Each target's deviation is weighed against the target itself, but never against less than
        // five points (one of acidity), where a ratio would make trifles count.
        if let Some(q) = self.strength {
            let ethanol_ml =
                |part: &Composition| 1000.0 * part.grams(Component::Ethanol) / PURE_ETHANOL_AT_20;
            model.near(sum(&ethanol_ml) - q, weight::COMPOSITION / q.max(0.05));
        }
        if let Some(w) = self.glycerol {
            let excess = |part: &Composition| part.grams(Component::Glycerol) - w * part.liquid_g();
            model.near(sum(&excess), weight::COMPOSITION / w.max(0.05));
        }
        if let Some(w) = self.sugar {
            let excess = |part: &Composition| part.sugars_g() - w * part.liquid_g();
            model.near(sum(&excess), weight::COMPOSITION / w.max(0.05));
        }
        if let Some(a) = self.acid {
            let acid = |part: &Composition| part.grams(Component::AceticAcid);
            model.near(sum(&acid) - a, weight::COMPOSITION / a.max(0.01));
        }

        let mut poured = Expression::default();
        for (item, &amount) in self.free.iter().zip(&per_ml) {
            poured.add_mul(item.ml_per_g, amount);
        }
        poured.add_mul(self.fixed_ml / self.scale_ml, inverse);
        if let Some(wanted) = self.volume_ml {
            // The inverse is large where the volume is small.
            let excess = wanted / self.scale_ml * inverse - 1.0;
            model.size(excess, weight::UNDER_SIZE, weight::OVER_SIZE);
        }
        if let Some(wanted) = self.poured_ml {
            let excess = poured.clone() - wanted / self.scale_ml * inverse;
            model.size(excess, weight::OVER_SIZE, weight::UNDER_SIZE);
        }
        if self.volume_ml.is_none() && self.poured_ml.is_none() {
            model
                .constraints
                .push(constraint!(inverse >= 1.0 / MOST_GROWTH));
            model.cost -= weight::POURED * inverse;
        }

        for (item, &amount) in self.free.iter().zip(&per_ml) {
            if let Some(available) = item.available_g {
                model
                    .constraints
                    .push(constraint!(amount <= available / self.scale_ml * inverse));
            }
            let is_water = item.unit.grams(Component::Water) >= 1.0;
            let cost = if is_water { WATER_COST } else { 1.0 };
            model
                .cost
                .add_mul(weight::POURED * cost * item.ml_per_g, amount);
        }

        let solution = model.solve()?;
        let inverse = solution.value(inverse);
        if !(inverse.is_finite() && inverse > 0.0) {
            return Err(Unmixable::Unsolved);
        }
        let volume_ml = self.scale_ml / inverse;
        Ok(self
            .free
            .iter()
            .zip(per_ml)
            .map(|(item, amount)| {
                let grams = (solution.value(amount) * volume_ml).max(0.0);
                item.available_g
                    .map_or(grams, |available| grams.min(available))
            })
            .collect())
    }
}

struct Model {
    unknowns: ProblemVariables,
    cost: Expression,
    constraints: Vec<good_lp::Constraint>,
}

impl Model {
    /// Holds `deviation` at zero for as long as the weight allows.
    fn near(&mut self, deviation: Expression, weight: f64) {
        self.size(deviation, weight, weight);
    }

    /// The same with unlike weights for a positive and a negative deviation.
    fn size(&mut self, deviation: Expression, above: f64, below: f64) {
        let over = self.unknowns.add(variable().min(0.0));
        let under = self.unknowns.add(variable().min(0.0));
        self.constraints
            .push(constraint!(deviation == over - under));
        self.cost += above * over + below * under;
    }

    fn solve(self) -> Result<impl Solution, Unmixable> {
        let mut model = self.unknowns.minimise(self.cost).using(microlp);
        for constraint in self.constraints {
            model.add_constraint(constraint);
        }
        model.solve().map_err(|_| Unmixable::Unsolved)
    }
}
