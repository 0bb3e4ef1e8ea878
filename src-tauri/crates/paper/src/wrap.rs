//! Breaking rich text into lines.

use std::borrow::Cow;
use std::ops::Range;

use crate::face::Face;
use crate::page::{Ink, Mark};
use crate::units::MM_PER_PT;

/// A stretch of text in one face and ink.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Run {
    pub(crate) face: Face,
    pub(crate) ink: Ink,
    pub(crate) text: String,
}

impl Run {
    pub(crate) fn new(face: Face, ink: Ink, text: impl Into<String>) -> Self {
        let text = text.into();
        Self { face, ink, text }
    }

    pub(crate) fn text(text: impl Into<String>) -> Self {
        Self::new(Face::Text, Ink::Plain, text)
    }

    pub(crate) fn soft(text: impl Into<String>) -> Self {
        Self::new(Face::Text, Ink::Soft, text)
    }

    pub(crate) fn strong(text: impl Into<String>) -> Self {
        Self::new(Face::Strong, Ink::Plain, text)
    }

    pub(crate) fn italic(text: impl Into<String>) -> Self {
        Self::new(Face::Italic, Ink::Plain, text)
    }
}

/// What stands between two spaces: runs that stick together, each with its width at one point.
#[derive(Debug, Clone, PartialEq)]
struct Word {
    runs: Vec<(Run, f64)>,
    width: f64,
    /// Whether the next one is the rest of it, so that no space stands between them.
    is_cut: bool,
}

impl Word {
    fn new(runs: Vec<Run>) -> Self {
        let runs: Vec<(Run, f64)> = runs
            .into_iter()
            .map(|run| {
                let width = run.face.width(&run.text, 1.0);
                (run, width)
            })
            .collect();
        let width = runs.iter().map(|(_, width)| width).sum();
        Self {
            runs,
            width,
            is_cut: false,
        }
    }

    /// The space after the word, in its last face.
    fn space(&self) -> f64 {
        self.runs
            .last()
            .map_or(0.0, |(run, _)| run.face.width(" ", 1.0))
    }

    /// Pieces no wider than `room` at one point; a single letter stays whole.
    fn pieces(&self, room: f64) -> Vec<Self> {
        let mut pieces: Vec<Vec<Run>> = Vec::new();
        let mut used = f64::INFINITY;
        for (run, _) in &self.runs {
            for letter in run.text.chars() {
                let width = run.face.width(letter.encode_utf8(&mut [0; 4]), 1.0);
                if used + width > room {
                    pieces.push(Vec::new());
                    used = 0.0;
                }
                used += width;
                let piece = pieces.last_mut().expect("the first letter opened one");
                let one = Run::new(run.face, run.ink, letter);
                stick(piece, one);
            }
        }
        let last = pieces.len().saturating_sub(1);
        let piece = |(at, runs)| Self {
            is_cut: at < last,
            ..Self::new(runs)
        };
        pieces.into_iter().enumerate().map(piece).collect()
    }
}

/// Text measured once, to be set at any size.
#[derive(Debug, Clone, PartialEq, Default)]
pub(crate) struct Words(Vec<Word>);

impl Words {
    /// Splits at spaces and line ends; a no-break space holds words together.
    pub(crate) fn of(runs: &[Run]) -> Self {
        let mut words: Vec<Vec<Run>> = Vec::new();
        // A run may begin in the middle of a word: a comma in another face stays with the word before it.
        let mut is_open = false;
        for run in runs {
            for (at, piece) in run.text.split([' ', '\n', '\t', '\r']).enumerate() {
                is_open &= at == 0;
                if piece.is_empty() {
                    continue;
                }
                let piece = Run::new(run.face, run.ink, piece);
                match words.last_mut() {
                    Some(word) if is_open => stick(word, piece),
                    _ => words.push(vec![piece]),
                }
                is_open = true;
            }
        }
        Self(words.into_iter().map(Word::new).collect())
    }

    /// Breaks into lines; `room` tells how wide the n-th may be in mm. Nothing where a word is wider than its line.
    pub(crate) fn wrap(&self, size_pt: f64, room: impl Fn(usize) -> f64) -> Option<Lines<'_>> {
        let mut lines: Vec<(Range<usize>, f64)> = Vec::new();
        for (at, word) in self.0.iter().enumerate() {
            let width = word.width * size_pt;
            let count = lines.len();
            if let Some((range, used)) = lines.last_mut() {
                let longer = *used + self.0[at - 1].space() * size_pt + width;
                // A hair for the last digit of a sum, so that a text fits in exactly its own width.
                if longer <= room(count - 1) + 1e-9 {
                    (range.end, *used) = (at + 1, longer);
                    continue;
                }
            }
            if width > room(lines.len()) + 1e-9 {
                return None;
            }
            lines.push((at..at + 1, width));
        }
        Some(Lines {
            words: Cow::Borrowed(&self.0),
            lines,
            size_pt,
        })
    }

    /// Breaks into lines of one width, cutting words that are wider.
    pub(crate) fn fill(&self, size_pt: f64, room: f64) -> Lines<'_> {
        if let Some(lines) = self.wrap(size_pt, |_| room) {
            return lines;
        }
        let cut = Self(
            self.0
                .iter()
                .flat_map(|word| {
                    if word.width * size_pt > room {
                        word.pieces(room / size_pt)
                    } else {
                        vec![word.clone()]
                    }
                })
                .collect(),
        );
        let lines = cut
            .wrap(size_pt, |_| room)
            .map(|lines| lines.lines)
            // Even a letter is wider than the room: each piece gets a line of its own.
            .unwrap_or_else(|| (0..cut.0.len()).map(|at| (at..at + 1, room)).collect());
        Lines {
            words: Cow::Owned(cut.0),
            lines,
            size_pt,
        }
    }
}

