//! What a measured pH says of a liquid that acid keeps.

use chrono::NaiveDate;
use message::{Argument, Unit, say};
use physics::mixture::ph::{ACID_PROTECTS_TO, PhReading, ReadWith};

use crate::{
    note::{Note, Status},
    preparations::Preparation,
};

/// The gate of a preparation that acid keeps, and of which it is worth while to measure the pH.
const GATE: &str = "measured-ph";
/// The caution that has done its work once somebody measured.
pub const IS_MEASURED: &str = "ph-strip";

const SOURCE: &str = "21 CFR 114.3 (4.6); 21 CFR 114.80(a)(2) (a strip up to 4.0)";

impl Preparation {
    /// Whether acid keeps it, so that its pH decides.
    pub fn is_kept_by_acid(&self) -> bool {
        self.gates.iter().any(|gate| gate == GATE)
    }
}

/// What a reading of a day tells whoever decides about the liquid: `not-acid` where acid may not
/// protect it, `acid` where it does. A reading never makes anything keep longer.
///
/// *Source*: 21 CFR 114.3 and 114.80(a)(2); to keep such a liquid cold and for days only is what the
/// caution [`IS_MEASURED`] says.
pub fn told(ph: PhReading, on: NaiveDate) -> Note {
    let limit = Argument::exact(ACID_PROTECTS_TO, Unit::None);
    if ph.is_acid_enough() {
        let physics::Interval { low, value, high } = ph.interval();
        let range = Argument::range(low, value, high, Unit::None);
        let text = say!("ph-acid", range, limit);
        return Note::new("acid", text, SOURCE, Status::Confirmed);
    }
    let (read, off) = (
        Argument::exact(ph.value, Unit::None),
        Argument::exact(ph.out_by(), Unit::None),
    );
    let text = if ph.value > ACID_PROTECTS_TO {
        say!("ph-not-acid", ph = read, day = on, limit)
    } else if ph.read_with == Some(ReadWith::Meter) {
        say!("ph-perhaps-not-acid", ph = read, day = on, off, limit)
    } else {
        say!(
            "ph-perhaps-not-acid-by-strip",
            ph = read,
            day = on,
            off,
            limit
        )
    };
    Note::new("not-acid", text, SOURCE, Status::Confirmed)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::keep::{Prospect, gate, judge};
    use crate::preparations::{self, PlantState, Verdict};
    use physics::{
        Interval,
        mixture::{Acidity, Ingredient, Pour, describe},
        quantity::{celsius, millilitres},
    };

    const WITH: [Option<ReadWith>; 3] = [None, Some(ReadWith::Strip), Some(ReadWith::Meter)];

    fn readings() -> impl Iterator<Item = PhReading> {
        (0..=280)
            .flat_map(|step| WITH.map(|with| PhReading::new(f64::from(step) / 20.0, with).unwrap()))
    }

    #[test]
    fn a_reading_is_acid_enough_exactly_where_its_gate_does_not_say_use_now() {
        let row = gate::row(GATE).unwrap();
        for ph in readings() {
            let now = row.verdict(ph.interval()) == Verdict::UseNow;
            assert_eq!(now, !ph.is_acid_enough(), "{ph:?}");
        }
    }

    #[test]
    fn a_measured_ph_never_improves_a_verdict() {
        let vinegar = |acidity| Ingredient::vinegar(Acidity::new(acidity).unwrap());
        for preparation in preparations::all() {
            for acidity in [0.5, 3.5, 5.0] {
                let pours = [Pour::measured(vinegar(acidity), millilitres(100.0)).unwrap()];
                let liquid = describe(&pours, &[], celsius(20.0)).unwrap();
                let of = |measured_ph: Option<Interval>| {
                    let prospect = Prospect {
                        liquid: Some(&liquid),
                        vinegar_acidity_g_per_100ml: Some(acidity),
                        herb_water_percent: None,
                        measured_ph,
                        state: PlantState::Dried,
                    };
                    judge(preparation, &prospect).verdict
                };
                for ph in readings() {
                    let verdict = of(Some(ph.interval()));
                    assert!(verdict >= of(None), "{}: {ph:?}", preparation.key);
                    let spoils = preparation.is_kept_by_acid() && !ph.is_acid_enough();
                    assert!(
                        !spoils || verdict >= Verdict::UseNow,
                        "{}: {ph:?}",
                        preparation.key
                    );
                }
            }
        }
    }

    #[test]
    fn whoever_is_asked_to_measure_has_a_gate_for_it() {
        for preparation in preparations::all() {
            let family = preparation.family.as_str();
            let asked = ["vinegar", "shrub", "spiced-vinegar", "oxymel"].contains(&family);
            assert_eq!(preparation.is_kept_by_acid(), asked, "{family}");
        }
    }

    #[test]
    fn a_reading_says_what_to_do() {
        let on = "2026-07-20".parse().unwrap();
        let told = |value, with| told(PhReading::new(value, with).unwrap(), on);
        let sure = told(4.8, Some(ReadWith::Meter));
        assert_eq!(sure.text.id(), "ph-not-acid");
        let perhaps = told(4.5, Some(ReadWith::Strip));
        assert_eq!(perhaps.text.id(), "ph-perhaps-not-acid-by-strip");
        let by_meter = told(4.59, Some(ReadWith::Meter));
        assert_eq!(by_meter.text.id(), "ph-perhaps-not-acid");
        assert_eq!(
            (perhaps.code.as_str(), told(3.2, None).code.as_str()),
            ("not-acid", "acid")
        );
    }
}
