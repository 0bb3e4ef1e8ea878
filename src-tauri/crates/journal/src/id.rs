//! Ids: one type per noun, so that a tray is never taken for a jar.

use message::say;
use std::fmt::{Debug, Display};
use std::str::FromStr;

use serde::{Deserialize, Serialize};
use uuid::Uuid;

use crate::Refusal;

/// What names a row of a noun; its text is the same on every phone.
pub trait RowId: Clone + Ord + Debug + Display + FromStr<Err = Refusal> {}

macro_rules! uuid_id {
    ($($(#[$doc:meta])* $name:ident;)*) => {$(
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
        #[serde(transparent)]
        pub struct $name(pub Uuid);

        impl Display for $name {
            fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
                Display::fmt(&self.0, f)
            }
        }

        impl FromStr for $name {
            type Err = Refusal;

            fn from_str(text: &str) -> Result<Self, Refusal> {
                Uuid::parse_str(text)
                    .map(Self)
                    .map_err(|_| Refusal::new("id", say!("refused-id")))
            }
        }

        impl RowId for $name {}
    )*};
}

uuid_id! {
    /// One batch of changes.
    DeedId;
    /// A phone or computer that writes into a journal.
    DeviceId;
    /// An herb of the maker's own; built-in herbs have a key only.
    HerbId;
    /// A place where plants grow.
    BedId;
    /// One picking.
    HarvestId;
    /// One drying run, and the dried lot that comes of it.
    TrayId;
    /// One weigh-in of a tray.
    WeighingId;
    /// A bottle bought to pour from.
    SupplyId;
    /// A jar with plants and liquid in it.
    JarId;
    /// A part of a lot that was thrown away.
    DiscardId;
    /// One shaking of a jar.
    ShakeId;
    /// What came out of a jar.
    StrainingId;
    /// A bottle filled from a jar.
    BottleId;
    /// What was taken from a bottle.
    UseId;
    /// A look at a bottle.
    CheckId;
    /// A jar worth making again.
    RecipeId;
    /// A dropper whose drops were counted.
    DropperId;
    /// Bottles that are wanted.
    WishId;
    /// A photo of a jar, a bottle, a bed or an own herb.
    PortraitId;
}

/// Names an herb: the key of a built-in one, or the id of one's own as text.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct HerbKey(String);

impl HerbKey {
    /// The key as text.
    pub fn as_str(&self) -> &str {
        &self.0
    }

    /// The id, if this is an herb of the maker's own.
    pub fn as_own(&self) -> Option<HerbId> {
        Uuid::parse_str(&self.0).ok().map(HerbId)
    }
}

impl From<HerbId> for HerbKey {
    fn from(id: HerbId) -> Self {
        Self(id.to_string())
    }
}

impl FromStr for HerbKey {
    type Err = Refusal;

    fn from_str(text: &str) -> Result<Self, Refusal> {
        crate::refusal::text("herb", say!("what-herb"), text, 80)?;
        Ok(Self(text.to_owned()))
    }
}

impl TryFrom<String> for HerbKey {
    type Error = Refusal;

    fn try_from(text: String) -> Result<Self, Refusal> {
        text.parse()
    }
}

impl From<HerbKey> for String {
    fn from(key: HerbKey) -> Self {
        key.0
    }
}

impl Display for HerbKey {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(&self.0)
    }
}

/// The hash of a photo's original bytes, 64 hexadecimal digits in lower case;
/// being the row's name, the same picture is one row on every phone.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct PhotoHash(String);

impl PhotoHash {
    /// The hash as text.
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

impl FromStr for PhotoHash {
    type Err = Refusal;

    fn from_str(text: &str) -> Result<Self, Refusal> {
        if text.len() == 64 && text.bytes().all(|b| matches!(b, b'0'..=b'9' | b'a'..=b'f')) {
            Ok(Self(text.to_owned()))
        } else {
            Err(Refusal::new("photos", say!("refused-photo-id")))
        }
    }
}

impl TryFrom<String> for PhotoHash {
    type Error = Refusal;

    fn try_from(text: String) -> Result<Self, Refusal> {
        text.parse()
    }
}

impl From<PhotoHash> for String {
    fn from(hash: PhotoHash) -> Self {
        hash.0
    }
}

impl Display for PhotoHash {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(&self.0)
    }
}

impl RowId for PhotoHash {}
