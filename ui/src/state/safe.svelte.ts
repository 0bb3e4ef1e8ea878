import {
  Failure,
  type Api,
  type BackupMade,
  type BookChecked,
  type ExportMade,
  type JobBegun,
  type JobOutcome,
  type MergeReport,
  type Request,
  type Restored,
} from "../api";
import { words } from "../words";
import type { Desk } from "./desk.svelte";
import { Form } from "./form.svelte";
import { Held, hold } from "./held.svelte";

export type Task = keyof typeof words.safe.working;
type Kind = JobOutcome["kind"];
type Begin = () => Promise<JobBegun>;
type Of<K extends Kind> = Extract<JobOutcome, { kind: K }>;

const CHUNK_BYTES = 1024 * 1024;
const POLL_MS = 300;

/** Backups, exports and what is brought in. It outlives its screens, as the work of the core does. */
export class Safe {
  /** What is being worked on, and the share of it that is done. */
  task = $state<Task | null>(null);
  share = $state(0);
  readonly backing = new Form();
  readonly exporting = new Form();
  readonly restoring = new Form();
  readonly merging = new Form();
  readonly checking = new Form();
  backup = $state.raw<BackupMade | null>(null);
  export = $state.raw<ExportMade | null>(null);
  restored = $state.raw<Restored | null>(null);
  merged = $state.raw<MergeReport | null>(null);
  checked = $state.raw<BookChecked | null>(null);
  private job: string | null = null;
  private stopped = false;

  constructor(
    private readonly desk: Desk,
    private readonly api: Api,
  ) {}

  about() {
    return hold(this.desk, new Held(this.desk, "backup.about", {}, "every"));
  }

  points() {
    return hold(this.desk, new Held(this.desk, "restore.points", {}, "every"));
  }

  /** Puts a restore point in the place of the book; what the book is now becomes one in turn. */
  async goBack(point: string): Promise<void> {
    await this.api.call("restore.back", { point });
    await this.desk.refreshAll();
  }

  /** Begins a new, empty book in the place of one that is missing. */
  async beginAnew(sure: boolean): Promise<void> {
    await this.api.call("restore.anew", { sure });
    await this.desk.refreshAll();
  }

  /** Puts a made file where the maker wants it; a backup counts from then on. */
  async handOver(name: string): Promise<boolean> {
    const saved = await this.api.handOver(name);
    if (saved && name === this.backup?.file_name) {
      await this.api.call("backup.taken", { file_name: name });
      await this.desk.refreshAsked("backup.about");
    }
    return saved;
  }

  /** Goes on watching what the core was working on when the page was loaded anew. */
  async resume(): Promise<void> {
    const { job } = await this.api.call("job.running", {});
    if (!job) return;
    const begun = () => Promise.resolve(job);
    switch (job.work) {
      case "backup":
        return this.backing.send(() => this.makeBackup(begun));
      case "export":
        return this.exporting.send(() => this.makeExport(begun));
      case "restore":
        return this.restoring.send(() => this.restore(begun));
      case "merge":
        return this.merging.send(() => this.merge(begun));
      case "check":
        return this.checking.send(() => this.check(begun));
      case "restore_look":
        return this.restoring.send(async () => void (await this.look(begun)));
      case "merge_look":
        return this.merging.send(async () => void (await this.lookAtOther(begun)));
    }
  }

  beginBackup(photos: boolean, passphrase: string): Promise<void> {
    const sealing = passphrase ? { passphrase } : {};
    return this.makeBackup(() => this.api.call("backup.make", { photos, ...sealing }));
  }

  beginExport(photos: boolean, places: boolean): Promise<void> {
    return this.makeExport(() => this.api.call("export.make", { photos, places }));
  }

  beginLook(request: Request<"restore.look">) {
    return this.look(() => this.api.call("restore.look", request));
  }

  beginRestore(request: Request<"restore.apply">): Promise<void> {
    return this.restore(() => this.api.call("restore.apply", request));
  }

  beginLookAtOther(request: Request<"merge.look">) {
    return this.lookAtOther(() => this.api.call("merge.look", request));
  }

