//! The amounts: every aim ends in volumes of the liquids at hand that fill the ratio.

use physics::{
    Strength,
    mixture::{self, Ingredient, Liquid, Pour, describe},
    quantity::{celsius, kg_per_m3_of, millilitres, millilitres_of},
    solve::{StockItem, Targets, reach},
};

use super::{
    Composition, PlantLine, PourLine, Refusal, Shortfall, Stock, assumed,
    controls::Wishes,
    liquids::{Chosen, chosen, kind_word, line, name, strength_of, usual},
};
use crate::{
    keep::Keeping,
    note::Note,
    preparations::{Aim, By, Measure, Part, Preparation, Verdict, sentence},
};

/// What a poured jar is, before it is judged.
#[derive(Debug, Clone)]
pub(super) struct Poured {
    pub(super) lines: Vec<PourLine>,
    pub(super) liquid: Liquid,
    pub(super) short_of: Vec<Shortfall>,
    pub(super) reasons: Vec<Note>,
}

struct Jar<'a> {
    preparation: &'a Preparation,
    composition: &'a Composition,
    plants: &'a [PlantLine],
    exact: Vec<mixture::Plant>,
}

/// Volumes paired with what is poured.
type Volumes = Vec<(Chosen, f64)>;

pub(super) fn pour(
    preparation: &Preparation,
    composition: &Composition,
    plants: &[PlantLine],
    wishes: &Wishes,
) -> Result<Poured, Refusal> {
    let exact = plants
        .iter()
        .map(|plant| plant.mixed(true))
        .collect::<Result<_, _>>()?;
    let jar = Jar {
        preparation,
        composition,
        plants,
        exact,
    };
    let size = jar.size(wishes)?;
    let mut short_of = Vec::new();
    let volumes = match preparation.aim {
        Aim::Strength | Aim::Strongest => jar.to_strength(size, wishes.strength, &mut short_of)?,
        Aim::Glycerin => jar.to_glycerin(size, wishes, &mut short_of)?,
        Aim::Parts => jar.in_parts(size)?,
    };
    jar.finish(volumes, short_of)
}

/// The strength that would still keep at the damp end, where the usual one just misses it.
pub(super) fn raised(
    preparation: &Preparation,
    composition: &Composition,
    wishes: &Wishes,
    poured: &Poured,
    keeping: &Keeping,
) -> Option<f64> {
    let usual = wishes.strength?;
    let gate = keeping.decided_by()?;
    let near = gate.margin < 0.0 && gate.margin > -3.0;
    let free = composition.strength_percent_vol.is_none() && poured.short_of.is_empty();
    (preparation.aim == Aim::Strength
        && keeping.verdict != Verdict::Keeps
        && near
        && free
        && gate.unit == "% vol")
        .then(|| super::controls::round_to(usual - gate.margin + 0.25, 0.5))
}

