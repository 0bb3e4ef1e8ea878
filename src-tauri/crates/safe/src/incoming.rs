//! A backup that was picked to be read: nothing of it is believed before it was checked.

use std::collections::BTreeSet;
use std::io::Write as _;
use std::path::Path;

use ::photo::Hash;
use archive::{Damage, Entry, Unpacker};
use message::{Argument, Code, Failure, say};
use store::{Foreign, Store};

use crate::folder::{self, JOURNAL, Scrap, WORK, unwritable};
use crate::job::Task;

/// A backup whose every byte was read.
pub struct Incoming {
    pub file: Unpacker,
    pub damage: Damage,
    /// The log of its journal; none if that is damaged.
    pub log: Option<Foreign>,
    /// Where its journal was taken out to.
    pub _taken_out: Scrap,
}

impl Incoming {
    /// Opens a backup, reads every byte of it, and takes its journal out.
    pub fn open(task: &Task, path: &Path, passphrase: Option<&str>) -> Result<Self, Failure> {
        let mut file = match Unpacker::open(path, passphrase) {
            // Its list is at its end; what stands before it may be whole.
            Err(archive::Failure::Damaged(_) | archive::Failure::NotOurs) => {
                Unpacker::salvage(path, passphrase, folder::KIND, &task.progress)?
            }
            other => other?,
        };
        if file.manifest().kind != folder::KIND {
            return Err(Failure::invalid("file", say!("file-no-backup")));
        }
        let damage = file.verify(&task.progress)?;
        let taken_out = Scrap(
            task.keep
                .beside(WORK)?
                .join(format!("incoming-{}", task.name)),
        );
        let log = if damage.entries.iter().any(|name| name == JOURNAL) {
            None
        } else {
            Some(read(task, &mut file, &taken_out.0)?)
        };
        Ok(Self {
            file,
            damage,
            log,
            _taken_out: taken_out,
        })
    }

    /// Carries its log, row by row, into a new journal that this version makes; nothing else of the
    /// file comes along.
    pub fn carried(&self, task: &Task) -> Result<Carried, Failure> {
        let log = self.log()?;
        let file = Scrap(
            task.keep
                .beside(WORK)?
                .join(format!("carried-{}", task.name)),
        );
        let mut store = Store::open(&file.0, crate::folder::held(&task.keep.reader).device())?;
        store.stopped_by(task.stop())?;
        store.fill_from(log).map_err(of_the_file)?;
        store.unstopped()?;
        Ok(Carried { store, file })
    }

    /// Opens a backup that shall become part of the journal.
    ///
    /// # Errors
    /// A [`Failure`] of `without_damaged` when it is damaged and the maker did not accept that.
    pub fn accepted(
        task: &Task,
        path: &Path,
        passphrase: Option<&str>,
        without_damaged: bool,
    ) -> Result<Self, Failure> {
        let incoming = Self::open(task, path, passphrase)?;
        incoming.is_accepted(without_damaged)?;
        Ok(incoming)
    }

    /// Refuses a log in which some deed makes no sense, before any of its photos are kept.
    pub fn is_sensible(&self) -> Result<(), Failure> {
        self.log()?.is_sensible().map_err(of_the_file)
    }

    /// The photos in the file, by the names of their entries.
    pub fn photos(&self) -> Vec<(Hash, Entry)> {
        let entries = self.file.manifest().entries.iter();
        entries
            .filter(|entry| entry.name.starts_with("photos/"))
            .filter_map(|entry| Some((entry.blake3.parse().ok()?, entry.clone())))
            .collect()
    }

