//! A backup: the journal and its photos in one file, read back before it bears its name.

use std::io::Cursor;
use std::path::{Path, PathBuf};

use ::photo::{Hash, Kind};
use archive::{MOST_ENTRIES, Packer};
use chrono::{DateTime, FixedOffset};
use journal::{DeedId, Noun};
use message::{Code, Failure, carried, say};
use serde::Serialize;
use serde_json::json;
use store::{Contents, Fault, Store};

use crate::aside::can_undo;
use crate::check::{self, LastCheck};
use crate::folder::{
    self, JOURNAL, KIND, Keep, MADE, Scrap, WORK, forget_made, held, private, unwritable,
};
use crate::job::Task;
use crate::readme;
use crate::report::{LAST, LastBackup, NounCount, WAITING, counts, hybrid_time, told_time};
use crate::rescue::{RESCUE, RescueReport, sentences};

/// Common practice, no source: what a month has brought is more than anyone remembers.
pub const REMIND_AFTER_DAYS: i64 = 30;

/// The answer to [`AboutBackup`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct BackupAbout {
    pub last: Option<LastBackup>,
    pub days_ago: Option<i64>,
    /// Deeds that no backup of this device holds.
    pub deeds_since: u64,
    /// Whether a backup is due.
    pub remind: bool,
    pub rows: Vec<NounCount>,
    pub photos: u64,
    pub photo_bytes: u64,
    /// Photos that lie in the album although no entry names them; they are kept and backed up.
    pub photos_without_entry: u64,
    pub journal_bytes: u64,
    /// When the latest entry was written.
    pub latest: Option<String>,
    /// Whether the last restore or merge can be taken back.
    pub can_undo: bool,
    /// What was saved when the journal was found damaged.
    pub rescue: Option<RescueReport>,
    /// When all of the book was last read.
    pub checked: Option<LastCheck>,
    /// Whether it is time to read all of it again.
    pub check_due: bool,
}

/// A backup was made.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct BackupMade {
    /// Where it lies.
    pub file: String,
    pub file_name: String,
    pub bytes: u64,
    pub sealed: bool,
    pub rows: Vec<NounCount>,
    pub photos: u64,
    /// Photos whose bytes on this device are not what they were when they were kept; the backup
    /// holds them as they are.
    pub damaged_photos: Vec<String>,
    /// What is wrong with the journal; the backup then holds what could be read of it, its name says
    /// so, and it does not count as a backup.
    pub damage: Option<BackupDamage>,
}

/// What a backup of a damaged journal holds.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct BackupDamage {
    /// Finished sentences: what could be read, what could not, what to do.
    pub sentences: Vec<String>,
    pub deeds: u64,
    pub deeds_lost: u64,
}

/// How safe the journal is.
pub fn about(keep: &Keep, now: DateTime<FixedOffset>) -> Result<BackupAbout, Failure> {
    let originals = keep.photos.hashes()?;
    let (contents, last, can_undo, rescue, checked, photos_without_entry) = {
        let store = held(&keep.reader);
        let contents = store.contents()?;
        // Where the numbers agree, no name needs to be compared: it is 100,000 after many years.
        let unnamed = match originals.len() as u64 {
            0 => 0,
            count if count == contents.of(Noun::Photo) => 0,
            _ => without_entry(&store, &originals)?,
        };
        (
            contents,
            store.noted(LAST)?,
            can_undo(keep, &store)?,
            store.noted(RESCUE)?,
            store.noted(check::CHECKED)?,
            unnamed,
        )
    };
    let last: Option<LastBackup> = last.and_then(|text| serde_json::from_str(&text).ok());
    let checked: Option<LastCheck> = checked.and_then(|text| serde_json::from_str(&text).ok());
    let days_ago = last
        .as_ref()
        .and_then(|last| DateTime::parse_from_rfc3339(&last.at).ok())
        .map(|at| journal::days_since(at, now))
        // A clock that was set back, or was ahead then, cannot tell how long ago it was; a day
        // is a journey to another zone.
        .filter(|days| *days >= -1)
        .map(|days| days.max(0));
    let deeds_since = contents
        .deeds
        .saturating_sub(last.as_ref().map_or(0, |last| last.deeds));
    let bytes = |suffix: &str| {
        let path = keep.folder.join(format!("{JOURNAL}{suffix}"));
        std::fs::metadata(path).map_or(0, |meta| meta.len())
    };
    Ok(BackupAbout {
        remind: deeds_since > 0
            && contents.of(Noun::Harvest) > 0
            && days_ago.is_none_or(|days| days >= REMIND_AFTER_DAYS),
        days_ago,
        deeds_since,
        rows: counts(&contents),
        photos: contents.of(Noun::Photo),
        photo_bytes: contents.photo_bytes,
        photos_without_entry,
        journal_bytes: bytes("") + bytes("-wal"),
        latest: contents.latest.map(|at| hybrid_time(at, now)),
        can_undo,
        check_due: check::is_due(checked.as_ref(), contents.deeds, now),
        checked,
        rescue: rescue.and_then(|text| serde_json::from_str(&carried::taken_up(&text)).ok()),
        last,
    })
}

