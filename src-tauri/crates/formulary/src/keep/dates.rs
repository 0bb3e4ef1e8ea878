//! When to strain, to check, to stop using.

use chrono::{Days, NaiveDate};
use message::{Message, say};
use physics::{Interval, OutOfRange, mixture::oil, quantity::celsius};

use crate::{
    note::{Note, Status, source_of},
    preparations::{PlantState, Preparation, Solvent, Verdict},
};

const DAYS_IN_A_MONTH: f64 = 30.44;
const DAYS_IN_A_WEEK: f64 = 7.0;

/// How long it keeps from straining, days: the shorter figure counts, with the note that says where
/// it comes from. None where no figure was found; the note then says that.
pub fn best_before_days(preparation: &Preparation, verdict: Verdict) -> (Option<Interval>, Note) {
    let span = |low: f64, high: f64, source: &str, status| {
        let note = Note {
            code: "best-before".to_owned(),
            text: if source.is_empty() {
                say!("best-before-habit")
            } else {
                say!("best-before-shorter")
            },
            source: source_of(source),
            status,
        };
        (
            Some(Interval {
                low,
                value: low,
                high,
            }),
            note,
        )
    };
    let nothing = |text: Message| (None, Note::new("best-before", text, "", Status::Practice));
    if let (Some(soak), Verdict::Keeps | Verdict::KeepsCold, None) =
        (&preparation.soak, verdict, &preparation.shelf_months)
    {
        let text = say!("best-before-acidified-oil");
        return (
            None,
            Note::new("best-before", text, &soak.source, soak.status),
        );
    }
    let best = preparation.best.unwrap_or(Verdict::Keeps);
    match verdict {
        Verdict::DoNotMake => nothing(say!("best-before-not-made")),
        Verdict::UseNow => match &preparation.use_within_days {
            Some(days) => span(days.low, days.high, &days.source, days.status),
            None => nothing(say!("best-before-fresh-food")),
        },
        Verdict::KeepsCold if best == Verdict::Keeps && preparation.use_within_days.is_none() => {
            nothing(say!("best-before-colder"))
        }
        Verdict::Keeps | Verdict::KeepsCold => {
            match (&preparation.shelf_months, &preparation.use_within_days) {
                (Some(months), _) => span(
                    (months.low * DAYS_IN_A_MONTH).floor(),
                    (months.high * DAYS_IN_A_MONTH).floor(),
                    &months.source,
                    months.status,
                ),
                (None, Some(days)) => span(days.low, days.high, &days.source, days.status),
                (None, None) => nothing(say!("best-before-unknown")),
            }
        }
    }
}

/// The last day of an oil that stands at `temperature_c` from a day on, by the date on its own label.
///
/// `days(t) = days(20 C) 2^((20 - t)/10)`, see [`oil::months_at`]: the days that the label leaves are
/// days at 20 C in the dark. Cold makes it no younger than its label.
///
/// # Errors
/// [`OutOfRange`] outside 5 to 40 C.
///
/// *Source*: Q10 = 2 from activation energies of a study in 16 laboratories (rapeseed 58.2,
/// sunflower 46.8 kJ/mol).
///
/// ```
/// use formulary::keep::oil_lasts_until;
/// let (label, from) = ("2027-03-11".parse().unwrap(), "2026-12-01".parse().unwrap());
/// assert_eq!(oil_lasts_until(label, from, 30.0)?, "2027-01-20".parse().unwrap());
/// assert_eq!(oil_lasts_until(label, from, 10.0)?, label);
/// # Ok::<(), physics::OutOfRange>(())
/// ```
pub fn oil_lasts_until(
    label: NaiveDate,
    from: NaiveDate,
    temperature_c: f64,
) -> Result<NaiveDate, OutOfRange> {
    let left = (label - from).num_days().max(0) as f64;
    let faster = oil::months_at(1.0, celsius(temperature_c))?;
    Ok(label.min(after(from, left * faster)))
}

/// How an oil ages from a day on where it stands, counted from the date on its own label.
///
/// Nothing where only the calendar counts: beside the water of a fresh herb the rule does not hold.
pub fn oil_ageing(
    preparation: &Preparation,
    state: PlantState,
    label: Option<NaiveDate>,
    from: NaiveDate,
) -> Option<Note> {
    if preparation.grade != Solvent::Oil || state == PlantState::Fresh {
        return None;
    }
    let Some(label) = label else {
        let text = say!("oil-label-missing");
        return Some(Note::new("oil-ageing", text, "", Status::Practice));
    };
    let at = |temperature_c| oil_lasts_until(label, from, temperature_c).ok();
    let text = say!("oil-ageing", label, warm = at(25.0)?, hot = at(30.0)?);
    let source = "A study of oxidation in 16 laboratories (twice as fast for each 10 °C); Journal of the American Oil Chemists' Society 89:577, 2012 (light)";
    Some(Note::new("oil-ageing", text, source, Status::Computed))
}