/// Joins runs of one face and ink.
fn stick(word: &mut Vec<Run>, run: Run) {
    match word.last_mut() {
        Some(last) if last.face == run.face && last.ink == run.ink => last.text.push_str(&run.text),
        _ => word.push(run),
    }
}

/// Lines of text, not yet placed.
#[derive(Debug, Clone)]
pub(crate) struct Lines<'a> {
    words: Cow<'a, [Word]>,
    lines: Vec<(Range<usize>, f64)>,
    size_pt: f64,
}

impl Lines<'_> {
    pub(crate) fn count(&self) -> usize {
        self.lines.len()
    }

    /// The marks of all lines, the first line's top at `top`; `place` tells where a line of a width begins.
    pub(crate) fn marks(&self, top: f64, leading: f64, place: impl Fn(f64) -> f64) -> Vec<Mark> {
        (0..self.count())
            .flat_map(|at| self.line(at, top + leading * at as f64, leading, &place))
            .collect()
    }

    /// The marks of one line.
    pub(crate) fn line(
        &self,
        at: usize,
        top: f64,
        leading: f64,
        place: impl Fn(f64) -> f64,
    ) -> Vec<Mark> {
        let size_pt = self.size_pt;
        // The base line sits where the letters of a line are optically centred in it.
        let y = top + leading / 2.0 + 0.3 * size_pt * MM_PER_PT;
        let (range, width) = &self.lines[at];
        let mut x = place(*width);
        let mut marks: Vec<Mark> = Vec::new();
        for at in range.clone() {
            if at > range.start {
                space_after(&mut marks);
                x += self.words[at - 1].space() * size_pt;
            }
            for (run, width) in &self.words[at].runs {
                match marks.last_mut() {
                    Some(Mark::Text {
                        face, ink, text, ..
                    }) if *face == run.face && *ink == run.ink => text.push_str(&run.text),
                    _ => marks.push(Mark::Text {
                        x,
                        y,
                        size_pt,
                        face: run.face,
                        ink: run.ink,
                        text: run.text.clone(),
                    }),
                }
                x += width * size_pt;
            }
        }
        // Whoever copies or hears the text must not run the last word of a line into the first of the next.
        if at + 1 < self.count() && !self.words[range.end - 1].is_cut {
            space_after(&mut marks);
        }
        marks
    }
}

/// Ends the last text with a space: it leaves no ink, and parts words for whoever does not see the gap.
pub(crate) fn space_after(marks: &mut [Mark]) {
    if let Some(Mark::Text { text, .. }) = marks.last_mut() {
        text.push(' ');
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn texts(marks: &[Mark]) -> Vec<(f64, f64, String)> {
        marks
            .iter()
            .filter_map(|mark| match mark {
                Mark::Text {
                    x,
                    size_pt,
                    face,
                    text,
                    ..
                } => Some((*x, x + face.width(text.trim_end(), *size_pt), text.clone())),
                _ => None,
            })
            .collect()
    }

    #[test]
    fn no_line_is_wider_than_its_room_and_no_letter_or_space_is_lost() {
        let runs = [
            Run::text("Lemon balm "),
            Run::italic("Melissa officinalis"),
            Run::text(", fresh leaf and Donaudampfschifffahrtsgesellschaft"),
        ];
        for room in [9.0, 14.0, 30.0, 90.0] {
            let words = Words::of(&runs);
            let marks = words.fill(9.0, room).marks(0.0, 4.0, |_| 0.0);
            let mut letters = String::new();
            for (_, right, text) in texts(&marks) {
                assert!(right <= room + 1e-6, "{right} in {room}: {text}");
                letters.push_str(&text);
            }
            assert_eq!(
                letters,
                "Lemon balm Melissa officinalis, fresh leaf and Donaudampfschifffahrtsgesellschaft",
                "a space between all words, in a line and between lines, and none where one is cut"
            );
        }
    }

    #[test]
    fn a_comma_stays_with_its_word() {
        let words = Words::of(&[Run::italic("officinalis"), Run::text(", leaf")]);
        let lines = words.wrap(9.0, |_| 16.0).unwrap();
        let first = texts(&lines.line(0, 0.0, 4.0, |_| 0.0));
        assert_eq!(first[1].2, ", ");
        assert!((first[1].0 - first[0].1).abs() < 1e-9, "no gap before it");
    }

    #[test]
    fn a_word_wider_than_its_line_is_reported() {
        assert!(
            Words::of(&[Run::text("Calendula")])
                .wrap(9.0, |_| 5.0)
                .is_none()
        );
    }
}
