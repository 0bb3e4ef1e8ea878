//! `jar.pour`: the composition becomes a jar, and its lots and bottles give what it took.

use journal::{Amount, Jar, JarId, Plant, Pour, Source, SteepDays};
use store::Writing;

use super::compose::Composed;
use super::correct::written;
use super::marc;
use super::page::named;
use super::proposal::{Days, Verdict};
use super::wire::{JarWritten, PourJar};
use crate::mixture::label_of;
use crate::{App, Code, Command, Failure, asked, words};

/// What no kitchen scale or cup shows is not poured.
const LEAST: f64 = 0.01;

impl Command for PourJar {
    const NAME: &'static str = "jar.pour";
    type Reply = JarWritten;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let id = JarId(app.new_id());
        let poured_at = asked::past("poured_at", self.poured_at.as_deref(), app.now())?;
        let name = asked::text(self.name.clone());
        let (done, ()) = app.perform(|writing| {
            let marc_of = self
                .marc_of
                .as_deref()
                .map(|jar| {
                    let id = asked::id("marc_of", jar)?;
                    marc::used_up(writing, &id).map_err(|why| why.renamed("marc_of"))?;
                    Ok::<_, Failure>(id)
                })
                .transpose()?;
            let composed = Composed::of(writing, &self.composition)
                .map_err(|why| why.within("composition"))?;
            refuse_what_must_not_be_made(&composed)?;
            refuse_more_than_there_is(writing, &composed)?;
            let name =
                name.unwrap_or_else(|| named(&composed.known, composed.proposal.preparation));
            let proposal = &composed.proposal;
            let days = Days::from(proposal.steep_days);
            let jar = Jar {
                code: writing.free_code(id.0)?,
                name,
                preparation: proposal.preparation.to_owned(),
                poured_at,
                pours: pours(&composed)?,
                plants: plants(&composed),
                jar_ml: self.composition.jar_ml,
                steep_days: SteepDays {
                    low: days.low,
                    high: days.high,
                },
                strength_percent_vol: proposal.liquid.strength_percent_vol,
                glycerol_percent_mass: proposal.liquid.glycerol_percent_mass,
                shake: self.shake.unwrap_or(false),
                place: asked::text(self.place),
                note: asked::text(self.note),
                failed: None,
                marc_of,
            };
            writing.record(&id, &jar)?;
            let poured = words::figure(jar.poured_ml());
            Ok((
                format!("Poured {} ({}), {poured} mL", jar.name, jar.code),
                (),
            ))
        })?;
        written(app, done, &id)
    }
}

fn refuse_what_must_not_be_made(composed: &Composed) -> Result<(), Failure> {
    let keeping = &composed.proposal.keeping;
    if Verdict::from(keeping.verdict) == Verdict::DoNotMake {
        return Err(Failure::invalid(
            "composition.preparation",
            keeping.text.clone(),
        ));
    }
    Ok(())
}

/// The ledger refuses this too, but cannot say which plant of the request asked for it.
fn refuse_more_than_there_is(writing: &Writing<'_>, composed: &Composed) -> Result<(), Failure> {
    for (at, (line, lot)) in composed
        .proposal
        .plants
        .iter()
        .zip(&composed.lots)
        .enumerate()
    {
        let Some(lot) = *lot else { continue };
        let left = writing.left(Source::from(lot))?;
        if Amount::of(line.mass_g) > left {
            let row = writing.lot(lot)?;
            let code = row.tray.map_or(row.harvest.code, |tray| tray.code);
            let (asked, left) = (words::figure(line.mass_g), words::figure(left.get()));
            let message = format!(
                "{} {code} has {left} g left; {asked} g cannot be taken from it.",
                line.common
            );
            let field = Some(format!("composition.plants[{at}].mass_g"));
            return Err(Failure {
                field,
                ..Failure::new(Code::NotEnough, message)
            });
        }
    }
    Ok(())
}

fn pours(composed: &Composed) -> Result<Vec<Pour>, Failure> {
    let measured = composed
        .proposal
        .pours
        .iter()
        .filter(|line| line.ml >= LEAST && line.g >= LEAST);
    let pour = |line: &formulary::compose::PourLine| {
        Ok(Pour {
            item: label_of(&line.ingredient),
            name: line.name.clone(),
            ml: line.ml,
            g: line.g,
            supply: line
                .supply
                .as_deref()
                .map(|id| asked::id("supply", id))
                .transpose()?,
            added: None,
        })
    };
    measured.map(pour).collect()
}

fn plants(composed: &Composed) -> Vec<Plant> {
    let Composed {
        known,
        lots,
        proposal,
        ..
    } = composed;
    let plants = proposal.plants.iter().zip(known).zip(lots);
    let plant = plants.map(|((line, known), lot)| Plant {
        lot: *lot,
        herb: known.key.clone(),
        part: line.part.clone(),
        state: super::said::state_of(line).into(),
        mass_g: line.mass_g,
        moisture_wet_percent: line.moisture_wet_percent,
    });
    plant.collect()
}
