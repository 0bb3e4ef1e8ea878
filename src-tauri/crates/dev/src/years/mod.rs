//! Many years of a large herb garden, for measuring: the same journal every time, made of deeds as
//! the commands would have written them. The originals of its photos are not made: lists name them
//! and never read them.

mod garden;
mod pantry;

use std::collections::BTreeSet;
use std::path::Path;

use chrono::{DateTime, Days, FixedOffset};
use journal::{
    Act, Bed, BedId, Change, Deed, DeedId, DeviceId, Fields, HybridTime, Item, Kept, LotCode,
    RowId, Setting, Supply, SupplyId,
};
use serde_json::Value;
use store::Store;
use uuid::Uuid;

/// How large the garden is.
#[derive(Debug, Clone, Copy)]
pub struct Size {
    /// How many years.
    pub years: u32,
    /// How many jars are poured in each, an even number. For every two of them the garden gives five
    /// harvests, each with two photos and a tray that is weighed ten times.
    pub jars_a_year: u32,
}

/// The morning on which the journal ends, in the middle of its last season.
pub const LAST: &str = "2026-08-01T09:00:00+02:00";

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
    let last = DateTime::parse_from_rfc3339(LAST).unwrap_or_default();
    let mut garden = Garden::new(device, last);
    let mut written = 0;
    for left in (1..=size.years).rev() {
        garden.year(
            last - Days::new(u64::from(left) * 365),
            left <= 2,
            size.jars_a_year,
        );
        let deeds = std::mem::take(&mut garden.deeds);
        written += deeds.len();
        store.absorb(deeds).map_err(|why| why.to_string())?;
    }
    Ok(written)
}

struct Garden {
    device: DeviceId,
    last: DateTime<FixedOffset>,
    deeds: Vec<Deed>,
    codes: BTreeSet<LotCode>,
    beds: Vec<BedId>,
    /// Counts ids and deeds, and seeds what varies.
    count: u64,
}

impl Garden {
    fn new(device: DeviceId, last: DateTime<FixedOffset>) -> Self {
        Self {
            device,
            last,
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

    /// 64 bits that differ from call to call (SplitMix64).
    fn bits(&mut self) -> u64 {
        self.count += 1;
        let mut z = self.count.wrapping_mul(0x9e37_79b9_7f4a_7c15);
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// A whole number below `below`.
    fn vary(&mut self, below: u64) -> u64 {
        self.bits() % below
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

    /// What would come after the last morning has not happened yet.
    fn deed(&mut self, at: DateTime<FixedOffset>, text: String, changes: Vec<Change>) {
        if at > self.last {
            return;
        }
        let id = DeedId(self.id(at));
        let counter = u32::try_from(self.deeds.len()).unwrap_or(u32::MAX);
        self.deeds.push(Deed {
            id,
            at: HybridTime {
                milliseconds: at.timestamp_millis(),
                counter,
            },
            device: self.device,
            text,
            message: None,
            revokes: None,
            changes,
        });
    }

    /// A year from one August to the next: what is picked until the middle of October, and again
    /// from April on.
    fn year(&mut self, start: DateTime<FixedOffset>, is_recent: bool, jars: u32) {
        if self.beds.is_empty() {
            // Whoever kept the book for years is not met by its first words.
            let read = Setting {
                cautions_seen: true,
                ..Setting::default()
            };
            let change = recorded(&self.device, &read);
            self.deed(start, "Read the cautions".into(), vec![change]);
            self.lay_out(start);
        }
        let supplies = self.buy(start, jars);
        let harvests = jars * 5 / 2;
        for number in 0..harvests {
            let season = 180 * u64::from(number) / u64::from(harvests.max(1));
            let day = if season < 75 { season } else { season + 184 };
            let at = start + Days::new(day);
            self.harvest(at, number, &supplies, is_recent);
        }
    }

    fn lay_out(&mut self, at: DateTime<FixedOffset>) {
        for name in BEDS {
            let id = BedId(self.id(at));
            let bed = Bed {
                name: name.into(),
                wild: false,
                area_m2: Some(4.0),
                note: None,
            };
            self.deed(
                at,
                format!("Added the bed {name}"),
                vec![recorded(&id, &bed)],
            );
            self.beds.push(id);
        }
    }

    fn buy(&mut self, at: DateTime<FixedOffset>, jars: u32) -> Vec<SupplyId> {
        let one = |number: u32| {
            let id = SupplyId(self.id(at));
            let supply = Supply {
                name: format!("Grain spirit {}-{number}", at.format("%Y")),
                item: Item::Spirit {
                    strength_percent_vol: 95.0,
                },
                size_ml: 1000.0 * f64::from(jars),
                price: None,
                bought_on: Some(at.date_naive()),
                best_before: None,
            };
            self.deed(
                at,
                format!("Added {} to the shelf", supply.name),
                vec![recorded(&id, &supply)],
            );
            id
        };
        (0..20).map(one).collect()
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
