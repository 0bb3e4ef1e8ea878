use super::*;
use crate::preparations::PlantState::{Dried, Fresh};
use crate::preparations::{self, find};

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
fn ten_degrees_double_the_ageing_and_cold_adds_nothing() {
    let (label, from) = (day("2027-07-01"), day("2026-07-01"));
    let lasts = |temperature_c| oil_lasts_until(label, from, temperature_c).unwrap();
    // oils_oxidation-026, -027: 12 months at 20 C are 8.485 at 25 C and 6 at 30 C; 365 days here.
    assert_eq!((lasts(25.0) - from).num_days(), 258);
    assert_eq!((lasts(30.0) - from).num_days(), 182);
    assert_eq!(lasts(10.0), label);
    assert!(oil_lasts_until(label, from, 60.0).is_err());
    assert_eq!(
        oil_lasts_until(from, label, 30.0).unwrap(),
        from,
        "past its date"
    );
}

#[test]
fn an_oil_says_how_it_ages_unless_only_the_calendar_counts() {
    let of = |state, label| {
        let oil = find("oil", state).unwrap();
        oil_ageing(oil, state, label, day("2026-07-01"))
    };
    let told = of(Dried, Some(day("2027-07-01"))).unwrap();
    assert!(
        told.text.to_string().contains("2026-12-30"),
        "{}",
        told.text
    );
    assert_eq!(of(Dried, None).unwrap().text.id(), "oil-label-missing");
    assert_eq!(of(Fresh, Some(day("2027-07-01"))), None);
}

#[test]
fn an_acidified_oil_goes_by_the_label_of_its_oil() {
    let oil = preparations::all()
        .iter()
        .find(|one| one.key == "oil-acidified")
        .unwrap();
    let (days, note) = best_before_days(oil, Verdict::KeepsCold);
    assert!(days.is_none() && note.source.is_some(), "{note:?}");
    let dated = |label| dates(oil, Verdict::KeepsCold, day("2026-07-01"), label);
    let label = Some(day("2027-01-01"));
    assert_eq!(dated(label).stop_using, label);
    assert_eq!(dated(label).check_on, None, "no smell test is ever offered");
    assert_eq!(dated(None).stop_using, None);
}

#[test]
fn an_oil_of_damp_herb_is_looked_at_within_a_week() {
    let oil = find("oil", Dried).unwrap();
    let dates = dates(
        oil,
        Verdict::UseNow,
        day("2026-07-01"),
        Some(day("2027-01-01")),
    );
    assert_eq!(dates.stop_using, None, "a label promises nothing for it");
    assert_eq!((dates.check_on.unwrap() - dates.strain_to).num_days(), 7);
}

#[test]
fn what_has_no_figure_says_so() {
    let tincture = find("tincture", Dried).unwrap();
    let (days, note) = best_before_days(tincture, Verdict::KeepsCold);
    assert!(days.is_none());
    assert_eq!(note.text.id(), "best-before-colder");
}
