//! A sentence with where it comes from and how sure it is.

use message::Message;
use serde::{Deserialize, Serialize};

/// How sure a fact is.
///
/// Only [`Status::Confirmed`] says that the text named as source was read.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum Status {
    /// The source was read.
    #[serde(rename = "confirmed")]
    Confirmed,
    /// A part of it, or a secondary source, was read.
    #[serde(rename = "partly confirmed")]
    PartlyConfirmed,
    /// From professional memory; no text was open.
    #[serde(rename = "memory")]
    Memory,
    /// Common practice of the trade without a source.
    #[serde(rename = "practice")]
    Practice,
    /// A limit suggested here, with the published range beside it.
    #[serde(rename = "proposal")]
    Proposal,
    /// Follows from the other figures by arithmetic.
    #[serde(rename = "computed")]
    Computed,
    /// The maker's own figure.
    #[serde(rename = "own")]
    Own,
}

impl Status {
    /// The word for it, as it stands beside a fact.
    pub fn word(self) -> &'static str {
        match self {
            Self::Confirmed => "confirmed",
            Self::PartlyConfirmed => "partly confirmed",
            Self::Memory => "memory",
            Self::Practice => "practice",
            Self::Proposal => "proposal",
            Self::Computed => "computed",
            Self::Own => "own",
        }
    }

    /// The weaker of two: what a conclusion from both deserves.
    ///
    /// ```
    /// use formulary::Status;
    /// assert_eq!(Status::Confirmed.weaker(Status::Memory), Status::Memory);
    /// assert_eq!(Status::Computed.weaker(Status::Confirmed), Status::Computed);
    /// ```
    pub fn weaker(self, other: Self) -> Self {
        let rank = |status| match status {
            Self::Own | Self::Confirmed => 0,
            Self::Computed => 1,
            Self::PartlyConfirmed => 2,
            Self::Practice => 3,
            Self::Proposal => 4,
            Self::Memory => 5,
        };
        if rank(other) > rank(self) {
            other
        } else {
            self
        }
    }
}

/// One finished plain sentence.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Note {
    /// A stable word for programs.
    pub code: String,
    /// The sentence.
    pub text: Message,
    /// Where it comes from; none where no source was found.
    pub source: Option<String>,
    /// How sure it is.
    pub status: Status,
}

impl Note {
    /// A note; an empty source is none.
    pub fn new(code: &str, text: impl Into<Message>, source: &str, status: Status) -> Self {
        Self {
            code: code.to_owned(),
            text: text.into(),
            source: source_of(source),
            status,
        }
    }

    /// A note that follows by arithmetic from what was given.
    pub fn computed(code: &str, text: impl Into<Message>) -> Self {
        Self::new(code, text, "", Status::Computed)
    }
}

/// Which way a reason speaks.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "lowercase")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(rename = "Direction"))]
pub enum Speaks {
    /// In favour.
    For,
    /// Against.
    Against,
}

/// A reason for or against a preparation.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(rename = "AdviceReason"))]
pub struct Reason {
    /// For or against.
    pub speaks: Speaks,
    /// The sentence.
    pub text: Message,
    /// Where it comes from.
    pub source: Option<String>,
    /// How sure it is.
    pub status: Status,
}

impl Reason {
    /// A reason; an empty source is none.
    pub fn new(speaks: Speaks, text: impl Into<Message>, source: &str, status: Status) -> Self {
        Self {
            speaks,
            text: text.into(),
            source: source_of(source),
            status,
        }
    }
}

/// A source as a text carries it: the entry that a table names, or a citation, which is the same in every language.
pub fn source_of(source: &str) -> Option<String> {
    match source {
        "" => None,
        ours if ours.starts_with("source-") => Some(Message::of_table(ours.to_owned()).into()),
        cited => Some(cited.to_owned()),
    }
}
