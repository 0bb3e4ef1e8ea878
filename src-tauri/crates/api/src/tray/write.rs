//! `tray.start`, `tray.take_down`, `tray.correct`, `tray.sample`.

use journal::{Air, Harvest, HarvestId, TakenDown, Tray, TrayId};
use message::{Argument, Failure, Unit, say};
use physics::quantity::grams;
use reckon::herb::Known;
use reckon::tray::run::{Run, oven_sample, refuse_if_ended, refuse_if_lost};
use reckon::{asked, told};
use serde::Deserialize;

use crate::open::Open;
use crate::request::Command;
use crate::speech;
use crate::tray::page::{TrayWritten, written};
use crate::tray::weigh::question_at_end;

/// Part of a harvest goes onto a tray.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct StartTray {
    pub harvest: String,
    pub mass_g: f64,
    pub name: Option<String>,
    pub tare_g: Option<f64>,
    pub started_at: Option<String>,
    pub air: Option<Air>,
    /// The mass was asked about and is right.
    pub confirm_odd: Option<bool>,
}

/// The run ends; what lies on the tray becomes a dried lot.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct TakeDownTray {
    pub tray: String,
    pub gross_g: Option<f64>,
    pub at: Option<String>,
    /// It was tried by hand and is dry.
    pub snap_test: Option<bool>,
    /// The weight was asked about and is right.
    pub confirm_odd: Option<bool>,
}

/// A change to a tray; what is left out stays.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct CorrectTray {
    pub tray: String,
    pub name: Option<String>,
    pub tare_g: Option<f64>,
    pub note: Option<String>,
    pub air: Option<Air>,
}

/// A sample of the lot was dried to constant weight.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct SampleTray {
    pub tray: String,
    pub fresh_g: f64,
    pub dry_g: f64,
    pub scale_step_g: Option<f64>,
}

impl Command for StartTray {
    const NAME: &'static str = "tray.start";
    type Reply = TrayWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let id = TrayId(app.new_id());
        let harvest_id: HarvestId = asked::id("harvest", &self.harvest)?;
        let started_at = asked::past("started_at", self.started_at.as_deref(), app.now())?;
        let air = self.air.map(measured).transpose()?;
        let (done, ()) = app.perform(|writing| {
            let harvest = writing
                .get::<Harvest>(&harvest_id)
                .map_err(|why| Failure::from(why).renamed("harvest"))?;
            let known = Known::written(writing, &harvest.herb)?;
            if started_at < harvest.picked_at {
                let picked = harvest.picked_at;
                let (day, time) = (picked.date_naive(), Argument::time(picked.time()));
                let message = say!("tray-before-picked", day, time);
                return Err(Failure::invalid("started_at", message));
            }
            let name = asked::text(self.name);
            let tray = Tray {
                code: writing.free_code(id.0)?,
                name: name.unwrap_or_else(|| plant_name(&known, &harvest.part)),
                harvest: harvest_id,
                fresh_mass_g: self.mass_g,
                tare_g: self.tare_g.unwrap_or_default(),
                started_at,
                air,
                taken_down: None,
                lost: None,
                cooked: None,
                sample: None,
                note: None,
            };
            writing.record(&id, &tray)?;
            let line = say!(
                "deed-tray-started",
                mass = Argument::grams(tray.fresh_mass_g),
                herb = told::herb(&known),
                code = &tray.code
            );
            // A tray that no forecast can be made for is refused while it can be put right.
            Run::read(writing, &id)?;
            asked::about_mass("mass_g", self.mass_g, self.confirm_odd)?;
            Ok((line, ()))
        })?;
        written(app, done, &id)
    }
}

impl Command for TakeDownTray {
    const NAME: &'static str = "tray.take_down";
    type Reply = TrayWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let id: TrayId = asked::id("tray", &self.tray)?;
        let at = asked::past("at", self.at.as_deref(), app.now())?;
        let (done, ()) = app.perform(|writing| {
            let row = writing
                .tray(&id)
                .map_err(|why| Failure::from(why).renamed("tray"))?;
            let mut tray = row.tray.clone();
            refuse_if_ended(&tray)?;
            let last = row
                .last_weighing
                .as_ref()
                .map(|(_, weighing)| weighing.gross_g);
            let gross_g = self
                .gross_g
                .or(last)
                .ok_or_else(|| Failure::invalid("gross_g", say!("tray-never-weighed")))?;
            if gross_g - tray.tare_g > tray.fresh_mass_g {
                let message = say!(
                    "tray-heavier-than-fresh",
                    most = Argument::tenths(tray.fresh_mass_g + tray.tare_g, Unit::Gram),
                    given = Argument::tenths(gross_g, Unit::Gram)
                );
                return Err(Failure::invalid("gross_g", message));
            }
            if let (Some(gross_g), false) = (self.gross_g, self.confirm_odd.unwrap_or(false))
                && let Some(question) = question_at_end(writing, row, gross_g, at)?
            {
                return Err(question);
            }
            tray.taken_down = Some(TakenDown {
                at,
                gross_g,
                snap_test: self.snap_test.unwrap_or(false),
            });
            writing.correct(&id, &tray)?;
            let mass = Argument::grams(gross_g - tray.tare_g);
            let name = Argument::own(&tray.name);
            Ok((
                say!("deed-tray-taken-down", name, code = &tray.code, mass),
                (),
            ))
        })?;
        written(app, done, &id)
    }
}

impl Command for CorrectTray {
    const NAME: &'static str = "tray.correct";
    type Reply = TrayWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let id: TrayId = asked::id("tray", &self.tray)?;
        let air = self.air.map(measured).transpose()?;
        let (done, _) = app.correct::<Tray>("tray", &id, |_, tray| {
            asked::renamed(&mut tray.name, self.name);
            asked::set(&mut tray.tare_g, self.tare_g);
            asked::set(&mut tray.air, air.map(Some));
            asked::corrected(&mut tray.note, self.note);
            let name = Argument::own(&tray.name);
            Ok(say!("deed-lot-edited", name, code = &tray.code))
        })?;
        written(app, done, &id)
    }
}

impl Command for SampleTray {
    const NAME: &'static str = "tray.sample";
    type Reply = TrayWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let id: TrayId = asked::id("tray", &self.tray)?;
        let sample = journal::OvenSample {
            fresh_g: self.fresh_g,
            dry_g: self.dry_g,
            scale_step_g: self.scale_step_g,
        };
        oven_sample(sample, grams(0.1))?;
        let (done, _) = app.correct::<Tray>("tray", &id, |_, tray| {
            refuse_if_lost(tray)?;
            tray.sample = Some(sample);
            let name = Argument::own(&tray.name);
            Ok(say!("deed-tray-sampled", name, code = &tray.code))
        })?;
        written(app, done, &id)
    }
}

/// What a tray is called until the maker names it: "Peppermint leaf".
pub(crate) fn plant_name(known: &Known, part: &str) -> String {
    speech::line(&told::plant_title(known, part))
}

/// The air as the journal keeps it, refused at its own fields.
pub(crate) fn measured(air: Air) -> Result<Air, Failure> {
    reckon::drying::expected::air(&air).map_err(|why| why.within("air"))?;
    Ok(air)
}
