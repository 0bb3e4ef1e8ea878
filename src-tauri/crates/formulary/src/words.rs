//! Figures as words: no more digits than the interval deserves.

use physics::Interval;

/// A figure with its interval where there is one: "28.6 % vol" or "29 % vol (26 to 32)".
pub(crate) fn interval(range: Interval, unit: &str) -> String {
    let decimals = decimals(range);
    let value = number(range.value, decimals);
    let unit = if unit.is_empty() {
        String::new()
    } else {
        format!(" {unit}")
    };
    let (low, high) = (number(range.low, decimals), number(range.high, decimals));
    if low == high {
        format!("{value}{unit}")
    } else {
        format!("{value}{unit} ({low} to {high})")
    }
}

/// First words of common names that keep their capital inside a sentence.
const NAMES: [&str; 4] = ["American", "German", "Roman", "St"];

/// A common name inside a sentence: "peppermint", but "German chamomile" and "St John's wort".
pub(crate) fn herb(common: &str) -> String {
    let first = common.split(' ').next().unwrap_or_default();
    let mut letters = common.chars();
    match letters.next() {
        Some(letter) if !NAMES.contains(&first) => letter.to_lowercase().chain(letters).collect(),
        _ => common.to_owned(),
    }
}

/// A figure rounded to `decimals`, without trailing zeros.
pub(crate) fn number(value: f64, decimals: usize) -> String {
    let text = format!("{value:.decimals$}");
    let text = if text.contains('.') {
        text.trim_end_matches('0').trim_end_matches('.')
    } else {
        &text
    };
    if text == "-0" {
        "0".to_owned()
    } else {
        text.to_owned()
    }
}

/// An amount in mL or g as it can be measured at home.
pub(crate) fn amount(value: f64) -> String {
    number(value, if value < 10.0 { 1 } else { 0 })
}

fn decimals(range: Interval) -> usize {
    let width = range.high - range.low;
    if range.value.abs() <= 1.0 {
        2
    } else if width >= 2.0 || range.value >= 100.0 {
        0
    } else {
        1
    }
}

/// "a, b and c".
pub(crate) fn list(items: &[String]) -> String {
    match items {
        [] => String::new(),
        [one] => one.clone(),
        [rest @ .., last] => format!("{} and {last}", rest.join(", ")),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::herbs;

    #[test]
    fn a_name_keeps_its_capital_where_it_is_a_name() {
        for herb_of in herbs::all() {
            let said = herb(&herb_of.common);
            let rest = said.split_once(' ').map_or("", |(_, rest)| rest);
            let is_name = NAMES.iter().any(|name| said.starts_with(name));
            assert!(is_name || said == said.to_lowercase(), "{said}");
            assert!(!rest.starts_with(char::is_uppercase) || is_name, "{said}");
        }
        assert_eq!(herb("St John's wort"), "St John's wort");
        assert_eq!(herb("Lemon balm"), "lemon balm");
    }

    #[test]
    fn an_interval_shows_only_the_digits_it_deserves() {
        assert_eq!(interval(Interval::exact(28.64), "% vol"), "28.6 % vol");
        assert_eq!(
            interval(Interval::spanning(28.64, 25.9, 32.2), "% vol"),
            "29 % vol (26 to 32)"
        );
        assert_eq!(
            interval(Interval::spanning(0.842, 0.81, 0.871), ""),
            "0.84 (0.81 to 0.87)"
        );
        assert_eq!(number(70.0, 1), "70");
    }
}
