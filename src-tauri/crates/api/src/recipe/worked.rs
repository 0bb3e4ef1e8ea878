//! A recipe worked out anew by the engine: what to pour, the steps with their amounts, what to beware of.

use formulary::preparations::{self, Amounts, Preparation, Step};
use journal::Recipe;
use message::{Argument, Failure, say};
use physics::mixture::IngredientKind;
use reckon::herb::Known;
use reckon::item::{self, StockItem};
use reckon::jar::again::composed;
use reckon::jar::compose::Composed;
use reckon::jar::proposal::{Composition, Proposal};
use store::Reading;

use crate::open::Open;

/// A recipe with its amounts.
pub(crate) struct Worked {
    pub preparation: &'static Preparation,
    /// The herbs of its plants, in their order.
    pub known: Vec<Known>,
    pub proposal: Proposal,
    pub steps: Vec<Step>,
}

/// Which liquids a recipe is worked out with.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Liquids {
    /// Those of the recipe, as much as it takes.
    OfRecipe,
    /// Those on the reader's own shelf by their labels, as much as it takes; the recipe's where the shelf has none.
    OwnLabels,
}

/// The recipe as a composition, with water at hand; what its plants are was confirmed or not.
pub(crate) fn composition(
    reading: &Reading<'_>,
    recipe: &Recipe,
    liquids: Liquids,
    confirmed: bool,
) -> Result<Composition, Failure> {
    let mut composition = composed(reading, recipe.clone(), None)?;
    composition.confirmed = Some(confirmed);
    for item in &mut composition.stock {
        item.supply = None;
    }
    if liquids == Liquids::OwnLabels {
        with_own_labels(reading, &mut composition.stock)?;
    }
    if !composition
        .stock
        .iter()
        .any(|item| item.kind == IngredientKind::Water)
    {
        composition
            .stock
            .push(item::as_item(&journal::Item::Water {}));
    }
    Ok(composition)
}

/// Each liquid by the label of the reader's own bottle of its kind, the same one if it is there, else the fullest.
fn with_own_labels(reading: &Reading<'_>, stock: &mut [StockItem]) -> Result<(), Failure> {
    let shelf = reading.supplies()?;
    for asked in stock {
        let same = item::item(asked)?;
        let of_kind = shelf
            .iter()
            .filter(|row| row.left_ml > 0.0 && row.supply.item.kind() == asked.kind);
        // An oil of another plant is another recipe.
        let alike = of_kind.filter(|row| row.supply.item.oil() == same.oil());
        let fullest = alike.max_by(|a, b| {
            let rank = |row: &store::SupplyRow| (row.supply.item == same, row.left_ml);
            let ((a_same, a_left), (b_same, b_left)) = (rank(a), rank(b));
            a_same.cmp(&b_same).then(a_left.total_cmp(&b_left))
        });
        if let Some(row) = fullest {
            *asked = item::as_item(&row.supply.item);
        }
    }
    Ok(())
}

impl Worked {
    /// Works a composition out.
    pub(crate) fn of(
        app: &Open,
        reading: &Reading<'_>,
        composition: &Composition,
    ) -> Result<Self, Failure> {
        let mut known = Vec::new();
        for plant in &composition.plants {
            known.push(Known::asked(reading, &plant.herb)?);
        }
        let composed = Composed::of(reading, composition)?;
        let key = composed.proposal.preparation;
        let preparation = preparations::of_key(key);
        let preparation = preparation.ok_or_else(|| {
            let name = Argument::own(key);
            Failure::invalid("preparation", say!("jar-preparation-unknown", name))
        })?;
        let today = app.now().date_naive();
        let proposal = composed.proposal(reading, today)?;
        let plants = known.iter().zip(&composition.plants);
        let amounts = Amounts {
            plants: plants
                .map(|(known, plant)| (known.key.as_str(), plant.part.as_str()))
                .collect(),
            herb_g: composition.plants.iter().map(|plant| plant.mass_g).sum(),
            poured_ml: proposal.poured_ml,
            kinds: proposal.pours.iter().map(|pour| pour.kind).collect(),
            strength_percent_vol: proposal.liquid.strength_percent_vol,
        };
        let steps = preparation.steps(&amounts);
        Ok(Self {
            preparation,
            known,
            steps,
            proposal,
        })
    }
}
