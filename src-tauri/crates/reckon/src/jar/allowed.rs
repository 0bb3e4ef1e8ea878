//! What may be done with a jar, and what no jar can have given.

use journal::{Jar, JarId};
use message::{Argument, Failure, Unit, say};
use physics::quantity::{grams, kg_per_m3, millilitres_of};
use store::{Reading, Writing};

use crate::jar::judged::Judged;

/// A strained jar whose marc has not been covered again yet.
pub fn used_up(reading: &Reading<'_>, id: &JarId) -> Result<Jar, Failure> {
    let row = reading
        .jar(id)
        .map_err(|why| Failure::from(why).renamed("jar"))?;
    refuse_failed(&row.jar)?;
    if !row.is_strained {
        let message = say!("jar-not-strained", name = Argument::own(row.jar.name));
        return Err(Failure::invalid("jar", message));
    }
    if let Some(other) = reading.jar_on_marc_of(id)? {
        let message = say!(
            "marc-in-another-jar",
            name = Argument::own(row.jar.name),
            code = Argument::own(other.code.to_string())
        );
        return Err(Failure::invalid("jar", message));
    }
    Ok(row.jar)
}

/// The volume of a weight of this jar's liquid, at 20 C.
pub fn by_weight(jar: &Jar, judged: &Judged, g: f64) -> Result<f64, Failure> {
    let oils = jar
        .pours
        .iter()
        .filter(|pour| matches!(pour.item, journal::Item::Oil { .. }));
    let (oil_g, oil_ml) = oils.fold((0.0, 0.0), |(g, ml), pour| (g + pour.g, ml + pour.ml));
    let density =
        if oil_ml > 0.0 && judged.preparation.grade == formulary::preparations::Solvent::Oil {
            oil_g / oil_ml * 1000.0
        } else {
            judged.poured.liquid.density_kg_m3.value
        };
    if !g.is_finite() || g <= 0.0 {
        let message = say!("came-out-nothing", given = Argument::exact(g, Unit::Gram));
        return Err(Failure::invalid("came_out_g", message));
    }
    Ok(millilitres_of(grams(g) / kg_per_m3(density)))
}

/// More than what was poured and all that the plants weighed cannot come out, but for the reading.
pub fn refuse_more_than_there_can_be(jar: &Jar, before: f64, ml: f64) -> Result<(), Failure> {
    let plants: f64 = jar.plants.iter().map(|plant| plant.mass_g).sum();
    let most = (jar.poured_ml() + plants) * 1.02 - before;
    let given = Argument::exact(ml, Unit::Millilitre);
    let message = if !ml.is_finite() || ml <= 0.0 {
        say!("came-out-nothing", given)
    } else if ml > most {
        let most = Argument::millilitres(most.max(0.0));
        say!("came-out-too-much", most, given)
    } else {
        return Ok(());
    };
    Err(Failure::invalid("came_out_ml", message))
}

pub fn named_jar(why: store::Failure) -> Failure {
    Failure::from(why).renamed("jar")
}

/// A jar that still stands on its plants.
pub fn standing(writing: &Writing<'_>, id: &JarId) -> Result<Jar, Failure> {
    let row = writing.jar(id).map_err(named_jar)?;
    refuse_failed(&row.jar)?;
    if row.is_strained {
        let message = say!("jar-strained-already", name = Argument::own(row.jar.name));
        return Err(Failure::invalid("jar", message));
    }
    Ok(row.jar)
}

pub fn refuse_failed(jar: &Jar) -> Result<(), Failure> {
    if jar.failed.is_some() {
        let message = say!("jar-failed-already", name = Argument::own(&jar.name));
        return Err(Failure::invalid("jar", message));
    }
    Ok(())
}
