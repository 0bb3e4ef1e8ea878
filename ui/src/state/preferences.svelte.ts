import { Failure, type Request, type Settings } from "../api";
import { keepLanguage } from "../kept/language";
import { chosenLanguage, words } from "../words";
import type { Desk } from "./desk.svelte";
import { Held, hold } from "./held.svelte";

/** How the maker wants things shown. */
export class Preferences {
  kept = $state.raw<Settings>({
    units: "metric",
    scheme: "system",
    cautions_seen: true,
    maker: null,
    poison_line: null,
    hemisphere: "north",
    is_demo: false,
    is_lost: false,
  });

  constructor(private readonly desk: Desk) {}

  /** A language of the page, or "system" where the device's own is followed. */
  get language(): string {
    return chosenLanguage ?? "system";
  }

  /** Words are fixed while the page runs, so it begins anew. */
  speak(language: string): void {
    keepLanguage(language === "system" ? null : language);
    location.reload();
  }

  get units() {
    return this.kept.units;
  }

  async load(): Promise<void> {
    try {
      this.take(await this.desk.ask("setting.show", {}));
    } catch (thrown) {
      if (!(thrown instanceof Failure)) throw thrown;
    }
    this.desk.keep({ name: "setting.show", nouns: ["setting"], reload: async () => this.take(await this.desk.ask("setting.show", {})) });
  }

  async change(change: Request<"setting.change">): Promise<void> {
    await this.desk.write("setting.change", change, words.settings.changed);
  }

  /** Notes that the cautions were read. */
  async read(): Promise<void> {
    await this.desk.write("setting.change", { cautions_seen: true }, null);
  }

  about() {
    return hold(this.desk, new Held(this.desk, "journal.about", {}, ["harvest", "tray", "jar", "photo"]));
  }

  deeds(limit: number) {
    return hold(this.desk, new Held(this.desk, "deed.list", { limit }, "every"));
  }

  private take({ units, scheme, cautions_seen, maker, poison_line, hemisphere, is_demo, is_lost }: Settings): void {
    this.kept = { units, scheme, cautions_seen, maker, poison_line, hemisphere, is_demo, is_lost };
    if (scheme === "system") delete document.documentElement.dataset["scheme"];
    else document.documentElement.dataset["scheme"] = scheme;
  }
}
