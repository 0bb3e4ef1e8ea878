//! The shapes that cross the wire, until the generated bindings take their place.

export type Interval = { low: number; value: number; high: number };
export type Status = "confirmed" | "partly confirmed" | "memory" | "practice" | "proposal" | "computed" | "own";
export type Note = { code: string; text: string; source: string | null; status: Status };
export type Noun = "herb" | "bed" | "harvest" | "photo" | "tray" | "weighing" | "supply" | "jar" | "setting";
export type Changed = { deed: string; changed: Noun[] };
export type PlantState = "fresh" | "dried";
export type Lot = { kind: "harvest" | "tray"; id: string };
export type Place = { lat: number; lon: number };

export type HerbLine = {
  key: string;
  common: string;
  latin: string | null;
  parts: string[];
  own: boolean;
  last_picked_at: string | null;
  look_alike: boolean;
};
export type LookAlike = { name: string; why: string; tell_apart: string; source: string | null; status: Status };
export type WaterRow = {
  part: string;
  water_wet_percent: Interval;
  ratio_fresh_per_dry: Interval;
  source: string;
  status: Status;
};
export type OwnRatio = {
  harvest: string;
  picked_at: string;
  bed: string | null;
  part: string;
  fresh_mass_g: number;
  dry_mass_g: number;
  ratio_fresh_per_dry: number;
};
export type HerbPage = {
  herb: HerbLine;
  facts: { label: string; value: string; source: string | null; status: Status }[];
  cautions: Note[];
  look_alikes: LookAlike[];
  water: WaterRow[];
  own_ratios: OwnRatio[];
};

export type Bed = { id: string; name: string; wild: boolean; area_m2: number | null; note: string | null };

export type Surface = "dry" | "dew" | "rain" | "washed";
export type HarvestState = "fresh" | "on the rack" | "dry" | "used up";
export type Estimate = {
  dry_mass_g: Interval;
  water_wet_percent: Interval;
  basis: "table" | "own batches";
  reason: string;
  status: Status;
  notes: Note[];
};
export type HarvestCard = {
  id: string;
  code: string;
  herb: string;
  common: string;
  latin: string | null;
  part: string;
  picked_at: string;
  fresh_mass_g: number;
  bed: Bed | null;
  photo: string | null;
  state: HarvestState;
  fresh_left_g: number;
};
export type PhotoCard = {
  hash: string;
  name: string | null;
  width: number | null;
  height: number | null;
  has_preview: boolean;
  taken_at: string | null;
  zone_known: boolean;
  place: Place | null;
  bytes: number;
  note: string | null;
};
export type PhotoReply = { photo: PhotoCard; duplicate: boolean; used_in: string[] };
export type HarvestPage = HarvestCard & {
  gross_g: number;
  tare_g: number;
  stage: string | null;
  surface: Surface;
  note: string | null;
  place: Place | null;
  time_from: "typed" | "photo" | "clock";
  photos: PhotoCard[];
  estimate: Estimate;
  trays: TrayCard[];
  jars: { jar: string; code: string; name: string; mass_g: number; state: PlantState }[];
  binned: { id: string; mass_g: number; reason: string | null; at: string }[];
};
export type HarvestRecord = {
  herb: string;
  part: string;
  gross_g: number;
  tare_g?: number;
  picked_at?: string;
  bed?: string;
  bed_name?: string;
  stage?: string;
  surface: Surface;
  note?: string;
  photos?: string[];
  look_alike_ruled_out?: boolean;
};

export type Air = { temperature_c: number; relative_humidity_percent: number };
export type TrayCard = {
  id: string;
  code: string;
  name: string;
  harvest: string;
  herb: string;
  common: string;
  part: string;
  photo: string | null;
  started_at: string;
  days: number;
  fresh_mass_g: number;
  tare_g: number;
  mass_now_g: number;
  last_weighed_at: string | null;
  state: "drying" | "dry";
  taken_down_at: string | null;
  dried_left_g: number | null;
  moisture_now_wet_percent: Interval | null;
  target_mass_g: Interval;
  stop_gross_g: Interval;
  hours_left: Interval | null;
  is_dry: boolean;
  forgotten: boolean;
  says: string;
};
export type Weighing = { id: string; at: string; hours: number; gross_g: number; mass_g: number; odd: boolean };
export type CurvePoint = { hours: number; low_g: number; value_g: number; high_g: number };
export type TrayPage = TrayCard & {
  dry_matter_g: Interval;
  basis: string;
  notes: Note[];
  weighings: Weighing[];
  curve: CurvePoint[];
  note: string | null;
  sample: { fresh_g: number; dry_g: number } | null;
  air_limit_wet_percent: Interval | null;
};

