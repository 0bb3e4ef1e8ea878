//! What each item says, in runs of text.

use chrono::{Datelike, NaiveDate};

use crate::face::Face;
use crate::figure::trimmed;
use crate::page::Ink;
use crate::record::{Kind, Label, Meaning, Plant, State, Strength, Use};
use crate::wrap::Run;

pub(super) fn plants(label: &Label) -> Vec<Vec<Run>> {
    let line = |plant: &Plant| {
        let state = match plant.state {
            State::Fresh => "fresh",
            State::Dried => "dried",
            State::Cooked => "cooked",
        };
        let rest = format!("{state}\u{a0}{}", plant.part);
        match &plant.latin {
            Some(latin) => vec![
                Run::text(format!("{} ", plant.common)),
                Run::italic(latin.clone()),
                Run::text(format!(", {rest}")),
            ],
            None => vec![Run::text(format!("{}, {rest}", plant.common))],
        }
    };
    label.plants.iter().map(line).collect()
}

pub(super) fn liquid(label: &Label) -> Vec<Vec<Run>> {
    let mut parts: Vec<String> = Vec::new();
    if let Some(oil) = &label.oil {
        parts.push(format!("in {oil}"));
    }
    if !label.menstruum.is_empty() {
        parts.push(format!("in {}", label.menstruum));
    }
    if let Some(ratio) = label.ratio {
        let meaning = match ratio.meaning {
            Meaning::PouredOn => "poured on",
            Meaning::MadeUpTo => "made up to",
        };
        parts.push(format!(
            "1\u{a0}g to {}\u{a0}mL {meaning}",
            trimmed(ratio.ml_per_g, 1)
        ));
    }
    let mut lines = Vec::new();
    if !parts.is_empty() {
        lines.push(vec![Run::text(capital(&parts.join(", ")))]);
    }
    if !label.strengths.is_empty() {
        let strengths: Vec<String> = label
            .strengths
            .iter()
            .map(|strength| strength.words())
            .collect();
        // A jar's figure is what was poured, a bottle's is what came of it: the same number would mean two things.
        let whose = if label.kind == Kind::Jar {
            "Poured at "
        } else {
            "In the bottle "
        };
        lines.push(vec![Run::text(whose), Run::strong(strengths.join(", "))]);
    }
    lines
}

impl Strength {
    fn words(self) -> String {
        match self {
            Self::Alcohol(figure) => figure.with_unit("%\u{a0}vol"),
            Self::Glycerol(figure) => format!("glycerol {}", figure.with_unit("% by weight")),
            Self::Acidity(figure) => format!("acidity {}", figure.with_unit("g per 100\u{a0}mL")),
            Self::Sugar(figure) => format!("sugar {}", figure.with_unit("% by weight")),
        }
    }
}

pub(super) fn begun(label: &Label) -> Vec<Vec<Run>> {
    let mut lines = days(&[("made", label.made_on)]);
    let due = match (label.due_from, label.due_to) {
        (Some(from), Some(to)) if from != to => Some(span(from, to)),
        (Some(on), _) | (None, Some(on)) => Some(written(on)),
        (None, None) => None,
    };
    if let Some(due) = due {
        lines.push(vec![Run::text("Due "), Run::strong(due)]);
    }
    lines
}

pub(super) fn dates(label: &Label) -> Vec<Vec<Run>> {
    let mut lines = days(&[
        ("made", label.made_on),
        ("strained", label.strained_on),
        ("bottled", label.bottled_on),
    ]);
    if let Some(on) = label.best_before {
        lines.push(vec![
            Run::text("Best\u{a0}before "),
            Run::strong(written(on)),
        ]);
    }
    lines
}

/// `Made 12 Jun, strained and bottled 10 Jul 2026`: a day and a year are said once.
fn days(given: &[(&str, Option<NaiveDate>)]) -> Vec<Vec<Run>> {
    let mut told: Vec<(String, NaiveDate)> = Vec::new();
    for (word, on) in given.iter().filter_map(|(word, on)| Some((*word, (*on)?))) {
        match told.last_mut() {
            Some((words, day)) if *day == on => {
                words.push_str(" and ");
                words.push_str(word);
            }
            _ => told.push((word.to_owned(), on)),
        }
    }
    let parts: Vec<String> = told
        .iter()
        .enumerate()
        .map(|(at, (words, on))| {
            let is_same_year = told
                .get(at + 1)
                .is_some_and(|(_, next)| next.year() == on.year());
            let day = if is_same_year {
                day_and_month(*on)
            } else {
                written(*on)
            };
            format!("{words}\u{a0}{day}")
        })
        .collect();
    filled(match parts.is_empty() {
        true => Vec::new(),
        false => vec![Run::text(capital(&parts.join(", ")))],
    })
}

