//! `bottle.fill`: never more than came out of the jar.

use journal::{Bottle, BottleId, Jar, JarId, Source};
use message::{Argument, Code, Failure, Unit, say};
use reckon::asked;
use reckon::bottle::card::{BottleCard, cards_of};
use reckon::jar::allowed::refuse_failed;
use reckon::jar::judged::Judged;
use serde::{Deserialize, Serialize};
use store::Writing;

use crate::changed::Changed;
use crate::open::Open;
use crate::request::Command;

/// So many bottles of one size.
#[derive(Debug, Clone, Copy, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct BottleSize {
    pub ml: f64,
    pub count: u32,
}

/// Bottles were filled from a strained jar.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct FillBottles {
    pub jar: String,
    pub bottles: Vec<BottleSize>,
    pub place: Option<String>,
    pub filled_at: Option<String>,
    pub note: Option<String>,
    /// How warm an oil stands, for the date by which it is used up.
    pub stored_at_c: Option<f64>,
}

/// Bottles were filled.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct BottlesFilled {
    #[serde(flatten)]
    pub done: Changed,
    pub bottles: Vec<BottleCard>,
    pub rest_ml: f64,
}

/// More than anybody fills in one go.
const MOST: u32 = 500;

impl Command for FillBottles {
    const NAME: &'static str = "bottle.fill";
    type Reply = BottlesFilled;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let jar_id: JarId = asked::id("jar", &self.jar)?;
        let filled_at = asked::past("filled_at", self.filled_at.as_deref(), app.now())?;
        let sizes = sizes(&self.bottles)?;
        let (place, note) = (asked::text(self.place), asked::text(self.note));
        let ids: Vec<BottleId> = sizes.iter().map(|_| BottleId(app.new_id())).collect();
        let (done, jar) = app.perform(|writing| {
            let row = writing
                .jar(&jar_id)
                .map_err(|why| Failure::from(why).renamed("jar"))?;
            let jar = row.jar;
            refuse_failed(&jar)?;
            let strainings = writing.strainings(&jar_id)?;
            let Some((_, first)) = strainings.first() else {
                let message = say!("jar-strain-first", name = Argument::own(jar.name));
                return Err(Failure::invalid("jar", message));
            };
            refuse_more_than_came_out(writing, &jar_id, &sizes)?;
            let judged = Judged::with_ph(writing, &jar, writing.ph_of(&jar_id)?.as_ref())?;
            let strained_on = first.at.date_naive();
            let dates = judged.dates_at(writing, &jar, strained_on, self.stored_at_c)?;
            if let Some(last) = dates.best_before
                && judged.only_the_date_counts
                && filled_at.date_naive() > last
            {
                let message = say!("oil-not-bottled-after", day = last);
                return Err(Failure::invalid("jar", message));
            }
            for (id, size_ml) in ids.iter().zip(&sizes) {
                let bottle = Bottle {
                    code: writing.free_code(id.0)?,
                    jar: jar_id,
                    filled_at,
                    size_ml: *size_ml,
                    best_before: dates.best_before,
                    check_on: dates.check_on,
                    only_the_date_counts: judged.only_the_date_counts,
                    place: place.clone(),
                    note: note.clone(),
                    end: None,
                };
                writing.record(id, &bottle)?;
            }
            let name = Argument::own(&jar.name);
            let line = say!(
                "deed-bottles-filled",
                count = sizes.len(),
                name,
                code = &jar.code
            );
            Ok((line, jar))
        })?;
        app.read_back(|reading| {
            let filled: Vec<String> = ids.iter().map(ToString::to_string).collect();
            let mut bottles = cards_of(reading, &jar_id, &jar, app.now())?;
            bottles.retain(|card| filled.contains(&card.id));
            // As they were asked for: the shelf sorts by state and code.
            bottles.sort_by_key(|card| filled.iter().position(|id| *id == card.id));
            Ok(BottlesFilled {
                done,
                bottles,
                rest_ml: reading.left(Source::Jar(jar_id))?.get().max(0.0),
            })
        })
    }
}

fn sizes(asked: &[BottleSize]) -> Result<Vec<f64>, Failure> {
    let mut sizes = Vec::new();
    for (at, size) in asked.iter().enumerate() {
        let field = |name: &str| format!("bottles[{at}].{name}");
        if !size.ml.is_finite() || !(1.0..=10_000.0).contains(&size.ml) {
            let given = Argument::exact(size.ml, Unit::None);
            let message = say!("bottle-size-range", given);
            return Err(Failure::invalid(&field("ml"), message));
        }
        if !(1..=MOST).contains(&size.count) {
            let message = say!("bottle-count-range", most = MOST, given = size.count);
            return Err(Failure::invalid(&field("count"), message));
        }
        sizes.extend(std::iter::repeat_n(size.ml, size.count as usize));
    }
    if sizes.is_empty() || sizes.len() > MOST as usize {
        let message = say!("bottles-at-a-time", most = MOST);
        return Err(Failure::invalid("bottles", message));
    }
    Ok(sizes)
}

/// The ledger refuses this too, but cannot say how many bottles were asked for.
fn refuse_more_than_came_out(
    writing: &Writing<'_>,
    jar: &JarId,
    sizes: &[f64],
) -> Result<(), Failure> {
    let came_out: f64 = writing
        .strainings(jar)?
        .iter()
        .map(|(_, it)| it.came_out_ml)
        .sum();
    let left = writing.left(Source::Jar(*jar))?.get();
    let allowance = Source::Jar(*jar)
        .allowance(journal::Amount::of(came_out))
        .get();
    let asked: f64 = sizes.iter().sum();
    if asked > left + allowance + 1e-9 {
        let jar: Jar = writing.get(jar)?;
        let message = say!(
            "bottles-more-than-came-out",
            wanted = Argument::tenths(asked, Unit::Millilitre),
            left = Argument::tenths(left.max(0.0), Unit::Millilitre),
            name = Argument::own(jar.name)
        );
        let field = Some("bottles".to_owned());
        return Err(Failure {
            field,
            ..Failure::new(Code::NotEnough, message)
        });
    }
    Ok(())
}