export type StockKind =
  "water" | "spirit" | "glycerin" | "vinegar" | "wine" | "sugar" | "syrup" | "honey" | "juice" | "oil";
export type StockItem = {
  kind: StockKind;
  strength_percent_vol?: number;
  purity_percent_mass?: number;
  acidity_g_per_100ml?: number;
  sugar_g_per_l?: number;
  sugar_percent_mass?: number;
  water_percent_mass?: number;
  oil?: string;
  available_ml?: number;
  exactly_ml?: number;
  supply?: string;
};
export type Supply = {
  id: string;
  name: string;
  item: StockItem;
  size_ml: number;
  left_ml: number;
  price: number | null;
  currency: string | null;
  bought_on: string | null;
  best_before: string | null;
};
export type SupplyAdd = {
  name: string;
  item: StockItem;
  size_ml: number;
  price?: number;
  currency?: string;
  bought_on?: string;
  best_before?: string;
};

export type LotLine = {
  lot: Lot;
  code: string;
  herb: string;
  common: string;
  part: string;
  state: PlantState;
  left_g: number;
  moisture_wet_percent: Interval;
  picked_at: string;
  bed: string | null;
  photo: string | null;
};
export type PreparationLine = {
  key: string;
  name: string;
  fresh: boolean;
  dried: boolean;
  liquids: string[];
  summary: string;
};
export type Plant = {
  lot?: Lot;
  herb: string;
  part: string;
  state: PlantState;
  mass_g: number;
  moisture_wet_percent?: Interval;
};
export type Composition = {
  preparation: string;
  plants: Plant[];
  stock: StockItem[];
  ratio_ml_per_g?: number;
  jar_ml?: number;
  strength_percent_vol?: number;
  glycerin_percent_vol?: number;
  fortify_percent_vol?: number;
  temperature_c?: number;
};
export type Control = {
  value: number;
  low: number;
  high: number;
  step: number;
  usual: number;
  because: string;
  status: Status;
};
export type ControlName =
  "ratio_ml_per_g" | "strength_percent_vol" | "glycerin_percent_vol" | "fortify_percent_vol";
export type Liquid = {
  mass_g: Interval;
  volume_ml: Interval;
  density_kg_m3: Interval;
  contraction_ml: Interval;
  strength_percent_vol: Interval;
  us_proof: Interval;
  ethanol_percent_mass: Interval;
  ethanol_g: Interval;
  glycerol_percent_mass: Interval;
  glycerol_percent_vol: Interval;
  sugar_percent_mass: Interval;
  acidity_g_per_100ml: Interval;
  acid_ph: Interval | null;
  water_activity: { highest: Interval; by_ross: Interval; by_norrish: Interval };
};
export type Pour = { kind: StockKind; name: string; ml: number; g: number; supply: string | null };
export type Verdict = "keeps" | "keeps cold" | "use now" | "do not make";
export type Gate = {
  gate: string;
  limit: number;
  predicted: Interval;
  unit: string;
  margin: number;
  decided: boolean;
  source: string | null;
  status: Status;
};
export type Keeping = { verdict: Verdict; text: string; gates: Gate[] };
export type Proposal = {
  controls: { ratio_ml_per_g: Control } & Record<Exclude<ControlName, "ratio_ml_per_g">, Control | null>;
  pours: Pour[];
  poured_ml: number;
  plants: (Plant & { moisture_wet_percent: Interval; basis: string; common: string })[];
  liquid: Liquid;
  reached: boolean;
  short_of: { target: string; wanted: number; got: number }[];
  would_help: Note[];
  keeping: Keeping;
  jar: { needed_ml: Interval; jar_ml: number | null; fits: boolean | null; largest_mass_g: number | null };
  steep_days: { low: number; high: number };
  cautions: Note[];
  reasons: Note[];
};
export type JarState = "steeping" | "due" | "strained" | "failed";
export type JarCard = {
  id: string;
  code: string;
  name: string;
  preparation: string;
  preparation_name: string;
  herbs: string[];
  poured_at: string;
  day: number;
  due_from: string;
  due_to: string;
  state: JarState;
  strength_percent_vol: Interval;
  glycerol_percent_mass: Interval;
  poured_ml: number;
  place: string | null;
};
export type JarPlant = Plant & {
  common: string;
  code: string | null;
  harvest: string | null;
  bed: string | null;
  picked_at: string | null;
};
export type JarPage = JarCard & {
  pours: Pour[];
  plants: JarPlant[];
  ratio_ml_per_g: number;
  liquid: Liquid;
  keeping: Keeping;
  cautions: Note[];
  reasons: Note[];
  steps: { title: string; text: string; source: string | null; status: Status }[];
  note: string | null;
};

