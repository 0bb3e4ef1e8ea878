//! Spirits thinned with water and with each other.

use checks::Verdict;
use formulary::arithmetic;
use physics::{
    mixture::{
        Ingredient,
        dilution::{self, Dilution},
        ethanol,
    },
    quantity::{millilitres, millilitres_of},
};

use super::super::{mixed, spirit, strength};
use super::{Example, naive, numbers};

/// Holds an example of a spirit to its answer; false for what is none.
pub(super) fn hold(example: &Example, verdict: &mut Verdict) -> bool {
    let printed = &example.printed;
    match example.id.as_str() {
        "W01" => {
            let pours = [(spirit(94.9), 500.0), (Ingredient::water(), 500.0)];
            example.is(verdict, mixed(&pours, None).volume_ml.value, 0);
        }
        "W02" => {
            let pours = [
                (strength(94.9), millilitres(500.0)),
                (strength(0.0), millilitres(500.0)),
            ];
            let (ends, _) = dilution::blend(&pours, ethanol::sixty_fahrenheit()).unwrap();
            let inside = (printed[0]..=printed[1]).contains(&ends.percent());
            verdict.holds(&example.id, inside, &format!("{} % vol", ends.percent()));
        }
        "W03" | "W05" | "W06" | "W07" => {
            // The pharmacopoeial figures correspond to a stock of 96.3 %, the middle of its limits.
            let (to, total) = (
                strength(example.input("target")),
                millilitres(example.input("final")),
            );
            let made =
                dilution::make_up(strength(96.3), to, total, ethanol::twenty_celsius()).unwrap();
            example.is(verdict, millilitres_of(made.spirit), 0);
        }
        "W10" | "W12" | "W14" | "W15" | "W18" | "W19" | "W21" => {
            let (from, to) = (
                strength(example.input("start")),
                strength(example.input("target")),
            );
            let made = dilution::dilute(from, millilitres(100.0), to, ethanol::sixty_fahrenheit())
                .unwrap();
            example.is(verdict, millilitres_of(made.water), 0);
        }
        "W22" => {
            let (v, from, to) = (
                example.input("V"),
                example.input("start"),
                example.input("target"),
            );
            let water = v * from / to - v;
            example.is(verdict, water, 0);
            let exact = dilution::dilute(
                strength(from),
                millilitres(v),
                strength(to),
                ethanol::sixty_fahrenheit(),
            )
            .unwrap();
            // The note: the contraction-true answer is about 232.7 mL; the gauging table is at 60 F.
            verdict.absolute("W22 exact", millilitres_of(exact.water), 232.7, 0.2);
        }
        "W23" => {
            // The answer reads "498 mL 95 % + 1395 mL water".
            let (alcohol, exact) = added_up(example, verdict, 2, 10.0);
            verdict.absolute("W23 spirit", millilitres_of(exact.spirit), alcohol, 0.01);
        }
        "W24" => {
            let (v, from, to) = (
                example.input("V"),
                example.input("start"),
                example.input("target"),
            );
            let made = dilution::dilute(
                strength(from),
                millilitres(v),
                strength(to),
                ethanol::twenty_celsius(),
            )
            .unwrap();
            example.is(verdict, millilitres_of(made.total), 0);
        }
        "W27" | "W28" => {
            let (high, low) = arithmetic::alligation(
                example.input("hi"),
                example.input("lo"),
                example.input("target"),
            )
            .unwrap();
            verdict.absolute(&example.id, high / low, printed[0] / printed[1], 1e-12);
            // Parts by volume overshoot, since the mixture shrinks.
            let parts = [("hi", printed[0]), ("lo", printed[1])];
            let pours = parts.map(|(of, ml)| (strength(example.input(of)), millilitres(ml)));
            let (ends, _) = dilution::blend(&pours, ethanol::twenty_celsius()).unwrap();
            let above = ends.percent() - example.input("target");
            verdict.holds(
                "alligation exact",
                (0.1..1.0).contains(&above),
                &format!("{} ends {above} % vol above its target", example.id),
            );
        }
        "W32" => {
            added_up(example, verdict, 1, 1.0);
        }
        "W35" => {
            let factors = numbers(example.row.text("inputs"));
            let pounds = 81_000.0;
            example.is(verdict, pounds * factors[0], 0);
            example.is(verdict, pounds * factors[1], 1);
            verdict.absolute("W35 proof", factors[1] / factors[0], 1.9, 0.0002);
        }
        "W36" => {
            let p = ethanol::mass_fraction_of(
                strength(example.input("abv")),
                ethanol::twenty_celsius(),
            )
            .unwrap();
            example.is(verdict, p.percent(), 0);
            // "33.27 g/100 g; 31.57 g/100 mL"
            example.is(
                verdict,
                arithmetic::ethanol_g(100.0, example.input("abv")).unwrap(),
                2,
            );
        }
        "W38" => {
            let stock =
                ethanol::mass_fraction_of(strength(96.2), ethanol::twenty_celsius()).unwrap();
            let needed = arithmetic::ethanol_g(100.0, 40.0).unwrap();
            example.is(verdict, needed / stock.get(), 0);
        }
        _ => return false,
    }
    true
}

/// Holds a volume of a strength to volumes that simply add up, and shows that they fall short of it
/// by more than so many mL of water; the spirit so counted in mL, and what makes it up.
fn added_up(
    example: &Example,
    verdict: &mut Verdict,
    water_at: usize,
    short_by_ml: f64,
) -> (f64, Dilution) {
    let [total, from, to] = ["final", "stock", "target"].map(|name| example.input(name));
    let (alcohol, water) = naive(total, from, to);
    example.is(verdict, alcohol, 0);
    example.is(verdict, water, water_at);
    let exact = dilution::make_up(
        strength(from),
        strength(to),
        millilitres(total),
        ethanol::twenty_celsius(),
    )
    .unwrap();
    let short = millilitres_of(exact.water) - water;
    verdict.holds(
        &format!("{} exact", example.id),
        short > short_by_ml,
        &format!("{short} mL of water more make it up"),
    );
    (alcohol, exact)
}
