//! Many years of a large herb garden, for measuring: the same journal every time, made of deeds as
//! the commands would have written them.

use std::collections::BTreeSet;
use std::path::Path;

use chrono::{DateTime, Days, Duration, FixedOffset};
use journal::{
    Act, Bed, BedId, Bottle, BottleId, Change, Check, CheckId, Deed, DeedId, DeviceId, End,
    EndKind, Fields, Harvest, HarvestId, How, HybridTime, Interval, Jar, JarId, Kept, Lot, LotCode,
    Outcome, Plant, PlantState, Pour, RowId, SteepDays, Stock, Straining, StrainingId, Supply,
    SupplyId, Surface, TakenDown, TimeFrom, Tray, TrayId, Use, UseId, Weighed, Weighing,
    WeighingId,
};
use serde_json::Value;
use store::Store;
use uuid::Uuid;

/// How large the garden is.
#[derive(Debug, Clone, Copy)]
pub struct Size {
    /// How many years.
    pub years: u32,
    /// How many jars are poured in each, an even number.
    pub jars_a_year: u32,
}

const BEDS: [&str; 24] = [
    "North wall",
    "South terrace",
    "Long bed",
    "Kitchen step",
    "Stream bank",
    "Upper hedge",
    "Lower bank",
    "Orchard edge",
    "Round bed",
    "Well corner",
    "East strip",
    "West strip",
    "Old greenhouse",
    "Gravel path",
    "Compost side",
    "Meadow",
    "Pond edge",
    "Steep slope",
    "Cold frame",
    "Gate bed",
    "Stone steps",
    "Bee corner",
    "Long hedge",
    "Quarry",
];
const PLANTS: [(&str, &str); 8] = [
    ("peppermint", "leaf"),
    ("sage", "leaf"),
    ("lemon-balm", "leaf"),
    ("nettle", "leaf"),
    ("calendula", "flower"),
    ("yarrow", "herb"),
    ("thyme", "herb"),
    ("lavender", "flower"),
];
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

/// The journal of so many years in the folder `journal`, which must hold none yet.
///
/// # Errors
/// A sentence when it cannot be written.
pub fn fill(journal: &Path, size: Size) -> Result<usize, String> {
    std::fs::create_dir_all(journal).map_err(|error| error.to_string())?;
    let file = journal.join("journal.trugbook");
    if file.exists() {
        return Err(format!("{} is there already.", file.display()));
    }
    let device = DeviceId(Uuid::from_u128(1));
    let mut store = Store::open(&file, device).map_err(|why| why.to_string())?;
    let mut garden = Garden::new(device);
    let mut written = 0;
    for year in 0..size.years {
        garden.year(year, year + 2 >= size.years, size.jars_a_year);
        let deeds = std::mem::take(&mut garden.deeds);
        written += deeds.len();
        store.absorb(deeds).map_err(|why| why.to_string())?;
    }
    Ok(written)
}

struct Garden {
    device: DeviceId,
    deeds: Vec<Deed>,
    codes: BTreeSet<LotCode>,
    beds: Vec<BedId>,
    /// Counts ids and deeds, and seeds what varies.
    count: u64,
}

impl Garden {
    fn new(device: DeviceId) -> Self {
        Self {
            device,
            deeds: Vec::new(),
            codes: BTreeSet::new(),
            beds: Vec::new(),
            count: 0,
        }
    }

    /// A time-ordered id, as the app makes them.
    fn id(&mut self, at: DateTime<FixedOffset>) -> Uuid {
        self.count += 1;
        let time = u128::from(at.timestamp_millis().unsigned_abs()) << 80;
        Uuid::from_u128(time | (0x7 << 76) | (0x8 << 60) | u128::from(self.count))
    }

    /// A whole number below `below` that differs from call to call (SplitMix64).
    fn vary(&mut self, below: u64) -> u64 {
        self.count += 1;
        let mut z = self.count.wrapping_mul(0x9e37_79b9_7f4a_7c15);
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        (z ^ (z >> 31)) % below
    }

    fn code(&mut self, id: Uuid) -> LotCode {
        let mut attempt = 0;
        loop {
            let code = LotCode::suggested(id, attempt);
            if self.codes.insert(code.clone()) {
                return code;
            }
            attempt += 1;
        }
    }

    fn deed(&mut self, at: DateTime<FixedOffset>, text: String, changes: Vec<Change>) {
        let id = DeedId(self.id(at));
        let milliseconds = at.timestamp_millis();
        let counter = u32::try_from(self.deeds.len()).unwrap_or(u32::MAX);
        self.deeds.push(Deed {
            id,
            at: HybridTime {
                milliseconds,
                counter,
            },
            device: self.device,
            text,
            revokes: None,
            changes,
        });
    }

    fn year(&mut self, year: u32, is_recent: bool, jars: u32) {
        let start = DateTime::parse_from_rfc3339("2006-03-01T09:00:00+01:00").unwrap_or_default()
            + Days::new(u64::from(year) * 365);
        if self.beds.is_empty() {
            for name in BEDS {
                let id = BedId(self.id(start));
                let bed = Bed {
                    name: name.into(),
                    wild: false,
                    area_m2: Some(4.0),
                    note: None,
                };
                self.deed(
                    start,
                    format!("Added the bed {name}"),
                    vec![recorded(&id, &bed)],
                );
                self.beds.push(id);
            }
        }
        let supplies: Vec<SupplyId> = (0..20)
            .map(|number| {
                let id = SupplyId(self.id(start));
                let supply = Supply {
                    name: format!("Grain spirit {}-{number}", 2006 + year),
                    item: Stock::Spirit {
                        strength_percent_vol: 95.0,
                    },
                    size_ml: 1000.0 * f64::from(jars),
                    price: None,
                    bought_on: Some(start.date_naive()),
                    best_before: None,
                };
                self.deed(
                    start,
                    format!("Added {} to the shelf", supply.name),
                    vec![recorded(&id, &supply)],
                );
                id
            })
            .collect();
        for number in 0..jars / 2 {
            let day = 60 + u64::from(number) * 120 / u64::from((jars / 2).max(1));
            self.harvest(start + Days::new(day), number, &supplies, is_recent);
        }
    }

