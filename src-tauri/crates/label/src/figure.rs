//! A figure with its interval, and how it is written in print.

/// A value with its 90 % interval; equal ends where nothing is uncertain.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Figure {
    /// The lower end.
    pub low: f64,
    /// The best single value.
    pub value: f64,
    /// The upper end.
    pub high: f64,
}

impl Figure {
    /// A figure that is known.
    #[must_use]
    pub const fn exact(value: f64) -> Self {
        Self {
            low: value,
            value,
            high: value,
        }
    }

    /// The figure with its unit and, where it is uncertain, its interval: `24 % vol (22–26)`, held together by no-break spaces.
    ///
    /// The width of the interval decides the decimals, so that no more digits are printed than it deserves.
    pub(crate) fn with_unit(self, unit: &str) -> String {
        let width = self.high - self.low;
        let decimals = match width {
            _ if width >= 2.0 => 0,
            _ if width >= 0.2 => 1,
            _ => {
                return format!(
                    "{}\u{a0}{unit}",
                    trimmed(self.value, if self.value.abs() < 1.0 { 2 } else { 1 })
                );
            }
        };
        let written = |value: f64| format!("{value:.decimals$}");
        if written(self.low) == written(self.high) {
            return format!("{}\u{a0}{unit}", written(self.value));
        }
        format!(
            "{}\u{a0}{unit}\u{a0}({}–{})",
            written(self.value),
            written(self.low),
            written(self.high)
        )
    }
}

/// A number with at most so many decimals and no idle zeros.
pub(crate) fn trimmed(value: f64, decimals: usize) -> String {
    let written = format!("{value:.decimals$}");
    if written.contains('.') {
        written
            .trim_end_matches('0')
            .trim_end_matches('.')
            .to_owned()
    } else {
        written
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_interval_decides_the_digits() {
        let shown = |figure: Figure| figure.with_unit("% vol").replace('\u{a0}', " ");
        let wide = Figure {
            low: 21.84,
            value: 24.31,
            high: 26.2,
        };
        assert_eq!(shown(wide), "24 % vol (22–26)");
        let narrow = Figure {
            low: 24.1,
            value: 24.31,
            high: 24.6,
        };
        assert_eq!(shown(narrow), "24.3 % vol (24.1–24.6)");
        assert_eq!(shown(Figure::exact(60.0)), "60 % vol");
    }
}
