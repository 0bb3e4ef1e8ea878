//! Why an estimate says what it says, as a sentence.

use message::Message;
use physics::drying::Reason;

/// One plain sentence for the maker.
pub(super) fn said(reason: Reason) -> Message {
    match reason {
        Reason::NotWeighedYet => Message::new("lot-not-weighed-yet"),
        Reason::CannotSayYet => Message::new("lot-cannot-say-yet"),
        Reason::StillTooHeavy => Message::new("lot-still-too-heavy"),
        Reason::TimeTooUncertain => Message::new("lot-time-too-uncertain"),
        Reason::MayNotGetThere => Message::new("lot-may-not-get-there"),
        Reason::RoomTooDamp => Message::new("lot-room-too-damp"),
        Reason::AirOutOfRange => Message::new("lot-air-out-of-range"),
        Reason::AirNotNoted => Message::new("lot-air-not-noted"),
        Reason::ScaleTooCoarse => Message::new("lot-scale-too-coarse"),
        Reason::OddWeighing => Message::new("lot-odd-weighing"),
        Reason::UnlikePrior => Message::new("lot-unlike-its-kind"),
        Reason::ProbablyDry => Message::new("lot-probably-dry"),
    }
}
