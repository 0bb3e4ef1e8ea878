//! What is left of everything, counted without the ledger.

use std::collections::BTreeMap;

use journal::{
    Amount, Bottle, Discard, Draw, Harvest, Jar, Kept, Source, Straining, Supply, Tray, Use,
};
use store::Failure;

use super::maker::Maker;

impl Maker {
    /// How far below nothing a lot may be: by the reading of the jug, 2 % of what came out of a jar.
    pub fn allowed(&self, source: Source) -> i64 {
        let Source::Jar(jar) = source else { return 0 };
        let strained = self.store.read(|r| r.strainings(&jar)).unwrap();
        let came_out: Amount = strained.iter().map(|(_, it)| it.out()).sum();
        (came_out.get() * 20.0).round() as i64
    }

    /// What is left of everything, added up from the nouns alone in thousandths.
    pub fn added_up(&self) -> BTreeMap<Source, i64> {
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
                        let end = tray.taken_down.filter(|_| tray.lost.is_none());
                        let net = end.map_or(0.0, |end| end.gross_g - tray.tare_g);
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
