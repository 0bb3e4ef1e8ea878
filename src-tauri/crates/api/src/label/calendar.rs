//! `due.calendar`: what is due, for any calendar.

use ::label::calendar::{Entry, Ring, text};
use chrono::Utc;
use message::{Argument, Message};
use serde::Deserialize;

use super::PrintedFile;
use crate::due::{Due, DueLine, DueWhat, ListDue};
use crate::speech::said;
use crate::{App, Command, Failure};

/// What is due in the days ahead, 30 unless said otherwise, as an iCalendar file (RFC 5545).
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct ExportDue {
    pub days: Option<u32>,
}

/// The hour at which an entry rings, where something can spoil or hurt.
const RINGS_AT: u32 = 8;

impl Command for ExportDue {
    const NAME: &'static str = "due.calendar";
    type Reply = PrintedFile;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let now = app.now();
        let list = ListDue {
            on: None,
            days: self.days,
            limit: None,
        };
        let Due { due, .. } = list.run(app)?;
        if due.is_empty() {
            let days = self.days.unwrap_or(30);
            let message = format!(
                "Nothing is due within {days} days, so there is nothing to put into a calendar."
            );
            return Err(Failure::invalid("days", message));
        }
        let entries: Result<Vec<Entry>, Failure> = due.iter().map(entry).collect();
        let today = now.date_naive();
        let entries: Vec<Entry> = entries?
            .into_iter()
            .map(|entry| Entry {
                // A calendar shows nobody what stands before today.
                on: entry.on.max(today),
                ..entry
            })
            .collect();
        Ok(PrintedFile::new(
            format!("trugbook-due-{today}.ics"),
            "text/calendar",
            text(&entries, now.with_timezone(&Utc)).as_bytes(),
            Vec::new(),
        ))
    }
}

fn entry(line: &DueLine) -> Result<Entry, Failure> {
    let (slug, what) = match line.what {
        DueWhat::Bin => ("bin", "Throw away"),
        DueWhat::UseBefore => ("use", "Use up"),
        DueWhat::TakeDown => ("take-down", "Take down"),
        DueWhat::SeeTo => ("see-to", "See to"),
        DueWhat::PutRight => ("put-right", ""),
        DueWhat::Strain => ("strain", "Strain"),
        DueWhat::Check => ("check", "Check"),
        DueWhat::Weigh => ("weigh", "Weigh"),
        DueWhat::Shake => ("shake", "Shake"),
    };
    Ok(Entry {
        uid: format!("{slug}-{}@trugbook", line.id),
        on: crate::asked::date("on", &line.on)?,
        title: if line.what == DueWhat::PutRight {
            let name = Argument::own(line.title.as_str());
            said(&String::from(Message::new("put-right").with("name", name)))
        } else {
            said(&format!("{what}: {}", line.title))
        },
        text: said(&line.text),
        alarm: (line.harm > 0).then_some(Ring {
            days_before: 0,
            hour: RINGS_AT,
        }),
    })
}
