//! `merge.look` and `merge.apply`: what a second phone wrote, united with what this one wrote.

use std::path::Path;

use journal::Noun;
use serde::{Deserialize, Serialize};
use store::{Absorbed, Store};

use super::incoming::{Incoming, of_the_file};
use super::job::{JobBegun, JobOutcome, JobWork, Task};
use super::{Scrap, WORK, aside, hybrid_time, source};
use crate::app::held;
use crate::{App, Command, Failure};

/// What would come in from this backup of another phone?
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct LookAtMerge {
    pub file: String,
    pub passphrase: Option<String>,
}

/// Takes in what this backup of another phone holds.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct ApplyMerge {
    pub file: String,
    pub passphrase: Option<String>,
    /// Take in what is whole although the backup is damaged elsewhere.
    pub without_damaged: Option<bool>,
}

/// How the rows of a noun have changed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct NounChanges {
    pub noun: String,
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
    pub told: Vec<String>,
    pub photos_new: u64,
    pub photos_missing: u64,
    /// Entries of the backup that are damaged, by name.
    pub damaged: Vec<String>,
    pub damaged_around: bool,
    /// What does not add up afterwards, such as a lot that both phones used up, or a clock that was
    /// ahead; a sentence for each.
    pub faults: Vec<String>,
    /// Whether it can be taken back.
    pub can_undo: bool,
}

impl Command for LookAtMerge {
    const NAME: &'static str = "merge.look";
    type Reply = JobBegun;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let path = source(&app.keep, &self.file)?;
        app.begin(JobWork::MergeLook, move |task| {
            look(task, &path, self.passphrase.as_deref())
        })
    }
}

impl Command for ApplyMerge {
    const NAME: &'static str = "merge.apply";
    type Reply = JobBegun;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let path = source(&app.keep, &self.file)?;
        let without_damaged = self.without_damaged.unwrap_or(false);
        app.begin(JobWork::Merge, move |task| {
            apply(task, &path, self.passphrase.as_deref(), without_damaged)
        })
    }
}

/// Done on a copy, so that what is told is what would be.
fn look(task: &Task, path: &Path, passphrase: Option<&str>) -> Result<JobOutcome, Failure> {
    let incoming = Incoming::open(task, path, passphrase)?;
    let copy = Scrap(task.keep.beside(WORK)?.join(format!("merge-{}", task.name)));
    let door = task.keep.door()?;
    door.snapshot(&copy.0, |_, _| {
        task.progress.advance(0).map_err(Failure::from)
    })?;
    let mut here = Store::open(&copy.0, door.device())?;
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
    let report = report(&incoming, absorbed, new.count() as u64, task, &here)?;
    Ok(JobOutcome::MergeLook(report))
}

fn apply(
    task: &Task,
    path: &Path,
    passphrase: Option<&str>,
    without_damaged: bool,
) -> Result<JobOutcome, Failure> {
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
    let report = report(&incoming, absorbed, photos_new, task, &here)?;
    Ok(JobOutcome::Merged(report))
}

fn report(
    incoming: &Incoming,
    absorbed: Absorbed,
    photos_new: u64,
    task: &Task,
    here: &Store,
) -> Result<MergeReport, Failure> {
    let rows = absorbed.rows.iter().map(|(noun, tally)| NounChanges {
        noun: noun.as_str().to_owned(),
        new: tally.new,
        changed: tally.changed,
        gone: tally.gone,
    });
    let ahead = absorbed.ahead_of(task.now).map(|at| {
        let day: String = hybrid_time(at, task.now).chars().take(10).collect();
        format!(
            "The clock of the other phone was ahead: it wrote an entry dated {day}. Set that clock right; \
             where both phones changed the same thing, the later date counts."
        )
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
        can_undo: super::restore::can_undo(&task.keep, here)?,
        faults: here.audit()?.into_iter().chain(ahead).collect(),
    })
}
