//! Why an estimate says what it says, or cannot say.

/// A reason beside an estimate, as a code; its sentence stands in the catalogue.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, serde::Serialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(rename = "DryingReason"))]
pub enum Reason {
    /// No weigh-in that counts yet.
    NotWeighedYet,
    /// Less than 85 % of the water is gone.
    CannotSayYet,
    /// The weight has not yet come down to what a dry lot could weigh.
    StillTooHeavy,
    /// The remaining time is spread too widely to be of use.
    TimeTooUncertain,
    /// The weight will probably settle above what counts as ready.
    MayNotGetThere,
    /// The air will probably not dry the lot to its target.
    RoomTooDamp,
    /// The air is too damp for the sorption default to say anything.
    AirOutOfRange,
    /// Nobody noted the air, so an ordinary room is assumed.
    AirNotNoted,
    /// One step of the scale is too coarse for this little herb.
    ScaleTooCoarse,
    /// A weigh-in is impossible, or fits neither those before nor those after, and was left out.
    OddWeighing,
    /// The lot loses much less or lasts much longer than a plant of this kind should.
    UnlikePrior,
    /// It rests at its stop weight; only the hand can tell.
    ProbablyDry,
}

impl Reason {
    /// A stable code.
    pub fn code(self) -> &'static str {
        match self {
            Self::NotWeighedYet => "not_weighed_yet",
            Self::CannotSayYet => "cannot_say_yet",
            Self::StillTooHeavy => "still_too_heavy",
            Self::TimeTooUncertain => "time_too_uncertain",
            Self::MayNotGetThere => "may_not_get_there",
            Self::RoomTooDamp => "room_too_damp",
            Self::AirOutOfRange => "air_out_of_range",
            Self::AirNotNoted => "air_not_noted",
            Self::ScaleTooCoarse => "scale_too_coarse",
            Self::OddWeighing => "odd_weighing",
            Self::UnlikePrior => "unlike_prior",
            Self::ProbablyDry => "probably_dry",
        }
    }
}
