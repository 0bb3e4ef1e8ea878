//! How the formulary refuses.

use message::Refusal;

/// Why a jar is not composed or planned.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum Failure {
    /// A field cannot be taken as it is.
    #[error(transparent)]
    Refused(#[from] Refusal),
    /// The list of poisonous plants asks first: the same request with its plants confirmed is taken.
    #[error(transparent)]
    Asks(Refusal),
}

impl Failure {
    /// The field and the sentence.
    pub fn refusal(&self) -> &Refusal {
        match self {
            Self::Refused(refusal) | Self::Asks(refusal) => refusal,
        }
    }

    /// The same failure of another field.
    #[must_use]
    pub fn at(self, field: &'static str) -> Self {
        let renamed = |refusal: Refusal| Refusal::new(field, refusal.message);
        match self {
            Self::Refused(refusal) => Self::Refused(renamed(refusal)),
            Self::Asks(refusal) => Self::Asks(renamed(refusal)),
        }
    }
}

impl From<Failure> for message::Failure {
    fn from(failure: Failure) -> Self {
        match failure {
            Failure::Refused(refusal) => refusal.into(),
            Failure::Asks(refusal) => Self {
                field: Some(refusal.field.into_owned()),
                ..Self::new(message::Code::ConfirmPlant, refusal.message)
            },
        }
    }
}
