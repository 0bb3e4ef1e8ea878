//! `journal.check` and `journal.begin_check`: reads everything that is kept, says what is wrong and
//! mends what can be mended.

use archive::Progress;
use journal::{Noun, Photo};
use message::{Argument, Message};
use serde::{Deserialize, Serialize};
use store::Fault;

use super::job::{JobBegun, JobOutcome, JobWork};
use super::{JOURNAL, Keep, Scrap, WORK, stopped, told_time};
use crate::app::held;
use crate::wire::bare_request;
use crate::{App, Command, Failure};

/// Under this key the journal remembers when all of it was last read.
pub(super) const CHECKED: &str = "checked";

bare_request!(
    /// Reads the whole book, every table and every photo, and says what is wrong with it.
    CheckJournal
);

bare_request!(
    /// As `journal.check`, as a job: a book of many years takes a while.
    BeginCheck
);

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

impl Command for CheckJournal {
    const NAME: &'static str = "journal.check";
    type Reply = BookChecked;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        app.no_job_runs()?;
        checked(
            &app.keep,
            &Progress::default(),
            || false,
            &app.new_id().to_string(),
            &told_time(app.now()),
        )
    }
}

impl Command for BeginCheck {
    const NAME: &'static str = "journal.begin_check";
    type Reply = JobBegun;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        app.begin(JobWork::Check, |task| {
            let found = checked(
                &task.keep,
                &task.progress,
                task.stop(),
                &task.name,
                &told_time(task.now),
            )?;
            Ok(JobOutcome::Checked(found))
        })
    }
}

/// How long a book goes without being read as a whole (a proposal; nobody published one).
const DAYS: i64 = 30;
/// A book with fewer entries is read at a glance by its maker.
const FEW: u64 = 20;

/// Whether it is time to read all of it, given when that was last done.
pub(super) fn is_due(
    last: Option<&LastCheck>,
    deeds: u64,
    now: chrono::DateTime<chrono::FixedOffset>,
) -> bool {
    let last = last.and_then(|last| chrono::DateTime::parse_from_rfc3339(&last.at).ok());
    // A clock that was set back does not put it off.
    let is_long_ago = |at| journal::days_since(at, now).abs() >= DAYS;
    deeds >= FEW && last.is_none_or(is_long_ago)
}

fn checked(
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
        faults.extend(uneven.into_iter().map(|what| {
            BookFault {
                what: Message::new("check-uneven")
                    .with("said", Argument::message(Message::plain(what)))
                    .into(),
                place: String::from(Message::new("check-in-the-ledger")),
                mended: false,
            }
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
pub(super) fn told(fault: Fault) -> BookFault {
    let log = || String::from(Message::new("check-in-the-log"));
    let (what, place) = match fault {
        Fault::File(said) => (
            Message::new("check-file-damaged").with("detail", Argument::own(said)),
            JOURNAL.to_owned(),
        ),
        Fault::Changed(text) => (Message::new("check-entry-changed"), text),
        Fault::Unreadable(number) => (
            Message::new("check-entry-unreadable")
                .with("number", Argument::count(number.unsigned_abs())),
            log(),
        ),
        Fault::Missing(count) => (
            Message::new("check-entries-missing").with("count", Argument::count(count)),
            log(),
        ),
        Fault::Tables => (
            Message::new("check-tables-differ"),
            String::from(Message::new("check-in-the-lists")),
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
            fault(Message::new("check-photo-changed"), &id, name.as_ref());
        }
        progress.advance(bytes).map_err(|_| stopped())?;
    }
    for (id, name) in &named {
        fault(Message::new("check-photo-missing"), id, name.as_ref());
    }
    Ok(())
}
