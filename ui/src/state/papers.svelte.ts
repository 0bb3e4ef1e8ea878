import { Failure, type Api, type LotFound, type PrintedFile, type Request } from "../api";
import { words } from "../words";
import { Form } from "./form.svelte";

/** Where a file went: what to say of it, and what the maker should know about it. */
type Told = { said: string; remarks: string[] };

/** What is saved as a file, one at a time. */
export class Saving {
  readonly form = new Form();
  told = $state.raw<Told | null>(null);

  constructor(private readonly api: Api) {}

  async save(print: () => Promise<PrintedFile>, wrong: Failure[] = []): Promise<void> {
    this.told = null;
    await this.form.send(async () => {
      const file = await print();
      const saved = await this.api.saveFile(file);
      this.told = { said: saved ? words.file.saved : words.file.notSaved, remarks: file.remarks };
    }, wrong);
  }
}

/** What the book gives as a file or a picture. */
export class Papers {
  constructor(private readonly api: Api) {}

  saving(): Saving {
    return new Saving(this.api);
  }

  label(request: Request<"label.single">) {
    return this.api.call("label.single", request);
  }

  labels(request: Request<"label.sheet">) {
    return this.api.call("label.sheet", request);
  }

  card(request: Request<"recipe.card">) {
    return this.api.call("recipe.card", request);
  }

  handOut(request: Request<"recipe.hand_out">) {
    return this.api.call("recipe.hand_out", request);
  }

  classCards(request: Request<"recipe.class_cards">) {
    return this.api.call("recipe.class_cards", request);
  }

  classLabels(request: Request<"recipe.class_labels">) {
    return this.api.call("recipe.class_labels", request);
  }

  trace(request: Omit<Request<"trace.sheet">, "paper">) {
    return this.api.call("trace.sheet", { ...request, paper: usualPaper() });
  }

  traceForward(request: Request<"trace.forward">) {
    return this.api.call("trace.sheet_forward", { of: request, paper: usualPaper() });
  }

  season(year: number) {
    return this.api.call("season.book", { year, paper: usualPaper() });
  }

  calendar() {
    return this.api.call("due.calendar", {});
  }

  find(text: string): Promise<LotFound> {
    return this.api.call("lot.find", { text });
  }
}

/** The paper in the printers of the reader's country. */
export function usualPaper(): "a4" | "letter" {
  return ["US", "CA", "MX", "PH"].includes(regionOf(navigator.language)) ? "letter" : "a4";
}

/** The country that a locale is of; none where it is no locale, as on a system that is set to C. */
function regionOf(tag: string): string {
  try {
    return new Intl.Locale(tag).maximize().region ?? "";
  } catch {
    return "";
  }
}
