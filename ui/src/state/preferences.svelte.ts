import { Failure, type Settings } from "../api";
import { words } from "../words";
import type { Desk } from "./desk.svelte";
import { Held, hold } from "./held.svelte";

/** How the maker wants things shown. */
export class Preferences {
  kept = $state.raw<Settings>({ units: "metric", scheme: "system", cautions_seen: true });

  constructor(private readonly desk: Desk) {}

  get units() {
    return this.kept.units;
  }

  async load(): Promise<void> {
    try {
      this.take(await this.desk.ask("setting.show", {}));
    } catch (thrown) {
      if (!(thrown instanceof Failure)) throw thrown;
    }
    this.desk.keep({ nouns: ["setting"], reload: async () => this.take(await this.desk.ask("setting.show", {})) });
  }

  async change(change: Partial<Settings>): Promise<void> {
    await this.desk.write("setting.change", change, words.settings.changed);
  }

  about() {
    return hold(this.desk, new Held(this.desk, "journal.about", {}, ["harvest", "tray", "jar", "photo"]));
  }

  deeds(limit: number) {
    const nouns = ["herb", "bed", "harvest", "photo", "tray", "weighing", "supply", "jar", "setting"] as const;
    return hold(this.desk, new Held(this.desk, "deed.list", { limit }, nouns));
  }

  private take({ units, scheme, cautions_seen }: Settings): void {
    this.kept = { units, scheme, cautions_seen };
    if (scheme === "system") delete document.documentElement.dataset["scheme"];
    else document.documentElement.dataset["scheme"] = scheme;
  }
}
