//! Messages as runs of type.

use message::{Argument, Message, say};
use words::Language;

use crate::face::Face;
use crate::page::Ink;
use crate::wrap::Run;

/// What the texts write for `{ -strong }`, `{ -latin }`, `{ -soft }` and `{ -end }`: characters that Unicode keeps for
/// the inside of a program, so no maker's word changes the type.
const STRONG: char = '\u{fdd2}';
const LATIN: char = '\u{fdd3}';
const SOFT: char = '\u{fdd4}';
const END: char = '\u{fdd5}';

/// A message in the type it asks for, and in `face` and `ink` where it asks for none.
pub(crate) fn runs(language: Language, message: &Message, face: Face, ink: Ink) -> Vec<Run> {
    let text = language.tell(message);
    let mut runs = Vec::new();
    let (mut now, mut rest) = ((face, ink), text.as_str());
    while let Some(at) = rest.find([STRONG, LATIN, SOFT, END]) {
        let (before, mark) = rest.split_at(at);
        if !before.is_empty() {
            runs.push(Run::new(now.0, now.1, before));
        }
        let mut letters = mark.chars();
        now = match letters.next() {
            Some(STRONG) => (Face::Strong, ink),
            Some(LATIN) => (Face::Italic, ink),
            Some(SOFT) => (Face::Text, Ink::Soft),
            _ => (face, ink),
        };
        rest = letters.as_str();
    }
    if !rest.is_empty() {
        runs.push(Run::new(now.0, now.1, rest));
    }
    runs
}

/// A message as running text.
pub(crate) fn text(language: Language, message: &Message) -> Vec<Run> {
    runs(language, message, Face::Text, Ink::Plain)
}

/// What a photo shows, for whoever does not see it.
pub(crate) fn photo_of(language: Language, what: impl Into<Argument>) -> String {
    plain(language, &say!("paper-photo", what = what.into()))
}

/// A message without its type, for whoever hears it.
pub(crate) fn plain(language: Language, message: &Message) -> String {
    let runs = text(language, message).into_iter();
    runs.map(|run| run.text).collect()
}

/// A thing that stands alone.
pub(crate) fn alone(what: Argument) -> Message {
    say!("alone", what)
}

/// A figure or a day alone, held together by no-break spaces.
pub(crate) fn written(language: Language, argument: Argument) -> String {
    language.tell(&alone(argument)).replace(' ', "\u{a0}")
}

/// A figure or a day for a place in a sentence, which no line breaks.
pub(crate) fn held(language: Language, argument: Argument) -> Argument {
    Argument::own(written(language, argument))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_texts_choose_the_type_and_the_maker_does_not() {
        let message = say!("label-maker", maker = Argument::own("{ -strong }<b>me"));
        let said = text(Language::English, &message);
        let said: Vec<_> = said
            .iter()
            .map(|run| (run.ink, run.text.as_str()))
            .collect();
        assert_eq!(said, [(Ink::Soft, "Maker: { -strong }<b>me")]);
    }
}
