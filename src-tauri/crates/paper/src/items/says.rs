//! What each item says, in runs of type.

use chrono::NaiveDate;
use message::{Argument, Message, Unit, say};

use crate::face::Face;
use crate::page::Ink;
use crate::record::{Kind, Label, Meaning, Origin, Plant, Strength, Use};
use crate::say::{held, runs, text};
use crate::wrap::Run;

type Lines = Vec<Vec<Run>>;

fn line(label: &Label, message: &Message) -> Vec<Run> {
    text(label.language, message)
}

fn lines(label: &Label, message: Option<Message>) -> Lines {
    message.iter().map(|it| line(label, it)).collect()
}

pub(super) fn plants(label: &Label) -> Lines {
    let said = |plant: &Plant| {
        let (herb, part, state) = (&plant.common, &plant.part, &plant.state);
        line(
            label,
            &match &plant.latin {
                Some(latin) => say!(
                    "label-plant-latin",
                    herb = herb.clone(),
                    latin = Argument::own(latin.as_str()),
                    state = state.clone(),
                    part = part.clone()
                ),
                None => say!(
                    "label-plant",
                    herb = herb.clone(),
                    state = state.clone(),
                    part = part.clone()
                ),
            },
        )
    };
    label.plants.iter().map(said).collect()
}

pub(super) fn liquid(label: &Label) -> Lines {
    let ratio = label.ratio.map(|ratio| {
        let ml = held(label.language, Argument::millilitres(ratio.ml_per_g));
        (ml, ratio.meaning)
    });
    let liquid = (!label.liquids.is_empty()).then(|| Argument::all_of(label.liquids.clone()));
    let poured = match (liquid, ratio) {
        (Some(liquid), Some((ml, Meaning::PouredOn))) => {
            Some(say!("label-liquid-poured-on", liquid, ml))
        }
        (Some(liquid), Some((ml, Meaning::MadeUpTo))) => {
            Some(say!("label-liquid-made-up", liquid, ml))
        }
        (Some(liquid), None) => Some(say!("label-liquid", liquid)),
        (None, Some((ml, Meaning::PouredOn))) => Some(say!("label-poured-on", ml)),
        (None, Some((ml, Meaning::MadeUpTo))) => Some(say!("label-made-up", ml)),
        (None, None) => None,
    };
    let mut said = lines(label, poured);
    if !label.strengths.is_empty() {
        let strengths = label.strengths.iter().map(|it| strength(label, *it));
        let strengths = Argument::all_of(strengths);
        // A jar's figure is what was poured, a bottle's is what came of it: the same number would mean two things.
        said.push(line(
            label,
            &match label.kind {
                Kind::Jar => say!("label-poured-at", strengths),
                Kind::Bottle | Kind::Gift => {
                    say!("label-in-the-bottle", strengths)
                }
            },
        ));
    }
    said
}

fn strength(label: &Label, strength: Strength) -> Argument {
    let held = |argument| held(label.language, argument);
    match strength {
        Strength::Alcohol(figure) => held(figure.said(Unit::PercentVol)),
        Strength::Glycerol(figure) => Argument::message(say!(
            "strength-glycerin",
            figure = held(figure.said(Unit::Percent))
        )),
        Strength::Acidity(figure) => Argument::message(say!(
            "strength-acid",
            figure = held(figure.said(Unit::GramPer100Ml))
        )),
        Strength::Sugar(figure) => Argument::message(say!(
            "strength-sugar",
            figure = held(figure.said(Unit::Percent))
        )),
    }
}

pub(super) fn begun(label: &Label) -> Lines {
    let day = |day| held(label.language, Argument::day(day));
    let mut said = lines(label, days(label, [label.made_on, None, None]));
    let due = match (label.due_from, label.due_to) {
        (Some(from), Some(to)) if from != to => {
            Some(say!("label-due-between", from = day(from), to = day(to)))
        }
        (Some(on), _) | (None, Some(on)) => Some(say!("label-due-on", day = day(on))),
        (None, None) => None,
    };
    said.extend(lines(label, due));
    said
}

pub(super) fn dates(label: &Label) -> Lines {
    let made = days(label, [label.made_on, label.strained_on, label.bottled_on]);
    let mut said = lines(label, made);
    let last = label.best_before.map(|on| {
        say!(
            "label-best-before",
            day = held(label.language, Argument::day(on))
        )
    });
    said.extend(lines(label, last));
    said
}

