//! `jar.correct` and `jar.fail`: what the maker says about a jar; its recipe stays as poured.

use journal::{Failed, Jar, JarId};

use super::page::page;
use super::wire::{CorrectJar, FailJar, JarWritten};
use crate::wire::Changed;
use crate::{App, Command, Failure, asked};

impl Command for CorrectJar {
    const NAME: &'static str = "jar.correct";
    type Reply = JarWritten;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let id: JarId = asked::id("id", &self.id)?;
        let (done, ()) = app.perform(|writing| {
            let mut jar = writing.get::<Jar>(&id)?;
            if let Some(name) = self.name {
                jar.name = name.trim().to_owned();
            }
            asked::corrected(&mut jar.place, self.place);
            asked::corrected(&mut jar.note, self.note);
            writing.correct(&id, &jar)?;
            Ok((format!("Corrected {} ({})", jar.name, jar.code), ()))
        })?;
        written(app, done, &id)
    }
}

impl Command for FailJar {
    const NAME: &'static str = "jar.fail";
    type Reply = JarWritten;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let id: JarId = asked::id("id", &self.id)?;
        let at = asked::past("at", None, app.now())?;
        let (done, ()) = app.perform(|writing| {
            let mut jar = writing.get::<Jar>(&id)?;
            jar.failed = Some(Failed {
                at,
                reason: self.reason.trim().to_owned(),
            });
            writing.correct(&id, &jar)?;
            Ok((format!("Gave up {} ({})", jar.name, jar.code), ()))
        })?;
        written(app, done, &id)
    }
}

pub(super) fn written(app: &App, done: Changed, id: &JarId) -> Result<JarWritten, Failure> {
    let jar = app.read_back(|reading| page(app, reading, id))?;
    Ok(JarWritten { done, jar })
}
