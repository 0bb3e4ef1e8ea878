//! A mixture of normal distributions in ln(dry matter), capped from above.

/// Normal components (weight, mean, variance) of ln D, with a highest possible value.
pub(crate) struct Spread {
    components: Vec<(f64, f64, f64)>,
    cut: f64,
    /// The share of the components that lies below the cut.
    possible: f64,
}

/// Probability that a standard normal variable is at most `z`.
pub(crate) fn normal_cdf(z: f64) -> f64 {
    0.5 * libm::erfc(-z * core::f64::consts::FRAC_1_SQRT_2)
}

/// More components than this are merged with their neighbours, moments kept.
const MOST: usize = 16;

impl Spread {
    /// From components in any order and the highest possible value.
    pub fn new(mut components: Vec<(f64, f64, f64)>, cut: f64) -> Self {
        components.sort_by(|a, b| a.1.total_cmp(&b.1));
        let share = components.iter().map(|c| c.0).sum::<f64>() / MOST as f64;
        let mut merged: Vec<(f64, f64, f64)> = Vec::with_capacity(MOST + 1);
        for c in components {
            match merged.last_mut() {
                Some(last) if last.0 + c.0 <= share => {
                    let weight = last.0 + c.0;
                    let mean = (last.0 * last.1 + c.0 * c.1) / weight;
                    let second = last.0 * (last.2 + last.1 * last.1) + c.0 * (c.2 + c.1 * c.1);
                    *last = (weight, mean, (second / weight - mean * mean).max(1e-12));
                }
                _ => merged.push(c),
            }
        }
        let mut spread = Self {
            components: merged,
            cut,
            possible: 1.0,
        };
        // What contradicts the weights is not believed to the last digit.
        spread.possible = spread.uncut_below(cut).max(1e-6);
        spread
    }

    /// Probability that ln D is at most `x`, nothing being above the highest possible value.
    pub fn probability_below(&self, x: f64) -> f64 {
        if x >= self.cut {
            1.0
        } else {
            self.uncut_below(x) / self.possible
        }
    }

    fn uncut_below(&self, x: f64) -> f64 {
        self.components
            .iter()
            .map(|&(w, m, v)| w * normal_cdf((x - m) / libm::sqrt(v)))
            .sum()
    }

    /// The value, no higher than the highest possible one, below which ln D lies with probability `p`.
    pub fn quantile(&self, p: f64) -> f64 {
        self.reached(p * self.possible)
    }

    /// The middle of what was believed before anything showed that values above the highest are not possible.
    pub fn middle_uncut(&self) -> f64 {
        self.reached(0.5)
    }

    fn reached(&self, below: f64) -> f64 {
        let (mut low, mut high) = (f64::MAX, f64::MIN);
        for &(_, m, v) in &self.components {
            let reach = 8.0 * libm::sqrt(v);
            low = low.min(m - reach);
            high = high.max(m + reach);
        }
        for _ in 0..36 {
            let middle = 0.5 * (low + high);
            if self.uncut_below(middle) < below {
                low = middle;
            } else {
                high = middle;
            }
        }
        (0.5 * (low + high)).min(self.cut)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn one_normal_component_has_its_own_quantiles() {
        let spread = Spread::new(vec![(1.0, 2.0, 0.04)], 100.0);
        assert!((spread.quantile(0.5) - 2.0).abs() < 1e-8);
        assert!((spread.quantile(0.95) - (2.0 + 0.2 * 1.644_853_627)).abs() < 1e-7);
    }

    #[test]
    fn no_quantile_lies_above_the_highest_possible_value() {
        let spread = Spread::new(vec![(1.0, 2.0, 0.04)], 2.1);
        let (low, high) = (spread.quantile(0.05), spread.quantile(0.95));
        assert!(low < high && high < 2.1, "{low} to {high}");
        assert!((spread.probability_below(spread.quantile(0.3)) - 0.3).abs() < 1e-8);
        let far = Spread::new(vec![(1.0, 2.0, 0.04)], 1.2);
        assert!(
            far.quantile(0.05) < far.quantile(0.95),
            "nothing closes at the cut"
        );
    }
}
