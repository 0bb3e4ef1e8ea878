//! Lots that dry as the forecast does not assume, and weigh-ins that lie.
//!
//! Water moves through five layers by diffusion and leaves at the surface through a film of air (Crank,
//! *The Mathematics of Diffusion*, 1975, explicit finite differences), where the forecast fits one curve.
//! The air's moisture is taken up along a Halsey isotherm with the exponent of beans (ASAE D245.5, 1.7 to
//! 2.0) through the level of lemon balm leaf (12.4 % on dry basis, Argyropoulos et al. 2012, abstract; that
//! this is at 60 % is from memory), where the forecast uses Oswin's. Dry matter has heavier tails than the
//! prior says. What each scene adds, and where its figures come from, stands in [`Scene::about`].

use checks::Random;
use physics::drying::{DryMatterPrior, Pace};

/// Hours of one step.
const STEP: f64 = 0.25;
/// Layers from the middle to the surface.
const LAYERS: usize = 5;

/// What is wrong with a lot, its room, its scale or its book-keeping.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Scene {
    Plain,
    DampRoom,
    ThickRoot,
    EarlyStall,
    LateStall,
    OvenFinish,
    Dew,
    CoarseScale,
    DroppedDigit,
    SwappedDigits,
    WrongUnit,
    ForgottenTare,
    Gap,
    Rewetting,
    FiftyInAnHour,
}

impl Scene {
    pub const ALL: [Self; 15] = [
        Self::Plain,
        Self::DampRoom,
        Self::ThickRoot,
        Self::EarlyStall,
        Self::LateStall,
        Self::OvenFinish,
        Self::Dew,
        Self::CoarseScale,
        Self::DroppedDigit,
        Self::SwappedDigits,
        Self::WrongUnit,
        Self::ForgottenTare,
        Self::Gap,
        Self::Rewetting,
        Self::FiftyInAnHour,
    ];

    /// The scene, and the source of its figures.
    pub fn about(self) -> &'static str {
        match self {
            Self::Plain => "diffusion in layers, nothing wrong (invented)",
            Self::DampRoom => "room of 62 to 80 % (invented)",
            Self::ThickRoot => "root pieces 2 weeks, whole 3 to 6 (growers' pages)",
            Self::EarlyStall => "rests 2 to 4 days at 20-30 % of the loss (cut leaves)",
            Self::LateStall => "rests 1 to 3 days at 45-80 % of the loss (invented)",
            Self::OvenFinish => "oven of 40 to 60 C for 4 to 10 h, then back (invented)",
            Self::Dew => "a twentieth to a quarter of the weight is dew (invented)",
            Self::CoarseScale => "scale of 5 or 10 g, not said to be (invented)",
            Self::DroppedDigit => "one weigh-in lacks a digit (invented)",
            Self::SwappedDigits => "one weigh-in has two digits swapped (invented)",
            Self::WrongUnit => "one weigh-in in ounces or pounds (invented)",
            Self::ForgottenTare => "one weigh-in with or without the tray (invented)",
            Self::Gap => "nobody weighs for 4 to 10 days (invented)",
            Self::Rewetting => "a damp spell of 1 to 4 days at 85 to 95 % (invented)",
            Self::FiftyInAnHour => "fifty weigh-ins in one hour (invented)",
        }
    }

    fn typing(self) -> bool {
        matches!(
            self,
            Self::DroppedDigit | Self::SwappedDigits | Self::WrongUnit | Self::ForgottenTare
        )
    }
}

/// A weigh-in and the truth behind it.
#[derive(Debug, Clone)]
pub struct Look {
    pub hours: f64,
    /// As it was typed.
    pub mass_g: f64,
    pub celsius: f64,
    pub humidity_percent: f64,
    pub true_moisture: f64,
    /// Whether the herb snaps and crumbles when it is tried.
    pub snaps: bool,
    /// Whether what was typed is not what lay on the scale.
    pub is_wrong: bool,
}

