//! `herb.add` and `herb.correct`: herbs that the book does not have.

use formulary::poison::Called;
use journal::{Herb, HerbId, HerbKey};
use message::{Argument, Failure, say};
use physics::Interval;
use reckon::asked;
use reckon::herb::Known;
use serde::{Deserialize, Serialize};

use crate::changed::Changed;
use crate::herb::list::{HerbLine, line};
use crate::open::Open;
use crate::request::Command;

/// A herb that the book does not have.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct AddHerb {
    pub common: String,
    pub latin: Option<String>,
    pub parts: Vec<String>,
    pub note: Option<String>,
    /// Water in the fresh plant, % of its weight: the usual figure, the least and the most.
    pub water_wet_percent: Option<Interval>,
    /// The strength that it wants.
    pub strength_percent_vol: Option<f64>,
    /// What to beware of.
    pub caution: Option<String>,
    /// What it is mistaken for, and how to tell.
    pub look_alikes: Option<String>,
}

/// A change to a herb of the maker's own; what is left out stays, and a figure of 0 takes it back.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct CorrectHerb {
    pub key: String,
    pub common: Option<String>,
    pub latin: Option<String>,
    pub parts: Option<Vec<String>>,
    pub note: Option<String>,
    /// Water in the fresh plant, % of its weight: the usual figure, the least and the most.
    pub water_wet_percent: Option<Interval>,
    /// The strength that it wants.
    pub strength_percent_vol: Option<f64>,
    /// What to beware of.
    pub caution: Option<String>,
    /// What it is mistaken for, and how to tell.
    pub look_alikes: Option<String>,
}

/// A herb was written.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct HerbWritten {
    #[serde(flatten)]
    pub done: Changed,
    pub herb: HerbLine,
}

impl Command for AddHerb {
    const NAME: &'static str = "herb.add";
    type Reply = HerbWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let herb = Herb {
            common: self.common.trim().to_owned(),
            latin: asked::text(self.latin),
            parts: trimmed(self.parts),
            note: asked::text(self.note),
            water_wet_percent: self.water_wet_percent,
            strength_percent_vol: self.strength_percent_vol,
            caution: asked::text(self.caution),
            look_alikes: asked::text(self.look_alikes),
        };
        let id = HerbId(app.new_id());
        let (done, herb) = app.perform(|writing| {
            refuse_a_second(&herb.common, None, &writing.herbs()?)?;
            writing.record(&id, &herb)?;
            Ok((
                say!("deed-herb-added", name = Argument::own(&herb.common)),
                herb,
            ))
        })?;
        Ok(HerbWritten {
            done,
            herb: line(&Known::of_maker(id.into(), herb), None),
        })
    }
}

impl Command for CorrectHerb {
    const NAME: &'static str = "herb.correct";
    type Reply = HerbWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let own = self
            .key
            .parse::<HerbKey>()
            .ok()
            .and_then(|key| key.as_own());
        let Some(id) = own else {
            return Err(Failure::not_found("key", say!("herb-not-own")));
        };
        let (done, herb) = app.correct::<Herb>("key", &id, |writing, herb| {
            let was = Known::of_maker(id.into(), herb.clone()).called();
            if let Some(common) = self.common {
                herb.common = common.trim().to_owned();
                refuse_a_second(&herb.common, Some(id), &writing.herbs()?)?;
            }
            asked::corrected(&mut herb.latin, self.latin);
            asked::corrected(&mut herb.note, self.note);
            asked::corrected(&mut herb.caution, self.caution);
            asked::corrected(&mut herb.look_alikes, self.look_alikes);
            let water = self.water_wet_percent.or(herb.water_wet_percent);
            herb.water_wet_percent = water.filter(|water| water.value != 0.0);
            let strength = self.strength_percent_vol.or(herb.strength_percent_vol);
            herb.strength_percent_vol = strength.filter(|strength| *strength != 0.0);
            asked::set(&mut herb.parts, self.parts.map(trimmed));
            refuse_another_plant(was, &Known::of_maker(id.into(), herb.clone()))?;
            Ok(say!("deed-herb-edited", name = Argument::own(&herb.common)))
        })?;
        Ok(HerbWritten {
            done,
            herb: line(&Known::of_maker(id.into(), herb), None),
        })
    }
}

fn trimmed(parts: Vec<String>) -> Vec<String> {
    let mut parts: Vec<String> = parts
        .iter()
        .map(|part| part.trim().to_lowercase())
        .collect();
    parts.retain(|part| !part.is_empty());
    parts.dedup();
    parts
}

/// A plant of the list of poisonous ones stays what it is, whatever it is called.
fn refuse_another_plant(was: Option<Called>, is: &Known) -> Result<(), Failure> {
    let Some(was) = was.filter(|was| was.which.is_none()) else {
        return Ok(());
    };
    if is.called().is_some_and(|called| called.plant == was.plant) {
        return Ok(());
    }
    let message = say!("poison-renamed", plant = was.name());
    Err(Failure::invalid("common", message))
}

/// Two herbs of one name could not be told apart in a list.
fn refuse_a_second(
    common: &str,
    this: Option<HerbId>,
    own: &[(HerbId, Herb)],
) -> Result<(), Failure> {
    let same = |name: &str| name.to_lowercase() == common.to_lowercase();
    let in_book = formulary::herbs::find(common).is_some_and(|entry| same(&entry.common));
    let is_own = own
        .iter()
        .any(|(id, herb)| Some(*id) != this && same(&herb.common));
    if in_book || is_own {
        return Err(Failure::invalid(
            "common",
            say!("herb-called-so", name = Argument::own(common)),
        ));
    }
    Ok(())
}
