import type { Api, DueLine } from "../api";
import { fieldMoment } from "../format/moment";
import { plain } from "../format/number";
import { keepHere, keptHere } from "../kept/here";
import { words } from "../words";
import type { Desk } from "./desk.svelte";

const KEY = "reminders";
/** A phone keeps at most 64 notices waiting; one a morning stays well below. */
const DAYS_AHEAD = 30;
const HOUR = 8;
const WHILE_WRITING_MS = 2_000;
const LINES_SHOWN = 4;

/** What is due, told by the phone itself in the morning. Off until its owner turns it on. */
export class Reminders {
  on = $state(keptHere<boolean>(KEY) === true);
  /** The phone does not allow it. */
  refused = $state(false);
  private waiting: ReturnType<typeof setTimeout> | undefined;

  constructor(
    desk: Desk,
    private readonly api: Api,
  ) {
    if (!this.possible) return;
    desk.keep({ nouns: "every", reload: async () => this.renewSoon() });
    this.renewSoon();
  }

  get possible(): boolean {
    return this.api.phone !== null;
  }

  async turn(on: boolean): Promise<void> {
    this.refused = false;
    this.on = on;
    if (on && !(await this.api.phone?.mayRemind(true))) {
      this.refused = true;
      this.on = false;
    }
    keepHere(KEY, this.on ? true : null);
    if (this.on) await this.renew();
    else await this.api.phone?.remind([]);
  }

  /** Several entries in a row make one plan. */
  private renewSoon(): void {
    clearTimeout(this.waiting);
    this.waiting = setTimeout(() => void this.renew(), WHILE_WRITING_MS);
  }

  private async renew(): Promise<void> {
    const { phone } = this.api;
    if (!phone || !this.on) return;
    // Its owner may have forbidden it in the phone's settings since.
    if (!(await phone.mayRemind(false))) {
      this.refused = true;
      return;
    }
    // While the demo season is looked at, the notices of the own book stay as they are.
    const { is_demo } = await this.api.call("setting.show", {});
    if (is_demo) return;
    const { due } = await this.api.call("due.list", { days: DAYS_AHEAD });
    const mornings = upcoming(new Date());
    const planned = mornings.map((at, day) => ({ at, lines: toldOn(fieldMoment(at).slice(0, 10), day === 0, due) }));
    await phone.remind(
      planned
        .filter(({ lines }) => lines.length > 0)
        .map(({ at, lines }, index) => ({ id: index + 1, at: at.toISOString(), title: words.remind.heading, body: told(lines) })),
    );
  }
}

function upcoming(now: Date): Date[] {
  const today = new Date(now.getFullYear(), now.getMonth(), now.getDate(), HOUR);
  const first = today > now ? 0 : 1;
  return Array.from(
    { length: DAYS_AHEAD },
    (_, day) => new Date(now.getFullYear(), now.getMonth(), now.getDate() + first + day, HOUR),
  );
}

/** Everything on its day; what waits already once more on the next morning, and what can hurt somebody on every one. */
function toldOn(day: string, isNext: boolean, due: DueLine[]): DueLine[] {
  return due.filter((line) => line.on === day || (line.on < day && (isNext || line.harm === 3)));
}

function told(lines: DueLine[]): string {
  const w = words.remind;
  const first = lines.slice(0, LINES_SHOWN).map(({ what, title }) => w.line(words.due.whats[what], title));
  const rest = lines.length - first.length;
  return [...first, ...(rest > 0 ? [w.more(plain(rest, 0))] : [])].join("\n");
}
