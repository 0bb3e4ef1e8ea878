//! The amounts: every aim ends in volumes of the liquids at hand that fill the ratio.

use message::{Refusal, say};
use physics::{
    mixture::{self, Ingredient, IngredientKind, Liquid, Pour, describe},
    quantity::{celsius, kg_per_m3_of, millilitres},
};

use super::{
    Composition, Missed, PlantLine, Portion, Shortfall, Stock, assumed,
    controls::Wishes,
    liquids::{Chosen, chosen, line, usual},
    usual::round_to,
};
use crate::{
    keep::Keeping,
    note::Note,
    preparations::{Aim, Part, Preparation, Verdict},
};

/// What a poured jar is, before it is judged.
#[derive(Debug, Clone)]
pub(super) struct Poured {
    pub(super) lines: Vec<Portion>,
    pub(super) liquid: Liquid,
    pub(super) short_of: Vec<Shortfall>,
    pub(super) reasons: Vec<Note>,
}

/// A jar whose amounts are being found.
pub(super) struct Jar<'a> {
    pub(super) preparation: &'a Preparation,
    pub(super) composition: &'a Composition,
    plants: &'a [PlantLine],
    pub(super) exact: Vec<mixture::Plant>,
}

/// Volumes paired with what is poured.
pub(super) type Volumes = Vec<(Chosen, f64)>;

pub(super) fn pour(
    preparation: &Preparation,
    composition: &Composition,
    plants: &[PlantLine],
    wishes: &Wishes,
) -> Result<Poured, Refusal> {
    let exact = plants
        .iter()
        .map(|plant| plant.mixed(true))
        .collect::<Result<_, _>>()?;
    let jar = Jar {
        preparation,
        composition,
        plants,
        exact,
    };
    let size = jar.size(wishes)?;
    let mut short_of = Vec::new();
    let mut reasons = Vec::new();
    let volumes = match preparation.aim {
        Aim::Strength | Aim::Strongest => jar.to_strength(size, wishes.strength, &mut short_of)?,
        Aim::Glycerin => jar.to_glycerin(size, wishes, &mut short_of)?,
        Aim::Parts => jar.in_parts(size, &mut short_of, &mut reasons)?,
    };
    jar.finish(volumes, short_of, reasons)
}

/// The strength that would still keep at the damp end, where the usual one just misses it.
pub(super) fn raised(
    preparation: &Preparation,
    composition: &Composition,
    wishes: &Wishes,
    poured: &Poured,
    keeping: &Keeping,
) -> Option<f64> {
    let usual = wishes.strength?;
    let gate = keeping.decided_by()?;
    let near = gate.margin < 0.0 && gate.margin > -3.0;
    let free = composition.strength_percent_vol.is_none() && poured.short_of.is_empty();
    (preparation.aim == Aim::Strength
        && keeping.verdict != Verdict::Keeps
        && near
        && free
        && gate.unit == "% vol")
        .then(|| round_to(usual - gate.margin + 0.25, 0.5))
}

