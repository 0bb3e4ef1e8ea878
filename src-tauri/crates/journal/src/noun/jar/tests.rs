use uuid::Uuid;

use super::*;
use crate::{HarvestId, TrayId};

fn jar() -> Jar {
    let plant = |lot: Lot, mass_g| Plant {
        lot: Some(lot),
        herb: "sage".parse().unwrap(),
        part: "leaf".into(),
        state: match lot {
            Lot::Harvest(_) => PlantState::Fresh,
            Lot::Tray(_) => PlantState::Dried,
        },
        mass_g,
        moisture_wet_percent: Interval {
            low: 70.0,
            value: 75.0,
            high: 80.0,
        },
    };
    Jar {
        code: "tavo-472".parse().unwrap(),
        name: "Sage in spirit".into(),
        preparation: "tincture".into(),
        poured_at: DateTime::parse_from_rfc3339("2025-06-10T23:30:00+02:00").unwrap(),
        pours: vec![Pour {
            item: Item::Spirit {
                strength_percent_vol: 96.0,
            },
            name: "Spirit".into(),
            ml: 300.0,
            g: 242.0,
            supply: Some(SupplyId(Uuid::from_u128(3))),
            added: None,
        }],
        plants: vec![
            plant(Lot::Harvest(HarvestId(Uuid::from_u128(1))), 100.0),
            plant(Lot::Tray(TrayId(Uuid::from_u128(2))), 20.0),
        ],
        jar_ml: Some(500.0),
        steep_days: SteepDays { low: 28, high: 42 },
        strength_percent_vol: Interval {
            low: 60.0,
            value: 65.0,
            high: 70.0,
        },
        glycerol_percent_mass: Interval::exact(0.0),
        shake: true,
        place: None,
        note: None,
        failed: None,
        marc_of: None,
    }
}

#[test]
fn a_jar_is_due_by_the_calendar_of_where_it_was_poured() {
    let mut jar = jar();
    let day = |text: &str| text.parse::<NaiveDate>().unwrap();
    assert_eq!(jar.due(), (day("2025-07-08"), day("2025-07-22")));
    assert_eq!(jar.state(false, day("2025-07-07")), JarState::Steeping);
    assert_eq!(jar.state(false, day("2025-07-08")), JarState::Due);
    assert_eq!(jar.state(true, day("2025-07-08")), JarState::Strained);
    jar.failed = Some(Failed {
        at: jar.poured_at,
        reason: "Mould on top".into(),
    });
    assert_eq!(jar.state(false, day("2025-07-08")), JarState::Failed);
}

#[test]
fn a_jar_draws_what_its_recipe_says() {
    let jar = jar();
    let drawn: Vec<f64> = jar.draws().iter().map(|draw| draw.amount.get()).collect();
    assert_eq!(drawn, [100.0, 20.0, 300.0]);
    assert_eq!(jar.ratio_ml_per_g(), Some(2.5));
    assert_eq!(jar.check(), Ok(()));
}

#[test]
fn a_jar_that_makes_no_sense_is_refused() {
    let refused = |change: fn(&mut Jar)| {
        let mut jar = jar();
        change(&mut jar);
        jar.check().unwrap_err().field
    };
    assert_eq!(refused(|jar| jar.pours.clear()), "stock");
    assert_eq!(refused(|jar| jar.pours[0].ml = f64::NAN), "stock");
    assert_eq!(refused(|jar| jar.plants[0].mass_g = 0.0), "mass_g");
    assert_eq!(
        refused(|jar| jar.plants[0].state = PlantState::Dried),
        "state"
    );
    assert_eq!(
        refused(|jar| jar.plants[0].moisture_wet_percent.low = 76.0),
        "moisture_wet_percent"
    );
    assert_eq!(refused(|jar| jar.steep_days.low = 43), "steep_days");
    assert_eq!(refused(|jar| jar.name = " ".into()), "name");
}
