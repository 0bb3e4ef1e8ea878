//! `season.book`: the year on paper.

use ::paper::season::{self, Entry, Season, Yield};
use ::paper::{Figure, Herb, Paper};
use chrono::NaiveDate;
use journal::{Amount, JarId, Pictured, Portrait};
use message::{Argument, Failure, Message, say};
use reckon::herb::Known;
use reckon::told;
use serde::Deserialize;
use store::{BottleRow, JarRow, Reading};

use crate::open::Open;
use crate::printed::{Photos, PrintedFile};
use crate::request::Command;
use crate::speech;

/// The season's book, on paper.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct PrintSeason {
    pub year: i32,
    pub paper: Paper,
}

impl Command for PrintSeason {
    const NAME: &'static str = "season.book";
    type Reply = PrintedFile;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let span = reckon::season::span(self.year, *app.now().offset())?;
        let book = app.read(|reading| {
            let mut entries = Vec::new();
            for row in reading.harvests_picked(span.0, span.1)? {
                let known = Known::written(reading, &row.harvest.herb)?;
                let trays = reading.trays_of(&row.id)?;
                let dried: Amount = trays.iter().map(|tray| tray.tray.dried()).sum();
                entries.push(Entry {
                    herb: told::herb(&known),
                    latin: known.latin.clone(),
                    part: told::part(&row.harvest.part),
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
                    drawn: Herb {
                        name: told::herb(&known),
                        key: row.harvest.herb.to_string(),
                        part: row.harvest.part.clone(),
                    },
                });
            }
            entries.sort_by(|a, b| (a.on, &a.code).cmp(&(b.on, &b.code)));
            let mut jars = Vec::new();
            for row in reading.jars_poured(span.0, span.1)? {
                jars.push(made(reading, row)?);
            }
            Ok(Season {
                language: speech::language(),
                year: self.year,
                maker: reading.setting()?.maker,
                yields: yields(&entries),
                entries,
                jars,
            })
        })?;
        if book.entries.is_empty() && book.jars.is_empty() {
            let message = say!(
                "season-empty",
                year = Argument::figure(self.year.to_string())
            );
            return Err(Failure::invalid("year", message));
        }
        let mut photos = Photos::of(app);
        let mut drawn = season::pdf(&book, self.paper, &mut |hash| photos.thumb(hash));
        drawn.remarks.extend(photos.remark());
        Ok(PrintedFile::pdf(format!("season-{}.pdf", self.year), drawn))
    }
}

/// What was taken down dry; nothing weighed is not a weight of nothing.
fn weighed(g: f64) -> Option<Figure> {
    (g > 0.0).then(|| Figure::exact(g))
}

/// The harvests added up by herb, part and bed, in the order in which the language of the call reads them.
fn yields(entries: &[Entry]) -> Vec<Yield> {
    let mut yields: Vec<Yield> = Vec::new();
    for entry in entries {
        let dry = entry.dry_g.map_or(0.0, |figure| figure.value);
        let same =
            |it: &&mut Yield| it.herb == entry.herb && it.part == entry.part && it.bed == entry.bed;
        match yields.iter_mut().find(same) {
            Some(line) => {
                line.fresh_g += entry.fresh_g;
                line.dry_g = weighed(line.dry_g.map_or(0.0, |figure| figure.value) + dry);
                line.harvests += 1;
            }
            None => yields.push(Yield {
                herb: entry.herb.clone(),
                part: entry.part.clone(),
                bed: entry.bed.clone(),
                fresh_g: entry.fresh_g,
                dry_g: entry.dry_g,
                harvests: 1,
            }),
        }
    }
    let said = |what: &Argument| speech::language().tell(&say!("alone", what = what.clone()));
    let read = |it: &Yield| (said(&it.herb), said(&it.part), it.bed.clone());
    yields.sort_by_cached_key(read);
    yields
}

fn made(reading: &Reading<'_>, row: JarRow) -> Result<season::Jar, Failure> {
    let JarRow { id, jar, .. } = row;
    let mut lines = Vec::new();
    for plant in &jar.plants {
        let known = Known::written(reading, &plant.herb)?;
        lines.push(say!(
            "season-plant",
            herb = told::herb(&known),
            state = plant.state.name(),
            part = told::part(&plant.part),
            mass = Argument::grams(plant.mass_g)
        ));
    }
    let pours = jar.pours.iter();
    let pours = pours.map(|pour| told::pour(&told::poured(pour), pour.ml));
    lines.push(say!("chain-poured", pours = Argument::all_of(pours)));
    for (_, straining) in reading.strainings(&id)? {
        lines.push(say!(
            "season-strained",
            day = Argument::day(straining.at.date_naive()),
            ml = Argument::millilitres(straining.came_out_ml)
        ));
    }
    let bottles = reading.bottles_of(&id)?;
    if !bottles.is_empty() {
        let ml: f64 = bottles.iter().map(|row| row.bottle.size_ml).sum();
        lines.push(say!(
            "season-filled",
            count = Argument::count(bottles.len() as u64),
            ml = Argument::millilitres(ml)
        ));
    }
    if let Some(failed) = &jar.failed {
        let why = Argument::own(failed.reason.as_str());
        lines.push(say!("season-failed", why));
    }
    let poured_on = jar.poured_at.date_naive();
    Ok(season::Jar {
        name: jar.name,
        lot: jar.code.to_string(),
        poured_on,
        lines,
        note: jar.note,
        portraits: portraits(reading, id, poured_on, &bottles)?,
    })
}

/// How a jar and its bottles looked, the earliest first.
fn portraits(
    reading: &Reading<'_>,
    jar: JarId,
    poured_on: NaiveDate,
    bottles: &[BottleRow],
) -> Result<Vec<season::Portrait>, Failure> {
    let mut found = Vec::new();
    for (_, it) in reading.portraits(Pictured::Jar(jar))? {
        let on = it.at.date_naive();
        let number = (on - poured_on).num_days().max(0).unsigned_abs();
        let caption = say!("season-jar-on-day", number, day = Argument::day(on));
        found.push((it, caption));
    }
    for row in bottles {
        for (_, it) in reading.portraits(Pictured::Bottle(row.id))? {
            let day = Argument::day(it.at.date_naive());
            let caption = say!("season-bottle-on-day", code = &row.bottle.code, day);
            found.push((it, caption));
        }
    }
    found.sort_by_key(|(it, _)| it.at);
    let printed = |(it, caption): (Portrait, Message)| season::Portrait {
        photo: it.photo.to_string(),
        caption,
    };
    Ok(found.into_iter().map(printed).collect())
}
