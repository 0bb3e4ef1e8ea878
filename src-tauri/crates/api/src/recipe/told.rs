//! What a card says of a recipe that was worked out.

use ::paper::card::Weight;
use formulary::cautions::{self, Severity};
use formulary::preparations::Purpose;
use formulary::serving::{self, Served, Way};
use message::{Argument, Message, Unit, say};
use physics::Interval;
use physics::mixture::Liquid;
use reckon::told;

use crate::recipe::worked::Worked;

/// A thing that stands alone on its line.
fn alone(what: impl Into<Argument>) -> Message {
    say!("alone", what = what.into())
}

/// The plants, then the liquids, each with how much of it.
pub(crate) fn amounts(worked: &Worked) -> Vec<(Message, Message)> {
    let plants = worked.proposal.plants.iter().zip(&worked.known);
    let plants = plants.map(|(line, known)| {
        let herb = told::plant_title(known, &line.part);
        let what = say!("card-plant", herb, state = line.state.name());
        (alone(Argument::grams(line.mass_g)), what)
    });
    let pours = worked.proposal.pours.iter();
    let pours = pours.map(|pour| (alone(Argument::millilitres(pour.ml)), pour.name.clone()));
    plants.chain(pours).collect()
}

/// How long it steeps, what comes of it, how strong it is and how long it keeps.
pub(crate) fn facts(worked: &Worked) -> Vec<(Message, Message)> {
    let proposal = &worked.proposal;
    let mut facts = Vec::new();
    let (from, to) = (proposal.steep_days.low, proposal.steep_days.high);
    if to > 0 {
        let days = match from == to {
            true => say!("card-day-count", days = Argument::count(to.into())),
            false => say!("card-days", from, to),
        };
        facts.push((say!("card-takes"), days));
    }
    let Interval { low, value, high } = proposal.comes_out.ml;
    let out = Argument::range(low, value, high, Unit::Millilitre);
    facts.push((say!("card-makes"), alone(out)));
    if let Some(holds) = holds(&proposal.liquid) {
        facts.push((say!("card-alcohol"), holds));
    }
    if let Some(days) = proposal.shelf_life.days {
        facts.push((say!("card-keeps"), keeps_for(days)));
    }
    facts
}

/// What makes the liquid what it is; below these figures it is a trace.
fn holds(liquid: &Liquid) -> Option<Message> {
    let said = |interval: Interval, unit: Unit| {
        Argument::range(interval.low, interval.value, interval.high, unit)
    };
    let (alcohol, glycerol) = (liquid.strength_percent_vol, liquid.glycerol_percent_mass);
    let (acid, sugar) = (liquid.acidity_g_per_100ml, liquid.sugar_percent_mass);
    let mut all: Vec<Argument> = Vec::new();
    if alcohol.high >= 0.5 {
        all.push(said(alcohol, Unit::PercentVol));
    }
    if glycerol.high >= 1.0 {
        let figure = said(glycerol, Unit::Percent);
        all.push(say!("strength-glycerin", figure).into());
    }
    if acid.high >= 0.5 {
        let figure = said(acid, Unit::GramPer100Ml);
        all.push(say!("strength-acid", figure).into());
    }
    if sugar.high >= 1.0 {
        let figure = said(sugar, Unit::Percent);
        all.push(say!("strength-sugar", figure).into());
    }
    (!all.is_empty()).then(|| alone(Argument::all_of(all)))
}

/// In months, or in days where that is less than two of them.
fn keeps_for(days: Interval) -> Message {
    const DAYS_IN_A_MONTH: f64 = 30.44;
    let whole = |value: f64| Argument::count(value.round().max(0.0) as u64);
    let month = |days: f64| (days / DAYS_IN_A_MONTH).round();
    if days.low < 2.0 * DAYS_IN_A_MONTH - 1.0 {
        return match days.low == days.high {
            true => say!("card-day-count", days = whole(days.high)),
            false => say!(
                "card-keeps-days",
                from = whole(days.low),
                to = whole(days.high)
            ),
        };
    }
    let (from, to) = (month(days.low), month(days.high));
    match from == to {
        true => say!("card-keeps-months-even", months = whole(to)),
        false => say!("card-keeps-months", from = whole(from), to = whole(to)),
    }
}

pub(crate) fn cautions(worked: &Worked) -> Vec<(Weight, Message)> {
    let mut lines: Vec<(Weight, Message)> = Vec::new();
    if worked.proposal.keeping.outside_only {
        let text = say!("label-use-outside");
        lines.push((Weight::Stop, say!("card-stop", text)));
    }
    let said = cautions::for_a_card(&worked.proposal.cautions);
    lines.extend(said.into_iter().map(|(severity, text)| match severity {
        Severity::Stop => (Weight::Stop, say!("card-stop", text)),
        Severity::NotFor | Severity::Warn => (Weight::Care, text),
        Severity::Note => (Weight::Note, text),
    }));
    lines.push((Weight::Note, say!("card-no-dose")));
    lines
}

/// The first ways to use it, as many as a card has room for, each with what to beware of.
pub(crate) fn ways(worked: &Worked) -> Vec<Message> {
    const MOST: usize = 4;
    let uses = match worked.proposal.keeping.outside_only {
        true => vec![Purpose::Outside],
        false => worked.preparation.uses.clone(),
    };
    let ways = serving::ways(&Served {
        preparation: worked.preparation,
        uses: &uses,
        strength_percent_vol: worked.proposal.liquid.strength_percent_vol.value,
    });
    ways.into_iter().take(MOST).map(Way::said).collect()
}
