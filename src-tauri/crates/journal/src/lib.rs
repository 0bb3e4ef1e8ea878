//! What is written down about plants, trays and jars, and the rules it obeys.
//!
//! The journal is a log of [`Deed`]s, each a batch of [`Change`]s to rows of
//! nouns. The log is the only truth: the state of a row is the [`fold`](fold())
//! of its changes, and everything else (stock, state, lists) follows from that.
//! Nothing is erased; a correction is a later change and an undo is a deed that
//! revokes another one.
//!
//! Nothing here knows the time, the disk or chance: ids and times are given.

mod carried;
mod fold;
mod id;
mod kept;
mod ledger;
mod log;
mod lot_code;
mod noun;
mod nouns;
mod refusal;
mod time;

pub use fold::{Row, fold, revoked};
pub use id::{
    BedId, BottleId, CheckId, DeedId, DeviceId, DiscardId, DropperId, HarvestId, HerbId, HerbKey,
    JarId, PhotoHash, PortraitId, RecipeId, RowId, ShakeId, StrainingId, SupplyId, TrayId, UseId,
    WeighingId, WishId,
};
pub use kept::{Kept, RowRef};
pub use ledger::{Amount, Draw, Lot, Source, Unit, left};
pub use log::{Act, Change, Deed, Fields, Line};
pub use lot_code::LotCode;
pub use message::Refusal;
pub use noun::bed::Bed;
pub use noun::bottle::{Bottle, BottleState, End, EndKind};
pub use noun::discard::Discard;
pub use noun::dropper::Dropper;
pub use noun::harvest::{Harvest, HarvestState, Surface, TimeFrom, Weighed};
pub use noun::herb::Herb;
pub use noun::jar::{Added, Failed, Jar, JarState, Plant, Pour, SteepDays};
pub use noun::look::{Check, Outcome, PhRead};
pub use noun::photo::{Photo, Place};
pub use noun::portrait::{Pictured, Portrait};
pub use noun::recipe::{Recipe, RecipePlant};
pub use noun::setting::{Hemisphere, Scheme, Setting, Units};
pub use noun::shake::Shake;
pub use noun::straining::{How, Straining, expected_retention, student_90};
pub use noun::supply::{Price, Supply};
pub use noun::tray::{Air, Cooked, Lost, OvenSample, TakenDown, Tray};
pub use noun::usage::{Use, runs_out};
pub use noun::weighing::{Weighing, weighings_fit};
pub use noun::wish::Wish;
pub(crate) use nouns::listed;
pub use nouns::{Listed, Noun};
pub use physics::PlantState;
pub use physics::interval::Interval;
pub use physics::mixture::Item;
pub use time::{HybridTime, days_since};