/// How many originals, in order of their hash, no entry names.
pub fn without_entry(store: &Store, originals: &[Hash]) -> Result<u64, Failure> {
    let (mut left, mut unnamed) = (originals.iter().peekable(), 0);
    store.each_id(Noun::Photo, |id| {
        let named: Hash = id.parse()?;
        while left.next_if(|hash| **hash < named).is_some() {
            unnamed += 1;
        }
        left.next_if(|hash| **hash == named);
        Ok::<_, Failure>(())
    })?;
    Ok(unnamed + left.count() as u64)
}

pub fn make(
    task: &Task,
    target: &std::path::Path,
    passphrase: Option<&str>,
    with_photos: bool,
) -> Result<BackupMade, Failure> {
    let (keep, progress) = (&task.keep, &task.progress);
    let readable = Readable::of(task)?;
    let (contents, damage) = (&readable.contents, readable.damage.clone());
    let target = &match damage {
        Some(_) => said_damaged(target),
        None => target.to_owned(),
    };
    // Listed after the journal was copied, so that no photo that it names is missing: a photo is on
    // the disk before its entry is.
    let hashes = if with_photos {
        keep.photos.hashes()?
    } else {
        Vec::new()
    };
    // README, journal and manifest are entries, too.
    if hashes.len() as u64 + 3 > MOST_ENTRIES {
        let message = say!("backup-too-many", most = MOST_ENTRIES);
        return Err(Failure::invalid("photos", message));
    }
    let journal_bytes = std::fs::metadata(&readable.file.0)
        .map_err(unwritable)?
        .len();
    progress.expect(journal_bytes);
    for hash in &hashes {
        let file = keep.photos.original(hash)?;
        let length = file.map_or(Ok(0), |file| file.metadata().map(|meta| meta.len()));
        progress.expect(length.map_err(unwritable)?);
    }
    let mut packer = Packer::begin(&keep.disk, target, passphrase, progress)?;
    packer.add(
        "README.txt",
        readme::BACKUP.len() as u64,
        readme::BACKUP.as_bytes(),
    )?;
    let file = std::fs::File::open(&readable.file.0).map_err(unwritable)?;
    packer.add(JOURNAL, journal_bytes, file)?;
    let (mut photos, mut damaged) = (0_u64, Vec::new());
    for hash in &hashes {
        let name = hash.to_string();
        // Its beginning tells the kind, whose name lets other programs open it.
        let Some(mut file) = keep.photos.original(hash)? else {
            continue;
        };
        let mut head = Vec::new();
        std::io::Read::read_to_end(&mut std::io::Read::take(&mut file, 64), &mut head)
            .map_err(unwritable)?;
        let ending = Kind::of(&head).map_or("bin", ending);
        let whole = std::io::Read::chain(Cursor::new(head), file);
        let entry = packer.add(&format!("photos/{}/{name}.{ending}", &name[..2]), 0, whole)?;
        if entry.blake3 != name {
            damaged.push(name);
        }
        photos += 1;
    }
    let rows = counts(contents);
    let about = json!({
        "made_at": told_time(task.now),
        "app_version": env!("CARGO_PKG_VERSION"),
        "rows": rows,
        "deeds": contents.deeds,
        "latest": contents.latest.map(|at| hybrid_time(at, task.now)),
        "photos": photos,
        "with_photos": with_photos,
    });
    let bytes = packer.finish(KIND, about)?;
    let file_name = target
        .file_name()
        .unwrap_or_default()
        .to_string_lossy()
        .into_owned();
    let last = LastBackup {
        at: told_time(task.now),
        file_name: file_name.clone(),
        bytes,
        sealed: passphrase.is_some(),
        photos: with_photos,
        deeds: contents.deeds,
    };
    let waits = target.parent() == Some(keep.folder.join(MADE).as_path());
    if damage.is_none()
        && let Ok(text) = serde_json::to_string(&last)
    {
        held(&keep.writer).note(if waits { WAITING } else { LAST }, &text)?;
        if waits {
            forget_made(keep, &file_name, folder::is_backup);
        }
    }
    Ok(BackupMade {
        file: target.display().to_string(),
        file_name,
        bytes,
        sealed: passphrase.is_some(),
        rows,
        photos,
        damaged_photos: damaged,
        damage,
    })
}

