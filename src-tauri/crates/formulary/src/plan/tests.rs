use physics::{
    MassFraction,
    mixture::{Ingredient, IngredientKind},
};

use super::*;

fn balm(state: PlantState) -> Wish {
    Wish {
        identity: Default::default(),
        herb: "lemon balm".into(),
        part: "leaf".into(),
        preparation: "glycerite".into(),
        state,
        bottles: 6,
        bottle_ml: 60.0,
        ready_on: "2026-12-01".parse().unwrap(),
        own_retention_ml_per_g: None,
        stock: Vec::new(),
        yearly_use_ml: None,
        gifts: false,
    }
}

#[test]
fn six_bottles_of_lemon_balm_glycerite() {
    let plan = plan(&balm(PlantState::Dried)).unwrap();
    assert_eq!(
        plan.start_on,
        "2026-10-20".parse().unwrap(),
        "42 days before"
    );
    assert_eq!(plan.pick_by, "2026-10-05".parse().unwrap());
    let dry = plan.dry_g.unwrap();
    assert!(dry.low < dry.value && dry.value < dry.high);
    assert!(
        plan.pick_fresh_g.value > 3.5 * dry.value,
        "fresh to dry is 3.9, and a tenth is trimmed"
    );
    assert!(
        plan.buy
            .iter()
            .any(|buy| buy.kind == IngredientKind::Glycerin)
            && plan.buy.iter().all(|buy| buy.kind != IngredientKind::Water)
    );
}

#[test]
fn composing_and_straining_the_plan_gives_the_bottles() {
    for preparation in ["glycerite", "tincture", "vinegar", "oxymel", "bitters"] {
        for state in [PlantState::Fresh, PlantState::Dried] {
            for own in [0.8, 1.2, 1.8] {
                let wish = Wish {
                    preparation: preparation.into(),
                    own_retention_ml_per_g: Some(Interval::exact(own)),
                    ..balm(state)
                };
                let plan = plan(&wish).unwrap();
                let herb_g = match plan.dry_g {
                    Some(dry) => dry,
                    None => plan.pick_fresh_g.map_monotone(|g| g * (1.0 - TRIM_LOSS)),
                };
                let jar = compose::compose(&Composition::of(
                    preparation,
                    Plant {
                        herb: wish.herb,
                        part: wish.part,
                        state,
                        mass_g: herb_g.value,
                        moisture_wet_percent: None,
                        told: None,
                        identity: Default::default(),
                    },
                ))
                .unwrap();
                let kept = own * jar.plants[0].dry_matter_g().value;
                let strained = jar.liquid.volume_ml.value - kept;
                assert!((strained - 360.0).abs() < 0.5, "{preparation}: {strained}");
                for (planned, poured) in plan.pours.iter().zip(&jar.pours) {
                    assert!((planned.ml - poured.ml).abs() < 1e-3 * poured.ml.max(1.0));
                }
            }
        }
    }
}

#[test]
fn the_shelf_is_used_before_anything_is_bought() {
    let glycerin = Ingredient::glycerin(MassFraction::from_percent(99.5).unwrap());
    let at_hand = |ml| Stock {
        ingredient: glycerin,
        available_ml: Some(ml),
        exactly_ml: None,
        supply: None,
    };
    let mut wish = balm(PlantState::Fresh);
    let all = plan(&wish).unwrap().buy[0].ml;
    wish.stock = vec![at_hand(100.0)];
    assert!((plan(&wish).unwrap().buy[0].ml - (all - 100.0)).abs() < 1e-9);
    wish.stock = vec![at_hand(10_000.0)];
    assert!(plan(&wish).unwrap().buy.is_empty());
}

#[test]
fn more_than_a_years_use_is_said_unless_it_is_for_gifts() {
    let mut wish = balm(PlantState::Fresh);
    wish.yearly_use_ml = Some(200.0);
    let says = |wish: &Wish| {
        plan(wish)
            .unwrap()
            .notes
            .iter()
            .any(|note| note.code == "more-than-a-year")
    };
    assert!(says(&wish));
    wish.gifts = true;
    assert!(!says(&wish));
}

#[test]
fn what_must_not_be_made_is_not_planned() {
    let wish = Wish {
        herb: "elderberry".into(),
        part: "berry".into(),
        preparation: "cordial".into(),
        ..balm(PlantState::Fresh)
    };
    assert_eq!(plan(&wish).unwrap_err().refusal().field, "preparation");
    assert_eq!(
        plan(&Wish {
            bottles: 0,
            ..balm(PlantState::Fresh)
        })
        .unwrap_err()
        .refusal()
        .field,
        "bottles"
    );
    let barrels = Wish {
        preparation: "wine-table".into(),
        bottles: 200,
        bottle_ml: 5000.0,
        ..balm(PlantState::Dried)
    };
    assert_eq!(plan(&barrels).unwrap_err().refusal().field, "bottles");
    let nan = Wish {
        bottle_ml: f64::NAN,
        ..balm(PlantState::Fresh)
    };
    assert_eq!(plan(&nan).unwrap_err().refusal().field, "bottle_ml");
}
