// Written by `cargo dev bindings` from the core's own types; a test holds it to them.

/**
 * How safe is the journal?
 */
export type AboutBackup = Record<symbol, never>;

/**
 * What this journal holds.
 */
export type AboutJournal = Record<symbol, never>;

/**
 * A new bed.
 */
export type AddBed = { name: string, wild?: boolean, area_m2?: number, note?: string, };

/**
 * A herb that the book does not have.
 */
export type AddHerb = { common: string, latin?: string, parts: Array<string>, note?: string, 
/**
 * Water in the fresh plant, % of its weight: the usual figure, the least and the most.
 */
water_wet_percent?: Interval, 
/**
 * The strength that it wants.
 */
strength_percent_vol?: number, 
/**
 * What to beware of.
 */
caution?: string, 
/**
 * What it is mistaken for, and how to tell.
 */
look_alikes?: string, };

/**
 * A bottle was bought.
 */
export type AddSupply = { name: string, item: StockItem, size_ml: number, price?: number, currency?: string, bought_on?: string, best_before?: string, };

/**
 * The answer to [`AdviseJar`], best first.
 */
export type Advice = { candidates: Array<Candidate>, 
/**
 * What the list of poisonous plants asks; `confirmed: true` is the answer.
 */
asks: Note | null, };

/**
 * A reason for or against a preparation.
 */
export type AdviceReason = { 
/**
 * For or against.
 */
speaks: Direction, 
/**
 * The sentence.
 */
text: Message, 
/**
 * Where it comes from.
 */
source: string | null, 
/**
 * How sure it is.
 */
status: Status, };

/**
 * What can this herb become?
 */
export type AdviseJar = { herb: string, part: string, state: PlantState, mass_g: number, moisture_wet_percent?: Moisture, 
/**
 * A little of it dried to constant weight, instead of its water.
 */
sample?: PlantSample, purpose: Purpose, without?: Array<Without>, jar_ml?: number, stock?: Array<StockItem>, 
/**
 * Other plants that go into the same jar.
 */
also?: Array<Plant>, 
/**
 * A deliberate yes to what the list of poisonous plants asks.
 */
confirmed?: boolean, };

/**
 * The air around the rack.
 */
export type Air = { 
/**
 * Temperature.
 */
temperature_c: number, 
/**
 * Relative humidity.
 */
relative_humidity_percent: number, };

/**
 * Records every harvest of this table as one deed.
 */
export type ApplyImport = { file: string, };

/**
 * Takes in what this backup of another phone holds.
 */
export type ApplyMerge = { file: string, passphrase?: string, 
/**
 * Take in what is whole although the backup is damaged elsewhere.
 */
without_damaged?: boolean, };

/**
 * Puts this backup in the place of the journal.
 */
export type ApplyRestore = { file: string, passphrase?: string, 
/**
 * Restore what is whole although the backup is damaged elsewhere.
 */
without_damaged?: boolean, };

/**
 * The answer to [`AboutBackup`].
 */
export type BackupAbout = { last: LastBackup | null, days_ago: number | null, 
/**
 * Deeds that no backup of this device holds.
 */
deeds_since: number, 
/**
 * Whether a backup is due.
 */
remind: boolean, rows: Array<NounCount>, photos: number, photo_bytes: number, 
/**
 * Photos that lie in the album although no entry names them; they are kept and backed up.
 */
photos_without_entry: number, journal_bytes: number, 
/**
 * When the latest entry was written.
 */
latest: string | null, 
/**
 * Whether the last restore or merge can be taken back.
 */
can_undo: boolean, 
/**
 * What was saved when the journal was found damaged.
 */
rescue: RescueReport | null, 
/**
 * When all of the book was last read.
 */
checked: LastCheck | null, 
/**
 * Whether it is time to read all of it again.
 */
check_due: boolean, };

/**
 * What a backup of a damaged journal holds.
 */
export type BackupDamage = { 
/**
 * Finished sentences: what could be read, what could not, what to do.
 */
sentences: Array<string>, deeds: number, deeds_lost: number, };

/**
 * What a backup holds.
 */
export type BackupLook = { made_at: string | null, app_version: string | null, bytes: number, rows: Array<NounBoth>, latest_here: string | null, latest_there: string | null, 
/**
 * Deeds that only this journal has: restoring takes them away (and can be undone).
 */
only_here: number, 
/**
 * Deeds that only the backup has.
 */
only_there: number, photos: number, with_photos: boolean, 
/**
 * Photos that the backup's journal names and that are nowhere.
 */
photos_missing: number, 
/**
 * Entries that are damaged, by name.
 */
damaged: Array<string>, 
/**
 * Something outside the entries is not as it was written.
 */
damaged_around: boolean, 
/**
 * What is wrong with the journal in the backup, a sentence for each.
 */
faults: Array<Message>, 
/**
 * Whether it can be restored, if need be without what is damaged.
 */
restorable: boolean, };

/**
 * A backup was made.
 */
export type BackupMade = { 
/**
 * Where it lies.
 */
file: string, file_name: string, bytes: number, sealed: boolean, rows: Array<NounCount>, photos: number, 
/**
 * Photos whose bytes on this device are not what they were when they were kept; the backup
 * holds them as they are.
 */
damaged_photos: Array<string>, 
/**
 * What is wrong with the journal; the backup then holds what could be read of it, its name says
 * so, and it does not count as a backup.
 */
damage: BackupDamage | null, };

/**
 * The answer to [`TakeBackup`].
 */
export type BackupTaken = { 
/**
 * Whether it counts as the last backup now; one of a damaged journal does not.
 */
counts: boolean, };

/**
 * What an estimate rests on.
 */
export type Basis = "table" | "own batches" | "weigh-ins" | "sample";

/**
 * A bed of the garden, or a wild place.
 */
export type Bed = { id: string, name: string, wild: boolean, area_m2: number | null, note: string | null, };

/**
 * The answer to [`ShowBed`].
 */
export type BedShown = { bed: Bed, 
/**
 * How it looked, the earliest first.
 */
portraits: Array<PortraitLine>, };

/**
 * A bed was written.
 */
export type BedWritten = { bed: Bed, deed: string, changed: Array<Noun>, };

/**
 * The answer to [`ListBeds`].
 */
export type Beds = { beds: Array<Bed>, };

/**
 * Begins a new, empty journal in the place of one that is missing. What is still there stays.
 */
export type BeginAnew = { 
/**
 * Must be true: without it nothing is begun.
 */
sure?: boolean, };

/**
 * As `journal.check`, as a job: a book of many years takes a while.
 */
export type BeginCheck = Record<symbol, never>;

/**
 * Opens the demo season in the place of the maker's own book, which stays as it is.
 */
export type BeginDemo = Record<symbol, never>;

/**
 * A new journal was begun.
 */
export type BegunAnew = { 
/**
 * Restore points that are kept beside it.
 */
points: number, };

/**
 * The rest was thrown away.
 */
export type BinBottle = { bottle: string, reason: string, at?: string, };

/**
 * Fresh plant was used in another way than in a jar or on a tray, or thrown away: all that is left of it unless `mass_g` says less.
 */
export type BinHarvest = { id: string, mass_g?: number, 
/**
 * Thrown away, unless it says otherwise.
 */
went_to?: WentTo, 
/**
 * Why, or for what; it must be said of what is thrown away.
 */
reason?: string, at?: string, };

/**
 * Dried plant was used in another way than in a jar, or thrown away: all that is left of it unless `mass_g` says less.
 * A tray that is still drying is thrown away whole.
 */
export type BinTray = { id: string, mass_g?: number, 
/**
 * Thrown away, unless it says otherwise.
 */
went_to?: WentTo, 
/**
 * Why, or for what; it must be said of what is thrown away.
 */
reason?: string, at?: string, };

/**
 * Grams of a lot that were used in another way than in a jar, or thrown away.
 */
export type Binned = { id: string, mass_g: number, went_to: WentTo, 
/**
 * An earlier version did not insist on one.
 */
reason: string | null, at: string, };

/**
 * What a look at everything found.
 */
export type BookChecked = { faults: Array<BookFault>, };

/**
 * Something that is wrong with the book.
 */
export type BookFault = { 
/**
 * A finished sentence.
 */
what: string, 
/**
 * The entry, the photo or the file.
 */
where: string, 
/**
 * Whether it is right again.
 */
mended: boolean, };

/**
 * A bottle in a list.
 */
export type BottleCard = { id: string, code: string, name: string, preparation: string, preparation_name: Message, herbs: Array<Message>, jar: string, filled_at: string, size_ml: number, left_ml: number, state: BottleState, best_before: string | null, check_on: string | null, 
/**
 * Whether it must not be used any more.
 */
bin_it: boolean, 
/**
 * Whether a pH was read at which acid may not protect it.
 */
not_acid: boolean, only_the_date_counts: boolean, place: string | null, strength_percent_vol: Interval, };

/**
 * A bottle with everything about it.
 */
export type BottlePage = { strained_on: string | null, liquid: Liquid, keeping: Keeping, storage: Array<Note>, signs: Array<Note>, cautions: Array<Caution>, 
/**
 * Whether its pH is worth reading, for acid keeps it.
 */
takes_ph: boolean, ph: PhShown | null, arithmetic: BottleSums, uses: Array<UseLine>, checks: Array<CheckLine>, given_to: GivenTo | null, ended_at: string | null, binned_because: string | null, 
/**
 * That more was taken from it than it held, as two phones may do; what may be true of it, `due.list` tells.
 */
put_right: string | null, chain: Chain, note: string | null, 
/**
 * How it looked, the earliest first.
 */
portraits: Array<PortraitLine>, id: string, code: string, name: string, preparation: string, preparation_name: Message, herbs: Array<Message>, jar: string, filled_at: string, size_ml: number, left_ml: number, state: BottleState, best_before: string | null, check_on: string | null, 
/**
 * Whether it must not be used any more.
 */
bin_it: boolean, 
/**
 * Whether a pH was read at which acid may not protect it.
 */
not_acid: boolean, only_the_date_counts: boolean, place: string | null, strength_percent_vol: Interval, };

/**
 * The answer to [`PlanBottles`].
 */
export type BottlePlan = { pick_fresh_g: Interval, dry_g: Interval | null, pours: Array<PourLine>, retained_ml: Interval, start_on: string, pick_by: string, buy: Array<ToBuy>, notes: Array<Note>, };

/**
 * The answer to [`ShowBottle`].
 */
export type BottleShown = { bottle: BottlePage, };

/**
 * So many bottles of one size.
 */
export type BottleSize = { ml: number, count: number, };

/**
 * Where a bottle is in its life.
 */
export type BottleState = "on the shelf" | "open" | "to check" | "finished" | "binned" | "given";

/**
 * The trade's small sums about a bottle. No dose is among them.
 */
export type BottleSums = { 
/**
 * Dried herb (of fresh herb: dry matter) that a millilitre stands for, by what was poured.
 */
dried_equivalent_g_per_ml: Interval | null, 
/**
 * The same with the water that the plants brought counted in.
 */
dried_equivalent_with_plant_water_g_per_ml: Interval | null, ethanol_g_per_ml: Interval, ethanol_g_bottle: Interval, drops_per_ml: Interval | null, cost: number | null, currency: string | null, notes: Array<Note>, };

/**
 * A bottle was written.
 */
export type BottleWritten = { bottle: BottlePage, deed: string, changed: Array<Noun>, };

/**
 * The answer to [`ListBottles`].
 */
export type Bottles = { bottles: Array<BottleCard>, more: boolean, 
/**
 * Of all that is on the shelf and was asked for, not only of the bottles listed here.
 */
stock: Array<StockLine>, };

/**
 * Bottles were filled.
 */
export type BottlesFilled = { bottles: Array<BottleCard>, rest_ml: number, deed: string, changed: Array<Noun>, };

/**
 * When to pick, and how far this place lies from the calendars.
 */
