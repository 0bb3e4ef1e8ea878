//! A message in words: its arguments by the language's own rules of digits, plurals, days and lists.

use fluent_bundle::FluentValue;
use message::{Amount, Argument, Joint, Said, Unit};

use crate::Language;
use crate::number::with_comma;
use crate::texts::Texts;

impl Language {
    /// A message in this language; in English, and at last by its id, where the entry or an argument is missing.
    pub(crate) fn said(self, said: &Said) -> String {
        self.entry(said)
            .or_else(|| Self::English.entry(said))
            .unwrap_or_else(|| said.id.to_string())
    }

    fn entry(self, said: &Said) -> Option<String> {
        let values: Vec<(&str, FluentValue<'_>)> = said
            .arguments
            .iter()
            .map(|(name, argument)| (name.as_ref(), self.value(argument)))
            .collect();
        let texts = Texts::of(self);
        let text = texts.filled(&said.id, &values)?;
        let begins_small = texts.opens_with_a_place(&said.id) && text.ends_with(['.', '?', ':']);
        // The maker's own words begin as the maker wrote them.
        let is_own = said.arguments.iter().any(
            |(_, argument)| matches!(argument, Argument::Own(own) if text.starts_with(own.as_str())),
        );
        Some(if begins_small && !is_own {
            large(&text)
        } else {
            text
        })
    }

    fn value(self, argument: &Argument) -> FluentValue<'static> {
        match argument {
            Argument::Count(count) => {
                // A count beyond 2^53 was never of anything at home.
                #[allow(clippy::cast_precision_loss, reason = "as said")]
                FluentValue::from(*count as f64)
            }
            other => FluentValue::from(self.words(other)),
        }
    }

    fn words(self, argument: &Argument) -> String {
        match argument {
            Argument::Own(text) => text.clone(),
            Argument::Name(english) => self.say(english).into_owned(),
            Argument::Figure(digits) => self.digits(digits.clone()),
            Argument::Count(count) => count.to_string(),
            Argument::Amount(amount) => self.amount(*amount),
            Argument::Day(day) => {
                use chrono::Datelike as _;
                let (year, month) = (f64::from(day.year()), f64::from(day.month()));
                let values = [
                    ("day", FluentValue::from(f64::from(day.day()))),
                    ("month", FluentValue::from(month)),
                    ("year", FluentValue::from(year)),
                ];
                self.unit("day-of-the-year", &values)
            }
            Argument::List(items, joint) => self.list(items, *joint),
            Argument::Said(said) => self.said(said),
        }
    }

    fn list(self, items: &[Argument], joint: Joint) -> String {
        let words: Vec<String> = items.iter().map(|item| self.words(item)).collect();
        match words.as_slice() {
            [] => String::new(),
            [only] => only.clone(),
            [before @ .., last] => {
                let id = match joint {
                    Joint::And => "list-and",
                    Joint::Or => "list-or",
                };
                let values = [
                    ("before", FluentValue::from(before.join(", "))),
                    ("last", FluentValue::from(last.clone())),
                ];
                self.unit(id, &values)
            }
        }
    }

    fn amount(self, amount: Amount) -> String {
        let (scale, id) = sign(amount);
        let [value, low, high] =
            [amount.value, amount.low, amount.high].map(|figure| figure / scale);
        let decimals = decimals(value, high - low, amount.unit);
        let [said, from, to] =
            [value, low, high].map(|figure| self.digits(rounded(figure, decimals)));
        let count = rounded(value, decimals).parse().unwrap_or(value);
        let values = [
            ("figure", FluentValue::from(said)),
            ("count", FluentValue::from(count)),
        ];
        let whole = self.unit(id, &values);
        if from == to {
            return whole;
        }
        let values = [("amount", whole), ("low", from), ("high", to)]
            .map(|(name, text)| (name, FluentValue::from(text)));
        self.unit("amount-range", &values)
    }

