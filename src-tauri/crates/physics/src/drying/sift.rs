//! Which weigh-ins count: what is impossible, or fits neither what came before nor what came after, is set
//! aside; what was weighed within two hours counts once.
//!
//! A lot dries slower and slower and gains little, so a weigh-in is believed when it is no more than a
//! twentieth heavier than the last one and has not lost three times faster than the lot lately did. One that
//! is not believed waits: the next one confirms it (the lot was moved to the oven, or got damp) or the next
//! one speaks for the old course, and it was a mistake. The last weigh-in has none after it, so it waits
//! until then, unless the maker says that the scale really showed it. All figures are engineering defaults.

use core::ops::RangeInclusive;

use super::lot::{Lot, Weighing};

/// Weigh-ins within this many hours that agree tell one thing, not many.
const ONE_LOOK_HOURS: f64 = 2.0;
/// How far weigh-ins of one look may differ, as a share of the weight.
const ONE_LOOK_RANGE: f64 = 0.02;
/// Damp nights make a lot heavier by less than this share.
const RISE: f64 = 0.05;
/// After an oven a lot takes up more than that from the air of the room.
const RISE_AFTER_OVEN: f64 = 0.10;
/// A lot loses no more than so many times as fast as it lately did, and this share of its weight.
const FASTER: f64 = 3.0;
const DROP: f64 = 0.04;
/// SDs below the expected dry weight at which a first weigh-in has to be confirmed.
const LIGHT_SDS: f64 = 2.3;
/// Until this share of the water is gone a lot may take up the pace that it had on the whole.
const EARLY_SHARE: f64 = 0.6;
/// A weight this much above the lightest one before tells of damp air, not of the end.
const DAMPER: f64 = 0.03;

/// A look at the lot: one weigh-in, or several that agree.
#[derive(Debug, Clone)]
pub(crate) struct Look {
    pub hours: f64,
    pub mass_g: f64,
    pub snaps: bool,
    is_confirmed: bool,
    places: Vec<usize>,
}

/// What is left of the weigh-ins.
#[derive(Debug, Clone, Default)]
pub(crate) struct Sifted {
    /// Looks that count, by time.
    pub looks: Vec<Look>,
    /// Places of the weigh-ins that were set aside, ascending.
    pub odd: Vec<usize>,
    /// Whether the lot lost more, all of a sudden, than the same air would take.
    pub was_warmed: bool,
}

impl Sifted {
    /// The looks that tell of the end: not those at which the lot was damper than it had been.
    pub fn telling(&self) -> impl Iterator<Item = &Look> {
        let mut lightest = f64::MAX;
        self.looks.iter().filter(move |look| {
            let tells = look.mass_g <= lightest * (1.0 + DAMPER);
            lightest = lightest.min(look.mass_g);
            tells
        })
    }
}

/// The step of the scale: the stated one, or a coarser one that every one of six weigh-ins is a multiple of.
pub(crate) fn step_shown(lot: &Lot) -> f64 {
    const ENOUGH: usize = 6;
    let stated = lot.scale_step_g;
    let possible = possible(lot, stated);
    let weighed = lot.weighings.iter().map(|w| w.mass_g);
    let steps = weighed
        .filter(|mass_g| possible.contains(mass_g))
        .map(|mass_g| mass_g / stated);
    if steps.clone().count() < ENOUGH {
        return stated;
    }
    let fits = |coarser: &f64| {
        steps.clone().all(|count| {
            let whole = count / coarser;
            (whole - libm::round(whole)).abs() < 1e-6 * whole.max(1.0)
        })
    };
    let coarsest = [20.0, 10.0, 5.0].into_iter().find(fits).unwrap_or(1.0);
    stated * coarsest
}

