//! `lot.find`: what bears this code.

use journal::{LotCode, Noun as Kept};
use serde::{Deserialize, Serialize};

use crate::wire::Noun;
use crate::{App, Command, Failure, asked};

/// What bears the code that was typed, scanned or opened: a code, or a link as labels carry it.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct FindLot {
    pub text: String,
}

/// The answer to [`FindLot`]: a harvest, a tray, a jar or a bottle.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct LotFound {
    pub noun: Noun,
    pub id: String,
    pub code: String,
}

impl Command for FindLot {
    const NAME: &'static str = "lot.find";
    type Reply = LotFound;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let Some(lot) = ::label::link::lot_in(&self.text) else {
            let message = "A lot code is a word and a number, such as tavo-472.";
            return Err(Failure::invalid("text", message));
        };
        let code: LotCode = asked::id("text", &lot)?;
        let missing = || {
            let message = format!("Nothing in this journal bears the code {code}.");
            Failure::not_found("text", message)
        };
        let (noun, id) = app
            .read(|reading| Ok(reading.coded(&code)?))?
            .ok_or_else(missing)?;
        let noun = match noun {
            Kept::Harvest => Noun::Harvest,
            Kept::Tray => Noun::Tray,
            Kept::Jar => Noun::Jar,
            Kept::Bottle => Noun::Bottle,
            _ => return Err(missing()),
        };
        Ok(LotFound {
            noun,
            id,
            code: code.to_string(),
        })
    }
}
