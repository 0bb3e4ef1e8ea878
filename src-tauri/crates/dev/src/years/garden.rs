//! What is picked, photographed and dried.

use chrono::{DateTime, Days, Duration, FixedOffset};
use journal::{
    Discard, DiscardId, Harvest, HarvestId, Interval, Lot, Photo, PhotoHash, Plant, PlantState,
    Source, SupplyId, Surface, TakenDown, TimeFrom, Tray, TrayId, Weighed, Weighing, WeighingId,
};

use super::{Garden, corrected, key, recorded};

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
const WEIGHINGS: u32 = 10;
const DRYING_DAYS: u64 = 7;

impl Garden {
    /// A harvest on its tray. Of every five one gives a jar fresh and one gives a jar dried.
    pub(super) fn harvest(
        &mut self,
        at: DateTime<FixedOffset>,
        number: u32,
        supplies: &[SupplyId],
        is_recent: bool,
    ) {
        let (herb, part) = PLANTS[self.vary(8) as usize];
        let which = self.vary(24) as usize;
        let bed = self.beds[which];
        let at = at + Duration::minutes(self.vary(600) as i64);
        let fresh_g = 400.0 + self.vary(800) as f64;
        let photos = vec![self.photo(at), self.photo(at)];
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
            photos,
            place: None,
            look_alike_ruled_out: true,
        };
        self.deed(
            at,
            format!("Picked {fresh_g} g of {herb} {part}"),
            vec![recorded(&id, &harvest)],
        );
        let gives = number % 5;
        let to_jar_g = if gives == 0 { 100.0 } else { 0.0 };
        let tray = self.tray(at, id, fresh_g - to_jar_g);
        let supply = supplies[number as usize % supplies.len()];
        let plant = |lot, state, mass_g: f64, water: f64| Plant {
            lot: Some(lot),
            herb: key(herb),
            part: part.into(),
            state,
            mass_g,
            moisture_wet_percent: Interval {
                low: water - 4.0,
                value: water,
                high: water + 4.0,
            },
        };
        let down = at + Days::new(DRYING_DAYS);
        match gives {
            0 => {
                let fresh = plant(Lot::Harvest(id), PlantState::Fresh, 100.0, 78.0);
                let poured_at = at + Duration::hours(2);
                self.jar(poured_at, "tincture-fresh", fresh, supply, is_recent);
            }
            1 => {
                let dried = plant(Lot::Tray(tray), PlantState::Dried, 40.0, 10.0);
                let poured_at = down + Duration::hours(2);
                self.jar(poured_at, "tincture-dried", dried, supply, is_recent);
            }
            _ => self.drunk(down, tray, (fresh_g * 0.24).round()),
        }
    }

    fn photo(&mut self, at: DateTime<FixedOffset>) -> PhotoHash {
        let digits: String = (0..4).map(|_| format!("{:016x}", self.bits())).collect();
        let hash: PhotoHash = digits
            .parse()
            .unwrap_or_else(|why| unreachable!("{digits} is a hash: {why}"));
        let name = format!("IMG_{:06}.jpg", self.count % 1_000_000);
        let photo = Photo {
            name: Some(name.clone()),
            bytes: 2_800_000 + self.vary(1_200_000),
            width: Some(4000),
            height: Some(3000),
            taken_at: Some(at),
            zone_known: false,
            place: None,
            orientation: None,
            has_preview: true,
            note: None,
        };
        self.deed(
            at,
            format!("Kept the photo {name}"),
            vec![recorded(&hash, &photo)],
        );
        hash
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
            lost: None,
            cooked: None,
            sample: None,
            note: None,
        };
        self.deed(
            at,
            format!("Put {fresh_g} g on the rack"),
            vec![recorded(&id, &tray)],
        );
        let mut water = 0.76;
        for number in 1..=WEIGHINGS {
            // A third of the water that is left goes from one weigh-in to the next.
            water *= 0.66 + self.vary(5) as f64 / 100.0;
            let at = at + Duration::hours(16 * i64::from(number));
            let weighing = WeighingId(self.id(at));
            let weighed = Weighing {
                tray: id,
                at,
                gross_g: 380.0 + (fresh_g * (0.24 + water)).round(),
                air: None,
                odd: false,
                snap_test: false,
            };
            self.deed(
                at,
                "Weighed a tray".into(),
                vec![recorded(&weighing, &weighed)],
            );
        }
        let down = at + Days::new(DRYING_DAYS);
        tray.taken_down = Some(TakenDown {
            at: down,
            gross_g: 380.0 + (fresh_g * 0.24).round(),
            snap_test: false,
        });
        self.deed(
            down,
            "Took a tray down".into(),
            vec![corrected(&id, &tray, &["taken_down"])],
        );
        id
    }

    /// Most of what is dried is drunk as tea over the year.
    fn drunk(&mut self, down: DateTime<FixedOffset>, tray: TrayId, dried_g: f64) {
        let at = down + Days::new(30 + self.vary(300));
        let id = DiscardId(self.id(at));
        let discard = Discard {
            from: Source::Tray(tray),
            amount: dried_g,
            at,
            reason: None,
            used: true,
        };
        self.deed(
            at,
            format!("Used {dried_g} g of a dried lot"),
            vec![recorded(&id, &discard)],
        );
    }
}