export type Calendar = { hemisphere: Hemisphere, 
/**
 * None before two years and two plants can tell.
 */
shift: Shift | null, 
/**
 * Whether the months are moved by it.
 */
is_shifted: boolean, 
/**
 * By what comes first in the year.
 */
rows: Array<PickingRow>, };

/**
 * Stop it. What it has changed by then is complete; most often that is nothing.
 */
export type CancelJob = { job: string, };

/**
 * One thing the herb can become.
 */
export type Candidate = { 
/**
 * Key of the preparation.
 */
preparation: string, 
/**
 * Its name.
 */
name: Message, 
/**
 * Whether it keeps.
 */
verdict: Verdict, 
/**
 * The keeping verdict with its gates.
 */
keeping: Keeping, 
/**
 * For and against, the weightiest first.
 */
reasons: Array<AdviceReason>, 
/**
 * What to pour; nothing where it must not be made.
 */
pours: Array<PourLine>, 
/**
 * The liquid at the end.
 */
liquid: Liquid, 
/**
 * Days from pouring to straining.
 */
steep_days: Days, 
/**
 * Days it keeps once strained; none where no figure was found.
 */
best_before_days: Interval | null, };

/**
 * The code that holds the recipe.
 */
export type CardCode = { link: string, svg: string, };

/**
 * The answer to [`DrawCard`]: its sides, and its code alone for the screen.
 */
export type CardDrawn = { name: string, has_note: boolean, sides: Array<string>, code: CardCode | null, remarks: Array<string>, };

/**
 * The size of a card.
 */
export type CardSize = "a6" | "a5" | "half_letter";

/**
 * One caution with how grave it is, for whom it is said, where it comes from and how sure it is.
 */
export type Caution = { 
/**
 * A stable word for programs: the clause of a herb, or the rule of a jar.
 */
code: string, 
/**
 * How grave it is.
 */
severity: Severity, 
/**
 * The herb that it belongs to, as inside a sentence; none where it is the jar's.
 */
herb: Message | null, 
/**
 * Where it is said.
 */
at: Array<Moment>, 
/**
 * The sentence.
 */
text: Message, 
/**
 * Where it comes from; none where no source was found.
 */
source: string | null, 
/**
 * How sure it is.
 */
status: Status, };

/**
 * The chain from a bottle back to its beds.
 */
export type Chain = { bottle: BottleCard | null, jar: JarCard, pours: Array<PourLine>, plants: Array<ChainPlant>, 
/**
 * Where the marc comes from, if it was covered a second time.
 */
marc_of: Chain | null, };

/**
 * A plant of the jar, back to its bed.
 */
export type ChainPlant = { herb: string, common: Message, part: string, state: PlantState, mass_g: number, code: string | null, harvest: string | null, bed: string | null, bed_id: string | null, picked_at: string | null, photo: string | null, tray: ChainTray | null, };

/**
 * The tray on which a plant dried.
 */
export type ChainTray = { id: string, code: string, name: string, started_at: string, taken_down_at: string | null, weighings: Array<ChainWeighing>, };

/**
 * A weigh-in of the chain.
 */
export type ChainWeighing = { at: string, gross_g: number, };

/**
 * A change to the settings; what is left out stays, an empty text clears.
 */
export type ChangeSettings = { units?: Units, scheme?: Scheme, cautions_seen?: boolean, maker?: string, poison_line?: string, hemisphere?: Hemisphere, };

/**
 * It was looked at. A pH is taken of what acid keeps; `read_with` is what it was read with.
 */
export type CheckBottle = { bottle: string, outcome: Outcome, ph?: number, read_with?: ReadWith, note?: string, at?: string, };

/**
 * Reads the whole book, every table and every photo, and says what is wrong with it.
 */
export type CheckJournal = Record<symbol, never>;

/**
 * One look.
 */
export type CheckLine = { id: string, at: string, outcome: Outcome, ph: number | null, read_with: ReadWith | null, note: string | null, };

/**
 * A herb for all jars of a class.
 */
export type ClassHerb = { common: Message, part: string, state: PlantState, each_g: number, needed_g: number, 
/**
 * The lots there are, the oldest first, until there is enough.
 */
take: Array<ClassLot>, lacking_g: number, 
/**
 * What to pick for that which is lacking; none where nothing is.
 */
pick_fresh_g: Interval | null, 
/**
 * Where it was picked before, the latest first.
 */
beds: Array<string>, notes: Array<Note>, };

/**
 * What is taken of a lot.
 */
export type ClassLot = { code: string, bed: string | null, take_g: number, left_g: number, };

/**
 * The answer to [`PlanClass`].
 */
export type ClassPlan = { name: string, preparation_name: Message, people: number, 
/**
 * One jar, worked out with the liquids on the own shelf.
 */
each: Proposal, herbs: Array<ClassHerb>, 
/**
 * The liquids of all jars, less what the shelf holds.
 */
liquids: Array<ToBuyAll>, 
/**
 * Why the own liquids do not make it; it is then worked out with those of the recipe.
 */
own_liquids_fail: Message | null, };

/**
 * Why a command failed, as far as a page acts on it.
 */
export type Code = "unknown_command" | "invalid" | "not_found" | "confirm_look_alike" | "confirm_odd" | "confirm_plant" | "not_enough" | "storage" | "damaged" | "lost";

/**
 * What comes out when it is strained, and what that rests on.
 */
export type ComesOut = { ml: Interval, because: Note | null, };

/**
 * The composition with which the marc of a jar is covered once more.
 */
export type ComposeMarc = { jar: string, };

/**
 * A recipe with this year's plants.
 */
export type ComposeRecipe = { recipe: string, plants?: Array<Plant>, };

/**
 * What the maker has chosen so far.
 */
export type Composition = { preparation: string, plants: Array<Plant>, stock: Array<StockItem>, ratio_ml_per_g?: number, jar_ml?: number, strength_percent_vol?: number, glycerin_percent_vol?: number, fortify_percent_vol?: number, temperature_c?: number, 
/**
 * A deliberate yes to what the list of poisonous plants asks.
 */
confirmed?: boolean, };

/**
 * A figure that can be moved.
 */
export type Control = { 
/**
 * Where it stands.
 */
value: number, 
/**
 * How low it goes.
 */
low: number, 
/**
 * How high it goes.
 */
high: number, 
/**
 * The step of a slider.
 */
step: number, 
/**
 * What is usual.
 */
usual: number, 
/**
 * Why that is usual.
 */
because: Message, 
/**
 * How sure that is.
 */
status: Status, };

/**
 * The figures that can be moved in a preparation.
 */
export type Controls = { 
/**
 * mL to a gram of herb.
 */
ratio_ml_per_g: Control, 
/**
 * Strength in the jar at the end, % vol.
 */
strength_percent_vol: Control | null, 
/**
 * Glycerin in what is poured, % by volume.
 */
glycerin_percent_vol: Control | null, 
/**
 * Alcohol added for keeping, % vol at the end.
 */
fortify_percent_vol: Control | null, };

/**
 * Plant was simmered in water or as its own juice, and strained.
 */
export type CookLot = { 
/**
 * What it came from, fresh or dried.
 */
lot: Lot, 
/**
 * How much of it went into the pot.
 */
mass_g: number, 
/**
 * Water that was poured on; none of a juice.
 */
water_ml?: number, 
/**
 * The empty pot or jug.
 */
tare_g?: number, 
/**
 * The pot with what was strained; else its volume is given.
 */
gross_g?: number, 
/**
 * The volume that was strained, where it was not weighed.
 */
out_ml?: number, 
/**
 * What a refractometer shows, % by mass.
 */
sugar_percent_mass?: number, cooked_at?: string, name?: string, note?: string, };

/**
 * A change to a bed; what is left out stays.
 */
export type CorrectBed = { id: string, name?: string, wild?: boolean, area_m2?: number, note?: string, };

/**
 * A change to a bottle; what is left out stays.
 */
export type CorrectBottle = { id: string, place?: string, note?: string, size_ml?: number, };

/**
 * A change to a harvest; what is left out stays, an empty text is cleared.
 */
export type CorrectHarvest = { id: string, herb?: string, part?: string, gross_g?: number, tare_g?: number, picked_at?: string, bed?: string, bed_name?: string, 
/**
 * Nobody planted what stands in the new bed.
 */
bed_wild?: boolean, stage?: string, surface?: Surface, note?: string, photos?: Array<string>, look_alike_ruled_out?: boolean, 
/**
 * The mass was asked about and is right.
 */
confirm_odd?: boolean, };

/**
 * A change to a herb of the maker's own; what is left out stays, and a figure of 0 takes it back.
 */
export type CorrectHerb = { key: string, common?: string, latin?: string, parts?: Array<string>, note?: string, 
/**
 * Water in the fresh plant, % of its weight: the usual figure, the least and the most.
 */
water_wet_percent?: Interval, 
/**
 * The strength that it wants.
 */
strength_percent_vol?: number, 
/**
 * What to beware of.
 */
caution?: string, 
/**
 * What it is mistaken for, and how to tell.
 */
look_alikes?: string, };

/**
 * A change to a jar's name, place or note; what is left out stays.
 */
export type CorrectJar = { id: string, name?: string, place?: string, note?: string, };

/**
 * Whether a photo stands in the place of the drawing; no other one of the same thing does then.
 */
export type CorrectPortrait = { id: string, shown: boolean, };

/**
 * A change to a recipe; what is left out stays, and no stars at all take them back.
 */
export type CorrectRecipe = { id: string, name?: string, note?: string, stars?: number, };

/**
 * A change to a bottle; what is left out stays. An empty day and an empty currency are taken back,
 * the price with its currency.
 */
export type CorrectSupply = { id: string, name?: string, item?: StockItem, size_ml?: number, price?: number, currency?: string, bought_on?: string, best_before?: string, };

/**
 * A change to a tray; what is left out stays.
 */
export type CorrectTray = { tray: string, name?: string, tare_g?: number, note?: string, air?: Air, };

/**
 * A change to a weigh-in; what is left out stays.
 */
export type CorrectWeighing = { id: string, gross_g?: number, at?: string, air?: Air, snap_test?: boolean, };

/**
 * What the liquids cost, and in which currency; nothing where no price is known, or prices in several currencies.
 */
export type Cost = { amount: number | null, currency: string | null, 
/**
 * What has no price and is not in it.
 */
notes: Array<Note>, };

/**
 * A dropper was counted.
 */
export type CountDropper = { name: string, 
/**
 * Three counts or more, each of the drops in one millilitre.
 */
drops_in_1_ml: Array<number>, 
/**
 * What it holds when it is filled once.
 */
holds_ml?: number, 
/**
 * What it was counted with.
 */
liquid?: string, };

/**
 * What was weighed of a tray and what is foretold.
 */
export type Course = { 
/**
 * When it will be dry enough, in hours on the rack.
 */
ends_hours: Interval | null, weighings: Array<WeighingLine>, curve: Array<CurvePoint>, };

/**
 * A point of the drying curve with its band.
 */
export type CurvePoint = { hours: number, low_g: number, value_g: number, high_g: number, };

/**
 * A span of days.
 */
export type Days = { 
/**
 * At least.
 */
low: number, 
/**
 * At most.
 */
high: number, };

/**
 * One deed.
 */
export type DeedLine = { deed: string, at: string, text: Message, undone: boolean, };

/**
 * A deed was taken back.
 */
export type DeedUndone = { undone: Message, deed: string, changed: Array<Noun>, };

/**
 * The answer to [`ListDeeds`].
 */
export type Deeds = { deeds: Array<DeedLine>, };

/**
 * Which of the two is open now.
 */
export type DemoShown = { demo: boolean, };

/**
 * What is this liquid?
 */
export type DescribeMixture = { pours: Array<Pour>, plants?: Array<WetPlant>, temperature_c?: number, };

/**
 * Which way a reason speaks.
 */
export type Direction = "for" | "against";

