//! `jar.marc`: what there is to pour on when the marc of a strained jar is covered once more.

use formulary::preparations::{self, PlantState as State, Solvent};
use journal::{Jar, JarId, Stock};
use serde::{Deserialize, Serialize};
use store::Reading;

use super::judged::Judged;
use super::life::refuse_failed;
use super::proposal::{Composition, Plant};
use crate::mixture::{self, StockItem};
use crate::wire::{Interval, PlantState};
use crate::{App, Code, Command, Failure, asked};

/// The composition with which the marc of a jar is covered once more.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ComposeMarc {
    pub jar: String,
}

/// The jar whose marc is in this one, with its own ratio.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct MarcOf {
    pub jar: String,
    pub code: String,
    pub name: String,
    pub ratio_ml_per_g: Option<f64>,
}

impl Command for ComposeMarc {
    const NAME: &'static str = "jar.marc";
    type Reply = Composition;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let id: JarId = asked::id("jar", &self.jar)?;
        app.read(|reading| {
            let jar = used_up(reading, &id)?;
            let judged = Judged::of(reading, &jar)?;
            composition(reading, &id, &jar, &judged)
        })
    }
}

/// A strained jar whose marc has not been covered again yet.
pub(super) fn used_up(reading: &Reading<'_>, id: &JarId) -> Result<Jar, Failure> {
    let row = reading
        .jar(id)
        .map_err(|why| Failure::from(why).renamed("jar"))?;
    refuse_failed(&row.jar, "poured on again")?;
    if !row.is_strained {
        let message = format!("{} is not strained yet; strain it first.", row.jar.name);
        return Err(Failure::invalid("jar", message));
    }
    if let Some(other) = reading.jar_on_marc_of(id)? {
        let message = format!(
            "The marc of {} is in the jar {} already.",
            row.jar.name, other.code
        );
        return Err(Failure::invalid("jar", message));
    }
    Ok(row.jar)
}

/// Whether the marc of a jar may be covered once more.
pub(super) fn may_be_covered_again(
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
fn composition(
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
            ..mixture::as_item(&kept)
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
            let message = format!("{} is not made from a marc.", judged.preparation.name);
            Failure::invalid("jar", message)
        })
}

/// The liquid of the jar as the label of one bottle would have it. A liquid of several parts has no
/// such label, and its marc is not reckoned with.
fn label_of_kept(jar: &Jar, judged: &Judged) -> Result<Stock, Failure> {
    let liquid = &judged.poured.liquid;
    let strong = liquid.strength_percent_vol.value;
    let sweet = liquid.glycerol_percent_mass.value;
    let sugar = liquid.sugar_percent_mass.value;
    let acid = liquid.acidity_g_per_100ml.value;
    // What a label would round away.
    let no = |value: f64| value < 0.5;
    match judged.preparation.grade {
        Solvent::Ethanol if no(sweet) && no(sugar) && no(acid) => Ok(Stock::Spirit {
            strength_percent_vol: strong,
        }),
        Solvent::Glycerite if no(strong) && no(sugar) && no(acid) => Ok(Stock::Glycerin {
            purity_percent_mass: sweet,
        }),
        Solvent::Vinegar if no(strong) && no(sweet) && no(sugar) => Ok(Stock::Vinegar {
            acidity_g_per_100ml: acid,
        }),
        Solvent::Oil => jar
            .pours
            .iter()
            .find(|pour| matches!(pour.item, Stock::Oil { .. }))
            .map(|pour| pour.item.clone())
            .ok_or_else(|| Failure::invalid("jar", "There is no oil in this jar.")),
        _ => Err(Failure::invalid(
            "jar",
            "A marc is covered again with plain spirit, glycerin, vinegar or oil; what this one kept is a mixture, and no practice of pouring a mixture on twice was found.",
        )),
    }
}
