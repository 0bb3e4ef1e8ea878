//! The one way in: which journal is open, the maker's own or the demo season's, and the calls that go there;
//! `demo.begin` and `demo.end`.

use std::fs;
use std::io::Read;
use std::path::Path;
use std::sync::{Arc, LazyLock, Mutex};

use ::words::Language;
use disk::Disk;
use message::{Code, Failure, Message, say};
use safe::folder::held;
use serde::Serialize;

use crate::clock::{Clock, StandingClock};
use crate::command;
use crate::demo::season::Season;
use crate::demo::{GONE, PART, SEASON, clear, opened, tell, unusable};
use crate::file::MadeFile;
use crate::open::Open;
use crate::photo::Picture;
use crate::reply::answered_in;
use crate::request::{Command, bare_request};

/// The maker's own journal, and the demo season that may lie over it.
pub struct App {
    own: Open,
    demo: Mutex<Option<Arc<Open>>>,
    /// Held while the season is being told, which happens once at a time.
    telling: Mutex<()>,
}

/// Nouns of commands that concern the maker's own book and nothing invented.
const OF_THE_OWN_BOOK: [&str; 6] = ["backup", "restore", "merge", "export", "import", "rescue"];

bare_request!(
    /// Opens the demo season in the place of the maker's own book, which stays as it is.
    BeginDemo
);

bare_request!(
    /// Removes the demo season with all that was written into it and opens the own book again.
    EndDemo
);

/// Which of the two is open now.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct DemoShown {
    pub demo: bool,
}

impl Command<App> for BeginDemo {
    const NAME: &'static str = "demo.begin";
    type Reply = DemoShown;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        // The own book stays in use while the season is being told.
        let _telling = held(&app.telling);
        if app.shown().is_some() {
            return Err(Failure::new(Code::Invalid, say!("demo-open-already")));
        }
        let folder = &app.own.keep.folder;
        clear(folder)?;
        tell(&app.own, &folder.join(PART))?;
        fs::rename(folder.join(PART), folder.join(SEASON)).map_err(unusable)?;
        let season = opened(folder, &app.own.clock, &app.own.keep.disk)?;
        *held(&app.demo) = Some(season);
        Ok(DemoShown { demo: true })
    }
}

impl Command<App> for EndDemo {
    const NAME: &'static str = "demo.end";
    type Reply = DemoShown;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let folder = &app.own.keep.folder;
        let mut shown = held(&app.demo);
        if shown.is_none() {
            return Err(Failure::new(Code::NotFound, say!("demo-not-open")));
        }
        // Renamed first: a kill while the files go leaves no half of a journal to be opened.
        fs::rename(folder.join(SEASON), folder.join(GONE)).map_err(unusable)?;
        *shown = None;
        clear(folder)?;
        Ok(DemoShown { demo: false })
    }
}

impl App {
    /// Opens the journal in `folder`, or begins one there.
    ///
    /// # Errors
    /// [`Failure`] of code `storage` when the folder cannot be used.
    pub fn open(folder: &Path, clock: Box<dyn Clock>) -> Result<Self, Failure> {
        Self::open_on(folder, clock, Disk::default())
    }

    /// As [`App::open`], writing all files but the journal itself by way of `disk`.
    ///
    /// # Errors
    /// As [`App::open`].
    pub fn open_on(folder: &Path, clock: Box<dyn Clock>, disk: Disk) -> Result<Self, Failure> {
        let app = Self {
            own: Open::own(folder, clock, disk)?,
            demo: Mutex::default(),
            telling: Mutex::default(),
        };
        if app.own.keep.lost().is_none() {
            app.reopen_demo();
        }
        Ok(app)
    }

    /// The demo season while it is open.
    fn shown(&self) -> Option<Arc<Open>> {
        held(&self.demo).clone()
    }

    /// The demo season that was open when the app was closed.
    fn reopen_demo(&self) {
        let folder = &self.own.keep.folder;
        // What cannot be cleared now is cleared at the next opening; the own book is not held up by it.
        let _ = clear(folder);
        if folder.join(SEASON).is_dir() {
            *held(&self.demo) = opened(folder, &self.own.clock, &self.own.keep.disk).ok();
        }
    }

    /// The demo season where a command concerns it; where it has no say, a refusal.
    fn concerned(&self, name: &str) -> Result<Option<Arc<Open>>, Failure> {
        let demo = self.shown();
        let noun = name.split_once('.').map_or(name, |(noun, _)| noun);
        if demo.is_some() && OF_THE_OWN_BOOK.contains(&noun) {
            return Err(Failure::new(Code::Invalid, say!("demo-not-mixed")));
        }
        Ok(demo)
    }

