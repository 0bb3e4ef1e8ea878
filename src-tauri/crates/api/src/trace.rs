//! `trace.back` from a bottle or jar to its beds, `trace.forward` from a bed, harvest, supply or
//! time to the bottles and the people who were given one.

pub(crate) mod sheet;
pub(crate) mod sheet_forward;

use journal::{BottleId, Jar};
use message::{Failure, say};
use reckon::asked;
use reckon::bottle::card::Shown;
use reckon::day::midnight;
use reckon::trace::back::{Chain, chain};
use reckon::trace::forward::TracedForward;
use serde::{Deserialize, Serialize};
use store::TraceFrom;

use crate::open::Open;
use crate::request::Command;

/// Where does this bottle or jar come from?
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct TraceBack {
    pub bottle: Option<String>,
    pub jar: Option<String>,
}

/// What became of it? Exactly one of bed, harvest, supply, jar, or both days.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct TraceForward {
    pub bed: Option<String>,
    pub harvest: Option<String>,
    pub supply: Option<String>,
    pub jar: Option<String>,
    /// First day of picking.
    pub from: Option<String>,
    /// Last day of picking.
    pub to: Option<String>,
}

/// The answer to [`TraceBack`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct TracedBack {
    pub chain: Chain,
}

impl Command for TraceBack {
    const NAME: &'static str = "trace.back";
    type Reply = TracedBack;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        app.read(|reading| {
            let chain = match (&self.bottle, &self.jar) {
                (Some(text), None) => {
                    let id: BottleId = asked::id("bottle", text)?;
                    let row = reading
                        .bottle(&id)
                        .map_err(|why| Failure::from(why).renamed("bottle"))?;
                    let jar = reading.get::<Jar>(&row.bottle.jar)?;
                    let today = app.now().date_naive();
                    let bottle = Shown::of(reading, &jar)?.card(&row, today);
                    chain(reading, &row.bottle.jar, Some(bottle), app.now())?
                }
                (None, Some(text)) => chain(reading, &asked::id("jar", text)?, None, app.now())?,
                _ => return Err(Failure::invalid("bottle", say!("bottle-or-jar"))),
            };
            Ok(TracedBack { chain })
        })
    }
}

impl TraceForward {
    fn start(&self, app: &Open) -> Result<(&'static str, TraceFrom), Failure> {
        let days = match (&self.from, &self.to) {
            (Some(from), Some(to)) => {
                let (first, last) = (asked::date("from", from)?, asked::date("to", to)?);
                if last < first {
                    let message = say!("trace-last-before-first", last, first);
                    return Err(Failure::invalid("to", message));
                }
                let offset = *app.now().offset();
                let after = last.succ_opt().unwrap_or(last);
                Some(TraceFrom::Picked(
                    midnight(first, offset),
                    midnight(after, offset),
                ))
            }
            (None, None) => None,
            _ => return Err(Failure::invalid("to", say!("trace-first-and-last"))),
        };
        let asked = [
            self.bed
                .as_deref()
                .map(|it| Ok(("bed", TraceFrom::Bed(asked::id("bed", it)?)))),
            self.harvest
                .as_deref()
                .map(|it| Ok(("harvest", TraceFrom::Harvest(asked::id("harvest", it)?)))),
            self.supply
                .as_deref()
                .map(|it| Ok(("supply", TraceFrom::Supply(asked::id("supply", it)?)))),
            self.jar
                .as_deref()
                .map(|it| Ok(("jar", TraceFrom::Jar(asked::id("jar", it)?)))),
            days.map(|days| Ok(("from", days))),
        ];
        let mut asked = asked.into_iter().flatten();
        match (asked.next(), asked.next()) {
            (Some(only), None) => only,
            _ => Err(Failure::invalid("bed", say!("trace-one-start"))),
        }
    }
}

impl Command for TraceForward {
    const NAME: &'static str = "trace.forward";
    type Reply = TracedForward;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let (field, from) = self.start(app)?;
        let today = app.now().date_naive();
        app.read(|reading| TracedForward::of(reading, field, from, today))
    }
}
