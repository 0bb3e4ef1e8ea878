//! `trace.sheet_forward`: what became of a bed, a harvest, a supply, a jar or some days, on paper.

use ::paper::Paper;
use ::paper::chain::{self, Chain, Step};
use journal::{Bed, BedId, BottleState, Supply, SupplyId};
use message::{Argument, Failure, Message, say};
use reckon::trace::forward::{TracedBottle, TracedForward, TracedHarvest};
use reckon::{asked, told};
use serde::Deserialize;
use store::Reading;

use crate::open::Open;
use crate::printed::{PrintedFile, day};
use crate::request::Command;
use crate::speech;
use crate::trace::TraceForward;

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
    title: Message,
    code: Option<String>,
    asked: Message,
}

impl Command for PrintForward {
    const NAME: &'static str = "trace.sheet_forward";
    type Reply = PrintedFile;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let found = self.of.clone().run(app)?;
        let start = app.read(|reading| start(&self.of, reading, &found))?;
        let today = app.now().date_naive();
        let name = match &start.code {
            Some(code) => format!("trace-{code}.pdf"),
            None => format!("trace-{today}.pdf"),
        };
        let mut notes = Vec::new();
        if found.people.is_empty() {
            notes.push(say!("chain-none-given"));
        }
        let chain = Chain {
            language: speech::language(),
            title: start.title,
            lot: start.code,
            asked: start.asked,
            printed_on: today,
            steps: steps(&found),
            notes,
        };
        let drawn = chain::pdf(&chain, self.paper, &mut |_| None);
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
            say!("chain-wild-place")
        } else {
            Message::own(&bed.name)
        };
        let asked = say!("chain-forward-from-bed");
        return Ok(Start {
            title,
            code: None,
            asked,
        });
    }
    if let Some(id) = &of.supply {
        let id: SupplyId = asked::id("supply", id)?;
        let title = Message::own(&reading.get::<Supply>(&id)?.name);
        let asked = say!("chain-forward-from-supply");
        return Ok(Start {
            title,
            code: None,
            asked,
        });
    }
    if let (Some(id), Some(jar)) = (&of.jar, found.jars.first()) {
        let named = found.jars.iter().find(|one| one.id == *id).unwrap_or(jar);
        return Ok(Start {
            title: Message::own(&named.name),
            code: Some(named.code.clone()),
            asked: say!("chain-forward-from-jar"),
        });
    }
    if let (Some(_), Some(one)) = (&of.harvest, found.harvests.first()) {
        return Ok(Start {
            title: harvest(one),
            code: Some(one.code.clone()),
            asked: say!("chain-forward-from-harvest"),
        });
    }
    let title = match (&of.from, &of.to) {
        (Some(from), Some(to)) => say!(
            "chain-days",
            from = Argument::day(asked::date("from", from)?),
            to = Argument::day(asked::date("to", to)?)
        ),
        _ => say!("chain-forward-from-days"),
    };
    Ok(Start {
        title,
        code: None,
        asked: say!("chain-forward-from-days"),
    })
}

/// The people first, for they are to be told; then each jar with its bottles, back to the harvests.
fn steps(found: &TracedForward) -> Vec<Step> {
    let step = |heading: Message, code: &str, at: &str, lines: Vec<Message>| Step {
        heading,
        code: Some(code.to_owned()),
        on: day(at),
        lines,
        photo: None,
    };
    let mut steps = Vec::new();
    for person in &found.people {
        let heading = say!("chain-given-to", to = Argument::own(person.to.as_str()));
        let lines = vec![Message::own(&person.name)];
        steps.push(step(heading, &person.code, &person.at, lines));
    }
    for jar in &found.jars {
        let preparation = jar.preparation_name.clone();
        let mut lines = vec![say!("chain-preparation", preparation)];
        if jar.failed {
            lines.push(say!("chain-failed"));
        }
        let bottles = found.bottles.iter().filter(|bottle| bottle.jar == jar.id);
        lines.extend(bottles.map(bottle));
        let heading = say!("chain-jar", name = Argument::own(jar.name.as_str()));
        steps.push(step(heading, &jar.code, &jar.poured_at, lines));
    }
    for tray in &found.trays {
        let lines = binned(tray.binned_g).or_else(|| tray.lost_fresh_g.map(lost));
        let heading = say!("chain-rack", name = Argument::own(tray.name.as_str()));
        steps.push(step(
            heading,
            &tray.code,
            &tray.started_at,
            lines.into_iter().collect(),
        ));
    }
    for one in &found.harvests {
        let fresh = Argument::grams(one.fresh_mass_g);
        let mut lines = vec![say!("chain-fresh", mass = fresh)];
        lines.extend(binned(one.binned_g));
        steps.push(step(harvest(one), &one.code, &one.picked_at, lines));
    }
    steps
}

fn harvest(one: &TracedHarvest) -> Message {
    say!(
        "chain-harvest",
        herb = told::herb_of(&one.herb, &one.common),
        part = told::part(&one.part)
    )
}

fn binned(mass_g: f64) -> Option<Message> {
    (mass_g > 0.0).then(|| say!("chain-thrown-away", mass = Argument::grams(mass_g)))
}

fn lost(fresh_g: f64) -> Message {
    say!("chain-lost", mass = Argument::grams(fresh_g))
}

fn bottle(bottle: &TracedBottle) -> Message {
    let code = Argument::own(bottle.code.as_str());
    let left = Argument::millilitres(bottle.left_ml);
    match (bottle.state, &bottle.place) {
        (BottleState::Finished, _) => say!("chain-bottle-finished", code),
        (BottleState::Binned, _) => say!("chain-bottle-thrown-away", code),
        (BottleState::Given, _) => say!("chain-bottle-given", code),
        (_, Some(place)) => say!(
            "chain-bottle-left-at",
            code,
            ml = left,
            place = Argument::own(place.as_str())
        ),
        (_, None) => say!("chain-bottle-left", code, ml = left),
    }
}
