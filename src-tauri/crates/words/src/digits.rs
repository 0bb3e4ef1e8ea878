//! The one rule of digits: a number reads alike on the page, in a sentence and on a label (`data/digits.csv`).
//!
//! An interval is told to the power of ten that is at most a third of its width. So its half-width keeps one or two
//! digits, as the *Guide to the expression of uncertainty in measurement* (JCGM 100:2008, 7.2.6) asks, and rounding
//! moves no end by more than a sixth of the width. The step is never so coarse that the value loses its first digit,
//! and never finer than a hundredth. A number without an interval has no width to go by: grams and millilitres are
//! told as a kitchen scale shows them, all others to two or three digits.

/// The three numbers of an amount, cut to the digits that it deserves, with a decimal point; `is_weighed` are grams,
/// millilitres and their thousands.
///
/// ```
/// let [value, low, high] = words::digits(58.43, 57.21, 59.32, false);
/// assert_eq!([&value, &low, &high], ["58.4", "57.2", "59.3"]);
/// ```
#[must_use]
pub fn digits(value: f64, low: f64, high: f64, is_weighed: bool) -> [String; 3] {
    let places = places(value, high - low, is_weighed);
    [value, low, high].map(|number| rounded(number, places))
}

/// Decimal places; less than none where tens or hundreds are told.
fn places(value: f64, width: f64, is_weighed: bool) -> i32 {
    let size = value.abs();
    if width > 0.0 {
        let third = power_of_ten(width / 3.0);
        let first = if size > 0.0 {
            power_of_ten(size)
        } else {
            third
        };
        return -third.min(first).max(-2);
    }
    match size {
        _ if is_weighed => i32::from(size < 20.0),
        _ if size <= 1.0 => 2,
        _ => i32::from(size < 100.0),
    }
}

/// The largest power of ten that is not above a number.
fn power_of_ten(number: f64) -> i32 {
    // A double is written exactly, so a power of ten is never taken for the one below it.
    let text = format!("{number:e}");
    text.split_once('e')
        .and_then(|(_, power)| power.parse().ok())
        .unwrap_or(0)
}

/// Halves go away from nothing; the page does the same steps, so that both come to the same digits.
fn rounded(number: f64, places: i32) -> String {
    let step: f64 = (0..places.abs()).map(|_| 10.0).product();
    let text = match usize::try_from(places) {
        Ok(places) => format!("{:.places$}", (number * step).round() / step),
        Err(_) => format!("{:.0}", (number / step).round() * step),
    };
    let text = match text.contains('.') {
        true => text.trim_end_matches('0').trim_end_matches('.'),
        false => &text,
    };
    match text {
        "-0" => "0".to_owned(),
        text => text.to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use message::{Argument, Unit};

    use crate::Language;

    /// Both ways of saying one row of the table that the page is held to as well.
    #[test]
    fn numbers_are_cut_as_the_table_says() {
        let table = include_str!("../data/digits.csv");
        let mut rows = csv::Reader::from_reader(table.as_bytes());
        let mut seen = 0;
        for row in rows.records() {
            let row = row.expect("a row");
            let [value, low, high] = [0, 1, 2].map(|at| row[at].parse::<f64>().expect("a number"));
            let unit = match &row[3] {
                "" => Unit::None,
                "%" => Unit::Percent,
                "g" => Unit::Gram,
                "mL" => Unit::Millilitre,
                other => panic!("{other} is no unit of the table"),
            };
            let argument = Argument::range(low, value, high, unit);
            for (language, column) in [(Language::English, 4), (Language::German, 5)] {
                let said = language.words(&argument).replace('\u{a0}', " ");
                let bare = ["kg", "g", "L", "mL", "%"]
                    .iter()
                    .fold(said, |text, unit| text.replace(&format!(" {unit}"), ""));
                assert_eq!(bare, row[column], "{value} ({low} to {high}) {}", &row[3]);
            }
            seen += 1;
        }
        assert!(seen >= 20, "the table was read");
    }
}
