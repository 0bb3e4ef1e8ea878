//! `rescue.make`: saves what can be read of a journal that shows damage.

use message::Failure;
use safe::rescue::{RescueReport, rescued};

use crate::open::Open;
use crate::request::{Command, bare_request};

bare_request!(
    /// Saves what can be read of a journal that shows damage, and sets the damaged file aside.
    MakeRescue
);

impl Command for MakeRescue {
    const NAME: &'static str = "rescue.make";
    type Reply = RescueReport;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        app.jobs.rest()?;
        rescued(&app.keep, app.now(), crate::speech::line)
    }
}
