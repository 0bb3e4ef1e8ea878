//! What a class needs of its herbs: what the lots hold, and what is still to be picked, from which beds.

use formulary::{Note, plan};
use journal::PlantState;
use message::{Failure, Message};
use physics::Interval;
use serde::Serialize;
use store::{HarvestFilter, LotFilter, Reading};

use crate::herb::Known;
use crate::jar::proposal::PlantLine;
use crate::told;

/// More lots of one plant, or more of its harvests, than any garden has.
const MOST_ROWS: usize = 1000;
/// Less than a scale shows.
const A_CRUMB_G: f64 = 0.05;

/// What is taken of a lot.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ClassLot {
    pub code: String,
    pub bed: Option<String>,
    pub take_g: f64,
    pub left_g: f64,
}

/// A herb for all jars of a class.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ClassHerb {
    pub common: Message,
    pub part: String,
    pub state: PlantState,
    pub each_g: f64,
    pub needed_g: f64,
    /// The lots there are, the oldest first, until there is enough.
    pub take: Vec<ClassLot>,
    pub lacking_g: f64,
    /// What to pick for that which is lacking; none where nothing is.
    pub pick_fresh_g: Option<Interval>,
    /// Where it was picked before, the latest first.
    pub beds: Vec<String>,
    pub notes: Vec<Note>,
}

/// A herb of one jar, for `people` jars.
pub fn herb(
    reading: &Reading<'_>,
    known: &Known,
    line: &PlantLine,
    people: u32,
) -> Result<ClassHerb, Failure> {
    let needed_g = line.mass_g * f64::from(people);
    let filter = LotFilter {
        herb: Some(known.key.clone()),
        state: Some(line.state),
        after: None,
        limit: MOST_ROWS,
    };
    let mut lots = reading.lots(&filter)?.rows;
    lots.retain(|lot| lot.harvest.part == line.part && lot.left_g > A_CRUMB_G);
    lots.sort_by_key(|lot| lot.harvest.picked_at);
    let (mut take, mut lacking_g) = (Vec::new(), needed_g);
    for lot in lots {
        if lacking_g <= A_CRUMB_G {
            break;
        }
        let take_g = lot.left_g.min(lacking_g);
        lacking_g -= take_g;
        let code = lot
            .tray
            .as_ref()
            .map_or(&lot.harvest.code, |tray| &tray.code);
        take.push(ClassLot {
            code: code.to_string(),
            bed: lot.bed.map(|bed| bed.name),
            take_g,
            left_g: lot.left_g,
        });
    }
    let is_short = lacking_g > A_CRUMB_G;
    let (pick_fresh_g, notes) = match is_short {
        true => {
            let water = known.water(&line.part);
            let lacking = Interval::exact(lacking_g);
            let (pick, notes) = plan::to_pick(&water, line.state, lacking);
            (Some(pick), notes)
        }
        false => (None, Vec::new()),
    };
    Ok(ClassHerb {
        common: told::title(known),
        part: line.part.clone(),
        state: line.state,
        each_g: line.mass_g,
        needed_g,
        take,
        lacking_g: if is_short { lacking_g } else { 0.0 },
        pick_fresh_g,
        beds: beds(reading, known, &line.part)?,
        notes,
    })
}

/// The beds in which a part was picked, each once, the latest first.
fn beds(reading: &Reading<'_>, known: &Known, part: &str) -> Result<Vec<String>, Failure> {
    let filter = HarvestFilter {
        before: None,
        limit: MOST_ROWS,
        herb: Some(known.key.clone()),
        bed: None,
    };
    let mut beds: Vec<String> = Vec::new();
    for row in reading.harvests(&filter)?.rows {
        let bed = row.bed.filter(|_| row.harvest.part == part);
        if let Some((_, bed)) = bed.filter(|(_, bed)| !beds.contains(&bed.name)) {
            beds.push(bed.name);
        }
    }
    Ok(beds)
}
