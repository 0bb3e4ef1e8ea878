//! What would meet a missed target or keep longer: each advice is tried before it is given.

use physics::{Interval, Strength, mixture::Ingredient};

use super::{Composition, Draft, Stock, draft, liquids::kind_word, usual::round_to};
use crate::{
    note::Note,
    preparations::{Aim, PlantState, Preparation, Verdict},
    words,
};

pub(super) fn would_help(
    preparation: &Preparation,
    composition: &Composition,
    now: &Draft,
) -> Vec<Note> {
    if now.short_of.is_empty() && now.keeping.verdict == Verdict::Keeps {
        return Vec::new();
    }
    let mut notes = Vec::new();
    let fresh = composition
        .plants
        .iter()
        .any(|plant| plant.state == PlantState::Fresh);
    if fresh {
        let mut dried = composition.clone();
        for plant in dried
            .plants
            .iter_mut()
            .filter(|plant| plant.state == PlantState::Fresh)
        {
            plant.moisture_wet_percent = Some(Interval::exact(DRY));
        }
        offer(
            &mut notes,
            preparation,
            now,
            "dry-the-herb",
            &dried,
            &|then| {
                format!(
                    "Dry the herb first: with crisp herb it {}.",
                    becomes(preparation, then)
                )
            },
        );
    }
    let guessed = composition.plants.iter().any(|plant| {
        plant.state == PlantState::Fresh
            && plant
                .moisture_wet_percent
                .is_none_or(|water| !water.is_exact())
    });
    if guessed {
        // What it is likeliest to hold decides the sentence; that the dry end alone would keep is
        // reason enough to find out.
        let found = [false, true].into_iter().find_map(|at_its_driest| {
            let holds = if at_its_driest {
                "as little water as it may"
            } else {
                "what is likeliest"
            };
            let mut sampled = composition.clone();
            for (plant, line) in sampled.plants.iter_mut().zip(&now.plants) {
                let Interval { low, value, .. } = line.moisture_wet_percent;
                let water = if at_its_driest { low } else { value };
                plant.moisture_wet_percent = Some(Interval::exact(water));
            }
            let then = draft(preparation, &sampled)
                .ok()
                .filter(|then| better(now, then))?;
            let becomes = becomes(preparation, &then);
            Some(format!(
                "Dry a sample of 10 to 20 g to constant weight: if the herb holds {holds}, it {becomes}."
            ))
        });
        notes.extend(found.map(|text| Note::computed("oven-sample", text)));
    }
    let damp = composition
        .plants
        .iter()
        .any(|plant| plant.state == PlantState::Dried);
    if damp && preparation.gates.iter().any(|gate| gate == "herb-water") {
        let mut crisp = composition.clone();
        crisp
            .plants
            .iter_mut()
            .for_each(|plant| plant.moisture_wet_percent = Some(Interval::exact(CRISP)));
        offer(
            &mut notes,
            preparation,
            now,
            "dry-it-crisp",
            &crisp,
            &|_| "Dry the herb until it is crisp, and weigh it: at 10 % water it keeps.".to_owned(),
        );
    }
    let ratio = now.controls.ratio_ml_per_g.value;
    // The least rise that helps is the one worth naming.
    let higher = [1.5, 2.0, 3.0]
        .map(|more| round_to(ratio * more, 0.5))
        .into_iter()
        .find_map(|wanted| {
            let mut higher = composition.clone();
            higher.ratio_ml_per_g = Some(wanted);
            let then = draft(preparation, &higher)
                .ok()
                .filter(|then| better(now, then))?;
            let becomes = becomes(preparation, &then);
            Some(format!(
                "Pour more: at {} mL to a gram it {becomes}.",
                words::number(wanted, 1)
            ))
        });
    notes.extend(higher.map(|text| Note::computed("higher-ratio", text)));
    let spirit = strongest_spirit(composition);
    let takes_spirit = preparation.parts.iter().any(|part| part.kind == "spirit");
    if takes_spirit
        && preparation.aim != Aim::Glycerin
        && spirit.is_some_and(|strength| strength < STRONG)
        && let Ok(strength) = Strength::from_percent(STRONG)
    {
        let mut stronger = composition.clone();
        stronger
            .stock
            .retain(|stock| kind_word(&stock.ingredient) != "spirit");
        stronger.stock.push(Stock {
            ingredient: Ingredient::spirit(strength),
            available_ml: None,
            exactly_ml: None,
            supply: None,
        });
        offer(
            &mut notes,
            preparation,
            now,
            "stronger-spirit",
            &stronger,
            &|then| {
                format!(
                    "Use stronger spirit: with {STRONG:.0} % vol it {}.",
                    becomes(preparation, then)
                )
            },
        );
    }
    if let Some(control) = &now.controls.strength_percent_vol
        && control.value < control.usual
    {
        let mut stronger = composition.clone();
        stronger.strength_percent_vol = None;
        offer(
            &mut notes,
            preparation,
            now,
            "usual-strength",
            &stronger,
            &|then| {
                format!(
                    "Aim higher: at the usual strength it {}.",
                    becomes(preparation, then)
                )
            },
        );
    }
    if preparation.aim == Aim::Glycerin {
        let mut pure = composition.clone();
        pure.glycerin_percent_vol = Some(100.0);
        offer(
            &mut notes,
            preparation,
            now,
            "more-glycerin",
            &pure,
            &|then| {
                format!(
                    "Pour glycerin alone, without water: it then {}.",
                    becomes(preparation, then)
                )
            },
        );
    }
    notes
}

const DRY: f64 = 10.0;
const CRISP: f64 = 9.0;
const STRONG: f64 = 95.0;

fn better(now: &Draft, then: &Draft) -> bool {
    let reaches = !now.short_of.is_empty() && then.short_of.is_empty();
    let keeps_longer = then.keeping.verdict < now.keeping.verdict;
    reaches || (keeps_longer && then.short_of.len() <= now.short_of.len())
}

fn offer(
    notes: &mut Vec<Note>,
    preparation: &Preparation,
    now: &Draft,
    code: &str,
    other: &Composition,
    text: &dyn Fn(&Draft) -> String,
) {
    if let Ok(then) = draft(preparation, other)
        && better(now, &then)
    {
        notes.push(Note::computed(code, text(&then)));
    }
}

fn becomes(preparation: &Preparation, then: &Draft) -> String {
    let verdict = then.keeping.verdict.words();
    if preparation.aim == Aim::Glycerin {
        format!(
            "ends at {} glycerin and {verdict}",
            words::interval(then.liquid.glycerol_percent_mass, "% w/w")
        )
    } else if then.liquid.strength_percent_vol.value > 0.5 {
        format!(
            "ends at {} and {verdict}",
            words::interval(then.liquid.strength_percent_vol, "% vol")
        )
    } else {
        verdict.to_owned()
    }
}

fn strongest_spirit(composition: &Composition) -> Option<f64> {
    let strengths = composition
        .stock
        .iter()
        .filter_map(|stock| match stock.ingredient.kind() {
            physics::mixture::Kind::Spirit { strength } => Some(strength.percent()),
            _ => None,
        });
    strengths.max_by(f64::total_cmp)
}
