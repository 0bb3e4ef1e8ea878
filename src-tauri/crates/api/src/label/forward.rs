//! `trace.sheet_forward`: what became of a bed, a harvest, a supply, a jar or some days, on paper.

use ::label::trace::{self as sheet, Step, Trace};
use chrono::{DateTime, NaiveDate};
use journal::{Bed, BedId, Supply, SupplyId};
use serde::Deserialize;
use store::Reading;

use super::{Paper, PrintedFile};
use crate::bottle::BottleState;
use crate::speech;
use crate::trace::{TraceForward, TracedBottle, TracedForward};
use crate::words::figure;
use crate::{App, Command, Failure, asked};

/// What [`TraceForward`] answers, on paper.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct PrintForward {
    pub of: TraceForward,
    pub paper: Paper,
}

/// What a sheet starts from.
struct Start {
    title: String,
    code: Option<String>,
    asked: &'static str,
}

impl Command for PrintForward {
    const NAME: &'static str = "trace.sheet_forward";
    type Reply = PrintedFile;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let found = self.of.clone().run(app)?;
        let start = app.read(|reading| start(&self.of, reading, &found))?;
        let today = app.now().date_naive();
        let name = match &start.code {
            Some(code) => format!("trace-{code}.pdf"),
            None => format!("trace-{today}.pdf"),
        };
        let mut notes = Vec::new();
        if found.people.is_empty() {
            notes.push("No bottle of it was given away.".to_owned());
        }
        let trace = Trace {
            language: speech::language(),
            title: start.title,
            lot: start.code,
            asked: start.asked.to_owned(),
            printed_on: today,
            steps: steps(&found),
            notes,
        };
        let drawn = sheet::pdf(&trace, self.paper.into(), &mut |_| None);
        Ok(PrintedFile::pdf(name, drawn))
    }
}

fn start(
    of: &TraceForward,
    reading: &Reading<'_>,
    found: &TracedForward,
) -> Result<Start, Failure> {
    if let Some(id) = &of.bed {
        let id: BedId = asked::id("bed", id)?;
        let bed = reading.get::<Bed>(&id)?;
        // The place where a wild plant grows stays in the book.
        let title = if bed.wild {
            "A wild place".to_owned()
        } else {
            bed.name
        };
        let asked = "Forward from the bed to whoever was given a bottle";
        return Ok(Start {
            title,
            code: None,
            asked,
        });
    }
    if let Some(id) = &of.supply {
        let id: SupplyId = asked::id("supply", id)?;
        let title = reading.get::<Supply>(&id)?.name;
        let asked = "Forward from what was poured to whoever was given a bottle";
        return Ok(Start {
            title,
            code: None,
            asked,
        });
    }
    if let (Some(id), Some(jar)) = (&of.jar, found.jars.first()) {
        let named = found.jars.iter().find(|one| one.id == *id).unwrap_or(jar);
        return Ok(Start {
            title: named.name.clone(),
            code: Some(named.code.clone()),
            asked: "Forward from the jar to whoever was given a bottle",
        });
    }
    if let (Some(_), Some(one)) = (&of.harvest, found.harvests.first()) {
        return Ok(Start {
            title: format!("{}, {}", one.common, one.part),
            code: Some(one.code.clone()),
            asked: "Forward from the harvest to whoever was given a bottle",
        });
    }
    let title = match (&of.from, &of.to) {
        (Some(from), Some(to)) => format!("{} – {}", written(from), written(to)),
        _ => "Trace".to_owned(),
    };
    Ok(Start {
        title,
        code: None,
        asked: "Forward from what was picked to whoever was given a bottle",
    })
}

/// The people first, for they are to be told; then each jar with its bottles, back to the harvests.
fn steps(found: &TracedForward) -> Vec<Step> {
    let step = |heading: String, code: &str, at: &str, lines: Vec<String>| Step {
        heading,
        code: Some(code.to_owned()),
        on: day(at),
        lines,
        photo: None,
    };
    let mut steps = Vec::new();
    for person in &found.people {
        let lines = vec![person.name.clone()];
        steps.push(step(
            format!("Given to {}", person.to),
            &person.code,
            &person.at,
            lines,
        ));
    }
    for jar in &found.jars {
        let mut lines = vec![format!("{}.", jar.preparation_name)];
        if jar.failed {
            lines.push("It was set aside.".to_owned());
        }
        let bottles = found.bottles.iter().filter(|bottle| bottle.jar == jar.id);
        lines.extend(bottles.map(bottle));
        steps.push(step(
            format!("Jar: {}", jar.name),
            &jar.code,
            &jar.poured_at,
            lines,
        ));
    }
    for tray in &found.trays {
        steps.push(step(
            format!("Rack: {}", tray.name),
            &tray.code,
            &tray.started_at,
            binned(tray.binned_g)
                .or_else(|| tray.lost_fresh_g.map(lost))
                .into_iter()
                .collect(),
        ));
    }
    for harvest in &found.harvests {
        let heading = format!("{}, {}", harvest.common, harvest.part);
        let mut lines = vec![format!("{} g fresh.", figure(harvest.fresh_mass_g))];
        lines.extend(binned(harvest.binned_g));
        steps.push(step(heading, &harvest.code, &harvest.picked_at, lines));
    }
    steps
}

fn binned(grams: f64) -> Option<String> {
    (grams > 0.0).then(|| format!("{} g thrown away.", figure(grams)))
}

fn lost(fresh_g: f64) -> String {
    format!(
        "{} g, as laid out fresh, thrown away while it was drying.",
        figure(fresh_g)
    )
}

fn bottle(bottle: &TracedBottle) -> String {
    let (code, left) = (&bottle.code, figure(bottle.left_ml));
    match bottle.state {
        BottleState::Finished => format!("Bottle {code}: finished."),
        BottleState::Binned => format!("Bottle {code}: thrown away."),
        BottleState::Given => format!("Bottle {code}: given away."),
        BottleState::ToCheck | BottleState::Open | BottleState::OnTheShelf => match &bottle.place {
            Some(place) => format!("Bottle {code}: {left} mL left, {place}."),
            None => format!("Bottle {code}: {left} mL left."),
        },
    }
}

fn day(moment: &str) -> Option<NaiveDate> {
    let moment = DateTime::parse_from_rfc3339(moment).ok()?;
    Some(moment.date_naive())
}

fn written(day: &str) -> String {
    let parsed = day.parse::<NaiveDate>();
    parsed.map_or_else(
        |_| day.to_owned(),
        |day| day.format("%-d %b %Y").to_string(),
    )
}
