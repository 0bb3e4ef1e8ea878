//! What a page receives when a command cannot be carried out.

use physics::OutOfRange;
use serde::Serialize;

use crate::words;

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
    pub message: String,
}

impl Failure {
    /// A failure that no single field explains.
    pub fn new(code: Code, message: impl Into<String>) -> Self {
        Self {
            code,
            field: None,
            message: message.into(),
        }
    }

    /// A refused field with its sentence.
    pub fn invalid(field: &str, message: impl Into<String>) -> Self {
        Self {
            code: Code::Invalid,
            field: Some(field.to_owned()),
            message: message.into(),
        }
    }

    /// A figure that is asked about before it is taken.
    pub fn odd(field: &str, message: impl Into<String>) -> Self {
        Self {
            code: Code::ConfirmOdd,
            field: Some(field.to_owned()),
            message: message.into(),
        }
    }

    /// A thing that is not there.
    pub fn not_found(field: &str, message: impl Into<String>) -> Self {
        Self {
            code: Code::NotFound,
            field: Some(field.to_owned()),
            message: message.into(),
        }
    }

    /// An error of the app itself, which ended a call or a job.
    pub(crate) fn broken_off() -> Self {
        Self::new(
            Code::Storage,
            "This broke off because of an error in the app; nothing was lost.",
        )
    }

    /// The same failure; what it quotes of a long text is cut, so that the sentence can be read.
    pub(crate) fn kept_short(mut self) -> Self {
        const QUOTED: usize = 60;
        const LONGEST: usize = 600;
        // A message is cut when it has become words.
        let is_carried = message::carried::is_in(&self.message);
        if is_carried || self.message.chars().count() <= LONGEST {
            return self;
        }
        let text = &self.message;
        self.message = match (text.find('"'), text.rfind('"')) {
            (Some(first), Some(last)) if first < last => {
                let quoted: String = text[first..last].chars().take(QUOTED).collect();
                let after: String = text[last..].chars().take(LONGEST).collect();
                format!("{}{quoted}…{after}", &text[..first])
            }
            _ => text.chars().take(LONGEST).chain("….".chars()).collect(),
        };
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
pub(crate) trait At<T> {
    /// Turns the error into a [`Failure`] of `field`.
    fn at(self, field: &str) -> Result<T, Failure>;
}

impl<T, E: Into<Failure>> At<T> for Result<T, E> {
    fn at(self, field: &str) -> Result<T, Failure> {
        self.map_err(|error| error.into().at(field))
    }
}

impl From<OutOfRange> for Failure {
    fn from(error: OutOfRange) -> Self {
        Self::new(Code::Invalid, words::sentence(&error.to_string()))
    }
}

impl From<serde_path_to_error::Error<serde_json::Error>> for Failure {
    fn from(error: serde_path_to_error::Error<serde_json::Error>) -> Self {
        let path = error.path().to_string();
        words::refused_json(&path, error.inner())
    }
}

impl From<::photo::PhotoError> for Failure {
    fn from(error: ::photo::PhotoError) -> Self {
        use ::photo::PhotoError;
        let code = match &error {
            PhotoError::Empty | PhotoError::TooLarge | PhotoError::NotAPicture => Code::Invalid,
            PhotoError::BadHash => Code::NotFound,
            PhotoError::DiskFull | PhotoError::Disk(_) => Code::Storage,
        };
        Self::new(code, error.to_string())
    }
}

impl From<archive::Trouble> for Failure {
    fn from(trouble: archive::Trouble) -> Self {
        use archive::Trouble;
        let field = match &trouble {
            Trouble::TooMuch(_) => Some("photos"),
            Trouble::Sealed | Trouble::WrongPassphrase | Trouble::TooCostly => Some("passphrase"),
            Trouble::NotOurs | Trouble::Newer | Trouble::Damaged(_) | Trouble::Foreign(_) => {
                Some("file")
            }
            _ => None,
        };
        let message = trouble.to_string();
        match field {
            Some(field) => Self::invalid(field, message),
            None => Self::new(Code::Storage, message),
        }
    }
}

impl From<journal::Refusal> for Failure {
    fn from(refusal: journal::Refusal) -> Self {
        Self::invalid(refusal.field, refusal.message)
    }
}

impl From<store::Failure> for Failure {
    fn from(failure: store::Failure) -> Self {
        use store::Failure as Stored;
        let code = match &failure {
            Stored::NotEnough { .. } => Code::NotEnough,
            Stored::NotFound { .. } | Stored::NoSuchDeed => Code::NotFound,
            Stored::Refused(_)
            | Stored::RestedOn { .. }
            | Stored::Unfit { .. }
            | Stored::AlreadyUndone(_)
            | Stored::Unchanged => Code::Invalid,
            Stored::Damaged(_) | Stored::NotAJournal => Code::Damaged,
            _ => Code::Storage,
        };
        let field = failure.field().map(str::to_owned);
        Self {
            code,
            field,
            message: failure.to_string(),
        }
    }
}
