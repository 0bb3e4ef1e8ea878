import { Failure, type Api, type PicturedKind } from "../api";
import { words } from "../words";
import type { Desk } from "./desk.svelte";

/** What a photo is taken of. */
export type Pictured = { kind: PicturedKind; id: string };

/** Photos of jars, bottles, beds and own herbs: how each looked on its days. */
export class Portraits {
  /** The share of the photos under way that has been copied; none while nothing is. */
  share = $state.raw<number | null>(null);
  failure = $state.raw<{ of: Pictured; message: string } | null>(null);

  constructor(
    private readonly desk: Desk,
    private readonly api: Api,
  ) {}

  /** Takes photos in one after another, as a phone's memory holds one, and writes them down together. */
  async take(of: Pictured, files: File[]): Promise<void> {
    if (files.length === 0 || this.share !== null) return;
    this.failure = null;
    try {
      const photos: string[] = [];
      for (const [at, file] of files.entries()) {
        const { photo } = await this.api.uploadPhoto(file, (share) => (this.share = (at + share) / files.length));
        photos.push(photo.hash);
      }
      await this.desk.write("portrait.record", { ...of, photos }, words.portrait.added(photos.length), { of: () => of });
    } catch (thrown) {
      if (!(thrown instanceof Failure)) throw thrown;
      this.failure = { of, message: thrown.message };
    } finally {
      this.share = null;
    }
  }

  async show(id: string, shown: boolean): Promise<void> {
    await this.desk.write("portrait.correct", { id, shown }, shown ? words.portrait.shown : words.portrait.unshown);
  }

  async remove(id: string): Promise<void> {
    await this.desk.write("portrait.strike", { id }, words.portrait.removed);
  }
}