    /// A harvest, half of it dried, with the two jars that come of it.
    fn harvest(
        &mut self,
        at: DateTime<FixedOffset>,
        number: u32,
        supplies: &[SupplyId],
        is_recent: bool,
    ) {
        let (herb, part) = PLANTS[self.vary(8) as usize];
        let which = self.vary(24) as usize;
        let bed = self.beds[which];
        let fresh_g = 400.0 + self.vary(800) as f64;
        let id = HarvestId(self.id(at));
        let harvest = Harvest {
            code: self.code(id.0),
            herb: key(herb),
            part: part.into(),
            weighed: Weighed {
                gross_g: fresh_g + 120.0,
                tare_g: 120.0,
            },
            picked_at: at,
            time_from: TimeFrom::Clock,
            bed: Some(bed),
            stage: None,
            surface: Surface::Dry,
            note: None,
            photos: Vec::new(),
            place: None,
            look_alike_ruled_out: true,
        };
        self.deed(
            at,
            format!("Picked {fresh_g} g of {herb} {part}"),
            vec![recorded(&id, &harvest)],
        );
        let tray = self.tray(at, id, (fresh_g * 0.5).floor());
        let supply = supplies[number as usize % supplies.len()];
        let plant = |lot, state, mass_g: f64, moisture| Plant {
            lot: Some(lot),
            herb: key(herb),
            part: part.into(),
            state,
            mass_g,
            moisture_wet_percent: moisture,
        };
        let around = |value: f64| Interval {
            low: value - 4.0,
            value,
            high: value + 4.0,
        };
        let fresh = plant(Lot::Harvest(id), PlantState::Fresh, 100.0, around(78.0));
        self.jar(
            at + Duration::hours(2),
            "tincture-fresh",
            fresh,
            supply,
            is_recent,
        );
        let dried = plant(Lot::Tray(tray), PlantState::Dried, 40.0, around(10.0));
        self.jar(
            at + Days::new(8),
            "tincture-dried",
            dried,
            supply,
            is_recent,
        );
    }

    fn tray(&mut self, at: DateTime<FixedOffset>, harvest: HarvestId, fresh_g: f64) -> TrayId {
        let id = TrayId(self.id(at));
        let mut tray = Tray {
            code: self.code(id.0),
            name: "Upper tray".into(),
            harvest,
            fresh_mass_g: fresh_g,
            tare_g: 380.0,
            started_at: at,
            air: None,
            taken_down: None,
            sample: None,
            note: None,
        };
        self.deed(
            at,
            format!("Put {fresh_g} g on the rack"),
            vec![recorded(&id, &tray)],
        );
        for (days, share) in [(1, 0.7), (3, 0.4), (5, 0.26)] {
            let at = at + Days::new(days);
            let weighing = WeighingId(self.id(at));
            let weighed = Weighing {
                tray: id,
                at,
                gross_g: 380.0 + (fresh_g * share).round(),
                air: None,
                odd: false,
            };
            self.deed(
                at,
                "Weighed a tray".into(),
                vec![recorded(&weighing, &weighed)],
            );
        }
        let down = at + Days::new(7);
        tray.taken_down = Some(TakenDown {
            at: down,
            gross_g: 380.0 + (fresh_g * 0.24).round(),
        });
        self.deed(
            down,
            "Took a tray down".into(),
            vec![corrected(&id, &tray, &["taken_down"])],
        );
        id
    }

    fn jar(
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
                    Stock::Spirit {
                        strength_percent_vol: 95.0,
                    },
                    250.0,
                    203.0,
                    Some(supply),
                ),
                pour(
                    "Water",
                    Stock::Water,
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
            came_out_ml: 300.0,
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
            note: None,
        };
        self.deed(
            strained_at,
            format!("Strained 300 mL off {} ({})", jar.name, jar.code),
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

fn key(herb: &str) -> journal::HerbKey {
    herb.parse()
        .unwrap_or_else(|why| unreachable!("{herb:?} is a key: {why}"))
}

fn fields<N: Kept>(noun: &N) -> Fields {
    match serde_json::to_value(noun) {
        Ok(Value::Object(mut fields)) => {
            fields.retain(|_, value| !value.is_null());
            fields
        }
        other => unreachable!("a noun is a set of fields: {other:?}"),
    }
}

fn recorded<N: Kept>(id: &N::Id, noun: &N) -> Change {
    Change {
        noun: N::NOUN,
        row: text(id),
        act: Act::Record,
        fields: fields(noun),
    }
}

fn corrected<N: Kept>(id: &N::Id, noun: &N, changed: &[&str]) -> Change {
    let mut fields = fields(noun);
    fields.retain(|name, _| changed.contains(&name.as_str()));
    Change {
        noun: N::NOUN,
        row: text(id),
        act: Act::Correct,
        fields,
    }
}

fn text(id: &impl RowId) -> String {
    id.to_string()
}
