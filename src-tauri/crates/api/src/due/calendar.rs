//! `due.calendar`: what is due, for any calendar.

use ::paper::calendar::{Entry, Ring, text};
use chrono::Utc;
use message::{Argument, Failure, say};
use reckon::due::{Due, DueLine, DueWhat};
use serde::Deserialize;

use crate::due::ListDue;
use crate::open::Open;
use crate::printed::PrintedFile;
use crate::request::Command;
use crate::speech::language;

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

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let now = app.now();
        let list = ListDue {
            on: None,
            days: self.days,
            limit: None,
        };
        let Due { due, .. } = list.run(app)?;
        if due.is_empty() {
            let days = self.days.unwrap_or(30);
            let message = say!("calendar-empty", days);
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
            text(&entries, language(), now.with_timezone(&Utc)).as_bytes(),
            Vec::new(),
        ))
    }
}

fn entry(line: &DueLine) -> Result<Entry, Failure> {
    let what = Argument::from(line.title.clone());
    let (slug, title) = match line.what {
        DueWhat::Bin => ("bin", say!("calendar-throw-away", what)),
        DueWhat::UseBefore => ("use", say!("calendar-use-up", what)),
        DueWhat::TakeDown => ("take-down", say!("calendar-take-down", what)),
        DueWhat::SeeTo => ("see-to", say!("calendar-see-to", what)),
        DueWhat::PutRight => ("put-right", say!("put-right", name = what)),
        DueWhat::Strain => ("strain", say!("calendar-strain", what)),
        DueWhat::Check => ("check", say!("calendar-check", what)),
        DueWhat::Weigh => ("weigh", say!("calendar-weigh", what)),
        DueWhat::Shake => ("shake", say!("calendar-shake", what)),
    };
    Ok(Entry {
        uid: format!("{slug}-{}@trugbook", line.id),
        on: reckon::asked::date("on", &line.on)?,
        title,
        text: Some(line.text.clone()),
        alarm: (line.harm > 0).then_some(Ring {
            days_before: 0,
            hour: RINGS_AT,
        }),
    })
}
