//! What a page receives when a command cannot be carried out. Each crate says beside its own error what becomes of it.

use serde::Serialize;

use crate::{Message, Refusal, say};

/// Why a command failed, as far as a page acts on it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum Code {
    /// No command has this name.
    UnknownCommand,
    /// A field is missing, unknown, of the wrong kind or outside its range.
    Invalid,
    /// The thing that an id or a key names is not there.
    NotFound,
    /// The same request with `look_alike_ruled_out: true` would be accepted.
    ConfirmLookAlike,
    /// The same request with `confirm_odd: true` would be accepted.
    ConfirmOdd,
    /// The same request with `confirmed: true` would be accepted.
    ConfirmPlant,
    /// A lot or a bottle holds less than was asked of it.
    NotEnough,
    /// The journal or the photos could not be read or written.
    Storage,
    /// The journal is damaged: `rescue.make` saves what can be read of it.
    Damaged,
    /// The journal is missing or empty: `restore.points` tells what can take its place.
    Lost,
}

/// A refusal in the maker's words.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Failure {
    /// What a page may act on.
    pub code: Code,
    /// The path of the field in the request, such as `pours[0].ml`.
    pub field: Option<String>,
    /// One finished sentence.
    pub message: Message,
}

impl Failure {
    /// A failure that no single field explains.
    pub fn new(code: Code, message: impl Into<Message>) -> Self {
        Self {
            code,
            field: None,
            message: message.into(),
        }
    }

    /// A refused field with its sentence.
    pub fn invalid(field: &str, message: impl Into<Message>) -> Self {
        Self {
            code: Code::Invalid,
            field: Some(field.to_owned()),
            message: message.into(),
        }
    }

    /// A figure that is asked about before it is taken.
    pub fn odd(field: &str, message: impl Into<Message>) -> Self {
        Self {
            code: Code::ConfirmOdd,
            field: Some(field.to_owned()),
            message: message.into(),
        }
    }

    /// A thing that is not there.
    pub fn not_found(field: &str, message: impl Into<Message>) -> Self {
        Self {
            code: Code::NotFound,
            field: Some(field.to_owned()),
            message: message.into(),
        }
    }

    /// An error of the app itself, which ended a call or a job.
    pub fn broken_off() -> Self {
        Self::new(Code::Storage, say!("broken-off"))
    }

    /// The same failure; what it quotes of a long text is cut, so that the sentence can be read.
    pub fn kept_short(mut self) -> Self {
        self.message.0.keep_short();
        self
    }

    /// The same failure, laid at the door of `field` unless one was named already.
    pub fn at(mut self, field: &str) -> Self {
        self.field.get_or_insert_with(|| field.to_owned());
        self
    }

    /// The same failure of a field that this request calls otherwise.
    pub fn renamed(mut self, field: &str) -> Self {
        self.field = Some(field.to_owned());
        self
    }

    /// The same failure with `prefix` before the path of its field.
    pub fn within(mut self, prefix: &str) -> Self {
        self.field = Some(match self.field.take() {
            Some(field) => format!("{prefix}.{field}"),
            None => prefix.to_owned(),
        });
        self
    }
}

/// Names the field that a refusal of an inner crate belongs to.
pub trait At<T> {
    /// Turns the error into a [`Failure`] of `field`.
    fn at(self, field: &str) -> Result<T, Failure>;
}

impl<T, E: Into<Failure>> At<T> for Result<T, E> {
    fn at(self, field: &str) -> Result<T, Failure> {
        self.map_err(|error| error.into().at(field))
    }
}

impl From<Refusal> for Failure {
    fn from(refusal: Refusal) -> Self {
        Self::invalid(&refusal.field, refusal.message)
    }
}