/**
 * The card of a recipe, or of the recipe of a jar, as pictures.
 */
export type DrawCard = { recipe?: string, jar?: string, size: CardSize, 
/**
 * Whether the maker's own note stands on it and in its code.
 */
note: boolean, };

/**
 * One label as a picture. A gift's label leaves private notes out and says what is in it.
 */
export type DrawLabel = { bottle?: string, jar?: string, label: LabelSize, gift: boolean, 
/**
 * Whether the alcohol in the whole bottle is printed.
 */
ethanol: boolean, use_for?: Purpose, };

/**
 * A dropper: the middle of its counts, and how far apart they were.
 */
export type DropperLine = { id: string, name: string, liquid: string | null, drops_in_1_ml: Array<number>, drops_per_ml: Interval, holds_ml: number | null, };

/**
 * A dropper was written.
 */
export type DropperWritten = { dropper: DropperLine, deed: string, changed: Array<Noun>, };

/**
 * The answer to [`ListDroppers`].
 */
export type Droppers = { droppers: Array<DropperLine>, };

/**
 * What is known of the dry matter before anything was weighed: a log-normal.
 */
export type DryMatterPrior = { ln_dry_matter_fraction_mean: number, ln_dry_matter_fraction_sd: number, };

/**
 * The dry weight to expect, with its reason.
 */
export type DryWeight = { dry_mass_g: Interval, water_wet_percent: Interval, basis: Basis, reason: Message, status: Status, notes: Array<Note>, };

/**
 * The answer to [`EstimateDrying`].
 */
export type DryingEstimated = { dry_matter_g: Interval, target_mass_g: Interval, moisture_now_wet_percent: Interval | null, hours_left: Interval | null, is_dry: boolean, basis: Basis, notes: Array<Note>, };

/**
 * A reason beside an estimate, as a code; its sentence stands in the catalogue.
 */
export type DryingReason = "not_weighed_yet" | "cannot_say_yet" | "still_too_heavy" | "time_too_uncertain" | "may_not_get_there" | "room_too_damp" | "air_out_of_range" | "air_not_noted" | "scale_too_coarse" | "odd_weighing" | "unlike_prior" | "probably_dry";

/**
 * The answer to [`ListDue`], by harm and then by day.
 */
export type Due = { due: Array<DueLine>, in_all: number, 
/**
 * How many of all ask for the maker by the day itself.
 */
now: number, 
/**
 * How many of those can hurt somebody.
 */
harmful_now: number, };

/**
 * What may be true of it, each a command: `bottle.finish`, `bottle.give`, `bottle.bin`, the `correct` of the noun,
 * and `deed.undo`.
 */
export type DueChoice = "finish" | "give" | "bin" | "correct" | "take back";

/**
 * One thing to do. Harm: 3 it can hurt somebody, 2 a batch is lost, 1 it grows worse, 0 habit.
 */
export type DueLine = { what: DueWhat, on: string, overdue_days: number, harm: number, noun: Noun, id: string, title: Message, text: Message, 
/**
 * The hour, where the day alone is too coarse: the next weigh-in of a tray.
 */
at: string | null, 
/**
 * What may be true of it, where the book cannot know.
 */
choices: Array<DueChoice>, };

/**
 * What is to be done.
 */
export type DueWhat = "bin" | "use before" | "take down" | "see to" | "put right" | "strain" | "check" | "weigh" | "shake";

/**
 * Strained liquid left the jar without a bottle: all that is left of it unless `ml` says less.
 */
export type EmptyJar = { jar: string, went_to: WentTo, 
/**
 * Why, or for what; it must be said of what is thrown away.
 */
reason?: string, ml?: number, at?: string, };

/**
 * Removes the demo season with all that was written into it and opens the own book again.
 */
export type EndDemo = Record<symbol, never>;

/**
 * A drying run as figures.
 */
export type EstimateDrying = { herb?: string, part?: string, prior?: DryMatterPrior, fresh_mass_g: number, scale_step_g?: number, target_moisture_wet_percent?: number, weighings?: Array<WeighingFigure>, own_dry_matter_fractions?: Array<number>, sample?: OvenSample, air?: Air, 
/**
 * The lot was tried by hand at the last weigh-in and is dry: it snaps, a leaf crumbles.
 */
snap_test?: boolean, };

/**
 * What will this weigh dry?
 */
export type EstimateHarvest = { herb: string, part: string, fresh_mass_g: number, surface_wet?: boolean, };

/**
 * What is expected to come out when it is strained this way.
 */
export type ExpectedOut = { how: How, came_out_ml: Interval, retained_ml_per_g_dry: Interval, basis: Message, source: string | null, status: Status, };

/**
 * What is due in the days ahead, 30 unless said otherwise, as an iCalendar file (RFC 5545).
 */
export type ExportDue = { days?: number, };

/**
 * An export was made.
 */
export type ExportMade = { file: string, file_name: string, bytes: number, 
/**
 * The tables and other files in it, without the photos.
 */
files: Array<string>, photos: number, 
/**
 * Photos from which the place could not be removed for certain.
 */
photos_left_out: number, };

/**
 * One fact of a herb as it stands on its page.
 */
export type Fact = { 
/**
 * What it is a fact of.
 */
label: Message, 
/**
 * The fact in words.
 */
value: Message, 
/**
 * Where it comes from.
 */
source: string | null, 
/**
 * How sure it is.
 */
status: Status, };

/**
 * A batch failed.
 */
export type FailJar = { id: string, reason: string, };

/**
 * A refusal in the maker's words.
 */
export type Failure = { 
/**
 * What a page may act on.
 */
code: Code, 
/**
 * The path of the field in the request, such as `pours[0].ml`.
 */
field: string | null, 
/**
 * One finished sentence.
 */
message: Message, };

/**
 * The answer to [`TakeFileChunk`].
 */
export type FileChunkTaken = { 
/**
 * What the other commands call this file.
 */
file: string, bytes: number, };

/**
 * Bottles were filled from a strained jar.
 */
export type FillBottles = { jar: string, bottles: Array<BottleSize>, place?: string, filled_at?: string, note?: string, 
/**
 * How warm an oil stands, for the date by which it is used up.
 */
stored_at_c?: number, };

/**
 * Which herb is meant by a name, in either language, number and with one slip in the typing.
 */
export type FindHerb = { text: string, limit?: number, };

/**
 * What bears the code that was typed, scanned or opened: a code, or a link as labels carry it.
 */
export type FindLot = { text: string, };

/**
 * The rest was used up.
 */
export type FinishBottle = { bottle: string, at?: string, };

/**
 * A herb that a name may mean; one that is not `known` has a name and nothing else in the book.
 */
export type FoundHerb = { key: string, common: Message, latin: string | null, known: boolean, };

/**
 * The answer to [`FindHerb`], the herb meant first.
 */
export type FoundHerbs = { herbs: Array<FoundHerb>, stop: HerbStop | null, };

/**
 * A limit the liquid was held against.
 */
export type GateLine = { 
/**
 * What was judged.
 */
gate: Message, 
/**
 * The limit above (or below) which it keeps on the shelf.
 */
limit: number, 
/**
 * The predicted figure.
 */
predicted: Interval, 
/**
 * The unit of both, as a sign of every language.
 */
unit: string, 
/**
 * How far the bad end is on the right side of the limit; negative on the wrong side.
 */
margin: number, 
/**
 * Whether this gate decided.
 */
decided: boolean, 
/**
 * What the limit rests on.
 */
source: string | null, 
/**
 * How sure the limit is.
 */
status: Status, };

/**
 * Somebody was given it.
 */
export type GiveBottle = { bottle: string, to: string, at?: string, note?: string, };

/**
 * Who was given it.
 */
export type GivenTo = { to: string, at: string, };

/**
 * Puts a restore point in the place of the journal; what the journal is now becomes one in turn.
 */
export type GoBack = { 
/**
 * As `restore.points` calls it.
 */
point: string, };

/**
 * A harvest in a list.
 */
export type HarvestCard = { id: string, code: string, herb: string, common: Message, latin: string | null, part: string, picked_at: string, fresh_mass_g: number, bed: Bed | null, photo: string | null, state: HarvestState, fresh_left_g: number, };

/**
 * A harvest with everything that came of it.
 */
export type HarvestPage = { gross_g: number, tare_g: number, stage: string | null, surface: Surface, note: string | null, place: Place | null, time_from: TimeFrom, photos: Array<PhotoCard>, estimate: DryWeight, trays: Array<TrayCard>, jars: Array<IntoJar>, binned: Array<Binned>, 
/**
 * What is asked of its fresh plant where that is past saving.
 */
past_saving: Message | null, id: string, code: string, herb: string, common: Message, latin: string | null, part: string, picked_at: string, fresh_mass_g: number, bed: Bed | null, photo: string | null, state: HarvestState, fresh_left_g: number, };

/**
 * The answer to [`ShowHarvest`].
 */
export type HarvestShown = { harvest: HarvestPage, };

/**
 * How far a harvest has got.
 */
export type HarvestState = "fresh" | "on the rack" | "dry" | "used up";

/**
 * A harvest was written. What came of it, and what it will weigh dry, is told by [`ShowHarvest`].
 */
export type HarvestWritten = { harvest: HarvestCard, deed: string, changed: Array<Noun>, };

/**
 * The answer to [`ListHarvests`].
 */
export type Harvests = { harvests: Array<HarvestCard>, more: boolean, };

/**
 * Which half of the globe the garden lies in, for the months of picking.
 */
export type Hemisphere = "north" | "south";

/**
 * A herb in a list.
 */
export type HerbLine = { key: string, common: Message, latin: string | null, parts: Array<string>, own: boolean, last_picked_at: string | null, look_alike: boolean, 
/**
 * What the maker wrote down of a herb of their own; none of a herb of the tables.
 */
own_figures: OwnFigures | null, };

/**
 * The answer to [`ShowHerb`].
 */
export type HerbPage = { herb: HerbLine, facts: Array<Fact>, cautions: Array<Caution>, look_alikes: Array<LookAlike>, water: Array<PartWater>, own_ratios: Array<OwnRatio>, 
/**
 * How a herb of the maker's own looks; none of a herb of the tables.
 */
portraits: Array<PortraitLine>, };

/**
 * What the list of poisonous plants says of a name.
 */
export type HerbStop = { kind: StopKind, text: Message, source: string | null, status: Status, };

/**
 * A herb was written.
 */
export type HerbWritten = { herb: HerbLine, deed: string, changed: Array<Noun>, };

/**
 * The answer to [`ListHerbs`].
 */
export type Herbs = { herbs: Array<HerbLine>, };

/**
 * Something that was found.
 */
export type Hit = { noun: Noun, id: string, title: Message, line: Message, at: string | null, };

/**
 * The answer to [`Search`].
 */
export type Hits = { hits: Array<Hit>, };

/**
 * How the liquid was got out of the marc.
 */
export type How = "dripped" | "wrung" | "pressed";

/**
 * The harvests were recorded.
 */
export type ImportDone = { recorded: number, known: number, deed: string, changed: Array<Noun>, };

/**
 * One harvest as it was understood.
 */
export type ImportLine = { line: number, herb: string, part: string, picked_at: string, fresh_mass_g: number, bed: string | null, surface: string, };

/**
 * The answer to [`LookAtImport`]. It can be applied if there are no faults and something is new.
 */
export type ImportLook = { new: number, 
/**
 * Lines that the journal has already; they are passed over.
 */
known: number, new_beds: Array<string>, 
/**
 * Columns that are not read.
 */
ignored_columns: Array<string>, 
/**
 * The first 200.
 */
faults: Array<LineFault>, fault_count: number, 
/**
 * The first 20 new ones.
 */
sample: Array<ImportLine>, };

/**
 * The kinds of liquid (and sugar) that are poured.
 */
export type IngredientKind = "water" | "spirit" | "glycerin" | "vinegar" | "wine" | "sugar" | "syrup" | "honey" | "juice" | "oil";

