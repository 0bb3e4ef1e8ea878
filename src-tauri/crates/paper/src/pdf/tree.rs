//! The tree of a document as a screen reader walks it (ISO 32000-1, 14.7 and 14.8).

use pdf_writer::types::{ListNumbering, StructRole, TableHeaderScope};
use pdf_writer::writers::StructTreeRoot;
use pdf_writer::{Finish, Pdf, Rect, Ref, TextStr};

use crate::part::Role;

/// The element that holds all others.
pub(super) const DOCUMENT: usize = 0;

/// The elements so far.
pub(super) struct Tree {
    elements: Vec<Element>,
    /// Each page, with the element of each stretch of its ink.
    pages: Vec<(Ref, Vec<usize>)>,
}

struct Element {
    id: Ref,
    parent: Option<usize>,
    /// Nothing for the document itself.
    role: Option<Role>,
    /// The box of a picture in points.
    bounds: Option<Rect>,
    kids: Vec<Kid>,
}

enum Kid {
    Element(usize),
    /// A stretch of ink by its page and its number on it.
    Ink(usize, i32),
}

impl Tree {
    pub(super) fn new(next: &mut Ref) -> Self {
        let document = Element {
            id: next.bump(),
            parent: None,
            role: None,
            bounds: None,
            kids: Vec::new(),
        };
        Self {
            elements: vec![document],
            pages: Vec::new(),
        }
    }

    /// Begins a page and gives the number by which it names its elements.
    pub(super) fn page(&mut self, page: Ref) -> i32 {
        self.pages.push((page, Vec::new()));
        number(self.pages.len() - 1)
    }

    /// A new element at the end of its parent, or the last one there where that goes on.
    pub(super) fn element(
        &mut self,
        next: &mut Ref,
        parent: usize,
        role: &Role,
        goes_on: bool,
    ) -> usize {
        if goes_on
            && let Some(Kid::Element(last)) = self.elements[parent].kids.last()
            && self.elements[*last].role.as_ref() == Some(role)
        {
            return *last;
        }
        let at = self.elements.len();
        self.elements.push(Element {
            id: next.bump(),
            parent: Some(parent),
            role: Some(role.clone()),
            bounds: None,
            kids: Vec::new(),
        });
        self.elements[parent].kids.push(Kid::Element(at));
        at
    }

    pub(super) fn bound(&mut self, element: usize, bounds: Rect) {
        self.elements[element].bounds = Some(bounds);
    }

    /// How a stretch of ink right inside an element is tagged and numbered; nothing where it is for the eye alone.
    pub(super) fn ink(&mut self, element: usize) -> Option<(StructRole, i32)> {
        let role = self.elements[element].role.as_ref()?;
        if role.is_made_of_parts() {
            return None;
        }
        let kind = kind(role);
        let at = self.pages.len() - 1;
        let inks = &mut self.pages[at].1;
        let id = number(inks.len());
        inks.push(element);
        self.elements[element].kids.push(Kid::Ink(at, id));
        Some((kind, id))
    }

    /// Writes the tree and gives its root.
    pub(super) fn write(&self, pdf: &mut Pdf, next: &mut Ref) -> Ref {
        let root = next.bump();
        let lists: Vec<Ref> = self.pages.iter().map(|_| next.bump()).collect();
        let mut written = pdf.indirect(root).start::<StructTreeRoot<'_>>();
        written.child(self.elements[DOCUMENT].id);
        let mut parents = written.parent_tree();
        let mut entries = parents.nums();
        for (at, list) in lists.iter().enumerate() {
            entries.insert(number(at), *list);
        }
        entries.finish();
        parents.finish();
        written.parent_tree_next_key(number(lists.len()));
        written.finish();
        for (list, (_, inks)) in lists.iter().zip(&self.pages) {
            let ids = inks.iter().map(|element| self.elements[*element].id);
            pdf.indirect(*list).array().typed().items(ids);
        }
        for element in &self.elements {
            self.write_element(pdf, root, element);
        }
        root
    }

    fn write_element(&self, pdf: &mut Pdf, root: Ref, element: &Element) {
        let mut written = pdf.struct_element(element.id);
        written.kind(element.role.as_ref().map_or(StructRole::Document, kind));
        written.parent(element.parent.map_or(root, |it| self.elements[it].id));
        let page = element.kids.iter().find_map(|kid| match kid {
            Kid::Ink(page, _) => Some(*page),
            Kid::Element(_) => None,
        });
        if let Some(page) = page {
            written.page(self.pages[page].0);
        }
        match &element.role {
            Some(Role::Figure(shows)) => {
                written.alt(TextStr(shows));
            }
            Some(Role::List { is_numbered: true }) => {
                let mut all = written.attributes();
                all.push().list().list_numbering(ListNumbering::Decimal);
            }
            Some(Role::Head) => {
                let mut all = written.attributes();
                all.push().table().scope(TableHeaderScope::Column);
            }
            _ => {}
        }
        if let Some(bounds) = element.bounds {
            written.attributes().push().layout().bbox(bounds);
        }
        if element.kids.is_empty() {
            return;
        }
        let mut kids = written.children();
        for kid in &element.kids {
            match kid {
                Kid::Element(at) => {
                    kids.struct_element(self.elements[*at].id);
                }
                Kid::Ink(at, id) if Some(*at) == page => {
                    kids.marked_content_id(*id);
                }
                Kid::Ink(at, id) => {
                    let mut ink = kids.marked_content_ref();
                    ink.page(self.pages[*at].0).marked_content_id(*id);
                }
            }
        }
    }
}

fn number(count: usize) -> i32 {
    i32::try_from(count).unwrap_or(i32::MAX)
}

const fn kind(role: &Role) -> StructRole {
    match role {
        Role::Title => StructRole::H1,
        Role::Heading => StructRole::H2,
        Role::Subheading => StructRole::H3,
        Role::Paragraph => StructRole::P,
        Role::List { .. } => StructRole::L,
        Role::Item => StructRole::LI,
        Role::Label => StructRole::Lbl,
        Role::Body => StructRole::LBody,
        Role::Table => StructRole::Table,
        Role::Row => StructRole::TR,
        Role::Head => StructRole::TH,
        Role::Cell => StructRole::TD,
        Role::Figure(_) => StructRole::Figure,
    }
}