/// A lot of a scene.
#[derive(Debug, Clone)]
pub struct Lot {
    pub fresh_g: f64,
    pub prior: DryMatterPrior,
    pub pace: Pace,
    pub dry_g: f64,
    /// When it first held 12 % moisture, if it ever did.
    pub ready_h: Option<f64>,
    pub is_dry_room: bool,
    pub looks: Vec<Look>,
}

fn within(dice: &mut Random, low: f64, high: f64) -> f64 {
    dice.between(low, high)
}

/// Moisture on dry basis in balance with this air.
fn balance(humidity: f64, lot: f64) -> f64 {
    const EXPONENT: f64 = 1.8;
    let level = 0.124 * lot;
    level
        * libm::pow(
            libm::log(0.60) / libm::log(humidity.clamp(0.05, 0.97)),
            1.0 / EXPONENT,
        )
}

/// A room: means, daily swing, a weather that drifts over three days.
struct Room {
    celsius: f64,
    humidity: f64,
    swing: (f64, f64),
    noon: f64,
    weather: f64,
}

impl Room {
    fn drawn(scene: Scene, dice: &mut Random) -> Self {
        let humidity = match scene {
            Scene::DampRoom => within(dice, 0.62, 0.80),
            _ => within(dice, 0.38, 0.58),
        };
        Self {
            celsius: within(dice, 17.0, 28.0),
            humidity,
            swing: (within(dice, 0.5, 4.0), within(dice, 0.01, 0.08)),
            noon: within(dice, 0.0, 24.0),
            weather: 0.0,
        }
    }

    fn at(&mut self, hours: f64, dice: &mut Random) -> (f64, f64) {
        self.weather +=
            -self.weather * STEP / 72.0 + 0.04 * libm::sqrt(2.0 * STEP / 72.0) * dice.normal();
        let sun = libm::sin(2.0 * std::f64::consts::PI * (hours - self.noon) / 24.0);
        (
            self.celsius + self.swing.0 * sun - 8.0 * self.weather,
            (self.humidity - self.swing.1 * sun + self.weather).clamp(0.15, 0.95),
        )
    }
}

/// As many lots of a scene as asked for, each of a kind of plant taken from `kinds`.
pub fn drawn(scene: Scene, kinds: &[(DryMatterPrior, Pace)], count: usize, seed: u64) -> Vec<Lot> {
    let mut dice = Random::of(seed ^ ((scene as u64 + 1) << 32));
    let suits = |pace: Pace| match scene {
        Scene::ThickRoot => pace == Pace::Dense,
        Scene::EarlyStall => pace == Pace::Leafy,
        _ => true,
    };
    let kinds: Vec<_> = kinds.iter().filter(|kind| suits(kind.1)).collect();
    (0..count)
        .map(|_| {
            let kind = kinds[(dice.between(0.0, 1.0) * kinds.len() as f64) as usize];
            lot(scene, kind.0, kind.1, &mut dice)
        })
        .collect()
}

