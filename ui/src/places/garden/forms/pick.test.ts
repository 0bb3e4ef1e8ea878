import { beforeEach, describe, expect, test } from "vitest";
import type { HerbLine, RecordHarvest } from "../../../api";
import type { Session } from "../../../state/session";
import { speaking } from "../../../../tests/speaking";

const yarrow = { key: "yarrow", common: "Yarrow", latin: "Achillea millefolium", parts: ["herb", "flower"] } as HerbLine;
const lookAlikes = [{ common: "Hemlock" }];
const estimate = { reason: "of the table" };

/** A session whose core knows yarrow and keeps what is recorded. */
async function picking(danger = false) {
  const kept: RecordHarvest[] = [];
  const session = {
    desk: {
      ask: (command: string) =>
        Promise.resolve(command === "herb.show" ? { look_alikes: danger ? lookAlikes : [], cautions: [] } : estimate),
    },
    // A photo that is on its way for ever.
    api: { uploadPhoto: () => new Promise(() => undefined) },
    harvests: { record: (request: RecordHarvest) => (kept.push(request), Promise.resolve({ id: "h1" })) },
    route: { replace: () => undefined },
    preferences: { units: "metric", kept: { is_demo: false } },
    units: "metric",
    draft: null,
  };
  const { PickDraft } = await import("./pick.svelte");
  const draft = new PickDraft(session as unknown as Session);
  const refused = async () => {
    await draft.save();
    return draft.form.failures.map(({ field }) => field);
  };
  return { draft, kept, refused };
}

beforeEach(() => speaking("en"));

describe("the form of a harvest", () => {
  test("asks for the herb and what it weighs", async () => {
    const { draft, kept, refused } = await picking();
    expect(await refused()).toEqual(["herb", "gross_g"]);
    draft.choose(yarrow);
    expect(draft.part).toBe("herb");
    draft.gross.text = "250";
    expect(await refused()).toEqual([]);
    expect(kept).toMatchObject([{ herb: "yarrow", part: "herb", gross_g: 250 }]);
  });

  test("keeps the part that was chosen where the next herb has it too", async () => {
    const { draft } = await picking();
    draft.choose(yarrow);
    draft.part = "flower";
    draft.choose({ ...yarrow, key: "chamomile", parts: ["flower"] });
    expect(draft.part).toBe("flower");
    draft.choose({ ...yarrow, key: "mint", parts: ["leaf"] });
    expect(draft.part).toBe("leaf");
  });

  test("takes an estimate in although a photo was taken meanwhile", async () => {
    const { draft } = await picking();
    draft.choose(yarrow);
    draft.gross.text = "250";
    const asked = draft.reconsider();
    void draft.take([new File([], "basket.jpg")]);
    await asked;
    expect(draft.estimate).toBe(estimate);
  });

  test("takes the basket off, which must weigh less than all of it", async () => {
    const { draft, refused } = await picking();
    draft.choose(yarrow);
    draft.gross.text = "250";
    draft.tare.text = "250";
    expect(draft.freshGrams).toBeNull();
    expect(await refused()).toEqual(["tare_g"]);
    draft.tare.text = "40";
    expect(draft.freshGrams).toBe(210);
    expect(await refused()).toEqual([]);
  });

  test("lets no harvest with poisonous look-alikes through before they are ruled out", async () => {
    const { draft, kept, refused } = await picking(true);
    draft.choose(yarrow);
    draft.gross.text = "250";
    await Promise.resolve();
    await Promise.resolve();
    expect(await refused()).toEqual(["look_alike_ruled_out"]);
    draft.ruledOut = true;
    expect(await refused()).toEqual([]);
    expect(kept).toHaveLength(1);
    draft.choose({ ...yarrow, key: "mint" });
    expect(draft.ruledOut, "what was ruled out for one herb is not for the next").toBe(false);
  });

  test("wants a name for a new bed", async () => {
    const { draft, kept, refused } = await picking();
    draft.choose(yarrow);
    draft.gross.text = "250";
    draft.bed = "new";
    draft.bedName = "  ";
    expect(await refused()).toEqual(["bed_name"]);
    draft.bedName = " Under the apple tree ";
    expect(await refused()).toEqual([]);
    draft.wild = true;
    expect(await refused()).toEqual([]);
    const bed_name = "Under the apple tree";
    expect(kept, "bed and harvest are one deed").toMatchObject([{ bed_name }, { bed_name, bed_wild: true }]);
  });
});
