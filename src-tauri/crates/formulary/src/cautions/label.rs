//! What of the cautions stands on a label: what whoever holds the bottle must know, in as few lines as there are.

use message::{Argument, Message};

use super::{Caution, Moment, Severity};

/// Two cautions that every other herb carries, said in one breath.
const TOGETHER: [&str; 2] = ["pregnancy", "nursing"];

/// The lines of a label: more than notes, said to whoever holds the bottle, without a word on our sources.
///
/// A line names its herb where the jar holds several.
pub fn for_a_label(cautions: &[Caution]) -> Vec<String> {
    let shown: Vec<&Caution> = cautions.iter().filter(|one| one.is_for_a_label()).collect();
    let mut herbs: Vec<&str> = Vec::new();
    for herb in shown.iter().filter_map(|one| one.herb.as_deref()) {
        if !herbs.contains(&herb) {
            herbs.push(herb);
        }
    }
    let mut lines: Vec<String> = Vec::new();
    for caution in &shown {
        let both = both_barred(&shown, caution);
        let text = match both {
            Some(false) => continue,
            Some(true) => Message::new("caution-not-for-pregnant-or-nursing").into(),
            None => caution.text.clone(),
        };
        let line = match caution.herb.as_deref() {
            Some(herb) if herbs.len() > 1 => Message::new("caution-of-herb")
                .with("herb", Argument::herb(herb))
                .with("text", Argument::message(Message::plain(text)))
                .into(),
            _ => text,
        };
        if !lines.contains(&line) {
            lines.push(line);
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
