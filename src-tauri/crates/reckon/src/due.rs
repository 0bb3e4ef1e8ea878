//! What is due: by whom it can hurt, then by day.

pub mod put_right;

use std::collections::BTreeMap;
use std::collections::btree_map::Entry;

use chrono::{DateTime, Days, Duration, FixedOffset, NaiveDate};
use formulary::preparations::{Solvent, Verdict};
use journal::{JarState, Noun, Source, days_since};
use message::{Argument, Failure, Message, say};
use serde::Serialize;
use store::Reading;

use crate::day::midnight;
use crate::drying::batches::OwnBatches;
use crate::due::put_right::DueChoice;
use crate::herb::Known;
use crate::jar::judged::{Judged, preparation_named};
use crate::told;
use crate::tray::card::card_of;
use crate::tray::run::Run;

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
    pub title: Message,
    pub text: Message,
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

impl Due {
    /// What is due up to the last of `days`, of which the first is today, and how much of it: at most `limit` lines.
    /// `is_said` knows whether a text is a message in some language.
    pub fn of(
        reading: &Reading<'_>,
        (today, until): (NaiveDate, NaiveDate),
        now: DateTime<FixedOffset>,
        limit: Option<u32>,
        is_said: fn(&Message, &str) -> bool,
    ) -> Result<Self, Failure> {
        let mut list = List {
            today,
            until,
            is_said,
            lines: Vec::new(),
        };
        list.below_nothing(reading)?;
        list.fresh(reading, *now.offset())?;
        list.trays(reading, now)?;
        list.jars(reading, now)?;
        list.bottles(reading)?;
        let mut due = list.lines;
        let today = today.to_string();
        // Letters of the records, which are the same in every language.
        due.sort_by_cached_key(|line| {
            let (title, id) = (line.title.to_string(), line.id.clone());
            (3 - line.harm, line.on.clone(), line.what, title, id)
        });
        let now = due.iter().filter(|line| line.on <= today);
        let (now, harmful_now) = now.fold((0, 0), |(now, harmful), line| {
            (now + 1, harmful + usize::from(line.harm == 3))
        });
        let in_all = due.len();
        if let Some(limit) = limit {
            due.truncate(usize::try_from(limit).unwrap_or(usize::MAX));
        }
        Ok(Due {
            due,
            in_all,
            now,
            harmful_now,
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

pub fn later(day: NaiveDate, days: u64) -> NaiveDate {
    day.checked_add_days(Days::new(days)).unwrap_or(day)
}

/// On which day after the picking fresh plant is asked about, and until which it may still be
/// saved: a heap of it wilts and heats within hours (common practice, no source).
const SEEN_TO_AFTER: u64 = 1;
const PAST_SAVING_AFTER: u64 = 3;

/// What is asked of fresh plant that is no longer what was picked; nothing while it may still be saved, or where none is left.
pub fn past_saving(picked_on: NaiveDate, today: NaiveDate, left_g: f64) -> Option<Message> {
    let is_past = left_g > 0.0 && today > later(picked_on, PAST_SAVING_AFTER);
    is_past.then(|| say!("due-fresh-past", mass = Argument::grams(left_g)))
}

pub struct List {
    today: NaiveDate,
    until: NaiveDate,
    is_said: fn(&Message, &str) -> bool,
    lines: Vec<DueLine>,
}

/// What a line is about.
struct About {
    noun: Noun,
    id: String,
    title: Message,
    at: Option<String>,
}

impl List {
    fn add(&mut self, what: DueWhat, on: NaiveDate, harm: u8, about: &About, text: Message) {
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
            title: about.title.clone(),
            text,
            at: about.at.clone(),
            choices: Vec::new(),
        });
    }

    /// What was picked goes onto the rack, into a jar or away.
    fn fresh(&mut self, reading: &Reading<'_>, offset: FixedOffset) -> Result<(), Failure> {
        let before = midnight(later(self.until, 1), offset);
        for row in reading.fresh_left(before)? {
            let herb = told::herb(&Known::written(reading, &row.herb)?);
            let title = say!("due-herb", herb, code = Argument::own(row.code.to_string()));
            let about = About {
                noun: Noun::Harvest,
                id: row.id.to_string(),
                title,
                at: None,
            };
            let picked = DateTime::from_timestamp_millis(row.picked_ms).unwrap_or_default();
            let picked = picked.with_timezone(&offset).date_naive();
            let (harm, text) = match past_saving(picked, self.today, row.left.get()) {
                Some(text) => (1, text),
                None => (2, say!("due-fresh", mass = Argument::grams(row.left.get()))),
            };
            let on = later(picked, SEEN_TO_AFTER);
            self.add(DueWhat::SeeTo, on, harm, &about, text);
        }
        Ok(())
    }

    /// Trays are weighed when it is worth the walk, and taken down once they are dry.
    fn trays(&mut self, reading: &Reading<'_>, now: DateTime<FixedOffset>) -> Result<(), Failure> {
        let mut own = OwnBatches::default();
        for row in reading.trays_drying()? {
            let started_at = row.tray.started_at;
            let run = Run::among(reading, row, &mut own)?;
            let tray = card_of(&run, now);
            let plant = told::plant_title(&run.known, &run.row.harvest.part);
            // A tray that nobody named is called by its plant, in the language of the day it was laid out.
            let title = match (self.is_said)(&plant, &tray.name) {
                true => plant,
                false => say!(
                    "due-tray",
                    herb = told::herb_of(&tray.herb, &tray.common),
                    tray = Argument::own(tray.name.as_str())
                ),
            };
            let about = About {
                noun: Noun::Tray,
                id: tray.id,
                title,
                at: tray.weigh_at.clone(),
            };
            let last = run
                .last_weighed()
                .map_or(started_at, |(_, at)| at)
                .date_naive();
            if tray.is_dry {
                let text = say!(
                    "due-take-down",
                    stop = Argument::grams(tray.stop_gross_g.value)
                );
                self.add(DueWhat::TakeDown, last, 2, &about, text);
            } else if tray.probably_dry {
                let text = say!(
                    "tray-try-the-snap-test",
                    stop = Argument::grams(tray.stop_gross_g.value)
                );
                self.add(DueWhat::TakeDown, last, 1, &about, text);
            } else {
                let on = tray.weigh_at.as_deref().and_then(|at| at.get(..10));
                let on = on.and_then(|day| day.parse().ok());
                let ends = run.ends_hours().filter(|_| !tray.forgotten);
                // A tray whose end can be told is worth a reminder; the others are looked at anyway.
                let harm = u8::from(tray.forgotten || ends.is_some());
                let text = ends
                    .and_then(|ends| self.dry_enough(started_at, ends))
                    .unwrap_or_else(|| say!("tray-says", says = tray.says));
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
    ) -> Option<Message> {
        let day = |hours: f64| (started_at + Duration::minutes((60.0 * hours) as i64)).date_naive();
        let (from, to) = (day(ends.low), day(ends.high));
        let text = if from <= self.today {
            say!("due-dry-by", to)
        } else {
            say!("due-dry-between", from, to)
        };
        (to >= self.today).then_some(text)
    }

    fn jars(&mut self, reading: &Reading<'_>, now: DateTime<FixedOffset>) -> Result<(), Failure> {
        for (id, jar) in reading.jars_standing()? {
            let about = About {
                noun: Noun::Jar,
                id: id.to_string(),
                title: Message::own(jar.name.as_str()),
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
                say!("due-strain-late", to)
            } else if from == to {
                say!("due-strain-on", from)
            } else {
                say!("due-strain-between", from, to)
            };
            if let Some(last) = last {
                text = say!("due-strain-keeps-only", strain = text, last);
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
                let day = days_since(jar.poured_at, now).max(0).unsigned_abs();
                self.add(DueWhat::Shake, next, 0, &about, say!("due-shake", day));
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
            let title = say!(
                "due-rest",
                jar = Argument::own(jar.name.as_str()),
                ml = Argument::millilitres(rest)
            );
            let about = About {
                noun: Noun::Jar,
                id: id.to_string(),
                title,
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
    fn use_by(&mut self, last: NaiveDate, can_hurt: bool, soon: bool, about: &About) {
        if can_hurt && self.today > last {
            let text = say!("due-throw-away-dated", last);
            self.add(DueWhat::Bin, later(last, 1), 3, about, text);
        } else {
            let harm = if can_hurt { 3 } else { 1 + u8::from(soon) };
            self.add(
                DueWhat::UseBefore,
                last,
                harm,
                about,
                say!("due-use-by", last),
            );
        }
    }

    /// How many days it keeps was not found, so it is due from the day on which its pH was read.
    fn not_acid(&mut self, read_on: NaiveDate, about: &About) {
        let text = say!("due-not-acid", day = read_on);
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
            let title = say!(
                "due-named",
                name = Argument::own(name.as_str()),
                code = Argument::own(bottle.code.to_string())
            );
            let about = About {
                noun: Noun::Bottle,
                id: bottle.id.to_string(),
                title,
                at: None,
            };
            if let Some(on) = bottle.found_bad_on {
                let text = say!("due-found-bad");
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
                        say!("due-look-and-smell")
                    } else {
                        say!("due-look-smell-and-taste")
                    };
                    self.add(DueWhat::Check, day, 1, &about, text);
                }
                _ => {}
            }
        }
        Ok(())
    }
}
