//! A jar that was poured: judged by what went into it, not by what would be proposed today.

use physics::{
    mixture::{self, Ingredient, IngredientKind, Liquid, ph::PhReading},
    quantity::{Mass, celsius, grams_of, millilitres_of},
};

use message::Refusal;

use super::{
    Composition, Plant, PlantLine, Portion, PourLine, draft::judge, forbidden, plants, pours,
};
use crate::{
    cautions::{self, Caution},
    keep::Keeping,
    preparations::Preparation,
};

/// What a poured jar is.
#[derive(Debug, Clone, PartialEq)]
pub struct AsPoured {
    /// The liquid at the end, at 20 C.
    pub liquid: Liquid,
    /// Whether it keeps.
    pub keeping: Keeping,
    /// The kinds of liquid poured.
    pub kinds: Vec<IngredientKind>,
    /// The plants with what is known of them.
    pub plants: Vec<PlantLine>,
}

impl AsPoured {
    /// What to beware of, the gravest first. A list of jars that tells none need not find them.
    pub fn cautions(&self, preparation: &Preparation) -> Vec<Caution> {
        cautions::for_jar(&cautions::Subject {
            preparation,
            plants: &self.plants,
            purpose: None,
            kinds: &self.kinds,
            strength_percent_vol: self.liquid.strength_percent_vol.high,
        })
    }
}

/// Judges a jar by its recipe as poured, and by the pH of what came of it where that was read.
///
/// # Errors
/// [`Refusal`] when nothing liquid is in it, or a plant or an amount is impossible.
pub fn as_poured(
    preparation: &Preparation,
    poured: &[(Ingredient, Mass)],
    plants: &[Plant],
    ph: Option<PhReading>,
) -> Result<AsPoured, Refusal> {
    let composition = Composition {
        preparation: preparation.key.clone(),
        plants: plants.to_vec(),
        stock: Vec::new(),
        ratio_ml_per_g: None,
        jar_ml: None,
        strength_percent_vol: None,
        glycerin_percent_vol: None,
        fortify_percent_vol: None,
        temperature_c: 20.0,
    };
    let plants = plants::lines(preparation, &composition)?;
    let mixed: Vec<mixture::Plant> = plants
        .iter()
        .map(|plant| plant.mixed(false))
        .collect::<Result<_, _>>()?;
    let pours: Vec<mixture::Pour> = poured
        .iter()
        .map(|(ingredient, mass)| mixture::Pour::weighed(*ingredient, *mass))
        .collect::<Result<_, _>>()
        .map_err(|error| Refusal::new("stock", error.message()))?;
    let liquid = mixture::describe(&pours, &mixed, celsius(20.0))
        .map_err(|error| Refusal::new("stock", error.message()))?;
    let lines = pours.iter().map(|pour| {
        let kind = IngredientKind::from(pour.ingredient().kind());
        Portion {
            line: PourLine {
                kind,
                name: kind.name(),
                ml: millilitres_of(pour.volume()),
                g: grams_of(pour.mass()),
                supply: None,
            },
            ingredient: *pour.ingredient(),
        }
    });
    let poured = pours::Poured {
        lines: lines.collect(),
        liquid,
        short_of: Vec::new(),
        reasons: Vec::new(),
    };
    let mut keeping = judge(preparation, &plants, &poured, ph.map(PhReading::interval));
    if let Some(text) = forbidden(preparation, &plants) {
        keeping = keeping.refused(text);
    }
    let kinds: Vec<IngredientKind> = poured.lines.iter().map(|pour| pour.kind).collect();
    Ok(AsPoured {
        liquid: poured.liquid,
        keeping,
        kinds,
        plants,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{
        compose::compose,
        preparations::{PlantState, find},
    };
    use physics::quantity::grams;

    #[test]
    fn a_jar_poured_as_proposed_is_what_was_proposed() {
        let plant = Plant {
            herb: "peppermint".into(),
            part: "leaf".into(),
            state: PlantState::Fresh,
            mass_g: 100.0,
            moisture_wet_percent: None,
            told: None,
            identity: Default::default(),
        };
        let proposal = compose(&Composition::of("glycerite", plant.clone())).unwrap();
        let poured: Vec<_> = proposal
            .pours
            .iter()
            .map(|pour| (pour.ingredient, grams(pour.g)))
            .collect();
        let preparation = find("glycerite", PlantState::Fresh).unwrap();
        let jar = as_poured(preparation, &poured, &[plant], None).unwrap();
        assert_eq!(jar.keeping.verdict, proposal.keeping.verdict);
        assert_eq!(jar.keeping.text.id(), proposal.keeping.text.id());
        assert_eq!(jar.cautions(preparation), proposal.cautions);
        let (got, expected) = (
            jar.liquid.glycerol_percent_mass.value,
            proposal.liquid.glycerol_percent_mass.value,
        );
        // Absolute; the amounts went through grams and back.
        assert!(
            (got - expected).abs() < 1e-9,
            "{got} and {expected} % glycerol"
        );
    }
}