/**
 * A central value and the 90 % interval around it; equal ends where nothing is uncertain.
 *
 * Invariant: `low <= value <= high`, all finite.
 */
export type Interval = { 
/**
 * Lower end of the 90 % interval.
 */
low: number, 
/**
 * The best single figure.
 */
value: number, 
/**
 * Upper end of the 90 % interval.
 */
high: number, };

/**
 * Grams of the harvest that went into a jar.
 */
export type IntoJar = { jar: string, code: string, name: string, mass_g: number, state: PlantState, };

/**
 * A jar in a list.
 */
export type JarCard = { id: string, code: string, name: string, preparation: string, preparation_name: Message, herbs: Array<Message>, poured_at: string, day: number, due_from: string, due_to: string, state: JarState, strength_percent_vol: Interval, glycerol_percent_mass: Interval, poured_ml: number, place: string | null, figures: JarFigures, };

/**
 * What a picture of a jar is drawn from.
 */
export type JarFigures = { 
/**
 * What it holds; none where that was not said.
 */
jar_ml: number | null, pours: Array<PouredFigure>, plants: Array<PlantFigure>, 
/**
 * Strained liquid that is still in it; none before it is strained.
 */
left_ml: number | null, };

/**
 * A jar with its recipe as poured.
 */
export type JarPage = { pours: Array<PourLine>, plants: Array<JarPlant>, ratio_ml_per_g: number | null, liquid: Liquid, keeping: Keeping, shelf_life: ShelfLife, 
/**
 * Dried herb to a millilitre poured; none where no plant or a marc is in it.
 */
dried_equivalent_g_per_ml: Interval | null, 
/**
 * The same to a millilitre of what there is with the plant's own water.
 */
dried_equivalent_with_plant_water_g_per_ml: Interval | null, cautions: Array<Caution>, 
/**
 * Whether its pH is worth reading, for acid keeps it.
 */
takes_ph: boolean, ph: PhShown | null, reasons: Array<Note>, steps: Array<Step>, note: string | null, failed_because: string | null, shakes: Array<ShakeLine>, strainings: Array<StrainingLine>, expected_out: Array<ExpectedOut>, bottles: Array<BottleCard>, 
/**
 * Strained liquid that no bottle holds yet; nothing before it is strained.
 */
left_ml: number | null, 
/**
 * The last day on which that should be used, and whether it must not be used any more.
 */
rest_best_before: string | null, bin_rest: boolean, rests: Array<RestLine>, marc_of: MarcOf | null, 
/**
 * Whether its marc may be covered once more.
 */
second_maceration: boolean, recipe: string | null, stars: number | null, 
/**
 * How it looked, the earliest first.
 */
portraits: Array<PortraitLine>, 
/**
 * What its liquids cost, by the prices of the supplies they came from.
 */
cost: Cost, id: string, code: string, name: string, preparation: string, preparation_name: Message, herbs: Array<Message>, poured_at: string, day: number, due_from: string, due_to: string, state: JarState, strength_percent_vol: Interval, glycerol_percent_mass: Interval, poured_ml: number, place: string | null, figures: JarFigures, };

/**
 * A plant as it went into the jar, with the chain back to its bed.
 */
export type JarPlant = { lot: Lot | null, herb: string, common: Message, part: string, state: PlantState, mass_g: number, moisture_wet_percent: Interval, code: string | null, harvest: string | null, bed: string | null, picked_at: string | null, };

/**
 * What the jar must hold.
 */
export type JarRoom = { 
/**
 * Size of the jar that is needed, mL.
 */
needed_ml: Interval, 
/**
 * Size of the jar there is, mL.
 */
jar_ml: number | null, 
/**
 * Whether it fits.
 */
fits: boolean | null, 
/**
 * The most herb that fits this jar in this recipe, g.
 */
largest_mass_g: number | null, };

/**
 * The answer to [`ShowJar`].
 */
export type JarShown = { jar: JarPage, };

/**
 * How far a jar has got.
 */
export type JarState = "steeping" | "due" | "strained" | "failed";

/**
 * A jar was written.
 */
export type JarWritten = { jar: JarPage, deed: string, changed: Array<Noun>, };

/**
 * The answer to [`ListJars`].
 */
export type Jars = { jars: Array<JarCard>, more: boolean, };

/**
 * A job was begun.
 */
export type JobBegun = { job: string, };

/**
 * A job as a page shows it; `total_bytes` grows while the work is still being measured.
 */
export type JobCard = { job: string, work: JobWork, state: JobState, done_bytes: number, total_bytes: number, outcome: JobOutcome | null, failure: Failure | null, };

/**
 * What a job brought about.
 */
export type JobOutcome = { "kind": "backup" } & BackupMade | { "kind": "restore_look" } & BackupLook | { "kind": "restored" } & Restored | { "kind": "merge_look" } & MergeReport | { "kind": "merged" } & MergeReport | { "kind": "export" } & ExportMade | { "kind": "checked" } & BookChecked;

/**
 * The answer to [`RunningJob`].
 */
export type JobRunning = { job: JobCard | null, };

/**
 * What became of it.
 */
export type JobState = "running" | "done" | "failed" | "cancelled";

/**
 * What a job is about.
 */
export type JobWork = "backup" | "restore_look" | "restore" | "merge_look" | "merge" | "export" | "check";

/**
 * The answer to [`AboutJournal`].
 */
export type JournalAbout = { harvests: number, trays: number, jars: number, photos: number, demo: boolean, version: string, cautions: Array<Note>, };

/**
 * The recipe of a jar is to be kept.
 */
export type KeepRecipe = { jar: string, name: string, note?: string, stars?: number, };

/**
 * The verdict with everything that led to it.
 */
export type Keeping = { 
/**
 * The verdict.
 */
verdict: Verdict, 
/**
 * One finished sentence.
 */
text: Message, 
/**
 * The gates.
 */
gates: Array<GateLine>, 
/**
 * Whether it must never be swallowed, however well it keeps.
 */
outside_only: boolean, };

/**
 * The answer to [`DrawLabel`].
 */
export type LabelDrawn = { svg: string, 
/**
 * What was left out, and what is not written down.
 */
remarks: Array<string>, 
/**
 * What it may be labelled for.
 */
uses: Array<Purpose>, 
/**
 * What it is labelled for.
 */
use_for: Purpose, per_sheet: PerSheet, };

/**
 * The paper that labels are printed on: a sheet of many, or one the size of the label itself.
 */
export type LabelPaper = "a4" | "letter" | "label";

/**
 * Width and height of a label, 25 to 200 by 15 to 280 mm.
 */
export type LabelSize = { width_mm: number, height_mm: number, };

/**
 * A backup of this device.
 */
export type LastBackup = { at: string, file_name: string, bytes: number, sealed: boolean, photos: boolean, 
/**
 * Deeds that were in it.
 */
deeds: number, };

/**
 * When everything was last looked at, and what was left unmended.
 */
export type LastCheck = { at: string, faults: number, };

/**
 * What is left of the year's plants.
 */
export type LeftOver = { fresh_g: number, dry_g: number, bottled_ml: number, unbottled_ml: number, };

/**
 * What is wrong with one cell.
 */
export type LineFault = { 
/**
 * The line of the file, the header being line 1.
 */
line: number, column: string, message: Message, };

/**
 * A liquid. Plant water has joined it, dry matter has not; oil is a phase of its own and no part of it, and so is
 * sugar that does not dissolve.
 */
export type Liquid = { 
/**
 * Mass, g.
 */
mass_g: Interval, 
/**
 * Volume at the asked temperature, mL.
 */
volume_ml: Interval, 
/**
 * Density at the asked temperature, kg/m3.
 */
density_kg_m3: Interval, 
/**
 * Sum of the volumes before mixing less the volume after, at the asked temperature, mL.
 */
contraction_ml: Interval, 
/**
 * Strength at 20 C, % vol.
 */
strength_percent_vol: Interval, 
/**
 * Twice the percentage by volume at 60 F.
 */
us_proof: Interval, 
/**
 * Ethanol, % by mass.
 */
ethanol_percent_mass: Interval, 
/**
 * Ethanol, g.
 */
ethanol_g: Interval, 
/**
 * Glycerol, % by mass.
 */
glycerol_percent_mass: Interval, 
/**
 * Volume of the pure glycerol over that of the liquid at 20 C, %.
 */
glycerol_percent_vol: Interval, 
/**
 * All sugars, % by mass (Brix where nothing else is dissolved).
 */
sugar_percent_mass: Interval, 
/**
 * Titratable acidity as acetic acid, g per 100 mL at 20 C.
 */
acidity_g_per_100ml: Interval, 
/**
 * pH of the plain acid at that dilution: a floor. None without acid.
 */
acid_ph: Interval | null, 
/**
 * Water activity.
 */
water_activity: WaterActivity, 
/**
 * What neither sugar nor glycerin keeps by the free-water rule, mL at 20 C, its alcohol included.
 */
free_water_ml: Interval, 
/**
 * Absolute ethanol that this needs to keep, mL; 0 where nothing is left over.
 */
alcohol_to_keep_ml: Interval, 
/**
 * Flash point, C; none under 20 % vol.
 */
flash_point_c: Interval | null, };

/**
 * Every bed.
 */
export type ListBeds = Record<symbol, never>;

/**
 * Bottles, those to look at first; without a state those that are still here. Those that are gone
 * come the latest filled first. `after` is the id of the last one seen.
 */
export type ListBottles = { state?: BottleState, herb?: string, preparation?: string, after?: string, limit?: number, };

/**
 * The latest deeds, newest first.
 */
export type ListDeeds = { limit?: number, };

/**
 * The droppers that were counted.
 */
export type ListDroppers = Record<symbol, never>;

/**
 * Everything that is due by a day, today if none is named, and in the days after it.
 */
export type ListDue = { on?: string, days?: number, 
/**
 * At most so many lines, the first that there are; what is counted counts them all.
 */
limit?: number, };

/**
 * Harvests, the latest first; `before` is the id of the last one seen.
 */
export type ListHarvests = { before?: string, limit?: number, herb?: string, bed?: string, };

/**
 * Every herb, the maker's recent ones first.
 */
export type ListHerbs = Record<symbol, never>;

/**
 * Jars, what is due first, then what steeps, then the strained and the failed, the latest poured
 * first; `after` is the id of the last one seen.
 */
export type ListJars = { state?: JarState, after?: string, limit?: number, };

/**
 * Lots with grams left, fresh before dried, the latest picking first; `after` is the last one seen.
 */
export type ListLots = { herb?: string, state?: PlantState, after?: Lot, limit?: number, };

/**
 * The bottles that are wanted.
 */
export type ListPlans = Record<symbol, never>;

/**
 * What a herb can become.
 */
export type ListPreparations = Record<symbol, never>;

/**
 * The recipes that were kept.
 */
export type ListRecipes = Record<symbol, never>;

/**
 * To which states can the journal go back, and is it there at all?
 */
export type ListRestorePoints = Record<symbol, never>;

/**
 * Everything on the shelf that can be poured.
 */
export type ListSupplies = Record<symbol, never>;

/**
 * Trays on the rack, forgotten ones first, then dried lots with grams left; `after` is the id of
 * the last one seen.
 */
export type ListTrays = { after?: string, limit?: number, };

/**
 * The ways to use a bottle.
 */
export type ListWays = { bottle: string, };

/**
 * A poisonous plant that is taken for the herb.
 */
export type LookAlike = { name: Message, why: Message, 
/**
 * None where the maker's own note tells both.
 */
tell_apart: Message | null, source: string | null, status: Status, };

/**
 * What would this table bring?
 */
export type LookAtImport = { file: string, };

/**
 * What would come in from this backup of another phone?
 */
export type LookAtMerge = { file: string, passphrase?: string, };

/**
 * What is in this backup, is it whole, and what would restoring it change?
 */
