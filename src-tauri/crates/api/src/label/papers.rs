//! `trace.sheet` and `season.book`: what the book tells, on paper.

use std::io::Read as _;

use ::label::Figure;
use ::label::book::{self, Book};
use ::label::trace::{self as sheet, Step, Trace};
use chrono::{DateTime, NaiveDate};
use journal::{Amount, BedId, BottleId, Jar};
use store::{JarRow, Reading};

use super::{PrintSeason, PrintTrace, PrintedFile};
use crate::bottle::Shown;
use crate::herb::Known;
use crate::speech::{self, said};
use crate::trace::{Chain, ChainPlant, chain};
use crate::wire::PlantState;
use crate::words::figure;
use crate::{App, Command, Failure, asked};

/// Photos beyond this are left out of a book, so that a phone can still carry it.
const MOST_PHOTO_BYTES: usize = 12 * 1024 * 1024;

/// Thumbs by their hash, until there are too many.
struct Photos<'a> {
    app: &'a App,
    bytes: usize,
    left_out: u32,
}

impl<'a> Photos<'a> {
    fn of(app: &'a App) -> Self {
        Self {
            app,
            bytes: 0,
            left_out: 0,
        }
    }

    fn thumb(&mut self, hash: &str) -> Option<Vec<u8>> {
        let mut picture = self.app.thumb(hash).ok().flatten()?;
        let mut bytes = Vec::new();
        picture.file.read_to_end(&mut bytes).ok()?;
        if self.bytes + bytes.len() > MOST_PHOTO_BYTES {
            self.left_out += 1;
            return None;
        }
        self.bytes += bytes.len();
        Some(bytes)
    }

    fn remark(&self) -> Option<String> {
        (self.left_out > 0).then(|| {
            format!(
                "{} photos were left out, for with them the file would be too large to send.",
                self.left_out
            )
        })
    }
}

impl Command for PrintTrace {
    const NAME: &'static str = "trace.sheet";
    type Reply = PrintedFile;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let today = app.now().date_naive();
        let trace = app.read(|reading| {
            let (chain, given) = match (&self.bottle, &self.jar) {
                (Some(text), None) => {
                    let id: BottleId = asked::id("bottle", text)?;
                    let row = reading
                        .bottle(&id)
                        .map_err(|why| Failure::from(why).renamed("bottle"))?;
                    let jar = reading.get::<Jar>(&row.bottle.jar)?;
                    let card = Shown::of(reading, &jar)?.card(&row, today);
                    let given = row.bottle.end.and_then(|end| Some((end.to?, end.at)));
                    (chain(app, reading, &row.bottle.jar, Some(card))?, given)
                }
                (None, Some(text)) => (chain(app, reading, &asked::id("jar", text)?, None)?, None),
                _ => return Err(Failure::invalid("bottle", "Name either a bottle or a jar.")),
            };
            let mut steps = Vec::new();
            let (title, lot, asked) = match &chain.bottle {
                Some(bottle) => {
                    let mut lines = vec![format!("Holds {} mL.", figure(bottle.size_ml))];
                    if let Some(day) = &bottle.best_before {
                        lines.push(format!("Best before {}.", words(day)));
                    }
                    if let Some((to, at)) = given {
                        let on = at.format("%-d %b %Y");
                        lines.push(format!("Given to {to} on {on}."));
                    }
                    steps.push(Step {
                        heading: "Bottle".to_owned(),
                        code: Some(bottle.code.clone()),
                        on: day(&bottle.filled_at),
                        lines,
                        photo: None,
                    });
                    let asked = "Back from the bottle to the bed";
                    (bottle.name.clone(), bottle.code.clone(), asked)
                }
                None => {
                    let asked = "Back from the jar to the bed";
                    (chain.jar.name.clone(), chain.jar.code.clone(), asked)
                }
            };
            walk(reading, &chain, &mut steps)?;
            Ok(Trace {
                language: speech::language(),
                title,
                lot: Some(lot),
                asked: asked.to_owned(),
                printed_on: today,
                steps,
                notes: Vec::new(),
            })
        })?;
        let mut photos = Photos::of(app);
        let mut drawn = sheet::pdf(&trace, self.paper.into(), &mut |hash| photos.thumb(hash));
        drawn.remarks.extend(photos.remark());
        let lot = trace.lot.unwrap_or_default();
        Ok(PrintedFile::pdf(format!("trace-{lot}.pdf"), drawn))
    }
}

