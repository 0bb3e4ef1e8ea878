//! `herb.show`: what is published of a herb beside what the maker found.

use formulary::cautions::{Caution, Moment, Severity};
use formulary::herbs::{self, Fact};
use formulary::{Status, source_of};
use journal::Pictured;
use message::{Argument, Failure, Message, say};
use physics::Interval;
use reckon::herb::Known;
use serde::{Deserialize, Serialize};
use store::OwnBatch;

use crate::herb::list::{HerbLine, line};
use crate::open::Open;
use crate::portrait::{self, PortraitLine};
use crate::request::Command;

/// One herb with what is published and what the maker found.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ShowHerb {
    pub key: String,
}

/// A poisonous plant that is taken for the herb.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct LookAlike {
    pub name: Message,
    pub why: Message,
    /// None where the maker's own note tells both.
    pub tell_apart: Option<Message>,
    pub source: Option<String>,
    pub status: Status,
}

/// The published water content of one part.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct PartWater {
    pub part: String,
    pub water_wet_percent: Interval,
    pub ratio_fresh_per_dry: Interval,
    pub source: String,
    pub status: Status,
}

/// A fresh to dry ratio of one finished tray.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct OwnRatio {
    pub harvest: String,
    pub picked_at: String,
    pub bed: Option<String>,
    pub part: String,
    pub fresh_mass_g: f64,
    pub dry_mass_g: f64,
    pub ratio_fresh_per_dry: f64,
}

/// The answer to [`ShowHerb`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct HerbPage {
    pub herb: HerbLine,
    pub facts: Vec<Fact>,
    pub cautions: Vec<Caution>,
    pub look_alikes: Vec<LookAlike>,
    pub water: Vec<PartWater>,
    pub own_ratios: Vec<OwnRatio>,
    /// How a herb of the maker's own looks; none of a herb of the tables.
    pub portraits: Vec<PortraitLine>,
}

/// More finished batches of one herb than a page can show.
const MOST_RATIOS: usize = 200;

impl Command for ShowHerb {
    const NAME: &'static str = "herb.show";
    type Reply = HerbPage;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
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
                portraits: match known.key.as_own() {
                    Some(id) => portrait::lines(reading, Pictured::Herb(id))?,
                    None => Vec::new(),
                },
            })
        })
    }
}

fn facts(known: &Known) -> Vec<Fact> {
    let Some(entry) = known.entry else {
        let own = |label, value| Fact {
            label,
            value,
            source: None,
            status: Status::Own,
        };
        let strength = known.own.strength_percent_vol.map(|percent| {
            let strength = Argument::strength(percent);
            own(say!("fact-strength-in-jar"), say!("strength-of", strength))
        });
        let note = known.note.clone();
        let note = note.map(|note| own(say!("fact-note"), Message::own(note)));
        return strength.into_iter().chain(note).collect();
    };
    entry.facts()
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
            status: note.status,
        }
    });
    // The table says of its own herbs what must not be made of them.
    let stop = stop.filter(|_| known.entry.is_none_or(|entry| entry.limit().is_none()));
    stop.into_iter().chain(looked_up(known)).collect()
}

fn looked_up(known: &Known) -> Vec<Caution> {
    match known.entry {
        Some(entry) => formulary::cautions::of_herb(entry),
        None => {
            let not_looked_up = Caution {
                code: "unknown_herb".to_owned(),
                severity: Severity::Warn,
                herb: None,
                at: vec![Moment::Make],
                text: say!("caution-not-looked-up", herb = Argument::own(&known.common)),
                source: None,
                status: Status::Own,
            };
            let own = known.own.caution();
            own.into_iter().chain([not_looked_up]).collect()
        }
    }
}

fn look_alikes(known: &Known) -> Vec<LookAlike> {
    let rows = known.entry.into_iter().flat_map(herbs::Herb::look_alikes);
    let look_alike = |row: &'static herbs::LookAlike| LookAlike {
        name: row.name(),
        why: row.why(),
        tell_apart: Some(row.tell_apart()),
        source: source_of(&row.source),
        status: row.status,
    };
    let own = known.own.look_alikes.as_deref().map(|note| LookAlike {
        name: say!("look-alikes-of-own-herb"),
        why: Message::own(note),
        tell_apart: None,
        source: None,
        status: Status::Own,
    });
    rows.map(look_alike).chain(own).collect()
}

fn water(known: &Known) -> Vec<PartWater> {
    let rows = match known.entry {
        Some(entry) => herbs::water_table(entry),
        None => known.parts.iter().map(|part| known.water(part)).collect(),
    };
    let part = |row: herbs::WaterPrior| PartWater {
        part: row.part,
        water_wet_percent: row.water_wet_percent,
        ratio_fresh_per_dry: row.ratio_fresh_per_dry,
        source: row.source.unwrap_or_else(|| row.reason.into()),
        status: row.status,
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
