//! Where things grow: `bed.*`.

use journal::BedId;
use serde::{Deserialize, Serialize};
use store::Reading;

use crate::wire::{Changed, bare_request};
use crate::{App, Command, Failure, asked};

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

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let beds = app.read(|reading| Ok(reading.beds()?))?;
        Ok(Beds {
            beds: beds.into_iter().map(|(id, bed)| Bed::of(id, bed)).collect(),
        })
    }
}

impl Command for AddBed {
    const NAME: &'static str = "bed.add";
    type Reply = BedWritten;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
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
            Ok((format!("Added the bed {}", bed.name), bed))
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

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let id: BedId = asked::id("id", &self.id)?;
        let (done, bed) = app.perform(|writing| {
            let mut bed = writing.get::<journal::Bed>(&id)?;
            if let Some(name) = self.name {
                bed.name = name.trim().to_owned();
                refuse_a_second(writing, &bed.name, Some(id))?;
            }
            bed.wild = self.wild.unwrap_or(bed.wild);
            bed.area_m2 = self.area_m2.or(bed.area_m2);
            asked::corrected(&mut bed.note, self.note);
            writing.correct(&id, &bed)?;
            Ok((format!("Corrected the bed {}", bed.name), bed))
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
            format!("There is a bed called {} already.", bed.name),
        )),
        _ => Ok(()),
    }
}
