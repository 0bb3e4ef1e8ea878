//! The one way in which a field is refused.

use std::borrow::Cow;

use crate::Message;

/// Why what stands in a field cannot be taken.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{message}")]
pub struct Refusal {
    /// The field that is at fault, as a path in the request.
    pub field: Cow<'static, str>,
    /// A finished sentence that names the accepted range.
    pub message: Message,
}

impl Refusal {
    /// A refusal of `field` with a finished sentence.
    pub fn new(field: impl Into<Cow<'static, str>>, message: impl Into<Message>) -> Self {
        Self {
            field: field.into(),
            message: message.into(),
        }
    }
}
