//! The faces of a PDF: text as glyphs of embedded subsets, and the letters that they stand for.

use std::collections::BTreeMap;

use pdf_writer::types::{CidFontType, FontFlags, SystemInfo, UnicodeCmap};
use pdf_writer::{Content, Dict, Filter, Finish, Name, Pdf, Rect, Ref, Str};
use subsetter::GlyphRemapper;

use super::{packed, points, rounded};
use crate::face::Face;

const SYSTEM: SystemInfo<'_> = SystemInfo {
    registry: Str(b"Adobe"),
    ordering: Str(b"Identity"),
    supplement: 0,
};

/// The faces used so far.
#[derive(Default)]
pub(super) struct Fonts(BTreeMap<Face, Used>);

/// What of a face was used so far.
struct Used {
    id: Ref,
    glyphs: GlyphRemapper,
    /// The letter and the advance of each used glyph, by its new number.
    letters: BTreeMap<u16, (char, f64)>,
}

impl Fonts {
    /// Shows text whose base line begins at `at`, in mm from the lower left corner of the page.
    pub(super) fn show(
        &mut self,
        next: &mut Ref,
        content: &mut Content,
        at: (f64, f64),
        size_pt: f64,
        face: Face,
        text: &str,
    ) {
        let used = self.0.entry(face).or_insert_with(|| Used {
            id: next.bump(),
            glyphs: GlyphRemapper::new(),
            letters: BTreeMap::new(),
        });
        content.begin_text();
        content.set_font(Name(font_name(face).as_bytes()), rounded(size_pt));
        content.next_line(points(at.0), points(at.1));
        let mut shown = content.show_positioned();
        let mut items = shown.items();
        let mut piece: Vec<u8> = Vec::new();
        for glyph in face.shape(text) {
            let id = used.glyphs.remap(glyph.id);
            used.letters.insert(id, (glyph.letter, glyph.advance));
            piece.extend(id.to_be_bytes());
            if glyph.kern != 0.0 {
                items.show(Str(&std::mem::take(&mut piece)));
                items.adjust(rounded(-glyph.kern));
            }
        }
        if !piece.is_empty() {
            items.show(Str(&piece));
        }
        items.finish();
        shown.finish();
        content.end_text();
    }

    /// Names the faces for a page.
    pub(super) fn name(&self, fonts: &mut Dict<'_>) {
        for (face, used) in &self.0 {
            fonts.pair(Name(font_name(*face).as_bytes()), used.id);
        }
    }

    pub(super) fn write(&self, pdf: &mut Pdf, next: &mut Ref) {
        for (face, used) in &self.0 {
            used.write(*face, pdf, next);
        }
    }
}

impl Used {
    fn write(&self, face: Face, pdf: &mut Pdf, next: &mut Ref) {
        let (cid, descriptor, unicode, file) = (next.bump(), next.bump(), next.bump(), next.bump());
        // A subset is named by six letters of its own, here by the face's place.
        let name = format!(
            "TRUGB{}+{}",
            char::from(b'A' + face as u8),
            face.postscript()
        );
        let name = Name(name.as_bytes());

        pdf.type0_font(self.id)
            .base_font(name)
            .encoding_predefined(Name(b"Identity-H"))
            .descendant_font(cid)
            .to_unicode(unicode);

        let mut font = pdf.cid_font(cid);
        font.subtype(CidFontType::Type2)
            .base_font(name)
            .system_info(SYSTEM)
            .font_descriptor(descriptor);
        font.cid_to_gid_map_predefined(Name(b"Identity"));
        let mut widths = font.widths();
        for (id, (_, advance)) in &self.letters {
            widths.same(*id, *id, rounded(*advance));
        }
        widths.finish();
        font.finish();

        let parsed = face.font();
        let scale = 1000.0 / f64::from(parsed.units_per_em());
        let scaled = |units: i16| rounded(f64::from(units) * scale);
        let bounds = parsed.global_bounding_box();
        let mut written = pdf.font_descriptor(descriptor);
        let slant = if face == Face::Italic {
            FontFlags::ITALIC
        } else {
            FontFlags::empty()
        };
        written.name(name).flags(FontFlags::NON_SYMBOLIC | slant);
        written.bbox(Rect::new(
            scaled(bounds.x_min),
            scaled(bounds.y_min),
            scaled(bounds.x_max),
            scaled(bounds.y_max),
        ));
        written.italic_angle(parsed.italic_angle());
        written
            .ascent(scaled(parsed.ascender()))
            .descent(scaled(parsed.descender()));
        written.cap_height(scaled(parsed.capital_height().unwrap_or(650)));
        // The width of a stem, which no table of the font tells; viewers use it only where the font cannot be read.
        written.stem_v(90.0).font_file2(file);
        written.finish();

        let mut map = UnicodeCmap::<u16>::new(Name(b"Trugbook"), SYSTEM);
        for (id, (letter, _)) in &self.letters {
            map.pair(*id, *letter);
        }
        let map = packed(map.finish().as_slice());
        pdf.cmap(unicode, &map).filter(Filter::FlateDecode);

        let font = subsetter::subset(face.bytes(), 0, &self.glyphs)
            .unwrap_or_else(|_| face.bytes().to_vec());
        let length = i32::try_from(font.len()).unwrap_or(i32::MAX);
        let font = packed(&font);
        let mut stream = pdf.stream(file, &font);
        stream.filter(Filter::FlateDecode);
        stream.pair(Name(b"Length1"), length);
        stream.finish();
    }
}

fn font_name(face: Face) -> String {
    format!("F{}", face as u8)
}
