//! `bottle.ways`: what to do with what is in a bottle, and what to beware of.

use formulary::serving::Way;
use journal::{BottleId, Jar};
use message::Failure;
use reckon::asked;
use reckon::jar::judged::Judged;
use reckon::serving;
use serde::{Deserialize, Serialize};

use crate::open::Open;
use crate::request::Command;

/// The ways to use a bottle.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ListWays {
    pub bottle: String,
}

/// The answer to [`ListWays`]; none where it is not to be swallowed or nothing is known.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Ways {
    pub ways: Vec<Way>,
}

impl Command for ListWays {
    const NAME: &'static str = "bottle.ways";
    type Reply = Ways;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let id: BottleId = asked::id("bottle", &self.bottle)?;
        app.read(|reading| {
            let row = reading
                .bottle(&id)
                .map_err(|why| Failure::from(why).renamed("bottle"))?;
            let jar = reading.get::<Jar>(&row.bottle.jar)?;
            let judged = Judged::with_ph(reading, &jar, row.ph.as_ref())?;
            Ok(Ways {
                ways: serving::ways(&judged),
            })
        })
    }
}
