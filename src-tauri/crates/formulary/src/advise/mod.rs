//! What a herb can become, ranked, each with its reasons for and against.
//!
//! Hard exclusions first; then how the liquid at the end keeps and how well it takes up what
//! the herb holds. Nothing here says what a preparation is good for.

mod fit;
mod weights;

use message::{Argument, Message, Refusal, say};
pub use physics::mixture::Without;
use physics::{
    Interval,
    mixture::{IngredientKind, Kind, Liquid},
};
use serde::Serialize;

use crate::{
    compose::{self, Composition, Draft, Plant, PlantLine, Portion, PourLine, Stock},
    constituents::{self, Grade},
    herbs,
    keep::{self, Keeping},
    note::{Note, Reason, Speaks, Status},
    poison::{self, Stop, Use},
    preparations::{self, Days, Part, PlantState, Preparation, Purpose, Solvent, Verdict},
};

/// What is asked.
#[derive(Debug, Clone, PartialEq)]
pub struct Request {
    /// The herb at hand.
    pub plant: Plant,
    /// Other herbs that go into the same jar.
    pub also: Vec<Plant>,
    /// What it is for.
    pub purpose: Purpose,
    /// What must not be in it.
    pub without: Vec<Without>,
    /// Size of the jar, mL.
    pub jar_ml: Option<f64>,
    /// The liquids at hand; none given means that anything may be bought.
    pub stock: Option<Vec<Stock>>,
}

/// One thing the herb can become.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Candidate {
    /// Key of the preparation.
    pub preparation: String,
    /// Its name.
    pub name: Message,
    /// Whether it keeps.
    pub verdict: Verdict,
    /// The keeping verdict with its gates.
    pub keeping: Keeping,
    /// For and against, the weightiest first.
    pub reasons: Vec<Reason>,
    /// What to pour; nothing where it must not be made.
    pub pours: Vec<PourLine>,
    /// The liquid at the end.
    pub liquid: Liquid,
    /// Days from pouring to straining.
    pub steep_days: Days,
    /// Days it keeps once strained; none where no figure was found.
    pub best_before_days: Option<Interval>,
}

/// Ranks what a herb can become, best first; what must not be made comes last, with the reason.
///
/// # Errors
/// [`Refusal`] for a herb of impossible weight or moisture, or a jar smaller than the herb.
pub fn advise(request: &Request) -> Result<Vec<Candidate>, Refusal> {
    advise_from(preparations::all(), request)
}

/// As [`advise`], from preparations that need not be in the table.
///
/// # Errors
/// As [`advise`].
pub fn advise_from(
    preparations: &[Preparation],
    request: &Request,
) -> Result<Vec<Candidate>, Refusal> {
    let mut ranked = Vec::new();
    for preparation in preparations {
        let mut plants = std::iter::once(&request.plant).chain(&request.also);
        let suits = preparation.advised && plants.all(|plant| preparation.takes(plant.state));
        if !suits || shunned(preparation, request) {
            continue;
        }
        let also = request.also.iter().cloned();
        let composition = Composition {
            plants: std::iter::once(request.plant.clone()).chain(also).collect(),
            stock: request.stock.clone().unwrap_or_default(),
            jar_ml: request.jar_ml,
            ..Composition::of(&preparation.key, request.plant.clone())
        };
        let draft = compose::draft(preparation, &composition)?;
        let without = |what| request.without.contains(&what);
        if without(Without::Alcohol) && draft.liquid.strength_percent_vol.high > 0.5 {
            continue;
        }
        if (without(Without::Sugar) || without(Without::Sweet))
            && draft.pours.iter().any(is_sweet_wine)
        {
            continue;
        }
        ranked.push(candidate(preparation, request, draft)?);
    }
    ranked.sort_by(|(a, _), (b, _)| b.total_cmp(a));
    Ok(ranked.into_iter().map(|(_, candidate)| candidate).collect())
}

/// What the list of poisonous plants asks about the herbs, where a deliberate yes would let all of them pass.
pub fn asks(request: &Request) -> Option<Note> {
    let use_ = match request.purpose {
        Purpose::Outside => Use::Outside,
        Purpose::Inside | Purpose::Food => Use::Inside,
    };
    let stops: Vec<Stop> = std::iter::once(&request.plant)
        .chain(&request.also)
        .filter_map(|plant| {
            let called = poison::called(&plant.herb, plant.identity.latin.as_deref())?;
            called.stop(&plant.part, use_, plant.identity.is_confirmed)
        })
        .collect();
    let all_ask = stops.iter().all(|stop| stop.asks);
    stops
        .into_iter()
        .next()
        .map(|stop| stop.note)
        .filter(|_| all_ask)
}

