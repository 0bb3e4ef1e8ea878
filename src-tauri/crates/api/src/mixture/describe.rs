//! `mixture.describe`: what is this liquid?

use physics::mixture::{self, Plant, Remark, Unmixable};
use physics::quantity::{celsius, grams, millilitres};
use physics::{Interval, WetBasis};

use super::label;
use super::wire::{
    DescribeMixture, Liquid, MixtureDescribed, Moisture, Pour, WaterActivity, WetPlant,
};
use crate::failure::At;
use crate::wire::{Note, Status};
use crate::{App, Code, Command, Failure, words};

impl Command for DescribeMixture {
    const NAME: &'static str = "mixture.describe";
    type Reply = MixtureDescribed;

    fn run(self, _: &App) -> Result<Self::Reply, Failure> {
        let mut pours = Vec::with_capacity(self.pours.len());
        for (at, pour) in self.pours.iter().enumerate() {
            pours.push(measured(pour).map_err(|why| why.within(&format!("pours[{at}]")))?);
        }
        let plants = plants(self.plants.as_deref().unwrap_or_default())?;
        let temperature = celsius(self.temperature_c.unwrap_or(20.0));
        let liquid = mixture::describe(&pours, &plants, temperature).at("pours")?;
        Ok(MixtureDescribed {
            notes: noted(&liquid.remarks),
            liquid: Liquid::from(&liquid),
        })
    }
}

fn measured(pour: &Pour) -> Result<mixture::Pour, Failure> {
    let ingredient = label::ingredient(&label::poured(pour)?)?;
    match (pour.g, pour.ml) {
        (Some(g), None) => mixture::Pour::weighed(ingredient, grams(g)).at("g"),
        (None, Some(ml)) => mixture::Pour::measured(ingredient, millilitres(ml)).at("ml"),
        _ => Err(Failure::invalid(
            "ml",
            "Give either the weight in g or the volume in mL.",
        )),
    }
}

/// The plants of a request as the mixture takes them.
pub(crate) fn plants(plants: &[WetPlant]) -> Result<Vec<Plant>, Failure> {
    let wet = |plant: &WetPlant| {
        let of = |percent| WetBasis::from_percent(percent).at("moisture_wet_percent");
        let (low, value, high) = match plant.moisture_wet_percent {
            Moisture::Number(value) => (value, value, value),
            Moisture::Interval(range) => (range.low, range.value, range.high),
        };
        let moisture = (of(low)?, of(value)?, of(high)?);
        // The mass is looked at first, so that the order of the moisture's ends is what is left.
        Plant::new(grams(plant.mass_g), moisture.1).at("mass_g")?;
        Plant::between(grams(plant.mass_g), moisture.0, moisture.1, moisture.2)
            .at("moisture_wet_percent")
    };
    let indexed = plants.iter().enumerate();
    indexed
        .map(|(at, plant)| wet(plant).map_err(|why| why.within(&format!("plants[{at}]"))))
        .collect()
}

/// What the reader of a liquid's figures should know, as notes.
pub(crate) fn noted(remarks: &[Remark]) -> Vec<Note> {
    let note = |remark: &Remark| Note {
        code: remark.code().to_owned(),
        text: remark.text().to_owned(),
        source: remark.source().map(str::to_owned),
        status: Status::Computed,
    };
    remarks.iter().map(note).collect()
}

impl From<&mixture::Liquid> for Liquid {
    fn from(liquid: &mixture::Liquid) -> Self {
        Self {
            mass_g: liquid.mass_g.into(),
            volume_ml: liquid.volume_ml.into(),
            density_kg_m3: liquid.density_kg_m3.into(),
            contraction_ml: liquid.contraction_ml.into(),
            strength_percent_vol: liquid.strength_percent_vol.into(),
            us_proof: liquid.us_proof.into(),
            ethanol_percent_mass: liquid.ethanol_percent_mass.into(),
            ethanol_g: liquid.ethanol_g.into(),
            glycerol_percent_mass: liquid.glycerol_percent_mass.into(),
            glycerol_percent_vol: liquid.glycerol_percent_vol.into(),
            sugar_percent_mass: liquid.sugar_percent_mass.into(),
            acidity_g_per_100ml: liquid.acidity_g_per_100ml.into(),
            acid_ph: liquid.acid_ph.map(Interval::into),
            flash_point_c: liquid.flash_point_c.map(Interval::into),
            free_water_ml: liquid.free_water_ml.into(),
            alcohol_to_keep_ml: liquid.alcohol_to_keep_ml.into(),
            water_activity: WaterActivity {
                highest: liquid.water_activity.highest.into(),
                by_ross: liquid.water_activity.by_ross.into(),
                by_norrish: liquid.water_activity.by_norrish.into(),
            },
        }
    }
}

impl From<Unmixable> for Failure {
    fn from(error: Unmixable) -> Self {
        let failure = Self::new(Code::Invalid, words::sentence(&error.to_string()));
        match error {
            Unmixable::TooColdOrHot { .. } => failure.at("temperature_c"),
            Unmixable::NoStock => failure.at("stock"),
            Unmixable::NoSize => failure.at("targets"),
            Unmixable::MoreThanAvailable { index, .. } => {
                failure.at(&format!("stock[{index}].exactly_ml"))
            }
            Unmixable::OutOfRange(_) | Unmixable::NoLiquid | Unmixable::Unsolved => failure,
        }
    }
}
