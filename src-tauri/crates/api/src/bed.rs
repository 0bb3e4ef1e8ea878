//! Where things grow: `bed.*`.

use journal::{BedId, Pictured};
use message::{Argument, Failure, say};
use reckon::asked;
use serde::{Deserialize, Serialize};
use store::Reading;

use crate::changed::Changed;
use crate::open::Open;
use crate::portrait::{self, PortraitLine};
use crate::request::{Command, bare_request};

bare_request!(
    /// Every bed.
    ListBeds
);

/// A bed of the garden, or a wild place.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Bed {
    pub id: String,
    pub name: String,
    pub wild: bool,
    pub area_m2: Option<f64>,
    pub note: Option<String>,
}

/// The answer to [`ListBeds`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Beds {
    pub beds: Vec<Bed>,
}

/// One bed.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ShowBed {
    pub id: String,
}

/// The answer to [`ShowBed`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct BedShown {
    pub bed: Bed,
    /// How it looked, the earliest first.
    pub portraits: Vec<PortraitLine>,
}

/// A new bed.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct AddBed {
    pub name: String,
    pub wild: Option<bool>,
    pub area_m2: Option<f64>,
    pub note: Option<String>,
}

/// A change to a bed; what is left out stays.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct CorrectBed {
    pub id: String,
    pub name: Option<String>,
    pub wild: Option<bool>,
    pub area_m2: Option<f64>,
    pub note: Option<String>,
}

/// A bed was written.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct BedWritten {
    #[serde(flatten)]
    pub done: Changed,
    pub bed: Bed,
}

impl Bed {
    pub(crate) fn of(id: journal::BedId, bed: journal::Bed) -> Self {
        Self {
            id: id.to_string(),
            name: bed.name,
            wild: bed.wild,
            area_m2: bed.area_m2,
            note: bed.note,
        }
    }
}

impl Command for ListBeds {
    const NAME: &'static str = "bed.list";
    type Reply = Beds;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let beds = app.read(|reading| Ok(reading.beds()?))?;
        Ok(Beds {
            beds: beds.into_iter().map(|(id, bed)| Bed::of(id, bed)).collect(),
        })
    }
}

impl Command for ShowBed {
    const NAME: &'static str = "bed.show";
    type Reply = BedShown;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let id: BedId = asked::id("id", &self.id)?;
        app.read(|reading| {
            Ok(BedShown {
                bed: Bed::of(id, reading.get(&id)?),
                portraits: portrait::lines(reading, Pictured::Bed(id))?,
            })
        })
    }
}

impl Command for AddBed {
    const NAME: &'static str = "bed.add";
    type Reply = BedWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let bed = journal::Bed {
            name: self.name.trim().to_owned(),
            wild: self.wild.unwrap_or(false),
            area_m2: self.area_m2,
            note: asked::text(self.note),
        };
        let id = BedId(app.new_id());
        let (done, bed) = app.perform(|writing| {
            refuse_a_second(writing, &bed.name, None)?;
            writing.record(&id, &bed)?;
            Ok((say!("deed-bed-added", name = Argument::own(&bed.name)), bed))
        })?;
        Ok(BedWritten {
            done,
            bed: Bed::of(id, bed),
        })
    }
}

impl Command for CorrectBed {
    const NAME: &'static str = "bed.correct";
    type Reply = BedWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let id: BedId = asked::id("id", &self.id)?;
        let (done, bed) = app.correct::<journal::Bed>("id", &id, |writing, bed| {
            if let Some(name) = self.name {
                asked::renamed(&mut bed.name, Some(name));
                refuse_a_second(writing, &bed.name, Some(id))?;
            }
            asked::set(&mut bed.wild, self.wild);
            asked::set(&mut bed.area_m2, self.area_m2.map(Some));
            asked::corrected(&mut bed.note, self.note);
            Ok(say!("deed-bed-edited", name = Argument::own(&bed.name)))
        })?;
        Ok(BedWritten {
            done,
            bed: Bed::of(id, bed),
        })
    }
}

/// Two beds of one name could not be told apart in a list.
fn refuse_a_second(reading: &Reading<'_>, name: &str, this: Option<BedId>) -> Result<(), Failure> {
    match reading.bed_named(name)? {
        Some((id, bed)) if Some(id) != this => Err(Failure::invalid(
            "name",
            say!("bed-called-so", name = Argument::own(bed.name)),
        )),
        _ => Ok(()),
    }
}
