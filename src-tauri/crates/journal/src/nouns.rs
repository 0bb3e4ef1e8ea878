//! The one list of the nouns: what asks for a noun, or for all of them, follows from it.

use serde::{Deserialize, Serialize};

use crate::log::worded;

/// Hands the list to a macro of this crate, and behind it whatever is given: each noun, its word in the log and on the
/// wire, and the type that holds its rows.
#[macro_export]
macro_rules! nouns {
    ($then:ident $($given:tt)*) => {
        $crate::$then! { @nouns [
            /// An herb of the maker's own.
            Herb = "herb" in Herb,
            /// A place where plants grow.
            Bed = "bed" in Bed,
            /// One picking.
            Harvest = "harvest" in Harvest,
            /// A picture; its bytes are kept elsewhere.
            Photo = "photo" in Photo,
            /// One drying run.
            Tray = "tray" in Tray,
            /// One weigh-in of a tray.
            Weighing = "weighing" in Weighing,
            /// A bottle bought to pour from.
            Supply = "supply" in Supply,
            /// Plants in liquid.
            Jar = "jar" in Jar,
            /// A part of a lot that was thrown away.
            Discard = "discard" in Discard,
            /// How one device shows the journal.
            Setting = "setting" in Setting,
            /// One shaking of a jar.
            Shake = "shake" in Shake,
            /// What came out of a jar.
            Straining = "straining" in Straining,
            /// A bottle filled from a jar.
            Bottle = "bottle" in Bottle,
            /// What was taken from a bottle.
            Use = "use" in Use,
            /// A look at a bottle.
            Check = "check" in Check,
            /// A jar worth making again.
            Recipe = "recipe" in Recipe,
            /// A dropper whose drops were counted.
            Dropper = "dropper" in Dropper,
            /// Bottles that are wanted.
            Plan = "plan" in Wish,
            /// A photo of a jar, a bottle, a bed or an own herb on one day of its life.
            Portrait = "portrait" in Portrait,
        ] $($given)* }
    };
}

/// Does something with the type that holds the rows of a noun: `of_noun!(noun, N => N::check_id(id))`.
#[macro_export]
macro_rules! of_noun {
    (@nouns [$($(#[$doc:meta])* $noun:ident = $word:literal in $row:ident,)*] $of:expr, $type:ident => $body:expr) => {
        match $of {
            $($crate::Noun::$noun => {
                type $type = $crate::$row;
                $body
            })*
        }
    };
    ($of:expr, $type:ident => $body:expr) => {
        $crate::nouns!(of_noun $of, $type => $body)
    };
}

/// A type that the list names.
pub trait Listed {
    /// The noun whose rows it holds.
    const NOUN: Noun;
}

macro_rules! listed {
    (@nouns [$($(#[$doc:meta])* $noun:ident = $word:literal in $row:ident,)*]) => {
        worded!(
            /// What a row is about.
            Noun { $($(#[$doc])* $noun = $word,)* }
        );
        $(impl Listed for $crate::$row {
            const NOUN: Noun = Noun::$noun;
        })*
    };
}
pub(crate) use listed;

nouns!(listed);
