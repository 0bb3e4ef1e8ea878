//! The labels of a class: what is in the jar, what to beware of, and lines for whoever made it.

use ::paper::{Kind, Label, Meaning, Plant, Ratio, Size, Use};
use formulary::cautions;
use formulary::preparations::Purpose;
use journal::Recipe;
use message::{Argument, Failure, say};
use reckon::told;
use store::Reading;

use crate::label::record::strengths;
use crate::recipe::carried::{self, Link};
use crate::recipe::worked::Worked;
use crate::speech;

/// Room for a name, a code and the cautions.
pub(crate) fn size() -> Result<Size, Failure> {
    Ok(Size::new(90.0, 55.0)?)
}

/// A label for each of `people`, numbered, for what none of them has poured yet.
pub(crate) fn labels(
    reading: &Reading<'_>,
    recipe: &Recipe,
    worked: &Worked,
    people: u32,
) -> Result<Vec<Label>, Failure> {
    let setting = reading.setting()?;
    let proposal = &worked.proposal;
    let language = speech::language();
    let plants = proposal.plants.iter().zip(&worked.known);
    let plants = plants.map(|(line, known)| Plant {
        common: told::herb(known),
        latin: known.latin.clone(),
        part: told::part(&line.part),
        state: line.state.name().into(),
    });
    let ratio = recipe.ratio_ml_per_g.map(|ml_per_g| Ratio {
        ml_per_g,
        meaning: Meaning::PouredOn,
    });
    let uses = &worked.preparation.uses;
    let use_for = match (proposal.keeping.outside_only, uses.first()) {
        (false, Some(Purpose::Inside)) => Use::Inside,
        (false, Some(Purpose::Food)) => Use::Food,
        _ => Use::OutsideOnly,
    };
    let code = match carried::link(recipe, false)? {
        Link::Made(link, _) => Some(link),
        Link::None(_) => None,
    };
    let days = proposal.steep_days;
    let strain = (days.high > 0).then(|| say!("class-strain", from = days.low, to = days.high));
    let by_hand = [Some(say!("class-name")), Some(say!("class-poured")), strain];
    let one = Label {
        language,
        plants: plants.collect(),
        ratio,
        liquids: proposal
            .pours
            .iter()
            .map(|pour| Argument::message(pour.name.clone()))
            .collect(),
        strengths: strengths(&proposal.liquid),
        storage: Some(worked.preparation.storage(proposal.keeping.verdict)),
        use_for,
        cautions: cautions::for_a_label(&proposal.cautions),
        poison_line: setting.poison_line,
        maker: None,
        by_hand: by_hand.into_iter().flatten().collect(),
        code,
        ..Label::new(Kind::Gift, recipe.name.clone(), "")
    };
    let numbered = (1..=people).map(|number| {
        let lot = language.tell(&say!("class-number", number, of = people));
        Label { lot, ..one.clone() }
    });
    Ok(numbered.collect())
}