/// The days on which it was made, strained and bottled; a day of two deeds is said once.
fn days(label: &Label, on: [Option<NaiveDate>; 3]) -> Option<Message> {
    let mut order = String::new();
    let mut before = None;
    for (deed, on) in ["made", "strained", "bottled"].into_iter().zip(on) {
        let Some(on) = on else { continue };
        match before {
            Some(day) if day == on => order.push('_'),
            Some(_) => order.push('-'),
            None => {}
        }
        order.push_str(deed);
        before = Some(on);
    }
    // The text names only the days of its order.
    let day = |on: Option<NaiveDate>| {
        held(
            label.language,
            on.or(before).map_or(Argument::own(""), Argument::day),
        )
    };
    before.map(|_| {
        say!(
            "label-days",
            // No words, but what the text chooses by.
            order = Argument::figure(order),
            made = day(on[0]),
            strained = day(on[1]),
            bottled = day(on[2])
        )
    })
}

pub(super) fn origins(label: &Label) -> Lines {
    let said = label.origins.iter().map(|origin| match origin {
        Origin::Harvest(code) => {
            Argument::message(say!("origin-harvest", code = Argument::own(code.as_str())))
        }
        Origin::Bed(name) => Argument::own(name.trim()),
        Origin::Marc(code) => {
            Argument::message(say!("origin-marc", code = Argument::own(code.as_str())))
        }
    });
    let origins = Argument::all_of(said);
    let has = !label.origins.is_empty();
    lines(label, has.then(|| say!("label-origins", origins)))
}

pub(super) fn contents(label: &Label) -> Lines {
    let list = |all: &[Argument]| (!all.is_empty()).then(|| Argument::all_of(all.to_vec()));
    let said = [
        label.net_ml.map(|ml| {
            let ml = held(label.language, Argument::millilitres(ml));
            say!("label-contents", ml)
        }),
        list(&label.ingredients).map(|all| say!("label-ingredients", ingredients = all)),
        list(&label.allergens).map(|all| say!("label-allergens", allergens = all)),
    ];
    said.iter().flatten().map(|it| line(label, it)).collect()
}

pub(super) fn ethanol(label: &Label) -> Lines {
    let said = label.ethanol_in_bottle_g.map(|figure| {
        let mass = held(label.language, figure.said(Unit::Gram));
        say!("label-ethanol", mass)
    });
    lines(label, said)
}

pub(super) fn maker(label: &Label) -> Lines {
    let maker = filled(label.maker.as_deref());
    let said = maker.map(|maker| say!("label-maker", maker = Argument::own(maker)));
    lines(label, said)
}

/// The maker's own words as they stand.
pub(super) fn by_hand(label: &Label) -> Lines {
    label.by_hand.iter().map(|it| line(label, it)).collect()
}

/// In one breath, for what was made to be given is read at once.
pub(super) fn ways(label: &Label) -> Lines {
    if label.ways.is_empty() {
        return Vec::new();
    }
    let told = |way: &Message| label.language.tell(way);
    let ways: Vec<String> = label.ways.iter().map(told).collect();
    let ways = Argument::own(ways.join(" "));
    vec![line(label, &say!("label-ways", ways))]
}

pub(super) fn note(label: &Label) -> Lines {
    let note = filled(label.note.as_deref());
    note.map(|note| vec![Run::new(Face::Italic, Ink::Soft, note)])
        .into_iter()
        .collect()
}

pub(super) fn used(label: &Label) -> Lines {
    let (message, ink) = match label.use_for {
        Use::Inside => (say!("label-use-inside"), Ink::Plain),
        Use::Food => (say!("label-use-food"), Ink::Plain),
        Use::OutsideOnly => (say!("label-use-outside"), Ink::Warning),
    };
    vec![runs(label.language, &message, Face::Strong, ink)]
}

pub(super) fn keeping(label: &Label) -> Lines {
    lines(label, label.storage.clone())
}

/// Alcohol below this cannot be told from none with a kitchen's means (common practice, no source).
const NO_ALCOHOL_PERCENT_VOL: f64 = 0.5;

pub(super) fn alcohol(label: &Label) -> Lines {
    let holds = |it: &&Strength| matches!(it, Strength::Alcohol(figure) if figure.high >= NO_ALCOHOL_PERCENT_VOL);
    let said = label.strengths.iter().filter(holds).map(|it| {
        let message = say!("label-alcohol", strength = strength(label, *it));
        runs(label.language, &message, Face::Strong, Ink::Plain)
    });
    said.collect()
}

pub(super) fn cautions(label: &Label) -> Lines {
    label.cautions.iter().map(|it| line(label, it)).collect()
}

pub(super) fn poison(label: &Label) -> Lines {
    let number = filled(label.poison_line.as_deref());
    let said = number.map(|number| say!("label-poison-centre", number = Argument::own(number)));
    lines(label, said)
}

fn filled(own: Option<&str>) -> Option<&str> {
    own.map(str::trim).filter(|own| !own.is_empty())
}
