//! One language: whole sentences by their text, templates by their first letter.

use std::collections::HashMap;

use crate::number::with_comma;
use crate::template::{Hole, Template};

/// How much text a hole may hold.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Reach {
    /// No more than a part of one sentence.
    Sentence,
    /// Whatever is there.
    Anything,
}

/// The entries of a language.
pub(crate) struct Catalogue {
    whole: HashMap<String, &'static str>,
    /// The surest first; those that begin with a hole under none.
    patterns: HashMap<Option<char>, Vec<Template>>,
    english: Vec<&'static str>,
}

/// Lists in a hole are joined by these, the widest first.
const JOINTS: [&str; 5] = ["; ", ", ", " and ", " or ", " with "];
/// A hole in a hole in a hole is as deep as any sentence of the core goes.
const DEEPEST: u8 = 6;

impl Catalogue {
    /// Reads lines of English, a tab and its translation. `~` stands for a space that does not break.
    ///
    /// # Panics
    /// Where a line is no entry; the catalogue is part of the program and held by a test.
    pub(crate) fn read(files: &[&'static str]) -> Self {
        let mut whole = HashMap::new();
        let mut patterns: HashMap<Option<char>, Vec<Template>> = HashMap::new();
        let mut english = Vec::new();
        for line in files.iter().flat_map(|text| text.lines()) {
            if line.is_empty() || line.starts_with('#') {
                continue;
            }
            let Some((key, said)) = line.split_once('\t') else {
                panic!("this line of the catalogue has no tab: {line}");
            };
            let (key, said) = (key.trim(), said.trim());
            english.push(key);
            if key.contains('{') {
                let said = said.replace('~', "\u{a0}");
                let Some(template) = Template::read(key, &said) else {
                    panic!("the holes of this entry differ: {line}");
                };
                let first = template.first().map(lower);
                patterns.entry(first).or_default().push(template);
            } else {
                whole.insert(key.to_lowercase(), said);
            }
        }
        for templates in patterns.values_mut() {
            templates.sort_by_key(|template| std::cmp::Reverse(template.weight()));
        }
        Self {
            whole,
            patterns,
            english,
        }
    }

    pub(crate) fn templates(&self) -> impl Iterator<Item = &'static str> {
        self.english.iter().copied()
    }

    /// The translation of `text`, where it has one.
    pub(crate) fn say(&self, text: &str) -> Option<String> {
        if !text.contains(char::is_alphabetic) {
            return Some(with_comma(text));
        }
        self.told(text, &mut Vec::new(), 0)
    }

    /// As [`Catalogue::say`], for a text that is an entry from end to end.
    pub(crate) fn say_whole(&self, text: &str) -> Option<String> {
        let said = self.whole.get(&text.to_lowercase())?;
        Some(raised(&said.replace('~', "\u{a0}"), text.chars().next()?))
    }

    /// As [`Catalogue::say`] for several joined by commas, "and" or "or".
    pub(crate) fn say_list(&self, text: &str) -> String {
        self.list(text, &mut Vec::new(), 0)
    }

    /// What of `text` has no entry.
    pub(crate) fn gaps(&self, text: &str) -> Vec<String> {
        let mut gaps = Vec::new();
        let is_said =
            !text.contains(char::is_alphabetic) || self.told(text, &mut gaps, 0).is_some();
        if !is_said {
            gaps.push(text.to_owned());
        }
        gaps
    }

    fn told(&self, text: &str, gaps: &mut Vec<String>, depth: u8) -> Option<String> {
        if depth > DEEPEST {
            return None;
        }
        let body = text.trim();
        let plain = body.replace('\u{a0}', " ");
        let said = self
            .entry(&plain, gaps, depth, Reach::Sentence)
            .or_else(|| self.sentences(&plain, gaps, depth))
            .or_else(|| {
                let runs_on = ends(&plain).next().is_some();
                runs_on.then(|| self.entry(&plain, gaps, depth, Reach::Anything))?
            })?;
        let (before, after) = text.split_once(body)?;
        Some(format!("{before}{said}{after}"))
    }

    fn entry(&self, text: &str, gaps: &mut Vec<String>, depth: u8, reach: Reach) -> Option<String> {
        let first = text.chars().next()?;
        if let Some(said) = self.whole.get(&text.to_lowercase()) {
            return Some(raised(&said.replace('~', "\u{a0}"), first));
        }
        // Words of a table become a sentence by a full stop.
        let bare = text.strip_suffix('.');
        if let Some(said) = bare.and_then(|bare| self.whole.get(&bare.to_lowercase())) {
            return Some(raised(&said.replace('~', "\u{a0}"), first) + ".");
        }
        let small: String = first.to_lowercase().chain(text.chars().skip(1)).collect();
        let large: String = first.to_uppercase().chain(text.chars().skip(1)).collect();
        let none = Vec::new();
        let named = self.patterns.get(&Some(lower(first))).unwrap_or(&none);
        let open = self.patterns.get(&None).unwrap_or(&none);
        // A reading that leaves a hole unsaid gives way to one that does not.
        let mut partly: Option<(String, Vec<String>)> = None;
        for (at, template) in named.iter().chain(open).enumerate() {
            if at >= named.len() && partly.is_some() {
                break;
            }
            let spelt = match template.first() {
                Some(letter) if letter != first && letter.is_lowercase() => &small,
                Some(letter) if letter != first => &large,
                _ => text,
            };
            let ways = template.fits(spelt);
            let mut best: Option<(Vec<String>, Vec<String>)> = None;
            for filled in ways {
                let runs_on = |(_, inner): &(Hole, &str)| ends(inner).next().is_some();
                if reach == Reach::Sentence && filled.iter().any(runs_on) {
                    continue;
                }
                let mut missing = Vec::new();
                let holes: Vec<String> = filled
                    .into_iter()
                    .map(|(hole, inner)| match hole {
                        Hole::Verbatim => inner.to_owned(),
                        Hole::Figure => with_comma(inner),
                        Hole::Said => self.inner(inner, &mut missing, depth + 1),
                        Hole::List => self.list(inner, &mut missing, depth + 1),
                    })
                    .collect();
                let is_whole = missing.is_empty();
                if best
                    .as_ref()
                    .is_none_or(|(_, known)| missing.len() < known.len())
                {
                    best = Some((holes, missing));
                }
                if is_whole {
                    break;
                }
            }
            let Some((holes, missing)) = best else {
                continue;
            };
            let said = template.filled(&holes);
            let said = if template.opens_verbatim() {
                said
            } else {
                raised(&said, first)
            };
            if missing.is_empty() {
                return Some(said);
            }
            partly.get_or_insert((said, missing));
        }
        if let Some((said, missing)) = partly {
            gaps.extend(missing);
            return Some(said);
        }
        self.entry(bare?, gaps, depth, reach).map(|said| said + ".")
    }

