//! Whatever a maker does, and takes back: nothing is given that never came in.

mod act;
mod maker;
mod sums;

use journal::DeedId;
use proptest::prelude::*;
use store::Failure;

use self::act::{Act, act};
use self::maker::Maker;

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn no_lot_ever_gives_more_than_came_in(acts in prop::collection::vec(act(), 1..90)) {
        let mut maker = Maker::new();
        let mut performed = 0;
        for act in acts {
            let before = maker.store.tables().unwrap();
            match maker.act(act.clone()) {
                Ok(()) => performed += 1,
                Err(failure) => {
                    let sentence = api::Language::English.tell(&failure.message());
                    prop_assert!(sentence.ends_with('.'), "{act:?} failed with {sentence:?}");
                    prop_assert!(!matches!(failure, Failure::Storage(_) | Failure::Damaged(_)), "{act:?}: {sentence}");
                    prop_assert_eq!(maker.store.tables().unwrap(), before, "a refused {:?} left something", act);
                }
            }
            for (source, left) in maker.added_up() {
                prop_assert!(left >= -maker.allowed(source), "{source:?} is at {left} after {act:?}");
                let told = maker.store.read(|r| r.left(source)).unwrap();
                prop_assert_eq!(told.thousandths(), left, "{:?}", source);
            }
        }
        prop_assert_eq!(maker.store.audit().unwrap(), []);
        let incremental = maker.store.tables().unwrap();
        maker.store.rebuild().unwrap();
        prop_assert_eq!(maker.store.tables().unwrap(), incremental);
        let mut deeds = Vec::new();
        maker.store.each_deed(|deed| { deeds.push(deed); Ok(()) }).unwrap();
        prop_assert_eq!(deeds.len(), performed);
    }

    #[test]
    fn taking_everything_back_from_the_last_leaves_an_empty_journal(
        acts in prop::collection::vec(act(), 1..40),
    ) {
        let mut maker = Maker::new();
        let empty = maker.store.tables().unwrap();
        for act in acts.into_iter().filter(|act| !matches!(act, Act::Undo(_))) {
            let _ = maker.act(act);
        }
        let full = maker.store.tables().unwrap();
        let deeds: Vec<DeedId> = maker.deeds.clone();
        let mut undoing = Vec::new();
        for deed in deeds.iter().rev() {
            let id = DeedId(maker.uuid());
            let undone = maker.store.undo(id, maker.now, *deed, |line| line.to_string());
            prop_assert!(undone.is_ok(), "nothing rests on the last deed that counts: {undone:?}");
            undoing.push(id);
        }
        prop_assert_eq!(maker.store.tables().unwrap(), empty);
        for deed in undoing.iter().rev() {
            let id = DeedId(maker.uuid());
            let done_again = maker.store.undo(id, maker.now, *deed, |line| line.to_string());
            prop_assert!(done_again.is_ok(), "{done_again:?}");
        }
        prop_assert_eq!(maker.store.tables().unwrap(), full);
    }
}

#[test]
fn ten_thousand_acts_with_undo_leave_a_ledger_that_balances() {
    use proptest::strategy::ValueTree;
    use proptest::test_runner::{Config, RngAlgorithm, TestRng, TestRunner};
    let rng = TestRng::deterministic_rng(RngAlgorithm::ChaCha);
    let mut runner = TestRunner::new_with_rng(Config::default(), rng);
    let mut maker = Maker::new();
    let acts = act();
    let (mut performed, mut refused) = (0_u32, 0_u32);
    while performed < 10_000 {
        let act = acts.new_tree(&mut runner).unwrap().current();
        if maker.act(act).is_err() {
            refused += 1;
            assert!(refused < 40_000, "after {performed} acts all is refused");
            continue;
        }
        performed += 1;
        if performed % 2000 == 0 {
            for (source, left) in maker.added_up() {
                assert!(left >= -maker.allowed(source), "{source:?} is at {left}");
                let told = maker.store.read(|r| r.left(source)).unwrap();
                assert_eq!(
                    told.thousandths(),
                    left,
                    "{source:?} after {performed} acts"
                );
            }
        }
    }
    assert_eq!(maker.store.audit().unwrap(), []);
    let tables = maker.store.tables().unwrap();
    maker.store.rebuild().unwrap();
    assert_eq!(maker.store.tables().unwrap(), tables);
}
