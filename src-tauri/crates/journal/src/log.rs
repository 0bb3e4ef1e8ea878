//! Deeds and the changes they are made of.

use serde::{Deserialize, Serialize};
use serde_json::{Map, Value};

use crate::{DeedId, DeviceId, HybridTime};

/// The top-level fields of a row; fields that only make sense together are one.
pub type Fields = Map<String, Value>;

macro_rules! worded {
    ($(#[$doc:meta])* $name:ident { $($(#[$variant_doc:meta])* $variant:ident = $word:literal,)* }) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
        pub enum $name {
            $($(#[$variant_doc])* #[serde(rename = $word)] $variant,)*
        }

        impl $name {
            /// Every one of them.
            pub const ALL: &[Self] = &[$(Self::$variant,)*];

            /// The word that stands for it in the log and on the wire.
            pub fn as_str(self) -> &'static str {
                match self { $(Self::$variant => $word,)* }
            }

            /// The one that `word` stands for.
            pub fn parse(word: &str) -> Option<Self> {
                match word { $($word => Some(Self::$variant),)* _ => None }
            }
        }
    };
}
pub(crate) use worded;

worded!(
    /// What a row is about.
    Noun {
        /// An herb of the maker's own.
        Herb = "herb",
        /// A place where plants grow.
        Bed = "bed",
        /// One picking.
        Harvest = "harvest",
        /// A picture; its bytes are kept elsewhere.
        Photo = "photo",
        /// One drying run.
        Tray = "tray",
        /// One weigh-in of a tray.
        Weighing = "weighing",
        /// A bottle bought to pour from.
        Supply = "supply",
        /// Plants in liquid.
        Jar = "jar",
        /// A part of a lot that was thrown away.
        Discard = "discard",
        /// How one device shows the journal.
        Setting = "setting",
        /// One shaking of a jar.
        Shake = "shake",
        /// What came out of a jar.
        Straining = "straining",
        /// A bottle filled from a jar.
        Bottle = "bottle",
        /// What was taken from a bottle.
        Use = "use",
        /// A look at a bottle.
        Check = "check",
        /// A jar worth making again.
        Recipe = "recipe",
        /// A dropper whose drops were counted.
        Dropper = "dropper",
        /// Bottles that are wanted.
        Plan = "plan",
    }
);

/// Does something with the type that holds the rows of a noun: `of_noun!(noun, N => N::check_id(id))`.
#[macro_export]
macro_rules! of_noun {
    ($noun:expr, $type:ident => $body:expr) => {
        $crate::of_noun!(@ $noun, $type => $body, [
            Herb Herb, Bed Bed, Harvest Harvest, Photo Photo, Tray Tray, Weighing Weighing, Supply Supply, Jar Jar,
            Discard Discard, Setting Setting, Shake Shake, Straining Straining, Bottle Bottle, Use Use, Check Check,
            Recipe Recipe, Dropper Dropper, Plan Wish,
        ])
    };
    (@ $noun:expr, $type:ident => $body:expr, [$($variant:ident $row:ident,)*]) => {
        match $noun {
            $($crate::Noun::$variant => {
                type $type = $crate::$row;
                $body
            })*
        }
    };
}

worded!(
    /// What a change does to its row.
    Act {
        /// Makes the row exist, with all its fields.
        Record = "record",
        /// Supersedes some fields.
        Correct = "correct",
        /// Takes the row away; recording or undoing brings it back.
        Strike = "strike",
    }
);

/// One change to one row.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Change {
    /// What the row is about.
    pub noun: Noun,
    /// The row's id as text.
    pub row: String,
    /// What is done to it.
    pub act: Act,
    /// The fields that are set; null empties one.
    pub fields: Fields,
}

/// One batch of changes that came about together and is undone together.
#[derive(Debug, Clone, PartialEq)]
pub struct Deed {
    /// Its id.
    pub id: DeedId,
    /// When it was written.
    pub at: HybridTime,
    /// Where it was written.
    pub device: DeviceId,
    /// One line that tells the maker what was done.
    pub text: String,
    /// The deed that this one takes back.
    pub revokes: Option<DeedId>,
    /// What was changed, in order.
    pub changes: Vec<Change>,
}

impl Deed {
    /// The place of this deed in the one order that every device agrees on.
    pub fn order(&self) -> (HybridTime, DeviceId, DeedId) {
        (self.at, self.device, self.id)
    }
}
