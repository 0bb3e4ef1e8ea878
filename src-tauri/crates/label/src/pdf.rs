//! Writes pages as a PDF 1.7: text as text in embedded subsets of the faces, photos as the JPEGs they are.

use std::collections::BTreeMap;

use pdf_writer::types::{CidFontType, FontFlags, SystemInfo, UnicodeCmap};
use pdf_writer::{Content, Filter, Finish, Name, Pdf, Rect, Ref, Str, TextStr};
use subsetter::GlyphRemapper;

use crate::face::Face;
use crate::jpeg::Jpeg;
use crate::page::{Ink, MM_PER_PT, Mark, Page};

const SYSTEM: SystemInfo<'_> = SystemInfo {
    registry: Str(b"Adobe"),
    ordering: Str(b"Identity"),
    supplement: 0,
};

/// A PDF in the making: pages are written as they come, so that only one page's marks are held.
pub(crate) struct Writer {
    pdf: Pdf,
    next: Ref,
    tree: Ref,
    pages: Vec<Ref>,
    fonts: BTreeMap<Face, Used>,
}

/// What of a face was used so far.
struct Used {
    id: Ref,
    glyphs: GlyphRemapper,
    /// The letter and the advance of each used glyph, by its new number.
    letters: BTreeMap<u16, (char, f64)>,
}

impl Writer {
    pub(crate) fn new(title: &str) -> Self {
        let mut pdf = Pdf::new();
        let mut next = Ref::new(1);
        let (catalog, info, tree) = (next.bump(), next.bump(), next.bump());
        let mut root = pdf.catalog(catalog);
        root.pages(tree).lang(TextStr("en"));
        root.viewer_preferences().display_doc_title(true);
        root.finish();
        pdf.document_info(info)
            .title(TextStr(title))
            .producer(TextStr("Trugbook"));
        Self {
            pdf,
            next,
            tree,
            pages: Vec::new(),
            fonts: BTreeMap::new(),
        }
    }

    /// Writes one page.
    pub(crate) fn page(&mut self, page: &Page) {
        let (id, stream) = (self.next.bump(), self.next.bump());
        let mut content = Content::new();
        let mut pictures = Vec::new();
        for mark in &page.marks {
            self.mark(&mut content, &mut pictures, page.height, mark);
        }
        let packed = packed(content.finish().as_slice());
        self.pdf.stream(stream, &packed).filter(Filter::FlateDecode);

        let mut written = self.pdf.page(id);
        written.parent(self.tree).contents(stream);
        written.media_box(Rect::new(0.0, 0.0, points(page.width), points(page.height)));
        let mut resources = written.resources();
        let mut fonts = resources.fonts();
        for (face, used) in &self.fonts {
            fonts.pair(Name(font_name(*face).as_bytes()), used.id);
        }
        fonts.finish();
        let mut objects = resources.x_objects();
        for (at, picture) in pictures.iter().enumerate() {
            objects.pair(Name(picture_name(at).as_bytes()), *picture);
        }
        objects.finish();
        resources.finish();
        written.finish();
        self.pages.push(id);
    }

    fn mark(&mut self, content: &mut Content, pictures: &mut Vec<Ref>, height: f64, mark: &Mark) {
        match mark {
            Mark::Text {
                x,
                y,
                size_pt,
                face,
                ink,
                text,
            } => {
                colour(content, *ink);
                self.text(content, (*x, height - *y), *size_pt, *face, text);
            }
            Mark::Box {
                x,
                y,
                width,
                height: tall,
                ink,
            } => {
                colour(content, *ink);
                content
                    .rect(
                        points(*x),
                        points(height - y - tall),
                        points(*width),
                        points(*tall),
                    )
                    .fill_nonzero();
            }
            Mark::Code {
                x,
                y,
                module,
                modules,
            } => {
                content.set_fill_rgb(0.0, 0.0, 0.0);
                for (row, column, run) in modules.runs() {
                    let left = x + module * column as f64;
                    let bottom = height - y - module * (row + 1) as f64;
                    content.rect(
                        points(left),
                        points(bottom),
                        points(module * run as f64),
                        points(*module),
                    );
                }
                content.fill_nonzero();
            }
            Mark::Picture {
                x,
                y,
                width,
                height: tall,
                jpeg,
            } => {
                let id = self.picture(jpeg);
                let name = picture_name(pictures.len());
                pictures.push(id);
                content.save_state();
                content.transform([
                    points(*width),
                    0.0,
                    0.0,
                    points(*tall),
                    points(*x),
                    points(height - y - tall),
                ]);
                content.x_object(Name(name.as_bytes()));
                content.restore_state();
            }
        }
    }

