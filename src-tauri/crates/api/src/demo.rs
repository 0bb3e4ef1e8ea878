//! The demo season: an invented garden to look around in, `demo.begin` and `demo.end`.
//!
//! It is a journal of its own in a folder of its own beside the maker's, so the two cannot mix: while
//! it is open every call and every photo goes there, and removing it removes the folder. Its clock
//! begins where the season ends, so that what is due in it stays due whenever it is looked at.

mod season;

use std::fs;
use std::path::Path;
use std::sync::{Arc, Mutex};

use chrono::{DateTime, FixedOffset, TimeDelta};
use disk::Disk;
use serde::Serialize;

pub use season::Season;

use crate::app::held;
use crate::wire::bare_request;
use crate::{App, Clock, Code, Command, Failure, StandingClock};

/// The open demo season.
const SEASON: &str = "demo";
/// One that is still being told; left behind only by a kill.
const PART: &str = "demo-part";
/// One that is being removed.
const GONE: &str = "demo-gone";

/// Nouns of commands that concern the maker's own book and nothing invented.
const OF_THE_OWN_BOOK: [&str; 6] = ["backup", "restore", "merge", "export", "import", "rescue"];

const OPEN_ALREADY: &str = "The demo season is open already.";

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

/// The demo season of an app.
#[derive(Default)]
pub(crate) struct Shown {
    open: Mutex<Option<Arc<App>>>,
    /// Held while the season is being told, which happens once at a time.
    telling: Mutex<()>,
}

/// The own clock, moved by so much.
struct MovedClock {
    own: Arc<dyn Clock>,
    by: TimeDelta,
}

impl Clock for MovedClock {
    fn now(&self) -> DateTime<FixedOffset> {
        let now = self.own.now();
        now.checked_add_signed(self.by).unwrap_or(now)
    }
}

impl Command for BeginDemo {
    const NAME: &'static str = "demo.begin";
    type Reply = DemoShown;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        if app.is_demo {
            return Err(Failure::new(Code::Invalid, OPEN_ALREADY));
        }
        // The own book stays in use while the season is being told.
        let _telling = held(&app.demo.telling);
        if app.demo().is_some() {
            return Err(Failure::new(Code::Invalid, OPEN_ALREADY));
        }
        let folder = &app.keep.folder;
        clear(folder)?;
        tell(app, &folder.join(PART))?;
        fs::rename(folder.join(PART), folder.join(SEASON)).map_err(unusable)?;
        let season = opened(folder, &app.clock, &app.keep.disk)?;
        *held(&app.demo.open) = Some(season);
        Ok(DemoShown { demo: true })
    }
}

impl Command for EndDemo {
    const NAME: &'static str = "demo.end";
    type Reply = DemoShown;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let folder = &app.keep.folder;
        let mut shown = held(&app.demo.open);
        if shown.is_none() {
            let message = "The demo season is not open, so there is nothing to remove.";
            return Err(Failure::new(Code::NotFound, message));
        }
        // Renamed first: a kill while the files go leaves no half of a journal to be opened.
        fs::rename(folder.join(SEASON), folder.join(GONE)).map_err(unusable)?;
        *shown = None;
        clear(folder)?;
        Ok(DemoShown { demo: false })
    }
}

impl App {
    /// The demo season while it is open.
    pub(crate) fn demo(&self) -> Option<Arc<App>> {
        held(&self.demo.open).clone()
    }

    /// The demo season that was open when the app was closed.
    pub(crate) fn reopen_demo(&self) {
        let folder = &self.keep.folder;
        // What cannot be cleared now is cleared at the next opening; the own book is not held up by it.
        let _ = clear(folder);
        if folder.join(SEASON).is_dir() {
            *held(&self.demo.open) = opened(folder, &self.clock, &self.keep.disk).ok();
        }
    }
}

/// The open journal that a command concerns: the demo season's or, where that has no say, a refusal.
pub(crate) fn concerned(app: &App, name: &str) -> Result<Option<Arc<App>>, Failure> {
    let Some(demo) = app.demo() else {
        return Ok(None);
    };
    if name == EndDemo::NAME {
        return Ok(None);
    }
    if name
        .split_once('.')
        .is_some_and(|(noun, _)| OF_THE_OWN_BOOK.contains(&noun))
    {
        return Err(Failure::new(
            Code::Invalid,
            "This is the demo season, which is never mixed with your own book. Remove it first; your own book is as you left it.",
        ));
    }
    Ok(Some(demo))
}

fn tell(app: &App, folder: &Path) -> Result<(), Failure> {
    let season = Season::read().map_err(untold)?;
    let clock = Arc::new(StandingClock::at(season.begins_at()));
    let demo = App::opened_as(folder, clock.clone(), app.keep.disk.clone(), true)?;
    // The season is drawn rather than photographed: pictures would weigh more than the rest of the app's data.
    season
        .tell(&demo, &clock, |_| Ok(None::<std::io::Empty>))
        .map_err(untold)?;
    let own = app.read(|reading| Ok(reading.setting()?))?;
    demo.perform(|writing| {
        let setting = journal::Setting {
            demo: true,
            maker: None,
            poison_line: None,
            ..own
        };
        writing.record(&writing.device(), &setting)?;
        Ok(("Began the demo season".to_owned(), ()))
    })?;
    Ok(())
}

fn opened(folder: &Path, clock: &Arc<dyn Clock>, disk: &Disk) -> Result<Arc<App>, Failure> {
    let folder = folder.join(SEASON);
    let still = App::opened_as(&folder, clock.clone(), disk.clone(), true)?;
    let latest = held(&still.keep.reader).latest()?;
    let now = clock.now();
    let by = latest.map_or(TimeDelta::zero(), |latest| {
        TimeDelta::milliseconds(latest.milliseconds - now.timestamp_millis())
    });
    let own = clock.clone();
    drop(still);
    let moved: Arc<dyn Clock> = Arc::new(MovedClock { own, by });
    App::opened_as(&folder, moved, disk.clone(), true).map(Arc::new)
}

fn clear(folder: &Path) -> Result<(), Failure> {
    for name in [PART, GONE] {
        match fs::remove_dir_all(folder.join(name)) {
            Err(error) if error.kind() != std::io::ErrorKind::NotFound => {
                return Err(unusable(error));
            }
            _ => {}
        }
    }
    Ok(())
}

fn unusable(error: std::io::Error) -> Failure {
    let message = format!("The folder of the demo season cannot be used: {error}.");
    Failure::new(Code::Storage, message)
}

fn untold(why: String) -> Failure {
    Failure::new(
        Code::Storage,
        format!("The demo season could not be told. {why}"),
    )
}