    /// Marks the journal as one that was filled from the demonstration data.
    ///
    /// # Errors
    /// A [`Failure`] when it cannot be written.
    pub fn mark_as_demo(&self) -> Result<(), Failure> {
        self.own.mark_as_demo()
    }

    /// What is wrong with the journal and its photos, a sentence for each; nothing when all is well.
    ///
    /// # Errors
    /// A [`Failure`] when they cannot be read.
    pub fn faults(&self) -> Result<Vec<Message>, Failure> {
        self.own.faults()
    }

    /// Keeps a photo that a host streams in; the reply is that of an upload, as JSON.
    ///
    /// # Errors
    /// A [`Failure`] when it is no photo or could not be kept; nothing was kept then.
    pub fn take_photo(&self, from: impl Read, name: Option<&str>) -> Result<String, Failure> {
        let demo = self.shown();
        demo.as_deref().unwrap_or(&self.own).take_photo(from, name)
    }

    /// The original of a photo; `None` when there is none of this name.
    ///
    /// # Errors
    /// A [`Failure`] when `hash` is no name of a photo or the file cannot be read.
    pub fn original(&self, hash: &str) -> Result<Option<Picture>, Failure> {
        let demo = self.shown();
        demo.as_deref().unwrap_or(&self.own).original(hash)
    }

    /// The upright preview of a photo; `None` when there is none.
    ///
    /// # Errors
    /// A [`Failure`] when `hash` is no name of a photo or the file cannot be read.
    pub fn thumb(&self, hash: &str) -> Result<Option<Picture>, Failure> {
        let demo = self.shown();
        demo.as_deref().unwrap_or(&self.own).thumb(hash)
    }

    /// A file that `backup.make` or `export.make` made without being told where; `None` when
    /// there is none of this name.
    pub fn made(&self, name: &str) -> Option<MadeFile> {
        self.own.made(name)
    }
}

impl Season {
    /// Tells the season to `app`, whose clock `clock` is, and returns how many deeds it was.
    /// `picture` opens a photo by its name, or says that it is to be left out.
    ///
    /// # Errors
    /// A sentence that names the deed that was refused.
    pub fn tell<R: Read>(
        &self,
        app: &App,
        clock: &StandingClock,
        picture: impl Fn(&str) -> Result<Option<R>, String>,
    ) -> Result<usize, String> {
        self.tell_to(&app.own, clock, picture)
    }
}

/// Carries out the command `name` with `request` (a JSON object) and returns the reply as JSON, in English.
///
/// # Errors
/// A [`Failure`] when there is no such command, the request cannot be read or it was refused.
pub fn call(app: &App, name: &str, request: &str) -> Result<String, Failure> {
    call_in(app, Language::English, name, request)
}

/// As [`call`], with the core's own sentences in `language`.
///
/// # Errors
/// As [`call`].
pub fn call_in(
    app: &App,
    language: Language,
    name: &str,
    request: &str,
) -> Result<String, Failure> {
    answered_in(language, || carried(app, name, request))
}

/// As [`call`], but the reply still carries its messages: they are said by [`crate::spoken`].
///
/// # Errors
/// As [`call`].
pub fn carried(app: &App, name: &str, request: &str) -> Result<String, Failure> {
    answers(&app.own, name)?;
    match name {
        BeginDemo::NAME => command::answer::<BeginDemo, App>(app, request),
        EndDemo::NAME => command::answer::<EndDemo, App>(app, request),
        _ => {
            let demo = app.concerned(name)?;
            command::carried(demo.as_deref().unwrap_or(&app.own), name, request)
        }
    }
}

/// The name of every command, those of the demo season last.
pub fn names() -> &'static [&'static str] {
    static ALL: LazyLock<Vec<&str>> =
        LazyLock::new(|| [command::NAMES, &[BeginDemo::NAME, EndDemo::NAME]].concat());
    &ALL
}

/// The TypeScript module that describes every command, its request and its reply.
#[cfg(feature = "ts")]
pub fn bindings() -> String {
    let mut module = crate::bindings::Module::default();
    command::describe(&mut module);
    module.command::<BeginDemo, App>();
    module.command::<EndDemo, App>();
    module.text()
}

/// Nouns of commands that are answered although there is no journal.
const ANSWERED: [&str; 4] = ["restore", "rescue", "job", "file"];

/// Refuses what needs a journal while there is none.
pub(crate) fn answers(app: &Open, name: &str) -> Result<(), Failure> {
    let noun = name.split('.').next().unwrap_or_default();
    if app.keep.lost().is_none() || ANSWERED.contains(&noun) || name == "setting.show" {
        return Ok(());
    }
    Err(Failure::new(Code::Lost, say!("book-lost")))
}
