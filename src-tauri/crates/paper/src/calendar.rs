//! Days to remember as an iCalendar text (RFC 5545) that other calendars take in.

use chrono::{DateTime, NaiveDate, TimeDelta, Utc};
use icalendar::{Alarm, Calendar, Component, Event, EventLike, Trigger};
use message::Message;
use words::Language;

/// One all-day entry.
#[derive(Debug, Clone, PartialEq)]
pub struct Entry {
    /// The same entry exported again must carry the same, so that calendars replace it.
    pub uid: String,
    /// The day.
    pub on: NaiveDate,
    /// One line.
    pub title: Message,
    /// The rest, where there is more to say.
    pub text: Option<Message>,
    /// When to ring, where it should.
    pub alarm: Option<Ring>,
}

/// When an entry rings, by the wall clock of whoever reads the calendar.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Ring {
    /// Days before the entry's day.
    pub days_before: u32,
    /// The hour, 0 to 23.
    pub hour: u32,
}

/// The entries as one calendar in a language; `stamp` says when the text was made.
///
/// Entries are whole days without a time zone, so they stand on the same day wherever the phone is carried.
#[must_use]
pub fn text(entries: &[Entry], language: Language, stamp: DateTime<Utc>) -> String {
    let mut calendar = Calendar::empty();
    calendar.append_property(("VERSION", "2.0"));
    let maker = format!("-//Trugbook//Trugbook//{}", language.tag().to_uppercase());
    calendar.append_property(("PRODID", maker.as_str()));
    calendar.append_property(("CALSCALE", "GREGORIAN"));
    for entry in entries {
        let title = language.tell(&entry.title);
        let mut event = Event::with_uid(&entry.uid);
        // A day without an end lasts that day (RFC 5545 3.6.1); an end would have to lie after it.
        event.timestamp(stamp).starts(entry.on).summary(&title);
        // A day to remember is no time taken.
        event.add_property("TRANSP", "TRANSPARENT");
        if let Some(text) = &entry.text {
            event.description(&language.tell(text));
        }
        if let Some(ring) = entry.alarm {
            let before = TimeDelta::hours(i64::from(ring.hour))
                - TimeDelta::days(i64::from(ring.days_before));
            let mut alarm = Alarm::display(&title, Trigger::after_start(before));
            // Left out, the library would fill these from the clock and by chance.
            alarm.uid(&format!("{}-ring", entry.uid)).timestamp(stamp);
            event.alarm(alarm);
        }
        calendar.push(event.done());
    }
    calendar.to_string()
}
