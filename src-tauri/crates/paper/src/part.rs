//! What stands on a page as whoever hears it read out meets it: headings, paragraphs, lists, tables and pictures.
//!
//! The order of the parts is the order in which they are read. A mark in no part is for the eye alone.

use crate::page::Mark;

/// What a part is.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum Role {
    /// The name of the whole.
    Title,
    /// Of a section.
    Heading,
    /// Of what stands in a section.
    Subheading,
    Paragraph,
    /// Made of items.
    List {
        is_numbered: bool,
    },
    /// Made of a body, and of a label before it where the list is numbered.
    Item,
    Label,
    Body,
    /// Made of rows.
    Table,
    /// Made of heads or of cells.
    Row,
    /// The head of a column.
    Head,
    Cell,
    /// A picture, with what it shows in the reader's language.
    Figure(String),
}

impl Role {
    /// Whether it is made of other parts, so that a mark of its own, such as a rule, is for the eye alone.
    pub(crate) const fn is_made_of_parts(&self) -> bool {
        matches!(
            self,
            Self::List { .. } | Self::Item | Self::Table | Self::Row
        )
    }
}

/// Marks that are read as one.
#[derive(Debug, Clone)]
pub(crate) struct Part {
    pub(crate) role: Role,
    /// Whether it goes on with the part before it, which is of the same role: the lines or the items of the next page.
    pub(crate) goes_on: bool,
    pub(crate) marks: Vec<Mark>,
}

/// A part of its own.
pub(crate) fn part(role: Role, marks: Vec<Mark>) -> Mark {
    part_of(role, false, marks)
}

/// A part, or more of the one before it.
pub(crate) fn part_of(role: Role, goes_on: bool, marks: Vec<Mark>) -> Mark {
    Mark::Part(Part {
        role,
        goes_on,
        marks,
    })
}

/// One more item of the list before it, or the first one of a list.
pub(crate) fn item(is_first: bool, body: Vec<Mark>) -> Mark {
    let body = part(Role::Body, body);
    let item = part(Role::Item, vec![body]);
    part_of(Role::List { is_numbered: false }, !is_first, vec![item])
}
