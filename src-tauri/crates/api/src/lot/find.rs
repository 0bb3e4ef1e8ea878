//! `lot.find`: what bears this code.

use journal::{LotCode, Noun};
use message::{Failure, say};
use reckon::asked;
use serde::{Deserialize, Serialize};

use crate::open::Open;
use crate::request::Command;

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

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let Some(lot) = ::paper::link::lot_in(&self.text) else {
            return Err(Failure::invalid("text", say!("lot-code-shape")));
        };
        let code: LotCode = asked::id("text", &lot)?;
        let missing = || Failure::not_found("text", say!("lot-code-nowhere", code = &code));
        let (noun, id) = app
            .read(|reading| Ok(reading.coded(&code)?))?
            .ok_or_else(missing)?;
        if !matches!(noun, Noun::Harvest | Noun::Tray | Noun::Jar | Noun::Bottle) {
            return Err(missing());
        }
        Ok(LotFound {
            noun,
            id,
            code: code.to_string(),
        })
    }
}