export type Deed = { deed: string; at: string; text: string; undone: boolean };
export type Settings = { units: "metric" | "us"; scheme: "system" | "light" | "dark"; cautions_seen: boolean };
export type About = {
  harvests: number;
  trays: number;
  jars: number;
  photos: number;
  demo: boolean;
  version: string;
  cautions: Note[];
};

type Nothing = Record<string, never>;

/** Every command by its name: what it is asked and what it replies. */
export type Commands = {
  "herb.list": { request: Nothing; reply: { herbs: HerbLine[] } };
  "herb.show": { request: { key: string }; reply: HerbPage };
  "herb.add": {
    request: { common: string; latin?: string; parts: string[]; note?: string };
    reply: Changed & { herb: HerbLine };
  };
  "herb.correct": {
    request: { key: string; common?: string; latin?: string; parts?: string[]; note?: string };
    reply: Changed & { herb: HerbLine };
  };
  "bed.list": { request: Nothing; reply: { beds: Bed[] } };
  "bed.add": {
    request: { name: string; wild?: boolean; area_m2?: number; note?: string };
    reply: Changed & { bed: Bed };
  };
  "bed.correct": {
    request: { id: string; name?: string; wild?: boolean; area_m2?: number; note?: string };
    reply: Changed & { bed: Bed };
  };
  "harvest.estimate": {
    request: { herb: string; part: string; fresh_mass_g: number; surface_wet?: boolean };
    reply: Estimate;
  };
  "harvest.record": { request: HarvestRecord; reply: Changed & { harvest: HarvestPage } };
  "harvest.correct": {
    request: { id: string } & Partial<HarvestRecord>;
    reply: Changed & { harvest: HarvestPage };
  };
  "harvest.list": {
    request: { before?: string; limit?: number; herb?: string; bed?: string };
    reply: { harvests: HarvestCard[]; more: boolean };
  };
  "harvest.show": { request: { id: string }; reply: { harvest: HarvestPage } };
  "harvest.bin": {
    request: { id: string; mass_g: number; reason?: string };
    reply: Changed & { harvest: HarvestPage };
  };
  "tray.start": {
    request: { harvest: string; mass_g: number; name?: string; tare_g?: number; started_at?: string; air?: Air };
    reply: Changed & { tray: TrayPage };
  };
  "tray.weigh": {
    request: { tray: string; gross_g: number; at?: string; air?: Air; confirm_odd?: boolean };
    reply: Changed & { tray: TrayPage };
  };
  "tray.take_down": {
    request: { tray: string; gross_g?: number; at?: string };
    reply: Changed & { tray: TrayPage };
  };
  "tray.correct": {
    request: { tray: string; name?: string; tare_g?: number; note?: string };
    reply: Changed & { tray: TrayPage };
  };
  "weighing.correct": {
    request: { id: string; gross_g?: number; at?: string };
    reply: Changed & { tray: TrayPage };
  };
  "weighing.strike": { request: { id: string }; reply: Changed & { tray: TrayPage } };
  "tray.sample": {
    request: { tray: string; fresh_g: number; dry_g: number; scale_step_g?: number };
    reply: Changed & { tray: TrayPage };
  };
  "tray.list": { request: Nothing; reply: { trays: TrayCard[] } };
  "tray.show": { request: { id: string }; reply: { tray: TrayPage } };
  "supply.list": { request: Nothing; reply: { supplies: Supply[] } };
  "supply.add": { request: SupplyAdd; reply: Changed & { supply: Supply } };
  "supply.correct": {
    request: { id: string } & Partial<SupplyAdd>;
    reply: Changed & { supply: Supply };
  };
  "lot.list": { request: { herb?: string; state?: PlantState }; reply: { lots: LotLine[] } };
  "preparation.list": { request: Nothing; reply: { preparations: PreparationLine[] } };
  "jar.compose": { request: Composition; reply: Proposal };
  "jar.pour": {
    request: {
      composition: Composition;
      name?: string;
      poured_at?: string;
      place?: string;
      note?: string;
      shake?: boolean;
    };
    reply: Changed & { jar: JarPage };
  };
  "jar.list": { request: { state?: JarState }; reply: { jars: JarCard[] } };
  "jar.show": { request: { id: string }; reply: { jar: JarPage } };
  "jar.correct": {
    request: { id: string; name?: string; place?: string; note?: string };
    reply: Changed & { jar: JarPage };
  };
  "jar.fail": { request: { id: string; reason: string }; reply: Changed & { jar: JarPage } };
  "deed.undo": { request: { deed: string }; reply: Changed & { undone: string } };
  "deed.list": { request: { limit?: number }; reply: { deeds: Deed[] } };
  "setting.show": { request: Nothing; reply: Settings };
  "setting.change": { request: Partial<Settings>; reply: Changed & Settings };
  "journal.about": { request: Nothing; reply: About };
};
