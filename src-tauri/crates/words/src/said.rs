//! A message in words: its arguments by the language's own rules of digits, plurals, days and lists.

use std::borrow::Cow;

use fluent_bundle::FluentValue;
use fluent_bundle::types::FluentType;
use intl_memoizer::{IntlLangMemoizer, concurrent};
use message::{Amount, Argument, Joint, Said, Unit};

use crate::Language;
use crate::texts::Texts;

impl Language {
    /// A message in this language; as it was written once, or in English, and at last by its id, where the entry or an
    /// argument is missing.
    pub(crate) fn said(self, said: &Said) -> String {
        self.entry(said)
            .or_else(|| said.as_written().map(str::to_owned))
            .or_else(|| Self::English.entry(said))
            .unwrap_or_else(|| said.id.to_string())
    }

    fn entry(self, said: &Said) -> Option<String> {
        let values: Vec<(&str, FluentValue<'_>)> = said
            .arguments
            .iter()
            .map(|(name, argument)| (name.as_ref(), self.value(argument)))
            .collect();
        Texts::of(self).filled(&said.id, &values)
    }

    fn value(self, argument: &Argument) -> FluentValue<'static> {
        match argument {
            Argument::Count(count) => {
                // A count beyond 2^53 was never of anything at home.
                #[allow(clippy::cast_precision_loss, reason = "as said")]
                FluentValue::from(*count as f64)
            }
            Argument::Own(text) => FluentValue::Custom(Box::new(Own(text.clone()))),
            other => FluentValue::from(self.words(other)),
        }
    }

    pub(crate) fn words(self, argument: &Argument) -> String {
        match argument {
            Argument::Own(text) => text.clone(),
            Argument::Figure(digits) => self.digits(digits.clone()),
            Argument::Count(count) => count.to_string(),
            Argument::Amount(amount) => self.amount(*amount),
            Argument::Exact(value, unit) => self.exact(*value, *unit),
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

    fn exact(self, value: f64, unit: Unit) -> String {
        let (scale, id) = sign(value, unit);
        let figure = value / scale;
        let said = self.digits(every_digit(figure));
        let values = [
            ("figure", FluentValue::from(said)),
            ("count", FluentValue::from(figure)),
        ];
        self.unit(id, &values)
    }

    fn amount(self, amount: Amount) -> String {
        let (scale, id) = sign(amount.value, amount.unit);
        let [value, low, high] =
            [amount.value, amount.low, amount.high].map(|figure| figure / scale);
        let is_weighed = matches!(
            amount.unit,
            Unit::Gram | Unit::Millilitre | Unit::Ounce | Unit::FluidOunce
        );
        let cut = crate::digits(value, low, high, is_weighed);
        let count = cut[0].parse().unwrap_or(value);
        let [said, from, to] = cut.map(|figure| self.digits(figure));
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
            Self::English | Self::Strange => digits,
            Self::German => digits.replace('.', ","),
        }
    }
}

/// Two pounds, as on the page.
const OUNCES_SAID_AS_POUNDS: f64 = 32.0;

/// The factor and the entry by which an amount is said.
fn sign(value: f64, unit: Unit) -> (f64, &'static str) {
    let is_large = value.abs() >= 10_000.0;
    match unit {
        Unit::None => (1.0, "amount-none"),
        Unit::Gram if is_large => (1000.0, "amount-kilogram"),
        Unit::Gram => (1.0, "amount-gram"),
        Unit::Millilitre if is_large => (1000.0, "amount-litre"),
        Unit::Millilitre => (1.0, "amount-millilitre"),
        Unit::Ounce if value.abs() >= OUNCES_SAID_AS_POUNDS => (16.0, "amount-pound"),
        Unit::Ounce => (1.0, "amount-ounce"),
        Unit::FluidOunce => (1.0, "amount-fluid-ounce"),
        Unit::Millimetre => (1.0, "amount-millimetre"),
        Unit::Percent => (1.0, "amount-percent"),
        Unit::PercentVol => (1.0, "amount-percent-vol"),
        Unit::Celsius => (1.0, "amount-celsius"),
        Unit::PercentMass => (1.0, "amount-percent-mass"),
        Unit::GramPer100Ml => (1.0, "amount-gram-per-100ml"),
        Unit::GramPerLitre => (1.0, "amount-gram-per-litre"),
        Unit::MillilitrePerGram => (1.0, "amount-millilitre-per-gram"),
        Unit::SquareMetre => (1.0, "amount-square-metre"),
        Unit::Degrees => (1.0, "amount-degrees"),
        Unit::Hours => (1.0, "amount-hours"),
        Unit::Days => (1.0, "amount-days"),
        Unit::Weeks => (1.0, "amount-weeks"),
        Unit::Months => (1.0, "amount-months"),
        Unit::Years => (1.0, "amount-years"),
    }
}

/// As it stands; nobody typed 309 digits.
fn every_digit(value: f64) -> String {
    match value != 0.0 && !(1e-6..1e12).contains(&value.abs()) {
        true => format!("{value:e}"),
        false => value.to_string(),
    }
}

/// What the maker wrote, as a value that no function of a language changes.
#[derive(Debug, Clone, PartialEq)]
struct Own(String);

impl FluentType for Own {
    fn duplicate(&self) -> Box<dyn FluentType + Send> {
        Box::new(self.clone())
    }

    fn as_string(&self, _: &IntlLangMemoizer) -> Cow<'static, str> {
        Cow::Owned(self.0.clone())
    }

    fn as_string_threadsafe(&self, _: &concurrent::IntlLangMemoizer) -> Cow<'static, str> {
        Cow::Owned(self.0.clone())
    }
}

#[cfg(test)]
mod tests {
    use chrono::NaiveDate;
    use message::{Message, say};

    use super::*;

    fn both(argument: &Argument) -> [String; 2] {
        Language::ALL.map(|language| language.words(argument).replace('\u{a0}', " "))
    }

    #[test]
    fn what_no_entry_says_is_said_as_it_was_written() {
        let later = Message::of_table("deed-of-a-later-version").written_as("Did something");
        assert_eq!(both(&later.into()), ["Did something", "Did something"]);
        let known = say!("part-leaf").written_as("Lief");
        assert_eq!(both(&known.into()), ["leaf", "Blatt"]);
    }

    #[test]
    fn numbers_days_and_lists_follow_the_language() {
        for (argument, english, german) in [
            (Argument::grams(12.34), "12.3 g", "12,3 g"),
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
            (Argument::exact(0.001, Unit::Gram), "0.001 g", "0,001 g"),
            (Argument::exact(1e6, Unit::Millilitre), "1000 L", "1000 L"),
            (Argument::exact(1e308, Unit::None), "1e308", "1e308"),
            (Argument::exact(f64::NEG_INFINITY, Unit::Gram), "?", "?"),
            (
                Argument::day(NaiveDate::from_ymd_opt(2026, 7, 2).expect("a day")),
                "2 Jul 2026",
                "2. Juli 2026",
            ),
            (
                Argument::one_of([say!("part-leaf").into(), Argument::own("leaf")]),
                "leaf or leaf",
                "Blatt oder leaf",
            ),
            (say!("herb-lemon-balm").into(), "lemon balm", "Melisse"),
            (
                say!("title", name = say!("herb-lemon-balm")).into(),
                "Lemon balm",
                "Melisse",
            ),
            (
                say!("title", name = Message::own("bay leaf")).into(),
                "bay leaf",
                "bay leaf",
            ),
            (Argument::number(f64::NAN), "?", "?"),
        ] {
            assert_eq!(both(&argument), [english, german]);
        }
    }
}
