//! A backup that was picked to be read: nothing of it is believed before it was checked.

use std::collections::BTreeSet;
use std::io::Write as _;
use std::path::Path;

use ::photo::Hash;
use archive::{Damage, Entry, Trouble, Unpacker};
use journal::Noun;
use store::Store;

use super::job::Task;
use super::{JOURNAL, Scrap, WORK, backup, unwritable};
use crate::{Code, Failure};

/// A backup whose every byte was read.
pub(super) struct Incoming {
    pub file: Unpacker,
    pub damage: Damage,
    /// Its journal, brought up to date in a file of our own; none if that is damaged.
    pub store: Option<Store>,
    pub journal: Scrap,
}

impl Incoming {
    /// Opens a backup, reads every byte of it, and takes its journal out.
    pub fn open(task: &Task, path: &Path, passphrase: Option<&str>) -> Result<Self, Failure> {
        let mut file = Unpacker::open(path, passphrase)?;
        if file.manifest().kind != backup::KIND {
            let message = "This file is no backup; an export cannot be restored or merged.";
            return Err(Failure::invalid("file", message));
        }
        let damage = file.verify(&task.progress)?;
        let journal = Scrap(
            task.keep
                .beside(WORK)?
                .join(format!("incoming-{}", task.name)),
        );
        let store = if damage.entries.iter().any(|name| name == JOURNAL) {
            None
        } else {
            Some(taken_out(task, &mut file, &journal.0)?)
        };
        Ok(Self {
            file,
            damage,
            store,
            journal,
        })
    }

    /// Opens a backup that shall become part of the journal and keeps its photos, which nothing
    /// names yet; also tells how many of them are new.
    pub fn taken_in(
        task: &Task,
        path: &Path,
        passphrase: Option<&str>,
        without_damaged: bool,
    ) -> Result<(Self, u64), Failure> {
        let mut incoming = Self::open(task, path, passphrase)?;
        incoming.is_accepted(without_damaged)?;
        let photos_new = incoming.keep_photos(task)?;
        if task.progress.is_cancelled() {
            return Err(super::stopped());
        }
        Ok((incoming, photos_new))
    }

    /// The photos in the file, by the names of their entries.
    pub fn photos(&self) -> Vec<(Hash, Entry)> {
        let entries = self.file.manifest().entries.iter();
        entries
            .filter(|entry| entry.name.starts_with("photos/"))
            .filter_map(|entry| Some((entry.blake3.parse().ok()?, entry.clone())))
            .collect()
    }

    /// How many photos its journal names that lie neither in the file nor in the album.
    pub fn photos_missing(&self, task: &Task) -> Result<u64, Failure> {
        let mut there: BTreeSet<Hash> = task.keep.photos.hashes()?.into_iter().collect();
        let whole = self.photos().into_iter();
        there.extend(
            whole
                .filter(|(_, entry)| !self.damage.entries.contains(&entry.name))
                .map(|(hash, _)| hash),
        );
        let mut missing = 0;
        if let Some(store) = &self.store {
            store.each_id(Noun::Photo, |id| {
                let is_there = id.parse().is_ok_and(|hash| there.contains(&hash));
                missing += u64::from(!is_there);
                Ok::<_, Failure>(())
            })?;
        }
        Ok(missing)
    }

    /// Keeps every photo that the album does not have, each under the hash of what came; returns
    /// how many those were. Done before anything names them, so that none ever dangles.
    fn keep_photos(&mut self, task: &Task) -> Result<u64, Failure> {
        let album = &task.keep.photos;
        let there: BTreeSet<Hash> = album.hashes()?.into_iter().collect();
        let mut new = 0;
        for (hash, entry) in self.photos() {
            if there.contains(&hash) || self.damage.entries.contains(&entry.name) {
                continue;
            }
            task.progress.expect(entry.bytes);
            let mut upload = album.begin()?;
            let mut refused = None;
            let copied = self.file.copy(&entry.name, &task.progress, |piece| {
                upload.write(piece).map_err(|why| {
                    let told = Trouble::Foreign(entry.name.clone());
                    refused = Some(why);
                    told
                })
            });
            match (copied, refused) {
                (_, Some(::photo::PhotoError::DiskFull)) => return Err(Trouble::StorageFull.into()),
                (Err(trouble), _) => return Err(trouble.into()),
                (Ok(()), _) => {}
            }
            upload.keep()?;
            new += 1;
        }
        Ok(new)
    }

    /// Its journal, or the sentence that there is none.
    pub fn store(&self) -> Result<&Store, Failure> {
        self.store.as_ref().ok_or_else(|| {
            Failure::invalid(
                "file",
                "The journal in this backup is damaged, so nothing was changed; take an older backup.",
            )
        })
    }

    /// Refuses a damaged backup unless the maker wants what is whole of it.
    fn is_accepted(&self, without_damaged: bool) -> Result<(), Failure> {
        self.store()?;
        if self.damage.is_none() || without_damaged {
            return Ok(());
        }
        let message = match self.damage.entries.as_slice() {
            [] => "This backup was changed after it was written, although its journal and photos are whole; nothing was read from it.".to_owned(),
            [one] => format!("{one} in this backup is damaged, so nothing was changed."),
            [one, rest @ ..] => format!(
                "{one} and {} more in this backup are damaged, so nothing was changed.",
                rest.len()
            ),
        };
        Err(Failure::invalid("without_damaged", message))
    }
}

fn taken_out(task: &Task, file: &mut Unpacker, to: &Path) -> Result<Store, Failure> {
    let listed = file.manifest().entries.iter();
    let size = listed
        .filter(|entry| entry.name == JOURNAL)
        .map(|entry| entry.bytes)
        .next()
        .ok_or_else(|| Failure::invalid("file", "There is no journal in this backup."))?;
    task.progress.expect(size);
    let mut draft = task.keep.disk.create(to).map_err(unwritable)?;
    file.copy(JOURNAL, &task.progress, |piece| Ok(draft.write_all(piece)?))?;
    drop(draft);
    let device = crate::app::held(&task.keep.reader).device();
    let store = Store::open(to, device).map_err(of_the_file)?;
    if !store.is_of_this_app().map_err(of_the_file)? {
        let message = "The journal in this file holds things that this app never writes, so nothing was read from it.";
        return Err(Failure::invalid("file", message));
    }
    Ok(store)
}

/// A fault of the journal that came, not of the one that is here.
fn of_the_file(failure: store::Failure) -> Failure {
    match failure {
        store::Failure::StorageFull | store::Failure::Busy => failure.into(),
        other => Failure {
            code: Code::Invalid,
            ..Failure::from(other).renamed("file")
        },
    }
}
