/** Whether a list has room beside what it leads to: from 60 rem on, so that large text gets fewer panes. */
export class Room {
  panes = $state(false);

  constructor() {
    const sixty = document.createElement("div");
    sixty.setAttribute("aria-hidden", "true");
    sixty.className = "sixty";
    document.body.append(sixty);
    const look = () => (this.panes = innerWidth >= sixty.offsetWidth);
    // The width of the window tells of itself; that of the text only what is measured by it.
    new ResizeObserver(look).observe(sixty);
    addEventListener("resize", look, { passive: true });
    look();
  }
}
