//! A marc that may be covered again: the composition of a second maceration.

use formulary::preparations::{self, PlantState as State, Solvent};
use journal::{Item, Jar, JarId, PlantState};
use message::{Code, Failure, say};
use physics::Interval;
use store::Reading;

use crate::item::{self, StockItem};
use crate::jar::allowed::used_up;
use crate::jar::judged::Judged;
use crate::jar::proposal::{Composition, Plant};

/// Whether the marc of a jar may be covered once more.
pub fn may_be_covered_again(
    reading: &Reading<'_>,
    id: &JarId,
    judged: &Judged,
) -> Result<bool, Failure> {
    match used_up(reading, id) {
        Ok(jar) => Ok(again(judged).is_ok() && label_of_kept(&jar, judged).is_ok()),
        Err(why) if why.code == Code::Invalid => Ok(false),
        Err(why) => Err(why),
    }
}

/// The dry matter of the marc, and the liquid that it kept as one that must go in.
pub fn composition(
    reading: &Reading<'_>,
    id: &JarId,
    jar: &Jar,
    judged: &Judged,
) -> Result<Composition, Failure> {
    let strainings = reading.strainings(id)?;
    let out: f64 = strainings.iter().map(|(_, it)| it.came_out_ml).sum();
    let kept_ml = strainings
        .last()
        .map_or(0.0, |(_, last)| last.retained_ml(out).value);
    let plants = jar.plants.iter().map(|plant| Plant {
        lot: None,
        herb: plant.herb.to_string(),
        part: plant.part.clone(),
        state: PlantState::Dried,
        mass_g: plant.mass_g * (1.0 - plant.moisture_wet_percent.value / 100.0),
        // Its water is counted with the liquid that it kept.
        moisture_wet_percent: Some(Interval {
            low: 0.0,
            value: 0.0,
            high: 0.0,
        }),
        sample: None,
    });
    let kept = label_of_kept(jar, judged)?;
    let mut stock = Vec::new();
    if kept_ml >= 0.01 {
        stock.push(StockItem {
            exactly_ml: Some(kept_ml),
            ..item::as_item(&kept)
        });
    }
    Ok(Composition {
        preparation: again(judged)?,
        plants: plants.collect(),
        stock,
        ratio_ml_per_g: None,
        jar_ml: jar.jar_ml,
        strength_percent_vol: None,
        glycerin_percent_vol: None,
        fortify_percent_vol: None,
        temperature_c: None,
        confirmed: None,
    })
}

/// The preparation of dried herb of the same family, for the marc is no longer fresh.
fn again(judged: &Judged) -> Result<String, Failure> {
    let family = &judged.preparation.family;
    preparations::find(family, State::Dried)
        .map(|preparation| preparation.key.clone())
        .ok_or_else(|| {
            let preparation = judged.preparation.title();
            Failure::invalid("jar", say!("marc-not-again", preparation))
        })
}

/// The liquid of the jar as the label of one bottle would have it. A liquid of several parts has no
/// such label, and its marc is not reckoned with.
fn label_of_kept(jar: &Jar, judged: &Judged) -> Result<Item, Failure> {
    let liquid = &judged.poured.liquid;
    let strong = liquid.strength_percent_vol.value;
    let sweet = liquid.glycerol_percent_mass.value;
    let sugar = liquid.sugar_percent_mass.value;
    let acid = liquid.acidity_g_per_100ml.value;
    // What a label would round away.
    let no = |value: f64| value < 0.5;
    match judged.preparation.grade {
        Solvent::Ethanol if no(sweet) && no(sugar) && no(acid) => Ok(Item::Spirit {
            strength_percent_vol: strong,
        }),
        Solvent::Glycerite if no(strong) && no(sugar) && no(acid) => Ok(Item::Glycerin {
            purity_percent_mass: sweet,
        }),
        Solvent::Vinegar if no(strong) && no(sweet) && no(sugar) => Ok(Item::Vinegar {
            acidity_g_per_100ml: acid,
        }),
        Solvent::Oil => jar
            .pours
            .iter()
            .find(|pour| matches!(pour.item, Item::Oil { .. }))
            .map(|pour| pour.item.clone())
            .ok_or_else(|| Failure::invalid("jar", say!("jar-without-oil"))),
        _ => Err(Failure::invalid("jar", say!("marc-of-mixture"))),
    }
}
