//! `trace.sheet`: the chain from a bottle or a jar back to its beds, on paper.

use ::paper::Paper;
use ::paper::chain::{self, Chain, Step};
use journal::{BedId, BottleId, Jar};
use message::{Argument, Failure, Message, say};
use reckon::bottle::card::Shown;
use reckon::trace::back::{self, Chain as Traced, ChainPlant};
use reckon::{asked, told};
use serde::Deserialize;
use store::Reading;

use crate::open::Open;
use crate::printed::{Photos, PrintedFile, day};
use crate::request::Command;
use crate::speech;

/// The chain from a bottle or a jar back to its beds, on paper.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct PrintTrace {
    pub bottle: Option<String>,
    pub jar: Option<String>,
    pub paper: Paper,
}

impl Command for PrintTrace {
    const NAME: &'static str = "trace.sheet";
    type Reply = PrintedFile;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let today = app.now().date_naive();
        let sheet = app.read(|reading| {
            let (chain, given) = match (&self.bottle, &self.jar) {
                (Some(text), None) => {
                    let id: BottleId = asked::id("bottle", text)?;
                    let row = reading
                        .bottle(&id)
                        .map_err(|why| Failure::from(why).renamed("bottle"))?;
                    let jar = reading.get::<Jar>(&row.bottle.jar)?;
                    let card = Shown::of(reading, &jar)?.card(&row, today);
                    let given = row.bottle.end.and_then(|end| Some((end.to?, end.at)));
                    (
                        back::chain(reading, &row.bottle.jar, Some(card), app.now())?,
                        given,
                    )
                }
                (None, Some(text)) => (
                    back::chain(reading, &asked::id("jar", text)?, None, app.now())?,
                    None,
                ),
                _ => return Err(Failure::invalid("bottle", say!("bottle-or-jar"))),
            };
            let mut steps = Vec::new();
            let (title, lot, asked) = match &chain.bottle {
                Some(bottle) => {
                    let held = Argument::millilitres(bottle.size_ml);
                    let mut lines = vec![say!("chain-holds", ml = held)];
                    if let Some(on) = bottle.best_before.as_deref() {
                        let on = Argument::day(asked::date("best_before", on)?);
                        lines.push(say!("chain-best-before", day = on));
                    }
                    if let Some((to, at)) = given {
                        lines.push(say!(
                            "chain-given-to-on",
                            to = Argument::own(to),
                            day = Argument::day(at.date_naive())
                        ));
                    }
                    steps.push(Step {
                        heading: say!("chain-bottle"),
                        code: Some(bottle.code.clone()),
                        on: day(&bottle.filled_at),
                        lines,
                        photo: None,
                    });
                    let asked = say!("chain-back-from-bottle");
                    (bottle.name.as_str(), bottle.code.clone(), asked)
                }
                None => {
                    let asked = say!("chain-back-from-jar");
                    (chain.jar.name.as_str(), chain.jar.code.clone(), asked)
                }
            };
            let title = Message::own(title);
            walk(reading, &chain, &mut steps)?;
            Ok(Chain {
                language: speech::language(),
                title,
                lot: Some(lot),
                asked,
                printed_on: today,
                steps,
                notes: Vec::new(),
            })
        })?;
        let mut photos = Photos::of(app);
        let mut drawn = chain::pdf(&sheet, self.paper, &mut |hash| photos.thumb(hash));
        drawn.remarks.extend(photos.remark());
        let lot = sheet.lot.unwrap_or_default();
        Ok(PrintedFile::pdf(format!("trace-{lot}.pdf"), drawn))
    }
}

/// The jar, its plants back to their beds, and the jar before it whose marc it stands on.
fn walk(reading: &Reading<'_>, chain: &Traced, steps: &mut Vec<Step>) -> Result<(), Failure> {
    let jar = &chain.jar;
    let strained = reading.strainings(&asked::id("jar", &jar.id)?)?;
    for (_, straining) in strained.iter().rev() {
        let ml = Argument::millilitres(straining.came_out_ml);
        steps.push(Step {
            heading: say!("chain-strained"),
            code: None,
            on: Some(straining.at.date_naive()),
            lines: vec![say!("chain-came-out", ml)],
            photo: None,
        });
    }
    let pours = chain.pours.iter();
    let pours = pours.map(|pour| told::pour(&pour.name, pour.ml));
    let preparation = Argument::message(jar.preparation_name.clone());
    steps.push(Step {
        heading: say!("chain-jar", name = Argument::own(jar.name.as_str())),
        code: Some(jar.code.clone()),
        on: day(&jar.poured_at),
        lines: vec![
            say!("chain-preparation", preparation),
            say!("chain-poured", pours = Argument::all_of(pours)),
        ],
        photo: None,
    });
    for plant in &chain.plants {
        back_to_its_bed(reading, plant, steps)?;
    }
    match &chain.marc_of {
        Some(first) => walk(reading, first, steps),
        None => Ok(()),
    }
}

fn back_to_its_bed(
    reading: &Reading<'_>,
    plant: &ChainPlant,
    steps: &mut Vec<Step>,
) -> Result<(), Failure> {
    if let Some(tray) = &plant.tray {
        let weighings = tray.weighings.iter().filter_map(|weighing| {
            let on = Argument::day(day(&weighing.at)?);
            Some(Argument::message(say!(
                "chain-weighing",
                mass = Argument::grams(weighing.gross_g),
                day = on
            )))
        });
        let weighings: Vec<Argument> = weighings.collect();
        let mut lines = Vec::new();
        if !weighings.is_empty() {
            let weighings = Argument::all_of(weighings);
            lines.push(say!("chain-scale", weighings));
        }
        if let Some(on) = tray.taken_down_at.as_deref().and_then(day) {
            lines.push(say!("chain-taken-down", day = Argument::day(on)));
        }
        steps.push(Step {
            heading: say!("chain-rack", name = Argument::own(tray.name.as_str())),
            code: Some(tray.code.clone()),
            on: day(&tray.started_at),
            lines,
            photo: None,
        });
    }
    let went_in = Argument::grams(plant.mass_g);
    let mut lines = vec![say!("chain-went-in", mass = went_in)];
    if plant.code.is_none() {
        lines.push(say!("chain-no-harvest"));
    }
    if let (Some(bed), Some(id)) = (&plant.bed, &plant.bed_id) {
        let id: BedId = asked::id("bed", id)?;
        // The place where a wild plant grows stays in the book.
        if !reading.get::<journal::Bed>(&id)?.wild {
            lines.push(say!("chain-bed", bed = Argument::own(bed.as_str())));
        }
    }
    steps.push(Step {
        heading: say!(
            "chain-plant",
            herb = told::herb_of(&plant.herb, &plant.common),
            state = plant.state.name(),
            part = told::part(&plant.part)
        ),
        code: plant.code.clone(),
        on: plant.picked_at.as_deref().and_then(day),
        lines,
        photo: plant.photo.clone(),
    });
    Ok(())
}