fn span(from: NaiveDate, to: NaiveDate) -> String {
    let begin = if from.year() == to.year() {
        day_and_month(from)
    } else {
        written(from)
    };
    format!("{begin} – {}", written(to))
}

fn day_and_month(on: NaiveDate) -> String {
    on.format("%-d\u{a0}%b").to_string()
}

/// A day as it is read the same everywhere: the month in letters.
pub(crate) fn written(on: NaiveDate) -> String {
    on.format("%-d\u{a0}%b\u{a0}%Y").to_string()
}

pub(super) fn origins(label: &Label) -> Vec<Vec<Run>> {
    let given: Vec<&str> = label
        .origins
        .iter()
        .map(|origin| origin.trim())
        .filter(|origin| !origin.is_empty())
        .collect();
    if given.is_empty() {
        return Vec::new();
    }
    vec![vec![Run::soft(format!("From {}", given.join(", ")))]]
}

pub(super) fn contents(label: &Label) -> Vec<Vec<Run>> {
    let mut lines = Vec::new();
    if let Some(ml) = label.net_ml {
        lines.push(vec![Run::text(format!("Holds {}\u{a0}mL", trimmed(ml, 0)))]);
    }
    if !label.ingredients.is_empty() {
        lines.push(vec![
            Run::soft("Made of "),
            Run::text(label.ingredients.join(", ")),
        ]);
    }
    if !label.allergens.is_empty() {
        lines.push(vec![
            Run::soft("Allergens: "),
            Run::strong(label.allergens.join(", ")),
        ]);
    }
    lines
}

pub(super) fn ethanol(label: &Label) -> Vec<Vec<Run>> {
    label
        .ethanol_in_bottle_g
        .map(|figure| {
            vec![vec![Run::text(format!(
                "Alcohol in the whole bottle: {}",
                figure.with_unit("g")
            ))]]
        })
        .unwrap_or_default()
}

pub(super) fn maker(label: &Label) -> Vec<Vec<Run>> {
    one(label.maker.as_deref(), |maker| {
        Run::soft(format!("Maker: {maker}"))
    })
}

pub(super) fn own(note: Option<&str>) -> Vec<Vec<Run>> {
    one(note, |note| Run::new(Face::Italic, Ink::Soft, note))
}

pub(super) fn used(use_for: Use) -> Vec<Run> {
    match use_for {
        Use::Inside => vec![Run::strong("For use inside.")],
        Use::Food => vec![Run::strong("For the table.")],
        Use::OutsideOnly => vec![Run::new(
            Face::Strong,
            Ink::Warning,
            "EXTERNAL USE ONLY. Never swallow it.",
        )],
    }
}

/// Alcohol below this cannot be told from none with a kitchen's means (common practice, no source).
const NO_ALCOHOL_PERCENT_VOL: f64 = 0.5;

pub(super) fn alcohol(label: &Label) -> Vec<Vec<Run>> {
    label
        .strengths
        .iter()
        .filter_map(|strength| match strength {
            Strength::Alcohol(figure) if figure.high >= NO_ALCOHOL_PERCENT_VOL => {
                Some(strength.words())
            }
            _ => None,
        })
        .map(|words| {
            vec![Run::strong(format!(
                "Contains alcohol, {words}: keep away from children and flame."
            ))]
        })
        .collect()
}

pub(super) fn poison(label: &Label) -> Vec<Vec<Run>> {
    label
        .poison_line
        .as_deref()
        .map(str::trim)
        .filter(|line| !line.is_empty())
        .map(|line| vec![vec![Run::text("Poison\u{a0}line\u{a0}"), Run::strong(line)]])
        .unwrap_or_default()
}

pub(super) fn one(text: Option<&str>, run: impl FnOnce(&str) -> Run) -> Vec<Vec<Run>> {
    match text.map(str::trim) {
        Some(text) if !text.is_empty() => vec![vec![run(text)]],
        _ => Vec::new(),
    }
}

fn filled(line: Vec<Run>) -> Vec<Vec<Run>> {
    if line.is_empty() {
        Vec::new()
    } else {
        vec![line]
    }
}

fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| {
        first.to_uppercase().chain(letters).collect()
    })
}