fn after(day: NaiveDate, days: f64) -> NaiveDate {
    day.checked_add_days(Days::new(days.max(0.0) as u64))
        .unwrap_or(day)
}

/// The dates of a jar.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Dates {
    /// First day to strain.
    pub strain_from: NaiveDate,
    /// Last day of the usual time.
    pub strain_to: NaiveDate,
    /// When to look at it, smell it where that is safe, taste it.
    pub check_on: Option<NaiveDate>,
    /// When to stop using it; none where no figure was found.
    pub stop_using: Option<NaiveDate>,
}

/// The dates of a jar poured on a day.
///
/// An oil stops at the earlier of its preparation's time and its own label (`oil_best_before`);
/// fresh plant in oil counts from the day of pouring.
pub fn dates(
    preparation: &Preparation,
    verdict: Verdict,
    poured_on: NaiveDate,
    oil_best_before: Option<NaiveDate>,
) -> Dates {
    let strain_from = after(poured_on, preparation.steep_days.low.ceil());
    let strain_to = after(poured_on, preparation.steep_days.high.ceil());
    let counted_from = if verdict == Verdict::UseNow {
        poured_on
    } else {
        strain_to
    };
    let (days, _) = best_before_days(preparation, verdict);
    let by_kind = days.map(|days| after(counted_from, days.value));
    let keeps = verdict <= Verdict::KeepsCold;
    let oil = oil_best_before.filter(|_| preparation.grade == Solvent::Oil);
    let stop_using = match (by_kind, oil) {
        (Some(kind), Some(oil)) => Some(kind.min(oil)),
        (None, Some(oil)) if keeps => Some(oil),
        (kind, _) => kind,
    };
    let check_on = match stop_using {
        Some(stop) if keeps => {
            let half = (stop - strain_to).num_days() / 2;
            Some(after(strain_to, half as f64))
        }
        Some(_) => None,
        None if keeps => Some(after(strain_to, DAYS_IN_A_MONTH)),
        // What has no figure and does not keep is looked at like fresh food that was set aside.
        None => (verdict == Verdict::UseNow).then(|| after(strain_to, DAYS_IN_A_WEEK)),
    }
    // Against botulism only the calendar counts, so no look and no sniff is asked for.
    .filter(|_| preparation.soak.is_none());
    Dates {
        strain_from,
        strain_to,
        check_on,
        stop_using,
    }
}

/// How long it keeps once strained, and what that rests on.
#[derive(Debug, Clone, PartialEq, serde::Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ShelfLife {
    /// Days; none where no figure was found.
    pub days: Option<Interval>,
    /// Where the figure comes from or why there is none, how an oil ages, what lengthens it.
    pub notes: Vec<Note>,
}

/// How long a preparation keeps; of an oil also how it ages from `from` on by its own label.
pub fn shelf_life(
    preparation: &Preparation,
    verdict: Verdict,
    state: PlantState,
    oil_label: Option<NaiveDate>,
    from: NaiveDate,
) -> ShelfLife {
    let (days, note) = best_before_days(preparation, verdict);
    let mut notes = vec![note];
    if verdict != Verdict::DoNotMake {
        notes.extend(oil_ageing(preparation, state, oil_label, from));
        notes.extend(modifiers(preparation));
    }
    ShelfLife { days, notes }
}

/// What is said of the two things that lengthen a shelf life, as practice and not as fact.
pub fn modifiers(preparation: &Preparation) -> Vec<Note> {
    let mut notes = Vec::new();
    if preparation.grade == Solvent::Oil {
        notes.push(Note::new(
            "rosemary-extract",
            say!("rosemary-extract"),
            "",
            Status::Practice,
        ));
    }
    if preparation.fortify.is_some() {
        notes.push(Note::new(
            "fortify",
            say!("fortified-keeps-longer"),
            "Glycerita, King's American Dispensatory, 1898",
            Status::Practice,
        ));
    }
    notes
}

#[cfg(test)]
mod tests;
