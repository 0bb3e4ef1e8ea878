//! Every row of `trade_worked_examples.csv`.

mod jars;
mod measures;
mod spirits;

use checks::{Row, Verdict, table};
use formulary::arithmetic;
use physics::{
    mixture::ethanol,
    quantity::{grams_of, millilitres},
};

use super::{mixed, spirit, strength};

/// A row with its answer read out.
struct Example {
    row: Row,
    id: String,
    printed: Vec<f64>,
    tolerance: f64,
}

impl Example {
    fn of(row: Row) -> Self {
        Self {
            id: row.text("id").to_owned(),
            printed: numbers(row.text("published_answer")),
            tolerance: row.text("tolerance").parse().unwrap_or(0.0),
            row,
        }
    }

    /// Holds a figure to one of the answer.
    fn is(&self, verdict: &mut Verdict, got: f64, at: usize) {
        verdict.absolute(&self.id, got, self.printed[at], self.tolerance);
    }

    /// The figure of an input such as `V=300;start=70`.
    fn input(&self, name: &str) -> f64 {
        self.row
            .text("inputs")
            .split(';')
            .filter_map(|pair| pair.split_once('='))
            .find(|(key, _)| key.trim() == name)
            .map(|(_, value)| numbers(value)[0])
            .unwrap_or_else(|| panic!("no input {name} in {:?}", self.row))
    }
}

/// The numbers in a printed answer, in order.
fn numbers(text: &str) -> Vec<f64> {
    text.split(|c: char| !(c.is_ascii_digit() || c == '.'))
        .filter_map(|piece| piece.trim_matches('.').parse().ok())
        .collect()
}

/// mL of spirit and of water for a volume of a strength if volumes simply added up: alligation against water.
fn naive(total: f64, from: f64, to: f64) -> (f64, f64) {
    let (spirit, water) = arithmetic::alligation(from, 0.0, to).expect("a target below the spirit");
    (
        total * spirit / (spirit + water),
        total * water / (spirit + water),
    )
}

#[test]
fn every_worked_example_comes_out() {
    let mut verdict = Verdict::default();
    for row in table("trade_worked_examples") {
        let example = Example::of(row);
        let holds = [spirits::hold, jars::hold, measures::hold];
        let tested = holds.iter().filter(|hold| hold(&example, &mut verdict));
        assert_eq!(tested.count(), 1, "{} is tested once", example.id);
    }
    verdict.conclude(84);
}

#[test]
fn grams_of_ethanol_agree_with_the_engine() {
    let liquid = mixed(&[(spirit(40.0), 100.0)], None);
    let reckoned = arithmetic::ethanol_g(100.0, 40.0).unwrap();
    assert!((liquid.ethanol_g.value - reckoned).abs() < 0.001);
    assert!(
        (grams_of(ethanol::ethanol_in(millilitres(100.0), strength(40.0))) - reckoned).abs() < 1e-9
    );
}
