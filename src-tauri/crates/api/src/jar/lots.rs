//! `lot.list` and `preparation.list`: what there is to pour on, and what it can become.

use formulary::preparations::{self, PlantState as State};
use store::{LotFilter, LotRow, Reading};

use super::wire::{ListLots, ListPreparations, LotLine, Lots, PreparationLine, Preparations};
use crate::drying::Expected;
use crate::failure::At;
use crate::harvest::OwnBatches;
use crate::herb::Known;
use crate::tray::Run;
use crate::wire::{Lot, PlantState};
use crate::{App, Command, Failure, asked};

impl Command for ListLots {
    const NAME: &'static str = "lot.list";
    type Reply = Lots;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let limit = asked::limit(self.limit, 50)?;
        let after = self.after.as_ref();
        let after = after.map(|lot| asked::lot("after.id", lot)).transpose()?;
        app.read(|reading| {
            let herb = self
                .herb
                .as_deref()
                .map(|herb| Known::asked(reading, herb))
                .transpose()?;
            let page = reading.lots(&LotFilter {
                herb: herb.map(|known| known.key),
                state: self.state.map(Into::into),
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
            let expected = Expected::of(known.table_name(), &row.harvest.part, &own).at("part")?;
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
        common: known.common,
        part: row.harvest.part,
        state: PlantState::from(state),
        left_g: row.left_g,
        moisture_wet_percent: moisture.into(),
        picked_at: row.harvest.picked_at.to_rfc3339(),
        bed: row.bed.map(|bed| bed.name),
        photo: row.harvest.photos.first().map(ToString::to_string),
    })
}

impl Command for ListPreparations {
    const NAME: &'static str = "preparation.list";
    type Reply = Preparations;

    fn run(self, _: &App) -> Result<Self::Reply, Failure> {
        let lines = preparations::all()
            .iter()
            .map(|preparation| PreparationLine {
                key: preparation.key.clone(),
                name: preparation.name.clone(),
                fresh: preparation.takes(State::Fresh),
                dried: preparation.takes(State::Dried),
                cooked: preparation.takes(State::Cooked),
                liquids: preparation
                    .liquids()
                    .into_iter()
                    .map(str::to_owned)
                    .collect(),
                summary: preparation.summary.clone(),
            });
        Ok(Preparations {
            preparations: lines.collect(),
        })
    }
}
