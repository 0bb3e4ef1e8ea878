//! A little of the lot, dried to constant weight: what it says of the water in the plant.

use formulary::compose;
use journal::{OvenSample, PlantState};
use message::{Argument, At, Failure, Message, Unit, say};
use physics::Interval;
use physics::drying::DryMatterPrior;
use physics::quantity::grams;
use store::Reading;

use crate::drying::batches::own_fractions;
use crate::drying::expected::Expected;
use crate::herb::{Known, herb_name, identity};
use crate::jar::proposal::Plant;
use crate::tray::run::oven_sample;

/// The water that a sample shows, % of the weight, and the sample in words.
///
/// Of a fresh lot the sample is taken together with what the tables and the maker's own batches say;
/// of a dried lot it stands alone, for no table knows how far a lot was dried.
pub fn moisture(
    reading: &Reading<'_>,
    herb: &Known,
    part: &str,
    state: PlantState,
    sample: OvenSample,
) -> Result<(Interval, Message), Failure> {
    let weighed = oven_sample(sample, grams(1.0)).map_err(|why| why.within("sample"))?;
    let before = match state {
        PlantState::Fresh => {
            let own = own_fractions(reading, &herb.key, part, None)?;
            Expected::of(herb.water(part), part, &own).at("part")?.prior
        }
        PlantState::Dried | PlantState::Cooked => anything()?,
    };
    let text = say!(
        "water-by-sample-of",
        fresh = Argument::exact(sample.fresh_g, Unit::Gram),
        dry = Argument::exact(sample.dry_g, Unit::Gram)
    );
    let moisture = before.with_sample(weighed).fresh_water_wet_percent();
    Ok((moisture, text))
}

/// A belief so wide that any sample outweighs it.
fn anything() -> Result<DryMatterPrior, Failure> {
    DryMatterPrior::new(-0.1, 1.5).at("sample")
}

/// A plant with its water as it is stated or sampled; a herb that nobody looked up has no table to
/// take a sample together with.
pub fn wet(
    reading: &Reading<'_>,
    plant: &Plant,
    is_confirmed: bool,
) -> Result<compose::Plant, Failure> {
    let sampled = plant.sample.map(|sample| {
        let known = Known::asked(reading, &plant.herb)?;
        moisture(reading, &known, &plant.part, plant.state, sample)
    });
    let sampled = sampled.transpose()?.map(|(moisture, _)| moisture);
    let moisture = sampled.or(plant.moisture_wet_percent);
    Ok(compose::Plant {
        identity: identity(reading, &plant.herb, is_confirmed),
        herb: herb_name(reading, &plant.herb),
        part: plant.part.clone(),
        state: plant.state,
        mass_g: plant.mass_g,
        told: None,
        moisture_wet_percent: moisture,
    })
}
