//! What holds for every preparation, and what is refused for all of them.

use physics::{
    Interval,
    mixture::{Acidity, Ingredient},
};

use super::{
    tests::{mint, plant, spirit, stock, usual_state},
    *,
};
use crate::{
    keep,
    preparations::{Purpose, Solvent, Verdict},
};

#[test]
fn scaling_is_linear() {
    for preparation in preparations::all().iter().filter(|one| one.takes_herb()) {
        let state = usual_state(preparation);
        let of = |mass| {
            compose(&Composition::of(
                &preparation.key,
                plant("oregano", "flowering tops", state, mass),
            ))
            .unwrap()
        };
        let (one, three) = (of(40.0), of(120.0));
        assert_eq!(one.pours.len(), three.pours.len(), "{}", preparation.key);
        for (a, b) in one.pours.iter().zip(&three.pours) {
            assert!(
                (3.0 * a.ml - b.ml).abs() < 1e-4 * b.ml,
                "{}: {} {}",
                preparation.key,
                a.ml,
                b.ml
            );
        }
    }
}

#[test]
fn every_preparation_composes_and_explains_itself() {
    for preparation in preparations::all() {
        let mut wish = Composition::of(
            &preparation.key,
            plant("oregano", "flowering tops", PlantState::Dried, 50.0),
        );
        wish.plants[0].state = usual_state(preparation);
        if !preparation.takes_herb() {
            wish.plants.clear();
            wish.jar_ml = Some(1000.0);
        }
        let jar = compose(&wish).unwrap_or_else(|refusal| panic!("{}: {refusal}", preparation.key));
        assert!(
            !jar.pours.is_empty() && !jar.cautions.is_empty(),
            "{}",
            preparation.key
        );
        for caution in &jar.cautions {
            assert!(
                caution.source.is_some() || caution.status != Status::Confirmed,
                "{}",
                caution.code
            );
        }
        for note in jar.reasons.iter().chain(&jar.would_help) {
            assert!(
                note.text.id() != "own-words",
                "{}: {}",
                preparation.key,
                note.text
            );
            assert!(
                note.source.is_some() || note.status != Status::Confirmed,
                "{}",
                note.text
            );
        }
        assert!(jar.keeping.text.id() != "own-words");
    }
}

#[test]
fn a_made_up_preparation_needs_data_only() {
    let text = r#"
        [[preparation]]
        key = "moon-drops"
        family = "moon-drops"
        advised = true
        method_source = ""
        method_status = "proposal"
        aim = "parts"
        measure = "poured on"
        grade = "ethanol"
        ratio_dried = { low = 3.0, usual = 6.0, high = 9.0, source = "", status = "proposal" }
        gates = ["free-water"]
        uses = ["inside"]
        steep_days = { low = 2.0, high = 4.0 }
        shelf_months = { low = 1.0, high = 2.0, source = "", status = "practice" }
        storage = "storage-cool"
        parts_source = ""
        parts_status = "proposal"
        parts = [
          { kind = "spirit", strength_percent_vol = 60.0, share = 1.0 },
          { kind = "honey", water_percent_mass = 18.0, share = 1.0 },
        ]
    "#;
    let table: toml::Value = toml::from_str(text).unwrap();
    let moon = &preparations::read(&serde_json::to_string(&table).unwrap()).unwrap()[0];
    let wish = Composition::of(
        "moon-drops",
        plant("thyme", "flowering tops", PlantState::Dried, 10.0),
    );
    let jar = compose_as(moon, &wish).unwrap();
    assert!((jar.poured_ml - 60.0).abs() < 1e-9 && jar.pours.len() == 2);
    assert!(jar.liquid.strength_percent_vol.value > 25.0);
    assert_eq!(jar.keeping.verdict, Verdict::Keeps);
    assert!(jar.cautions.iter().any(|note| note.code == "infant-honey"));
    let request = crate::advise::Request {
        plant: wish.plants[0].clone(),
        also: Vec::new(),
        purpose: Purpose::Inside,
        without: Vec::new(),
        jar_ml: None,
        stock: None,
    };
    let advised = crate::advise::advise_from(std::slice::from_ref(moon), &request).unwrap();
    assert_eq!(advised[0].preparation, "moon-drops");
    let lines: Vec<_> = jar.pours.iter().map(|pour| &pour.line).collect();
    assert_eq!(advised[0].pours.iter().collect::<Vec<_>>(), lines);
    let poured = "2026-03-01".parse().unwrap();
    let dates = keep::dates(moon, jar.keeping.verdict, poured, None);
    assert_eq!(dates.strain_to, "2026-03-05".parse().unwrap());
    assert_eq!(dates.stop_using, Some("2026-04-04".parse().unwrap()));
}

