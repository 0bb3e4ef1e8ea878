//! `jar.pour`: the composition becomes a jar, and its lots and bottles give what it took.

use formulary::preparations::{self, Preparation, Verdict};
use journal::{Amount, Item, Jar, JarId, Plant, Pour, Source, SteepDays};
use message::{Argument, Code, Failure, Message, Unit, say};
use reckon::herb::Known;
use reckon::jar::allowed;
use reckon::jar::compose::Composed;
use reckon::jar::proposal::Composition;
use reckon::{asked, told};
use serde::Deserialize;
use store::Writing;

use crate::jar::page::{JarWritten, written};
use crate::open::Open;
use crate::request::Command;
use crate::speech::{self, Language};

/// The composition was poured.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct PourJar {
    pub composition: Composition,
    pub name: Option<String>,
    pub poured_at: Option<String>,
    pub place: Option<String>,
    pub note: Option<String>,
    pub shake: Option<bool>,
    pub marc_of: Option<String>,
}

/// What no kitchen scale or cup shows is not poured.
const LEAST: f64 = 0.01;

impl Command for PourJar {
    const NAME: &'static str = "jar.pour";
    type Reply = JarWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let id = JarId(app.new_id());
        let poured_at = asked::past("poured_at", self.poured_at.as_deref(), app.now())?;
        let name = asked::text(self.name.clone());
        let (done, ()) = app.perform(|writing| {
            let marc_of = self
                .marc_of
                .as_deref()
                .map(|jar| {
                    let id = asked::id("marc_of", jar)?;
                    allowed::used_up(writing, &id).map_err(|why| why.renamed("marc_of"))?;
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
            let days = proposal.steep_days;
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
            let (name, volume) = (
                Argument::own(&jar.name),
                Argument::millilitres(jar.poured_ml()),
            );
            Ok((say!("deed-jar-poured", name, code = &jar.code, volume), ()))
        })?;
        written(app, done, &id)
    }
}

fn refuse_what_must_not_be_made(composed: &Composed) -> Result<(), Failure> {
    let keeping = &composed.proposal.keeping;
    if keeping.verdict == Verdict::DoNotMake {
        return Err(Failure::invalid(
            "composition.preparation",
            keeping.text.clone(),
        ));
    }
    Ok(())
}

/// The ledger refuses this too, but cannot say which plant of the request asked for it.
fn refuse_more_than_there_is(writing: &Writing<'_>, composed: &Composed) -> Result<(), Failure> {
    let plants = composed.proposal.plants.iter().zip(&composed.known);
    for (at, ((line, known), lot)) in plants.zip(&composed.lots).enumerate() {
        let Some(lot) = *lot else { continue };
        let left = writing.left(Source::from(lot))?;
        if Amount::of(line.mass_g) > left {
            let row = writing.lot(lot)?;
            let code = row.tray.map_or(row.harvest.code, |tray| tray.code);
            let message = say!(
                "plant-not-enough-left",
                herb = told::herb(known),
                code = &code,
                left = Argument::tenths(left.get(), Unit::Gram),
                wanted = Argument::tenths(line.mass_g, Unit::Gram)
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
    let pour = |line: &formulary::compose::Portion| {
        Ok(Pour {
            item: Item::of(&line.ingredient),
            name: plain_name(&line.name),
            ml: line.ml,
            g: line.g,
            supply: asked::id_if_any("supply", line.supply.as_deref())?,
            added: None,
        })
    };
    measured.map(pour).collect()
}

/// A liquid as the journal keeps its name: a plain line, for what is read is the item beside it.
pub(crate) fn plain_name(name: &Message) -> String {
    Language::English.tell(name).replace('\u{a0}', " ")
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
        state: line.state,
        mass_g: line.mass_g,
        moisture_wet_percent: line.moisture_wet_percent,
    });
    plant.collect()
}

/// What a jar is called until the maker names it: "Peppermint and Sage glycerite".
pub(crate) fn named(known: &[Known], preparation: &str) -> String {
    let mut known: Vec<&Known> = known.iter().collect();
    known.dedup_by_key(|known| known.key.clone());
    let family = preparations::of_key(preparation)
        .map_or_else(|| Message::own(preparation), Preparation::family_name);
    speech::line(&match known.as_slice() {
        [] => say!("title", name = family),
        [one] => say!("jar-name-one", herb = told::herb(one), family),
        [one, two] => {
            let (one, two) = (told::herb(one), told::herb(two));
            say!("jar-name-two", one, two, family)
        }
        [one, rest @ ..] => {
            let one = told::herb(one);
            say!("jar-name-more", one, more = rest.len(), family)
        }
    })
}
