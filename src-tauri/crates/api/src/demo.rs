//! The demo season: an invented garden to look around in.
//!
//! It is a journal of its own in a folder of its own beside the maker's, so the two cannot mix: while
//! it is open every call and every photo goes there, and removing it removes the folder. Its clock
//! begins where the season ends, so that what is due in it stays due whenever it is looked at.

pub(crate) mod season;

use std::fs;
use std::path::Path;
use std::sync::Arc;

use chrono::{DateTime, FixedOffset, TimeDelta};
use disk::Disk;
use message::{Argument, Code, Failure, say};
use safe::folder::held;

use crate::clock::{Clock, StandingClock};
use crate::demo::season::Season;
use crate::open::Open;

/// The open demo season.
pub(crate) const SEASON: &str = "demo";
/// One that is still being told; left behind only by a kill.
pub(crate) const PART: &str = "demo-part";
/// One that is being removed.
pub(crate) const GONE: &str = "demo-gone";

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

pub(crate) fn tell(app: &Open, folder: &Path) -> Result<(), Failure> {
    let season = Season::read().map_err(untold)?;
    let clock = Arc::new(StandingClock::at(season.begins_at()));
    let demo = Open::opened_as(folder, clock.clone(), app.keep.disk.clone(), true)?;
    // The season is drawn rather than photographed: pictures would weigh more than the rest of the app's data.
    season
        .tell_to(&demo, &clock, |_| Ok(None::<std::io::Empty>))
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
        Ok((say!("deed-demo-begun"), ()))
    })?;
    Ok(())
}

pub(crate) fn opened(
    folder: &Path,
    clock: &Arc<dyn Clock>,
    disk: &Disk,
) -> Result<Arc<Open>, Failure> {
    let folder = folder.join(SEASON);
    let still = Open::opened_as(&folder, clock.clone(), disk.clone(), true)?;
    let latest = held(&still.keep.reader).latest()?;
    let now = clock.now();
    let by = latest.map_or(TimeDelta::zero(), |latest| {
        TimeDelta::milliseconds(latest.milliseconds - now.timestamp_millis())
    });
    let own = clock.clone();
    drop(still);
    let moved: Arc<dyn Clock> = Arc::new(MovedClock { own, by });
    Open::opened_as(&folder, moved, disk.clone(), true).map(Arc::new)
}

pub(crate) fn clear(folder: &Path) -> Result<(), Failure> {
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

pub(crate) fn unusable(error: std::io::Error) -> Failure {
    let why = Argument::own(error.to_string());
    Failure::new(Code::Storage, say!("demo-folder-unusable", why))
}

fn untold(why: String) -> Failure {
    Failure::new(
        Code::Storage,
        say!("demo-not-set-up", why = Argument::own(why)),
    )
}
