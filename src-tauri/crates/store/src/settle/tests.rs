use chrono::{DateTime, FixedOffset};
use journal::{
    BedId, DeedId, DeviceId, Discard, DiscardId, Harvest, HarvestId, Surface, TakenDown, TimeFrom,
    TrayId, Weighed, Weighing, WeighingId,
};
use uuid::Uuid;

use super::*;
use crate::{Store, Writing};

const HARVEST: HarvestId = HarvestId(Uuid::from_u128(11));
const TRAY: TrayId = TrayId(Uuid::from_u128(12));
const WEIGHING: WeighingId = WeighingId(Uuid::from_u128(13));

fn at(hour: u32) -> DateTime<FixedOffset> {
    DateTime::parse_from_rfc3339(&format!("2025-06-01T{hour:02}:00:00+02:00")).unwrap()
}

fn perform(
    store: &mut Store,
    number: u128,
    text: &str,
    body: impl FnOnce(&mut Writing<'_>) -> Result<(), Failure>,
) -> Result<DeedId, Failure> {
    let deed = DeedId(Uuid::from_u128(number));
    store.perform(deed, at(9), |w| body(w).map(|()| (text.into(), ())))?;
    Ok(deed)
}

/// 400 g were picked and 300 g of them laid out.
fn season() -> (Store, DeedId, DeedId) {
    let mut store = Store::in_memory(DeviceId(Uuid::from_u128(1))).unwrap();
    let picked = perform(&mut store, 101, "Picked 400 g of sage leaf", |w| {
        w.record(
            &HARVEST,
            &Harvest {
                code: "tavo-472".parse()?,
                herb: "sage".parse()?,
                part: "leaf".into(),
                weighed: Weighed {
                    gross_g: 450.0,
                    tare_g: 50.0,
                },
                picked_at: at(8),
                time_from: TimeFrom::Clock,
                bed: None,
                stage: None,
                surface: Surface::Dry,
                note: None,
                photos: Vec::new(),
                place: None,
                look_alike_ruled_out: true,
            },
        )
    });
    let laid_out = perform(&mut store, 102, "Put 300 g of sage leaf on the rack", |w| {
        w.record(
            &TRAY,
            &Tray {
                code: "lemi-318".parse()?,
                name: "Sieve".into(),
                harvest: HARVEST,
                fresh_mass_g: 300.0,
                tare_g: 100.0,
                started_at: at(9),
                air: None,
                taken_down: None,
                lost: None,
                cooked: None,
                sample: None,
                note: None,
            },
        )
    });
    (store, picked.unwrap(), laid_out.unwrap())
}

fn discard(store: &mut Store, number: u128, from: Source, amount: f64) -> Result<DeedId, Failure> {
    perform(store, number, "Threw some away", |w| {
        let discard = Discard {
            from,
            amount,
            at: at(10),
            reason: None,
            used: false,
        };
        w.record(&DiscardId(Uuid::from_u128(number)), &discard)
    })
}

fn take_down(store: &mut Store, number: u128) -> DeedId {
    perform(store, number, "Took the sieve down at 60 g", |w| {
        let mut tray: Tray = w.get(&TRAY)?;
        tray.taken_down = Some(TakenDown {
            at: at(20),
            gross_g: 160.0,
            snap_test: false,
        });
        w.correct(&TRAY, &tray)
    })
    .unwrap()
}

fn said(failure: &Failure) -> String {
    words::Language::English.tell(&failure.message())
}

#[test]
fn too_much_is_refused_with_the_lot_and_what_is_left() {
    let (mut store, ..) = season();
    let failure = discard(&mut store, 200, Source::Harvest(HARVEST), 150.5).unwrap_err();
    assert_eq!(
        said(&failure),
        "Harvest tavo-472 has 100 g left, so you can't take 150.5 g."
    );
    assert!(matches!(failure, Failure::NotEnough { left, .. } if left == Amount::of(100.0)));
    discard(&mut store, 201, Source::Harvest(HARVEST), 100.0).unwrap();
}

#[test]
fn plant_on_a_running_tray_cannot_be_used() {
    let (mut store, ..) = season();
    let failure = discard(&mut store, 200, Source::Tray(TRAY), 1.0).unwrap_err();
    assert_eq!(
        said(&failure),
        "Tray “Sieve” (lemi-318) is still drying. Take it down before you use its herb."
    );
}

#[test]
fn a_harvest_cannot_be_corrected_below_what_it_gave() {
    let (mut store, ..) = season();
    let failure = perform(&mut store, 200, "Corrected the weight", |w| {
        let mut harvest: Harvest = w.get(&HARVEST)?;
        harvest.weighed.gross_g = 250.0;
        w.correct(&HARVEST, &harvest)
    })
    .unwrap_err();
    assert_eq!(
        said(&failure),
        "Harvest tavo-472 already gave 300 g, so it can't have been 200 g."
    );
}

#[test]
fn what_something_rests_on_cannot_be_taken_back() {
    let (mut store, picked, laid_out) = season();
    let undo = DeedId(Uuid::from_u128(300));
    let failure = store
        .undo(undo, at(10), picked, |line| {
            words::Language::English.tell(line)
        })
        .unwrap_err();
    assert_eq!(
        said(&failure),
        "“Picked 400 g of sage leaf” cannot be undone while tray “Sieve” (lemi-318) rests on it. Undo that first."
    );
    let taken_down = take_down(&mut store, 301);
    discard(&mut store, 302, Source::Tray(TRAY), 20.0).unwrap();
    let failure = store
        .undo(undo, at(21), taken_down, |line| {
            words::Language::English.tell(line)
        })
        .unwrap_err();
    assert_eq!(
        said(&failure),
        "“Took the sieve down at 60 g” cannot be undone: tray “Sieve” (lemi-318) would hold 0 g, but what was thrown away of tray “Sieve” (lemi-318) took 20 g from it. Undo that first."
    );
    let failure = store
        .undo(undo, at(21), laid_out, |line| {
            words::Language::English.tell(line)
        })
        .unwrap_err();
    assert!(
        said(&failure).contains("while what was thrown away of"),
        "{failure}"
    );
}

#[test]
fn a_recording_that_was_corrected_is_not_taken_back_before_its_correction() {
    let (mut store, _, laid_out) = season();
    let taken_down = take_down(&mut store, 200);
    let failure = store
        .undo(DeedId(Uuid::from_u128(201)), at(21), laid_out, |line| {
            words::Language::English.tell(line)
        })
        .unwrap_err();
    assert!(
        said(&failure).contains("while a later edit of it rests on it"),
        "{failure}"
    );
    store
        .undo(DeedId(Uuid::from_u128(202)), at(21), taken_down, |line| {
            words::Language::English.tell(line)
        })
        .unwrap();
    let (_, line) = store
        .undo(DeedId(Uuid::from_u128(203)), at(21), laid_out, |line| {
            words::Language::English.tell(line)
        })
        .unwrap();
    assert_eq!(line.text, "Undid: Put 300 g of sage leaf on the rack");
    let told = words::Language::German.tell(&line.told());
    assert_eq!(
        told,
        "Rückgängig gemacht: Put 300 g of sage leaf on the rack"
    );
    let again = DeedId(Uuid::from_u128(203));
    let (_, line) = store
        .undo(DeedId(Uuid::from_u128(204)), at(21), again, |line| {
            words::Language::English.tell(line)
        })
        .unwrap();
    assert_eq!(line.text, "Redid: Put 300 g of sage leaf on the rack");
    let failure = store
        .undo(DeedId(Uuid::from_u128(205)), at(21), again, |line| {
            words::Language::English.tell(line)
        })
        .unwrap_err();
    assert!(matches!(failure, Failure::AlreadyUndone(_)), "{failure}");
}

#[test]
fn a_weigh_in_fits_its_tray() {
    let (mut store, ..) = season();
    let mut weigh = |gross_g, hour| {
        perform(&mut store, 200, "Weighed in", |w| {
            let weighing = Weighing {
                tray: TRAY,
                at: at(hour),
                gross_g,
                air: None,
                odd: false,
                snap_test: false,
            };
            w.record(&WEIGHING, &weighing)
        })
    };
    let failure = weigh(99.0, 12).unwrap_err();
    assert_eq!(
        said(&failure),
        "The weight with the tray must be at least the tray alone, 100 g. You entered 99 g."
    );
    let failure = weigh(250.0, 7).unwrap_err();
    assert_eq!(
        said(&failure),
        "Choose a time after the tray was loaded, 1 Jun 2025, 09:00."
    );
    weigh(250.0, 12).unwrap();
}

#[test]
fn what_is_needed_must_be_there() {
    let (mut store, ..) = season();
    let failure = perform(&mut store, 200, "Corrected the bed", |w| {
        let mut harvest: Harvest = w.get(&HARVEST)?;
        harvest.bed = Some(BedId(Uuid::from_u128(999)));
        w.correct(&HARVEST, &harvest)
    })
    .unwrap_err();
    assert_eq!(said(&failure), "This bed is not in your records.");
    let nothing = perform(&mut store, 201, "Corrected nothing", |w| {
        let harvest: Harvest = w.get(&HARVEST)?;
        w.correct(&HARVEST, &harvest)
    });
    assert_eq!(nothing.unwrap_err(), Failure::Unchanged);
}
