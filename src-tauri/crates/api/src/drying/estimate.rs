//! `drying.estimate`: the bare question, without a journal.

use formulary::herbs;
use message::{At, Failure, say};
use physics::WetBasis;
use physics::drying::{self, Basis, DryMatterPrior, Lot, OvenSample, Weighing};
use physics::quantity::{grams, hours};
use reckon::drying::expected::{Expected, noted, pace_of};

use crate::drying::request::{self, DryingEstimated, EstimateDrying};
use crate::open::Open;
use crate::request::Command;

/// A weigh-in a minute for two months is more than any rack sees.
const MOST_WEIGHINGS: usize = 100_000;

impl Command for EstimateDrying {
    const NAME: &'static str = "drying.estimate";
    type Reply = DryingEstimated;

    fn run(self, _: &Open) -> Result<Self::Reply, Failure> {
        let mut notes = Vec::new();
        let own = self.own_dry_matter_fractions.as_deref().unwrap_or_default();
        let (prior, is_own, pace) = match (&self.prior, &self.herb) {
            (Some(stated), _) => {
                let prior = stated_prior(stated)?;
                let part = self.part.as_deref().unwrap_or("");
                match own {
                    [] => (prior, false, pace_of(part)),
                    own => (prior.with_own_batches(own).at(OWN)?, true, pace_of(part)),
                }
            }
            (None, Some(herb)) => {
                let part = self
                    .part
                    .as_deref()
                    .or_else(|| Some(herbs::find(herb)?.first_part()));
                let part = part.unwrap_or("herb");
                let expected = Expected::of(herbs::water(herb, part), part, own).at(OWN)?;
                notes.push(expected.note());
                (
                    expected.prior,
                    expected.basis == Basis::OwnBatches,
                    expected.pace,
                )
            }
            (None, None) => {
                return Err(Failure::invalid("herb", say!("drying-herb-or-prior")));
            }
        };
        let mut lot = Lot::new(grams(self.fresh_mass_g), prior)
            .at("fresh_mass_g")?
            .pace(pace);
        if is_own {
            lot = lot.from_own_batches();
        }
        let step = grams(self.scale_step_g.unwrap_or(1.0));
        lot = lot.scale_step(step).at("scale_step_g")?;
        if let Some(percent) = self.target_moisture_wet_percent {
            let target = WetBasis::from_percent(percent).at("target_moisture_wet_percent")?;
            lot = lot.target(target).at("target_moisture_wet_percent")?;
        }
        let mut weighings = weighings(self.weighings.as_deref().unwrap_or_default())?;
        if self.snap_test.unwrap_or(false)
            && let Some(last) =
                (weighings.iter_mut()).max_by(|a, b| a.hours().total_cmp(&b.hours()))
        {
            *last = last.snapped();
        }
        lot = lot.weighings(weighings);
        if let Some(air) = &self.air {
            lot = lot.air(Some(
                reckon::drying::expected::air(air).map_err(|why| why.within("air"))?,
            ));
        }
        if let Some(sample) = &self.sample {
            lot = lot.sample(self::sample(sample, step).map_err(|why| why.within("sample"))?);
        }
        let estimate = drying::estimate(&lot);
        notes.extend(noted(&estimate));
        Ok(DryingEstimated {
            dry_matter_g: estimate.dry_matter_g,
            target_mass_g: estimate.target_mass_g,
            moisture_now_wet_percent: estimate.moisture_now_wet_percent,
            hours_left: estimate.hours_left,
            is_dry: estimate.is_dry,
            basis: estimate.basis,
            notes,
        })
    }
}

const OWN: &str = "own_dry_matter_fractions";

fn stated_prior(stated: &request::DryMatterPrior) -> Result<DryMatterPrior, Failure> {
    const MEAN: &str = "prior.ln_dry_matter_fraction_mean";
    const SD: &str = "prior.ln_dry_matter_fraction_sd";
    let (mean, sd) = (
        stated.ln_dry_matter_fraction_mean,
        stated.ln_dry_matter_fraction_sd,
    );
    // With a spread that is always accepted, a refusal can only be of the mean.
    DryMatterPrior::new(mean, 1.0).at(MEAN)?;
    DryMatterPrior::new(mean, sd).at(SD)
}

fn weighings(given: &[request::WeighingFigure]) -> Result<Vec<Weighing>, Failure> {
    if given.len() > MOST_WEIGHINGS {
        return Err(Failure::invalid(
            "weighings",
            say!(
                "drying-too-many-weights",
                most = MOST_WEIGHINGS,
                count = given.len()
            ),
        ));
    }
    let one = |weighing: &request::WeighingFigure| {
        let since_fresh = hours(weighing.hours);
        Weighing::new(since_fresh, grams(0.0)).at("hours")?;
        Weighing::new(since_fresh, grams(weighing.mass_g)).at("mass_g")
    };
    let indexed = given.iter().enumerate();
    indexed
        .map(|(at, it)| one(it).map_err(|why| why.within(&format!("weighings[{at}]"))))
        .collect()
}

/// A sample of the lot dried to constant weight.
fn sample(
    sample: &request::OvenSample,
    step: physics::quantity::Mass,
) -> Result<OvenSample, Failure> {
    OvenSample::new(grams(sample.fresh_g), grams(sample.dry_g), step).at("dry_g")
}