export type LookAtRestore = { file: string, passphrase?: string, };

/**
 * A book that is not where it was, and what is still there of it.
 */
export type LostBook = { how: LostHow, 
/**
 * Originals of photos in the folder.
 */
photos: number, 
/**
 * Whether there is a damaged file that `rescue.make` can read.
 */
can_rescue: boolean, 
/**
 * Backups that were made here and not taken away yet, as the field `file` calls them.
 */
backups: Array<string>, };

/**
 * What became of the journal.
 */
export type LostHow = "missing" | "empty";

/**
 * Why a tray was thrown away while it was drying, and when.
 */
export type LostLine = { at: string, reason: string, };

/**
 * Fresh grams come from a harvest, dried and cooked grams from a tray or a pot.
 */
export type Lot = { kind: LotKind, id: string, };

/**
 * The answer to [`FindLot`]: a harvest, a tray, a jar or a bottle.
 */
export type LotFound = { noun: Noun, id: string, code: string, };

/**
 * Where a lot lies.
 */
export type LotKind = "harvest" | "tray";

/**
 * A lot that can go into a jar.
 */
export type LotLine = { lot: Lot, code: string, herb: string, common: Message, part: string, state: PlantState, left_g: number, moisture_wet_percent: Interval, picked_at: string, bed: string | null, photo: string | null, };

/**
 * The answer to [`ListLots`].
 */
export type Lots = { lots: Array<LotLine>, more: boolean, };

/**
 * What was made of one preparation and the same herbs.
 */
export type MadeRow = { preparation: string, preparation_name: Message, herbs: Array<Message>, jars: number, failed: number, came_out_ml: number, bottles: number, bottled_ml: number, given: number, 
/**
 * What is in its bottles now.
 */
left_ml: number, };

/**
 * Makes a backup. Without `file` it lies among the made files, to be fetched or shared.
 */
export type MakeBackup = { file?: string, passphrase?: string, 
/**
 * With the original photos, unless this is false.
 */
photos?: boolean, };

/**
 * Writes everything as CSV and JSON. Without `file` it lies among the made files.
 */
export type MakeExport = { file?: string, 
/**
 * With copies of the photos, if this is true.
 */
photos?: boolean, 
/**
 * With the places where plants were picked, in tables and photos, if this is true.
 */
places?: boolean, };

/**
 * Saves what can be read of a journal that shows damage, and sets the damaged file aside.
 */
export type MakeRescue = Record<symbol, never>;

/**
 * The jar whose marc is in this one, with its own ratio.
 */
export type MarcOf = { jar: string, code: string, name: string, ratio_ml_per_g: number | null, };

/**
 * How much of one item of the stock.
 */
export type Measure = { index: number, ml: number, g: number, };

/**
 * All wishes as one list of what to pick and what to buy.
 */
export type MergePlans = Record<symbol, never>;

/**
 * What came in, or would.
 */
export type MergeReport = { deeds: number, rows: Array<NounChanges>, 
/**
 * What the first 200 of the deeds say, oldest first.
 */
told: Array<Message>, photos_new: number, photos_missing: number, 
/**
 * Entries of the backup that are damaged, by name.
 */
damaged: Array<string>, damaged_around: boolean, 
/**
 * What does not add up afterwards, such as a lot that both phones used up, or a clock that was
 * ahead; a sentence for each.
 */
faults: Array<Message>, 
/**
 * Whether it can be taken back.
 */
can_undo: boolean, };

/**
 * The answer to [`MergePlans`].
 */
export type MergedPlan = { wishes: Array<WishPlan>, pick: Array<ToPick>, buy: Array<ToBuyAll>, notes: Array<Note>, };

/**
 * Something that the core says.
 */
export type Message = string;

/**
 * What of a recipe can be missed.
 */
export type Missed = "glycerin_percent_vol" | "fortify_percent_vol" | Target | Message;

/**
 * The answer to [`DescribeMixture`].
 */
export type MixtureDescribed = { liquid: Liquid, notes: Array<Note>, };

/**
 * The answer to [`ReachMixture`].
 */
export type MixtureReached = { reached: boolean, pours: Array<Measure>, liquid: Liquid, short_of: Array<MixtureShortfall>, notes: Array<Note>, };

/**
 * A target that was missed.
 */
export type MixtureShortfall = { 
/**
 * Which one.
 */
target: Target, 
/**
 * What was wanted, in the unit its name ends in.
 */
wanted: number, 
/**
 * What the nearest mixture gives.
 */
got: number, };

/**
 * A moisture as one figure or as an interval.
 */
export type Moisture = number | Interval;

/**
 * Where a caution is said.
 */
export type Moment = "pick" | "make" | "use" | "read";

/**
 * Whole months on the ring of the year, by the first and the last from 1 to 12.
 */
export type MonthSpan = { from_month: number, to_month: number, };

/**
 * One finished plain sentence.
 */
export type Note = { 
/**
 * A stable word for programs.
 */
code: string, 
/**
 * The sentence.
 */
text: Message, 
/**
 * Where it comes from; none where no source was found.
 */
source: string | null, 
/**
 * How sure it is.
 */
status: Status, };

/**
 * What a row is about.
 */
export type Noun = "herb" | "bed" | "harvest" | "photo" | "tray" | "weighing" | "supply" | "jar" | "discard" | "setting" | "shake" | "straining" | "bottle" | "use" | "check" | "recipe" | "dropper" | "plan" | "portrait";

/**
 * Rows of one noun, here and in the backup.
 */
export type NounBoth = { noun: Noun, here: number, there: number, };

/**
 * How the rows of a noun have changed.
 */
export type NounChanges = { noun: Noun, new: number, changed: number, gone: number, };

/**
 * How many rows a noun has.
 */
export type NounCount = { noun: Noun, count: number, };

/**
 * What a look at a bottle told.
 */
export type Outcome = "good" | "doubtful" | "bad";

/**
 * A sample of the lot dried to constant weight.
 */
export type OvenSample = { fresh_g: number, dry_g: number, };

/**
 * What a maker wrote down of a herb of their own; nothing for a herb of the tables.
 */
export type OwnFigures = { 
/**
 * Water in the fresh plant, % of its weight.
 */
water_wet_percent: Interval | null, 
/**
 * The strength it wants, % vol.
 */
strength_percent_vol: number | null, 
/**
 * What to beware of.
 */
caution: string | null, 
/**
 * What it is mistaken for.
 */
look_alikes: string | null, };

/**
 * A fresh to dry ratio of one finished tray.
 */
export type OwnRatio = { harvest: string, picked_at: string, bed: string | null, part: string, fresh_mass_g: number, dry_mass_g: number, ratio_fresh_per_dry: number, };

/**
 * The days on which a part was picked in one year.
 */
export type OwnYear = { year: number, days: Array<string>, };

/**
 * The paper in the printer.
 */
export type Paper = "a4" | "letter";

/**
 * The published water content of one part.
 */
export type PartWater = { part: string, water_wet_percent: Interval, ratio_fresh_per_dry: Interval, source: string, status: Status, };

/**
 * How many labels of a size a sheet takes.
 */
export type PerSheet = { a4: number, letter: number, };

/**
 * The last pH that counts for a liquid, with the range in which the real one lies.
 */
export type PhShown = { ph: Interval, read_with: ReadWith | null, at: string, 
/**
 * The code of the bottle it was read in, where that is another one.
 */
read_in: string | null, 
/**
 * Whether acid protects it wherever in the range it lies.
 */
is_acid_enough: boolean, told: Note, };

/**
 * What is known of one photo.
 */
export type PhotoCard = { hash: string, name: string | null, width: number | null, height: number | null, has_preview: boolean, taken_at: string | null, zone_known: boolean, place: Place | null, bytes: number, note: Message | null, };

/**
 * The answer to [`TakePhotoChunk`]: the photo once the last piece came.
 */
export type PhotoChunkTaken = { taken: PhotoTaken | null, };

/**
 * A photo was kept.
 */
export type PhotoTaken = { photo: PhotoCard, duplicate: boolean, used_in: Array<string>, };

/**
 * When to pick one part of a herb.
 */
export type PickingRow = { herb: string, common: Message, part: string, 
/**
 * As each calendar prints it; empty where none does.
 */
published: Array<PublishedMonths>, 
/**
 * The same joined.
 */
months: Array<MonthSpan>, 
/**
 * The latest year first.
 */
own: Array<OwnYear>, ready: Ready | null, };

/**
 * What a photo can be taken of.
 */
export type PicturedKind = "jar" | "bottle" | "bed" | "herb";

/**
 * A point on the globe (WGS 84).
 */
export type Place = { 
/**
 * Latitude in degrees, north positive.
 */
lat: number, 
/**
 * Longitude in degrees, east positive.
 */
lon: number, };

/**
 * What does it take to have these bottles by then?
 */
export type PlanBottles = { herb: string, part: string, preparation: string, state: PlantState, bottles: number, bottle_ml: number, ready_on: string, stock?: Array<StockItem>, yearly_use_ml?: number, gifts?: boolean, 
/**
 * A deliberate yes to what the list of poisonous plants asks.
 */
confirmed?: boolean, };

/**
 * What `people` jars of a recipe need, each of `jar_ml`.
 */
export type PlanClass = { recipe?: string, jar?: string, people: number, jar_ml: number, };

/**
 * A wish was written.
 */
export type PlanWritten = { wish: WishLine, deed: string, changed: Array<Noun>, };

/**
 * A plant that goes into the jar. Its water is what is stated, what a sample shows, or what is usual.
 */
export type Plant = { lot?: Lot, herb: string, part: string, state: PlantState, mass_g: number, moisture_wet_percent?: Interval, sample?: PlantSample, };

/**
 * A plant that was put in, with its water.
 */
export type PlantFigure = { part: string, state: PlantState, mass_g: number, moisture_wet_percent: Interval, };

/**
 * A plant of the recipe with the water it brings.
 */
export type PlantLine = { lot: Lot | null, herb: string, common: Message, part: string, state: PlantState, mass_g: number, moisture_wet_percent: Interval, basis: Message, };

/**
 * A little of the lot, dried to constant weight; unless named, the scale shows what the figures show.
 */
export type PlantSample = { 
/**
 * Before.
 */
fresh_g: number, 
/**
 * After.
 */
dry_g: number, 
/**
 * The step of the scale it was weighed on.
 */
scale_step_g?: number, };

/**
 * Whether plant still holds the water it grew with.
 */
export type PlantState = "fresh" | "dried" | "cooked";

/**
 * A photo of a jar, a bottle, a bed or an own herb.
 */
export type PortraitLine = { id: string, hash: string, at: string, has_preview: boolean, 
/**
 * Whether it stands in the place of the drawing.
 */
shown: boolean, };

/**
 * The photos of a thing were written.
 */
export type PortraitsWritten = { portraits: Array<PortraitLine>, deed: string, changed: Array<Noun>, };

/**
 * A measured ingredient: exactly one of `g` and `ml` (at 20 °C), and what its kind needs.
 */
export type Pour = { kind: IngredientKind, g?: number, ml?: number, strength_percent_vol?: number, purity_percent_mass?: number, acidity_g_per_100ml?: number, sugar_g_per_l?: number, sugar_percent_mass?: number, water_percent_mass?: number, oil?: string, };

/**
 * The composition was poured.
 */
export type PourJar = { composition: Composition, name?: string, poured_at?: string, place?: string, note?: string, shake?: boolean, marc_of?: string, };

/**
 * One liquid of the recipe.
 */
export type PourLine = { 
/**
 * Its kind.
 */
kind: IngredientKind, 
/**
 * Its name with the figure on its label.
 */
name: Message, 
/**
 * How much, mL at 20 C as it is measured out.
 */
ml: number, 
/**
 * How much, g.
 */
g: number, 
/**
 * The supply it comes from.
 */
supply: string | null, };

/**
 * A liquid that was poured.
 */
