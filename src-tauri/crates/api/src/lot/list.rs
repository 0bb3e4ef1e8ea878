//! `lot.list`: what there is to pour on.

use journal::PlantState;
use message::{At, Failure, Message};
use physics::Interval;
use reckon::drying::batches::OwnBatches;
use reckon::drying::expected::Expected;
use reckon::herb::Known;
use reckon::tray::run::Run;
use reckon::wire::Lot;
use reckon::{asked, told};
use serde::{Deserialize, Serialize};
use store::{LotFilter, LotRow, Reading};

use crate::open::Open;
use crate::request::Command;

/// Lots with grams left, fresh before dried, the latest picking first; `after` is the last one seen.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct ListLots {
    pub herb: Option<String>,
    pub state: Option<PlantState>,
    pub after: Option<Lot>,
    pub limit: Option<u32>,
}

/// A lot that can go into a jar.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct LotLine {
    pub lot: Lot,
    pub code: String,
    pub herb: String,
    pub common: Message,
    pub part: String,
    pub state: PlantState,
    pub left_g: f64,
    pub moisture_wet_percent: Interval,
    pub picked_at: String,
    pub bed: Option<String>,
    pub photo: Option<String>,
}

/// The answer to [`ListLots`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Lots {
    pub lots: Vec<LotLine>,
    pub more: bool,
}

impl Command for ListLots {
    const NAME: &'static str = "lot.list";
    type Reply = Lots;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let limit = asked::limit(self.limit, 50)?;
        let after = self.after.as_ref();
        let after = after.map(|lot| asked::lot("after.id", lot)).transpose()?;
        app.read(|reading| {
            let herb = asked::herb_if_any(reading, self.herb.as_deref())?;
            let page = reading.lots(&LotFilter {
                herb,
                state: self.state,
                after,
                limit,
            })?;
            let mut own = OwnBatches::default();
            let lines: Result<Vec<_>, Failure> = page
                .rows
                .into_iter()
                .map(|row| line(reading, row, &mut own))
                .collect();
            Ok(Lots {
                lots: lines?,
                more: page.more,
            })
        })
    }
}

fn line(reading: &Reading<'_>, row: LotRow, own: &mut OwnBatches) -> Result<LotLine, Failure> {
    let known = Known::written(reading, &row.harvest.herb)?;
    let moisture = match row.lot {
        journal::Lot::Tray(id) => Run::among(reading, reading.tray(&id)?, own)?.dried_moisture(),
        journal::Lot::Harvest(_) => {
            let own = own.fractions(reading, &known.key, &row.harvest.part, None)?;
            let expected =
                Expected::of(known.water(&row.harvest.part), &row.harvest.part, &own).at("part")?;
            expected.prior.fresh_water_wet_percent()
        }
    };
    let state = row.state();
    let code = row
        .tray
        .as_ref()
        .map_or(&row.harvest.code, |tray| &tray.code);
    Ok(LotLine {
        lot: Lot::from(row.lot),
        code: code.to_string(),
        herb: known.key.to_string(),
        common: told::title(&known),
        part: row.harvest.part,
        state,
        left_g: row.left_g,
        moisture_wet_percent: moisture,
        picked_at: row.harvest.picked_at.to_rfc3339(),
        bed: row.bed.map(|bed| bed.name),
        photo: row.harvest.photos.first().map(ToString::to_string),
    })
}
