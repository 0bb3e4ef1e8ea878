//! The four bundled faces: which glyph a letter is, how wide a text is, how pairs are kerned.

use std::collections::BTreeSet;
use std::sync::OnceLock;

use ttf_parser::GlyphId;
use ttf_parser::gpos::{PairAdjustment, PositioningSubtable};

use crate::units::MM_PER_PT;

/// A face by what it is used for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Face {
    /// Names and titles: Alegreya Bold.
    Title,
    /// Binomials and the maker's own words: Alegreya Medium Italic.
    Italic,
    /// Everything else: Alegreya Sans Medium.
    Text,
    /// What must be seen first: Alegreya Sans Bold.
    Strong,
}

/// One letter set in a face, in units of a thousandth of the size.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Glyph {
    pub(crate) id: u16,
    pub(crate) letter: char,
    pub(crate) advance: f64,
    /// Added to the advance before the next letter.
    pub(crate) kern: f64,
}

impl Face {
    /// The font file.
    pub(crate) const fn bytes(self) -> &'static [u8] {
        match self {
            Self::Title => include_bytes!("../fonts/alegreya-bold.ttf"),
            Self::Italic => include_bytes!("../fonts/alegreya-medium-italic.ttf"),
            Self::Text => include_bytes!("../fonts/alegreya-sans-medium.ttf"),
            Self::Strong => include_bytes!("../fonts/alegreya-sans-bold.ttf"),
        }
    }

    /// Family, weight and style as CSS names them.
    pub(crate) const fn css(self) -> (&'static str, u16, &'static str) {
        match self {
            Self::Title => ("Alegreya", 700, "normal"),
            Self::Italic => ("Alegreya", 500, "italic"),
            Self::Text => ("Alegreya Sans", 500, "normal"),
            Self::Strong => ("Alegreya Sans", 700, "normal"),
        }
    }

    /// The name a PDF calls the font by.
    pub(crate) const fn postscript(self) -> &'static str {
        match self {
            Self::Title => "Alegreya-Bold",
            Self::Italic => "Alegreya-MediumItalic",
            Self::Text => "AlegreyaSans-Medium",
            Self::Strong => "AlegreyaSans-Bold",
        }
    }

    /// The parsed font.
    pub(crate) fn font(self) -> &'static ttf_parser::Face<'static> {
        static FONTS: [OnceLock<ttf_parser::Face<'static>>; 4] = [const { OnceLock::new() }; 4];
        FONTS[self as usize].get_or_init(|| {
            ttf_parser::Face::parse(self.bytes(), 0)
                .expect("the bundled fonts are whole, as the tests of this crate hold")
        })
    }

    /// The letters of a text as glyphs; a letter the face lacks is skipped, see [`unknown_letters`].
    pub(crate) fn shape(self, text: &str) -> Vec<Glyph> {
        let font = self.font();
        let scale = 1000.0 / f64::from(font.units_per_em());
        let mut glyphs: Vec<Glyph> = Vec::with_capacity(text.len());
        for letter in text.chars() {
            let Some(id) = font.glyph_index(letter) else {
                continue;
            };
            // Spaces are not kerned, so that a line is as wide as its words and the spaces between them.
            if let Some(before) = glyphs.last_mut()
                && letter != ' '
                && before.letter != ' '
            {
                before.kern = f64::from(self.kerning(GlyphId(before.id), id)) * scale;
            }
            let advance = f64::from(font.glyph_hor_advance(id).unwrap_or(0)) * scale;
            glyphs.push(Glyph {
                id: id.0,
                letter,
                advance,
                kern: 0.0,
            });
        }
        glyphs
    }

    /// How wide a text is, in mm.
    pub(crate) fn width(self, text: &str, size_pt: f64) -> f64 {
        let thousandths: f64 = self
            .shape(text)
            .iter()
            .map(|glyph| glyph.advance + glyph.kern)
            .sum();
        thousandths / 1000.0 * size_pt * MM_PER_PT
    }

    fn kerning(self, left: GlyphId, right: GlyphId) -> i16 {
        for pair in self.pairs() {
            let Some(row) = pair.coverage().get(left) else {
                continue;
            };
            match pair {
                PairAdjustment::Format1 { sets, .. } => {
                    if let Some((first, _)) = sets.get(row).and_then(|set| set.get(right)) {
                        return first.x_advance;
                    }
                }
                PairAdjustment::Format2 {
                    classes, matrix, ..
                } => {
                    let classes = (classes.0.get(left), classes.1.get(right));
                    return matrix.get(classes).map_or(0, |(first, _)| first.x_advance);
                }
            }
        }
        0
    }

    /// The kerning of the face, found once: looking for it at every letter takes longer than all the rest.
    fn pairs(self) -> &'static [PairAdjustment<'static>] {
        static PAIRS: [OnceLock<Vec<PairAdjustment<'static>>>; 4] = [const { OnceLock::new() }; 4];
        PAIRS[self as usize].get_or_init(|| {
            let Some(table) = self.font().tables().gpos else {
                return Vec::new();
            };
            table
                .lookups
                .into_iter()
                .flat_map(|lookup| lookup.subtables.into_iter::<PositioningSubtable<'_>>())
                .filter_map(|subtable| match subtable {
                    PositioningSubtable::Pair(pair) => Some(pair),
                    _ => None,
                })
                .collect()
        })
    }
}

/// The letters of a text that no bundled face can print, each once, in the order of their code and with spaces between.
pub(crate) fn unknown_letters(text: &str) -> String {
    let unknown: BTreeSet<char> = text
        .chars()
        .filter(|letter| !letter.is_whitespace() && !letter.is_control())
        .filter(|letter| Face::Text.font().glyph_index(*letter).is_none())
        .collect();
    let letters: Vec<String> = unknown.iter().map(char::to_string).collect();
    letters.join(" ")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_bundled_face_is_whole_and_knows_the_same_letters() {
        for face in [Face::Title, Face::Italic, Face::Text, Face::Strong] {
            for letter in "aZ09ßœžΩЖ–·×≈≤→’“½%°".chars() {
                assert!(
                    face.font().glyph_index(letter).is_some(),
                    "{face:?} lacks {letter}"
                );
            }
        }
    }

    #[test]
    fn pairs_are_kerned() {
        let apart = Face::Title.width("T", 10.0) + Face::Title.width("o", 10.0);
        assert!(
            Face::Title.width("To", 10.0) < apart,
            "the o goes under the arm of the T"
        );
    }

    #[test]
    fn letters_no_face_can_print_are_named() {
        assert_eq!(unknown_letters("Salbei 🌿 茶"), "茶 🌿");
    }
}
