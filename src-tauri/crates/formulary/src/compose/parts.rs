//! Liquids by their share: of glycerin, or of every part of a recipe.

use physics::{mixture::IngredientKind, quantity::kg_per_m3_of};

use message::{Argument, Refusal, say};

use super::{
    Missed, Shortfall,
    controls::Wishes,
    liquids::{Chosen, strength_of, usual},
    pours::{Jar, REACHED, Volumes, rising_root},
    shelf,
};
use crate::{
    note::Note,
    preparations::{By, Part},
};

impl Jar<'_> {
    /// Glycerin by its share of what is poured, spirit for keeping, water for the rest.
    pub(super) fn to_glycerin(
        &self,
        size: f64,
        wishes: &Wishes,
        short_of: &mut Vec<Shortfall>,
    ) -> Result<Volumes, Refusal> {
        let share = wishes.glycerin.unwrap_or(100.0) / 100.0;
        let kind = IngredientKind::Glycerin;
        let glycerin = self.choose(self.part(kind).unwrap_or(&Part::of(kind)))?;
        let with = |spirit: Option<&Chosen>, spirit_ml: f64| -> Volumes {
            let glycerin_ml = (share * size).min(size - spirit_ml);
            let mut volumes = vec![(glycerin.clone(), glycerin_ml)];
            volumes.push((self.water(), (size - spirit_ml - glycerin_ml).max(0.0)));
            volumes.extend(spirit.map(|spirit| (spirit.clone(), spirit_ml)));
            volumes
        };
        if wishes.fortify <= 0.0 {
            return self.carried(with(None, 0.0), short_of);
        }
        let spirits = self.spirits()?;
        let spirit = spirits.last().cloned().unwrap_or(self.water());
        let over = |ml: f64| self.strength(&with(Some(&spirit), ml)) - wishes.fortify;
        if over(size) < -REACHED {
            let volumes = with(Some(&spirit), size);
            let got = self.strength(&volumes);
            short_of.push(Shortfall {
                target: Missed::Fortified,
                wanted: wishes.fortify,
                got,
            });
            return self.carried(volumes, short_of);
        }
        let spirit_ml = rising_root(0.0, size, over);
        let volumes = with(Some(&spirit), spirit_ml);
        let got = 100.0 * volumes[0].1 / size;
        if got < 100.0 * share - 0.5 {
            let wanted = 100.0 * share;
            short_of.push(Shortfall {
                target: Missed::GlycerinPoured,
                wanted,
                got,
            });
        }
        self.carried(volumes, short_of)
    }

    /// The parts as they stand, by volume or weight.
    pub(super) fn in_parts(
        &self,
        size: f64,
        short_of: &mut Vec<Shortfall>,
        reasons: &mut Vec<Note>,
    ) -> Result<Volumes, Refusal> {
        if let Some((volumes, weaker)) = self.let_down(size)? {
            let text = say!("spirit-let-down", strength = Argument::strength(weaker));
            reasons.push(Note::computed("let-down", text));
            return Ok(volumes);
        }
        let volumes = self.parts_of(size, |part| self.choose(part))?;
        self.carried(volumes, short_of)
    }

    /// The recipe with its own weaker spirit made from a stronger one and water, and that strength; none
    /// where the spirit at hand is near enough, or does not suffice.
    pub(super) fn let_down(&self, size: f64) -> Result<Option<(Volumes, f64)>, Refusal> {
        let Some(part) = self.part(IngredientKind::Spirit) else {
            return Ok(None);
        };
        let own = usual(part)?;
        let weaker = strength_of(&own.ingredient);
        let at_hand = self.choose(part)?;
        if strength_of(&at_hand.ingredient) < weaker + NEAR_ENOUGH {
            return Ok(None);
        }
        let recipe = self.parts_of(size, |one| {
            if one.kind == IngredientKind::Spirit {
                Ok(own.clone())
            } else {
                self.choose(one)
            }
        })?;
        let instead: Vec<Chosen> = recipe
            .iter()
            .map(|(chosen, _)| chosen.clone())
            .chain([self.water()])
            .collect();
        let kinds: Vec<IngredientKind> = instead.iter().map(Chosen::kind).collect();
        let targets = shelf::like(&self.describe(&recipe)?, size)?;
        let given = shelf::take(&self.offered(&kinds, &instead), &self.exact, &targets)?;
        let reached = given.short_of.is_empty();
        Ok(reached.then_some((given.volumes, weaker)))
    }

    pub(super) fn parts_of(
        &self,
        size: f64,
        choose: impl Fn(&Part) -> Result<Chosen, Refusal>,
    ) -> Result<Volumes, Refusal> {
        let mut parts = Vec::new();
        for part in &self.preparation.parts {
            if part.if_at_hand && self.at_hand(part.kind).next().is_none() {
                continue;
            }
            let chosen = choose(part)?;
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
}

/// A spirit this much stronger than the recipe's is let down, % vol.
const NEAR_ENOUGH: f64 = 5.0;