fn lot(scene: Scene, prior: DryMatterPrior, pace: Pace, dice: &mut Random) -> Lot {
    let mut fraction = 1.0;
    while !(0.03..0.7).contains(&fraction) {
        // One lot in ten comes from a garden half as different again as the table says.
        let wide = if dice.between(0.0, 1.0) < 0.1 {
            1.5
        } else {
            1.0
        };
        fraction = libm::exp(prior.mean() + wide * prior.sd() * dice.normal());
    }
    let plant_g = libm::exp(within(dice, libm::log(150.0), libm::log(2000.0)));
    let dry_g = plant_g * fraction;
    let fresh = 1.0 / fraction - 1.0;
    let mut dew_g = match scene {
        Scene::Dew => plant_g * within(dice, 0.05, 0.25) / 0.85,
        _ => 0.0,
    };
    let slowest_h = match (scene, pace) {
        (Scene::ThickRoot, _) => libm::exp(within(dice, libm::log(70.0), libm::log(250.0))),
        (_, Pace::Leafy) => 18.0 * libm::exp(0.45 * dice.normal()),
        (_, Pace::Dense) => 55.0 * libm::exp(0.45 * dice.normal()),
    };
    // The slowest mode of a plate of half thickness one decays in 4 / (pi^2 D).
    let diffusion = 4.0 / (std::f64::consts::PI * std::f64::consts::PI * slowest_h);
    let film = diffusion * libm::exp(within(dice, libm::log(1.0), libm::log(8.0)));
    // It snaps below about 12 %, to which growers dry by hand (Tasmanian grower guide: 10 to 12 %); that each
    // lot and hand differs by a point is invented.
    let snaps_below = 0.120 + 0.010 * dice.normal();
    let own_balance = libm::exp(0.14 * dice.normal());
    let mut room = Room::drawn(scene, dice);
    let longest = if scene == Scene::ThickRoot {
        1400.0
    } else {
        700.0
    };

    let stall = match scene {
        Scene::EarlyStall => (within(dice, 0.20, 0.30), within(dice, 48.0, 96.0)),
        Scene::LateStall => (within(dice, 0.45, 0.80), within(dice, 24.0, 72.0)),
        _ => (f64::MAX, 0.0),
    };
    let mut stall_until: Option<f64> = None;
    let oven_at = within(dice, 0.13, 0.6);
    let (oven_c, oven_for) = (within(dice, 40.0, 60.0), within(dice, 4.0, 10.0));
    let mut oven_until: Option<f64> = None;
    let (spell_at, spell_for, spell) = (
        within(dice, 0.12, 0.30),
        within(dice, 24.0, 96.0),
        within(dice, 0.85, 0.95),
    );
    let mut spell_until: Option<f64> = None;
    let step_g = match scene {
        Scene::CoarseScale => {
            if dice.between(0.0, 1.0) < 0.5 {
                5.0
            } else {
                10.0
            }
        }
        _ => 1.0,
    };
    let shown = |mass_g: f64, dice: &mut Random| {
        libm::round(mass_g / step_g + 0.15 * dice.normal()) * step_g
    };
    let fresh_g = shown(plant_g + dew_g, dice);

    let mut layers = [fresh; LAYERS];
    let (mut hours, mut next, mut until) = (0.0, within(dice, 8.0, 26.0), longest);
    let (mut ready_h, mut looks) = (None, Vec::new());
    let (mut damp_sum, mut steps) = (0.0, 0.0);
    let mut burst = 0;
    while hours <= until {
        let (mut celsius, mut humidity) = room.at(hours, dice);
        let moisture = layers.iter().sum::<f64>() / LAYERS as f64;
        let gone = (fresh - moisture) / (fresh - 0.11);
        if gone >= stall.0 && stall_until.is_none() {
            stall_until = Some(hours + stall.1);
        }
        if scene == Scene::OvenFinish && oven_until.is_none() && moisture <= oven_at {
            oven_until = Some(hours + oven_for);
            // Whoever heats it weighs it when it comes out.
            next = next.max(hours + oven_for + 0.5);
        }
        if scene == Scene::Rewetting && spell_until.is_none() && moisture <= spell_at {
            spell_until = Some(hours + spell_for);
        }
        let is_in = |until: Option<f64>| until.is_some_and(|end| hours < end);
        if is_in(oven_until) {
            (celsius, humidity) = (oven_c, 0.12);
        }
        if is_in(spell_until) {
            humidity = spell;
        }
        damp_sum += humidity;
        steps += 1.0;
        if hours >= next && !is_in(oven_until) {
            let wet = moisture / (1.0 + moisture);
            looks.push(Look {
                hours,
                mass_g: shown(dry_g * (1.0 + moisture) + dew_g, dice),
                celsius,
                humidity_percent: 100.0 * humidity,
                true_moisture: wet,
                snaps: wet < snaps_below + 0.004 * dice.normal(),
                is_wrong: false,
            });
            let gap = libm::round(within(dice, 8.0, 26.0) / STEP) * STEP;
            if scene == Scene::FiftyInAnHour && burst < 50 && gone > 0.5 {
                burst += 1;
                // Fifty in an hour, a step being a quarter of one.
                next = if burst % 13 == 0 { hours + STEP } else { hours };
            } else {
                next = hours + gap;
            }
            if next <= hours {
                continue;
            }
        }
        dew_g *= libm::exp(-STEP / 4.0);
        if !is_in(stall_until) {
            // 45 kJ/mol, as herbs lie between 35 and 74 (Doymaz 2006, 2011 and others, abstracts).
            let warmth =
                libm::exp(-45_000.0 / 8.314 * (1.0 / (celsius + 273.15) - 1.0 / 296.15)).min(4.0);
            let end = balance(humidity, own_balance);
            dry(&mut layers, end, diffusion * warmth, film * warmth);
        }
        hours += STEP;
        let moisture = layers.iter().sum::<f64>() / LAYERS as f64;
        if ready_h.is_none() && moisture <= 0.12 / 0.88 {
            ready_h = Some(hours);
            until = (hours + within(dice, 110.0, 170.0)).min(until);
        }
    }
    let mut lot = Lot {
        fresh_g,
        prior,
        pace,
        dry_g,
        ready_h,
        is_dry_room: damp_sum / steps <= 0.57,
        looks,
    };
    if scene.typing() {
        mistype(scene, &mut lot, dice);
    }
    if scene == Scene::Gap {
        let from = within(dice, 0.3, 0.9) * lot.looks.last().map_or(0.0, |look| look.hours);
        let to = from + within(dice, 96.0, 240.0);
        let last = lot.looks.len().saturating_sub(2);
        let mut at = 0;
        lot.looks.retain(|look| {
            at += 1;
            at > last || look.hours < from || look.hours > to
        });
    }
    lot
}

