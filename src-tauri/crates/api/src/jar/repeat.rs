//! `jar.repeat`: a jar once more with this year's plants.

use journal::{Jar, JarId};
use message::Failure;
use reckon::asked;
use reckon::jar::again::{aims, composed};
use reckon::jar::proposal::{Composition, Plant};
use serde::Deserialize;

use crate::open::Open;
use crate::request::Command;

/// A jar once more with this year's plants.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct RepeatJar {
    pub jar: String,
    pub plants: Option<Vec<Plant>>,
}

impl Command for RepeatJar {
    const NAME: &'static str = "jar.repeat";
    type Reply = Composition;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let id: JarId = asked::id("jar", &self.jar)?;
        app.read(|reading| {
            let jar = reading
                .get::<Jar>(&id)
                .map_err(|why| Failure::from(why).renamed("jar"))?;
            let recipe = aims(reading, &jar)?;
            composed(reading, recipe, self.plants)
        })
    }
}
