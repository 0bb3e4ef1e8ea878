//! `dropper.count` and `dropper.list`: how many drops of the maker's own dropper make a millilitre.

use formulary::arithmetic;
use journal::DropperId;
use message::{Argument, At, Failure, say};
use physics::Interval;
use reckon::asked;
use serde::{Deserialize, Serialize};

use crate::changed::Changed;
use crate::open::Open;
use crate::request::{Command, bare_request};

/// A dropper was counted.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct CountDropper {
    pub name: String,
    /// Three counts or more, each of the drops in one millilitre.
    pub drops_in_1_ml: Vec<f64>,
    /// What it holds when it is filled once.
    pub holds_ml: Option<f64>,
    /// What it was counted with.
    pub liquid: Option<String>,
}

bare_request!(
    /// The droppers that were counted.
    ListDroppers
);

/// A dropper: the middle of its counts, and how far apart they were.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct DropperLine {
    pub id: String,
    pub name: String,
    pub liquid: Option<String>,
    pub drops_in_1_ml: Vec<f64>,
    pub drops_per_ml: Interval,
    pub holds_ml: Option<f64>,
}

/// The answer to [`ListDroppers`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Droppers {
    pub droppers: Vec<DropperLine>,
}

/// A dropper was written.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct DropperWritten {
    #[serde(flatten)]
    pub done: Changed,
    pub dropper: DropperLine,
}

impl DropperLine {
    fn of(id: &DropperId, dropper: journal::Dropper) -> Result<Self, Failure> {
        Ok(Self {
            id: id.to_string(),
            drops_per_ml: arithmetic::drops_per_ml(&dropper.drops_in_1_ml).at("drops_in_1_ml")?,
            name: dropper.name,
            liquid: dropper.liquid,
            drops_in_1_ml: dropper.drops_in_1_ml,
            holds_ml: dropper.holds_ml,
        })
    }
}

impl Command for CountDropper {
    const NAME: &'static str = "dropper.count";
    type Reply = DropperWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let id = DropperId(app.new_id());
        let dropper = journal::Dropper {
            name: self.name.trim().to_owned(),
            drops_in_1_ml: self.drops_in_1_ml,
            holds_ml: self.holds_ml,
            liquid: asked::text(self.liquid),
        };
        let (done, line) = app.perform(|writing| {
            writing.record(&id, &dropper)?;
            let line = say!("deed-dropper-counted", name = Argument::own(&dropper.name));
            Ok((line, DropperLine::of(&id, dropper)?))
        })?;
        Ok(DropperWritten {
            done,
            dropper: line,
        })
    }
}

impl Command for ListDroppers {
    const NAME: &'static str = "dropper.list";
    type Reply = Droppers;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let droppers = app.read(|reading| Ok(reading.droppers()?))?;
        let lines: Result<Vec<_>, Failure> = droppers
            .into_iter()
            .map(|(id, dropper)| DropperLine::of(&id, dropper))
            .collect();
        Ok(Droppers { droppers: lines? })
    }
}