#[test]
fn what_is_on_the_shelf_is_used_up_to_what_there_is() {
    let mut wish = Composition::of("tincture", mint(80.0));
    wish.strength_percent_vol = Some(45.0);
    let limited = |percent, available| Stock {
        available_ml: Some(available),
        ..spirit(percent)
    };
    wish.stock = vec![limited(95.0, 100.0), limited(60.0, 500.0)];
    let jar = compose(&wish).unwrap();
    assert!(jar.reached, "{:?}", jar.short_of);
    assert!((jar.liquid.strength_percent_vol.value - 45.0).abs() < 0.05);
    assert!((jar.poured_ml - 200.0).abs() < 0.01);
    let strong = jar
        .pours
        .iter()
        .find(|pour| pour.name.to_string().contains("95"))
        .unwrap();
    assert!(strong.ml > 1.0 && strong.ml <= 100.0 + 1e-6, "{strong:?}");
    wish.stock = vec![limited(95.0, 20.0)];
    let short = compose(&wish).unwrap();
    assert!(
        !short.reached && short.short_of[0].got == 20.0,
        "{:?}",
        short.short_of
    );
}

#[test]
fn a_damper_herb_never_keeps_better() {
    for preparation in preparations::all()
        .iter()
        .filter(|one| one.takes(PlantState::Fresh))
    {
        for strength in [25.0, 40.0, 60.0, 95.0] {
            let mut last = Verdict::Keeps;
            for moisture in 50..=97 {
                let herb = Plant {
                    moisture_wet_percent: Some(Interval::exact(f64::from(moisture))),
                    told: None,
                    identity: Default::default(),
                    ..plant("oregano", "flowering tops", PlantState::Fresh, 100.0)
                };
                let mut wish = Composition::of(&preparation.key, herb);
                wish.stock.push(spirit(strength));
                let verdict = compose(&wish).unwrap().keeping.verdict;
                assert!(
                    verdict >= last,
                    "{} with {strength} % at {moisture} %",
                    preparation.key
                );
                last = verdict;
            }
        }
    }
}

#[test]
fn water_poured_on_top_never_makes_a_jar_keep_better() {
    for preparation in preparations::all() {
        let state = usual_state(preparation);
        let herb = plant("oregano", "flowering tops", state, 100.0);
        let mut wish = Composition::of(&preparation.key, herb);
        if !preparation.takes_herb() {
            wish.plants.clear();
            wish.jar_ml = Some(500.0);
        }
        let jar = compose(&wish).unwrap();
        let mut last = Verdict::Keeps;
        for water_g in (0..=1200).step_by(25) {
            let mut poured: Vec<_> = jar
                .pours
                .iter()
                .map(|pour| (pour.ingredient, physics::quantity::grams(pour.g)))
                .collect();
            let water = physics::quantity::grams(f64::from(water_g));
            poured.push((Ingredient::water(), water));
            let verdict = as_poured(preparation, &poured, &wish.plants, None)
                .unwrap()
                .keeping
                .verdict;
            assert!(
                verdict >= last,
                "{} with {water_g} g of water: {verdict:?} after {last:?}",
                preparation.key
            );
            last = verdict;
        }
        let mixes = preparation.grade != Solvent::Oil;
        let spoilt =
            last > Verdict::Keeps || preparation.best.is_some_and(|best| best > Verdict::Keeps);
        assert!(
            spoilt || !mixes || jar.keeping.verdict == Verdict::DoNotMake,
            "{} is never spoilt by a flood",
            preparation.key
        );
    }
}

#[test]
fn nonsense_is_refused_in_words() {
    let refused = |change: &dyn Fn(&mut Composition)| {
        let mut wish = Composition::of("vinegar", mint(80.0));
        change(&mut wish);
        compose(&wish).unwrap_err().refusal().clone()
    };
    let weak = refused(&|wish| {
        wish.stock
            .push(stock(Ingredient::vinegar(Acidity::new(3.0).unwrap())))
    });
    assert_eq!(weak.field, "stock");
    assert_eq!(weak.message.id(), "vinegar-too-weak");
    for ratio in [0.0, -1.0, f64::NAN, 1e308] {
        let refusal = refused(&|wish| wish.ratio_ml_per_g = Some(ratio));
        assert_eq!(refusal.field, "ratio_ml_per_g");
        assert_eq!(refusal.message.id(), "refused-range");
    }
    for mass in [0.0, -5.0, f64::NAN, 1e308] {
        let refusal = refused(&|wish| wish.plants[0].mass_g = mass);
        assert_eq!(refusal.field, "plants[0].mass_g");
    }
    let damp = Interval {
        low: 50.0,
        value: 80.0,
        high: 120.0,
    };
    assert_eq!(
        refused(&|wish| wish.plants[0].moisture_wet_percent = Some(damp)).field,
        "plants[0].moisture_wet_percent"
    );
    assert_eq!(refused(&|wish| wish.jar_ml = Some(50.0)).field, "jar_ml");
    assert_eq!(
        refused(&|wish| wish.jar_ml = Some(f64::NAN)).field,
        "jar_ml"
    );
    assert_eq!(
        refused(&|wish| wish.temperature_c = 1e308).field,
        "temperature_c"
    );
    assert_eq!(refused(&|wish| wish.plants.clear()).field, "plants");
    assert_eq!(
        refused(&|wish| wish.preparation = "potion".into()).field,
        "preparation"
    );
    assert_eq!(
        refused(&|wish| wish.glycerin_percent_vol = Some(140.0)).field,
        "glycerin_percent_vol"
    );
}
