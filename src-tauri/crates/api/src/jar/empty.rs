//! `jar.empty`: the rest of a strained jar that no bottle took.

use journal::{Discard, DiscardId, JarId, Source};
use message::{Argument, Failure, Unit, say};
use reckon::asked;
use reckon::jar::allowed::refuse_failed;
use reckon::jar::judged::Judged;
use serde::Deserialize;

use crate::discard::WentTo;
use crate::jar::page::{JarWritten, written};
use crate::open::Open;
use crate::request::Command;

/// Strained liquid left the jar without a bottle: all that is left of it unless `ml` says less.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct EmptyJar {
    pub jar: String,
    pub went_to: WentTo,
    /// Why, or for what; it must be said of what is thrown away.
    pub reason: Option<String>,
    pub ml: Option<f64>,
    pub at: Option<String>,
}

impl Command for EmptyJar {
    const NAME: &'static str = "jar.empty";
    type Reply = JarWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let id: JarId = asked::id("jar", &self.jar)?;
        let at = asked::past("at", self.at.as_deref(), app.now())?;
        let reason = self.went_to.why(self.reason)?;
        let used = self.went_to == WentTo::Used;
        let entry = DiscardId(app.new_id());
        let (done, ()) = app.perform(|writing| {
            let row = writing
                .jar(&id)
                .map_err(|why| Failure::from(why).renamed("jar"))?;
            let jar = row.jar;
            refuse_failed(&jar)?;
            let strainings = writing.strainings(&id)?;
            let Some((_, first)) = strainings.first() else {
                let message = say!("jar-strain-first", name = Argument::own(jar.name));
                return Err(Failure::invalid("jar", message));
            };
            if used {
                let judged = Judged::of(writing, &jar)?;
                let last = judged
                    .dates(writing, &jar, first.at.date_naive())?
                    .best_before;
                if judged.only_the_date_counts && last.is_some_and(|last| at.date_naive() > last) {
                    return Err(Failure::invalid("went_to", say!("oil-past-its-date")));
                }
            }
            let left = writing.left(Source::Jar(id))?.get();
            let ml = self.ml.unwrap_or(left);
            if left <= 0.0 {
                let message = say!("jar-nothing-left", name = Argument::own(jar.name));
                return Err(Failure::invalid("jar", message));
            }
            if !ml.is_finite() || ml <= 0.0 || ml > left + 0.001 {
                let message = say!(
                    "jar-out-range",
                    left = Argument::tenths(left, Unit::Millilitre),
                    given = Argument::tenths(ml, Unit::Millilitre)
                );
                return Err(Failure::invalid("ml", message));
            }
            let discard = Discard {
                from: Source::Jar(id),
                amount: ml.min(left),
                at,
                reason,
                used,
            };
            writing.record(&entry, &discard)?;
            let (volume, name) = (Argument::millilitres(ml), Argument::own(&jar.name));
            let line = match self.went_to {
                WentTo::Used => say!("deed-liquid-used", volume, name, code = &jar.code),
                WentTo::ThrownAway => {
                    say!("deed-liquid-thrown-away", volume, name, code = &jar.code)
                }
            };
            Ok((line, ()))
        })?;
        written(app, done, &id)
    }
}
