import { Failure, type LabelDrawn, type LabelPaper, type Purpose } from "../../../../api";
import { words } from "../../../../words";
import { PlainEntry } from "../../../../state/form.svelte";
import { Latest } from "../../../../state/latest";
import type { Session } from "../../../../state/session";
import { usualPaper, type Saving } from "../../../../state/papers.svelte";

type SizeName = keyof typeof words.labels.sizes;
type Shown = { id: string; name: string; kind: "bottle" | "jar" };

/** Labels being chosen, with a picture of the first of them. */
export class Labels {
  readonly saving: Saving;
  readonly width = new PlainEntry("mm", 90);
  readonly height = new PlainEntry("mm", 55);
  readonly skip = new PlainEntry(words.labels.places);
  size = $state<SizeName>("90x55");
  paper = $state<LabelPaper>(usualPaper());
  gift = $state(false);
  ethanol = $state(false);
  use = $state<Purpose | "">("");
  shown = $state.raw<Shown[] | null>(null);
  drawn = $state.raw<LabelDrawn | null>(null);
  picture = $state.raw<string | null>(null);
  refusal = $state.raw<Failure | null>(null);
  private readonly latest = new Latest();

  constructor(private readonly session: Session) {
    this.saving = session.papers.saving();
  }

  /** `of` is "bottle/<id>", "jar/<id>", or "filled/<id of the jar>" for the bottles of a jar. */
  async open(of: string): Promise<void> {
    const [kind = "", id = ""] = of.split("/", 2);
    try {
      this.shown = await this.named(kind, id);
    } catch (thrown) {
      if (!(thrown instanceof Failure)) throw thrown;
      this.refusal = thrown;
      return;
    }
    await this.draw();
  }

  private async named(kind: string, id: string): Promise<Shown[]> {
    if (kind === "bottle") {
      const { bottle } = await this.session.desk.ask("bottle.show", { id });
      return [{ id, name: bottle.name, kind }];
    }
    const { jar } = await this.session.desk.ask("jar.show", { id });
    if (kind === "jar") return [{ id, name: jar.name, kind }];
    const gone = ["finished", "binned", "given"];
    const here = jar.bottles.filter(({ state, bin_it }) => !bin_it && !gone.includes(state));
    return here.map((bottle) => ({ id: bottle.id, name: bottle.name, kind: "bottle" as const }));
  }

  get first(): Shown | null {
    return this.shown?.[0] ?? null;
  }

  get perSheet(): number | null {
    if (!this.drawn || this.paper === "label") return null;
    return this.drawn.per_sheet[this.paper];
  }

  private get measures() {
    if (this.size === "own") return { width_mm: this.width.amount ?? 0, height_mm: this.height.amount ?? 0 };
    const [width_mm = 0, height_mm = 0] = this.size.split("x").map(Number);
    return { width_mm, height_mm };
  }

  private get chosen() {
    const use = this.use ? { use_for: this.use } : {};
    return { label: this.measures, gift: this.gift, ethanol: this.ethanol, ...use };
  }

  private get wrong(): Failure[] {
    const w = words.labels;
    return [
      ...(this.size === "own"
        ? [
            ...this.width.wrong("label.width_mm", w.width, true),
            ...this.height.wrong("label.height_mm", w.height, true),
          ]
        : []),
      ...this.skip.wrong("skip", w.skip, false),
    ];
  }

  /** Draws the first label anew. */
  async draw(): Promise<void> {
    const { first } = this;
    if (!first || this.wrong.length > 0) return;
    await this.latest.ask(this.session.papers.label({ [first.kind]: first.id, ...this.chosen }), (drawn, refusal) => {
      this.refusal = refusal;
      this.show(drawn && new Blob([drawn.svg], { type: "image/svg+xml" }));
      if (!drawn) return;
      this.drawn = drawn;
      this.use = drawn.use_for;
    });
  }

  private show(picture: Blob | null): void {
    if (this.picture) URL.revokeObjectURL(this.picture);
    this.picture = picture ? URL.createObjectURL(picture) : null;
  }

  close(): void {
    this.latest.drop();
    this.show(null);
  }

  async save(): Promise<void> {
    const ids = (kind: Shown["kind"]) => (this.shown ?? []).filter((one) => one.kind === kind).map(({ id }) => id);
    const skip = this.skip.amount === null || this.paper === "label" ? {} : { skip: Math.round(this.skip.amount) };
    const request = { bottles: ids("bottle"), jars: ids("jar"), paper: this.paper, ...this.chosen, ...skip };
    await this.saving.save(() => this.session.papers.labels(request), this.wrong);
  }
}
