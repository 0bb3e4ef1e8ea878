//! Every formula of `trade_formulas.csv` with the figure its note prints.

use checks::{Verdict, table};
use formulary::{
    Interval, Status, arithmetic, cautions,
    compose::{Composition, compose},
    keep, plan,
    preparations::{self, PlantState},
};
use physics::{
    MassFraction, WetBasis,
    mixture::{Ingredient, IngredientKind, dilution, ethanol},
    quantity::{millilitres, millilitres_of},
};

use super::{herb, mixed, spirit, stock, strength, wish};

fn mint() -> formulary::compose::Plant {
    herb("peppermint", "leaf", PlantState::Fresh, 100.0, 80.0)
}

fn tincture(target: f64, spirit_percent: f64) -> Composition {
    let mut asked = wish("tincture", mint());
    asked.strength_percent_vol = Some(target);
    asked.stock = vec![stock(spirit(spirit_percent))];
    asked
}

#[test]
fn every_formula_gives_its_printed_figure() {
    let mut verdict = Verdict::default();
    let wet = |percent| WetBasis::from_percent(percent).unwrap();
    for row in table("trade_formulas") {
        let id = row.text("id").to_owned();
        match id.as_str() {
            "F01" => verdict.absolute(
                &id,
                arithmetic::dried_equivalent_g_per_ml(5.0).unwrap(),
                0.2,
                1e-12,
            ),
            "F02" => {
                let sum = arithmetic::fresh_equivalent_g_per_ml(2.0, wet(80.0), true).unwrap();
                verdict.absolute("F02 by volumes", sum, 0.071, 0.0005);
                let jar = mixed(&[(spirit(95.0), 200.0)], Some((100.0, 80.0)));
                verdict.absolute(
                    "F02 with contraction",
                    20.0 / jar.volume_ml.value,
                    0.073,
                    0.0005,
                );
            }
            "F03" => {
                let jar = mixed(&[(spirit(95.0), 200.0)], Some((100.0, 80.0)));
                verdict.absolute("F03", jar.strength_percent_vol.value, 69.5, 0.05);
                verdict.absolute("F03 naive", 200.0 * 95.0 / 280.0, 67.9, 0.05);
            }
            "F04" => {
                let met = compose(&tincture(50.0, 95.0)).unwrap();
                verdict.absolute("F04", met.liquid.strength_percent_vol.value, 50.0, 0.05);
                let missed = compose(&tincture(50.0, 60.0)).unwrap();
                let water = missed
                    .pours
                    .iter()
                    .filter(|pour| pour.kind == IngredientKind::Water)
                    .count();
                verdict.holds(
                    "F04 missed",
                    !missed.reached && water == 0 && !missed.would_help.is_empty(),
                    "says so, without negative water",
                );
            }
            "F05" => {
                let (from, to) = (strength(95.0), strength(40.0));
                let exact =
                    dilution::dilute(from, millilitres(100.0), to, ethanol::sixty_fahrenheit())
                        .unwrap();
                verdict.absolute("F05", millilitres_of(exact.water), 144.0, 0.5);
                verdict.absolute(
                    "F05 plain formula",
                    100.0 * (95.0 / 40.0 - 1.0),
                    137.5,
                    0.05,
                );
            }
            "F06" => {
                let made = dilution::make_up(
                    strength(95.0),
                    strength(40.0),
                    millilitres(1000.0),
                    ethanol::twenty_celsius(),
                )
                .unwrap();
                verdict.absolute(
                    "F06",
                    millilitres_of(made.spirit),
                    1000.0 * 40.0 / 95.0,
                    1e-6,
                );
                let both = millilitres_of(made.spirit) + millilitres_of(made.water);
                verdict.holds(
                    "F06 made up",
                    both > 1000.0,
                    "what is poured comes to more than what is made",
                );
            }
            "F07" => {
                let (high, low) = arithmetic::alligation(95.0, 50.0, 70.0).unwrap();
                verdict.absolute("F07 high", high, 20.0, 1e-12);
                verdict.absolute("F07 low", low, 25.0, 1e-12);
                let blend = [
                    (strength(95.0), millilitres(20.0)),
                    (strength(50.0), millilitres(25.0)),
                ];
                let (ends, _) = dilution::blend(&blend, ethanol::twenty_celsius()).unwrap();
                verdict.absolute("F07 mass error below 2 % vol", ends.percent(), 70.0, 2.0);
            }
            "F08" => {
                let pure = Ingredient::glycerin(MassFraction::from_percent(100.0).unwrap());
                let glycerin = 160.0 * 1.26;
                let by_hand = 100.0 * glycerin / (glycerin + 40.0 + 80.0);
                verdict.absolute("F08 by hand", by_hand, 62.7, 0.05);
                let mut asked = wish("glycerite", mint());
                asked.stock = vec![stock(pure)];
                let jar = compose(&asked).unwrap();
                verdict.absolute(
                    "F08 composed",
                    jar.liquid.glycerol_percent_mass.value,
                    by_hand,
                    0.05,
                );
            }
            "F09" => {
                let strained = arithmetic::yield_ml(500.0, 80.0, 20.0, 0.8);
                verdict.absolute(&id, strained, 564.0, 1e-9);
            }
            "F10" => {
                verdict.absolute(
                    "F10",
                    arithmetic::fresh_for_dry(100.0, wet(0.0), wet(80.0), 0.0).unwrap(),
                    500.0,
                    1e-9,
                );
                let plan = plan::plan(&plan::Wish {
                    identity: Default::default(),
                    herb: "peppermint".into(),
                    part: "leaf".into(),
                    preparation: "tincture".into(),
                    state: PlantState::Dried,
                    bottles: 5,
                    bottle_ml: 100.0,
                    ready_on: "2026-09-30".parse().unwrap(),
                    own_retention_ml_per_g: Some(Interval::exact(0.8)),
                    stock: Vec::new(),
                    yearly_use_ml: None,
                    gifts: false,
                })
                .unwrap();
                let dry = plan.dry_g.unwrap().value;
                let mut asked = wish(
                    "tincture",
                    herb("peppermint", "leaf", PlantState::Dried, dry, 10.0),
                );
                asked.plants[0].moisture_wet_percent = None;
                let jar = compose(&asked).unwrap();
                let strained = jar.liquid.volume_ml.value - 0.8 * 0.9 * dry;
                verdict.absolute("F10 planned", strained, 500.0, 0.01);
            }
            "F11" => {
                let jar = compose(&wish("glycerite", mint())).unwrap();
                let by_hand = (jar.liquid.volume_ml.value + 20.0 * 0.9) / 0.9;
                verdict.absolute(&id, jar.jar.needed_ml.value, by_hand, 1e-9);
                let said = jar
                    .reasons
                    .iter()
                    .find(|note| note.code == "jar-room")
                    .unwrap();
                verdict.holds(
                    "F11 is an assumption",
                    said.text.id() == "jar-room-assumed" && said.status == Status::Proposal,
                    &said.text.to_string(),
                );
            }
            "F12" => verdict.absolute(&id, arithmetic::ethanol_g(1.0, 60.0).unwrap(), 0.47, 0.005),
            "F13" => {
                let drops = arithmetic::drops_per_ml(&[20.0, 20.0, 20.0]).unwrap();
                verdict.absolute(&id, drops.value, 20.0, 0.0);
                verdict.holds(
                    "F13 thrice",
                    arithmetic::drops_per_ml(&[20.0]).is_err(),
                    "one count is refused",
                );
            }
            "F14" => {
                let tincture = preparations::find("tincture", PlantState::Dried).unwrap();
                let dates = keep::dates(
                    tincture,
                    preparations::Verdict::Keeps,
                    "2026-01-01".parse().unwrap(),
                    None,
                );
                let days = (dates.strain_to - dates.strain_from).num_days();
                verdict.absolute(&id, days as f64, 18.0, 0.0);
            }
            "F15" => {
                let input = arithmetic::Input {
                    used_ml: 300.0,
                    bought_ml: 750.0,
                    price: 30.0,
                };
                verdict.absolute(
                    &id,
                    arithmetic::cost_per_bottle(&[input], 4).unwrap(),
                    3.0,
                    1e-12,
                );
            }
            // A walk over the journal's own records, held by the journal's tests.
            "F16" => {}
            "F17" => {
                let blend = [
                    (strength(70.0), millilitres(100.0)),
                    (strength(30.0), millilitres(100.0)),
                ];
                let (ends, volume) = dilution::blend(&blend, ethanol::twenty_celsius()).unwrap();
                let ethanol = 100.0 * 0.7 + 100.0 * 0.3;
                verdict.absolute(
                    &id,
                    ends.percent(),
                    100.0 * ethanol / millilitres_of(volume),
                    0.001,
                );
                verdict.holds(
                    "F17 above the mean",
                    ends.percent() > 50.0,
                    "mixing shrinks",
                );
            }
            "F18" => {
                let says = cautions::general().iter().any(|note| {
                    let said = api::Language::English.tell(&note.text);
                    note.code == "no-dose"
                        && said.contains("does not work out doses, for adults or children")
                });
                verdict.holds(&id, says, "no dose is computed, and the reason is said");
            }
            other => panic!("{other} has no test"),
        }
    }
    verdict.conclude(29);
}