    fn text(
        &mut self,
        content: &mut Content,
        at: (f64, f64),
        size_pt: f64,
        face: Face,
        text: &str,
    ) {
        let next = &mut self.next;
        let used = self.fonts.entry(face).or_insert_with(|| Used {
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

    fn picture(&mut self, jpeg: &Jpeg) -> Ref {
        let id = self.next.bump();
        let mut image = self.pdf.image_xobject(id, &jpeg.bytes);
        image.filter(Filter::DctDecode);
        image
            .width(i32::from(jpeg.width))
            .height(i32::from(jpeg.height))
            .bits_per_component(8);
        if jpeg.is_gray {
            image.color_space().device_gray();
        } else {
            image.color_space().device_rgb();
        }
        image.finish();
        id
    }

    /// Writes fonts and page tree, and gives the bytes.
    pub(crate) fn finish(mut self) -> Vec<u8> {
        let fonts = std::mem::take(&mut self.fonts);
        for (face, used) in &fonts {
            self.font(*face, used);
        }
        let count = i32::try_from(self.pages.len()).unwrap_or(i32::MAX);
        self.pdf
            .pages(self.tree)
            .kids(self.pages.iter().copied())
            .count(count);
        self.pdf.finish()
    }

    fn font(&mut self, face: Face, used: &Used) {
        let (cid, descriptor, unicode, file) = (
            self.next.bump(),
            self.next.bump(),
            self.next.bump(),
            self.next.bump(),
        );
        // A subset is named by six letters of its own, here by the face's place.
        let name = format!(
            "TRUGB{}+{}",
            char::from(b'A' + face as u8),
            face.postscript()
        );
        let name = Name(name.as_bytes());

        self.pdf
            .type0_font(used.id)
            .base_font(name)
            .encoding_predefined(Name(b"Identity-H"))
            .descendant_font(cid)
            .to_unicode(unicode);

        let mut font = self.pdf.cid_font(cid);
        font.subtype(CidFontType::Type2)
            .base_font(name)
            .system_info(SYSTEM)
            .font_descriptor(descriptor);
        font.cid_to_gid_map_predefined(Name(b"Identity"));
        let mut widths = font.widths();
        for (id, (_, advance)) in &used.letters {
            widths.same(*id, *id, rounded(*advance));
        }
        widths.finish();
        font.finish();

        let parsed = face.font();
        let scale = 1000.0 / f64::from(parsed.units_per_em());
        let scaled = |units: i16| rounded(f64::from(units) * scale);
        let bounds = parsed.global_bounding_box();
        let mut written = self.pdf.font_descriptor(descriptor);
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
        for (id, (letter, _)) in &used.letters {
            map.pair(*id, *letter);
        }
        let map = packed(map.finish().as_slice());
        self.pdf.cmap(unicode, &map).filter(Filter::FlateDecode);

        let font = subsetter::subset(face.bytes(), 0, &used.glyphs)
            .unwrap_or_else(|_| face.bytes().to_vec());
        let length = i32::try_from(font.len()).unwrap_or(i32::MAX);
        let font = packed(&font);
        let mut stream = self.pdf.stream(file, &font);
        stream.filter(Filter::FlateDecode);
        stream.pair(Name(b"Length1"), length);
        stream.finish();
    }
}

fn colour(content: &mut Content, ink: Ink) {
    let [red, green, blue] = ink.rgb().map(|part| rounded(f64::from(part) / 255.0));
    content.set_fill_rgb(red, green, blue);
}

fn font_name(face: Face) -> String {
    format!("F{}", face as u8)
}

fn picture_name(at: usize) -> String {
    format!("P{at}")
}

fn packed(bytes: &[u8]) -> Vec<u8> {
    miniz_oxide::deflate::compress_to_vec_zlib(bytes, 7)
}

fn points(mm: f64) -> f32 {
    rounded(mm / MM_PER_PT)
}

/// A thousandth of a point is finer than any printer.
#[allow(clippy::cast_possible_truncation)]
fn rounded(value: f64) -> f32 {
    ((value * 1000.0).round() / 1000.0) as f32
}
