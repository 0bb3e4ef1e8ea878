import { describe, expect, test } from "vitest";
import { speaking } from "../../tests/speaking";

describe("words", () => {
  test("a count takes the form of the language, its number by the locale", async () => {
    await speaking("en");
    const { plural } = await import("./language");
    const bottles = (n: number) => plural(n, { one: "# bottle", other: "# bottles" });
    expect([0, 1, 2, 1250].map(bottles)).toEqual(["0 bottles", "1 bottle", "2 bottles", "1250 bottles"]);
  });

  test("a device that asks for no language of ours is spoken to in English, one that asks for a region in its own", async () => {
    await speaking("fr-FR");
    expect((await import("./language")).language).toBe("en");
    await speaking("de-CH");
    const { language, locale } = await import("./language");
    expect([language, locale]).toEqual(["de", "de-CH"]);
  });

  test("the strange language changes every word of the page and nothing that it was given", async () => {
    await speaking("en-XA");
    const { words } = await import(".");
    expect(words.places.garden).toBe("Ǵáŕďéń~~~");
    expect(words.garden.left("12 g of \u201cOld bed\u201d")).toBe("12 g of \u201cOld bed\u201d fŕéśȟ~~ ĺéfť~~");
    expect(words.bottle.bottles(3)).toBe("3 bóťťĺéś~~~");
  });
});