export type PouredFigure = { kind: IngredientKind, ml: number, };

/**
 * A kind of preparation.
 */
export type PreparationLine = { key: string, name: Message, fresh: boolean, dried: boolean, cooked: boolean, liquids: Array<IngredientKind>, summary: Message, };

/**
 * The answer to [`ListPreparations`].
 */
export type Preparations = { preparations: Array<PreparationLine>, };

/**
 * Makes the preview of a photo, and tells anew what is known of it: only unpacking shows whether
 * the picture is whole.
 */
export type PreviewPhoto = { hash: string, };

/**
 * The card on paper.
 */
export type PrintCard = { recipe?: string, jar?: string, size: CardSize, note: boolean, };

/**
 * A card for each of them, as one file.
 */
export type PrintClassCards = { recipe?: string, jar?: string, people: number, jar_ml: number, size: CardSize, note: boolean, };

/**
 * A label for each of them, on sheets.
 */
export type PrintClassLabels = { recipe?: string, jar?: string, people: number, jar_ml: number, paper: Paper, };

/**
 * What [`TraceForward`] answers, on paper.
 */
export type PrintForward = { of: TraceForward, paper: Paper, };

/**
 * Labels on paper, one for each bottle and jar.
 */
export type PrintLabels = { bottles?: Array<string>, jars?: Array<string>, paper: LabelPaper, label: LabelSize, gift: boolean, ethanol: boolean, use_for?: Purpose, 
/**
 * Places of the first sheet that are used already.
 */
skip?: number, };

/**
 * The season's book, on paper.
 */
export type PrintSeason = { year: number, paper: Paper, };

/**
 * The chain from a bottle or a jar back to its beds, on paper.
 */
export type PrintTrace = { bottle?: string, jar?: string, paper: Paper, };

/**
 * A file for the maker to keep.
 */
export type PrintedFile = { file_name: string, media_type: string, base64: string, remarks: Array<string>, };

/**
 * What to pour and what the liquid will be.
 */
export type Proposal = { controls: Controls, pours: Array<PourLine>, poured_ml: number, plants: Array<PlantLine>, liquid: Liquid, reached: boolean, short_of: Array<Shortfall>, would_help: Array<Note>, keeping: Keeping, shelf_life: ShelfLife, jar: JarRoom, comes_out: ComesOut, steep_days: Days, cautions: Array<Caution>, reasons: Array<Note>, };

/**
 * What one calendar prints, its months turned to the maker's half of the globe.
 */
export type PublishedMonths = { stage: Message, 
/**
 * Empty where it names none.
 */
months: Array<MonthSpan>, source: string | null, status: Status, };

/**
 * What it is meant for.
 */
export type Purpose = "inside" | "outside" | "food";

/**
 * How much of each, to end there?
 */
export type ReachMixture = { stock: Array<StockItem>, plants?: Array<WetPlant>, targets: Targets, };

/**
 * What is in this code? Nothing is written.
 */
export type ReadRecipeCode = { text: string, 
/**
 * A deliberate yes to what the list of poisonous plants asks.
 */
confirmed?: boolean, };

/**
 * What a pH was read with.
 */
export type ReadWith = "strip" | "meter";

/**
 * Why a part may be ready within three weeks.
 */
export type Ready = { 
/**
 * Whether its months are on, moved by a clear shift.
 */
is_now: boolean, 
/**
 * The month in which they begin within the three weeks; none where they are on, or where only own years speak for it.
 */
begins_in: number | null, 
/**
 * The days of earlier years that fall into these three weeks.
 */
picked_on: Array<string>, };

/**
 * A recipe.
 */
export type RecipeLine = { id: string, name: string, jar: string | null, preparation: string, preparation_name: Message, plants: Array<RecipePlantLine>, stock: Array<StockItem>, ratio_ml_per_g: number | null, strength_percent_vol: number | null, glycerin_percent_vol: number | null, fortify_percent_vol: number | null, stars: number | null, note: string | null, };

/**
 * A plant of a recipe.
 */
export type RecipePlantLine = { herb: string, common: Message, part: string, state: PlantState, mass_g: number, };

/**
 * The answer to [`ReadRecipeCode`]: the recipe, worked out with the liquids on the reader's own shelf.
 */
export type RecipeRead = { name: string, note: string | null, preparation_name: Message, proposal: Proposal, steps: Array<Step>, 
/**
 * Why the reader's own liquids do not make it; it is then worked out with those of the recipe.
 */
own_liquids_fail: Message | null, 
/**
 * Whether it may be kept: nothing that should not be made comes into the book.
 */
may_be_kept: boolean, 
/**
 * The recipe of the book that says the same.
 */
kept_as: string | null, };

/**
 * A recipe was written.
 */
export type RecipeWritten = { recipe: RecipeLine, deed: string, changed: Array<Noun>, };

/**
 * The answer to [`ListRecipes`].
 */
export type Recipes = { recipes: Array<RecipeLine>, };

/**
 * Something was picked and weighed.
 */
export type RecordHarvest = { herb: string, part: string, gross_g: number, tare_g?: number, picked_at?: string, bed?: string, bed_name?: string, 
/**
 * Nobody planted what stands in the new bed.
 */
bed_wild?: boolean, stage?: string, surface: Surface, note?: string, photos?: Array<string>, look_alike_ruled_out?: boolean, 
/**
 * The mass was asked about and is right.
 */
confirm_odd?: boolean, };

/**
 * Photos of one thing, by the hashes that their uploads gave.
 */
export type RecordPortrait = { kind: PicturedKind, id: string, photos: Array<string>, };

/**
 * A jar once more with this year's plants.
 */
export type RepeatJar = { jar: string, plants?: Array<Plant>, };

/**
 * What was saved of a damaged journal and what was not.
 */
export type RescueReport = { at: string, 
/**
 * The damaged file, which is kept.
 */
damaged_file: string, 
/**
 * What was saved, what was not, what to do: messages, which the book keeps until they are read.
 */
sentences: Array<string>, deeds: number, deeds_lost: number, 
/**
 * Entries that were saved as they stood although what was written about them is lost.
 */
entries_as_they_stood: Array<NounCount>, };

/**
 * A part of the strained liquid that no bottle took.
 */
export type RestLine = { id: string, at: string, ml: number, went_to: WentTo, reason: string | null, };

/**
 * A state of the journal that can be gone back to.
 */
export type RestorePoint = { 
/**
 * What `restore.back` calls it.
 */
point: string, 
/**
 * When it was set.
 */
at: string, 
/**
 * Its size.
 */
bytes: number, };

/**
 * The answer to [`ListRestorePoints`].
 */
export type RestorePoints = { 
/**
 * Latest first.
 */
points: Array<RestorePoint>, 
/**
 * Set while the journal is missing or empty.
 */
lost: LostBook | null, };

/**
 * A journal was put in the place of another.
 */
export type Restored = { rows: Array<NounCount>, photos_new: number, photos_missing: number, faults: Array<Message>, 
/**
 * Whether it can be taken back: not where there was no journal before.
 */
can_undo: boolean, };

/**
 * Which job is still at work? A page that was loaded anew asks this.
 */
export type RunningJob = Record<symbol, never>;

/**
 * The days between which what is left runs out.
 */
export type RunsOut = { low_on: string, high_on: string, because: Message, };

/**
 * A sample of the lot was dried to constant weight.
 */
export type SampleTray = { tray: string, fresh_g: number, dry_g: number, scale_step_g?: number, };

/**
 * Bottles that are wanted by a day.
 */
export type SavePlan = { herb: string, part: string, preparation: string, state: PlantState, bottles: number, bottle_ml: number, ready_on: string, gifts?: boolean, 
/**
 * A deliberate yes to what the list of poisonous plants asks.
 */
confirmed?: boolean, };

/**
 * Light or dark.
 */
export type Scheme = "system" | "light" | "dark";

/**
 * What is looked for; every word must be found, its beginning is enough.
 */
export type Search = { text: string, limit?: number, };

/**
 * The answer to [`ShowSeason`].
 */
export type Season = { year: number, rows: Array<YieldRow>, made: Array<MadeRow>, binned: ThrownAway, left: LeftOver, };

/**
 * The settings.
 */
export type Settings = { units: Units, scheme: Scheme, cautions_seen: boolean, 
/**
 * Who made it and how to reach them, for labels.
 */
maker: string | null, 
/**
 * The number of the poison line, for labels.
 */
poison_line: string | null, 
/**
 * Which half of the globe the garden lies in.
 */
hemisphere: Hemisphere, 
/**
 * Whether this is the demo season, which `demo.end` removes.
 */
is_demo: boolean, 
/**
 * Whether the journal is missing or empty, so that the maker must choose what takes its place.
 */
is_lost: boolean, };

/**
 * The settings were changed.
 */
export type SettingsWritten = { deed: string, changed: Array<Noun>, units: Units, scheme: Scheme, cautions_seen: boolean, 
/**
 * Who made it and how to reach them, for labels.
 */
maker: string | null, 
/**
 * The number of the poison line, for labels.
 */
poison_line: string | null, 
/**
 * Which half of the globe the garden lies in.
 */
hemisphere: Hemisphere, 
/**
 * Whether this is the demo season, which `demo.end` removes.
 */
is_demo: boolean, 
/**
 * Whether the journal is missing or empty, so that the maker must choose what takes its place.
 */
is_lost: boolean, };

/**
 * How grave a caution is.
 */
export type Severity = "stop" | "not for" | "warn" | "note";

/**
 * The jar was shaken.
 */
export type ShakeJar = { jar: string, at?: string, };

/**
 * One shaking.
 */
export type ShakeLine = { id: string, at: string, };

/**
 * How long it keeps once strained, and what that rests on.
 */
export type ShelfLife = { 
/**
 * Days; none where no figure was found.
 */
days: Interval | null, 
/**
 * Where the figure comes from or why there is none, how an oil ages, what lengthens it.
 */
notes: Array<Note>, };

/**
 * How much later one's own picks are than the published months; below nothing they are earlier. Each end holds nine times
 * out of ten.
 */
export type Shift = { weeks: number, weeks_low: number, weeks_high: number, 
/**
 * What it was learned from: years, and parts of herbs.
 */
years: number, plants: number, };

/**
 * A target that was missed.
 */
export type Shortfall = { 
/**
 * Which.
 */
target: Missed, 
/**
 * What was wanted, in its unit.
 */
wanted: number, 
/**
 * What comes nearest.
 */
got: number, };

/**
 * One bed.
 */
export type ShowBed = { id: string, };

/**
 * One bottle, by its id or by the code on its label.
 */
export type ShowBottle = { id?: string, code?: string, };

/**
 * When to pick the parts of one herb, or every part that was ever picked.
 */
export type ShowCalendar = { key?: string, };

/**
 * One harvest.
 */
export type ShowHarvest = { id: string, };

/**
 * One herb with what is published and what the maker found.
 */
export type ShowHerb = { key: string, };

/**
 * One jar.
 */
export type ShowJar = { id: string, };

/**
 * How far is it?
 */
export type ShowJob = { job: string, };

/**
 * One year of the garden.
 */
export type ShowSeason = { year: number, };

/**
 * The settings as they stand.
 */
export type ShowSettings = Record<symbol, never>;

/**
 * One tray.
 */
export type ShowTray = { id: string, };

/**
 * Part of a harvest goes onto a tray.
 */
export type StartTray = { harvest: string, mass_g: number, name?: string, tare_g?: number, started_at?: string, air?: Air, 
/**
 * The mass was asked about and is right.
 */
confirm_odd?: boolean, };

/**
 * How sure a fact is.
 *
 * Only [`Status::Confirmed`] says that the text named as source was read.
 */
export type Status = "confirmed" | "partly confirmed" | "memory" | "practice" | "proposal" | "computed" | "own";

/**
 * A step of the work, for the page of a jar.
 */