/// Sifts the weigh-ins of a lot whose scale shows steps of `step_g`.
pub(crate) fn sift(lot: &Lot, step_g: f64) -> Sifted {
    let mut sieve = Sieve {
        lot,
        step_g,
        kept: Vec::new(),
        waiting: None,
        odd: Vec::new(),
        was_warmed: false,
    };
    for look in looks(lot, step_g, &mut sieve.odd) {
        sieve.take(look);
    }
    sieve.finish()
}

/// What a lot can weigh at all: no less than its dry matter could be and no more than fresh.
fn possible(lot: &Lot, step_g: f64) -> RangeInclusive<f64> {
    let lightest = lot.fresh_g * libm::exp(lot.prior.mean - 4.0 * lot.prior.sd.max(0.2));
    (lightest - step_g).max(f64::MIN_POSITIVE)..=lot.fresh_g + step_g
}

/// The possible weigh-ins by time, those of one look together.
fn looks(lot: &Lot, step_g: f64, odd: &mut Vec<usize>) -> Vec<Look> {
    let possible = possible(lot, step_g);
    let mut by_time: Vec<(usize, &Weighing)> = lot.weighings.iter().enumerate().collect();
    by_time.sort_by(|(_, a), (_, b)| {
        let by_hours = a.hours.total_cmp(&b.hours);
        by_hours.then(b.mass_g.total_cmp(&a.mass_g))
    });
    let mut looks: Vec<Look> = Vec::new();
    let mut begun = 0.0;
    for (place, it) in by_time {
        if !possible.contains(&it.mass_g) {
            odd.push(place);
            continue;
        }
        if let Some(last) = looks.last_mut() {
            let apart = (it.mass_g - last.mass_g).abs();
            let agrees = apart <= (ONE_LOOK_RANGE * last.mass_g).max(1.01 * step_g);
            if agrees && it.hours - begun <= ONE_LOOK_HOURS && last.hours > 0.0 {
                let count = last.places.len() as f64;
                last.hours = (last.hours * count + it.hours) / (count + 1.0);
                last.mass_g = (last.mass_g * count + it.mass_g) / (count + 1.0);
                last.snaps |= it.snaps;
                last.is_confirmed |= it.is_confirmed;
                last.places.push(place);
                continue;
            }
        }
        begun = it.hours;
        looks.push(Look {
            hours: it.hours,
            mass_g: it.mass_g,
            snaps: it.snaps,
            is_confirmed: it.is_confirmed,
            places: vec![place],
        });
    }
    looks
}

struct Sieve<'a> {
    lot: &'a Lot,
    step_g: f64,
    kept: Vec<Look>,
    waiting: Option<Look>,
    odd: Vec<usize>,
    was_warmed: bool,
}

