//! `due.list`: what asks for the maker, across garden, rack and pantry.

mod put_right;

use std::collections::BTreeMap;
use std::collections::btree_map::Entry;

use chrono::{DateTime, Days, Duration, FixedOffset, NaiveDate};
use formulary::preparations::{Solvent, Verdict};
use journal::{JarState, Source, days_since};
use message::{Argument, Message};
use serde::{Deserialize, Serialize};
use store::Reading;

pub use put_right::DueChoice;
pub(crate) use put_right::put_right_text;

use crate::harvest::OwnBatches;
use crate::herb::Known;
use crate::jar::{Judged, preparation_named};
use crate::trace::midnight;
use crate::tray::{Run, card_of};
use crate::wire::Noun;
use crate::{App, Command, Failure, asked, words};

/// Everything that is due by a day, today if none is named, and in the days after it.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct ListDue {
    pub on: Option<String>,
    pub days: Option<u32>,
    /// At most so many lines, the first that there are; what is counted counts them all.
    pub limit: Option<u32>,
}

/// What is to be done.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum DueWhat {
    #[serde(rename = "bin")]
    Bin,
    #[serde(rename = "use before")]
    UseBefore,
    #[serde(rename = "take down")]
    TakeDown,
    #[serde(rename = "see to")]
    SeeTo,
    /// More was taken of it than there was: say which of the line's choices is true.
    #[serde(rename = "put right")]
    PutRight,
    #[serde(rename = "strain")]
    Strain,
    #[serde(rename = "check")]
    Check,
    #[serde(rename = "weigh")]
    Weigh,
    #[serde(rename = "shake")]
    Shake,
}

/// One thing to do. Harm: 3 it can hurt somebody, 2 a batch is lost, 1 it grows worse, 0 habit.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct DueLine {
    pub what: DueWhat,
    pub on: String,
    pub overdue_days: u32,
    pub harm: u8,
    pub noun: Noun,
    pub id: String,
    pub title: String,
    pub text: String,
    /// The hour, where the day alone is too coarse: the next weigh-in of a tray.
    pub at: Option<String>,
    /// What may be true of it, where the book cannot know.
    pub choices: Vec<DueChoice>,
}

/// The answer to [`ListDue`], by harm and then by day.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Due {
    pub due: Vec<DueLine>,
    pub in_all: usize,
    /// How many of all ask for the maker by the day itself.
    pub now: usize,
    /// How many of those can hurt somebody.
    pub harmful_now: usize,
}

impl Command for ListDue {
    const NAME: &'static str = "due.list";
    type Reply = Due;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let today = match &self.on {
            Some(day) => asked::date("on", day)?,
            None => app.now().date_naive(),
        };
        let days = self.days.unwrap_or(30);
        if days > 3660 {
            let message = format!("The days ahead must be at most 3660; {days} is not.");
            return Err(Failure::invalid("days", message));
        }
        let until = later(today, u64::from(days));
        app.read(|reading| {
            let mut list = List {
                today,
                until,
                lines: Vec::new(),
            };
            list.below_nothing(reading)?;
            list.fresh(reading, *app.now().offset())?;
            list.trays(app, reading)?;
            list.jars(reading, app.now())?;
            list.bottles(reading)?;
            let mut due = list.lines;
            let today = today.to_string();
            due.sort_by(|a, b| {
                (3 - a.harm, &a.on, a.what, &a.title, &a.id).cmp(&(
                    3 - b.harm,
                    &b.on,
                    b.what,
                    &b.title,
                    &b.id,
                ))
            });
            let now = due.iter().filter(|line| line.on <= today);
            let (now, harmful_now) = now.fold((0, 0), |(now, harmful), line| {
                (now + 1, harmful + usize::from(line.harm == 3))
            });
            let in_all = due.len();
            if let Some(limit) = self.limit {
                due.truncate(usize::try_from(limit).unwrap_or(usize::MAX));
            }
            Ok(Due {
                due,
                in_all,
                now,
                harmful_now,
            })
        })
    }
}

/// The last day of a jar's liquid that keeps for days only; nothing for one that keeps.
fn last_day(
    reading: &Reading<'_>,
    jar: &journal::Jar,
    judged: &Judged,
    strained_on: NaiveDate,
) -> Result<Option<NaiveDate>, Failure> {
    if judged.poured.keeping.verdict != Verdict::UseNow {
        return Ok(None);
    }
    Ok(judged.dates(reading, jar, strained_on)?.best_before)
}

fn later(day: NaiveDate, days: u64) -> NaiveDate {
    day.checked_add_days(Days::new(days)).unwrap_or(day)
}

/// On which day after the picking fresh plant is asked about, and until which it may still be
/// saved: a heap of it wilts and heats within hours (common practice, no source).
const SEEN_TO_AFTER: u64 = 1;
const PAST_SAVING_AFTER: u64 = 3;

struct List {
    today: NaiveDate,
    until: NaiveDate,
    lines: Vec<DueLine>,
}

/// What a line is about.
struct About<'a> {
    noun: Noun,
    id: String,
    title: &'a str,
    at: Option<String>,
}

