//! What the test files share: readers of the published tables, and how much work was done.

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
