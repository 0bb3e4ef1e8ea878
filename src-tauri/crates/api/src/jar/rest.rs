//! `jar.empty`: the rest of a strained jar that no bottle took.

use journal::{Discard, DiscardId, JarId, Source};
use serde::{Deserialize, Serialize};
use store::Reading;

use super::correct::written;
use super::judged::Judged;
use super::life::refuse_failed;
use super::wire::JarWritten;
use crate::discard::WentTo;
use crate::{App, Command, Failure, asked, words};

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

/// A part of the strained liquid that no bottle took.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct RestLine {
    pub id: String,
    pub at: String,
    pub ml: f64,
    pub went_to: WentTo,
    pub reason: Option<String>,
}

impl Command for EmptyJar {
    const NAME: &'static str = "jar.empty";
    type Reply = JarWritten;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
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
            refuse_failed(&jar, "emptied")?;
            let strainings = writing.strainings(&id)?;
            let Some((_, first)) = strainings.first() else {
                let message = format!("{} is not strained yet; strain it first.", jar.name);
                return Err(Failure::invalid("jar", message));
            };
            if used {
                let judged = Judged::of(writing, &jar)?;
                let last = judged.dates(writing, &jar, first.at.date_naive())?.best_before;
                if judged.only_the_date_counts && last.is_some_and(|last| at.date_naive() > last) {
                    let message = "Fresh herb in oil is not used beyond its date, for botulism cannot be seen, smelt or tasted; throw it away.";
                    return Err(Failure::invalid("went_to", message));
                }
            }
            let left = writing.left(Source::Jar(id))?.get();
            let ml = self.ml.unwrap_or(left);
            if left <= 0.0 {
                let message = format!("Nothing is left in {}.", jar.name);
                return Err(Failure::invalid("jar", message));
            }
            if !ml.is_finite() || ml <= 0.0 || ml > left + 0.001 {
                let (left, ml) = (words::figure(left), words::figure(ml));
                let message = format!(
                    "What left the jar must be more than 0 mL and at most the {left} mL that are in it; {ml} mL is not."
                );
                return Err(Failure::invalid("ml", message));
            }
            let discard = Discard { from: Source::Jar(id), amount: ml.min(left), at, reason, used };
            writing.record(&entry, &discard)?;
            let told = self.went_to.told();
            let text = format!("{told} {} mL of {} ({})", words::figure(ml), jar.name, jar.code);
            Ok((text, ()))
        })?;
        written(app, done, &id)
    }
}

/// What of the strained liquid no bottle took.
pub(super) fn rests(reading: &Reading<'_>, id: &JarId) -> Result<Vec<RestLine>, Failure> {
    let discards = reading.discards(Source::Jar(*id))?.into_iter();
    let lines = discards.map(|(id, it)| RestLine {
        id: id.to_string(),
        at: it.at.to_rfc3339(),
        ml: it.amount,
        went_to: WentTo::of(&it),
        reason: it.reason,
    });
    Ok(lines.collect())
}
