//! What a maker may do, at random.

use proptest::prelude::*;

/// Something a maker does; the numbers choose among what was made latest.
#[derive(Debug, Clone)]
pub enum Act {
    Pick(f64),
    Buy(f64),
    LayOut(usize, f64),
    Weigh(usize, f64),
    TakeDown(usize, f64),
    Lose(usize),
    Pour {
        lots: Vec<(bool, usize, f64)>,
        supply: usize,
        ml: f64,
    },
    Discard(u8, usize, f64),
    Reweigh(usize, f64),
    Resize(usize, f64),
    StrikeWeighing(usize),
    StrikeJar(usize),
    TopUp(usize, usize, f64),
    Strain(usize, f64),
    Fill(usize, f64, usize),
    Take(usize, f64),
    Finish(usize),
    Refill(usize, f64),
    StrikeStraining(usize),
    StrikeBottle(usize),
    Undo(usize),
}

/// Any of them, the everyday ones more often.
pub fn act() -> impl Strategy<Value = Act> {
    // Tenths of a gram, so that whole lots are used up now and then.
    let grams = || (1..3000_u32).prop_map(|tenths| f64::from(tenths) / 10.0);
    let which = || 0..12_usize;
    prop_oneof![
        2 => grams().prop_map(|g| Act::Pick(3.0 * g)),
        1 => grams().prop_map(Act::Buy),
        3 => (which(), grams()).prop_map(|(n, g)| Act::LayOut(n, g)),
        2 => (which(), grams()).prop_map(|(n, g)| Act::Weigh(n, g)),
        3 => (which(), grams()).prop_map(|(n, g)| Act::TakeDown(n, g)),
        1 => which().prop_map(Act::Lose),
        4 => (prop::collection::vec((any::<bool>(), which(), grams()), 0..3), which(), grams())
            .prop_map(|(lots, supply, ml)| Act::Pour { lots, supply, ml }),
        2 => (which(), which(), grams()).prop_map(|(j, s, g)| Act::TopUp(j, s, g / 10.0)),
        4 => (which(), grams()).prop_map(|(n, g)| Act::Strain(n, g)),
        5 => (which(), grams(), 1..4_usize).prop_map(|(n, g, m)| Act::Fill(n, g / 3.0, m)),
        4 => (which(), grams()).prop_map(|(n, g)| Act::Take(n, g / 10.0)),
        1 => which().prop_map(Act::Finish),
        1 => (which(), grams()).prop_map(|(n, g)| Act::Refill(n, g / 3.0)),
        1 => which().prop_map(Act::StrikeStraining),
        1 => which().prop_map(Act::StrikeBottle),
        2 => (0..5_u8, which(), grams()).prop_map(|(k, n, g)| Act::Discard(k, n, g)),
        2 => (which(), grams()).prop_map(|(n, g)| Act::Reweigh(n, g)),
        1 => (which(), grams()).prop_map(|(n, g)| Act::Resize(n, g)),
        1 => which().prop_map(Act::StrikeWeighing),
        1 => which().prop_map(Act::StrikeJar),
        6 => (0..60_usize).prop_map(Act::Undo),
    ]
}