  beginMerge(request: Request<"merge.apply">): Promise<void> {
    return this.merge(() => this.api.call("merge.apply", request));
  }

  beginCheck(): Promise<void> {
    return this.check(() => this.api.call("journal.begin_check", {}));
  }

  /** Has the whole book read while the maker does something else, if that was not done for long. */
  async checkNowAndThen(): Promise<void> {
    const about = await this.api.call("backup.about", {});
    if (!about.check_due || this.task) return;
    await this.api.call("journal.begin_check", {});
  }

  /** Hands a file to the core piece by piece and tells what the core calls it; null when it was stopped. */
  async send(file: File): Promise<string | null> {
    const upload = crypto.randomUUID();
    this.begin("send");
    try {
      for (let from = 0; ; from += CHUNK_BYTES) {
        if (this.stopped) return null;
        const to = Math.min(from + CHUNK_BYTES, file.size);
        const piece = await this.api.base64(file.slice(from, to));
        const taken = await this.api.call("file.chunk", { upload, base64: piece, first: from === 0 });
        this.share = file.size > 0 ? to / file.size : 1;
        if (to === file.size) return taken.file;
      }
    } finally {
      this.task = null;
    }
  }

  /** Takes the last restoring or bringing together back; a second time does it again. */
  async undo() {
    const restored = await this.api.call("restore.undo", {});
    await this.desk.refreshAll();
    return restored;
  }

  /** Saves what can be read of a damaged book. */
  async rescue() {
    const report = await this.api.call("rescue.make", {});
    await this.desk.refreshAll();
    return report;
  }

  lookAtTable(file: string) {
    return this.api.call("import.look", { file });
  }

  async importTable(file: string, count: string): Promise<void> {
    await this.desk.write("import.apply", { file }, words.safe.imported(count));
  }

  async cancel(): Promise<void> {
    this.stopped = true;
    if (this.job) await this.api.call("job.cancel", { job: this.job });
  }

  private async makeBackup(begin: Begin): Promise<void> {
    this.backup = null;
    this.backup = await this.run("backup", "backup", begin);
    // Nothing but what is told of backups has changed; an offer to undo stays.
    if (this.backup) await this.desk.refreshAsked("backup.about");
  }

  private async makeExport(begin: Begin): Promise<void> {
    this.export = null;
    this.export = await this.run("export", "export", begin);
  }

  private async check(begin: Begin): Promise<void> {
    this.checked = null;
    this.checked = await this.run("check", "checked", begin);
    // Lists may have been made anew.
    if (this.checked) await this.desk.refreshAll();
  }

  private look(begin: Begin) {
    return this.run("look", "restore_look", begin);
  }

  private async restore(begin: Begin): Promise<void> {
    this.restored = null;
    this.restored = await this.run("apply", "restored", begin);
    if (this.restored) await this.desk.refreshAll();
  }

  private lookAtOther(begin: Begin) {
    return this.run("look", "merge_look", begin);
  }

  private async merge(begin: Begin): Promise<void> {
    this.merged = null;
    this.merged = await this.run("merge", "merged", begin);
    if (this.merged) await this.desk.refreshAll();
  }

  private begin(task: Task): void {
    this.task = task;
    this.share = 0;
    this.stopped = false;
  }

  /** Begins work in the core and waits for it; null when it was stopped. */
  private async run<K extends Kind>(task: Task, kind: K, begin: Begin): Promise<Of<K> | null> {
    const { job } = await begin();
    this.begin(task);
    this.job = job;
    try {
      for (;;) {
        const card = await this.api.call("job.show", { job });
        if (card.state === "failed" && card.failure) {
          throw new Failure(card.failure.code, card.failure.field, card.failure.message);
        }
        if (card.state === "cancelled") return null;
        if (card.outcome?.kind === kind) return card.outcome as Of<K>;
        if (card.state !== "running") throw new Failure("storage", null, words.failure.unreachable);
        this.share = card.total_bytes > 0 ? Math.min(1, card.done_bytes / card.total_bytes) : 0;
        await new Promise((resolve) => setTimeout(resolve, POLL_MS));
      }
    } finally {
      this.task = null;
      this.job = null;
    }
  }
}
