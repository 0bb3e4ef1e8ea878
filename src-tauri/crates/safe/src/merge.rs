//! `merge.look` and `merge.apply`: what a second phone wrote, united with what this one wrote.

use std::path::Path;

use journal::Noun;
use message::{Argument, Failure, Message, say};
use serde::Serialize;
use store::{Absorbed, Store};

use crate::aside;
use crate::folder::{Scrap, WORK, held};
use crate::incoming::{Incoming, of_the_file};
use crate::job::Task;
use crate::report::hybrid_time;

/// How the rows of a noun have changed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct NounChanges {
    pub noun: Noun,
    pub new: u64,
    pub changed: u64,
    pub gone: u64,
}

/// What came in, or would.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct MergeReport {
    pub deeds: u64,
    pub rows: Vec<NounChanges>,
    /// What the first 200 of the deeds say, oldest first.
    pub told: Vec<Message>,
    pub photos_new: u64,
    pub photos_missing: u64,
    /// Entries of the backup that are damaged, by name.
    pub damaged: Vec<String>,
    pub damaged_around: bool,
    /// What does not add up afterwards, such as a lot that both phones used up, or a clock that was
    /// ahead; a sentence for each.
    pub faults: Vec<Message>,
    /// Whether it can be taken back.
    pub can_undo: bool,
}

/// Done on a copy, so that what is told is what would be.
pub fn look(task: &Task, path: &Path, passphrase: Option<&str>) -> Result<MergeReport, Failure> {
    let incoming = Incoming::open(task, path, passphrase)?;
    let copy = Scrap(task.keep.beside(WORK)?.join(format!("merge-{}", task.name)));
    let door = task.keep.door()?;
    door.snapshot(&copy.0, |_, _| {
        task.progress.advance(0).map_err(Failure::from)
    })?;
    let mut here = Store::scratch(&copy.0, door.device())?;
    here.stopped_by(task.stop())?;
    let absorbed = here
        .absorb_from(incoming.log()?, None)
        .map_err(of_the_file)?;
    here.unstopped()?;
    let there = task.keep.photos.hashes()?;
    let new = incoming
        .photos()
        .into_iter()
        .filter(|(hash, _)| there.binary_search(hash).is_err());
    report(&incoming, absorbed, new.count() as u64, task, &here)
}

pub fn apply(
    task: &Task,
    path: &Path,
    passphrase: Option<&str>,
    without_damaged: bool,
) -> Result<MergeReport, Failure> {
    let mut incoming = Incoming::accepted(task, path, passphrase, without_damaged)?;
    incoming.is_sensible()?;
    let photos_new = incoming.keep_photos(task)?;
    let other = incoming.log()?;
    let mut here = held(&task.keep.writer);
    here.stopped_by(task.stop())?;
    let absorbed = aside::changed(&task.keep, &mut here, task.id, None, |here, before| {
        let absorbed = here.absorb_from(other, Some(before))?;
        Ok((absorbed.deeds > 0, absorbed))
    });
    here.unstopped()?;
    let absorbed = absorbed.map_err(|failure| failure.renamed("file"))?;
    report(&incoming, absorbed, photos_new, task, &here)
}

fn report(
    incoming: &Incoming,
    absorbed: Absorbed,
    photos_new: u64,
    task: &Task,
    here: &Store,
) -> Result<MergeReport, Failure> {
    let rows = absorbed.rows.iter().map(|(noun, tally)| NounChanges {
        noun: *noun,
        new: tally.new,
        changed: tally.changed,
        gone: tally.gone,
    });
    let ahead = absorbed.ahead_of(task.now).map(|at| {
        let day: String = hybrid_time(at, task.now).chars().take(10).collect();
        say!("merge-clock-ahead", day = Argument::own(day))
    });
    let named = incoming.log()?.photos_named()?;
    let mut standing = Vec::new();
    here.each_id(Noun::Photo, |id| {
        if named.contains(id) {
            standing.push(id.to_owned());
        }
        Ok::<_, Failure>(())
    })?;
    Ok(MergeReport {
        deeds: absorbed.deeds as u64,
        rows: rows.collect(),
        told: absorbed.told,
        photos_new,
        photos_missing: incoming.photos_missing(task, standing.iter().map(String::as_str))?,
        damaged: incoming.damage.entries.clone(),
        damaged_around: incoming.damage.around,
        can_undo: crate::aside::can_undo(&task.keep, here)?,
        faults: here.audit()?.into_iter().chain(ahead).collect(),
    })
}
