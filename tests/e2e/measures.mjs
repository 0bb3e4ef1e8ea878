// What is measured on a screen. Each function runs in the page, so it may use nothing outside itself.

/** What the screen still waits for: its replies, its fonts, its pictures. */
export function stillToCome() {
  const parts = [...document.querySelectorAll("main .waiting")].map((node) => node.textContent);
  const pictures = [...document.images].filter((image) => image.loading !== "lazy" && !image.complete);
  return [
    ...(document.querySelector("h1") ? [] : ["a heading"]),
    ...parts,
    ...(document.fonts.status === "loaded" ? [] : ["fonts"]),
    ...pictures.map((image) => image.src),
  ];
}

/** Targets under 48 px or closer than 8 px, what runs over the edge or is squeezed, and broken lot codes, each as a line. */
export function geometry() {
  const LEAST = 48;
  const GAP = 8;
  // Half a device pixel is rounding and not a smaller target.
  const SLACK = 0.5;
  const found = [];

  const isInText = (node) => {
    const parent = node.parentElement;
    const inline = getComputedStyle(node).display === "inline";
    return inline && [...parent.childNodes].some((each) => each.nodeType === Node.TEXT_NODE && each.textContent.trim());
  };
  const nameOf = (node) =>
    `${node.tagName.toLowerCase()} "${(node.getAttribute("aria-label") ?? node.labels?.[0]?.textContent ?? node.textContent).trim().replace(/\s+/g, " ").slice(0, 40)}"`;
  const boxOf = (node) => {
    const boxes = [node.getBoundingClientRect()];
    const around = node.closest("label");
    if (around) boxes.push(around.getBoundingClientRect());
    return {
      left: Math.min(...boxes.map((box) => box.left)),
      right: Math.max(...boxes.map((box) => box.right)),
      top: Math.min(...boxes.map((box) => box.top)),
      bottom: Math.max(...boxes.map((box) => box.bottom)),
    };
  };
  const layerOf = (node) => {
    for (let each = node; each; each = each.parentElement) {
      if (["fixed", "sticky"].includes(getComputedStyle(each).position)) return each;
    }
    return null;
  };

  const targets = [...document.querySelectorAll("a[href], button, input, select, textarea, summary")]
    .filter((node) => node.checkVisibility({ visibilityProperty: true }) && !node.disabled && !isInText(node))
    .map((node) => ({ node, box: boxOf(node), layer: layerOf(node), name: nameOf(node) }));

  for (const { box, name } of targets) {
    const [width, height] = [box.right - box.left, box.bottom - box.top];
    if (width < LEAST - SLACK || height < LEAST - SLACK) {
      found.push(`${name} is ${Math.round(width)} x ${Math.round(height)} px`);
    }
  }
  targets.forEach((one, at) => {
    for (const other of targets.slice(at + 1)) {
      // What scrolls passes under what stands still, and nothing is pressed there.
      if (one.layer !== other.layer || one.node.contains(other.node) || other.node.contains(one.node)) continue;
      const across = Math.max(one.box.left - other.box.right, other.box.left - one.box.right);
      const down = Math.max(one.box.top - other.box.bottom, other.box.top - one.box.bottom);
      const gap = Math.max(across, down);
      if (gap < GAP - SLACK) found.push(`${one.name} and ${other.name} are ${Math.round(gap)} px apart`);
    }
  });

  const page = document.documentElement;
  if (page.scrollWidth > page.clientWidth) {
    const widest = [...document.body.querySelectorAll("*")]
      .map((node) => ({ node, right: node.getBoundingClientRect().right + scrollX }))
      .reduce((one, other) => (other.right > one.right ? other : one));
    found.push(`the page is ${page.scrollWidth} px wide in ${page.clientWidth} px, by ${nameOf(widest.node)}`);
  }
  for (const node of document.querySelectorAll("main *, .foot *")) {
    const style = getComputedStyle(node);
    const hides = style.overflowX !== "visible" && style.overflowX !== "auto" && style.overflowX !== "scroll";
    const isText = [...node.childNodes].some((each) => each.nodeType === Node.TEXT_NODE && each.textContent.trim());
    const unseen = node.clientWidth <= 1;
    const words = isText ? node.textContent.trim() : "";
    if (words.length > 12 && !unseen && node.clientWidth > 0 && node.clientWidth < 3 * parseFloat(style.fontSize)) {
      found.push(`"${words.slice(0, 40)}" is squeezed to ${node.clientWidth} px`);
    }
    if (hides && isText && !unseen && node.scrollWidth > node.clientWidth + 1) {
      found.push(`"${node.textContent.trim().slice(0, 40)}" is cut off`);
    }
  }
  // A code that breaks at its hyphen is read as two things; whether this one does is an accident of its letters.
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const code = /\b[a-z]{4}-\d{3}\b/.exec(node.data)?.[0];
    if (!code || node.parentElement.getClientRects().length === 0) continue;
    const { whiteSpace } = getComputedStyle(node.parentElement);
    if (whiteSpace !== "nowrap") found.push(`the lot code ${code} may be broken in two: ${whiteSpace} in ${nameOf(node.parentElement)}`);
  }
  return [...new Set(found)];
}

/**
 * What axe finds against WCAG 2.2 AA, and against the AAA rules that a program can judge: the contrast of text; or
 * against the rules of contrast alone.
 */
export async function barriers(contrastAlone) {
  // A link that lies half under the foot is whole again once it is scrolled to; axe would take it for a small one.
  const still = [...document.querySelectorAll("*")].filter((node) =>
    ["fixed", "sticky"].includes(getComputedStyle(node).position),
  );
  for (const node of still) node.style.position = "static";
  const { violations } = await window.axe.run(document, {
    runOnly: contrastAlone
      ? { type: "rule", values: ["color-contrast", "color-contrast-enhanced"] }
      : { type: "tag", values: ["wcag2a", "wcag2aa", "wcag2aaa", "wcag21a", "wcag21aa", "wcag22aa"] },
    // Off unless asked for by name.
    rules: { "color-contrast-enhanced": { enabled: true }, "target-size": { enabled: true } },
  });
  for (const node of still) node.style.position = "";
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target.join(" ")).slice(0, 4).join(" | ")}`);
}

/** The end of an address that a link on the page leads to, such as the id after `#/tray/`. */
export function idBehind({ start, words }) {
  const links = [...document.querySelectorAll(`a[href^="${start}"]`)];
  const link = links.find((each) => words.every((word) => each.textContent.includes(word)));
  return link?.getAttribute("href").slice(start.length).split("?")[0] ?? "";
}
