//! What counts how much when preparations are ranked, in points; a preparation's rank is their sum.
//!
//! All are our own choice, none is published: their order is what matters, and each says why it is
//! the size it is.

use crate::preparations::Verdict;

/// How the liquid at the end keeps: what does not keep shall not win by taking up more, so keeping
/// is worth more than [`FIT`]; the fridge costs a point, which a far better fit may win back.
pub(super) fn keeping(verdict: Verdict) -> f64 {
    match verdict {
        Verdict::Keeps => 3.0,
        Verdict::KeepsCold => 2.0,
        // With a full fit it still comes after what keeps with none.
        Verdict::UseNow => 0.5,
        // No sum of the others, which stays below 11, lifts it off the end.
        Verdict::DoNotMake => -100.0,
    }
}

/// A liquid that takes up all a herb holds, against one that takes up nothing: second to keeping.
pub(super) const FIT: f64 = 2.0;
/// Not made for the use asked for: more than the whole fit, so that at equal keeping what is usual comes first.
pub(super) const OTHER_USE: f64 = -2.5;
/// Food was asked for and it is food: a quarter of the fit, to order what keeps alike.
pub(super) const FOOD: f64 = 0.5;
/// A class of constituents it does not suit: as if it took up half as well.
pub(super) const AVOIDED: f64 = -1.0;
/// Made of bitter and aromatic herbs, of which this is none: as if it took up half as well.
pub(super) const NOT_OF_ITS_HERBS: f64 = -1.0;
/// A bitter as a medicine: it only lets the plain tincture of the same strength go first.
pub(super) const PLAIN_FIRST: f64 = -0.2;
/// The herbs of the spiced vinegar together: as much as best keeping and full fit, for nothing else is made of them.
pub(super) const SPICED: f64 = 5.0;
/// A target missed with what is at hand: as much as the fridge, since it can still be made today.
pub(super) const SHORT: f64 = -1.0;
/// A liquid to be bought: more than a target missed, since nothing can be made today.
pub(super) const NOT_AT_HAND: f64 = -1.5;
/// The jar does not hold all of the herb: the least that is said, since less herb or another jar mends it.
pub(super) const JAR_TOO_SMALL: f64 = -0.5;
/// A method from practice or memory: it only breaks a tie with one that was confirmed.
pub(super) const UNCONFIRMED: f64 = -0.2;

/// The fit, 0 to 1, where nothing was looked up: halfway, so that it neither leads nor trails.
pub(super) const UNKNOWN_FIT: f64 = 0.5;
/// The share of a published strength in the fit; what the classes say has the rest: each half knows what the other does not.
pub(super) const PUBLISHED: f64 = 0.5;
/// % vol away from a published strength at which its share is nothing: a grade of spirit further, as 45 to 70.
pub(super) const FURTHEST: f64 = 25.0;
/// % vol away from a published strength that still meets it: about what a plant's own water leaves unsure.
pub(super) const MET: f64 = 2.0;
