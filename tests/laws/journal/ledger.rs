//! Whatever a maker does, and takes back: nothing is given that never came in.

use std::collections::BTreeMap;

use chrono::{DateTime, Duration, FixedOffset};
use journal::{
    Added, Amount, Bottle, BottleId, DeedId, DeviceId, Discard, DiscardId, Draw, End, EndKind,
    Harvest, HarvestId, How, Interval, Jar, JarId, Kept, Lot, Plant, Pour, Source, SteepDays,
    Stock, Straining, StrainingId, Supply, SupplyId, Surface, TakenDown, TimeFrom, Tray, TrayId,
    Use, UseId, Weighed, Weighing, WeighingId,
};
use proptest::prelude::*;
use store::{Failure, Store, Writing};
use uuid::Uuid;

#[derive(Debug, Clone)]
enum Act {
    Pick(f64),
    Buy(f64),
    LayOut(usize, f64),
    Weigh(usize, f64),
    TakeDown(usize, f64),
    Pour {
        lots: Vec<(bool, usize, f64)>,
        supply: usize,
        ml: f64,
    },
    Discard(u8, usize, f64),
    Reweigh(usize, f64),
    Resize(usize, f64),
    StrikeWeighing(usize),
    StrikeJar(usize),
    TopUp(usize, usize, f64),
    Strain(usize, f64),
    Fill(usize, f64, usize),
    Take(usize, f64),
    Finish(usize),
    Refill(usize, f64),
    StrikeStraining(usize),
    StrikeBottle(usize),
    Undo(usize),
}

fn act() -> impl Strategy<Value = Act> {
    // Tenths of a gram, so that whole lots are used up now and then.
    let grams = || (1..3000_u32).prop_map(|tenths| f64::from(tenths) / 10.0);
    let which = || 0..12_usize;
    prop_oneof![
        2 => grams().prop_map(|g| Act::Pick(3.0 * g)),
        1 => grams().prop_map(Act::Buy),
        3 => (which(), grams()).prop_map(|(n, g)| Act::LayOut(n, g)),
        2 => (which(), grams()).prop_map(|(n, g)| Act::Weigh(n, g)),
        3 => (which(), grams()).prop_map(|(n, g)| Act::TakeDown(n, g)),
        4 => (prop::collection::vec((any::<bool>(), which(), grams()), 0..3), which(), grams())
            .prop_map(|(lots, supply, ml)| Act::Pour { lots, supply, ml }),
        2 => (which(), which(), grams()).prop_map(|(j, s, g)| Act::TopUp(j, s, g / 10.0)),
        4 => (which(), grams()).prop_map(|(n, g)| Act::Strain(n, g)),
        5 => (which(), grams(), 1..4_usize).prop_map(|(n, g, m)| Act::Fill(n, g / 3.0, m)),
        4 => (which(), grams()).prop_map(|(n, g)| Act::Take(n, g / 10.0)),
        1 => which().prop_map(Act::Finish),
        1 => (which(), grams()).prop_map(|(n, g)| Act::Refill(n, g / 3.0)),
        1 => which().prop_map(Act::StrikeStraining),
        1 => which().prop_map(Act::StrikeBottle),
        2 => (0..5_u8, which(), grams()).prop_map(|(k, n, g)| Act::Discard(k, n, g)),
        2 => (which(), grams()).prop_map(|(n, g)| Act::Reweigh(n, g)),
        1 => (which(), grams()).prop_map(|(n, g)| Act::Resize(n, g)),
        1 => which().prop_map(Act::StrikeWeighing),
        1 => which().prop_map(Act::StrikeJar),
        6 => (0..60_usize).prop_map(Act::Undo),
    ]
}