impl List {
    fn add(&mut self, what: DueWhat, on: NaiveDate, harm: u8, about: &About<'_>, text: String) {
        if on > self.until {
            return;
        }
        let overdue = (self.today - on).num_days().max(0);
        self.lines.push(DueLine {
            what,
            on: on.to_string(),
            overdue_days: u32::try_from(overdue).unwrap_or_default(),
            harm,
            noun: about.noun,
            id: about.id.clone(),
            title: about.title.to_owned(),
            text,
            at: about.at.clone(),
            choices: Vec::new(),
        });
    }

    /// What was picked goes onto the rack, into a jar or away.
    fn fresh(&mut self, reading: &Reading<'_>, offset: FixedOffset) -> Result<(), Failure> {
        let before = midnight(later(self.until, 1), offset);
        for row in reading.fresh_left(before)? {
            let common = Known::written(reading, &row.herb)?.common;
            let title = format!("{common} ({})", row.code);
            let about = About {
                noun: Noun::Harvest,
                id: row.id.to_string(),
                title: &title,
                at: None,
            };
            let picked = DateTime::from_timestamp_millis(row.picked_ms).unwrap_or_default();
            let picked = picked.with_timezone(&offset).date_naive();
            let grams = words::figure(row.left.get());
            let (harm, text) = if self.today > later(picked, PAST_SAVING_AFTER) {
                let text =
                    format!("By the book {grams} g of it are still fresh: say what became of it.");
                (1, text)
            } else {
                let text = format!(
                    "{grams} g of it are still fresh: lay it out to dry, pour on it or throw it away before it heats and spoils."
                );
                (2, text)
            };
            let on = later(picked, SEEN_TO_AFTER);
            self.add(DueWhat::SeeTo, on, harm, &about, text);
        }
        Ok(())
    }

    /// Trays are weighed when it is worth the walk, and taken down once they are dry.
    fn trays(&mut self, app: &App, reading: &Reading<'_>) -> Result<(), Failure> {
        let mut own = OwnBatches::default();
        for row in reading.trays_drying()? {
            let started_at = row.tray.started_at;
            let run = Run::among(reading, row, &mut own)?;
            let tray = card_of(&run, app.now());
            let title = format!("{}, {}", tray.common, tray.name);
            let about = About {
                noun: Noun::Tray,
                id: tray.id,
                title: &title,
                at: tray.weigh_at.clone(),
            };
            let last = run
                .last_weighed()
                .map_or(started_at, |(_, at)| at)
                .date_naive();
            if tray.is_dry {
                let text = format!(
                    "It is dry: take it down at {:.0} g.",
                    tray.stop_gross_g.value
                );
                self.add(DueWhat::TakeDown, last, 2, &about, text);
            } else if tray.probably_dry {
                let text = Message::new("tray-try-the-snap-test")
                    .with("stop", Argument::grams(tray.stop_gross_g.value));
                self.add(DueWhat::TakeDown, last, 1, &about, text.into());
            } else {
                let on = tray.weigh_at.as_deref().and_then(|at| at.get(..10));
                let on = on.and_then(|day| day.parse().ok());
                let ends = run.ends_hours().filter(|_| !tray.forgotten);
                // A tray whose end can be told is worth a reminder; the others are looked at anyway.
                let harm = u8::from(tray.forgotten || ends.is_some());
                let text = ends
                    .and_then(|ends| self.dry_enough(started_at, ends))
                    .unwrap_or_else(|| words::sentence(&tray.says));
                self.add(
                    DueWhat::Weigh,
                    on.unwrap_or_else(|| later(last, 1)),
                    harm,
                    &about,
                    text,
                );
            }
        }
        Ok(())
    }

    /// Between which days a tray will be dry enough; nothing where they are past.
    fn dry_enough(
        &self,
        started_at: DateTime<FixedOffset>,
        ends: physics::Interval,
    ) -> Option<String> {
        let day = |hours: f64| (started_at + Duration::minutes((60.0 * hours) as i64)).date_naive();
        let (from, to) = (day(ends.low), day(ends.high));
        let text = if from <= self.today {
            format!("Dry enough by {to}, nine times out of ten.")
        } else {
            format!("Dry enough between {from} and {to}, nine times out of ten.")
        };
        (to >= self.today).then_some(text)
    }

