//! Why an estimate says what it says, as a sentence.

use message::{Message, say};
use physics::drying::Reason;

/// One plain sentence for the maker.
pub fn said(reason: Reason) -> Message {
    match reason {
        Reason::NotWeighedYet => say!("lot-not-weighed-yet"),
        Reason::CannotSayYet => say!("lot-cannot-say-yet"),
        Reason::StillTooHeavy => say!("lot-still-too-heavy"),
        Reason::TimeTooUncertain => say!("lot-time-too-uncertain"),
        Reason::MayNotGetThere => say!("lot-may-not-get-there"),
        Reason::RoomTooDamp => say!("lot-room-too-damp"),
        Reason::AirOutOfRange => say!("lot-air-out-of-range"),
        Reason::AirNotNoted => say!("lot-air-not-noted"),
        Reason::ScaleTooCoarse => say!("lot-scale-too-coarse"),
        Reason::OddWeighing => say!("lot-odd-weighing"),
        Reason::UnlikePrior => say!("lot-unlike-its-kind"),
        Reason::ProbablyDry => say!("lot-probably-dry"),
    }
}
