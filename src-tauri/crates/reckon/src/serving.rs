//! Ways to use what came of a jar.

use formulary::serving::{self, Served, Way};

use crate::jar::judged::Judged;
use crate::label;

/// The ways that fit what a jar gave.
pub fn ways(judged: &Judged) -> Vec<Way> {
    serving::ways(&Served {
        preparation: judged.preparation,
        uses: &label::uses(judged),
        strength_percent_vol: judged.poured.liquid.strength_percent_vol.value,
    })
}