impl Jar<'_> {
    /// What is poured in all, mL, or for a liquid made up to volume what it comes to.
    fn size(&self, wishes: &Wishes) -> Result<f64, Refusal> {
        if self.plants.is_empty() {
            return self.composition.jar_ml.filter(|jar| jar.is_finite() && *jar >= 1.0).map(|jar| 0.9 * jar).ok_or_else(|| {
                Refusal::new("jar_ml", "Give the size of the jar, between 1 and 1 000 000 mL; without a herb nothing else says how much to mix.")
            });
        }
        Ok(wishes.ratio * self.plants.iter().map(|plant| plant.mass_g).sum::<f64>())
    }

    fn at_hand<'s>(&'s self, kind: &'s str) -> impl Iterator<Item = &'s Stock> {
        self.composition
            .stock
            .iter()
            .filter(move |stock| kind_word(&stock.ingredient) == kind)
    }

    fn part(&self, kind: &str) -> Option<&Part> {
        self.preparation.parts.iter().find(|part| part.kind == kind)
    }

    fn choose(&self, part: &Part) -> Result<Chosen, Refusal> {
        match self.at_hand(&part.kind).next() {
            Some(stock) => Ok(chosen(stock)),
            None => usual(part),
        }
    }

    fn describe(&self, volumes: &[(Chosen, f64)]) -> Result<Liquid, Refusal> {
        described(volumes, &self.exact, 20.0)
    }

    fn strength(&self, volumes: &[(Chosen, f64)]) -> f64 {
        self.describe(volumes)
            .map_or(0.0, |liquid| liquid.strength_percent_vol.value)
    }

    /// Spirits at hand, the weakest first; the usual one where there is none.
    fn spirits(&self) -> Result<Vec<Chosen>, Refusal> {
        let mut spirits: Vec<Chosen> = self.at_hand("spirit").map(chosen).collect();
        if spirits.is_empty() {
            let strength = self
                .part("spirit")
                .and_then(|part| part.strength_percent_vol);
            spirits.push(usual(&Part {
                strength_percent_vol: strength,
                ..Part::of("spirit")
            })?);
        }
        spirits.sort_by(|a, b| strength_of(&a.ingredient).total_cmp(&strength_of(&b.ingredient)));
        Ok(spirits)
    }

    fn water(&self) -> Chosen {
        self.at_hand("water").next().map_or_else(
            || Chosen {
                ingredient: Ingredient::water(),
                available_ml: None,
                exactly_ml: None,
                supply: None,
                assumed: false,
            },
            chosen,
        )
    }

    /// Spirit and water that end at a strength; of several spirits the weakest that reaches it and of which there is enough.
    fn to_strength(
        &self,
        size: f64,
        wanted: Option<f64>,
        short_of: &mut Vec<Shortfall>,
    ) -> Result<Volumes, Refusal> {
        let spirits = self.spirits()?;
        if let Some(volumes) = self.with_what_there_is(size, wanted, &spirits)? {
            return Ok(volumes);
        }
        let split = |spirit: &Chosen, poured: f64, share: f64| -> Volumes {
            vec![
                (spirit.clone(), share * poured),
                (self.water(), (1.0 - share) * poured),
            ]
        };
        // Made up to volume: the poured sum that comes to the size once the plant's water is in.
        let filled = |spirit: &Chosen, share: f64| -> Volumes {
            if self.preparation.measure == Measure::PouredOn {
                return split(spirit, size, share);
            }
            let comes_to = |poured: f64| {
                self.describe(&split(spirit, poured, share))
                    .map_or(0.0, |liquid| liquid.volume_ml.value)
            };
            split(
                spirit,
                rising_root(0.0, 1.2 * size, |poured| comes_to(poured) - size),
                share,
            )
        };
        let strongest = spirits.last().cloned().unwrap_or(self.water());
        let Some(wanted) = wanted else {
            return Ok(filled(&strongest, 1.0));
        };
        for spirit in &spirits {
            let reach = |share: f64| self.strength(&filled(spirit, share)) - wanted;
            if reach(1.0) < -REACHED {
                continue;
            }
            let share = rising_root(0.0, 1.0, reach);
            let volumes = filled(spirit, share);
            if spirit
                .available_ml
                .is_none_or(|available| volumes[0].1 <= available)
            {
                return Ok(volumes);
            }
        }
        let volumes = filled(&strongest, 1.0);
        let got = self.strength(&volumes);
        if got < wanted - REACHED {
            short_of.push(Shortfall {
                target: "strength_percent_vol".to_owned(),
                wanted,
                got,
            });
            return Ok(volumes);
        }
        // Only the amount on the shelf stands in the way; that is said when the pours are checked.
        let share = rising_root(0.0, 1.0, |share| {
            self.strength(&filled(&strongest, share)) - wanted
        });
        Ok(filled(&strongest, share))
    }

    /// The amounts where the shelf sets limits: several spirits, little of one, or a fixed amount. None
    /// where it sets none, or where they cannot be met.
    fn with_what_there_is(
        &self,
        size: f64,
        wanted: Option<f64>,
        spirits: &[Chosen],
    ) -> Result<Option<Volumes>, Refusal> {
        let limited = self
            .at_hand("spirit")
            .chain(self.at_hand("water"))
            .any(|stock| stock.exactly_ml.is_some() || stock.available_ml.is_some());
        let Some(wanted) = wanted.filter(|_| limited || spirits.len() > 1) else {
            return Ok(None);
        };
        let refused =
            |error: &dyn std::fmt::Display| Refusal::new("stock", sentence(&error.to_string()));
        let mut chosen: Vec<Chosen> = spirits.to_vec();
        chosen.push(self.water());
        let items = chosen
            .iter()
            .map(|chosen| {
                let mut item = StockItem::new(chosen.ingredient);
                if let Some(ml) = chosen.available_ml {
                    item = item.at_most(millilitres(ml))?;
                }
                if let Some(ml) = chosen.exactly_ml {
                    item = item.exactly(millilitres(ml))?;
                }
                Ok(item)
            })
            .collect::<Result<Vec<_>, physics::OutOfRange>>()
            .map_err(|error| refused(&error))?;
        let size = Some(millilitres(size));
        let made_up = self.preparation.measure == Measure::MadeUpTo;
        let targets = Targets {
            strength: Some(Strength::from_percent(wanted).map_err(|error| refused(&error))?),
            volume: size.filter(|_| made_up),
            poured: size.filter(|_| !made_up),
            ..Targets::default()
        };
        let reached = reach(&items, &self.exact, &targets).map_err(|error| refused(&error))?;
        Ok(reached.reached.then(|| {
            let amounts = reached.amounts.iter();
            amounts
                .map(|amount| (chosen[amount.index].clone(), millilitres_of(amount.volume)))
                .collect()
        }))
    }

    /// Glycerin by its share of what is poured, spirit for keeping, water for the rest.
    fn to_glycerin(
        &self,
        size: f64,
        wishes: &Wishes,
        short_of: &mut Vec<Shortfall>,
    ) -> Result<Volumes, Refusal> {
        let share = wishes.glycerin.unwrap_or(100.0) / 100.0;
        let glycerin = self.choose(self.part("glycerin").unwrap_or(&Part::of("glycerin")))?;
        let with = |spirit: Option<&Chosen>, spirit_ml: f64| -> Volumes {
            let glycerin_ml = (share * size).min(size - spirit_ml);
            let mut volumes = vec![(glycerin.clone(), glycerin_ml)];
            volumes.push((self.water(), (size - spirit_ml - glycerin_ml).max(0.0)));
            volumes.extend(spirit.map(|spirit| (spirit.clone(), spirit_ml)));
            volumes
        };
        if wishes.fortify <= 0.0 {
            return Ok(with(None, 0.0));
        }
        let spirits = self.spirits()?;
        let spirit = spirits.last().cloned().unwrap_or(self.water());
        let over = |ml: f64| self.strength(&with(Some(&spirit), ml)) - wishes.fortify;
        if over(size) < -REACHED {
            let volumes = with(Some(&spirit), size);
            let got = self.strength(&volumes);
            short_of.push(Shortfall {
                target: "fortify_percent_vol".to_owned(),
                wanted: wishes.fortify,
                got,
            });
            return Ok(volumes);
        }
        let spirit_ml = rising_root(0.0, size, over);
        let volumes = with(Some(&spirit), spirit_ml);
        let got = 100.0 * volumes[0].1 / size;
        if got < 100.0 * share - 0.5 {
            let wanted = 100.0 * share;
            short_of.push(Shortfall {
                target: "glycerin_percent_vol".to_owned(),
                wanted,
                got,
            });
        }
        Ok(volumes)
    }

    /// The parts as they stand, by volume or weight.
    fn in_parts(&self, size: f64) -> Result<Volumes, Refusal> {
        let mut parts = Vec::new();
        for part in &self.preparation.parts {
            if part.if_at_hand && self.at_hand(&part.kind).next().is_none() {
                continue;
            }
            let chosen = self.choose(part)?;
            let share = part.share.unwrap_or(0.0);
            let grams_per_ml = kg_per_m3_of(chosen.ingredient.density()) / 1000.0;
            parts.push((
                chosen,
                if part.by == By::Mass {
                    share / grams_per_ml
                } else {
                    share
                },
            ));
        }
        let total: f64 = parts.iter().map(|(_, share)| share).sum();
        Ok(parts
            .into_iter()
            .map(|(chosen, share)| (chosen, size * share / total))
            .collect())
    }

    fn finish(&self, volumes: Volumes, mut short_of: Vec<Shortfall>) -> Result<Poured, Refusal> {
        let mut reasons = Vec::new();
        let mut volumes: Volumes = volumes
            .into_iter()
            .filter(|(_, ml)| *ml > LEAST_ML)
            .collect();
        for stock in &self.composition.stock {
            let same = |chosen: &Chosen| {
                chosen.ingredient == stock.ingredient && chosen.supply == stock.supply
            };
            if let Some(exactly) = stock.exactly_ml
                && let Some((_, ml)) = volumes.iter_mut().find(|(chosen, _)| same(chosen))
            {
                *ml = exactly;
            }
        }
        for (chosen, ml) in &volumes {
            if chosen.assumed {
                reasons.push(assumed(&name(&chosen.ingredient)));
            }
            if let Some(available) = chosen
                .available_ml
                .filter(|available| ml - available > 1e-9)
            {
                let target = format!("{} on the shelf, mL", kind_word(&chosen.ingredient));
                short_of.push(Shortfall {
                    target,
                    wanted: *ml,
                    got: available,
                });
            }
        }
        let plants = self
            .plants
            .iter()
            .map(|plant| plant.mixed(false))
            .collect::<Result<Vec<_>, _>>()?;
        let liquid = described(&volumes, &plants, self.composition.temperature_c)?;
        let lines = volumes
            .into_iter()
            .map(|(chosen, ml)| line(chosen, ml))
            .collect::<Result<_, _>>()?;
        Ok(Poured {
            lines,
            liquid,
            short_of,
            reasons,
        })
    }
}