/// One step of diffusion, by as many parts as keep it stable.
fn dry(layers: &mut [f64; LAYERS], end: f64, diffusion: f64, film: f64) {
    let width = 1.0 / LAYERS as f64;
    let parts = (2.5 * diffusion * STEP / (width * width))
        .ceil()
        .max((2.5 * film * STEP / width).ceil());
    let step = STEP / parts;
    for _ in 0..parts as usize {
        let mut flows = [0.0; LAYERS];
        for at in 0..LAYERS - 1 {
            flows[at] = diffusion * (layers[at] - layers[at + 1]) / width;
        }
        flows[LAYERS - 1] = film * (layers[LAYERS - 1] - end);
        let mut before = 0.0;
        for at in 0..LAYERS {
            layers[at] += step * (before - flows[at]) / width;
            before = flows[at];
        }
    }
}

/// Types one weigh-in wrongly, anywhere in the run but at least the second.
fn mistype(scene: Scene, lot: &mut Lot, dice: &mut Random) {
    let tray_g = libm::round(within(dice, 60.0, 400.0));
    let count = lot.looks.len();
    if count < 3 {
        return;
    }
    let at = 1 + (within(dice, 0.0, 1.0) * (count - 1) as f64) as usize;
    let look = &mut lot.looks[at];
    let whole = look.mass_g as i64;
    let typed = match scene {
        Scene::DroppedDigit => {
            let text = whole.to_string();
            let drop = (within(dice, 0.0, 1.0) * text.len() as f64) as usize;
            let kept: String = text
                .char_indices()
                .filter(|(place, _)| *place != drop)
                .map(|(_, digit)| digit)
                .collect();
            kept.parse().unwrap_or(0.0)
        }
        Scene::SwappedDigits => {
            let mut digits: Vec<char> = whole.to_string().chars().collect();
            if digits.len() > 1 {
                let first = (within(dice, 0.0, 1.0) * (digits.len() - 1) as f64) as usize;
                digits.swap(first, first + 1);
            }
            digits
                .into_iter()
                .collect::<String>()
                .parse()
                .unwrap_or(0.0)
        }
        Scene::WrongUnit => {
            let per = if within(dice, 0.0, 1.0) < 0.5 {
                28.349_523
            } else {
                453.592_37
            };
            libm::round(10.0 * look.mass_g / per) / 10.0
        }
        _ => {
            if within(dice, 0.0, 1.0) < 0.5 {
                look.mass_g + tray_g
            } else {
                (look.mass_g - tray_g).max(0.0)
            }
        }
    };
    look.is_wrong = typed != look.mass_g;
    look.mass_g = typed;
}
