import { addressOfCode } from "../format/code";
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
import { Plans } from "./plans.svelte";
import { keepPlace } from "./place";
import { Portraits } from "./portraits.svelte";
import { Preferences } from "./preferences.svelte";
import { Reminders } from "./reminders.svelte";
import { Room } from "./room.svelte";
import { Route } from "./route.svelte";
import { Safe } from "./safe.svelte";
import { Supplies } from "./supplies.svelte";
import { Trays } from "./trays.svelte";

/** After the start, until the book may read itself as a whole. */
const QUIET_MS = 120_000;

/** A form that outlives its screen until it is saved. */
export interface Draft {
  /** Keeps on this device what was filled in so far. */
  keep(): void;
}

/** Everything the screens read and write. */
export class Session {
  readonly desk: Desk;
  readonly route: Route;
  readonly room = new Room();
  readonly harvests: Harvests;
  readonly herbs: Herbs;
  readonly beds: Beds;
  readonly trays: Trays;
  readonly supplies: Supplies;
  readonly jars: Jars;
  readonly bottles: Bottles;
  readonly portraits: Portraits;
  readonly plans: Plans;
  readonly almanac: Almanac;
  readonly papers: Papers;
  readonly safe: Safe;
  readonly preferences: Preferences;
  readonly reminders: Reminders;
  readonly demo: Demo;
  /** A harvest form that was left before it was saved. */
  draft: Draft | null = null;

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
    this.portraits = new Portraits(this.desk, api);
    this.plans = new Plans(this.desk);
    this.almanac = new Almanac(this.desk);
    this.papers = new Papers(api);
    this.safe = new Safe(this.desk, api);
    this.preferences = new Preferences(this.desk);
    this.reminders = new Reminders(this.desk, api);
    this.demo = new Demo(this.desk, this.route, () => (this.draft = null));
  }

  get units() {
    return this.preferences.units;
  }
}

export async function openSession(): Promise<Session> {
  const api = new Api(findHost());
  if (api.phone) keepPlace();
  const session = new Session(api);
  const isGarden = session.route.trail.screen === "garden";
  const ahead = isGarden && [
    session.desk.askAhead("harvest.list", firstQuestions["harvest.list"]),
    session.desk.askAhead("due.list", firstQuestions["due.list"]),
  ];
  await Promise.all([session.preferences.load(), ...(ahead || [])]);
  // Nothing can be shown of a book that is not there; what shall take its place is asked first.
  if (session.preferences.kept.is_lost) session.route.replace("/safe-lost");
  // Long after the start, so that nothing that the maker waits for waits for it.
  if (!session.preferences.kept.is_lost) setTimeout(() => void session.safe.checkNowAndThen().catch(() => undefined), QUIET_MS);
  api.onLink((link) => session.route.go(addressOfCode(link)));
  return session;
}

export type { Trail } from "./route.svelte";

const KEY = Symbol("session");
const PANE = Symbol("pane");

/** Where a screen stands: alone, or as the list beside what it leads to. */
export type Pane = "list" | "detail" | null;

export function sharePane(pane: Pane): void {
  setContext(PANE, pane);
}

export function usePane(): Pane {
  return getContext<Pane | undefined>(PANE) ?? null;
}

export function shareSession(session: Session): void {
  setContext(KEY, session);
}

export function useSession(): Session {
  return getContext<Session>(KEY);
}
