//! Breaking rich text into lines.

use crate::face::Face;
use crate::page::{Ink, MM_PER_PT, Mark};

/// A stretch of text in one face and ink.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Run {
    pub(crate) face: Face,
    pub(crate) ink: Ink,
    pub(crate) text: String,
}

impl Run {
    pub(crate) fn new(face: Face, ink: Ink, text: impl Into<String>) -> Self {
        Self {
            face,
            ink,
            text: text.into(),
        }
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

/// Lines of text, not yet placed.
#[derive(Debug, Clone, Default)]
pub(crate) struct Lines {
    lines: Vec<(Vec<Run>, f64)>,
    /// Whether a word was wider than its line and had to be cut.
    pub(crate) has_cut_word: bool,
}

impl Lines {
    pub(crate) fn count(&self) -> usize {
        self.lines.len()
    }

    /// Each line by itself.
    pub(crate) fn each(&self) -> impl Iterator<Item = Self> {
        self.lines.iter().map(|line| Self {
            lines: vec![line.clone()],
            has_cut_word: false,
        })
    }

    /// The marks of the lines, the first line's top at `top`; `place` tells where a line of a width begins.
    pub(crate) fn marks(
        &self,
        top: f64,
        size_pt: f64,
        leading: f64,
        place: impl Fn(f64) -> f64,
    ) -> Vec<Mark> {
        let mut marks = Vec::new();
        for (at, (runs, width)) in self.lines.iter().enumerate() {
            let mut x = place(*width);
            // The base line sits where the letters of a line are optically centred in it.
            let y = top + leading * at as f64 + leading / 2.0 + 0.3 * size_pt * MM_PER_PT;
            for run in runs {
                let width = run.face.width(&run.text, size_pt);
                marks.push(Mark::Text {
                    x,
                    y,
                    size_pt,
                    face: run.face,
                    ink: run.ink,
                    text: run.text.clone(),
                });
                x += width;
            }
        }
        marks
    }
}

/// Breaks runs at their spaces; `room` tells how wide the n-th line may be, in mm. A no-break space holds words together.
pub(crate) fn wrap(runs: &[Run], size_pt: f64, room: impl Fn(usize) -> f64) -> Lines {
    let mut lines = Lines::default();
    let mut line: Vec<Run> = Vec::new();
    for word in words(runs) {
        let mut word = word;
        loop {
            let mut longer = line.clone();
            let space = !line.is_empty();
            for (at, run) in word.iter().enumerate() {
                append(&mut longer, run, space && at == 0);
            }
            let width = width_of(&longer, size_pt);
            let room = room(lines.lines.len());
            if width <= room {
                line = longer;
                break;
            }
            if !line.is_empty() {
                let width = width_of(&line, size_pt);
                lines.lines.push((std::mem::take(&mut line), width));
                continue;
            }
            lines.has_cut_word = true;
            let (head, tail) = cut(&word, size_pt, room);
            let width = width_of(&head, size_pt);
            lines.lines.push((head, width));
            if tail.is_empty() {
                break;
            }
            word = tail;
        }
    }
    if !line.is_empty() {
        let width = width_of(&line, size_pt);
        lines.lines.push((line, width));
    }
    lines
}

/// Words as runs that stick together: a comma in another face stays with the word before it.
fn words(runs: &[Run]) -> Vec<Vec<Run>> {
    let mut words: Vec<Vec<Run>> = Vec::new();
    let mut is_open = false;
    for run in runs {
        for (at, piece) in run.text.split([' ', '\n', '\t']).enumerate() {
            is_open &= at == 0;
            if piece.is_empty() {
                continue;
            }
            let piece = Run {
                text: piece.to_owned(),
                ..run.clone()
            };
            match words.last_mut() {
                Some(word) if is_open => word.push(piece),
                _ => words.push(vec![piece]),
            }
            is_open = true;
        }
    }
    words
}

fn append(line: &mut Vec<Run>, run: &Run, space: bool) {
    if let Some(last) = line.last_mut() {
        if space {
            last.text.push(' ');
        }
        if last.face == run.face && last.ink == run.ink {
            last.text.push_str(&run.text);
            return;
        }
    }
    line.push(run.clone());
}

/// Cuts a word so that the head fits; one letter always goes.
fn cut(word: &[Run], size_pt: f64, room: f64) -> (Vec<Run>, Vec<Run>) {
    let (mut head, mut tail): (Vec<Run>, Vec<Run>) = (Vec::new(), Vec::new());
    let mut is_full = false;
    for run in word {
        for letter in run.text.chars() {
            let piece = Run {
                text: letter.to_string(),
                ..run.clone()
            };
            if !is_full {
                let mut longer = head.clone();
                append(&mut longer, &piece, false);
                is_full = !head.is_empty() && width_of(&longer, size_pt) > room;
                if !is_full {
                    head = longer;
                    continue;
                }
            }
            append(&mut tail, &piece, false);
        }
    }
    (head, tail)
}

pub(crate) fn width_of(runs: &[Run], size_pt: f64) -> f64 {
    runs.iter()
        .map(|run| run.face.width(&run.text, size_pt))
        .sum()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_line_is_wider_than_its_room_and_no_letter_is_lost() {
        let runs = [
            Run::text("Lemon balm "),
            Run::italic("Melissa officinalis"),
            Run::text(", fresh leaf and Donaudampfschifffahrtsgesellschaft"),
        ];
        for room in [9.0, 14.0, 30.0, 90.0] {
            let lines = wrap(&runs, 9.0, |_| room);
            let mut letters = String::new();
            for (runs, width) in &lines.lines {
                assert!(*width <= room + 1e-9, "{width} in {room}");
                letters.extend(runs.iter().map(|run| run.text.as_str()));
            }
            letters.retain(|letter| letter != ' ');
            assert_eq!(
                letters,
                "LemonbalmMelissaofficinalis,freshleafandDonaudampfschifffahrtsgesellschaft"
            );
        }
    }

    #[test]
    fn a_comma_stays_with_its_word() {
        let lines = wrap(
            &[Run::italic("officinalis"), Run::text(", leaf")],
            9.0,
            |_| 16.0,
        );
        assert_eq!(lines.lines[0].0[1].text.trim_end(), ",");
    }
}
