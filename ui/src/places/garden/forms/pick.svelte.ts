import { Failure, type Caution, type DryWeight, type HarvestPage, type RecordHarvest, type HerbLine, type LookAlike, type PhotoCard, type Surface } from "../../../api";
import { fieldMoment, wireMoment } from "../../../format/moment";
import { words } from "../../../words";
import type { MassUnit } from "../../../format/amount";
import { keepHere, keptHere } from "../../../kept/here";
import { Form, MassEntry } from "../../../state/form.svelte";
import { Latest } from "../../../state/latest";
import type { Draft, Session } from "../../../state/session";

export type PickedPhoto = {
  /** Tells two picks of one file apart while they travel. */
  turn: number;
  name: string;
  share: number;
  photo: PhotoCard | null;
  note: string | null;
  /** Its preview was made, or cannot be: what the card says of it holds. */
  seen: boolean;
};

/** A harvest form as this device keeps it until it is saved: a phone may end the app while its camera is open. */
type Unsaved = Pick<PickDraft, (typeof plainFields)[number]> & {
  herb: HerbLine | null;
  gross: [text: string, unit: MassUnit];
  tare: [text: string, unit: MassUnit];
  photos: { name: string; photo: PhotoCard; note: string | null }[];
};
const plainFields = ["part", "bed", "bedName", "wild", "surface", "stage", "note", "when"] as const;
const KEY = "pick";

/** The harvest form: what was filled in, what it comes to, and the look-alikes to rule out. */
export class PickDraft implements Draft {
  readonly form = new Form();
  readonly gross: MassEntry;
  readonly tare: MassEntry;
  herb = $state.raw<HerbLine | null>(null);
  part = $state("");
  bed = $state("");
  bedName = $state("");
  wild = $state(false);
  surface = $state<Surface>("dry");
  stage = $state("");
  note = $state("");
  when = $state("");
  ruledOut = $state(false);
  photos = $state.raw<PickedPhoto[]>([]);
  estimate = $state.raw<DryWeight | null>(null);
  lookAlikes = $state.raw<LookAlike[]>([]);
  /** What to know of the herb before it is picked: that it is poisonous, for the skin only, hard to tell. */
  warnings = $state.raw<Caution[]>([]);
  private turn = 0;
  private readonly latest = new Latest();
  /** The question that the estimate answers, as text. */
  private considered = "";

  constructor(
    private readonly session: Session,
    private readonly corrected: HarvestPage | null = null,
  ) {
    this.gross = new MassEntry(session.units, corrected?.gross_g);
    this.tare = new MassEntry(session.units, corrected?.tare_g || undefined);
    if (corrected) this.fill(corrected);
  }

  private fill(harvest: HarvestPage): void {
    this.part = harvest.part;
    this.bed = harvest.bed?.id ?? "";
    this.surface = harvest.surface;
    this.stage = harvest.stage ?? "";
    this.note = harvest.note ?? "";
    if (harvest.time_from === "typed") this.when = fieldMoment(new Date(harvest.picked_at));
    this.photos = harvest.photos.map((photo) => ({
      turn: ++this.turn,
      name: photo.name ?? photo.hash.slice(0, 8),
      share: 1,
      photo,
      note: photo.note,
      seen: true,
    }));
    this.estimate = harvest.estimate;
  }

  /** The form that was left unsaved on this device, or a new one. */
  static unsaved(session: Session): PickDraft {
    const draft = new PickDraft(session);
    const kept = session.preferences.kept.is_demo ? null : keptHere<Unsaved>(KEY);
    if (!kept) return draft;
    if (kept.herb) draft.choose(kept.herb);
    for (const field of plainFields) Object.assign(draft, { [field]: kept[field] });
    [draft.gross.text, draft.gross.unit] = kept.gross;
    [draft.tare.text, draft.tare.unit] = kept.tare;
    draft.photos = kept.photos.map((picked) => ({ ...picked, turn: ++draft.turn, share: 1, seen: true }));
    void draft.reconsider();
    return draft;
  }

