import { getContext, setContext } from "svelte";
import { Api } from "../api";
import { findHost, firstQuestions } from "../host";
import { Almanac } from "./almanac.svelte";
import { Beds } from "./beds.svelte";
import { Bottles } from "./bottles.svelte";
import { Demo } from "./demo.svelte";
import { Desk } from "./desk.svelte";
import { Harvests } from "./harvests.svelte";
import { Herbs } from "./herbs.svelte";
import { Jars } from "./jars.svelte";
import { Papers } from "./papers.svelte";
import type { PickDraft } from "./pick.svelte";
import { Plans } from "./plans.svelte";
import { keepPlace } from "./place";
import { Preferences } from "./preferences.svelte";
import { Reminders } from "./reminders.svelte";
import { Route } from "./route.svelte";
import { Safe } from "./safe.svelte";
import { Supplies } from "./supplies.svelte";
import { Trays } from "./trays.svelte";

/** After the start, until the book may read itself as a whole. */
const QUIET_MS = 120_000;

/** Everything the screens read and write. */
export class Book {
  readonly desk: Desk;
  readonly route: Route;
  readonly harvests: Harvests;
  readonly herbs: Herbs;
  readonly beds: Beds;
  readonly trays: Trays;
  readonly supplies: Supplies;
  readonly jars: Jars;
  readonly bottles: Bottles;
  readonly plans: Plans;
  readonly almanac: Almanac;
  readonly papers: Papers;
  readonly safe: Safe;
  readonly preferences: Preferences;
  readonly reminders: Reminders;
  readonly demo: Demo;
  /** A harvest form that was left before it was saved. */
  draft: PickDraft | null = null;

  constructor(readonly api: Api) {
    this.desk = new Desk(api);
    this.route = new Route(() => this.desk.moved());
    this.harvests = new Harvests(this.desk);
    this.herbs = new Herbs(this.desk);
    this.beds = new Beds(this.desk);
    this.trays = new Trays(this.desk);
    this.supplies = new Supplies(this.desk);
    this.jars = new Jars(this.desk);
    this.bottles = new Bottles(this.desk);
    this.plans = new Plans(this.desk);
    this.almanac = new Almanac(this.desk);
    this.papers = new Papers(api);
    this.safe = new Safe(this.desk, api);
    this.preferences = new Preferences(this.desk, api);
    this.reminders = new Reminders(this.desk, api);
    this.demo = new Demo(this);
  }

  get units() {
    return this.preferences.units;
  }
}

export async function openBook(): Promise<Book> {
  const api = new Api(findHost());
  if (api.phone) keepPlace();
  const book = new Book(api);
  const isGarden = book.route.trail.screen === "garden";
  const ahead = isGarden && [
    book.desk.askAhead("harvest.list", firstQuestions["harvest.list"]),
    book.desk.askAhead("due.list", firstQuestions["due.list"]),
  ];
  await Promise.all([book.preferences.load(), ...(ahead || [])]);
  // Nothing can be shown of a book that is not there; what shall take its place is asked first.
  if (book.preferences.kept.is_lost) book.route.replace("/safe-lost");
  // Long after the start, so that nothing that the maker waits for waits for it.
  if (!book.preferences.kept.is_lost) setTimeout(() => void book.safe.checkNowAndThen().catch(() => undefined), QUIET_MS);
  api.onLink((link) => book.route.go(`/lot/${encodeURIComponent(link)}`));
  return book;
}

export type { Trail } from "./route.svelte";

const KEY = Symbol("book");

export function shareBook(book: Book): void {
  setContext(KEY, book);
}

export function useBook(): Book {
  return getContext<Book>(KEY);
}