/// The jar, its plants back to their beds, and the jar before it whose marc it stands on.
fn walk(reading: &Reading<'_>, chain: &Chain, steps: &mut Vec<Step>) -> Result<(), Failure> {
    let jar = &chain.jar;
    let strained = reading.strainings(&asked::id("jar", &jar.id)?)?;
    for (_, straining) in strained.iter().rev() {
        steps.push(Step {
            heading: "Strained".to_owned(),
            code: None,
            on: Some(straining.at.date_naive()),
            lines: vec![format!("{} mL came out.", figure(straining.came_out_ml))],
            photo: None,
        });
    }
    let pours = chain.pours.iter();
    let pours: Vec<String> = pours
        .map(|pour| format!("{} {} mL", said(&pour.name), said(&figure(pour.ml))))
        .collect();
    steps.push(Step {
        heading: format!("Jar: {}", jar.name),
        code: Some(jar.code.clone()),
        on: day(&jar.poured_at),
        lines: vec![
            format!("{}.", jar.preparation_name),
            format!("Poured: {}.", pours.join(", ")),
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
    let went_in = format!("{} g of it went into the jar.", figure(plant.mass_g));
    let name = format!("{}, {} {}", plant.common, state(plant.state), plant.part);
    if let Some(tray) = &plant.tray {
        let weighings = tray.weighings.iter().filter_map(|weighing| {
            let on = day(&weighing.at)?.format("%-d %b");
            Some(format!("{} g on {on}", figure(weighing.gross_g)))
        });
        let weighings: Vec<String> = weighings.collect();
        let mut lines = Vec::new();
        if !weighings.is_empty() {
            lines.push(format!("On the scale: {}.", weighings.join(", ")));
        }
        if let Some(on) = tray.taken_down_at.as_deref().and_then(day) {
            lines.push(format!("Taken down {}.", on.format("%-d %b %Y")));
        }
        steps.push(Step {
            heading: format!("Rack: {}", tray.name),
            code: Some(tray.code.clone()),
            on: day(&tray.started_at),
            lines,
            photo: None,
        });
    }
    let mut lines = vec![went_in];
    if plant.code.is_none() {
        lines.push("It came from no harvest of this book.".to_owned());
    }
    if let (Some(bed), Some(id)) = (&plant.bed, &plant.bed_id) {
        let id: BedId = asked::id("bed", id)?;
        // The place where a wild plant grows stays in the book.
        if !reading.get::<journal::Bed>(&id)?.wild {
            lines.push(format!("Bed: {bed}."));
        }
    }
    steps.push(Step {
        heading: name,
        code: plant.code.clone(),
        on: plant.picked_at.as_deref().and_then(day),
        lines,
        photo: plant.photo.clone(),
    });
    Ok(())
}

fn state(state: PlantState) -> &'static str {
    match state {
        PlantState::Fresh => "fresh",
        PlantState::Dried => "dried",
        PlantState::Cooked => "cooked",
    }
}

fn day(moment: &str) -> Option<NaiveDate> {
    let moment = DateTime::parse_from_rfc3339(moment).ok()?;
    Some(moment.date_naive())
}

fn words(day: &str) -> String {
    let parsed = day.parse::<NaiveDate>();
    parsed.map_or_else(
        |_| day.to_owned(),
        |day| day.format("%-d %b %Y").to_string(),
    )
}

impl Command for PrintSeason {
    const NAME: &'static str = "season.book";
    type Reply = PrintedFile;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let span = crate::season::span(app, self.year)?;
        let book = app.read(|reading| {
            let mut entries = Vec::new();
            for row in reading.harvests_picked(span.0, span.1)? {
                let known = Known::written(reading, &row.harvest.herb)?;
                let trays = reading.trays_of(&row.id)?;
                let dried: Amount = trays.iter().map(|tray| tray.tray.dried()).sum();
                entries.push(book::Entry {
                    herb: known.common,
                    latin: known.latin,
                    part: row.harvest.part.clone(),
                    on: row.harvest.picked_at.date_naive(),
                    bed: row
                        .bed
                        .filter(|(_, bed)| !bed.wild)
                        .map(|(_, bed)| bed.name),
                    code: row.harvest.code.to_string(),
                    fresh_g: row.harvest.fresh().get(),
                    dry_g: weighed(dried.get()),
                    stage: row.harvest.stage.clone(),
                    note: row.harvest.note.clone(),
                    photo: row.harvest.photos.first().map(ToString::to_string),
                });
            }
            entries.sort_by(|a, b| (a.on, &a.code).cmp(&(b.on, &b.code)));
            let mut jars = Vec::new();
            for row in reading.jars_poured(span.0, span.1)? {
                jars.push(made(reading, row)?);
            }
            Ok(Book {
                language: speech::language(),
                title: format!("The season of {}", self.year),
                maker: reading.setting()?.maker,
                yields: yields(&entries),
                entries,
                jars,
            })
        })?;
        if book.entries.is_empty() && book.jars.is_empty() {
            let message = format!(
                "Nothing was picked or poured in {}, so there is no book of it.",
                self.year
            );
            return Err(Failure::invalid("year", message));
        }
        let mut photos = Photos::of(app);
        let mut drawn = book::pdf(&book, self.paper.into(), &mut |hash| photos.thumb(hash));
        drawn.remarks.extend(photos.remark());
        Ok(PrintedFile::pdf(format!("season-{}.pdf", self.year), drawn))
    }
}

/// What was taken down dry; nothing weighed is not a weight of nothing.
fn weighed(g: f64) -> Option<Figure> {
    (g > 0.0).then(|| Figure::exact(g))
}

/// The harvests added up by herb, part and bed.
fn yields(entries: &[book::Entry]) -> Vec<book::Yield> {
    let mut yields: Vec<book::Yield> = Vec::new();
    for entry in entries {
        let dry = entry.dry_g.map_or(0.0, |figure| figure.value);
        let same = |it: &&mut book::Yield| {
            it.herb == entry.herb && it.part == entry.part && it.bed == entry.bed
        };
        match yields.iter_mut().find(same) {
            Some(line) => {
                line.fresh_g += entry.fresh_g;
                line.dry_g = weighed(line.dry_g.map_or(0.0, |figure| figure.value) + dry);
                line.harvests += 1;
            }
            None => yields.push(book::Yield {
                herb: entry.herb.clone(),
                part: entry.part.clone(),
                bed: entry.bed.clone(),
                fresh_g: entry.fresh_g,
                dry_g: entry.dry_g,
                harvests: 1,
            }),
        }
    }
    yields.sort_by(|a, b| (&a.herb, &a.part, &a.bed).cmp(&(&b.herb, &b.part, &b.bed)));
    yields
}

fn made(reading: &Reading<'_>, row: JarRow) -> Result<book::Jar, Failure> {
    let JarRow { id, jar, .. } = row;
    let mut lines = Vec::new();
    for plant in &jar.plants {
        let common = Known::written(reading, &plant.herb)?.common;
        let mass = figure(plant.mass_g);
        let state = state(plant.state.into());
        lines.push(format!("{common}, {state} {}: {mass} g.", plant.part));
    }
    let pours = jar.pours.iter();
    let pours: Vec<String> = pours
        .map(|pour| format!("{} {} mL", said(&pour.name), said(&figure(pour.ml))))
        .collect();
    lines.push(format!("Poured: {}.", pours.join(", ")));
    for (_, straining) in reading.strainings(&id)? {
        let on = straining.at.format("%-d %b %Y");
        let ml = figure(straining.came_out_ml);
        lines.push(format!("Strained {on}: {ml} mL."));
    }
    let bottles = reading.bottles_of(&id)?;
    if !bottles.is_empty() {
        let ml: f64 = bottles.iter().map(|row| row.bottle.size_ml).sum();
        let count = bottles.len();
        let noun = if count == 1 { "bottle" } else { "bottles" };
        lines.push(format!("Filled: {count} {noun}, {} mL.", figure(ml)));
    }
    if let Some(failed) = &jar.failed {
        lines.push(crate::words::sentence(&format!(
            "set aside: {}",
            failed.reason
        )));
    }
    Ok(book::Jar {
        name: jar.name,
        lot: jar.code.to_string(),
        poured_on: jar.poured_at.date_naive(),
        lines,
        note: jar.note,
    })
}
