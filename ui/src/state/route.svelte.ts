import { tick } from "svelte";

export type Trail = { screen: string; id: string; query: URLSearchParams };

function trailOf(hash: string): Trail {
  const [path = "", query = ""] = hash.replace(/^#\/?/, "").split("?", 2);
  const [screen, ...rest] = path.split("/");
  return { screen: screen || "garden", id: rest.map(decodeURIComponent).join("/"), query: new URLSearchParams(query) };
}

/** Which screen is open. The address is the truth, so the back gesture and a restored window just work. */
export class Route {
  trail = $state.raw(trailOf(location.hash));
  /** Counts the moves, so that a screen opened anew starts anew. */
  turn = $state(0);
  private readonly scrolled = new Map<number, number>();

  constructor(private readonly moved: () => void) {
    history.scrollRestoration = "manual";
    if (depth() === null) history.replaceState({ depth: 0 }, "");
    addEventListener("scroll", () => this.scrolled.set(depth() ?? 0, scrollY), { passive: true });
    addEventListener("hashchange", () => void this.arrive());
  }

  /** Whether a link leads to where one is. */
  isHere(href: string): boolean {
    return href.replace(/[?].*/, "") === `#/${this.trail.screen}/${this.trail.id}`;
  }

  go(address: string): void {
    location.hash = address;
  }

  /** Opens a screen in the place of this one, so that going back does not return to a finished form. */
  replace(address: string): void {
    history.replaceState({ depth: depth() ?? 0 }, "", `#${address}`);
    void this.show(0);
  }

  back(otherwise: string): void {
    if ((depth() ?? 0) > 0) history.back();
    else this.replace(otherwise);
  }

  /** After something was saved: to the top of what it was saved in, and never back to the form. */
  saved(address: string): void {
    if (this.passed.get((depth() ?? 0) - 1) !== `#${address}`) return this.replace(address);
    this.toTop = true;
    history.back();
  }

  private here = depth() ?? 0;
  /** The addresses on the way here, and whether the next one is to be seen from its top. */
  private readonly passed = new Map<number, string>([[this.here, location.hash]]);
  private toTop = false;

  private async arrive(): Promise<void> {
    // A page that is left at once has not told of its last scrolling yet.
    this.scrolled.set(this.here, scrollY);
    const fresh = depth() === null;
    if (fresh) history.replaceState({ depth: this.here + 1 }, "");
    this.here = depth() ?? 0;
    const top = fresh || this.toTop;
    this.toTop = false;
    await this.show(top ? 0 : (this.scrolled.get(this.here) ?? 0));
  }

  private async show(scroll: number): Promise<void> {
    this.trail = trailOf(location.hash);
    this.passed.set(depth() ?? 0, location.hash);
    this.turn += 1;
    this.moved();
    await tick();
    document.querySelector("h1")?.focus({ preventScroll: true });
    scrollTo(0, scroll);
    // The first replies come within a frame or two and make the page as long as it was.
    if (scroll > 0) requestAnimationFrame(() => requestAnimationFrame(() => scrollTo(0, scroll)));
  }
}

function depth(): number | null {
  return (history.state as { depth?: number } | null)?.depth ?? null;
}