export type Step = { 
/**
 * What it is called.
 */
title: Message, 
/**
 * What to do.
 */
text: Message, 
/**
 * Why.
 */
why: Message | null, 
/**
 * Where it comes from.
 */
source: string | null, 
/**
 * How sure it is.
 */
status: Status, };

/**
 * A liquid at hand, and how much of it may or must be used.
 */
export type StockItem = { kind: IngredientKind, strength_percent_vol?: number, purity_percent_mass?: number, acidity_g_per_100ml?: number, sugar_g_per_l?: number, sugar_percent_mass?: number, water_percent_mass?: number, oil?: string, available_ml?: number, exactly_ml?: number, supply?: string, };

/**
 * What there is of one preparation of the same herbs.
 */
export type StockLine = { preparation: string, preparation_name: Message, herbs: Array<Message>, bottles: number, left_ml: number, runs_out: RunsOut | null, };

/**
 * How far a stop goes.
 */
export type StopKind = "all" | "inside" | "unless_licensed" | "ask";

/**
 * The jar was strained: exactly one of `came_out_ml` and `came_out_g`. A pH is taken of what acid
 * keeps, of all that came out; `read_with` is what it was read with.
 */
export type StrainJar = { jar: string, came_out_ml?: number, came_out_g?: number, how: How, ph?: number, read_with?: ReadWith, at?: string, note?: string, };

/**
 * What came out, and what the marc kept after it.
 */
export type StrainingLine = { id: string, at: string, how: How, came_out_ml: number, came_out_g: number | null, retained_ml: Interval, retained_ml_per_g_dry: Interval | null, ph: number | null, read_with: ReadWith | null, note: string | null, };

/**
 * A wish is given up or come true.
 */
export type StrikePlan = { id: string, };

/**
 * A photo does not belong to this thing. Its bytes stay in the album, as the entry can be undone.
 */
export type StrikePortrait = { id: string, };

/**
 * A weigh-in was a mistake.
 */
export type StrikeWeighing = { id: string, };

/**
 * The answer to [`ListSupplies`].
 */
export type Supplies = { supplies: Array<Supply>, };

/**
 * A bottle on the shelf.
 */
export type Supply = { id: string, name: string, item: StockItem, size_ml: number, left_ml: number, price: number | null, currency: string | null, bought_on: string | null, best_before: string | null, };

/**
 * A bottle was written.
 */
export type SupplyWritten = { supply: Supply, deed: string, changed: Array<Noun>, };

/**
 * Water on the outside of the plant when it was weighed.
 */
export type Surface = "dry" | "dew" | "rain" | "washed";

/**
 * The maker has taken a made backup away, so that it lies elsewhere now.
 */
export type TakeBackup = { file_name: string, };

/**
 * The run ends; what lies on the tray becomes a dried lot.
 */
export type TakeDownTray = { tray: string, gross_g?: number, at?: string, 
/**
 * It was tried by hand and is dry.
 */
snap_test?: boolean, 
/**
 * The weight was asked about and is right.
 */
confirm_odd?: boolean, };

/**
 * A piece of a file that the maker picked, at most 1 MiB; the pieces come in order.
 */
export type TakeFileChunk = { 
/**
 * 1 to 64 letters, digits or hyphens, the same for all pieces of a file.
 */
upload: string, base64: string, 
/**
 * Whether this piece begins the file; what lay there under the same name is gone then.
 */
first: boolean, };

/**
 * The recipe of a code is to be kept.
 */
export type TakeInRecipe = { text: string, confirmed?: boolean, };

/**
 * A piece of a photo, at most 1 MiB, where the platform carries only text.
 */
export type TakePhotoChunk = { upload: string, base64: string, last: boolean, name?: string, };

/**
 * One of the [`Targets`].
 */
export type Target = "strength_percent_vol" | "glycerol_percent_mass" | "sugar_percent_mass" | "acidity_g_per_100ml" | "volume_ml" | "poured_ml";

/**
 * Where the liquid should end.
 */
export type Targets = { strength_percent_vol?: number, glycerol_percent_mass?: number, sugar_percent_mass?: number, acidity_g_per_100ml?: number, volume_ml?: number, poured_ml?: number, };

/**
 * What plants were thrown away in the year, whenever they were picked; a tray thrown away while it
 * was drying counts as what was laid out on it fresh.
 */
export type ThrownAway = { fresh_g: number, dry_g: number, };

/**
 * Where the time of picking comes from.
 */
export type TimeFrom = "typed" | "photo" | "clock";

/**
 * A liquid to buy.
 */
export type ToBuy = { 
/**
 * Its kind.
 */
kind: IngredientKind, 
/**
 * Its name.
 */
name: Message, 
/**
 * How much is missing, mL.
 */
ml: number, };

/**
 * What the shelf lacks for all wishes.
 */
export type ToBuyAll = { kind: IngredientKind, name: Message, needed_ml: number, on_the_shelf_ml: number, buy_ml: number, };

/**
 * What there must be of one plant for all wishes, and what of it is there.
 */
export type ToPick = { herb: string, common: Message, part: string, 
/**
 * Whether it goes into the jars fresh or dried: the two are picked on days of their own.
 */
state: PlantState, 
/**
 * What is still to be picked, what trimming takes and what is there already reckoned in.
 */
pick_fresh_g: Interval, 
/**
 * The dried plant for the wishes that are made of dried plant.
 */
dry_needed_g: Interval | null, 
/**
 * Dried lots of it that are left.
 */
dried_left_g: number, 
/**
 * What will be dry of that which is on the rack.
 */
drying_dry_g: Interval | null, pick_by: string, start_on: string, };

/**
 * Liquid was added to a standing jar.
 */
export type TopUpJar = { jar: string, pours: Array<TopUpPour>, at?: string, note?: string, };

/**
 * One liquid that was added.
 */
export type TopUpPour = { item: StockItem, ml: number, };

/**
 * Where does this bottle or jar come from?
 */
export type TraceBack = { bottle?: string, jar?: string, };

/**
 * What became of it? Exactly one of bed, harvest, supply, jar, or both days.
 */
export type TraceForward = { bed?: string, harvest?: string, supply?: string, jar?: string, 
/**
 * First day of picking.
 */
from?: string, 
/**
 * Last day of picking.
 */
to?: string, };

/**
 * The answer to [`TraceBack`].
 */
export type TracedBack = { chain: Chain, };

/**
 * A bottle that holds any of it, or held it.
 */
export type TracedBottle = { id: string, code: string, name: string, jar: string, size_ml: number, left_ml: number, state: BottleState, 
/**
 * Of one that stands on the shelf.
 */
best_before: string | null, 
/**
 * Whether it must not be used any more.
 */
bin_it: boolean, 
/**
 * Whether a pH was read at which acid may not protect it.
 */
not_acid: boolean, place: string | null, };

/**
 * The answer to [`TraceForward`].
 */
export type TracedForward = { harvests: Array<TracedHarvest>, trays: Array<TracedTray>, jars: Array<TracedJar>, bottles: Array<TracedBottle>, people: Array<TracedPerson>, };

/**
 * A harvest that something came of.
 */
export type TracedHarvest = { id: string, code: string, common: Message, part: string, picked_at: string, fresh_mass_g: number, 
/**
 * What was thrown away of it fresh.
 */
binned_g: number, };

/**
 * A jar that holds any of it.
 */
export type TracedJar = { id: string, code: string, name: string, preparation_name: Message, poured_at: string, failed: boolean, };

/**
 * Somebody who was given a bottle.
 */
export type TracedPerson = { to: string, bottle: string, code: string, name: string, at: string, };

/**
 * A tray that something came of.
 */
export type TracedTray = { id: string, code: string, name: string, harvest: string, started_at: string, 
/**
 * What was thrown away of the dried lot.
 */
binned_g: number, 
/**
 * What was laid out fresh, where it was thrown away while it was drying.
 */
lost_fresh_g: number | null, };

/**
 * A tray in a list.
 */
export type TrayCard = { id: string, code: string, name: string, harvest: string, herb: string, common: Message, part: string, photo: string | null, started_at: string, days: number, fresh_mass_g: number, tare_g: number, mass_now_g: number, last_weighed_at: string | null, state: TrayState, taken_down_at: string | null, dried_left_g: number | null, moisture_now_wet_percent: Interval | null, target_mass_g: Interval, stop_gross_g: Interval, hours_left: Interval | null, 
/**
 * When the next weigh-in is worth the walk; none once the tray is dry.
 */
weigh_at: string | null, 
/**
 * What most stands in the way of a time left.
 */
why: DryingReason | null, is_dry: boolean, 
/**
 * It rests at its stop weight, and only the hand can tell that it is dry.
 */
probably_dry: boolean, forgotten: boolean, says: Message, };

/**
 * A tray of the rack; how it dries is drawn while it does.
 */
export type TrayLine = { course: Course | null, id: string, code: string, name: string, harvest: string, herb: string, common: Message, part: string, photo: string | null, started_at: string, days: number, fresh_mass_g: number, tare_g: number, mass_now_g: number, last_weighed_at: string | null, state: TrayState, taken_down_at: string | null, dried_left_g: number | null, moisture_now_wet_percent: Interval | null, target_mass_g: Interval, stop_gross_g: Interval, hours_left: Interval | null, 
/**
 * When the next weigh-in is worth the walk; none once the tray is dry.
 */
weigh_at: string | null, 
/**
 * What most stands in the way of a time left.
 */
why: DryingReason | null, is_dry: boolean, 
/**
 * It rests at its stop weight, and only the hand can tell that it is dry.
 */
probably_dry: boolean, forgotten: boolean, says: Message, };

/**
 * A tray with its weigh-ins and its forecast.
 */
export type TrayPage = { dry_matter_g: Interval, basis: Basis, 
/**
 * Why the forecast says no more than it does.
 */
reasons: Array<Note>, 
/**
 * How the hand tells that it is dry.
 */
feel: Note, notes: Array<Note>, 
/**
 * What the scale shows when weigh-ins begin to tell of the end; none once they do.
 */
telling_gross_g: number | null, note: string | null, sample: OvenSample | null, 
/**
 * The air where the tray was laid out.
 */
air: Air | null, air_limit_wet_percent: Interval | null, 
/**
 * What of the dried lot was used in another way than in a jar, or thrown away.
 */
binned: Array<Binned>, lost: LostLine | null, id: string, code: string, name: string, harvest: string, herb: string, common: Message, part: string, photo: string | null, started_at: string, days: number, fresh_mass_g: number, tare_g: number, mass_now_g: number, last_weighed_at: string | null, state: TrayState, taken_down_at: string | null, dried_left_g: number | null, moisture_now_wet_percent: Interval | null, target_mass_g: Interval, stop_gross_g: Interval, hours_left: Interval | null, 
/**
 * When the next weigh-in is worth the walk; none once the tray is dry.
 */
weigh_at: string | null, 
/**
 * What most stands in the way of a time left.
 */
why: DryingReason | null, is_dry: boolean, 
/**
 * It rests at its stop weight, and only the hand can tell that it is dry.
 */
probably_dry: boolean, forgotten: boolean, says: Message, 
/**
 * When it will be dry enough, in hours on the rack.
 */
ends_hours: Interval | null, weighings: Array<WeighingLine>, curve: Array<CurvePoint>, };

/**
 * The answer to [`ShowTray`].
 */
export type TrayShown = { tray: TrayPage, };

/**
 * Whether the run goes on.
 */
export type TrayState = "drying" | "dry" | "cooked" | "lost";

/**
 * A tray was written.
 */
export type TrayWritten = { tray: TrayPage, deed: string, changed: Array<Noun>, };

/**
 * The answer to [`ListTrays`].
 */
export type Trays = { trays: Array<TrayLine>, more: boolean, };

/**
 * Takes a deed back; taking back an undo does it again.
 */
export type UndoDeed = { deed: string, };

/**
 * Puts the journal of before the last restore or merge back; doing it again changes them back.
 */
export type UndoRestore = Record<symbol, never>;