/// A maker with a journal, who remembers every id that was ever made.
struct Maker {
    store: Store,
    now: DateTime<FixedOffset>,
    next: u128,
    deeds: Vec<DeedId>,
    harvests: Vec<HarvestId>,
    trays: Vec<TrayId>,
    weighings: Vec<WeighingId>,
    supplies: Vec<SupplyId>,
    jars: Vec<JarId>,
    discards: Vec<DiscardId>,
    strainings: Vec<StrainingId>,
    bottles: Vec<BottleId>,
    uses: Vec<UseId>,
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
    fn new() -> Self {
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

    fn uuid(&mut self) -> Uuid {
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

    fn act(&mut self, act: Act) -> Result<(), Failure> {
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
                    item: Stock::Spirit {
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
                };
                self.perform(|w| w.record(&WeighingId(id), &weighing))
            }
            Act::TakeDown(n, gross_g) => {
                let id = pick(&self.trays, n)?;
                self.perform(|w| {
                    let mut tray: Tray = w.get(&id)?;
                    tray.taken_down = Some(TakenDown { at: now, gross_g });
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
                self.store.undo(DeedId(id), now, target)?;
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
                state: lot.state(),
                mass_g,
                moisture_wet_percent: Interval::exact(80.0),
            });
        }
        let pours = vec![Pour {
            item: Stock::Spirit {
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

    /// How far below nothing a lot may be: by the reading of the jug, 2 % of what came out of a jar.
    fn allowed(&self, source: Source) -> i64 {
        let Source::Jar(jar) = source else { return 0 };
        let strained = self.store.read(|r| r.strainings(&jar)).unwrap();
        let came_out: Amount = strained.iter().map(|(_, it)| it.out()).sum();
        (came_out.get() * 20.0).round() as i64
    }

    /// What is left of everything, added up from the nouns alone in thousandths.
    fn added_up(&self) -> BTreeMap<Source, i64> {
        let thousandths = |units: f64| (units * 1000.0).round() as i64;
        let mut left = BTreeMap::new();
        let mut draws: Vec<Draw> = Vec::new();
        self.store
            .read(|r| {
                for id in &self.harvests {
                    if let Some(harvest) = r.find::<Harvest>(id)? {
                        let net = harvest.weighed.gross_g - harvest.weighed.tare_g;
                        left.insert(Source::Harvest(*id), thousandths(net));
                    }
                }
                for id in &self.supplies {
                    if let Some(supply) = r.find::<Supply>(id)? {
                        left.insert(Source::Supply(*id), thousandths(supply.size_ml));
                    }
                }
                for id in &self.trays {
                    if let Some(tray) = r.find::<Tray>(id)? {
                        let net = tray.taken_down.map_or(0.0, |end| end.gross_g - tray.tare_g);
                        left.insert(Source::Tray(*id), thousandths(net));
                        draws.extend(tray.draws());
                    }
                }
                for id in &self.jars {
                    if let Some(jar) = r.find::<Jar>(id)? {
                        left.insert(Source::Jar(*id), 0);
                        draws.extend(jar.draws());
                    }
                }
                for id in &self.strainings {
                    if let Some(straining) = r.find::<Straining>(id)? {
                        *left
                            .get_mut(&Source::Jar(straining.jar))
                            .expect("what is strained exists") +=
                            thousandths(straining.came_out_ml);
                    }
                }
                for id in &self.bottles {
                    if let Some(bottle) = r.find::<Bottle>(id)? {
                        left.insert(Source::Bottle(*id), thousandths(bottle.size_ml));
                        draws.extend(bottle.draws());
                    }
                }
                for id in &self.uses {
                    draws.extend(r.find::<Use>(id)?.map_or_else(Vec::new, |it| it.draws()));
                }
                for id in &self.discards {
                    draws.extend(
                        r.find::<Discard>(id)?
                            .map_or_else(Vec::new, |it| it.draws()),
                    );
                }
                Ok::<_, Failure>(())
            })
            .unwrap();
        for draw in draws {
            *left.get_mut(&draw.from).expect("what is drawn from exists") -=
                draw.amount.thousandths();
        }
        left
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn no_lot_ever_gives_more_than_came_in(acts in prop::collection::vec(act(), 1..90)) {
        let mut maker = Maker::new();
        let mut performed = 0;
        for act in acts {
            let before = maker.store.tables().unwrap();
            match maker.act(act.clone()) {
                Ok(()) => performed += 1,
                Err(failure) => {
                    let sentence = failure.to_string();
                    prop_assert!(sentence.ends_with('.'), "{act:?} failed with {sentence:?}");
                    prop_assert!(!matches!(failure, Failure::Storage(_) | Failure::Damaged(_)), "{act:?}: {sentence}");
                    prop_assert_eq!(maker.store.tables().unwrap(), before, "a refused {:?} left something", act);
                }
            }
            for (source, left) in maker.added_up() {
                prop_assert!(left >= -maker.allowed(source), "{source:?} is at {left} after {act:?}");
                let told = maker.store.read(|r| r.left(source)).unwrap();
                prop_assert_eq!(told.thousandths(), left, "{:?}", source);
            }
        }
        prop_assert_eq!(maker.store.audit().unwrap(), Vec::<String>::new());
        let incremental = maker.store.tables().unwrap();
        maker.store.rebuild().unwrap();
        prop_assert_eq!(maker.store.tables().unwrap(), incremental);
        let mut deeds = Vec::new();
        maker.store.each_deed(|deed| { deeds.push(deed); Ok(()) }).unwrap();
        prop_assert_eq!(deeds.len(), performed);
    }

    #[test]
    fn taking_everything_back_from_the_last_leaves_an_empty_journal(
        acts in prop::collection::vec(act(), 1..40),
    ) {
        let mut maker = Maker::new();
        let empty = maker.store.tables().unwrap();
        for act in acts.into_iter().filter(|act| !matches!(act, Act::Undo(_))) {
            let _ = maker.act(act);
        }
        let full = maker.store.tables().unwrap();
        let deeds: Vec<DeedId> = maker.deeds.clone();
        let mut undoing = Vec::new();
        for deed in deeds.iter().rev() {
            let id = DeedId(maker.uuid());
            let undone = maker.store.undo(id, maker.now, *deed);
            prop_assert!(undone.is_ok(), "nothing rests on the last deed that counts: {undone:?}");
            undoing.push(id);
        }
        prop_assert_eq!(maker.store.tables().unwrap(), empty);
        for deed in undoing.iter().rev() {
            let id = DeedId(maker.uuid());
            let done_again = maker.store.undo(id, maker.now, *deed);
            prop_assert!(done_again.is_ok(), "{done_again:?}");
        }
        prop_assert_eq!(maker.store.tables().unwrap(), full);
    }
}

#[test]
fn ten_thousand_acts_with_undo_leave_a_ledger_that_balances() {
    use proptest::strategy::ValueTree;
    use proptest::test_runner::{Config, RngAlgorithm, TestRng, TestRunner};
    let rng = TestRng::deterministic_rng(RngAlgorithm::ChaCha);
    let mut runner = TestRunner::new_with_rng(Config::default(), rng);
    let mut maker = Maker::new();
    let acts = act();
    let (mut performed, mut refused) = (0_u32, 0_u32);
    while performed < 10_000 {
        let act = acts.new_tree(&mut runner).unwrap().current();
        if maker.act(act).is_err() {
            refused += 1;
            assert!(refused < 40_000, "after {performed} acts all is refused");
            continue;
        }
        performed += 1;
        if performed % 2000 == 0 {
            for (source, left) in maker.added_up() {
                assert!(left >= -maker.allowed(source), "{source:?} is at {left}");
                let told = maker.store.read(|r| r.left(source)).unwrap();
                assert_eq!(
                    told.thousandths(),
                    left,
                    "{source:?} after {performed} acts"
                );
            }
        }
    }
    assert_eq!(maker.store.audit().unwrap(), Vec::<String>::new());
    let tables = maker.store.tables().unwrap();
    maker.store.rebuild().unwrap();
    assert_eq!(maker.store.tables().unwrap(), tables);
}