/// A dry wine holds up to 4 g of sugar per litre, a sourer one up to 9.
///
/// *Source*: Regulation (EU) 2019/33, annex III (from memory).
fn is_sweet_wine(pour: &Portion) -> bool {
    const DRY_TO_G_PER_L: f64 = 9.0;
    matches!(pour.ingredient.kind(), Kind::Wine { sugar_g_per_l, .. } if sugar_g_per_l > DRY_TO_G_PER_L)
}

/// Whether these herbs are those of the spiced vinegar: three of them or more, and nothing else.
fn is_spiced(plants: &[PlantLine]) -> bool {
    const SPICES: [&str; 8] = [
        "garlic",
        "ginger",
        "horseradish",
        "onion",
        "cayenne",
        "chilli",
        "jalapeno",
        "serrano",
    ];
    plants.len() >= 3
        && plants
            .iter()
            .all(|plant| SPICES.contains(&plant.herb.as_str()))
}

/// Whether a wish of the maker rules it out; it is then not named at all.
fn shunned(preparation: &Preparation, request: &Request) -> bool {
    let held = |part: &Part| request.without.iter().any(|what| part.kind.holds(*what));
    let mut parts = preparation.parts.iter();
    parts.any(|part| !part.if_at_hand && held(part))
}

fn candidate(
    preparation: &Preparation,
    request: &Request,
    mut draft: Draft,
) -> Result<(f64, Candidate), Refusal> {
    let mut reasons = Vec::new();
    let plants = draft.plants.clone();
    let excluded = excluded(preparation, request, &draft);
    if let Some(reason) = excluded {
        draft.keeping = draft.keeping.refused(reason.text.clone());
        reasons.push(reason);
    }
    let verdict = draft.keeping.verdict;
    let mut score = weights::keeping(verdict);
    if reasons.is_empty() {
        reasons.push(keeping_reason(&draft.keeping));
    }
    let remarks = keep::remarks(preparation, &draft.liquid, verdict);
    reasons.extend(
        remarks
            .into_iter()
            .map(|note| Reason::new(Speaks::Against, note.text, "", note.status)),
    );
    for plant in &plants {
        let (fit, why) = fit::fit(preparation, plant, &draft);
        score += weights::FIT * fit / plants.len() as f64;
        reasons.extend(why);
    }
    if !preparation.uses.contains(&request.purpose) {
        score += weights::OTHER_USE;
        let text = match request.purpose {
            Purpose::Inside => say!("not-usual-inside"),
            Purpose::Outside => say!("not-usual-outside"),
            Purpose::Food => say!("not-usual-as-food"),
        };
        reasons.push(Reason::new(Speaks::Against, text, "", Status::Practice));
    } else if request.purpose == Purpose::Food && preparation.uses.contains(&Purpose::Food) {
        score += weights::FOOD;
    }
    for class in preparation
        .avoid
        .iter()
        .filter(|class| plants.iter().any(|plant| leads(plant, class)))
    {
        score += weights::AVOIDED;
        let class = constituents::class(class).map_or_else(|| Message::own(class), |it| it.name());
        let text = say!("not-for-class", class);
        reasons.push(Reason::new(
            Speaks::Against,
            text,
            &preparation.method_source,
            preparation.method_status,
        ));
    }
    if !preparation.wants.is_empty() {
        let wanted = preparation
            .wants
            .iter()
            .find(|class| plants.iter().any(|plant| leads(plant, class)));
        // As a medicine the plain tincture of the same strength comes first.
        score += match (wanted, request.purpose) {
            (Some(_), Purpose::Food) => 0.0,
            (Some(_), _) => weights::PLAIN_FIRST,
            (None, _) => weights::NOT_OF_ITS_HERBS,
        };
        if wanted.is_none() {
            let text = say!("wants-bitter-herbs");
            reasons.push(Reason::new(Speaks::Against, text, "", Status::Memory));
        }
    }
    if preparation.family == "spiced-vinegar"
        && is_spiced(&plants)
        && request.purpose != Purpose::Outside
    {
        score += weights::SPICED;
        let text = say!("spiced-together");
        reasons.push(Reason::new(Speaks::For, text, "", Status::Practice));
    }
    for missed in &draft.short_of {
        score += weights::SHORT;
        reasons.push(Reason::new(
            Speaks::Against,
            missed.text(),
            "",
            Status::Computed,
        ));
    }
    if let Some(stock) = &request.stock {
        for pour in &draft.pours {
            let at_hand = |one: &Stock| pour.kind == one.ingredient.kind().into();
            if pour.kind != IngredientKind::Water && !stock.iter().any(at_hand) {
                score += weights::NOT_AT_HAND;
                let text = say!(
                    "none-at-hand",
                    kind = pour.kind.name(),
                    liquid = pour.name.clone()
                );
                reasons.push(Reason::new(Speaks::Against, text, "", Status::Computed));
            }
        }
    }
    if let Some(jar) = request.jar_ml {
        let room = compose::room(&draft, Some(jar))?;
        if room.fits == Some(false) {
            score += weights::JAR_TOO_SMALL;
            let herb = Argument::grams(room.largest_mass_g.unwrap_or(0.0));
            let text = say!("jar-too-small-for-all", herb);
            reasons.push(Reason::new(Speaks::Against, text, "", Status::Computed));
        }
    }
    if preparation.method_status > Status::PartlyConfirmed {
        score += weights::UNCONFIRMED;
    }
    let unknown = |plant: &&PlantLine| plant.known.is_none_or(|herb| !herb.is_described());
    for plant in plants.iter().filter(unknown) {
        let text = say!("caution-not-looked-up", herb = plant.name());
        reasons.push(Reason::new(Speaks::Against, text, "", Status::Memory));
    }
    let (best_before_days, _) = keep::best_before_days(preparation, verdict);
    let candidate = Candidate {
        preparation: preparation.key.clone(),
        name: say!("title", name = preparation.name()),
        verdict,
        keeping: draft.keeping,
        reasons,
        pours: if verdict == Verdict::DoNotMake {
            Vec::new()
        } else {
            draft.pours.into_iter().map(|pour| pour.line).collect()
        },
        liquid: draft.liquid,
        steep_days: preparation.steep_days.into(),
        best_before_days,
    };
    Ok((score, candidate))
}

