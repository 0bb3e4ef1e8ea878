//! A maker whose acts are written with the store.

use chrono::{DateTime, Duration, FixedOffset};
use journal::{
    Added, Bottle, BottleId, DeedId, DeviceId, Discard, DiscardId, End, EndKind, Harvest,
    HarvestId, How, Interval, Item, Jar, JarId, Lost, Lot, Plant, PlantState, Pour, Source,
    SteepDays, Straining, StrainingId, Supply, SupplyId, Surface, TakenDown, TimeFrom, Tray,
    TrayId, Use, UseId, Weighed, Weighing, WeighingId,
};
use physics::mixture::ph::PhReading;
use store::{Failure, Store, Writing};
use uuid::Uuid;

use super::act::Act;

/// A maker with a journal, who remembers every id that was ever made.
pub struct Maker {
    pub store: Store,
    pub now: DateTime<FixedOffset>,
    next: u128,
    pub deeds: Vec<DeedId>,
    pub(super) harvests: Vec<HarvestId>,
    pub(super) trays: Vec<TrayId>,
    weighings: Vec<WeighingId>,
    pub(super) supplies: Vec<SupplyId>,
    pub(super) jars: Vec<JarId>,
    pub(super) discards: Vec<DiscardId>,
    pub(super) strainings: Vec<StrainingId>,
    pub(super) bottles: Vec<BottleId>,
    pub(super) uses: Vec<UseId>,
}

/// The latest ones, so that a long life does not only meet lots that were used up long ago.
fn pick<T: Copy>(from: &[T], which: usize) -> Result<T, Failure> {
    if from.is_empty() {
        Err(Failure::Unchanged)
    } else {
        Ok(from[from.len() - 1 - which % from.len()])
    }
}

impl Maker {
    pub fn new() -> Self {
        Self {
            store: Store::in_memory(DeviceId(Uuid::from_u128(1))).unwrap(),
            now: DateTime::parse_from_rfc3339("2025-06-01T08:00:00+02:00").unwrap(),
            next: 1 << 64,
            deeds: Vec::new(),
            harvests: Vec::new(),
            trays: Vec::new(),
            weighings: Vec::new(),
            supplies: Vec::new(),
            jars: Vec::new(),
            discards: Vec::new(),
            strainings: Vec::new(),
            bottles: Vec::new(),
            uses: Vec::new(),
        }
    }

    pub fn uuid(&mut self) -> Uuid {
        self.next += 1;
        Uuid::from_u128(self.next)
    }

