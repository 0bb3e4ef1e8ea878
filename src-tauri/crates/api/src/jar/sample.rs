//! A little of the lot, dried to constant weight: what it says of the water in the plant.

use physics::drying::{DryMatterPrior, OvenSample};
use physics::quantity::grams;
use store::Reading;

use super::proposal::PlantSample;
use crate::drying::Expected;
use crate::failure::At;
use crate::harvest::own_fractions;
use crate::herb::Known;
use crate::wire::{Interval, PlantState};
use crate::{Failure, words};

/// The water that a sample shows, % of the weight, and the sample in words.
///
/// Of a fresh lot the sample is taken together with what the tables and the maker's own batches say;
/// of a dried lot it stands alone, for no table knows how far a lot was dried.
pub(super) fn moisture(
    reading: &Reading<'_>,
    herb: &Known,
    part: &str,
    state: PlantState,
    sample: &PlantSample,
) -> Result<(Interval, String), Failure> {
    let whole = sample.fresh_g.fract() == 0.0 && sample.dry_g.fract() == 0.0;
    let step = sample.scale_step_g.unwrap_or(if whole { 1.0 } else { 0.1 });
    let weighed = OvenSample::new(grams(sample.fresh_g), grams(sample.dry_g), grams(step));
    let weighed = weighed.at("dry_g").map_err(|why| why.within("sample"))?;
    let before = match state {
        PlantState::Fresh => {
            let own = own_fractions(reading, &herb.key, part, None)?;
            Expected::of(herb.table_name(), part, &own)
                .at("part")?
                .prior
        }
        PlantState::Dried | PlantState::Cooked => anything()?,
    };
    let text = format!(
        "an oven sample, {} g of which {} g were left",
        words::figure(sample.fresh_g),
        words::figure(sample.dry_g)
    );
    let moisture = before.with_sample(weighed).fresh_water_wet_percent();
    Ok((moisture.into(), text))
}

/// A belief so wide that any sample outweighs it.
fn anything() -> Result<DryMatterPrior, Failure> {
    DryMatterPrior::new(-0.1, 1.5).at("sample")
}
