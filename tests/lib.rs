//! What the test files share: readers of the published tables.