    fn perform(
        &mut self,
        body: impl FnOnce(&mut Writing<'_>) -> Result<(), Failure>,
    ) -> Result<(), Failure> {
        let deed = DeedId(self.uuid());
        self.store.perform(deed, self.now, |w| {
            body(w).map(|()| ("did something".into(), ()))
        })?;
        self.deeds.push(deed);
        Ok(())
    }

    pub fn act(&mut self, act: Act) -> Result<(), Failure> {
        self.now += Duration::minutes(7);
        let (now, id) = (self.now, self.uuid());
        match act {
            Act::Pick(grams) => {
                self.harvests.push(HarvestId(id));
                self.perform(|w| {
                    let code = w.free_code(id)?;
                    w.record(
                        &HarvestId(id),
                        &Harvest {
                            code,
                            herb: "peppermint".parse()?,
                            part: "leaf".into(),
                            weighed: Weighed {
                                gross_g: grams + 120.0,
                                tare_g: 120.0,
                            },
                            picked_at: now,
                            time_from: TimeFrom::Clock,
                            bed: None,
                            stage: None,
                            surface: Surface::Dry,
                            note: None,
                            photos: Vec::new(),
                            place: None,
                            look_alike_ruled_out: true,
                        },
                    )
                })
            }
            Act::Buy(size_ml) => {
                self.supplies.push(SupplyId(id));
                let supply = Supply {
                    name: "Grain spirit".into(),
                    item: Item::Spirit {
                        strength_percent_vol: 96.0,
                    },
                    size_ml,
                    price: None,
                    bought_on: None,
                    best_before: None,
                };
                self.perform(|w| w.record(&SupplyId(id), &supply))
            }
            Act::LayOut(n, fresh_mass_g) => {
                let harvest = pick(&self.harvests, n)?;
                self.trays.push(TrayId(id));
                self.perform(|w| {
                    let code = w.free_code(id)?;
                    let tray = Tray {
                        code,
                        name: "Upper tray".into(),
                        harvest,
                        fresh_mass_g,
                        tare_g: 5.0,
                        started_at: now,
                        air: None,
                        taken_down: None,
                        lost: None,
                        cooked: None,
                        sample: None,
                        note: None,
                    };
                    w.record(&TrayId(id), &tray)
                })
            }
            Act::Weigh(n, gross_g) => {
                let tray = pick(&self.trays, n)?;
                self.weighings.push(WeighingId(id));
                let weighing = Weighing {
                    tray,
                    at: now,
                    gross_g,
                    air: None,
                    odd: false,
                    snap_test: false,
                };
                self.perform(|w| w.record(&WeighingId(id), &weighing))
            }
            Act::TakeDown(n, gross_g) => {
                let id = pick(&self.trays, n)?;
                self.perform(|w| {
                    let mut tray: Tray = w.get(&id)?;
                    tray.taken_down = Some(TakenDown {
                        at: now,
                        gross_g,
                        snap_test: false,
                    });
                    w.correct(&id, &tray)
                })
            }
            Act::Lose(n) => {
                let id = pick(&self.trays, n)?;
                self.perform(|w| {
                    let mut tray: Tray = w.get(&id)?;
                    tray.lost = Some(Lost {
                        at: now,
                        reason: "mould".into(),
                    });
                    w.correct(&id, &tray)
                })
            }
            Act::Pour { lots, supply, ml } => self.pour(id, lots, supply, ml),
            Act::Discard(kind, n, amount) => {
                let from = match kind {
                    0 => Source::Harvest(pick(&self.harvests, n)?),
                    1 => Source::Tray(pick(&self.trays, n)?),
                    2 => Source::Jar(pick(&self.jars, n)?),
                    3 => Source::Bottle(pick(&self.bottles, n)?),
                    _ => Source::Supply(pick(&self.supplies, n)?),
                };
                self.discards.push(DiscardId(id));
                let discard = Discard {
                    from,
                    amount,
                    at: now,
                    reason: None,
                    used: false,
                };
                self.perform(|w| w.record(&DiscardId(id), &discard))
            }
            Act::Reweigh(n, grams) => {
                let id = pick(&self.harvests, n)?;
                self.perform(|w| {
                    let mut harvest: Harvest = w.get(&id)?;
                    harvest.weighed.gross_g = grams + harvest.weighed.tare_g;
                    w.correct(&id, &harvest)
                })
            }
            Act::Resize(n, fresh_mass_g) => {
                let id = pick(&self.trays, n)?;
                self.perform(|w| {
                    let mut tray: Tray = w.get(&id)?;
                    tray.fresh_mass_g = fresh_mass_g;
                    w.correct(&id, &tray)
                })
            }
            Act::StrikeWeighing(n) => {
                let id = pick(&self.weighings, n)?;
                self.perform(|w| w.strike::<Weighing>(&id))
            }
            Act::StrikeJar(n) => {
                let id = pick(&self.jars, n)?;
                self.perform(|w| w.strike::<Jar>(&id))
            }
            Act::TopUp(n, supply, ml) => {
                let id = pick(&self.jars, n)?;
                let supply = pick(&self.supplies, supply)?;
                self.perform(|w| {
                    let mut jar: Jar = w.get(&id)?;
                    let mut pour = jar.pours[0].clone();
                    (pour.ml, pour.g, pour.supply) = (ml, 0.8 * ml, Some(supply));
                    pour.added = Some(Added {
                        at: now,
                        note: None,
                    });
                    jar.pours.push(pour);
                    w.correct(&id, &jar)
                })
            }
            Act::Strain(n, came_out_ml) => {
                let jar = pick(&self.jars, n)?;
                self.strainings.push(StrainingId(id));
                let straining = Straining {
                    jar,
                    at: now,
                    how: How::Pressed,
                    came_out_ml,
                    came_out_g: None,
                    liquid_ml: Interval::exact(came_out_ml + 10.0),
                    dry_matter_g: Interval::exact(20.0),
                    // One at which acid does not protect, so that the shelf must hear of it.
                    ph: (n % 2 == 0).then(|| PhReading::new(4.8, None).unwrap()),
                    note: None,
                };
                self.perform(|w| w.record(&StrainingId(id), &straining))
            }
            Act::Fill(n, size_ml, count) => {
                let jar = pick(&self.jars, n)?;
                let ids: Vec<BottleId> = (0..count).map(|_| BottleId(self.uuid())).collect();
                self.bottles.extend(&ids);
                self.perform(|w| {
                    for id in &ids {
                        let code = w.free_code(id.0)?;
                        let bottle = Bottle {
                            code,
                            jar,
                            filled_at: now,
                            size_ml,
                            best_before: None,
                            check_on: None,
                            only_the_date_counts: false,
                            place: None,
                            note: None,
                            end: None,
                        };
                        w.record(id, &bottle)?;
                    }
                    Ok(())
                })
            }
            Act::Take(n, ml) => {
                let bottle = pick(&self.bottles, n)?;
                self.uses.push(UseId(id));
                let usage = Use {
                    bottle,
                    at: now,
                    ml,
                    note: None,
                };
                self.perform(|w| w.record(&UseId(id), &usage))
            }
            Act::Finish(n) => {
                let id = pick(&self.bottles, n)?;
                self.perform(|w| {
                    let mut bottle: Bottle = w.get(&id)?;
                    bottle.end = Some(End {
                        kind: EndKind::Finished,
                        at: now,
                        to: None,
                        reason: None,
                    });
                    w.correct(&id, &bottle)
                })
            }
            Act::Refill(n, size_ml) => {
                let id = pick(&self.bottles, n)?;
                self.perform(|w| {
                    let mut bottle: Bottle = w.get(&id)?;
                    bottle.size_ml = size_ml;
                    w.correct(&id, &bottle)
                })
            }
            Act::StrikeStraining(n) => {
                let id = pick(&self.strainings, n)?;
                self.perform(|w| w.strike::<Straining>(&id))
            }
            Act::StrikeBottle(n) => {
                let id = pick(&self.bottles, n)?;
                self.perform(|w| w.strike::<Bottle>(&id))
            }
            Act::Undo(n) => {
                let target = pick(&self.deeds, n)?;
                self.store
                    .undo(DeedId(id), now, target, |line| line.to_string())?;
                self.deeds.push(DeedId(id));
                Ok(())
            }
        }
    }

    fn pour(
        &mut self,
        id: Uuid,
        lots: Vec<(bool, usize, f64)>,
        supply: usize,
        ml: f64,
    ) -> Result<(), Failure> {
        let mut plants = Vec::new();
        for (fresh, n, mass_g) in lots {
            let lot = if fresh {
                Lot::Harvest(pick(&self.harvests, n)?)
            } else {
                Lot::Tray(pick(&self.trays, n)?)
            };
            plants.push(Plant {
                lot: Some(lot),
                herb: "peppermint".parse()?,
                part: "leaf".into(),
                state: match lot {
                    Lot::Harvest(_) => PlantState::Fresh,
                    Lot::Tray(_) => PlantState::Dried,
                },
                mass_g,
                moisture_wet_percent: Interval::exact(80.0),
            });
        }
        let pours = vec![Pour {
            item: Item::Spirit {
                strength_percent_vol: 96.0,
            },
            name: "Grain spirit".into(),
            ml,
            g: 0.8 * ml,
            supply: pick(&self.supplies, supply).ok(),
            added: None,
        }];
        self.jars.push(JarId(id));
        let now = self.now;
        self.perform(|w| {
            let code = w.free_code(id)?;
            let jar = Jar {
                code,
                name: "Mint in spirit".into(),
                preparation: "tincture".into(),
                poured_at: now,
                pours,
                plants,
                jar_ml: None,
                steep_days: SteepDays { low: 28, high: 42 },
                strength_percent_vol: Interval::exact(60.0),
                glycerol_percent_mass: Interval::exact(0.0),
                shake: true,
                place: None,
                note: None,
                failed: None,
                marc_of: None,
            };
            w.record(&JarId(id), &jar)
        })
    }
}
