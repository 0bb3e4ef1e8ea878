//! The state of the journal is a function of the set of deeds, and of nothing else.

use journal::{
    Act, Bed, BedId, Change, Deed, DeedId, DeviceId, Fields, HybridTime, Noun, fold, revoked,
};
use proptest::prelude::*;
use serde_json::{Value, json};
use store::Store;
use uuid::Uuid;

const BEDS: u128 = 4;

fn change() -> impl Strategy<Value = Change> {
    let whole = ("[a-d]{1,3}", any::<bool>(), prop::option::of(1.0..50.0_f64)).prop_map(
        |(name, wild, area_m2)| {
            let bed = Bed {
                name,
                wild,
                area_m2,
                note: None,
            };
            let Value::Object(fields) = serde_json::to_value(bed).unwrap() else {
                unreachable!()
            };
            (Act::Record, fields)
        },
    );
    let patch = prop_oneof![
        "[a-d]{1,3}".prop_map(|name| json!({ "name": name })),
        any::<bool>().prop_map(|wild| json!({ "wild": wild })),
        prop::option::of(1.0..50.0_f64).prop_map(|area| json!({ "area_m2": area })),
    ]
    .prop_map(|value| {
        let Value::Object(fields) = value else {
            unreachable!()
        };
        (Act::Correct, fields)
    });
    let act = prop_oneof![3 => whole, 3 => patch, 1 => Just((Act::Strike, Fields::new()))];
    (0..BEDS, act).prop_map(|(bed, (act, fields))| Change {
        noun: Noun::Bed,
        row: BedId(Uuid::from_u128(bed)).to_string(),
        act,
        fields,
    })
}

/// A history of three devices, some deeds of which take back others, earlier or later, known or not.
fn history() -> impl Strategy<Value = Vec<Deed>> {
    let deed = (
        0..20_i64,
        0..3_u32,
        0..3_u128,
        prop::option::weighted(0.4, 0..34_u128),
        prop::collection::vec(change(), 0..4),
    );
    prop::collection::vec(deed, 0..30).prop_map(|deeds| {
        deeds
            .into_iter()
            .enumerate()
            .map(
                |(number, (milliseconds, counter, device, revokes, changes))| Deed {
                    id: DeedId(Uuid::from_u128(number as u128)),
                    at: HybridTime {
                        milliseconds,
                        counter,
                    },
                    device: DeviceId(Uuid::from_u128(device)),
                    text: format!("deed {number}"),
                    message: None,
                    revokes: revokes.map(|id| DeedId(Uuid::from_u128(id))),
                    changes,
                },
            )
            .collect()
    })
}

fn shuffled_history() -> impl Strategy<Value = (Vec<Deed>, Vec<Deed>)> {
    history().prop_flat_map(|deeds| (Just(deeds.clone()), Just(deeds).prop_shuffle()))
}

fn store() -> Store {
    Store::in_memory(DeviceId(Uuid::from_u128(99))).unwrap()
}

/// A deed after all others that takes one back.
fn taking_back(target: DeedId, id: u128, after: i64) -> Deed {
    Deed {
        id: DeedId(Uuid::from_u128(id)),
        at: HybridTime {
            milliseconds: after,
            counter: 0,
        },
        device: DeviceId(Uuid::from_u128(0)),
        text: "take back".into(),
        message: None,
        revokes: Some(target),
        changes: Vec::new(),
    }
}

proptest! {
    #[test]
    fn the_order_of_arrival_never_matters((deeds, shuffled) in shuffled_history()) {
        prop_assert_eq!(fold(&deeds), fold(&shuffled));
        prop_assert_eq!(revoked(&deeds), revoked(&shuffled));
    }

    #[test]
    fn a_deed_that_comes_twice_counts_once(deeds in history()) {
        prop_assert_eq!(fold(deeds.iter().chain(&deeds)), fold(&deeds));
    }

    #[test]
    fn an_undone_deed_leaves_no_trace_and_undoing_the_undo_brings_it_back(
        mut deeds in history(), which in any::<prop::sample::Index>(),
    ) {
        prop_assume!(!deeds.is_empty());
        let target = deeds[which.index(deeds.len())].id;
        prop_assume!(!revoked(&deeds).contains(&target));
        let before = fold(&deeds);
        deeds.push(taking_back(target, 1000, 100));
        let without: Vec<Deed> = deeds.iter().filter(|deed| deed.id != target && deed.id.0.as_u128() != 1000).cloned().collect();
        prop_assert_eq!(fold(&deeds), fold(&without));
        deeds.push(taking_back(DeedId(Uuid::from_u128(1000)), 1001, 101));
        prop_assert_eq!(fold(&deeds), before);
    }

    #[test]
    fn two_files_with_the_same_deeds_read_the_same(
        (deeds, shuffled) in shuffled_history(), cut in any::<prop::sample::Index>(),
    ) {
        let (mut one, mut other) = (store(), store());
        one.absorb(deeds.clone()).unwrap();
        // In two parts that overlap, and then all over again.
        let cut = cut.index(shuffled.len() + 1);
        other.absorb(shuffled[cut..].to_vec()).unwrap();
        other.absorb(shuffled[..(cut + 3).min(shuffled.len())].to_vec()).unwrap();
        prop_assert_eq!(other.absorb(deeds.clone()).unwrap().deeds, 0);
        prop_assert_eq!(one.tables().unwrap(), other.tables().unwrap());

        // What the file says is what the fold says.
        let rows = fold(&deeds);
        for bed in 0..BEDS {
            let id = BedId(Uuid::from_u128(bed));
            let folded = rows.get(&(Noun::Bed, id.to_string())).and_then(|row| row.read::<Bed>().unwrap());
            let found = one.read(|r| r.find::<Bed>(&id)).unwrap();
            prop_assert_eq!(found, folded);
        }
        let incremental = other.tables().unwrap();
        other.rebuild().unwrap();
        prop_assert_eq!(other.tables().unwrap(), incremental);
    }
}

#[test]
fn deeds_that_claim_to_take_each_other_back_form_no_circle() {
    let mut first = taking_back(DeedId(Uuid::from_u128(2)), 1, 1);
    let second = taking_back(DeedId(Uuid::from_u128(1)), 2, 2);
    assert_eq!(revoked([&first, &second]), [first.id].into());
    first.at = second.at;
    assert_eq!(
        revoked([&first, &second]),
        [first.id].into(),
        "the id decides between equal times"
    );
}