impl Poured {
    /// The strength that the strongest spirit at hand reaches undiluted.
    pub(super) fn strongest(
        &self,
        preparation: &Preparation,
        composition: &Composition,
        plants: &[PlantLine],
        wishes: &Wishes,
    ) -> Result<f64, Refusal> {
        let exact = plants
            .iter()
            .map(|plant| plant.mixed(true))
            .collect::<Result<_, _>>()?;
        let jar = Jar {
            preparation,
            composition,
            plants,
            exact,
        };
        let size = jar.size(wishes)?;
        Ok(jar.strength(&jar.to_strength(size, None, &mut Vec::new())?))
    }
}

/// Below this a target counts as met, in its own unit.
const REACHED: f64 = 0.05;

/// Less than a drop is not poured.
const LEAST_ML: f64 = 0.05;

fn described(
    volumes: &[(Chosen, f64)],
    plants: &[mixture::Plant],
    celsius_: f64,
) -> Result<Liquid, Refusal> {
    let pours = volumes
        .iter()
        .map(|(chosen, ml)| Pour::measured(chosen.ingredient, millilitres(*ml)))
        .collect::<Result<Vec<_>, _>>()
        .map_err(|error| Refusal::new("stock", sentence(&error.to_string())))?;
    describe(&pours, plants, celsius(celsius_)).map_err(|error| {
        let field = match error {
            mixture::Unmixable::TooColdOrHot { .. } => "temperature_c",
            _ => "stock",
        };
        Refusal::new(field, sentence(&error.to_string()))
    })
}

/// Where a rising function crosses nothing between two ends, by halving and the secant in turns.
fn rising_root(mut low: f64, mut high: f64, f: impl Fn(f64) -> f64) -> f64 {
    let (mut at_low, mut at_high) = (f(low), f(high));
    if at_low >= 0.0 {
        return low;
    }
    if at_high <= 0.0 {
        return high;
    }
    for turn in 0..60 {
        let secant = low - at_low * (high - low) / (at_high - at_low);
        let middle = if turn % 3 == 2 || !secant.is_finite() {
            0.5 * (low + high)
        } else {
            secant
        };
        let value = f(middle);
        if value.abs() < 1e-9 || high - low < 1e-12 * high {
            return middle;
        }
        if value < 0.0 {
            (low, at_low) = (middle, value);
        } else {
            (high, at_high) = (middle, value);
        }
    }
    0.5 * (low + high)
}
