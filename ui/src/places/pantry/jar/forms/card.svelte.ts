import type { CardDrawn, CardSize, Failure } from "../../../../api";
import { Latest } from "../../../../state/latest";
import type { Session } from "../../../../state/session";
import { usualPaper, type Saving } from "../../../../state/papers.svelte";

const pictured = (svg: string) => URL.createObjectURL(new Blob([svg], { type: "image/svg+xml" }));

/** The card of a recipe being chosen, with pictures of its sides and of its code. */
export class Card {
  readonly saving: Saving;
  size = $state<CardSize>(usualPaper() === "letter" ? "half_letter" : "a5");
  note = $state(false);
  drawn = $state.raw<CardDrawn | null>(null);
  sides = $state.raw<string[]>([]);
  code = $state.raw<string | null>(null);
  refusal = $state.raw<Failure | null>(null);
  private readonly latest = new Latest();

  /** `of` is "recipe/<id>" or "jar/<id>". */
  constructor(
    private readonly session: Session,
    private readonly of: string,
  ) {
    this.saving = session.papers.saving();
  }

  private get request() {
    const [kind = "", id = ""] = this.of.split("/", 2);
    return { [kind]: id, size: this.size, note: this.note };
  }

  /** Draws it anew. */
  async draw(): Promise<void> {
    await this.latest.ask(this.session.papers.card(this.request), (drawn, refusal) => {
      this.drawn = drawn ?? this.drawn;
      this.refusal = refusal;
      this.show(drawn?.sides ?? [], drawn?.code?.svg ?? null);
    });
  }

  private show(sides: string[], code: string | null): void {
    for (const shown of [...this.sides, ...(this.code ? [this.code] : [])]) URL.revokeObjectURL(shown);
    this.sides = sides.map(pictured);
    this.code = code && pictured(code);
  }

  close(): void {
    this.latest.drop();
    this.show([], null);
  }

  async save(): Promise<void> {
    await this.saving.save(() => this.session.papers.handOut(this.request));
  }
}