    /// How many of these photos lie neither in the file nor in the album.
    pub fn photos_missing<'a>(
        &self,
        task: &Task,
        named: impl Iterator<Item = &'a str>,
    ) -> Result<u64, Failure> {
        let mut there: BTreeSet<Hash> = task.keep.photos.hashes()?.into_iter().collect();
        let whole = self.photos().into_iter();
        there.extend(
            whole
                .filter(|(_, entry)| !self.damage.entries.contains(&entry.name))
                .map(|(hash, _)| hash),
        );
        Ok(named
            .filter(|id| !id.parse().is_ok_and(|hash| there.contains(&hash)))
            .count() as u64)
    }

    /// Keeps every photo that the album does not have, each under the hash of what came; returns
    /// how many those were. Done before anything names them, so that none ever dangles.
    pub fn keep_photos(&mut self, task: &Task) -> Result<u64, Failure> {
        let album = &task.keep.photos;
        let there: BTreeSet<Hash> = album.hashes()?.into_iter().collect();
        let mut new = 0;
        for (hash, entry) in self.photos() {
            let is_here = there.contains(&hash) && album.is_whole(&hash)?;
            if is_here || self.damage.entries.contains(&entry.name) {
                continue;
            }
            task.progress.expect(entry.bytes);
            let mut upload = album.begin()?;
            let mut refused = None;
            let copied = self.file.copy(&entry.name, &task.progress, |piece| {
                upload.write(piece).map_err(|why| {
                    let told = archive::Failure::Foreign(entry.name.clone());
                    refused = Some(why);
                    told
                })
            });
            match (copied, refused) {
                (_, Some(::photo::Failure::DiskFull)) => {
                    return Err(archive::Failure::StorageFull.into());
                }
                (Err(failure), _) => return Err(failure.into()),
                (Ok(()), _) => {}
            }
            upload.keep()?;
            new += 1;
        }
        if task.progress.is_cancelled() {
            return Err(crate::folder::stopped());
        }
        Ok(new)
    }

    /// Whether its log can be read.
    pub fn has_log(&self) -> bool {
        self.log.is_some()
    }

    /// Its log, or the sentence that there is none.
    pub fn log(&self) -> Result<&Foreign, Failure> {
        let damaged = || Failure::invalid("file", say!("file-book-damaged"));
        self.log.as_ref().ok_or_else(damaged)
    }

    /// Refuses a damaged backup unless the maker wants what is whole of it.
    pub fn is_accepted(&self, without_damaged: bool) -> Result<(), Failure> {
        self.log()?;
        if self.damage.is_none() || without_damaged {
            return Ok(());
        }
        let message = match self.damage.entries.as_slice() {
            [] => say!("file-changed"),
            [one] => say!("file-one-damaged", name = Argument::own(one)),
            [one, rest @ ..] => say!(
                "file-more-damaged",
                name = Argument::own(one),
                more = rest.len()
            ),
        };
        Err(Failure::invalid("without_damaged", message))
    }
}

/// A log in a journal of our own making, closed and gone when it is dropped.
pub struct Carried {
    pub store: Store,
    pub file: Scrap,
}

/// Takes the journal out of the file and opens it to be read.
fn read(task: &Task, file: &mut Unpacker, to: &Path) -> Result<Foreign, Failure> {
    let listed = file.manifest().entries.iter();
    let size = listed
        .filter(|entry| entry.name == JOURNAL)
        .map(|entry| entry.bytes)
        .next()
        .ok_or_else(|| Failure::invalid("file", say!("file-without-book")))?;
    task.progress.expect(size);
    let mut draft = task.keep.disk.create(to).map_err(unwritable)?;
    file.copy(JOURNAL, &task.progress, |piece| Ok(draft.write_all(piece)?))?;
    drop(draft);
    Foreign::open(to, task.stop()).map_err(of_the_file)
}

/// A fault of the journal that came, not of the one that is here.
pub fn of_the_file(failure: store::Failure) -> Failure {
    match failure {
        store::Failure::StorageFull | store::Failure::Busy | store::Failure::Stopped => {
            failure.into()
        }
        other => Failure {
            code: Code::Invalid,
            ..Failure::from(other).renamed("file")
        },
    }
}
