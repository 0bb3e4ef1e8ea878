//! The joint posterior of a drying curve, by quadrature over its shape.
//!
//! `W(t) = F MR(t) + A (1 - MR(t))` with Page's `MR = exp(-(K t)^n)` and the end
//! weight `A = D (1 + Me)`. For a given shape (K, n) the curve is linear in `A`,
//! so a Kalman filter over the weigh-ins gives its Gaussian likelihood with
//! correlated model errors; only K and n are left to sum over, on a grid that is
//! laid twice, coarse and then around the mass. Nothing has to be started,
//! to converge or to be drawn, so the same weigh-ins give the same digits.
//!
//! The constants are engineering defaults. Noise and shape were searched on half of 300
//! simulated batches; the gate, the tail, the interval factor and the margins of the done
//! rule were then chosen with all of them in sight, so figures from those batches flatter.

use super::{lot::Pace, prior::DryMatterPrior, sample::reading_variance};

/// SD of the model's error at mid-run, as a share of the water that will leave.
const STRUCTURAL_ERROR: f64 = 0.05;
/// Correlated error at the end of the run, as a share of the end weight: the air drifts.
const END_ERROR: f64 = 0.013;
/// Uncorrelated error of the weight in changing weather, as a share of the end weight.
const WEATHER_ERROR: f64 = 0.006;
/// Length over which model errors are alike, as a share of the water that will leave.
const ERROR_LENGTH: f64 = 0.6;
/// Page's exponent: median and SD of its logarithm.
const EXPONENT: (f64, f64) = (0.75, 0.12);
/// SD of ln K.
const RATE_SD: f64 = 0.9;
/// `-ln MR` beyond which the slowest tissue rules and the decay is a plain exponential.
const TAIL: f64 = 3.0;

/// Shapes in each pass: along ln K and along ln n.
const PASSES: [(i32, i32); 2] = [(23, 7), (13, 7)];

/// No more rates than this in the first pass.
const MOST_RATES: i32 = 60;

/// Everything the posterior needs; times ascend and are above zero.
pub(crate) struct Problem<'a> {
    pub fresh_g: f64,
    pub scale_step_g: f64,
    pub prior: DryMatterPrior,
    pub pace: Pace,
    /// Mean and SD of the equilibrium moisture, on dry basis.
    pub end_moisture: (f64, f64),
    pub weighings: &'a [(f64, f64)],
}

/// One shape with its weight and what it says of the end weight.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Component {
    pub weight: f64,
    pub ln_k: f64,
    pub n: f64,
    /// ln of the end weight `A` in grams: mean and variance.
    pub ln_end: (f64, f64),
}

/// A mixture over shapes; the dry matter given the end weight is normal in logarithms.
pub(crate) struct Posterior {
    pub components: Vec<Component>,
    /// Regression of ln D on ln A: intercept, slope and remaining variance.
    pub dry_given_end: (f64, f64, f64),
    /// ln A before any weigh-in: mean and SD.
    pub end_prior: (f64, f64),
}

struct Shape {
    log_evidence: f64,
    ln_end: (f64, f64),
}

/// What every shape shares.
struct Scales {
    white: f64,
    span: f64,
    end_error: f64,
    end_prior: (f64, f64),
    /// ln of the hours and the grams of each weigh-in.
    points: Vec<(f64, f64)>,
}

/// `-ln MR` at `ln_hours`.
fn decay(ln_k: f64, n: f64, ln_hours: f64) -> f64 {
    let page = libm::exp(n * (ln_k + ln_hours));
    if page <= TAIL {
        page
    } else {
        let over = libm::exp(ln_k + ln_hours - libm::log(TAIL) / n);
        TAIL * (1.0 + n * (over - 1.0))
    }
}

impl Component {
    /// The moisture ratio after `hours`.
    pub fn moisture_ratio(&self, hours: f64) -> f64 {
        if hours <= 0.0 {
            1.0
        } else {
            libm::exp(-decay(self.ln_k, self.n, libm::log(hours)))
        }
    }

    /// When the moisture ratio is `ratio`, within 0-1.
    pub fn hours_at(&self, ratio: f64) -> f64 {
        let g = -libm::log(ratio);
        let kt = if g <= TAIL {
            libm::pow(g.max(0.0), 1.0 / self.n)
        } else {
            libm::pow(TAIL, 1.0 / self.n) * (1.0 + (g / TAIL - 1.0) / self.n)
        };
        kt * libm::exp(-self.ln_k)
    }
}

/// SD of the model's error where the moisture ratio is `ratio`, in grams.
pub(crate) fn model_error_g(fresh_g: f64, end_g: f64, ratio: f64) -> f64 {
    let span = STRUCTURAL_ERROR * (fresh_g - end_g).max(0.1 * fresh_g);
    let end = END_ERROR * end_g;
    libm::sqrt(4.0 * ratio * (1.0 - ratio) * span * span + end * end)
}