  /** Keeps on this device what was filled in; that look-alikes were ruled out is said anew each time. */
  keep(): void {
    // What is tried out in the demo season is not found again in the own book.
    if (this.session.preferences.kept.is_demo) return;
    const photos = this.photos.flatMap(({ name, photo, note }) => (photo ? [{ name, photo, note }] : []));
    const isEmpty = !this.herb && this.gross.empty && photos.length === 0 && !this.note && !this.bedName;
    const { part, bed, bedName, wild, surface, stage, note, when, herb, gross, tare } = this;
    const unsaved: Unsaved = {
      ...{ part, bed, bedName, wild, surface, stage, note, when, herb, photos },
      gross: [gross.text, gross.unit],
      tare: [tare.text, tare.unit],
    };
    keepHere(KEY, isEmpty ? null : unsaved);
  }

  /** Brings the herb of a harvest that is being corrected. */
  async open(): Promise<void> {
    if (!this.corrected) return;
    const { herb } = await this.session.desk.ask("herb.show", { key: this.corrected.herb });
    this.herb ??= herb;
  }

  /** Starts with the herb that the way here named. */
  async begin(key: string | null): Promise<void> {
    if (!key || this.herb?.key === key) return;
    this.choose((await this.session.desk.ask("herb.show", { key })).herb);
  }

  get freshGrams(): number | null {
    const gross = this.gross.amount;
    const tare = this.tare.empty ? 0 : this.tare.amount;
    return gross === null || tare === null || gross <= tare ? null : gross - tare;
  }

  get sending(): boolean {
    return this.photos.some((picked) => picked.photo === null);
  }

  choose(herb: HerbLine | null): void {
    this.herb = herb;
    this.ruledOut = false;
    this.lookAlikes = [];
    this.warnings = [];
    if (herb && !herb.parts.includes(this.part)) this.part = herb.parts[0] ?? "";
    if (herb) void this.warn();
    void this.reconsider();
  }

  /** Asks again what it will weigh dry; called whenever something it depends on was touched. */
  async reconsider(): Promise<void> {
    const { herb, part, surface, freshGrams: fresh } = this;
    const isWhole = herb && part && fresh !== null;
    const question = isWhole ? { herb: herb.key, part, fresh_mass_g: fresh, surface_wet: surface !== "dry" } : null;
    // A field that is left tells of its change a second time.
    const told = JSON.stringify(question);
    if (told === this.considered) return;
    this.considered = told;
    const asked = question ? this.session.desk.ask("harvest.estimate", question) : Promise.resolve(null);
    await this.latest.ask(asked, (estimate, failure) => {
      this.estimate = estimate;
      if (failure) this.considered = "";
    });
  }

  private async warn(): Promise<void> {
    if (!this.herb) return;
    const herb = this.herb.key;
    try {
      const page = await this.session.desk.ask("herb.show", { key: herb });
      if (this.herb?.key !== herb) return;
      this.lookAlikes = page.look_alikes;
      // What concerns its use is said where it is used.
      this.warnings = page.cautions.filter(({ at }) => at.includes("pick"));
    } catch (thrown) {
      // An herb that is not in the book yet has nothing to warn of.
      if (!(thrown instanceof Failure)) throw thrown;
    }
  }

  async take(files: readonly File[]): Promise<void> {
    await Promise.all(files.map((file) => this.send(file)));
  }

