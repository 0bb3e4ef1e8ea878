//! Plants and liquids as the composer takes them, and its proposal.

use chrono::NaiveDate;
use formulary::keep::ShelfLife;
use formulary::{Note, compose, keep, plan, preparations};
use journal::PlantState;
use message::{Argument, At, Failure, Message, say};
use physics::Interval;
use physics::drying::Basis;
use physics::mixture::IngredientKind;
use store::{LotRow, Reading};

use crate::drying::batches::own_fractions;
use crate::drying::expected::Expected;
use crate::herb::Known;
use crate::jar::judged::oil_label;
use crate::jar::proposal::{ComesOut, Composition, Plant, PlantLine, Proposal};
use crate::jar::shelf::shelf;
use crate::jar::{retention, sample};
use crate::liquid::remarked;
use crate::tray::run::{Run, refuse_if_lost};
use crate::wire::Lot;
use crate::{asked, told};

/// A composition as the journal and the formulary understand it.
pub struct Composed {
    pub known: Vec<Known>,
    pub lots: Vec<Option<journal::Lot>>,
    pub proposal: compose::Proposal,
    /// Why each plant brings that much water, where the journal knows better than the tables.
    /// What a gram of dry matter keeps of the liquid, where the maker's own jars tell.
    own_retention: Option<physics::Interval>,
}

impl Composed {
    /// Looks up the lots and the supplies and proposes what to pour.
    pub fn of(reading: &Reading<'_>, asked: &Composition) -> Result<Self, Failure> {
        let (mut known, mut lots, mut plants) = (Vec::new(), Vec::new(), Vec::new());
        for (at, plant) in asked.plants.iter().enumerate() {
            let here = |why: Failure| why.within(&format!("plants[{at}]"));
            let herb = Known::asked(reading, &plant.herb).map_err(here)?;
            let lot = plant
                .lot
                .as_ref()
                .map(|lot| found(reading, lot, &herb))
                .transpose();
            let row = lot.map_err(here)?;
            if let Some(row) = &row
                && row.state() != plant.state
            {
                let message = say!("lot-is-in-another-state");
                return Err(here(Failure::invalid("state", message)));
            }
            let lot = row.map(|row| row.lot);
            let own = match (plant.sample, plant.moisture_wet_percent) {
                (Some(_), Some(_)) => {
                    let message = say!("water-or-sample");
                    return Err(here(Failure::invalid("sample", message)));
                }
                (Some(sample), None) => {
                    let (moisture, basis) =
                        sample::moisture(reading, &herb, &plant.part, plant.state, sample)
                            .map_err(here)?;
                    Some((moisture, Some(basis)))
                }
                (None, Some(moisture)) => Some((moisture, None)),
                (None, None) => own_moisture(reading, &herb, &plant.part, lot).map_err(here)?,
            };
            plants.push(compose::Plant {
                identity: herb.identity(asked.confirmed.unwrap_or(false)),
                herb: herb.table_name().to_owned(),
                part: plant.part.clone(),
                state: plant.state,
                mass_g: plant.mass_g,
                told: own.as_ref().and_then(|(_, basis)| basis.clone()),
                moisture_wet_percent: own.as_ref().map(|(moisture, _)| physics::Interval {
                    low: moisture.low,
                    value: moisture.value,
                    high: moisture.high,
                }),
            });
            known.push(herb);
            lots.push(lot);
        }
        let proposal = compose::compose(&compose::Composition {
            preparation: asked.preparation.clone(),
            plants,
            stock: shelf(reading, &asked.stock)?,
            ratio_ml_per_g: asked.ratio_ml_per_g,
            jar_ml: asked.jar_ml,
            strength_percent_vol: asked.strength_percent_vol,
            glycerin_percent_vol: asked.glycerin_percent_vol,
            fortify_percent_vol: asked.fortify_percent_vol,
            temperature_c: asked.temperature_c.unwrap_or(20.0),
        })?;
        let mut proposal = proposal;
        let guessed = |plant: &Plant| plant.state == PlantState::Fresh && plant.sample.is_none();
        if !asked.plants.iter().any(guessed) {
            proposal
                .would_help
                .retain(|note| note.code != "oven-sample");
        }
        let own_retention = match known.as_slice() {
            [one] => retention::latest(reading, &one.key, proposal.preparation)?,
            _ => None,
        };
        Ok(Self {
            known,
            lots,
            proposal,
            own_retention,
        })
    }