impl Problem<'_> {
    fn end_prior(&self) -> (f64, f64) {
        let (moisture, sd) = self.end_moisture;
        let ratio_sd = sd / (1.0 + moisture);
        (
            libm::log(self.fresh_g) + self.prior.mean + libm::log1p(moisture),
            libm::sqrt(self.prior.sd * self.prior.sd + ratio_sd * ratio_sd),
        )
    }

    /// Likelihood of one shape, the end weight integrated out.
    fn shape(&self, ln_k: f64, n: f64, scales: &Scales) -> Shape {
        let (end_mean, end_sd) = scales.end_prior;
        // Two channels through one filter: the weights less F MR, and the regressor 1 - MR of A.
        let (mut z_weight, mut z_end, mut p, mut gone_before) = (0.0, 0.0, 1.0, 0.0);
        let (mut rr, mut rh, mut hh) = (0.0, 0.0, 0.0);
        let (mut log_variances, mut product) = (0.0, 1.0_f64);
        for &(ln_hours, mass_g) in &scales.points {
            let ratio = libm::exp(-decay(ln_k, n, ln_hours));
            let gone = 1.0 - ratio;
            let alike = libm::exp(-(gone - gone_before) / ERROR_LENGTH);
            gone_before = gone;
            z_weight *= alike;
            z_end *= alike;
            p = alike * alike * p + 1.0 - alike * alike;
            let sigma = libm::sqrt(
                4.0 * ratio * gone * scales.span * scales.span
                    + scales.end_error * scales.end_error,
            );
            let variance = sigma * sigma * p + scales.white;
            let weight_news = mass_g - self.fresh_g * ratio - sigma * z_weight;
            let end_news = gone - sigma * z_end;
            let gain = p * sigma / variance;
            z_weight += gain * weight_news;
            z_end += gain * end_news;
            p -= gain * sigma * p;
            rr += weight_news * weight_news / variance;
            rh += weight_news * end_news / variance;
            hh += end_news * end_news / variance;
            product *= variance;
            if !(1e-200..=1e200).contains(&product) {
                log_variances += libm::log(product);
                product = 1.0;
            }
        }
        log_variances += libm::log(product);
        // Laplace in ln A alone: one variable, Newton from where prior and data balance.
        let precision = 1.0 / (end_sd * end_sd);
        let mut u = end_mean;
        if hh > 0.0 && rh > 0.0 {
            let reach = 4.0 * end_sd;
            let data = libm::log(rh / hh).clamp(end_mean - reach, end_mean + reach);
            let weight = libm::exp(2.0 * data) * hh;
            u = (weight * data + precision * end_mean) / (weight + precision);
        }
        let mut curvature = precision;
        for _ in 0..4 {
            let a = libm::exp(u);
            let slope = -a * rh + a * a * hh + precision * (u - end_mean);
            curvature = (a * a * hh + precision).max(2.0 * a * a * hh - a * rh + precision);
            u -= (slope / curvature).clamp(-0.5, 0.5);
        }
        let a = libm::exp(u);
        let misfit = rr - 2.0 * a * rh + a * a * hh + precision * (u - end_mean) * (u - end_mean);
        Shape {
            log_evidence: -0.5 * (misfit + log_variances + libm::log(curvature * end_sd * end_sd)),
            ln_end: (u, 1.0 / curvature),
        }
    }

    /// ln K as the weigh-in nearest to two thirds of the loss shows it.
    fn rate_seen(&self, end_g: f64) -> Option<f64> {
        let lost = |w: &(f64, f64)| (self.fresh_g - w.1) / (self.fresh_g - end_g).max(1e-9);
        let best = self
            .weighings
            .iter()
            .min_by(|a, b| (lost(a) - 0.65).abs().total_cmp(&(lost(b) - 0.65).abs()))?;
        let gone = lost(best).clamp(0.02, 0.98);
        Some(libm::log(-libm::log1p(-gone)) / EXPONENT.0 - libm::log(best.0))
    }

    /// Sums over the shapes.
    pub fn solve(&self) -> Posterior {
        let end_prior = self.end_prior();
        let lightest = self
            .weighings
            .iter()
            .fold(f64::MAX, |least, w| least.min(w.1));
        let pilot_end_g = libm::exp(end_prior.0).min(lightest);
        let weather = WEATHER_ERROR * pilot_end_g;
        let scales = Scales {
            white: reading_variance(self.scale_step_g) + weather * weather,
            span: STRUCTURAL_ERROR * (self.fresh_g - pilot_end_g).max(0.1 * self.fresh_g),
            end_error: END_ERROR * pilot_end_g,
            end_prior,
            points: self
                .weighings
                .iter()
                .map(|w| (libm::log(w.0), w.1))
                .collect(),
        };
        let k0 = -libm::log(match self.pace {
            Pace::Leafy => 28.0,
            Pace::Dense => 70.0,
        });
        let n0 = libm::log(EXPONENT.0);
        let mut frame = Frame {
            centre: (k0, n0),
            half: (3.0 * RATE_SD, 3.0 * EXPONENT.1),
            shear: 0.0,
        };
        // A dehydrator dries tens of times faster than a room: look there too, as densely.
        let mut passes = PASSES;
        if let Some(seen) = self.rate_seen(pilot_end_g) {
            let low = (k0 - frame.half.0).min(seen - 1.0);
            let high = (k0 + frame.half.0).max(seen + 1.0);
            let step = 2.0 * frame.half.0 / f64::from(passes[0].0 - 1);
            while f64::from(passes[0].0 - 1) * step < high - low && passes[0].0 < MOST_RATES {
                passes[0].0 += 1;
            }
            frame.centre.0 = 0.5 * (low + high);
            frame.half.0 = 0.5 * (high - low);
        }
        let mut components = Vec::new();
        for (pass, steps) in passes.into_iter().enumerate() {
            components.clear();
            for i in 0..steps.0 {
                for j in 0..steps.1 {
                    let across =
                        |index: i32, of: i32| 2.0 * f64::from(index) / f64::from(of - 1) - 1.0;
                    let (ln_k, ln_n) = frame.at(across(i, steps.0), across(j, steps.1));
                    let n = libm::exp(ln_n);
                    let shape = self.shape(ln_k, n, &scales);
                    let (dk, dn) = ((ln_k - k0) / RATE_SD, (ln_n - n0) / EXPONENT.1);
                    components.push(Component {
                        weight: shape.log_evidence - far_penalty(dk) - 0.5 * dn * dn,
                        ln_k,
                        n,
                        ln_end: shape.ln_end,
                    });
                }
            }
            normalise(&mut components);
            if pass == 0 {
                frame = Frame::around(&components, &frame, steps);
            }
        }
        components.retain(|c| c.weight > 1e-9);
        let (moisture, sd) = self.end_moisture;
        let ratio_sd = sd / (1.0 + moisture);
        let slope = self.prior.sd * self.prior.sd / (end_prior.1 * end_prior.1);
        Posterior {
            components,
            dry_given_end: (
                libm::log(self.fresh_g) + self.prior.mean - slope * end_prior.0,
                slope,
                slope * ratio_sd * ratio_sd,
            ),
            end_prior,
        }
    }
}

