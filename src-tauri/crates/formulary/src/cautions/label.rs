//! What of the cautions stands on a label: what whoever holds the bottle must know, in as few lines as there are.

use message::{Message, say};

use super::{Caution, Moment, Severity};

/// Two cautions that every other herb carries, said in one breath.
const TOGETHER: [&str; 2] = ["pregnancy", "nursing"];

/// The lines of a label: more than notes, said to whoever holds the bottle, without a word on our sources.
///
/// A line names its herb where the jar holds several.
pub fn for_a_label(cautions: &[Caution]) -> Vec<Message> {
    let shown = cautions.iter().filter(|one| one.is_for_a_label());
    let lines = lines(shown.collect()).into_iter();
    lines.map(|(_, line)| line).collect()
}

/// The lines of a recipe's card, which whoever reads it picks, makes and uses by: more than notes, each with how grave
/// it is, the gravest first.
pub fn for_a_card(cautions: &[Caution]) -> Vec<(Severity, Message)> {
    let moments = [Moment::Pick, Moment::Make, Moment::Use];
    let is_shown = |one: &&Caution| {
        one.severity != Severity::Note && moments.iter().any(|at| one.is_said_at(*at))
    };
    let mut lines = lines(cautions.iter().filter(is_shown).collect());
    lines.sort_by_key(|(severity, _)| *severity);
    lines
}

/// What is shown, each line once.
fn lines(shown: Vec<&Caution>) -> Vec<(Severity, Message)> {
    let mut herbs: Vec<&Message> = Vec::new();
    for herb in shown.iter().filter_map(|one| one.herb.as_ref()) {
        if !herbs.contains(&herb) {
            herbs.push(herb);
        }
    }
    let mut lines: Vec<(Severity, Message)> = Vec::new();
    for caution in &shown {
        let both = both_barred(&shown, caution);
        let text = match both {
            Some(false) => continue,
            Some(true) => say!("caution-not-for-pregnant-or-nursing"),
            None => caution.text.clone(),
        };
        let line = match &caution.herb {
            Some(herb) if herbs.len() > 1 => {
                say!("caution-of-herb", herb = herb.clone(), text)
            }
            _ => text,
        };
        if !lines.iter().any(|(_, known)| *known == line) {
            lines.push((caution.severity, line));
        }
    }
    lines
}

/// Whether a caution bars the pregnant and another of its herb the nursing: true for the one that says both, false for
/// the other.
fn both_barred(shown: &[&Caution], caution: &Caution) -> Option<bool> {
    let at = TOGETHER.iter().position(|code| *code == caution.code)?;
    let is_plain = |one: &Caution| one.severity == Severity::NotFor && one.is_said_at(Moment::Use);
    let other = shown
        .iter()
        .any(|one| one.code == TOGETHER[1 - at] && one.herb == caution.herb && is_plain(one));
    (is_plain(caution) && other).then_some(at == 0)
}
