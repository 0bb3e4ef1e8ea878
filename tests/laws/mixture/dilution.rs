//! Diluting, making up, blending.

use super::stock::strength;
use physics::{
    mixture::{dilution, ethanol},
    quantity::{celsius, millilitres, millilitres_of},
};
use proptest::prelude::*;

proptest! {
    #[test]
    fn diluting_and_blending_back_is_identity(
        from in 1.0..=100.0, share in 0.01..=1.0, ml in 1.0..=5000.0, t in -20.0..=40.0,
    ) {
        let (from, to, t) = (strength(from), strength(from * share), celsius(t));
        let made = dilution::dilute(from, millilitres(ml), to, t).unwrap();
        let (got, volume) = dilution::blend(&[(from, made.spirit), (strength(0.0), made.water)], t).unwrap();
        prop_assert!((got.percent() - to.percent()).abs() < 1e-8, "{} for {}", got.percent(), to.percent());
        prop_assert!((millilitres_of(volume) / millilitres_of(made.total) - 1.0).abs() < 1e-9);
        // Making up to that volume asks for the same spirit.
        let again = dilution::make_up(from, to, made.total, t).unwrap();
        prop_assert!((millilitres_of(again.spirit) / ml - 1.0).abs() < 1e-9);
    }

    #[test]
    fn water_added_to_pure_ethanol_contracts(share in 0.01..=0.99, t in 0.0..=40.0) {
        let made = dilution::dilute(strength(100.0), millilitres(100.0), strength(100.0 * share), celsius(t)).unwrap();
        prop_assert!(millilitres_of(made.water) >= -1e-9);
        // The recommendation's cells are good to 0.006 kg/m3.
        prop_assert!(millilitres_of(made.contraction) >= -6e-6 * millilitres_of(made.total));
    }

    #[test]
    fn strength_and_mass_fraction_return_to_each_other(q in 0.0..=100.0, t in -20.0..=40.0) {
        let p = ethanol::mass_fraction_of(strength(q), celsius(t)).unwrap();
        prop_assert!((ethanol::strength_of(p, celsius(t)).unwrap().percent() - q).abs() < 1e-9);
    }
}

#[test]
fn a_spirit_is_never_diluted_upwards() {
    let ml = millilitres(100.0);
    let at = ethanol::twenty_celsius();
    let refused = dilution::dilute(strength(40.0), ml, strength(50.0), at)
        .unwrap_err()
        .message();
    let refused = api::Language::English.tell(&refused);
    assert!(
        refused.starts_with("The wanted strength") && refused.ends_with("You entered 50."),
        "{refused}"
    );
    assert!(dilution::dilute(strength(40.0), ml, strength(0.0), at).is_err());
    assert!(dilution::dilute(strength(40.0), millilitres(f64::NAN), strength(20.0), at).is_err());
    assert!(dilution::make_up(strength(0.0), strength(0.0), ml, at).is_err());
}