/// Half a squared deviation within two SDs and a straight line beyond, so that an unheard-of
/// rate is unlikely without bending the exponent to avoid it.
fn far_penalty(deviation: f64) -> f64 {
    let far = deviation.abs();
    if far <= 2.0 {
        0.5 * far * far
    } else {
        2.0 * far - 2.0
    }
}

/// From log weights to weights that add up to one.
fn normalise(components: &mut [Component]) {
    let best = components
        .iter()
        .fold(f64::MIN, |most, c| most.max(c.weight));
    let mut total = 0.0;
    for c in components.iter_mut() {
        c.weight = libm::exp(c.weight - best);
        total += c.weight;
    }
    for c in components {
        c.weight /= total;
    }
}

/// A parallelogram of shapes in (ln K, ln n).
struct Frame {
    centre: (f64, f64),
    half: (f64, f64),
    shear: f64,
}

impl Frame {
    fn at(&self, a: f64, b: f64) -> (f64, f64) {
        let dn = self.half.1 * b;
        (
            self.centre.0 + self.half.0 * a + self.shear * dn,
            self.centre.1 + dn,
        )
    }

    /// Three SDs each way around the mass, an SD being no less than the coarse grid can tell.
    fn around(components: &[Component], before: &Frame, steps: (i32, i32)) -> Self {
        let (mut mean_k, mut mean_n) = (0.0, 0.0);
        for c in components {
            mean_k += c.weight * c.ln_k;
            mean_n += c.weight * libm::log(c.n);
        }
        let (mut kk, mut kn, mut nn) = (0.0, 0.0, 0.0);
        for c in components {
            let (dk, dn) = (c.ln_k - mean_k, libm::log(c.n) - mean_n);
            kk += c.weight * dk * dk;
            kn += c.weight * dk * dn;
            nn += c.weight * dn * dn;
        }
        let step_k = 2.0 * before.half.0 / f64::from(steps.0 - 1);
        let step_n = 2.0 * before.half.1 / f64::from(steps.1 - 1);
        let nn = nn.max(0.25 * step_n * step_n);
        let shear = kn / nn;
        let rest = (kk - shear * kn).max(0.16 * step_k * step_k);
        Self {
            centre: (mean_k, mean_n),
            half: (3.0 * libm::sqrt(rest), 3.0 * libm::sqrt(nn)),
            shear,
        }
    }
}

impl Posterior {
    /// Mean and variance of ln D given one component.
    pub fn ln_dry(&self, component: &Component) -> (f64, f64) {
        let (intercept, slope, rest) = self.dry_given_end;
        let (u, v) = component.ln_end;
        (intercept + slope * u, slope * slope * v + rest)
    }

    /// Mean of ln D.
    pub fn ln_dry_mean(&self) -> f64 {
        self.components
            .iter()
            .map(|c| c.weight * self.ln_dry(c).0)
            .sum()
    }

    /// The components that carry the mass, for what is costly to work out for each.
    pub fn heaviest(&self) -> impl Iterator<Item = &Component> {
        let most = self
            .components
            .iter()
            .fold(0.0, |most: f64, c| most.max(c.weight));
        self.components
            .iter()
            .filter(move |c| c.weight > 0.02 * most)
    }
}
