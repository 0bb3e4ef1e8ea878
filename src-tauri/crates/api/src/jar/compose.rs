//! `jar.compose`: what to pour, live while the maker moves the figures.

use chrono::NaiveDate;
use formulary::{compose, keep, plan, preparations};
use message::Message;
use store::{LotRow, Reading};

use super::judged::oil_label;
use super::proposal::{ComesOut, Composition, Plant, PlantLine, PourLine, Proposal, ShelfLife};
use super::said::{remarked, state, state_of};
use super::{retention, sample};
use crate::drying::{Basis, Expected};
use crate::failure::At;
use crate::harvest::own_fractions;
use crate::herb::Known;
use crate::mixture::{self, Liquid, Shortfall, StockItem};
use crate::tray::{Run, refuse_if_lost};
use crate::wire::{Caution, Interval, Lot, Note, PlantState};
use crate::{App, Command, Failure, asked};

impl Command for Composition {
    const NAME: &'static str = "jar.compose";
    type Reply = Proposal;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let today = app.now().date_naive();
        app.read(|reading| Composed::of(reading, &self)?.proposal(reading, today))
    }
}

/// A composition as the journal and the formulary understand it.
pub(super) struct Composed {
    pub known: Vec<Known>,
    pub lots: Vec<Option<journal::Lot>>,
    pub proposal: compose::Proposal,
    /// Why each plant brings that much water, where the journal knows better than the tables.
    own_bases: Vec<Option<String>>,
    /// What a gram of dry matter keeps of the liquid, where the maker's own jars tell.
    own_retention: Option<physics::Interval>,
}

