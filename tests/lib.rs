//! What the test files share: readers of the published tables, random cases, a recipe, and how much work was done.

use std::path::PathBuf;
use std::time::Duration;

/// The time that processors worked for this thread, whatever else the machine did meanwhile; nothing
/// where the system does not say.
///
/// A test that must not hang judges by this and never by the clock on the wall.
pub fn worked() -> Duration {
    ticks("/proc/thread-self/stat")
}

/// As [`worked`], of all threads of this process.
pub fn all_worked() -> Duration {
    ticks("/proc/self/stat")
}

/// Fields 14 and 15 of `stat` (proc(5)): hundredths of a second in the program and in the system.
fn ticks(stat: &str) -> Duration {
    let told = std::fs::read_to_string(stat).unwrap_or_default();
    // The name stands in brackets and may hold anything, brackets too.
    let fields = told.rsplit_once(')').map_or("", |(_, fields)| fields);
    let spent = fields.split_whitespace().skip(11).take(2);
    Duration::from_millis(
        10 * spent
            .filter_map(|field| field.parse::<u64>().ok())
            .sum::<u64>(),
    )
}

/// Numbers without a pattern that are the same in every run and on every machine.
///
/// Source: SplitMix64, Steele, Lea and Flood 2014.
#[derive(Debug, Clone)]
pub struct Random(u64);

impl Random {
    /// The numbers of this seed.
    pub fn of(seed: u64) -> Self {
        Self(seed)
    }

    /// The next 64 bits.
    pub fn bits(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// A whole number below `end`; 0 where there is none.
    pub fn below(&mut self, end: u64) -> u64 {
        self.bits() % end.max(1)
    }

    /// A place in a list of that length.
    pub fn place(&mut self, length: usize) -> usize {
        self.below(length as u64) as usize
    }

    /// One of these.
    pub fn one<T: Copy>(&mut self, of: &[T]) -> T {
        of[self.place(of.len())]
    }

    /// As likely anywhere from `low` up to `high`.
    pub fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.unit()
    }

    /// Standard normal, by Box and Muller.
    pub fn normal(&mut self) -> f64 {
        let radius = libm::sqrt(-2.0 * libm::log(1.0 - self.unit()));
        radius * libm::cos(2.0 * std::f64::consts::PI * self.unit())
    }

    /// From 0 up to 1.
    pub fn unit(&mut self) -> f64 {
        (self.bits() >> 11) as f64 / (1_u64 << 53) as f64
    }
}

/// A harmless recipe as the code of a card holds it, whose fields the hostile ones change.
pub fn sage() -> serde_json::Value {
    serde_json::json!([
        "Sage for winter",
        "tincture-dried",
        [["sage", "leaf", "dried", 100.0]],
        [["spirit", [95.0], null], ["water", [], null]],
        5.0,
        50.0,
        null,
        null,
        null
    ])
}

/// One row of a published table, by column name.
#[derive(Debug, Clone)]
pub struct Row {
    columns: csv::StringRecord,
    cells: csv::StringRecord,
}

impl Row {
    /// The cell as text.
    ///
    /// # Panics
    /// When the table has no such column: a misspelt column must fail the test.
    pub fn text(&self, column: &str) -> &str {
        let at = self
            .columns
            .iter()
            .position(|name| name == column)
            .unwrap_or_else(|| panic!("no column `{column}` in {:?}", self.columns));
        self.cells.get(at).unwrap_or_default()
    }

    /// The cell as a number, or nothing where the cell is empty.
    ///
    /// # Panics
    /// When the cell is neither empty nor a number.
    pub fn number_or_blank(&self, column: &str) -> Option<f64> {
        let cell = self.text(column).trim();
        (!cell.is_empty()).then(|| {
            cell.parse()
                .unwrap_or_else(|_| panic!("`{cell}` in `{column}` is no number: {self:?}"))
        })
    }

    /// The cell as a number.
    ///
    /// # Panics
    /// When the cell is empty or no number.
    pub fn number(&self, column: &str) -> f64 {
        self.number_or_blank(column)
            .unwrap_or_else(|| panic!("`{column}` is blank in {self:?}"))
    }

    /// Whether any cell says that the printed figure is a known misprint.
    pub fn is_not_for_testing(&self) -> bool {
        self.cells.iter().any(|cell| cell.contains("do not test"))
    }
}

/// Reads `published/data/<name>.csv`, without the rows that say "do not test".
///
/// # Panics
/// When the file is missing, broken or empty.
pub fn table(name: &str) -> Vec<Row> {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR"))
        .join("published/data")
        .join(name)
        .with_extension("csv");
    let mut reader = csv::Reader::from_path(&path)
        .unwrap_or_else(|error| panic!("{} cannot be read: {error}", path.display()));
    let columns = reader.headers().expect("a header line").clone();
    let rows: Vec<Row> = reader
        .records()
        .map(|cells| Row {
            columns: columns.clone(),
            cells: cells.expect("a whole row"),
        })
        .filter(|row| !row.is_not_for_testing())
        .collect();
    assert!(!rows.is_empty(), "{} has no row to test", path.display());
    rows
}

/// Gathers what fell outside its tolerance, so that one run names every failing row.
#[derive(Debug, Default)]
pub struct Verdict {
    ran: usize,
    failures: Vec<String>,
}

impl Verdict {
    /// Compares within an absolute tolerance, `id` being the row's name.
    pub fn absolute(&mut self, id: &str, got: f64, expected: f64, tolerance: f64) {
        self.ran += 1;
        // A hair above the printed tolerance, for decimal figures that binary numbers cannot hold.
        let difference = (got - expected).abs();
        if difference.is_nan() || difference > tolerance + 1e-9 {
            self.failures.push(format!(
                "{id}: got {got}, expected {expected} within {tolerance}"
            ));
        }
    }

    /// Counts a row whose assertion is not a comparison of two numbers.
    pub fn holds(&mut self, id: &str, true_statement: bool, says: &str) {
        self.ran += 1;
        if !true_statement {
            self.failures.push(format!("{id}: {says}"));
        }
    }

    /// Fails when any row failed, or when the count of comparisons is not the expected one.
    ///
    /// # Panics
    /// On either.
    pub fn conclude(self, expected_count: usize) {
        assert!(
            self.failures.is_empty(),
            "{} of {} rows:\n{}",
            self.failures.len(),
            self.ran,
            self.failures.join("\n")
        );
        assert_eq!(
            self.ran, expected_count,
            "the number of comparisons that ran"
        );
    }
}
