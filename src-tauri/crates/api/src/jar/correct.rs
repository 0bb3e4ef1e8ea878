//! `jar.correct` and `jar.fail`: what the maker says about a jar; its recipe stays as poured.

use journal::{Failed, Jar, JarId};
use message::{Argument, Failure, say};
use reckon::asked;
use serde::Deserialize;

use crate::jar::page::{JarWritten, written};
use crate::open::Open;
use crate::request::Command;

/// A change to a jar's name, place or note; what is left out stays.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct CorrectJar {
    pub id: String,
    pub name: Option<String>,
    pub place: Option<String>,
    pub note: Option<String>,
}

/// A batch failed.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct FailJar {
    pub id: String,
    pub reason: String,
}

impl Command for CorrectJar {
    const NAME: &'static str = "jar.correct";
    type Reply = JarWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let id: JarId = asked::id("id", &self.id)?;
        let (done, _) = app.correct::<Jar>("id", &id, |_, jar| {
            asked::renamed(&mut jar.name, self.name);
            asked::corrected(&mut jar.place, self.place);
            asked::corrected(&mut jar.note, self.note);
            let name = Argument::own(&jar.name);
            Ok(say!("deed-lot-edited", name, code = &jar.code))
        })?;
        written(app, done, &id)
    }
}

impl Command for FailJar {
    const NAME: &'static str = "jar.fail";
    type Reply = JarWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let id: JarId = asked::id("id", &self.id)?;
        let at = asked::past("at", None, app.now())?;
        let (done, _) = app.correct::<Jar>("id", &id, |_, jar| {
            jar.failed = Some(Failed {
                at,
                reason: self.reason.trim().to_owned(),
            });
            let name = Argument::own(&jar.name);
            Ok(say!("deed-jar-failed", name, code = &jar.code))
        })?;
        written(app, done, &id)
    }
}