  private async send(file: File): Promise<void> {
    const turn = ++this.turn;
    const put = (change: Partial<PickedPhoto>) => {
      this.photos = this.photos.map((picked) => (picked.turn === turn ? { ...picked, ...change } : picked));
    };
    this.photos = [...this.photos, { turn, name: file.name, share: 0, photo: null, note: null, seen: false }];
    try {
      const { photo, duplicate } = await this.session.api.uploadPhoto(file, (share) => put({ share }));
      const told = (note: string | null) => note ?? (duplicate ? words.harvest.duplicatePhoto : null);
      put({ photo, share: 1, note: told(photo.note) });
      // The photo is safe by now; only making its preview shows whether all of it can be seen.
      const seen = await this.session.desk.ask("photo.preview", { hash: photo.hash });
      put({ photo: seen, note: told(seen.note), seen: true });
    } catch (thrown) {
      if (!(thrown instanceof Failure)) throw thrown;
      // One that is kept stays in the harvest, whatever came of its preview.
      this.photos = this.photos.filter((picked) => picked.turn !== turn || picked.photo);
      this.form.failures = [new Failure(thrown.code, "photos", `${file.name}: ${thrown.message}`)];
    }
  }

  leaveOut(turn: number): void {
    this.photos = this.photos.filter((picked) => picked.turn !== turn);
  }

  /** Saves it; `sure` where a mass was asked about and is right. */
  async save(sure = false): Promise<void> {
    await this.form.send(async () => {
      const request = { ...this.filled(), ...this.chosenBed(), ...(sure ? { confirm_odd: true } : {}) };
      const { harvests, route } = this.session;
      if (this.corrected) {
        await harvests.correct(this.corrected.id, request);
        route.back(`/harvest/${this.corrected.id}`);
      } else {
        const { id } = await harvests.record(request);
        this.session.draft = null;
        if (!this.session.preferences.kept.is_demo) keepHere(KEY, null);
        route.replace(`/harvest/${id}`);
      }
    }, this.wrong());
    if (this.form.has("confirm_look_alike")) await this.warn();
  }

  private wrong(): Failure[] {
    const wrong: Failure[] = [];
    if (!this.herb) wrong.push(new Failure("missing", "herb", words.failure.chooseHerb));
    else if (!this.part) wrong.push(new Failure("missing", "part", words.failure.choosePart));
    wrong.push(...this.gross.wrong("gross_g", words.harvest.weight, true));
    wrong.push(...this.tare.wrong("tare_g", words.harvest.tare, false));
    if (wrong.length === 0 && this.freshGrams === null) {
      wrong.push(new Failure("tare_too_heavy", "tare_g", words.failure.tareTooHeavy));
    }
    if (this.lookAlikes.length > 0 && !this.ruledOut && !this.corrected) {
      wrong.push(new Failure("confirm_look_alike", "look_alike_ruled_out", words.failure.ruleOut));
    }
    if (this.bed === "new" && this.bedName.trim() === "") {
      wrong.push(new Failure("missing", "bed_name", words.failure.missing(words.harvest.bedName)));
    }
    return wrong;
  }

  private chosenBed(): Pick<RecordHarvest, "bed" | "bed_name" | "bed_wild"> {
    if (this.bed !== "new") return this.bed ? { bed: this.bed } : {};
    return { bed_name: this.bedName.trim(), ...(this.wild ? { bed_wild: true } : {}) };
  }

  // A correction must be able to empty what was written before.
  private written(field: "stage" | "note", text: string): Partial<RecordHarvest> {
    return text.trim() || this.corrected ? { [field]: text.trim() } : {};
  }

  private filled(): RecordHarvest {
    const photos = this.photos.flatMap(({ photo }) => (photo ? [photo.hash] : []));
    return {
      herb: this.herb?.key ?? "",
      part: this.part,
      gross_g: this.gross.amount ?? 0,
      surface: this.surface,
      photos,
      ...(this.tare.empty ? {} : { tare_g: this.tare.amount ?? 0 }),
      ...(this.when ? { picked_at: wireMoment(this.when) } : {}),
      ...this.written("stage", this.stage),
      ...this.written("note", this.note),
      ...(this.ruledOut ? { look_alike_ruled_out: true } : {}),
    };
  }
}