    /// Text in a hole: an entry, a number, or something that nobody but the maker named.
    fn inner(&self, text: &str, gaps: &mut Vec<String>, depth: u8) -> String {
        if !text.contains(char::is_alphabetic) {
            return with_comma(text);
        }
        if let Some(said) = self.told(text, gaps, depth) {
            return said;
        }
        // What follows "Do not make it:" is a sentence elsewhere.
        if let Some(said) = self.told(&format!("{text}."), gaps, depth) {
            return said.trim_end_matches('.').to_owned();
        }
        gaps.push(format!("~{text}"));
        with_comma(text)
    }

    fn list(&self, text: &str, gaps: &mut Vec<String>, depth: u8) -> String {
        let mut missing = Vec::new();
        let whole = self.told(text, &mut missing, depth);
        if let Some(said) = &whole
            && missing.is_empty()
        {
            return said.clone();
        }
        let joint = JOINTS.into_iter().find(|joint| text.contains(joint));
        match (joint, whole) {
            (Some(joint), _) if depth <= DEEPEST => {
                let said: Vec<String> = text
                    .split(joint)
                    .map(|part| self.list(part, gaps, depth + 1))
                    .collect();
                match self.whole.get(joint.trim()) {
                    Some(word) => said.join(&format!(" {word} ")),
                    None => said.join(joint),
                }
            }
            (_, Some(said)) => {
                gaps.extend(missing);
                said
            }
            (_, None) => self.inner(text, gaps, depth),
        }
    }

    /// Several sentences one after the other, each by its own entry; one without an entry stays.
    fn sentences(&self, text: &str, gaps: &mut Vec<String>, depth: u8) -> Option<String> {
        for end in ends(text) {
            let (head, tail) = (&text[..end], &text[end + 1..]);
            if let Some(said) = self.entry(head, gaps, depth, Reach::Sentence) {
                let rest = self.told(tail, gaps, depth).unwrap_or_else(|| {
                    gaps.push(tail.to_owned());
                    tail.to_owned()
                });
                return Some(format!("{said} {rest}"));
            }
        }
        None
    }
}

/// Where a sentence ends and another begins.
fn ends(text: &str) -> impl Iterator<Item = usize> {
    text.match_indices(". ")
        .map(|(at, _)| at + 1)
        .filter(|at| text[at + 1..].starts_with(char::is_uppercase))
}

fn lower(letter: char) -> char {
    letter.to_lowercase().next().unwrap_or(letter)
}

/// A translation at the beginning of a sentence begins large, as its original did.
fn raised(said: &str, first: char) -> String {
    let mut letters = said.chars();
    match letters.next() {
        Some(letter) if first.is_uppercase() => letter.to_uppercase().chain(letters).collect(),
        _ => said.to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::Catalogue;

    const FEW: &str = "leaf\tBlatt\nand\tund\nLemon balm\tMelisse\n{quantity} must be {allowed}; {n} is not.\t{quantity}: {allowed} erlaubt, {n} ist es nicht.\n\
        between {low} and {high}\tzwischen {low} und {high}\nthe strength\tder Alkoholgehalt\n\
        From {,herbs}.\tAus {herbs}.\nStrain {=name} on {day}.\t{name} am {day} abseihen.";

    #[test]
    fn holes_are_translated_in_turn_and_numbers_take_a_comma() {
        let few = Catalogue::read(&[FEW]);
        assert_eq!(
            few.say("The strength must be between 0.5 and 100; 120.25 is not.")
                .as_deref(),
            Some("Der Alkoholgehalt: zwischen 0,5 und 100 erlaubt, 120,25 ist es nicht.")
        );
        assert_eq!(
            few.say("From lemon balm, leaf and Thing.").as_deref(),
            Some("Aus Melisse, Blatt und Thing.")
        );
    }

    #[test]
    fn what_the_maker_named_stays() {
        let few = Catalogue::read(&[FEW]);
        assert_eq!(
            few.say("Strain leaf on 2026-07-01.").as_deref(),
            Some("leaf am 2026-07-01 abseihen.")
        );
    }

    #[test]
    fn sentences_stand_for_themselves_and_a_gap_is_told() {
        let few = Catalogue::read(&[FEW]);
        assert_eq!(
            few.say("From leaf. From leaf.").as_deref(),
            Some("Aus Blatt. Aus Blatt.")
        );
        assert_eq!(few.say("Nothing of this is known."), None);
        assert_eq!(
            few.gaps("From leaf. Nothing is known."),
            ["Nothing is known."]
        );
        assert_eq!(few.gaps("From thing."), ["~thing"]);
        assert_eq!(few.say("38.9").as_deref(), Some("38,9"));
    }
}