    /// An entry of `units.ftl`, which a test holds to be there in every language.
    fn unit(self, id: &str, values: &[(&str, FluentValue<'_>)]) -> String {
        Texts::of(self)
            .filled(id, values)
            .unwrap_or_else(|| id.to_owned())
    }

    fn digits(self, digits: String) -> String {
        match self {
            Self::English => digits,
            Self::German => with_comma(&digits),
        }
    }
}

/// The factor and the entry by which an amount is said.
fn sign(amount: Amount) -> (f64, &'static str) {
    let is_large = amount.value.abs() >= 10_000.0;
    match amount.unit {
        Unit::None => (1.0, "amount-none"),
        Unit::Gram if is_large => (1000.0, "amount-kilogram"),
        Unit::Gram => (1.0, "amount-gram"),
        Unit::Millilitre if is_large => (1000.0, "amount-litre"),
        Unit::Millilitre => (1.0, "amount-millilitre"),
        Unit::Millimetre => (1.0, "amount-millimetre"),
        Unit::Percent => (1.0, "amount-percent"),
        Unit::PercentVol => (1.0, "amount-percent-vol"),
        Unit::Celsius => (1.0, "amount-celsius"),
        Unit::GramPer100Ml => (1.0, "amount-gram-per-100ml"),
        Unit::Hours => (1.0, "amount-hours"),
        Unit::Days => (1.0, "amount-days"),
        Unit::Weeks => (1.0, "amount-weeks"),
        Unit::Months => (1.0, "amount-months"),
        Unit::Years => (1.0, "amount-years"),
    }
}

/// No more digits than the interval deserves, and no more than a kitchen scale shows where there is none.
fn decimals(value: f64, width: f64, unit: Unit) -> usize {
    let size = value.abs();
    let is_weighed = matches!(unit, Unit::Gram | Unit::Millilitre);
    if size <= 1.0 && !is_weighed {
        2
    } else if width >= 2.0 || size >= 100.0 || (width == 0.0 && is_weighed && size >= 10.0) {
        0
    } else {
        1
    }
}

fn rounded(value: f64, decimals: usize) -> String {
    let text = format!("{value:.decimals$}");
    let text = match text.contains('.') {
        true => text.trim_end_matches('0').trim_end_matches('.'),
        false => &text,
    };
    match text {
        "-0" => "0".to_owned(),
        text => text.to_owned(),
    }
}

fn large(text: &str) -> String {
    let mut letters = text.chars();
    match letters.next() {
        Some(first) => first.to_uppercase().chain(letters).collect(),
        None => String::new(),
    }
}

#[cfg(test)]
mod tests {
    use chrono::NaiveDate;

    use super::*;

    fn both(argument: &Argument) -> [String; 2] {
        Language::ALL.map(|language| language.words(argument).replace('\u{a0}', " "))
    }

    #[test]
    fn numbers_days_and_lists_follow_the_language() {
        for (argument, english, german) in [
            (Argument::grams(12.34), "12 g", "12 g"),
            (Argument::grams(2.5), "2.5 g", "2,5 g"),
            (Argument::grams(64_000.0), "64 kg", "64 kg"),
            (
                Argument::range(26.0, 28.64, 32.0, Unit::PercentVol),
                "29 % vol (26 to 32)",
                "29 % vol (26 bis 32)",
            ),
            (Argument::number(4.6), "4.6", "4,6"),
            (Argument::amount(1.0, Unit::Days), "1 day", "1 Tag"),
            (Argument::amount(1.5, Unit::Days), "1.5 days", "1,5 Tage"),
            (Argument::figure("0.941"), "0.941", "0,941"),
            (
                Argument::day(NaiveDate::from_ymd_opt(2026, 7, 2).expect("a day")),
                "2 Jul 2026",
                "2. Juli 2026",
            ),
            (
                Argument::one_of([Argument::name("leaf"), Argument::own("leaf")]),
                "leaf or leaf",
                "Blatt oder leaf",
            ),
            (Argument::herb("Lemon balm"), "lemon balm", "Melisse"),
            (Argument::number(f64::NAN), "?", "?"),
        ] {
            assert_eq!(both(&argument), [english, german]);
        }
    }
}
