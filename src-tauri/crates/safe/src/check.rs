//! `journal.check` and `journal.begin_check`: reads everything that is kept, says what is wrong and
//! mends what can be mended.

use archive::Progress;
use journal::{Noun, Photo};
use message::{Argument, Failure, Message, say};
use serde::{Deserialize, Serialize};
use store::Fault;

use crate::folder::{JOURNAL, Keep, Scrap, WORK, held, stopped};

/// Under this key the journal remembers when all of it was last read.
pub const CHECKED: &str = "checked";

/// Something that is wrong with the book.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct BookFault {
    /// A finished sentence.
    pub what: String,
    /// The entry, the photo or the file.
    #[serde(rename = "where")]
    pub place: String,
    /// Whether it is right again.
    pub mended: bool,
}

/// What a look at everything found.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct BookChecked {
    pub faults: Vec<BookFault>,
}

/// When everything was last looked at, and what was left unmended.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct LastCheck {
    pub at: String,
    pub faults: u64,
}

/// How long a book goes without being read as a whole (a proposal; nobody published one).
const DAYS: i64 = 30;
/// A book with fewer entries is read at a glance by its maker.
const FEW: u64 = 20;

/// Whether it is time to read all of it, given when that was last done.
pub fn is_due(
    last: Option<&LastCheck>,
    deeds: u64,
    now: chrono::DateTime<chrono::FixedOffset>,
) -> bool {
    let last = last.and_then(|last| chrono::DateTime::parse_from_rfc3339(&last.at).ok());
    // A clock that was set back does not put it off.
    let is_long_ago = |at| journal::days_since(at, now).abs() >= DAYS;
    deeds >= FEW && last.is_none_or(is_long_ago)
}

pub fn checked(
    keep: &Keep,
    progress: &Progress,
    stop: impl Fn() -> bool + Send + Clone + 'static,
    name: &str,
    now: &str,
) -> Result<BookChecked, Failure> {
    let size = std::fs::metadata(keep.folder.join(JOURNAL)).map_or(0, |meta| meta.len());
    progress.expect(size);
    let mut door = keep.door()?;
    door.stopped_by(stop.clone())?;
    let mut faults: Vec<BookFault> = door.check_log()?.into_iter().map(told).collect();
    // From a log that lost something no table is made anew: it may hold what the log lost.
    if faults.is_empty() {
        let beside = Scrap(keep.beside(WORK)?.join(format!("check-{name}")));
        if let Some(fault) = door.check_tables(&beside.0, stop)? {
            let is_mended = held(&keep.writer).rebuild().is_ok();
            faults.push(BookFault {
                mended: is_mended,
                ..told(fault)
            });
        }
        let uneven = door.uneven()?;
        faults.extend(uneven.into_iter().map(|what| BookFault {
            what: what.into(),
            place: String::from(say!("check-in-the-ledger")),
            mended: false,
        }));
    }
    progress.advance(size).map_err(|_| stopped())?;
    photos(keep, progress, &door, &mut faults)?;
    door.unstopped()?;
    let last = LastCheck {
        at: now.to_owned(),
        faults: faults.iter().filter(|fault| !fault.mended).count() as u64,
    };
    if let Ok(text) = serde_json::to_string(&last) {
        held(&keep.writer).note(CHECKED, &text)?;
    }
    Ok(BookChecked { faults })
}

/// A fault in words.
pub fn told(fault: Fault) -> BookFault {
    let log = || String::from(say!("check-in-the-log"));
    let (what, place) = match fault {
        Fault::File(said) => (
            say!("check-file-damaged", detail = Argument::own(said)),
            JOURNAL.to_owned(),
        ),
        Fault::Changed(text) => (say!("check-entry-changed"), text),
        Fault::Unreadable(number) => (
            say!("check-entry-unreadable", number = number.unsigned_abs()),
            log(),
        ),
        Fault::Missing(count) => (say!("check-entries-missing", count = count), log()),
        Fault::Tables => (
            say!("check-tables-differ"),
            String::from(say!("check-in-the-lists")),
        ),
    };
    BookFault {
        what: what.into(),
        place,
        mended: false,
    }
}

/// Every photo that is named, and every one that is there, against its hash.
fn photos(
    keep: &Keep,
    progress: &Progress,
    door: &store::Store,
    faults: &mut Vec<BookFault>,
) -> Result<(), Failure> {
    let there = keep.photos.hashes()?;
    for hash in &there {
        let file = keep.photos.original(hash)?;
        progress.expect(
            file.and_then(|file| file.metadata().ok())
                .map_or(0, |meta| meta.len()),
        );
    }
    let mut named = std::collections::BTreeMap::new();
    door.each_row(Noun::Photo, |id, body| {
        let photo: Option<Photo> = serde_json::from_str(body).ok();
        named.insert(id.to_owned(), photo.and_then(|photo| photo.name));
        Ok::<_, Failure>(())
    })?;
    let mut fault = |what: Message, hash: &str, name: Option<&String>| {
        faults.push(BookFault {
            what: what.into(),
            place: name.cloned().unwrap_or_else(|| hash.to_owned()),
            mended: false,
        });
    };
    for hash in &there {
        let id = hash.to_string();
        let name = named.remove(&id).flatten();
        let bytes = keep.photos.original(hash)?;
        let bytes = bytes
            .and_then(|file| file.metadata().ok())
            .map_or(0, |meta| meta.len());
        if !keep.photos.is_whole(hash)? {
            fault(say!("check-photo-changed"), &id, name.as_ref());
        }
        progress.advance(bytes).map_err(|_| stopped())?;
    }
    for (id, name) in &named {
        fault(say!("check-photo-missing"), id, name.as_ref());
    }
    Ok(())
}