impl Sieve<'_> {
    fn take(&mut self, look: Look) {
        if look.is_confirmed {
            if self.is_risen(&look) && self.fits_without_last(&look) {
                let last = self.kept.pop();
                self.set_aside(last);
            }
            let waiting = self.waiting.take();
            self.set_aside(waiting);
            self.was_warmed |= self.is_fallen(&look);
            self.kept.push(look);
        } else if self.fits(self.kept.len(), &look) {
            let waiting = self.waiting.take();
            self.set_aside(waiting);
            self.kept.push(look);
        } else {
            match self.waiting.take() {
                Some(waiting) if self.confirms(&waiting, &look) => {
                    if self.is_risen(&waiting) && self.fits_without_last(&waiting) {
                        let last = self.kept.pop();
                        self.set_aside(last);
                    } else {
                        self.was_warmed |= self.is_fallen(&waiting);
                    }
                    self.kept.push(waiting);
                    self.kept.push(look);
                }
                waiting => {
                    self.set_aside(waiting);
                    self.waiting = Some(look);
                }
            }
        }
    }

    fn finish(mut self) -> Sifted {
        if let Some(waiting) = self.waiting.take() {
            // Two weigh-ins contradict each other and nothing says which is right.
            if self.is_risen(&waiting) && self.fits_without_last(&waiting) {
                let last = self.kept.pop();
                self.set_aside(last);
            }
            self.set_aside(Some(waiting));
        }
        self.odd.sort_unstable();
        Sifted {
            looks: self.kept,
            odd: self.odd,
            was_warmed: self.was_warmed,
        }
    }

    fn set_aside(&mut self, look: Option<Look>) {
        self.odd
            .extend(look.into_iter().flat_map(|look| look.places));
    }

    /// The fresh weighing and the last few looks that count, of the first `count`.
    fn course(&self, count: usize) -> Vec<(f64, f64)> {
        let from = count.saturating_sub(3);
        let fresh = (from == 0).then_some((0.0, self.lot.fresh_g));
        let looks = self.kept[from..count]
            .iter()
            .map(|it| (it.hours, it.mass_g));
        fresh.into_iter().chain(looks).collect()
    }

    fn most_after(&self, mass_g: f64) -> f64 {
        (1.0 + RISE) * mass_g + 1.5 * self.step_g
    }

    /// The least that a lot on this course can weigh at an hour.
    fn least_at(&self, count: usize, hours: f64) -> f64 {
        let (lot, course) = (self.lot, self.course(count));
        let Some(&(since, mass_g)) = course.last() else {
            return 0.0;
        };
        if count == 0 {
            return 0.97 * lot.fresh_g * libm::exp(lot.prior.mean - LIGHT_SDS * lot.prior.sd);
        }
        let pace = |a: &(f64, f64), b: &(f64, f64)| (a.1 - b.1) / (b.0 - a.0).max(1.0);
        let mut fastest = course
            .windows(2)
            .map(|pair| pace(&pair[0], &pair[1]))
            .fold(0.0, f64::max);
        let end_g = 1.11 * lot.fresh_g * libm::exp(lot.prior.mean);
        if lot.fresh_g - mass_g < EARLY_SHARE * (lot.fresh_g - end_g) {
            fastest = fastest.max(pace(&(0.0, lot.fresh_g), &(since, mass_g)));
        }
        mass_g - FASTER * fastest * (hours - since) - DROP * mass_g - 2.0 * self.step_g
    }

    /// Whether a look fits the course of the first `count`.
    fn fits(&self, count: usize, look: &Look) -> bool {
        let last_g = self.kept[..count]
            .last()
            .map_or(self.lot.fresh_g, |it| it.mass_g);
        look.mass_g <= self.most_after(last_g) && look.mass_g >= self.least_at(count, look.hours)
    }

    fn fits_without_last(&self, look: &Look) -> bool {
        let Some(last) = self.kept.last() else {
            return false;
        };
        // Nobody's word makes a herb half as heavy again.
        let is_sure = last.is_confirmed && look.mass_g <= 1.5 * last.mass_g;
        !is_sure && self.fits(self.kept.len() - 1, look)
    }

    fn is_risen(&self, look: &Look) -> bool {
        let last = self.kept.last();
        last.is_some_and(|last| look.mass_g > self.most_after(last.mass_g))
    }

    fn is_fallen(&self, look: &Look) -> bool {
        look.mass_g < self.least_at(self.kept.len(), look.hours)
    }

    /// Whether a look says the same as the one that waits for it.
    fn confirms(&self, waiting: &Look, look: &Look) -> bool {
        let (before, lot) = (self.kept.last(), self.lot);
        let (since, mass_g) = before.map_or((0.0, lot.fresh_g), |it| (it.hours, it.mass_g));
        if waiting.mass_g > mass_g {
            return look.mass_g <= self.most_after(waiting.mass_g)
                && look.mass_g > self.most_after(mass_g);
        }
        let pace = (mass_g - waiting.mass_g) / (waiting.hours - since).max(1.0);
        let slack = DROP * waiting.mass_g + 2.0 * self.step_g;
        look.mass_g <= (1.0 + RISE_AFTER_OVEN) * waiting.mass_g + 2.0 * self.step_g
            && look.mass_g >= waiting.mass_g - pace * (look.hours - waiting.hours) - slack
    }
}