/// The hard exclusions that the composer leaves to the adviser, since they hang on use and herb.
fn excluded(preparation: &Preparation, request: &Request, draft: &Draft) -> Option<Reason> {
    if let Some(weak) = draft.weak_vinegar() {
        return Some(Reason::new(
            Speaks::Against,
            weak.message,
            "UC ANR, 27 Nov 2024: 5 % acetic acid or more",
            Status::Confirmed,
        ));
    }
    let mut plants = draft.plants.iter();
    plants.find_map(|plant| excluded_by(preparation, request, plant, draft))
}

/// What one herb of the jar forbids.
fn excluded_by(
    preparation: &Preparation,
    request: &Request,
    plant: &PlantLine,
    draft: &Draft,
) -> Option<Reason> {
    let against = |text: Message, source: &str, status| {
        Some(Reason::new(Speaks::Against, text, source, status))
    };
    let is_for_skin =
        request.purpose == Purpose::Outside && preparation.uses.contains(&Purpose::Outside);
    let use_ = match is_for_skin {
        true => Use::Outside,
        false => Use::Inside,
    };
    if let Some(Stop { note, .. }) = plant.stop(use_) {
        return against(
            note.text,
            note.source.as_deref().unwrap_or_default(),
            note.status,
        );
    }
    let herb = plant.known?;
    match herb.limit_of(&plant.part) {
        Some((herbs::Limit::Cook, _)) if plant.state == PlantState::Cooked => {}
        Some((herbs::Limit::Outside, _))
            if request.purpose == Purpose::Outside
                && preparation.uses.contains(&Purpose::Outside) => {}
        Some((_, note)) => {
            let source = note.source.as_deref().unwrap_or_default();
            return against(note.text.clone(), source, note.status);
        }
        None => {}
    }
    let taken_up = herb.grade_in(preparation.grade);
    // What takes up nothing of a herb is only a bottle to be mistaken; of what was cooked all is there already.
    let takes_up = preparation.grade != Solvent::Ethanol && plant.state != PlantState::Cooked;
    if takes_up {
        if taken_up == Some(Grade::No) {
            let text = say!(
                "takes-up-none",
                liquid = fit::liquid(preparation.grade),
                herb = plant.name()
            );
            return against(text, "", Status::Memory);
        }
        let resinous = matches!(
            herb.class_keys().first(),
            Some(&"resins" | &"volatile-oils")
        );
        if preparation.grade == Solvent::Glycerite && resinous && taken_up == Some(Grade::Poor) {
            let text = say!("resin-not-in-glycerin");
            return against(text, "", Status::Practice);
        }
    }
    if let Some(text) = compose::forbidden(preparation, &draft.plants) {
        return against(text, &preparation.method_source, preparation.method_status);
    }
    None
}

fn keeping_reason(keeping: &Keeping) -> Reason {
    let speaks = if keeping.verdict <= Verdict::KeepsCold {
        Speaks::For
    } else {
        Speaks::Against
    };
    let gate = keeping.decided_by();
    let source = gate
        .and_then(|gate| gate.source.clone())
        .unwrap_or_default();
    let status = gate.map_or(Status::Practice, |gate| gate.status);
    Reason::new(speaks, keeping.text.clone(), &source, status)
}

fn leads(plant: &PlantLine, class: &str) -> bool {
    plant
        .known
        .is_some_and(|herb| herb.class_keys().iter().take(2).any(|key| *key == class))
}

#[cfg(test)]
mod tests;
