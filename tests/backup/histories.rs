//! Merging backups of three devices: the order and the repetition make no difference.

use std::path::Path;

use chrono::{DateTime, FixedOffset};
use journal::{Bed, BedId, DeedId, DeviceId, Harvest, HarvestId, Surface, TimeFrom, Weighed};
use proptest::prelude::*;
use store::{Failure, Foreign, Store};
use uuid::Uuid;

/// What a device does next; the numbers choose among few things, so that devices meet.
#[derive(Debug, Clone)]
enum Step {
    Bed(u8, u8),
    Rename(u8, u8),
    Pick(u8, u16, u8),
    Weigh(u8, u16),
    Strike(u8),
    Undo(u8),
    Clock(i32),
}

fn steps() -> impl Strategy<Value = Vec<Step>> {
    let step = prop_oneof![
        (0_u8..4, any::<u8>()).prop_map(|(bed, name)| Step::Bed(bed, name)),
        (0_u8..4, any::<u8>()).prop_map(|(bed, name)| Step::Rename(bed, name)),
        (0_u8..6, 1_u16..2000, 0_u8..4).prop_map(|(id, grams, bed)| Step::Pick(id, grams, bed)),
        (0_u8..6, 1_u16..2000).prop_map(|(id, grams)| Step::Weigh(id, grams)),
        (0_u8..6).prop_map(Step::Strike),
        (0_u8..8).prop_map(Step::Undo),
        (-500_i32..500).prop_map(Step::Clock),
        // Years ahead, as after an empty battery, and back.
        prop_oneof![Just(150_000_000), Just(-150_000_000)].prop_map(Step::Clock),
    ];
    prop::collection::vec(step, 0..14)
}

fn name(number: u8) -> Bed {
    Bed {
        name: format!("Bed {number}"),
        wild: number.is_multiple_of(2),
        area_m2: None,
        note: None,
    }
}

/// A device lives through its steps. What is refused is refused, as on a phone.
fn live(store: &mut Store, device: u8, steps: &[Step]) {
    let mut now: DateTime<FixedOffset> =
        DateTime::parse_from_rfc3339("2025-06-01T08:00:00+02:00").unwrap();
    let mut deeds = Vec::new();
    for (number, step) in steps.iter().enumerate() {
        now += chrono::Duration::seconds(1);
        let deed = DeedId(Uuid::from_u128(
            u128::from(device) << 64 | (number as u128 + 1),
        ));
        let bed = |number: u8| BedId(Uuid::from_u128(1000 + u128::from(number)));
        let harvest = |number: u8| HarvestId(Uuid::from_u128(2000 + u128::from(number)));
        let line = || journal::Line::from("Wrote");
        let done = match step {
            Step::Bed(id, told) => store.perform(deed, now, |w| {
                w.record(&bed(*id), &name(*told))?;
                Ok::<_, Failure>((line(), ()))
            }),
            Step::Rename(id, told) => store.perform(deed, now, |w| {
                w.correct(&bed(*id), &name(*told))?;
                Ok::<_, Failure>((line(), ()))
            }),
            Step::Pick(id, grams, at) => store.perform(deed, now, |w| {
                let row = Harvest {
                    code: w.free_code(harvest(*id).0)?,
                    herb: "peppermint".parse()?,
                    part: "leaf".into(),
                    weighed: Weighed {
                        gross_g: f64::from(*grams),
                        tare_g: 0.0,
                    },
                    picked_at: now,
                    time_from: TimeFrom::Clock,
                    bed: w.find::<Bed>(&bed(*at))?.map(|_| bed(*at)),
                    stage: None,
                    surface: Surface::Dry,
                    note: None,
                    photos: Vec::new(),
                    place: None,
                    look_alike_ruled_out: true,
                };
                w.record(&harvest(*id), &row)?;
                Ok::<_, Failure>((line(), ()))
            }),
            Step::Weigh(id, grams) => store.perform(deed, now, |w| {
                let mut row = w.get::<Harvest>(&harvest(*id))?;
                row.weighed.gross_g = f64::from(*grams);
                w.correct(&harvest(*id), &row)?;
                Ok::<_, Failure>((line(), ()))
            }),
            Step::Strike(id) => store.perform(deed, now, |w| {
                w.strike::<Harvest>(&harvest(*id))?;
                Ok::<_, Failure>((line(), ()))
            }),
            Step::Undo(back) => {
                let target = deeds.iter().rev().nth(usize::from(*back)).copied();
                let target = target.unwrap_or(DeedId(Uuid::nil()));
                store
                    .undo(deed, now, target, |line| line.to_string())
                    .map(|(done, _)| (done, ()))
            }
            Step::Clock(seconds) => {
                now += chrono::Duration::seconds(i64::from(*seconds));
                continue;
            }
        };
        if let Ok((done, ())) = done {
            deeds.push(done.deed);
        }
    }
}

fn open(path: &Path, device: u8) -> Store {
    Store::open(path, DeviceId(Uuid::from_u128(u128::from(device)))).unwrap()
}

/// The tables and, in the order that counts, the log.
fn state(store: &Store) -> (Vec<String>, Vec<DeedId>) {
    let mut deeds = Vec::new();
    store
        .each_deed(|deed| {
            deeds.push(deed.id);
            Ok(())
        })
        .unwrap();
    (store.tables().unwrap(), deeds)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(
        std::env::var("TRUGBOOK_HISTORIES").ok().and_then(|n| n.parse().ok()).unwrap_or(24)
    ))]

    #[test]
    fn merging_is_commutative_associative_and_idempotent(
        common in steps(), a in steps(), b in steps(), c in steps(),
    ) {
        let folder = tempfile::tempdir().unwrap();
        let path = |name: &str| folder.path().join(name);
        {
            let mut first = open(&path("a"), 1);
            live(&mut first, 9, &common);
            for device in ["b", "c"] {
                first.snapshot(&path(device), |_, _| Ok::<_, Failure>(())).unwrap();
            }
        }
        for (device, (name, steps)) in [("a", &a), ("b", &b), ("c", &c)].into_iter().enumerate() {
            live(&mut open(&path(name), device as u8 + 1), device as u8 + 1, steps);
        }
        let merged = |name: &str, from: &[&str]| {
            let copy = path(name);
            open(&path(from[0]), 1).snapshot(&copy, |_, _| Ok::<_, Failure>(())).unwrap();
            let mut store = open(&copy, 1);
            for other in &from[1..] {
                store.absorb_from(&Foreign::open(&path(other), || false).unwrap(), None).unwrap();
            }
            state(&store)
        };
        let abc = merged("abc", &["a", "b", "c"]);
        prop_assert_eq!(&merged("cba", &["c", "b", "a"]), &abc, "commutative");
        prop_assert_eq!(&merged("bac", &["b", "a", "c"]), &abc, "commutative");
        merged("bc", &["b", "c"]);
        prop_assert_eq!(&merged("a(bc)", &["a", "bc"]), &abc, "associative");
        prop_assert_eq!(&merged("again", &["abc", "a", "b", "c", "abc"]), &abc, "idempotent");
        // The tables that grew by merging are those that the log gives.
        let mut store = open(&path("abc"), 1);
        store.rebuild().unwrap();
        prop_assert_eq!(&state(&store), &abc);
    }
}
