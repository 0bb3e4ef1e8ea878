//! What would meet a missed target or keep longer: each advice is tried before it is given.

use message::{Argument, Message, Unit, say};
use physics::{
    Interval, Strength,
    mixture::{Ingredient, IngredientKind, Kind},
};

use super::{Composition, Draft, Stock, draft, usual::round_to};
use crate::{
    note::Note,
    preparations::{Aim, PlantState, Preparation, Verdict},
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
            &|then| say!("help-dry-first", then = becomes(preparation, then)),
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
            let mut sampled = composition.clone();
            for (plant, line) in sampled.plants.iter_mut().zip(&now.plants) {
                let Interval { low, value, .. } = line.moisture_wet_percent;
                let water = if at_its_driest { low } else { value };
                plant.moisture_wet_percent = Some(Interval::exact(water));
            }
            let then = draft(preparation, &sampled)
                .ok()
                .filter(|then| better(now, then))?;
            let then = becomes(preparation, &then);
            Some(match at_its_driest {
                true => say!("help-sample-driest", then),
                false => say!("help-sample", then),
            })
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
            &|_| say!("help-crisp"),
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
            Some(say!(
                "help-pour-more",
                ratio = Argument::exact(wanted, Unit::None),
                then = becomes(preparation, &then)
            ))
        });
    notes.extend(higher.map(|text| Note::computed("higher-ratio", text)));
    let spirit = strongest_spirit(composition);
    let takes_spirit = preparation
        .parts
        .iter()
        .any(|part| part.kind == IngredientKind::Spirit);
    if takes_spirit
        && preparation.aim != Aim::Glycerin
        && spirit.is_some_and(|strength| strength < STRONG)
        && let Ok(strength) = Strength::from_percent(STRONG)
    {
        let mut stronger = composition.clone();
        stronger
            .stock
            .retain(|stock| !matches!(stock.ingredient.kind(), Kind::Spirit { .. }));
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
                say!(
                    "help-stronger-spirit",
                    strength = Argument::strength(STRONG),
                    then = becomes(preparation, then)
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
            &|then| say!("help-usual-strength", then = becomes(preparation, then)),
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
            &|then| say!("help-glycerin-alone", then = becomes(preparation, then)),
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
    text: &dyn Fn(&Draft) -> Message,
) {
    if let Ok(then) = draft(preparation, other)
        && better(now, &then)
    {
        notes.push(Note::computed(code, text(&then)));
    }
}

/// What it would be then: a whole sentence.
fn becomes(preparation: &Preparation, then: &Draft) -> Message {
    let keeps = match then.keeping.verdict {
        Verdict::Keeps => say!("ends-and-keeps"),
        Verdict::KeepsCold => say!("ends-and-keeps-cold"),
        Verdict::UseNow => say!("ends-and-is-for-now"),
        Verdict::DoNotMake => say!("ends-and-is-not-made"),
    };
    let of = |Interval { low, value, high }, unit| Argument::range(low, value, high, unit);
    if preparation.aim == Aim::Glycerin {
        let glycerin = of(then.liquid.glycerol_percent_mass, Unit::Percent);
        say!("then-ends-glycerin", glycerin, keeps)
    } else if then.liquid.strength_percent_vol.value > 0.5 {
        let strength = of(then.liquid.strength_percent_vol, Unit::PercentVol);
        say!("then-ends", strength, keeps)
    } else {
        say!("then-keeps", keeps)
    }
}

fn strongest_spirit(composition: &Composition) -> Option<f64> {
    let strengths = composition
        .stock
        .iter()
        .filter_map(|stock| match stock.ingredient.kind() {
            Kind::Spirit {
                strength_percent_vol,
            } => Some(strength_percent_vol),
            _ => None,
        });
    strengths.max_by(f64::total_cmp)
}
