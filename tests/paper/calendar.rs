//! The calendar text, read back by a parser that is not the library that wrote it.

use api::Language;
use calcard::icalendar::{ICalendar, ICalendarComponentType, ICalendarProperty, ICalendarValue};
use chrono::{DateTime, Utc};
use paper::calendar::{Entry, Ring, text};

use crate::records::said;

fn stamp() -> DateTime<Utc> {
    "2026-07-01T06:30:00Z".parse().unwrap()
}

fn entries() -> Vec<Entry> {
    vec![
        Entry {
            uid: "strain-tavo-4@trugbook".into(),
            on: "2026-07-10".parse().unwrap(),
            title: said("Strain tavo-4: lemon balm, fresh; press it"),
            text: Some(said(
                "It has steeped 28 days.\nWring it, then measure what came out: glycerin sticks to everything, so let it drip for an hour, näher hinsehen, and write the volume down.",
            )),
            alarm: Some(Ring {
                days_before: 1,
                hour: 18,
            }),
        },
        Entry {
            uid: "bin-nuba-655@trugbook".into(),
            on: "2027-04-01".parse().unwrap(),
            title: said("Use nuba-655 before today"),
            text: None,
            alarm: Some(Ring {
                days_before: 0,
                hour: 8,
            }),
        },
        Entry {
            uid: "check@trugbook".into(),
            on: "2026-12-31".parse().unwrap(),
            title: said("Check \\ the shelf"),
            text: None,
            alarm: None,
        },
    ]
}

fn parsed(text: &str) -> ICalendar {
    ICalendar::parse(text).unwrap_or_else(|error| panic!("{error:?} in\n{text}"))
}

/// The text of a property of one component, where it is one.
fn words(calendar: &ICalendar, at: usize, property: &ICalendarProperty) -> Option<String> {
    let entry = calendar.components[at]
        .entries
        .iter()
        .find(|entry| entry.name == *property)?;
    match entry.values.first()? {
        ICalendarValue::Text(text) => Some(text.clone()),
        other => panic!("{property:?} is no text but {other:?}"),
    }
}

fn of_kind(calendar: &ICalendar, kind: &ICalendarComponentType) -> Vec<usize> {
    (0..calendar.components.len())
        .filter(|at| calendar.components[*at].component_type == *kind)
        .collect()
}

#[test]
fn another_parser_reads_every_entry_back_letter_by_letter() {
    let entries = entries();
    let calendar = parsed(&text(&entries, Language::English, stamp()));
    let events = of_kind(&calendar, &ICalendarComponentType::VEvent);
    assert_eq!(events.len(), entries.len());
    for (at, entry) in events.into_iter().zip(&entries) {
        let read = |property| words(&calendar, at, &property);
        assert_eq!(read(ICalendarProperty::Uid).as_ref(), Some(&entry.uid));
        let told = |message| Language::English.tell(message);
        assert_eq!(read(ICalendarProperty::Summary), Some(told(&entry.title)));
        assert_eq!(
            read(ICalendarProperty::Description),
            entry.text.as_ref().map(told)
        );
    }
}

#[test]
fn days_are_whole_days_and_the_stamp_is_the_one_passed_in() {
    let calendar = parsed(&text(&entries(), Language::English, stamp()));
    let first = of_kind(&calendar, &ICalendarComponentType::VEvent)[0];
    let moment = |property: ICalendarProperty| {
        let entries = &calendar.components[first].entries;
        let entry = entries.iter().find(|entry| entry.name == property);
        match &entry.expect("the property is there").values[0] {
            ICalendarValue::PartialDateTime(moment) => (**moment).clone(),
            other => panic!("{property:?} is no time but {other:?}"),
        }
    };
    let start = moment(ICalendarProperty::Dtstart);
    assert_eq!(
        (start.year, start.month, start.day, start.hour),
        (Some(2026), Some(7), Some(10), None),
        "a date without an hour"
    );
    let written = text(&entries(), Language::English, stamp());
    assert!(
        !written.contains("DTEND"),
        "RFC 5545 3.8.2.2: an end must lie after its start, and a day needs none"
    );
    let made = moment(ICalendarProperty::Dtstamp);
    assert_eq!(
        (made.year, made.hour, made.minute),
        (Some(2026), Some(6), Some(30))
    );
}

#[test]
fn alarms_ring_at_their_hour_before_the_day() {
    let text = text(&entries(), Language::English, stamp());
    let calendar = parsed(&text);
    let alarms = of_kind(&calendar, &ICalendarComponentType::VAlarm);
    let seconds: Vec<i64> = alarms
        .iter()
        .map(|at| {
            let entries = &calendar.components[*at].entries;
            let trigger = entries
                .iter()
                .find(|entry| entry.name == ICalendarProperty::Trigger);
            match &trigger.expect("an alarm has a trigger").values[0] {
                ICalendarValue::Duration(duration) => duration.as_seconds(),
                other => panic!("{other:?}"),
            }
        })
        .collect();
    assert_eq!(
        seconds,
        [-6 * 3600, 8 * 3600],
        "six in the evening before, eight on the day"
    );
}

#[test]
fn lines_are_folded_and_ended_as_the_standard_asks() {
    let text = text(&entries(), Language::English, stamp());
    assert!(text.starts_with("BEGIN:VCALENDAR\r\nVERSION:2.0\r\n"));
    assert!(text.ends_with("END:VCALENDAR\r\n"));
    assert!(
        !text.replace("\r\n", "").contains(['\r', '\n']),
        "every line ends in CR LF"
    );
    for line in text.split("\r\n") {
        assert!(
            line.len() <= 75,
            "RFC 5545 3.1: 75 octets, not {}: {line}",
            line.len()
        );
    }
    assert!(text.contains("\r\n "), "the long description is folded");
}

#[test]
fn the_same_entries_give_the_same_text() {
    assert_eq!(
        text(&entries(), Language::English, stamp()),
        text(&entries(), Language::English, stamp())
    );
}
