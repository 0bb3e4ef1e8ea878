//! `jar.marc`: what there is to pour on when the marc of a strained jar is covered once more.

use journal::JarId;
use message::Failure;
use reckon::asked;
use reckon::jar::allowed::used_up;
use reckon::jar::judged::Judged;
use reckon::jar::marc::composition;
use reckon::jar::proposal::Composition;
use serde::Deserialize;

use crate::open::Open;
use crate::request::Command;

/// The composition with which the marc of a jar is covered once more.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ComposeMarc {
    pub jar: String,
}

impl Command for ComposeMarc {
    const NAME: &'static str = "jar.marc";
    type Reply = Composition;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let id: JarId = asked::id("jar", &self.jar)?;
        app.read(|reading| {
            let jar = used_up(reading, &id)?;
            let judged = Judged::of(reading, &jar)?;
            composition(reading, &id, &jar, &judged)
        })
    }
}
