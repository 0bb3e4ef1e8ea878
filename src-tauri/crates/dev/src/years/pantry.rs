//! What is poured, strained, bottled and used up.

use chrono::{DateTime, Days, Duration, FixedOffset};
use journal::{
    Bottle, BottleId, Check, CheckId, End, EndKind, How, Interval, Item, Jar, JarId, Outcome,
    Plant, PlantState, Pour, SteepDays, Straining, StrainingId, SupplyId, Use, UseId,
};

use super::{Garden, corrected, recorded};

const PEOPLE: [&str; 10] = [
    "the neighbour at the mill",
    "the ferryman",
    "my sister",
    "the school kitchen",
    "the choir",
    "the beekeeper",
    "the couple from the corner",
    "an old friend",
    "the village shop",
    "a guest",
];
const BOTTLES_A_JAR: u32 = 5;

impl Garden {
    pub(super) fn jar(
        &mut self,
        at: DateTime<FixedOffset>,
        preparation: &str,
        plant: Plant,
        supply: SupplyId,
        is_recent: bool,
    ) {
        let id = JarId(self.id(at));
        let pour = |name: &str, item, ml: f64, g: f64, supply| Pour {
            item,
            name: name.into(),
            ml,
            g,
            supply,
            added: None,
        };
        let is_fresh = plant.state == PlantState::Fresh;
        let dry = plant.mass_g * (1.0 - plant.moisture_wet_percent.value / 100.0);
        let jar = Jar {
            code: self.code(id.0),
            name: format!("{} tincture", plant.herb),
            preparation: preparation.into(),
            poured_at: at,
            pours: vec![
                pour(
                    "Grain spirit",
                    Item::Spirit {
                        strength_percent_vol: 95.0,
                    },
                    250.0,
                    203.0,
                    Some(supply),
                ),
                pour(
                    "Water",
                    Item::Water {},
                    if is_fresh { 20.0 } else { 100.0 },
                    if is_fresh { 20.0 } else { 100.0 },
                    None,
                ),
            ],
            plants: vec![plant],
            jar_ml: Some(500.0),
            steep_days: SteepDays { low: 10, high: 28 },
            strength_percent_vol: Interval {
                low: 64.0,
                value: 66.0,
                high: 68.0,
            },
            glycerol_percent_mass: Interval::exact(0.0),
            shake: true,
            place: Some("Cellar".into()),
            note: None,
            failed: None,
            marc_of: None,
        };
        self.deed(
            at,
            format!("Poured {} ({}), {} mL", jar.name, jar.code, jar.poured_ml()),
            vec![recorded(&id, &jar)],
        );
        let strained_at = at + Days::new(21);
        let straining = StrainingId(self.id(strained_at));
        let strained = Straining {
            jar: id,
            at: strained_at,
            how: How::Pressed,
            came_out_ml: 58.0 * f64::from(BOTTLES_A_JAR),
            came_out_g: None,
            liquid_ml: Interval {
                low: 325.0,
                value: 330.0,
                high: 335.0,
            },
            dry_matter_g: Interval {
                low: dry * 0.9,
                value: dry,
                high: dry * 1.1,
            },
            ph: None,
            note: None,
        };
        self.deed(
            strained_at,
            format!("Strained 290 mL from {} ({})", jar.name, jar.code),
            vec![recorded(&straining, &strained)],
        );
        let filled_at = strained_at + Duration::hours(1);
        let mut bottles = Vec::new();
        let mut changes = Vec::new();
        for _ in 0..BOTTLES_A_JAR {
            let bottle = BottleId(self.id(filled_at));
            let filled = Bottle {
                code: self.code(bottle.0),
                jar: id,
                filled_at,
                size_ml: 58.0,
                best_before: filled_at.date_naive().checked_add_days(Days::new(1095)),
                check_on: filled_at.date_naive().checked_add_days(Days::new(547)),
                only_the_date_counts: false,
                place: Some("Cellar".into()),
                note: None,
                end: None,
            };
            changes.push(recorded(&bottle, &filled));
            bottles.push((bottle, filled));
        }
        self.deed(
            filled_at,
            format!(
                "Filled {BOTTLES_A_JAR} bottles from {} ({})",
                jar.name, jar.code
            ),
            changes,
        );
        for (bottle, filled) in bottles {
            self.life(bottle, filled, is_recent);
        }
    }

    /// What becomes of a bottle.
    fn life(&mut self, id: BottleId, mut bottle: Bottle, is_recent: bool) {
        let mut at = bottle.filled_at + Days::new(20 + self.vary(200));
        for _ in 0..self.vary(3) {
            let usage = UseId(self.id(at));
            let used = Use {
                bottle: id,
                at,
                ml: 5.0,
                note: None,
            };
            self.deed(
                at,
                format!("Used 5 mL of {}", bottle.code),
                vec![recorded(&usage, &used)],
            );
            at = at + Days::new(1 + self.vary(30));
        }
        if self.vary(10) == 0 {
            let check = CheckId(self.id(at));
            let looked = Check {
                bottle: id,
                at,
                outcome: Outcome::Good,
                ph: None,
                note: None,
            };
            self.deed(
                at,
                format!("Looked at {}: good", bottle.code),
                vec![recorded(&check, &looked)],
            );
        }
        let fate = self.vary(20);
        if is_recent && fate < 10 {
            return;
        }
        let kind = match fate {
            0..=1 | 10..=11 => EndKind::Given,
            12 => EndKind::Binned,
            _ => EndKind::Finished,
        };
        let person = PEOPLE[self.vary(10) as usize];
        bottle.end = Some(End {
            kind,
            at,
            to: (kind == EndKind::Given).then(|| person.to_owned()),
            reason: (kind == EndKind::Binned).then(|| "cloudy".to_owned()),
        });
        self.deed(
            at,
            format!("The end of {}", bottle.code),
            vec![corrected(&id, &bottle, &["end"])],
        );
    }
}