impl Jar<'_> {
    /// What is poured in all, mL, or for a liquid made up to volume what it comes to.
    fn size(&self, wishes: &Wishes) -> Result<f64, Refusal> {
        if self.plants.is_empty() {
            let jar_ml = self.composition.jar_ml;
            return jar_ml
                .filter(|jar| jar.is_finite() && *jar >= 1.0)
                .map(|jar| 0.9 * jar)
                .ok_or_else(|| Refusal::new("jar_ml", say!("jar-size-missing")));
        }
        Ok(wishes.ratio * self.plants.iter().map(|plant| plant.mass_g).sum::<f64>())
    }

    pub(super) fn at_hand(&self, kind: IngredientKind) -> impl Iterator<Item = &Stock> {
        self.composition
            .stock
            .iter()
            .filter(move |stock| kind == stock.ingredient.kind().into())
    }

    pub(super) fn part(&self, kind: IngredientKind) -> Option<&Part> {
        self.preparation.parts.iter().find(|part| part.kind == kind)
    }

    /// Of what is at hand what lies nearest to the recipe's own; the usual one where there is none.
    pub(super) fn choose(&self, part: &Part) -> Result<Chosen, Refusal> {
        let own = usual(part)?;
        let away = |stock: &&Stock| {
            let density = |ingredient: &Ingredient| kg_per_m3_of(ingredient.density());
            (density(&stock.ingredient) - density(&own.ingredient)).abs()
        };
        let nearest = self
            .at_hand(part.kind)
            .filter(|stock| stock.exactly_ml.is_none())
            .min_by(|a, b| away(a).total_cmp(&away(b)));
        Ok(nearest.map_or(own, chosen))
    }

    pub(super) fn describe(&self, volumes: &[(Chosen, f64)]) -> Result<Liquid, Refusal> {
        described(volumes, &self.exact, 20.0)
    }

    pub(super) fn strength(&self, volumes: &[(Chosen, f64)]) -> f64 {
        self.describe(volumes)
            .map_or(0.0, |liquid| liquid.strength_percent_vol.value)
    }

    pub(super) fn water(&self) -> Chosen {
        self.at_hand(IngredientKind::Water).next().map_or_else(
            || Chosen {
                ingredient: Ingredient::water(),
                available_ml: None,
                exactly_ml: None,
                supply: None,
                assumed: false,
            },
            chosen,
        )
    }

    fn finish(
        &self,
        volumes: Volumes,
        mut short_of: Vec<Shortfall>,
        mut reasons: Vec<Note>,
    ) -> Result<Poured, Refusal> {
        let volumes: Volumes = volumes
            .into_iter()
            .filter(|(_, ml)| *ml > LEAST_ML)
            .collect();
        for (chosen, ml) in &volumes {
            if chosen.assumed {
                reasons.push(assumed(chosen.ingredient.name()));
            }
            if let Some(available) = chosen
                .available_ml
                .filter(|available| ml - available > 1e-9)
            {
                let kind = chosen.kind().name();
                short_of.push(Shortfall {
                    target: Missed::OnTheShelf(say!("target-on-the-shelf", kind)),
                    wanted: *ml,
                    got: available,
                });
            }
        }
        let plants = self
            .plants
            .iter()
            .map(|plant| plant.mixed(false))
            .collect::<Result<Vec<_>, _>>()?;
        let liquid = described(&volumes, &plants, self.composition.temperature_c)?;
        let lines = volumes
            .into_iter()
            .map(|(chosen, ml)| line(chosen, ml))
            .collect::<Result<_, _>>()?;
        Ok(Poured {
            lines,
            liquid,
            short_of,
            reasons,
        })
    }
}

impl Poured {
    /// The strength that the strongest spirit at hand reaches undiluted.
    pub(super) fn strongest(
        &self,
        preparation: &Preparation,
        composition: &Composition,
        plants: &[PlantLine],
        wishes: &Wishes,
    ) -> Result<f64, Refusal> {
        let exact = plants
            .iter()
            .map(|plant| plant.mixed(true))
            .collect::<Result<_, _>>()?;
        let jar = Jar {
            preparation,
            composition,
            plants,
            exact,
        };
        let size = jar.size(wishes)?;
        Ok(jar.strength(&jar.to_strength(size, None, &mut Vec::new())?))
    }
}

/// Below this a target counts as met, in its own unit.
pub(super) const REACHED: f64 = 0.05;

/// Less than a drop is not poured.
pub(super) const LEAST_ML: f64 = 0.05;

fn described(
    volumes: &[(Chosen, f64)],
    plants: &[mixture::Plant],
    celsius_: f64,
) -> Result<Liquid, Refusal> {
    let pours = volumes
        .iter()
        .map(|(chosen, ml)| Pour::measured(chosen.ingredient, millilitres(*ml)))
        .collect::<Result<Vec<_>, _>>()
        .map_err(|error| Refusal::new("stock", error.message()))?;
    describe(&pours, plants, celsius(celsius_)).map_err(|error| {
        let field = match error {
            mixture::Unmixable::TooColdOrHot { .. } => "temperature_c",
            _ => "stock",
        };
        Refusal::new(field, error.message())
    })
}

/// Where a rising function crosses nothing between two ends, by halving and the secant in turns.
pub(super) fn rising_root(mut low: f64, mut high: f64, f: impl Fn(f64) -> f64) -> f64 {
    let (mut at_low, mut at_high) = (f(low), f(high));
    if at_low >= 0.0 {
        return low;
    }
    if at_high <= 0.0 {
        return high;
    }
    for turn in 0..60 {
        let secant = low - at_low * (high - low) / (at_high - at_low);
        let middle = if turn % 3 == 2 || !secant.is_finite() {
            0.5 * (low + high)
        } else {
            secant
        };
        let value = f(middle);
        if value.abs() < 1e-9 || high - low < 1e-12 * high {
            return middle;
        }
        if value < 0.0 {
            (low, at_low) = (middle, value);
        } else {
            (high, at_high) = (middle, value);
        }
    }
    0.5 * (low + high)
}