/// A copy of the journal that can be restored.
struct Readable {
    file: Scrap,
    contents: Contents,
    damage: Option<BackupDamage>,
}

impl Readable {
    /// The journal as it stands, read from end to end; where it is damaged, what can be read of it.
    fn of(task: &Task) -> Result<Self, Failure> {
        let keep = &task.keep;
        let scrap = |what: &str| -> Result<Scrap, Failure> {
            let scrap = Scrap(keep.beside(WORK)?.join(format!("{what}-{}", task.name)));
            private(&keep.disk, &scrap.0)?;
            Ok(scrap)
        };
        let mut said = Vec::new();
        match Self::as_it_stands(task, &scrap, &mut said) {
            Ok(Some(whole)) => return Ok(whole),
            Ok(None) => {}
            Err(failure) if failure.code == Code::Damaged => said.push(failure.message.into()),
            Err(failure) => return Err(failure),
        }
        let file = scrap("readable")?;
        let device = held(&keep.reader).device();
        let rescued = store::rescue(
            &keep.folder.join(JOURNAL),
            &file.0,
            &[],
            device,
            DeedId(task.id),
            task.now,
            task.voice,
        )?;
        // Written out once more, so that it is one plain file with no log beside it.
        let plain = scrap("plain")?;
        let contents =
            Store::open(&file.0, device)?.snapshot(&plain.0, |_, _| Ok::<_, store::Failure>(()))?;
        Ok(Self {
            file: plain,
            contents,
            damage: Some(BackupDamage {
                sentences: said.into_iter().chain(sentences(&rescued)).collect(),
                deeds: rescued.deeds,
                deeds_lost: rescued.lost,
            }),
        })
    }
}

impl Readable {
    /// The journal as it stands if every page and every entry of it reads as it was written; what
    /// does not is said.
    fn as_it_stands(
        task: &Task,
        scrap: &impl Fn(&str) -> Result<Scrap, Failure>,
        said: &mut Vec<String>,
    ) -> Result<Option<Self>, Failure> {
        let file = scrap("snapshot")?;
        let mut door = task.keep.door()?;
        let contents = door.snapshot(&file.0, |_, _| {
            task.progress.advance(0).map_err(Failure::from)
        })?;
        door.stopped_by(task.stop())?;
        // An entry that was missing before is named by the check of the book; the backup holds all
        // that there is.
        let faults = door.check_log()?.into_iter();
        let faults = faults.filter(|fault| !matches!(fault, Fault::Missing(_)));
        said.extend(faults.map(|fault| check::told(fault).what));
        // One broken page may be told a thousand times.
        let pages = store::unsound(&file.0)?.into_iter().take(20);
        said.extend(pages.map(|page| check::told(Fault::File(page)).what));
        if !said.is_empty() {
            return Ok(None);
        }
        let beside = Scrap(
            task.keep
                .beside(WORK)?
                .join(format!("tables-{}", task.name)),
        );
        let is_made_of_the_log = door.check_tables(&beside.0, task.stop())?.is_none();
        door.unstopped()?;
        let whole = |file, contents| {
            Ok(Some(Self {
                file,
                contents,
                damage: None,
            }))
        };
        if is_made_of_the_log {
            return whole(file, contents);
        }
        // The log is the truth: the backup holds the tables that it gives.
        let mut copy = Store::open(&file.0, door.device())?;
        copy.rebuild()?;
        let plain = scrap("rebuilt")?;
        let contents = copy.snapshot(&plain.0, |_, _| Ok::<_, store::Failure>(()))?;
        whole(plain, contents)
    }
}

/// The name of a backup that holds what could be read of a damaged journal.
fn said_damaged(target: &Path) -> PathBuf {
    let name = target.file_name().unwrap_or_default().to_string_lossy();
    let end = name.find(".zip").or_else(|| name.rfind('.'));
    let (stem, ending) = name.split_at(end.unwrap_or(name.len()));
    target.with_file_name(format!("{stem}-damaged{ending}"))
}

pub fn ending(kind: Kind) -> &'static str {
    match kind {
        Kind::Jpeg => "jpg",
        Kind::Png => "png",
        Kind::WebP => "webp",
        Kind::Heic => "heic",
        Kind::Avif => "avif",
        Kind::Tiff => "tif",
        Kind::Gif => "gif",
    }
}
