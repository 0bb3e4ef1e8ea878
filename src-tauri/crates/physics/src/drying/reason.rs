//! Why an estimate says what it says, or cannot say.

/// A reason beside an estimate, as a code and one finished sentence.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
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
    /// A weigh-in is impossible and was left out.
    OddWeighing,
    /// The lot loses much less or lasts much longer than a plant of this kind should.
    UnlikePrior,
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
        }
    }

    /// One plain sentence for the maker.
    pub fn text(self) -> &'static str {
        match self {
            Self::NotWeighedYet => {
                "The lot has not been weighed since it was picked, so its moisture now is not known."
            }
            Self::CannotSayYet => {
                "Cannot say yet: until about 85 % of the water is gone, weigh-ins tell almost nothing about the final weight or the time left."
            }
            Self::StillTooHeavy => {
                "The lot is still heavier than a dry lot of this plant could be, so the estimate rests on what was known before."
            }
            Self::TimeTooUncertain => {
                "The time left cannot be given as a useful range yet; another weigh-in in a day will help."
            }
            Self::MayNotGetThere => {
                "The lot may settle before it is dry enough in this air; note the temperature and humidity, or finish it warm."
            }
            Self::RoomTooDamp => {
                "The air is too damp to dry the lot to its target; finish it warm or move it."
            }
            Self::AirOutOfRange => {
                "At this humidity or temperature it is not known how dry the lot can become."
            }
            Self::AirNotNoted => {
                "The air was not noted, so an ordinary room of about half humidity is assumed; in a damper one the weight can keep still before the herb is dry enough."
            }
            Self::ScaleTooCoarse => {
                "The scale is too coarse for so little herb to tell when it is dry; judge by snap and feel, or use a finer scale."
            }
            Self::OddWeighing => {
                "A weigh-in is heavier than the fresh herb or lighter than its dry matter could be, and was left out."
            }
            Self::UnlikePrior => {
                "The lot does not behave like a plant of this kind; was it wet or washed when it was weighed fresh?"
            }
        }
    }
}
