//! When to strain, to check, to stop using.

use chrono::{Days, NaiveDate};
use physics::{Interval, OutOfRange, mixture::oil, quantity::celsius};

use crate::{
    note::{Note, Status, source_of},
    preparations::{Preparation, Solvent, Verdict},
};

const DAYS_IN_A_MONTH: f64 = 30.44;

/// How long it keeps from straining, days: the shorter figure counts, with the note that says where
/// it comes from. None where no figure was found; the note then says that.
pub fn best_before_days(preparation: &Preparation, verdict: Verdict) -> (Option<Interval>, Note) {
    let span = |low: f64, high: f64, source: &str, status| {
        let note = Note {
            code: "best-before".to_owned(),
            text: "It keeps for the shorter of these times; look at it now and then.".to_owned(),
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
    let nothing = |text: &str| (None, Note::new("best-before", text, "", Status::Practice));
    let best = preparation.best.unwrap_or(Verdict::Keeps);
    match verdict {
        Verdict::DoNotMake => nothing("It is not made, so there is no date."),
        Verdict::UseNow => match &preparation.use_within_days {
            Some(days) => span(days.low, days.high, &days.source, days.status),
            None => {
                nothing("Treat it as fresh food: cold, and used within days; no figure was found.")
            }
        },
        Verdict::KeepsCold if best == Verdict::Keeps && preparation.use_within_days.is_none() => {
            nothing("Keep it cold and use it sooner; by how much was not found.")
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
                (None, None) => {
                    nothing("No shelf life was found: date it and look at it every month.")
                }
            }
        }
    }
}

/// Where and how an oil stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Conditions {
    /// Temperature of the place, C.
    pub temperature_c: f64,
    /// Whether light falls on it.
    pub in_light: bool,
}

/// Months that an oil has left, from the months its own label gives it at 20 C in the dark.
///
/// `months(t) = months(20 C) 2^((20 - t)/10)`, see [`oil::months_at`]. In light no figure can
/// be given: light outruns temperature.
///
/// # Errors
/// [`OutOfRange`] outside 5 to 40 C.
///
/// *Source*: Q10 = 2 from activation energies of a study in 16 laboratories (rapeseed 58.2,
/// sunflower 46.8 kJ/mol); light below 50 kJ/mol, JAOCS 89:577 (2012).
pub fn oil_months(label_months: f64, conditions: Conditions) -> Result<(f64, Note), OutOfRange> {
    let months = oil::months_at(label_months, celsius(conditions.temperature_c))?;
    let (text, status) = if conditions.in_light {
        (
            "Light ages an oil faster than warmth does; by how much depends on the light, so count this as the most.",
            Status::PartlyConfirmed,
        )
    } else {
        (
            "An oil ages twice as fast for every 10 C: counted from the date on its own label, dark and closed.",
            Status::Computed,
        )
    };
    let source = "16-laboratory study of oxidation; JAOCS 89:577 (2012) for light";
    Ok((months, Note::new("oil-ageing", text, source, status)))
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
    let after = |day: NaiveDate, days: f64| {
        day.checked_add_days(Days::new(days.max(0.0) as u64))
            .unwrap_or(day)
    };
    let strain_from = after(poured_on, preparation.steep_days.low.ceil());
    let strain_to = after(poured_on, preparation.steep_days.high.ceil());
    let counted_from = if verdict == Verdict::UseNow {
        poured_on
    } else {
        strain_to
    };
    let (days, _) = best_before_days(preparation, verdict);
    let by_kind = days.map(|days| after(counted_from, days.value));
    let stop_using = match (by_kind, oil_best_before) {
        (Some(kind), Some(oil)) if preparation.grade == Solvent::Oil => Some(kind.min(oil)),
        (kind, _) => kind,
    };
    let check_on = match (verdict, stop_using) {
        (Verdict::Keeps | Verdict::KeepsCold, Some(stop)) => {
            let half = (stop - strain_to).num_days() / 2;
            Some(after(strain_to, half as f64))
        }
        (Verdict::KeepsCold, None) => Some(after(strain_to, DAYS_IN_A_MONTH)),
        _ => None,
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

/// What is said of the two things that lengthen a shelf life, as practice and not as fact.
pub fn modifiers(preparation: &Preparation) -> Vec<Note> {
    let mut notes = Vec::new();
    if preparation.grade == Solvent::Oil {
        notes.push(Note::new("rosemary-extract", "Rosemary extract is added to slow rancidity; by how much was not found, and it does nothing against botulism.", "", Status::Practice));
    }
    if preparation.fortify.is_some() {
        notes.push(Note::new(
            "fortify",
            "About 10 % alcohol lengthens the life of a glycerite; by how much was not found.",
            "King's 1898: glycerin solutions grow organisms unless some alcohol is added",
            Status::Practice,
        ));
    }
    notes
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::preparations::PlantState::{Dried, Fresh};
    use crate::preparations::find;

    fn day(text: &str) -> NaiveDate {
        text.parse().unwrap()
    }

    #[test]
    fn fresh_oil_stops_on_the_fourth_day() {
        let oil = find("oil", Fresh).unwrap();
        let dates = dates(
            oil,
            Verdict::UseNow,
            day("2026-07-01"),
            Some(day("2027-01-01")),
        );
        assert_eq!(dates.stop_using, Some(day("2026-07-05")));
        assert_eq!(dates.check_on, None, "no smell test is ever offered");
    }

    #[test]
    fn an_oil_never_outlives_its_own_label() {
        let oil = find("oil", Dried).unwrap();
        let dates = dates(
            oil,
            Verdict::Keeps,
            day("2026-07-01"),
            Some(day("2026-10-01")),
        );
        assert_eq!(dates.stop_using, Some(day("2026-10-01")));
        assert!(dates.check_on.unwrap() < day("2026-10-01"));
    }

    #[test]
    fn a_tincture_is_strained_within_its_weeks() {
        let tincture = find("tincture", Dried).unwrap();
        let dates = dates(tincture, Verdict::Keeps, day("2026-07-01"), None);
        assert_eq!(dates.strain_from, day("2026-07-11"));
        assert_eq!(dates.strain_to, day("2026-07-29"));
        assert_eq!(
            dates.stop_using,
            Some(day("2029-07-28")),
            "36 months, practice"
        );
    }

    #[test]
    fn ten_degrees_double_the_ageing() {
        // oils_oxidation-023, -026: 12 months at 20 C are 24 at 10 C and 8.485 at 25 C.
        let dark = |temperature_c| Conditions {
            temperature_c,
            in_light: false,
        };
        assert!((oil_months(12.0, dark(10.0)).unwrap().0 - 24.0).abs() < 0.001);
        assert!((oil_months(12.0, dark(25.0)).unwrap().0 - 8.485).abs() < 0.001);
        assert!(oil_months(12.0, dark(60.0)).is_err());
    }

    #[test]
    fn what_has_no_figure_says_so() {
        let tincture = find("tincture", Dried).unwrap();
        let (days, note) = best_before_days(tincture, Verdict::KeepsCold);
        assert!(days.is_none() && note.text.contains("not found"));
    }
}
