import { beforeEach, describe, expect, test } from "vitest";
import { speaking } from "../../tests/speaking";

beforeEach(() => speaking("en"));

describe("a number being typed", () => {
  test("is sent in the unit of the wire, whatever unit the maker chose", async () => {
    const { MassEntry, VolumeEntry } = await import("./form.svelte");
    const mass = new MassEntry("metric");
    mass.text = "1.25";
    mass.unit = "kg";
    expect(mass.amount).toBe(1250);
    mass.unit = "lb";
    expect(mass.amount).toBeCloseTo(1.25 * 453.59237, 9);
    const volume = new VolumeEntry("us", 295.735295625);
    expect([volume.text, volume.unit]).toEqual(["10", "fl oz"]);
  });

  test("is as fine as the last place that was typed", async () => {
    const { MassEntry } = await import("./form.svelte");
    const mass = new MassEntry("metric");
    const steps = ["2", "2.0", "2,00"].map((text) => ((mass.text = text), mass.step));
    expect(steps).toEqual([1, 0.1, 0.01]);
    mass.unit = "kg";
    expect(mass.step).toBe(10);
  });

  test("is missed, no number or nothing in the words of its label", async () => {
    const { MassEntry } = await import("./form.svelte");
    const mass = new MassEntry("metric");
    const wrong = (text: string, required: boolean) => {
      mass.text = text;
      return mass.wrong("gross_g", "Weight", required).map(({ code, field }) => `${code} ${field}`);
    };
    expect(wrong("", true)).toEqual(["missing gross_g"]);
    expect(wrong("", false)).toEqual([]);
    expect(wrong("much", false)).toEqual(["not_a_number gross_g"]);
    expect(wrong("-1", false)).toEqual(["not_positive gross_g"]);
    expect(wrong("0", true)).toEqual(["not_positive gross_g"]);
    expect(wrong("0", false)).toEqual([]);
    expect(wrong("12,5", true)).toEqual([]);
  });

  test("may lie below zero where it is a temperature, in either unit", async () => {
    const { DegreesEntry } = await import("./form.svelte");
    const degrees = new DegreesEntry("us", -5);
    expect([degrees.text, degrees.unit]).toEqual(["23", "°F"]);
    expect(degrees.amount).toBeCloseTo(-5, 9);
    expect(degrees.wrong("temperature_c", "Temperature", true)).toEqual([]);
  });
});

describe("a form", () => {
  test("sends nothing while something in it is wrong, and shows what the core refuses at its field", async () => {
    const { Form } = await import("./form.svelte");
    const { Failure } = await import("../api");
    const form = new Form();
    let sent = 0;
    await form.send(async () => void sent++, [new Failure("missing", "herb", "Choose one.")]);
    expect([sent, form.failureOf("herb"), form.busy]).toEqual([0, "Choose one.", false]);
    await form.send(() => Promise.reject(new Failure("invalid", "part", "No such part.")));
    expect([form.failureOf("herb"), form.failureOf("part"), form.busy]).toEqual([null, "No such part.", false]);
    await form.send(() => Promise.reject(new Failure("confirm_odd", "gross_g", "So little?")));
    // A question is no fault: it is asked beside the button.
    expect([form.faults, form.odd?.message]).toEqual([[], "So little?"]);
    await expect(form.send(() => Promise.reject(new Error("a slip of ours")))).rejects.toThrow("a slip of ours");
    expect(form.busy).toBe(false);
  });
});
