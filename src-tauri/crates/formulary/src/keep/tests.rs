use physics::{
    MassFraction, Strength,
    mixture::{Ingredient, Pour, describe},
    quantity::{celsius, millilitres},
};

use super::*;
use crate::preparations;

fn ml(ingredient: Ingredient, volume: f64) -> Pour {
    Pour::measured(ingredient, millilitres(volume)).unwrap()
}

fn spirit(percent: f64) -> Ingredient {
    Ingredient::spirit(Strength::from_percent(percent).unwrap())
}

fn glycerin() -> Ingredient {
    Ingredient::glycerin(MassFraction::from_percent(99.5).unwrap())
}

fn judged(key: &str, pours: &[Pour]) -> Keeping {
    let preparation = preparations::all()
        .iter()
        .find(|preparation| preparation.key == key)
        .unwrap();
    let liquid = describe(pours, &[], celsius(20.0)).unwrap();
    judge(
        preparation,
        &Prospect {
            liquid: Some(&liquid),
            vinegar_acidity_g_per_100ml: Some(5.0),
            herb_water_percent: None,
            measured_ph: None,
            state: PlantState::Dried,
        },
    )
}

#[test]
fn a_tincture_is_green_at_25_amber_to_20_and_red_below() {
    for (strength, verdict) in [
        (25.0, Verdict::Keeps),
        (24.0, Verdict::KeepsCold),
        (20.0, Verdict::KeepsCold),
        (19.0, Verdict::UseNow),
    ] {
        assert_eq!(
            judged("tincture-dried", &[ml(spirit(strength), 100.0)]).verdict,
            verdict,
            "{strength}"
        );
    }
}

#[test]
fn a_glycerite_keeps_where_glycerin_keeps_all_of_its_water() {
    let of = |glycerin_ml| {
        judged(
            "glycerite-dried",
            &[
                ml(glycerin(), glycerin_ml),
                ml(Ingredient::water(), 100.0 - glycerin_ml),
            ],
        )
    };
    // Equal volumes are the least: 55.8 % by weight.
    assert_eq!(of(60.0).verdict, Verdict::Keeps);
    assert_eq!(of(50.5).verdict, Verdict::Keeps);
    assert_eq!(of(47.0).verdict, Verdict::KeepsCold);
    assert_eq!(of(40.0).verdict, Verdict::DoNotMake);
    let decided = of(40.0);
    let gate = decided.decided_by().unwrap();
    assert_eq!((gate.unit, gate.limit), ("%", 100.0));
    assert!(gate.margin < -5.0 && gate.status == Status::Confirmed);
}

#[test]
fn the_bad_end_of_the_interval_is_judged() {
    use physics::{WetBasis, mixture::Plant, quantity::grams};
    let moisture = |percent| WetBasis::from_percent(percent).unwrap();
    let plant =
        Plant::between(grams(100.0), moisture(70.0), moisture(78.0), moisture(86.0)).unwrap();
    let pours = [ml(spirit(35.5), 200.0)];
    let liquid = describe(&pours, &[plant], celsius(20.0)).unwrap();
    let strength = liquid.strength_percent_vol;
    assert!(strength.value > 25.0 && strength.low < 25.0, "{strength:?}");
    let prospect = Prospect {
        liquid: Some(&liquid),
        vinegar_acidity_g_per_100ml: None,
        herb_water_percent: None,
        measured_ph: None,
        state: PlantState::Fresh,
    };
    let tincture = preparations::find("tincture", PlantState::Fresh).unwrap();
    assert_eq!(judge(tincture, &prospect).verdict, Verdict::KeepsCold);
}

#[test]
fn more_water_never_improves_keeping() {
    let sugar = Ingredient::sugar();
    let vinegar = Ingredient::vinegar(physics::mixture::Acidity::new(5.0).unwrap());
    let base = [
        ml(spirit(70.0), 60.0),
        ml(glycerin(), 80.0),
        ml(sugar, 30.0),
        ml(vinegar, 40.0),
    ];
    for preparation in preparations::all() {
        let mut last = Verdict::Keeps;
        for water in 0..60 {
            let mut pours = base.to_vec();
            pours.push(ml(Ingredient::water(), 10.0 * f64::from(water)));
            let liquid = describe(&pours, &[], celsius(20.0)).unwrap();
            let keeping = judge(
                preparation,
                &Prospect {
                    liquid: Some(&liquid),
                    vinegar_acidity_g_per_100ml: Some(5.0),
                    herb_water_percent: Some(Interval::exact(f64::from(water))),
                    measured_ph: None,
                    state: PlantState::Fresh,
                },
            );
            assert!(keeping.verdict >= last, "{} at {water}", preparation.key);
            last = keeping.verdict;
        }
    }
}

#[test]
fn a_gate_whose_limit_is_a_proposal_says_so() {
    let keeping = judged("tincture-dried", &[ml(spirit(45.0), 100.0)]);
    assert_eq!(keeping.decided_by().unwrap().status, Status::Proposal);
    assert_eq!(keeping.text.id(), "keeping-keeps");
    assert!(keeping.text.to_string().contains("gate-alcohol"));
}

#[test]
fn a_tenth_of_alcohol_from_weak_spirit_never_spoils_a_glycerite() {
    // 60 parts of glycerin and 40 of water keep; with a fourth of 40 % spirit for the water they kept only cold.
    let plain = judged(
        "glycerite-dried",
        &[ml(glycerin(), 60.0), ml(Ingredient::water(), 40.0)],
    );
    let fortified = judged(
        "glycerite-fortified",
        &[
            ml(glycerin(), 48.0),
            ml(Ingredient::water(), 27.0),
            ml(spirit(40.0), 25.0),
        ],
    );
    assert_eq!(
        (plain.verdict, fortified.verdict),
        (Verdict::Keeps, Verdict::Keeps)
    );
}

#[test]
fn a_thin_glycerite_is_remarked_on_and_not_stopped() {
    let preparation = preparations::find("glycerite", PlantState::Dried).unwrap();
    let of = |glycerin_ml: f64| {
        let pours = [
            ml(glycerin(), glycerin_ml),
            ml(Ingredient::water(), 100.0 - glycerin_ml),
        ];
        let liquid = describe(&pours, &[], celsius(20.0)).unwrap();
        remarks(preparation, &liquid, Verdict::Keeps).len()
    };
    assert_eq!((of(60.0), of(80.0)), (1, 0));
}

#[test]
fn a_vinegar_full_of_fresh_plant_asks_for_the_strip() {
    let vinegar = preparations::find("vinegar", PlantState::Fresh).unwrap();
    let pours = [ml(
        Ingredient::vinegar(physics::mixture::Acidity::new(6.0).unwrap()),
        100.0,
    )];
    let liquid = describe(&pours, &[], celsius(20.0)).unwrap();
    let of = |state| {
        let prospect = Prospect {
            liquid: Some(&liquid),
            vinegar_acidity_g_per_100ml: Some(6.0),
            herb_water_percent: None,
            measured_ph: None,
            state,
        };
        judge(vinegar, &prospect).verdict
    };
    assert_eq!(
        (of(PlantState::Dried), of(PlantState::Fresh)),
        (Verdict::Keeps, Verdict::KeepsCold)
    );
}
