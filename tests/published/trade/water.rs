//! Every row of `herb_priors.csv` is found under its own key, and gives the water and the ratio it prints.

use checks::{Verdict, table};
use formulary::herbs;
use physics::drying::DryMatterPrior;

#[test]
fn every_prior_is_found_and_gives_its_printed_figures() {
    let mut verdict = Verdict::default();
    for row in table("herb_priors") {
        let key = row.text("key");
        let (name, part) = match key.strip_prefix("default_") {
            // A herb nobody listed gets the general figure of its part.
            Some("any") => ("a herb of my own", "cap"),
            Some(part) => ("a herb of my own", part),
            None if key == "nettle_herb" => (key, "blanched leaf"),
            None => (key, row.text("part")),
        };
        let water = herbs::water(name, part);
        verdict.absolute(
            key,
            water.ln_mean,
            row.number("ln_dry_matter_fraction_mean"),
            0.0,
        );
        verdict.absolute(
            key,
            water.ln_sd,
            row.number("ln_dry_matter_fraction_sd"),
            0.0,
        );
        // Half a unit of the last printed digit, of the figure itself and of the mean (4 decimals)
        // and the spread (3 decimals) that it is worked out from.
        let (of_mean, of_end) = (0.5e-4, 0.5e-4 + 1.645 * 0.5e-3);
        let percent = water.water_wet_percent.value;
        verdict.absolute(
            key,
            percent,
            row.number("fresh_water_wb_pct"),
            0.05 + of_mean * (100.0 - percent),
        );
        let ratio = water.ratio_fresh_per_dry.value;
        verdict.absolute(
            key,
            ratio,
            row.number("ratio_fresh_to_dry_at_10pct"),
            0.005 + of_mean * ratio,
        );
        let printed = DryMatterPrior::new(water.ln_mean, water.ln_sd)
            .unwrap()
            .fresh_water_wet_percent();
        verdict.absolute(
            key,
            printed.low,
            row.number("fresh_water_wb_pct_lo90"),
            0.05 + of_end * (100.0 - printed.low),
        );
        verdict.absolute(
            key,
            printed.high,
            row.number("fresh_water_wb_pct_hi90"),
            0.05 + of_end * (100.0 - printed.high),
        );
        // A page that names no authority was read too, but confirms nothing.
        let named = water.source != formulary::source_of("source-second-hand");
        let read = row.text("confirmed") == "text read" && named;
        verdict.holds(
            key,
            read == (water.status == formulary::Status::Confirmed),
            "its status is kept",
        );
    }
    verdict.conclude(7 * 116);
}