    fn jars(&mut self, reading: &Reading<'_>, now: DateTime<FixedOffset>) -> Result<(), Failure> {
        for (id, jar) in reading.jars_standing()? {
            let about = About {
                noun: Noun::Jar,
                id: id.to_string(),
                title: &jar.name,
                at: None,
            };
            let (from, to) = jar.due();
            let judged = Judged::of(reading, &jar)?;
            let can_hurt = judged.only_the_date_counts;
            let last = last_day(reading, &jar, &judged, from)?;
            if can_hurt && last.is_some_and(|last| self.today > last) {
                // It is not strained any more, nor shaken.
                self.use_by(last.unwrap_or(from), can_hurt, true, &about);
                continue;
            }
            let mut text = if self.today > to {
                format!("It has stood longer than its time, which ended on {to}.")
            } else if from == to {
                format!("Strain it on {from}.")
            } else {
                format!("Strain it between {from} and {to}.")
            };
            if let Some(last) = last {
                text.push_str(&format!(" What comes out keeps until {last} only."));
            }
            // Fresh plant in oil is not left standing beyond its days.
            let harm = if can_hurt {
                3
            } else {
                1 + u8::from(last.is_some())
            };
            self.add(DueWhat::Strain, from, harm, &about, text);
            if jar.shake && jar.state(false, self.today) == JarState::Steeping {
                let shaken = reading.shakes(&id)?;
                let last = shaken
                    .last()
                    .map(|(_, shake)| shake.at.with_timezone(now.offset()));
                // Poured today it is wet all over; from tomorrow on it is shaken daily.
                let next = later(last.unwrap_or(jar.poured_at).date_naive(), 1);
                let day = days_since(jar.poured_at, now).max(0);
                self.add(
                    DueWhat::Shake,
                    next,
                    0,
                    &about,
                    format!("Day {day}: shake it."),
                );
            }
        }
        for (id, jar) in reading.jars_unbottled()? {
            let read = reading.ph_of(&id)?;
            let judged = Judged::with_ph(reading, &jar, read.as_ref())?;
            let strained = reading.strainings(&id)?;
            let Some((_, first)) = strained.first() else {
                continue;
            };
            let not_acid = read.filter(|read| !read.ph.is_acid_enough());
            let last = last_day(reading, &jar, &judged, first.at.date_naive())?;
            if last.is_none() && not_acid.is_none() {
                continue;
            }
            let rest = reading.left(Source::Jar(id))?.get();
            let title = format!(
                "{}, the {} mL left in the jar",
                jar.name,
                words::figure(rest)
            );
            let about = About {
                noun: Noun::Jar,
                id: id.to_string(),
                title: &title,
                at: None,
            };
            if let Some(read) = not_acid {
                self.not_acid(read.at.date_naive(), &about);
            } else if let Some(last) = last {
                self.use_by(last, judged.only_the_date_counts, true, &about);
            }
        }
        Ok(())
    }

    /// Use it before its date; once that is past, throw away what can hurt.
    fn use_by(&mut self, last: NaiveDate, can_hurt: bool, soon: bool, about: &About<'_>) {
        if can_hurt && self.today > last {
            let text = format!(
                "Its date was {last}: botulism cannot be seen, smelt or tasted, so throw it away."
            );
            self.add(DueWhat::Bin, later(last, 1), 3, about, text);
        } else {
            let harm = if can_hurt { 3 } else { 1 + u8::from(soon) };
            self.add(
                DueWhat::UseBefore,
                last,
                harm,
                about,
                format!("Use it by {last}."),
            );
        }
    }

    /// How many days it keeps was not found, so it is due from the day on which its pH was read.
    fn not_acid(&mut self, read_on: NaiveDate, about: &About<'_>) {
        let text = format!(
            "It may not be acid enough to keep, by the pH that was read on {read_on}: keep it cold and use it within days, or throw it away."
        );
        self.add(DueWhat::UseBefore, read_on, 3, about, text);
    }

    fn bottles(&mut self, reading: &Reading<'_>) -> Result<(), Failure> {
        let mut behind = BTreeMap::new();
        for bottle in reading.bottles_due(self.until.max(self.today))? {
            let next = bottle.next_check;
            let (name, is_oil) = match behind.entry(bottle.jar) {
                Entry::Occupied(known) => known.into_mut(),
                Entry::Vacant(place) => {
                    let (name, preparation, is_fresh) = reading.jar_named(&bottle.jar)?;
                    let known = preparation_named(&preparation, is_fresh);
                    place.insert((name, known.is_some_and(|it| it.grade == Solvent::Oil)))
                }
            };
            let title = format!("{name} ({})", bottle.code);
            let about = About {
                noun: Noun::Bottle,
                id: bottle.id.to_string(),
                title: &title,
                at: None,
            };
            if let Some(on) = bottle.found_bad_on {
                let text = "It was found bad: throw it away.".to_owned();
                self.add(DueWhat::Bin, on, 3, &about, text);
                continue;
            }
            if let Some(on) = bottle.not_acid_on {
                self.not_acid(on, &about);
                continue;
            }
            // Once its last day has come nobody needs to look at it any more.
            let ends_first =
                |day: NaiveDate| next.is_none_or(|next| next >= day || self.today >= day);
            match (bottle.best_before, next) {
                (Some(day), _) if ends_first(day) => {
                    self.use_by(day, bottle.only_the_date_counts, false, &about);
                }
                (_, Some(day)) => {
                    // Most oils are for the skin, and the nose finds a rancid one.
                    let text = if *is_oil {
                        "Look at it and smell it."
                    } else {
                        "Look at it, smell it and taste a drop."
                    };
                    let text = text.to_owned();
                    self.add(DueWhat::Check, day, 1, &about, text);
                }
                _ => {}
            }
        }
        Ok(())
    }
}
