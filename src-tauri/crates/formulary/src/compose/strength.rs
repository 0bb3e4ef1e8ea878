//! Spirit and water that end at a strength.

use physics::{
    Strength,
    mixture::IngredientKind,
    quantity::millilitres,
    solve::{Target, Targets},
};

use message::Refusal;

use super::{
    Missed, Shortfall,
    liquids::{Chosen, chosen, strength_of, usual},
    pours::{Jar, REACHED, Volumes, rising_root},
};
use crate::preparations::{Measure, Part};

impl Jar<'_> {
    /// Spirits at hand, the weakest first; the usual one where there is none.
    pub(super) fn spirits(&self) -> Result<Vec<Chosen>, Refusal> {
        let mut spirits: Vec<Chosen> = self.at_hand(IngredientKind::Spirit).map(chosen).collect();
        if spirits.is_empty() {
            let strength = self
                .part(IngredientKind::Spirit)
                .and_then(|part| part.strength_percent_vol);
            spirits.push(usual(&Part {
                strength_percent_vol: strength,
                ..Part::of(IngredientKind::Spirit)
            })?);
        }
        spirits.sort_by(|a, b| strength_of(&a.ingredient).total_cmp(&strength_of(&b.ingredient)));
        Ok(spirits)
    }

    /// Spirit and water that end at a strength; of several spirits the weakest that reaches it and of which there is enough.
    pub(super) fn to_strength(
        &self,
        size: f64,
        wanted: Option<f64>,
        short_of: &mut Vec<Shortfall>,
    ) -> Result<Volumes, Refusal> {
        let spirits = self.spirits()?;
        if let Some(volumes) = self.with_what_there_is(size, wanted, &spirits, short_of)? {
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
                target: Missed::Mixture(Target::Strength),
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

    /// The amounts where the shelf sets limits. None where it sets none, or where they cannot be met.
    pub(super) fn with_what_there_is(
        &self,
        size: f64,
        wanted: Option<f64>,
        spirits: &[Chosen],
        short_of: &mut Vec<Shortfall>,
    ) -> Result<Option<Volumes>, Refusal> {
        let limited = self
            .at_hand(IngredientKind::Spirit)
            .chain(self.at_hand(IngredientKind::Water))
            .any(|stock| stock.available_ml.is_some());
        if !limited && !self.is_fixed() && spirits.len() == 1 {
            return Ok(None);
        }
        let Some(wanted) = wanted else {
            return Ok(self.strongest_first(spirits, size, short_of));
        };
        let strength = Strength::from_percent(wanted)
            .map_err(|error| Refusal::new("stock", error.message()))?;
        let made_up = self.preparation.measure == Measure::MadeUpTo;
        let size = Some(millilitres(size));
        let targets = Targets {
            strength: Some(strength),
            volume: size.filter(|_| made_up),
            poured: size.filter(|_| !made_up),
            ..Targets::default()
        };
        let recipe: Vec<Chosen> = spirits.iter().cloned().chain([self.water()]).collect();
        self.taken(
            &self.offered(&[IngredientKind::Spirit, IngredientKind::Water], &recipe),
            &targets,
            short_of,
        )
    }

    /// The strongest liquid of a size: what must be used, then every spirit down to its last drop, the
    /// strongest first. None where the shelf does not fill it, unless a fixed amount leaves no other way.
    pub(super) fn strongest_first(
        &self,
        spirits: &[Chosen],
        size: f64,
        short_of: &mut Vec<Shortfall>,
    ) -> Option<Volumes> {
        let fixed = self.composition.stock.iter().filter_map(|stock| {
            let ml = stock.exactly_ml?;
            Some((chosen(stock), ml))
        });
        let mut volumes: Volumes = fixed.collect();
        let mut room = size - volumes.iter().map(|(_, ml)| ml).sum::<f64>();
        for spirit in spirits.iter().rev().filter(|one| one.exactly_ml.is_none()) {
            let ml = spirit.available_ml.map_or(room, |there| there.min(room));
            if ml > 0.0 {
                volumes.push((spirit.clone(), ml));
                room -= ml;
            }
        }
        if room.abs() > 1e-9 * size {
            if !self.is_fixed() {
                return None;
            }
            short_of.push(Shortfall {
                target: Missed::Mixture(Target::Poured),
                wanted: size,
                got: size - room,
            });
        }
        Some(volumes)
    }
}
