//! `tray.start`, `tray.take_down`, `tray.correct` and `tray.sample`.

use journal::{Harvest, HarvestId, TakenDown, Tray, TrayId};
use physics::quantity::grams;

use super::page::page;
use super::run::{Run, oven_sample};
use super::weigh::question_at_end;
use super::wire::{CorrectTray, SampleTray, StartTray, TakeDownTray, TrayWritten};
use crate::herb::Known;
use crate::wire::{Air, Changed};
use crate::{App, Command, Failure, asked, words};

impl Command for StartTray {
    const NAME: &'static str = "tray.start";
    type Reply = TrayWritten;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
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
                let picked = harvest.picked_at.format("%Y-%m-%d %H:%M");
                let message =
                    format!("The tray cannot be laid out before it was picked, {picked}.");
                return Err(Failure::invalid("started_at", message));
            }
            let name = asked::text(self.name);
            let tray = Tray {
                code: writing.free_code(id.0)?,
                name: name.unwrap_or_else(|| format!("{} {}", known.common, harvest.part)),
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
            let (grams, code) = (words::figure(tray.fresh_mass_g), &tray.code);
            let line = format!("Put {grams} g of {} on the rack ({code})", known.common);
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

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let id: TrayId = asked::id("tray", &self.tray)?;
        let at = asked::past("at", self.at.as_deref(), app.now())?;
        let (done, ()) = app.perform(|writing| {
            let row = writing.tray(&id).map_err(|why| Failure::from(why).renamed("tray"))?;
            let mut tray = row.tray.clone();
            refuse_if_ended(&tray)?;
            let last = row.last_weighing.as_ref().map(|(_, weighing)| weighing.gross_g);
            let gross_g = self.gross_g.or(last).ok_or_else(|| {
                let message = "Weigh the tray: it was never weighed since it was laid out.";
                Failure::invalid("gross_g", message)
            })?;
            if gross_g - tray.tare_g > tray.fresh_mass_g {
                let most = words::figure(tray.fresh_mass_g + tray.tare_g);
                let message = format!(
                    "The weight with the tray must be at most {most} g, what it weighed fresh; {} g is not.",
                    words::figure(gross_g)
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
            let net = words::figure(gross_g - tray.tare_g);
            Ok((format!("Took down {} ({}), {net} g dried", tray.name, tray.code), ()))
        })?;
        written(app, done, &id)
    }
}

impl Command for CorrectTray {
    const NAME: &'static str = "tray.correct";
    type Reply = TrayWritten;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let id: TrayId = asked::id("tray", &self.tray)?;
        let air = self.air.map(measured).transpose()?;
        let (done, ()) = app.perform(|writing| {
            let mut tray = found(writing, &id)?;
            if let Some(name) = self.name {
                tray.name = name.trim().to_owned();
            }
            tray.tare_g = self.tare_g.unwrap_or(tray.tare_g);
            tray.air = air.or(tray.air);
            asked::corrected(&mut tray.note, self.note);
            writing.correct(&id, &tray)?;
            Ok((format!("Corrected {} ({})", tray.name, tray.code), ()))
        })?;
        written(app, done, &id)
    }
}

impl Command for SampleTray {
    const NAME: &'static str = "tray.sample";
    type Reply = TrayWritten;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let id: TrayId = asked::id("tray", &self.tray)?;
        let sample = journal::OvenSample {
            fresh_g: self.fresh_g,
            dry_g: self.dry_g,
            scale_step_g: self.scale_step_g,
        };
        oven_sample(sample, grams(0.1))?;
        let (done, ()) = app.perform(|writing| {
            let mut tray = found(writing, &id)?;
            refuse_if_lost(&tray)?;
            tray.sample = Some(sample);
            writing.correct(&id, &tray)?;
            Ok((
                format!("Noted an oven sample of {} ({})", tray.name, tray.code),
                (),
            ))
        })?;
        written(app, done, &id)
    }
}

pub(super) fn found(reading: &store::Reading<'_>, id: &TrayId) -> Result<Tray, Failure> {
    reading
        .get::<Tray>(id)
        .map_err(|why| Failure::from(why).renamed("tray"))
}

/// Nothing is learned any more of what was thrown away.
pub(crate) fn refuse_if_lost(tray: &Tray) -> Result<(), Failure> {
    match &tray.lost {
        Some(lost) => {
            let day = lost.at.format("%Y-%m-%d");
            Err(Failure::invalid(
                "tray",
                format!("This tray was thrown away on {day}, while it was drying."),
            ))
        }
        None => Ok(()),
    }
}

pub(super) fn refuse_if_ended(tray: &Tray) -> Result<(), Failure> {
    refuse_if_lost(tray)?;
    match tray.taken_down {
        Some(end) => {
            let day = end.at.format("%Y-%m-%d");
            Err(Failure::invalid(
                "tray",
                format!("This tray was taken down on {day} already."),
            ))
        }
        None => Ok(()),
    }
}

/// The air as the journal keeps it, refused at its own fields.
pub(super) fn measured(air: Air) -> Result<journal::Air, Failure> {
    crate::drying::air(&air).map_err(|why| why.within("air"))?;
    Ok(journal::Air {
        temperature_c: air.temperature_c,
        relative_humidity_percent: air.relative_humidity_percent,
    })
}

pub(super) fn written(app: &App, done: Changed, id: &TrayId) -> Result<TrayWritten, Failure> {
    let tray = app.read_back(|reading| page(app, reading, id))?;
    Ok(TrayWritten { done, tray })
}
