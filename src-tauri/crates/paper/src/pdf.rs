//! Writes pages as a PDF 1.7: text as text in embedded subsets of the faces, photos as the JPEGs they are, and the parts
//! as the tree that a screen reader walks.

mod fonts;
mod shape;
mod tree;

use pdf_writer::types::TabOrder;
use pdf_writer::{Content, Filter, Finish, Name, Pdf, Rect, Ref, Settings, TextStr, XRefFilter};
use words::Language;

use crate::jpeg::Jpeg;
use crate::page::{Mark, Page, bounds};
use crate::part::{Part, Role};
use crate::units::MM_PER_PT;
use fonts::Fonts;
use shape::{colour, shape};
use tree::{DOCUMENT, Tree};

/// A PDF in the making: pages are written as they come, so that only one page's marks are held.
pub(crate) struct Writer {
    pdf: Pdf,
    next: Ref,
    catalog: Ref,
    language: Language,
    /// The node above all pages.
    above: Ref,
    pages: Vec<Ref>,
    fonts: Fonts,
    tree: Tree,
}

/// What is written of one page.
struct Sheet {
    /// How tall it is, in mm.
    height: f64,
    content: Content,
    pictures: Vec<Ref>,
}

impl Writer {
    pub(crate) fn new(title: &str, language: Language) -> Self {
        // A tree has many small objects, which the white space of a pretty file makes half as large again.
        let mut pdf = Pdf::with_settings(Settings { pretty: false });
        let mut next = Ref::new(1);
        let (catalog, info, above) = (next.bump(), next.bump(), next.bump());
        pdf.document_info(info)
            .title(TextStr(title))
            .producer(TextStr("Trugbook"));
        let tree = Tree::new(&mut next);
        Self {
            pdf,
            next,
            catalog,
            language,
            above,
            pages: Vec::new(),
            fonts: Fonts::default(),
            tree,
        }
    }

    /// Writes one page.
    pub(crate) fn page(&mut self, page: &Page) {
        let (id, stream) = (self.next.bump(), self.next.bump());
        let number = self.tree.page(id);
        let mut sheet = Sheet {
            height: page.height,
            content: Content::new(),
            pictures: Vec::new(),
        };
        self.marks(&mut sheet, DOCUMENT, &page.marks);
        let packed = packed(sheet.content.finish().as_slice());
        self.pdf.stream(stream, &packed).filter(Filter::FlateDecode);

        let mut written = self.pdf.page(id);
        written.parent(self.above).contents(stream);
        written
            .struct_parents(number)
            .tab_order(TabOrder::StructureOrder);
        written.media_box(Rect::new(0.0, 0.0, points(page.width), points(page.height)));
        let mut resources = written.resources();
        let mut fonts = resources.fonts();
        self.fonts.name(&mut fonts);
        fonts.finish();
        let mut objects = resources.x_objects();
        for (at, picture) in sheet.pictures.iter().enumerate() {
            objects.pair(Name(picture_name(at).as_bytes()), *picture);
        }
        objects.finish();
        resources.finish();
        written.finish();
        self.pages.push(id);
    }

    /// Writes marks that stand right inside an element, each stretch of ink between two parts as one.
    fn marks(&mut self, sheet: &mut Sheet, element: usize, marks: &[Mark]) {
        let is_ink = |mark: &Mark| !matches!(mark, Mark::Part(_));
        for stretch in marks.chunk_by(|one, next| is_ink(one) && is_ink(next)) {
            if let [Mark::Part(part)] = stretch {
                self.part(sheet, element, part);
                continue;
            }
            match self.tree.ink(element) {
                Some((kind, id)) => {
                    let content = &mut sheet.content;
                    let mut begun = content.begin_marked_content_with_properties(kind.to_name());
                    begun.properties().identify(id);
                }
                None => {
                    sheet.content.begin_marked_content(Name(b"Artifact"));
                }
            }
            for mark in stretch {
                self.ink(sheet, mark);
            }
            sheet.content.end_marked_content();
        }
    }

    fn part(&mut self, sheet: &mut Sheet, parent: usize, part: &Part) {
        let (next, goes_on) = (&mut self.next, part.goes_on);
        let element = self.tree.element(next, parent, &part.role, goes_on);
        if let (Role::Figure(_), Some([left, top, right, bottom])) =
            (&part.role, bounds(&part.marks))
        {
            let (low, high) = (sheet.height - bottom, sheet.height - top);
            let ends = Rect::new(points(left), points(low), points(right), points(high));
            self.tree.bound(element, ends);
        }
        self.marks(sheet, element, &part.marks);
    }

    fn ink(&mut self, sheet: &mut Sheet, mark: &Mark) {
        let Sheet {
            height,
            content,
            pictures,
        } = sheet;
        let height = *height;
        match mark {
            // Its ink is written by whoever writes the part.
            Mark::Part(_) => {}
            Mark::Text {
                x,
                y,
                size_pt,
                face,
                ink,
                text,
            } => {
                colour(content, *ink);
                let (fonts, next) = (&mut self.fonts, &mut self.next);
                fonts.show(next, content, (*x, height - *y), *size_pt, *face, text);
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
            Mark::Shape {
                x,
                y,
                strokes,
                fill,
                edge,
            } => shape(content, (*x, height - y), strokes, *fill, *edge),
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

    /// Writes fonts, pages and tree, and gives the bytes.
    pub(crate) fn finish(mut self) -> Vec<u8> {
        let (pdf, next) = (&mut self.pdf, &mut self.next);
        self.fonts.write(pdf, next);
        let tree = self.tree.write(pdf, next);
        let mut root = pdf.catalog(self.catalog);
        root.pages(self.above).lang(TextStr(self.language.tag()));
        root.viewer_preferences().display_doc_title(true);
        root.mark_info().marked(true);
        root.pair(Name(b"StructTreeRoot"), tree);
        root.finish();
        let count = i32::try_from(self.pages.len()).unwrap_or(i32::MAX);
        pdf.pages(self.above)
            .kids(self.pages.iter().copied())
            .count(count);
        let places = next.bump();
        let pack = |bytes: &[u8]| (packed(bytes), XRefFilter::Single(Filter::FlateDecode));
        self.pdf.finish_with_xref_stream_and_filter(places, pack)
    }
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