/**
 * Units that numbers are shown in.
 */
export type Units = "metric" | "us";

/**
 * Some was used: exactly one of the measures. A dropper is one that was counted.
 */
export type UseBottle = { bottle: string, ml?: number, teaspoons?: number, tablespoons?: number, droppers?: number, drops?: number, dropper?: string, at?: string, note?: string, };

/**
 * One use.
 */
export type UseLine = { id: string, at: string, ml: number, note: string | null, };

/**
 * Whether it keeps, from best to worst.
 */
export type Verdict = "keeps" | "keeps cold" | "use now" | "do not make";

/**
 * Water activity by both mixing rules.
 */
export type WaterActivity = { 
/**
 * The higher of the two rules, never below either: keeping is judged by this.
 */
highest: Interval, 
/**
 * Ross 1975: the product of the activities of each solute alone in all of the water.
 */
by_ross: Interval, 
/**
 * Multi-solute Norrish (FAO Agricultural Services Bulletin 149), held in honey to what was measured.
 */
by_norrish: Interval, };

/**
 * One way to use it.
 */
export type Way = { 
/**
 * What to do.
 */
text: Message, 
/**
 * What to beware of.
 */
care: Message | null, 
/**
 * Where it comes from.
 */
source: string | null, 
/**
 * How sure it is.
 */
status: Status, };

/**
 * The answer to [`ListWays`]; none where it is not to be swallowed or nothing is known.
 */
export type Ways = { ways: Array<Way>, };

/**
 * A tray was weighed as it stands.
 */
export type WeighTray = { tray: string, gross_g: number, at?: string, air?: Air, 
/**
 * The weight was asked about and is right.
 */
confirm_odd?: boolean, 
/**
 * It was tried by hand and is dry: the thickest part breaks, a leaf crumbles.
 */
snap_test?: boolean, };

/**
 * One weigh-in.
 */
export type WeighingFigure = { hours: number, mass_g: number, };

/**
 * A weigh-in of a tray.
 */
export type WeighingLine = { id: string, at: string, hours: number, gross_g: number, mass_g: number, odd: boolean, snap_test: boolean, air: Air | null, };

/**
 * Where a part of a lot went that became nothing else in the journal.
 */
export type WentTo = "used" | "thrown_away";

/**
 * A plant as the liquid meets it.
 */
export type WetPlant = { mass_g: number, moisture_wet_percent: Moisture, };

/**
 * A wish.
 */
export type WishLine = { id: string, herb: string, common: Message, part: string, preparation: string, preparation_name: Message, state: PlantState, bottles: number, bottle_ml: number, ready_on: string, gifts: boolean, };

/**
 * A wish with its own plan, or why there is none.
 */
export type WishPlan = { wish: WishLine, plan: BottlePlan | null, problem: Message | null, };

/**
 * The answer to [`ListPlans`].
 */
export type Wishes = { wishes: Array<WishLine>, };

/**
 * What a maker may want to do without.
 */
export type Without = "alcohol" | "honey" | "sugar" | "sweet" | "vinegar" | "oil" | "glycerin" | "wine";

/**
 * The yield of an herb's part in a bed.
 */
export type YieldRow = { herb: string, common: Message, part: string, bed: string | null, fresh_g: number, 
/**
 * What was taken down dry of it.
 */
dry_g: number, 
/**
 * Grams of fresh that became one dried, over the trays taken down.
 */
ratio_fresh_per_dry: number | null, harvests: number, photo: string | null, };

/** Every command by its name. */
export interface Commands {
  "mixture.describe": { request: DescribeMixture; reply: MixtureDescribed };
  "mixture.reach": { request: ReachMixture; reply: MixtureReached };
  "drying.estimate": { request: EstimateDrying; reply: DryingEstimated };
  "herb.list": { request: ListHerbs; reply: Herbs };
  "herb.find": { request: FindHerb; reply: FoundHerbs };
  "herb.show": { request: ShowHerb; reply: HerbPage };
  "herb.calendar": { request: ShowCalendar; reply: Calendar };
  "herb.add": { request: AddHerb; reply: HerbWritten };
  "herb.correct": { request: CorrectHerb; reply: HerbWritten };
  "bed.list": { request: ListBeds; reply: Beds };
  "bed.show": { request: ShowBed; reply: BedShown };
  "bed.add": { request: AddBed; reply: BedWritten };
  "bed.correct": { request: CorrectBed; reply: BedWritten };
  "harvest.estimate": { request: EstimateHarvest; reply: DryWeight };
  "harvest.record": { request: RecordHarvest; reply: HarvestWritten };
  "harvest.correct": { request: CorrectHarvest; reply: HarvestWritten };
  "harvest.list": { request: ListHarvests; reply: Harvests };
  "harvest.show": { request: ShowHarvest; reply: HarvestShown };
  "harvest.bin": { request: BinHarvest; reply: HarvestWritten };
  "photo.chunk": { request: TakePhotoChunk; reply: PhotoChunkTaken };
  "photo.preview": { request: PreviewPhoto; reply: PhotoCard };
  "portrait.record": { request: RecordPortrait; reply: PortraitsWritten };
  "portrait.correct": { request: CorrectPortrait; reply: PortraitsWritten };
  "portrait.strike": { request: StrikePortrait; reply: PortraitsWritten };
  "tray.start": { request: StartTray; reply: TrayWritten };
  "lot.cook": { request: CookLot; reply: TrayWritten };
  "tray.weigh": { request: WeighTray; reply: TrayWritten };
  "tray.take_down": { request: TakeDownTray; reply: TrayWritten };
  "tray.correct": { request: CorrectTray; reply: TrayWritten };
  "tray.sample": { request: SampleTray; reply: TrayWritten };
  "tray.bin": { request: BinTray; reply: TrayWritten };
  "tray.list": { request: ListTrays; reply: Trays };
  "tray.show": { request: ShowTray; reply: TrayShown };
  "weighing.correct": { request: CorrectWeighing; reply: TrayWritten };
  "weighing.strike": { request: StrikeWeighing; reply: TrayWritten };
  "supply.list": { request: ListSupplies; reply: Supplies };
  "supply.add": { request: AddSupply; reply: SupplyWritten };
  "supply.correct": { request: CorrectSupply; reply: SupplyWritten };
  "lot.list": { request: ListLots; reply: Lots };
  "preparation.list": { request: ListPreparations; reply: Preparations };
  "jar.compose": { request: Composition; reply: Proposal };
  "jar.pour": { request: PourJar; reply: JarWritten };
  "jar.list": { request: ListJars; reply: Jars };
  "jar.show": { request: ShowJar; reply: JarShown };
  "jar.correct": { request: CorrectJar; reply: JarWritten };
  "jar.fail": { request: FailJar; reply: JarWritten };
  "jar.advise": { request: AdviseJar; reply: Advice };
  "plan.bottles": { request: PlanBottles; reply: BottlePlan };
  "jar.shake": { request: ShakeJar; reply: JarWritten };
  "jar.top_up": { request: TopUpJar; reply: JarWritten };
  "jar.strain": { request: StrainJar; reply: JarWritten };
  "jar.empty": { request: EmptyJar; reply: JarWritten };
  "jar.marc": { request: ComposeMarc; reply: Composition };
  "jar.keep_recipe": { request: KeepRecipe; reply: RecipeWritten };
  "jar.repeat": { request: RepeatJar; reply: Composition };
  "recipe.list": { request: ListRecipes; reply: Recipes };
  "recipe.correct": { request: CorrectRecipe; reply: RecipeWritten };
  "recipe.compose": { request: ComposeRecipe; reply: Composition };
  "recipe.card": { request: DrawCard; reply: CardDrawn };
  "recipe.hand_out": { request: PrintCard; reply: PrintedFile };
  "recipe.class": { request: PlanClass; reply: ClassPlan };
  "recipe.class_cards": { request: PrintClassCards; reply: PrintedFile };
  "recipe.class_labels": { request: PrintClassLabels; reply: PrintedFile };
  "recipe.read_code": { request: ReadRecipeCode; reply: RecipeRead };
  "recipe.take_in": { request: TakeInRecipe; reply: RecipeWritten };
  "bottle.fill": { request: FillBottles; reply: BottlesFilled };
  "bottle.list": { request: ListBottles; reply: Bottles };
  "bottle.show": { request: ShowBottle; reply: BottleShown };
  "bottle.ways": { request: ListWays; reply: Ways };
  "bottle.use": { request: UseBottle; reply: BottleWritten };
  "bottle.give": { request: GiveBottle; reply: BottleWritten };
  "bottle.check": { request: CheckBottle; reply: BottleWritten };
  "bottle.bin": { request: BinBottle; reply: BottleWritten };
  "bottle.finish": { request: FinishBottle; reply: BottleWritten };
  "bottle.correct": { request: CorrectBottle; reply: BottleWritten };
  "dropper.count": { request: CountDropper; reply: DropperWritten };
  "dropper.list": { request: ListDroppers; reply: Droppers };
  "trace.back": { request: TraceBack; reply: TracedBack };
  "trace.forward": { request: TraceForward; reply: TracedForward };
  "trace.sheet": { request: PrintTrace; reply: PrintedFile };
  "trace.sheet_forward": { request: PrintForward; reply: PrintedFile };
  "label.single": { request: DrawLabel; reply: LabelDrawn };
  "label.sheet": { request: PrintLabels; reply: PrintedFile };
  "lot.find": { request: FindLot; reply: LotFound };
  "due.list": { request: ListDue; reply: Due };
  "due.calendar": { request: ExportDue; reply: PrintedFile };
  "journal.search": { request: Search; reply: Hits };
  "season.show": { request: ShowSeason; reply: Season };
  "season.book": { request: PrintSeason; reply: PrintedFile };
  "plan.save": { request: SavePlan; reply: PlanWritten };
  "plan.list": { request: ListPlans; reply: Wishes };
  "plan.strike": { request: StrikePlan; reply: PlanWritten };
  "plan.all": { request: MergePlans; reply: MergedPlan };
  "deed.undo": { request: UndoDeed; reply: DeedUndone };
  "deed.list": { request: ListDeeds; reply: Deeds };
  "setting.show": { request: ShowSettings; reply: Settings };
  "setting.change": { request: ChangeSettings; reply: SettingsWritten };
  "journal.about": { request: AboutJournal; reply: JournalAbout };
  "job.show": { request: ShowJob; reply: JobCard };
  "job.cancel": { request: CancelJob; reply: JobCard };
  "job.running": { request: RunningJob; reply: JobRunning };
  "file.chunk": { request: TakeFileChunk; reply: FileChunkTaken };
  "backup.about": { request: AboutBackup; reply: BackupAbout };
  "backup.make": { request: MakeBackup; reply: JobBegun };
  "backup.taken": { request: TakeBackup; reply: BackupTaken };
  "restore.look": { request: LookAtRestore; reply: JobBegun };
  "restore.apply": { request: ApplyRestore; reply: JobBegun };
  "restore.undo": { request: UndoRestore; reply: Restored };
  "restore.points": { request: ListRestorePoints; reply: RestorePoints };
  "restore.back": { request: GoBack; reply: Restored };
  "restore.anew": { request: BeginAnew; reply: BegunAnew };
  "merge.look": { request: LookAtMerge; reply: JobBegun };
  "merge.apply": { request: ApplyMerge; reply: JobBegun };
  "export.make": { request: MakeExport; reply: JobBegun };
  "import.look": { request: LookAtImport; reply: ImportLook };
  "import.apply": { request: ApplyImport; reply: ImportDone };
  "rescue.make": { request: MakeRescue; reply: RescueReport };
  "journal.check": { request: CheckJournal; reply: BookChecked };
  "journal.begin_check": { request: BeginCheck; reply: JobBegun };
  "demo.begin": { request: BeginDemo; reply: DemoShown };
  "demo.end": { request: EndDemo; reply: DemoShown };
}
