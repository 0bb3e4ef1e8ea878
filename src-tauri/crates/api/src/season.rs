//! `season.show`: what a year gave, what was made of it and what is left.

pub(crate) mod printed;

use message::Failure;
use reckon::season::Season;
use serde::Deserialize;

use crate::open::Open;
use crate::request::Command;

/// One year of the garden.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ShowSeason {
    pub year: i32,
}

impl Command for ShowSeason {
    const NAME: &'static str = "season.show";
    type Reply = Season;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let offset = *app.now().offset();
        app.read(|reading| Season::of(reading, self.year, offset))
    }
}