    pub fn proposal(self, reading: &Reading<'_>, today: NaiveDate) -> Result<Proposal, Failure> {
        let shelf_life = self.shelf_life(reading, today)?;
        let Self {
            known,
            lots,
            proposal,
            own_retention,
        } = self;
        let comes_out = comes_out(&proposal, own_retention);
        let plants = proposal.plants.iter().zip(&known).zip(&lots);
        let plants = plants.map(|((line, known), lot)| PlantLine {
            lot: lot.map(Lot::from),
            herb: known.key.to_string(),
            common: told::title(known),
            part: line.part.clone(),
            state: line.state,
            mass_g: line.mass_g,
            moisture_wet_percent: line.moisture_wet_percent,
            basis: line.basis.clone(),
        });
        let mut reasons: Vec<Note> = proposal.reasons;
        reasons.extend(remarked(&proposal.liquid));
        Ok(Proposal {
            shelf_life,
            plants: plants.collect(),
            controls: proposal.controls,
            pours: proposal
                .pours
                .iter()
                .map(|pour| pour.line.clone())
                .collect(),
            poured_ml: proposal.poured_ml,
            liquid: proposal.liquid.clone(),
            reached: proposal.reached,
            short_of: proposal.short_of,
            would_help: proposal.would_help,
            keeping: proposal.keeping,
            jar: proposal.jar,
            comes_out,
            steep_days: proposal.steep_days,
            cautions: proposal.cautions,
            reasons,
        })
    }

    fn shelf_life(&self, reading: &Reading<'_>, today: NaiveDate) -> Result<ShelfLife, Failure> {
        let proposal = &self.proposal;
        let fresh = proposal
            .plants
            .iter()
            .any(|plant| plant.state == preparations::PlantState::Fresh);
        let state = if fresh {
            preparations::PlantState::Fresh
        } else {
            preparations::PlantState::Dried
        };
        let oils = proposal
            .pours
            .iter()
            .filter(|pour| pour.kind == IngredientKind::Oil);
        let oils = oils
            .filter_map(|pour| pour.supply.as_deref())
            .map(|id| asked::id("supply", id))
            .collect::<Result<Vec<journal::SupplyId>, _>>()?;
        let label = oil_label(reading, oils)?;
        // Every proposal is of a preparation in the table.
        let preparation = preparations::of_key(proposal.preparation).ok_or_else(|| {
            let name = Argument::own(proposal.preparation);
            Failure::invalid("preparation", say!("jar-preparation-unknown", name))
        })?;
        let verdict = proposal.keeping.verdict;
        Ok(keep::shelf_life(preparation, verdict, state, label, today))
    }
}

fn comes_out(proposal: &compose::Proposal, own: Option<physics::Interval>) -> ComesOut {
    let preparation = preparations::of_key(proposal.preparation);
    let (per_g, because) = match preparation {
        Some(preparation) if !proposal.plants.is_empty() => plan::retention(preparation, own),
        _ => (physics::Interval::exact(0.0), None),
    };
    ComesOut {
        ml: plan::strained_ml(proposal, per_g),
        because,
    }
}

fn found(reading: &Reading<'_>, lot: &Lot, herb: &Known) -> Result<LotRow, Failure> {
    let id = asked::lot("lot.id", lot)?;
    let row = reading
        .lot(id)
        .map_err(|why| Failure::from(why).renamed("lot.id"))?;
    if row.harvest.herb != herb.key {
        let message = say!("lot-of-another-herb", herb = told::herb(herb));
        return Err(Failure::invalid("lot", message));
    }
    if let Some(tray) = &row.tray {
        refuse_if_lost(tray).map_err(|why| why.renamed("lot"))?;
    }
    Ok(row)
}

/// What the maker's own batches or the lot's own weigh-ins say of its water; nothing where only the
/// tables know.
fn own_moisture(
    reading: &Reading<'_>,
    herb: &Known,
    part: &str,
    lot: Option<journal::Lot>,
) -> Result<Option<(Interval, Option<Message>)>, Failure> {
    match lot {
        Some(journal::Lot::Tray(id)) => {
            let run = Run::read(reading, &id)?;
            Ok(run
                .own_moisture()
                .map(|(moisture, why)| (moisture, Some(why))))
        }
        Some(journal::Lot::Harvest(_)) => {
            let own = own_fractions(reading, &herb.key, part, None)?;
            let expected = Expected::of(herb.water(part), part, &own).at("part")?;
            let own = (expected.basis == Basis::OwnBatches).then(|| {
                (
                    expected.prior.fresh_water_wet_percent(),
                    Some(expected.reason),
                )
            });
            Ok(own)
        }
        None => Ok(None),
    }
}
