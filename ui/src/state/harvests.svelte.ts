import type { RecordHarvest } from "../api";
import { words } from "../words";
import type { Desk } from "./desk.svelte";
import { Held, hold } from "./held.svelte";

/** What was picked. */
export class Harvests {
  constructor(private readonly desk: Desk) {}

  lately(limit: number) {
    return hold(this.desk, new Held(this.desk, "harvest.list", { limit }, ["harvest", "photo", "tray", "jar"]));
  }

  ofHerb(herb: string) {
    return hold(this.desk, new Held(this.desk, "harvest.list", { herb, limit: 50 }, ["harvest", "photo", "tray", "jar"]));
  }

  page(id: string) {
    return hold(this.desk, new Held(this.desk, "harvest.show", { id }, ["harvest", "photo", "tray", "weighing", "jar"]));
  }

  async record(request: RecordHarvest) {
    return (await this.desk.write("harvest.record", request, words.harvest.saved)).harvest;
  }

  async correct(id: string, request: Partial<RecordHarvest>) {
    return (await this.desk.write("harvest.correct", { id, ...request }, words.harvest.corrected)).harvest;
  }

  async bin(id: string, mass_g: number, reason: string) {
    const request = { id, mass_g, ...(reason ? { reason } : {}) };
    return (await this.desk.write("harvest.bin", request, words.harvest.binned)).harvest;
  }
}
