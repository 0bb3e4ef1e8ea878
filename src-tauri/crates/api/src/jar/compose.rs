//! `jar.compose`: what to pour, live while the maker moves the figures.

use message::Failure;
use reckon::jar::compose::Composed;
use reckon::jar::proposal::{Composition, Proposal};

use crate::open::Open;
use crate::request::Command;

impl Command for Composition {
    const NAME: &'static str = "jar.compose";
    type Reply = Proposal;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let today = app.now().date_naive();
        app.read(|reading| Composed::of(reading, &self)?.proposal(reading, today))
    }
}
