//! `herb.show`: what is published of a herb beside what the maker found.

use formulary::herbs;
use message::{Argument, Message};
use store::OwnBatch;

use super::known::Known;
use super::list::line;
use super::wire::{Fact, HerbPage, LookAlike, OwnRatio, PartWater, ShowHerb};
use crate::wire::{Caution, Moment, Severity, Status};
use crate::{App, Command, Failure};

/// More finished batches of one herb than a page can show.
const MOST_RATIOS: usize = 200;

impl Command for ShowHerb {
    const NAME: &'static str = "herb.show";
    type Reply = HerbPage;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        app.read(|reading| {
            let known = Known::asked(reading, &self.key).map_err(|why| why.renamed("key"))?;
            let last = reading
                .herb_uses()?
                .into_iter()
                .find(|it| it.herb == known.key);
            let batches = reading.own_batches(&known.key, None, MOST_RATIOS)?;
            Ok(HerbPage {
                herb: line(&known, last.map(|it| it.picked_at.to_rfc3339())),
                facts: facts(&known),
                cautions: cautions(&known),
                look_alikes: look_alikes(&known),
                water: water(&known),
                own_ratios: batches.into_iter().map(ratio).collect(),
            })
        })
    }
}

fn facts(known: &Known) -> Vec<Fact> {
    let Some(entry) = known.entry else {
        let note = known.note.clone().map(|value| Fact {
            label: "Note".to_owned(),
            value,
            source: None,
            status: Status::Own,
        });
        return note.into_iter().collect();
    };
    let fact = |fact: herbs::Fact| Fact {
        label: fact.label,
        value: fact.value,
        source: fact.source,
        status: fact.status.into(),
    };
    entry.facts().into_iter().map(fact).collect()
}

fn cautions(known: &Known) -> Vec<Caution> {
    let stop = known.called().map(|called| {
        let stop = called.told();
        let severity = match stop.asks {
            true => Severity::Warn,
            false => Severity::Stop,
        };
        let note = stop.note;
        Caution {
            code: note.code,
            severity,
            herb: None,
            at: vec![Moment::Pick, Moment::Make, Moment::Use],
            text: note.text,
            source: note.source,
            status: note.status.into(),
        }
    });
    // The table says of its own herbs what must not be made of them.
    let stop = stop.filter(|_| known.entry.is_none_or(|entry| entry.limit().is_none()));
    stop.into_iter().chain(looked_up(known)).collect()
}

fn looked_up(known: &Known) -> Vec<Caution> {
    match known.entry {
        Some(entry) => formulary::cautions::of_herb(entry)
            .into_iter()
            .map(Caution::from)
            .collect(),
        None => vec![Caution {
            code: "unknown_herb".to_owned(),
            severity: Severity::Warn,
            herb: None,
            at: vec![Moment::Make],
            text: Message::new("caution-not-looked-up")
                .with("herb", Argument::own(&known.common))
                .into(),
            source: None,
            status: Status::Own,
        }],
    }
}

fn look_alikes(known: &Known) -> Vec<LookAlike> {
    let rows = known.entry.into_iter().flat_map(herbs::Herb::look_alikes);
    let look_alike = |row: &'static herbs::LookAlike| LookAlike {
        name: row.name().into(),
        why: row.why().into(),
        tell_apart: row.tell_apart().into(),
        source: Some(row.source.clone()).filter(|source| !source.is_empty()),
        status: row.status.into(),
    };
    rows.map(look_alike).collect()
}

fn water(known: &Known) -> Vec<PartWater> {
    let rows = match known.entry {
        Some(entry) => herbs::water_table(entry),
        None => known
            .parts
            .iter()
            .map(|part| herbs::water(&known.common, part))
            .collect(),
    };
    let part = |row: herbs::WaterPrior| PartWater {
        part: row.part,
        water_wet_percent: row.water_wet_percent.into(),
        ratio_fresh_per_dry: row.ratio_fresh_per_dry.into(),
        source: row.source.unwrap_or(row.reason),
        status: row.status.into(),
    };
    rows.into_iter().map(part).collect()
}

fn ratio(batch: OwnBatch) -> OwnRatio {
    let (fresh, dry) = (batch.tray.fresh_mass_g, batch.dried_mass_g);
    OwnRatio {
        harvest: batch.harvest_id.to_string(),
        picked_at: batch.harvest.picked_at.to_rfc3339(),
        bed: batch.bed.map(|bed| bed.name),
        part: batch.harvest.part,
        fresh_mass_g: fresh,
        dry_mass_g: dry,
        ratio_fresh_per_dry: fresh / dry,
    }
}