impl Composed {
    /// Looks up the lots and the supplies and proposes what to pour.
    pub fn of(reading: &Reading<'_>, asked: &Composition) -> Result<Self, Failure> {
        let (mut known, mut lots, mut plants, mut own_bases) =
            (Vec::new(), Vec::new(), Vec::new(), Vec::new());
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
                && row.state() != plant.state.into()
            {
                let message = Message::new("lot-is-in-another-state");
                return Err(here(Failure::invalid("state", message)));
            }
            let lot = row.map(|row| row.lot);
            let own = match (&plant.sample, plant.moisture_wet_percent) {
                (Some(_), Some(_)) => {
                    let message = "Give the water of the plant or a sample of it, not both.";
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
                state: state(plant.state),
                mass_g: plant.mass_g,
                moisture_wet_percent: own.as_ref().map(|(moisture, _)| physics::Interval {
                    low: moisture.low,
                    value: moisture.value,
                    high: moisture.high,
                }),
            });
            own_bases.push(own.and_then(|(_, basis)| basis));
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
            own_bases,
            own_retention,
        })
    }

    fn proposal(self, reading: &Reading<'_>, today: NaiveDate) -> Result<Proposal, Failure> {
        let shelf_life = self.shelf_life(reading, today)?;
        let Self {
            known,
            lots,
            proposal,
            own_bases,
            own_retention,
        } = self;
        let comes_out = comes_out(&proposal, own_retention);
        let plants = proposal
            .plants
            .iter()
            .zip(&known)
            .zip(&lots)
            .zip(&own_bases);
        let plants = plants.map(|(((line, known), lot), basis)| PlantLine {
            lot: lot.map(Lot::from),
            herb: known.key.to_string(),
            common: known.common.clone(),
            part: line.part.clone(),
            state: state_of(line),
            mass_g: line.mass_g,
            moisture_wet_percent: line.moisture_wet_percent.into(),
            basis: basis.as_ref().unwrap_or(&line.basis).clone(),
        });
        let mut reasons: Vec<Note> = proposal.reasons.into_iter().map(Note::from).collect();
        // The formulary knows that the water was told; the journal knows by what.
        let water = reasons.iter_mut().filter(|note| note.code == "plant-water");
        for (note, basis) in water.zip(&own_bases) {
            if let Some(basis) = basis {
                note.text = note.text.replace(compose::TOLD_WATER, basis);
            }
        }
        reasons.extend(remarked(&proposal.liquid));
        Ok(Proposal {
            shelf_life,
            plants: plants.collect(),
            controls: proposal.controls.into(),
            pours: proposal.pours.iter().map(PourLine::from).collect(),
            poured_ml: proposal.poured_ml,
            liquid: Liquid::from(&proposal.liquid),
            reached: proposal.reached,
            short_of: proposal.short_of.into_iter().map(Shortfall::from).collect(),
            would_help: proposal.would_help.into_iter().map(Note::from).collect(),
            keeping: proposal.keeping.into(),
            jar: proposal.jar.into(),
            comes_out,
            steep_days: proposal.steep_days.into(),
            cautions: proposal.cautions.into_iter().map(Caution::from).collect(),
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
        let oils = proposal.pours.iter().filter(|pour| pour.kind == "oil");
        let oils = oils
            .filter_map(|pour| pour.supply.as_deref())
            .map(|id| asked::id("supply", id))
            .collect::<Result<Vec<journal::SupplyId>, _>>()?;
        let label = oil_label(reading, oils)?;
        // Every proposal is of a preparation in the table.
        let preparation = preparations::all()
            .iter()
            .find(|one| one.key == proposal.preparation)
            .ok_or_else(|| Failure::invalid("preparation", "This is no preparation known here."))?;
        let verdict = proposal.keeping.verdict;
        Ok(keep::shelf_life(preparation, verdict, state, label, today).into())
    }
}

fn comes_out(proposal: &compose::Proposal, own: Option<physics::Interval>) -> ComesOut {
    let preparation = preparations::all()
        .iter()
        .find(|one| one.key == proposal.preparation);
    let (per_g, because) = match preparation {
        Some(preparation) if !proposal.plants.is_empty() => plan::retention(preparation, own),
        _ => (physics::Interval::exact(0.0), None),
    };
    ComesOut {
        ml: plan::strained_ml(proposal, per_g).into(),
        because: because.map(Note::from),
    }
}

fn found(reading: &Reading<'_>, lot: &Lot, herb: &Known) -> Result<LotRow, Failure> {
    let id = asked::lot("lot.id", lot)?;
    let row = reading
        .lot(id)
        .map_err(|why| Failure::from(why).renamed("lot.id"))?;
    if row.harvest.herb != herb.key {
        let message = format!("This lot is not of {}; choose one that is.", herb.common);
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
) -> Result<Option<(Interval, Option<String>)>, Failure> {
    match lot {
        Some(journal::Lot::Tray(id)) => {
            let run = Run::read(reading, &id)?;
            Ok(run
                .own_moisture()
                .map(|(moisture, why)| (moisture.into(), Some(why))))
        }
        Some(journal::Lot::Harvest(_)) => {
            let own = own_fractions(reading, &herb.key, part, None)?;
            let expected = Expected::of(herb.table_name(), part, &own).at("part")?;
            let own = (expected.basis == Basis::OwnBatches).then(|| {
                (
                    expected.prior.fresh_water_wet_percent().into(),
                    Some(expected.reason),
                )
            });
            Ok(own)
        }
        None => Ok(None),
    }
}

/// The liquids at hand; one that names a supply is what the supply's label says.
pub(super) fn shelf(
    reading: &Reading<'_>,
    stock: &[StockItem],
) -> Result<Vec<compose::Stock>, Failure> {
    let on_shelf = |item: &StockItem| {
        let mut available_ml = item.available_ml;
        let label = match &item.supply {
            None => mixture::stock(item)?,
            Some(text) => {
                let id = asked::id("supply", text)?;
                let supply = reading
                    .get::<journal::Supply>(&id)
                    .map_err(|why| Failure::from(why).renamed("supply"))?;
                if mixture::as_item(&supply.item).kind != item.kind {
                    let message = format!("{} on the shelf is of another kind.", supply.name);
                    return Err(Failure::invalid("kind", message));
                }
                let left = reading.left(journal::Source::Supply(id))?.get();
                available_ml = Some(available_ml.map_or(left, |asked| asked.min(left)));
                supply.item
            }
        };
        Ok(compose::Stock {
            ingredient: mixture::ingredient(&label)?,
            available_ml,
            exactly_ml: item.exactly_ml,
            supply: item.supply.clone(),
        })
    };
    let indexed = stock.iter().enumerate();
    indexed
        .map(|(at, item)| {
            on_shelf(item).map_err(|why: Failure| why.within(&format!("stock[{at}]")))
        })
        .collect()
}
