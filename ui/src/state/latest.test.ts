import { expect, test } from "vitest";
import { Failure } from "../api/failure";
import { Latest } from "./latest";

/** A promise, and what keeps it or breaks it. */
function waiting<T>() {
  let keep!: (value: T) => void;
  let fail!: (why: unknown) => void;
  const answer = new Promise<T>((resolve, reject) => ([keep, fail] = [resolve, reject]));
  return { answer, keep, fail };
}

test("an answer that a later question overtook is not handed on, nor is its failure", async () => {
  const latest = new Latest();
  const came: unknown[] = [];
  const [first, second, third] = [waiting<string>(), waiting<string>(), waiting<string>()];
  const asked = [first, second, third].map(({ answer }) => latest.ask(answer, (one, failure) => came.push(one ?? failure?.message)));
  third.keep("new");
  second.fail(new Failure("storage", null, "too late"));
  first.keep("old");
  await Promise.all(asked);
  expect(came).toEqual(["new"]);
});

test("a failure is handed on, and an error of the page is none", async () => {
  const latest = new Latest();
  const came: unknown[] = [];
  await latest.ask(Promise.reject(new Failure("storage", null, "no room")), (_, failure) => came.push(failure?.message));
  expect(came).toEqual(["no room"]);
  await expect(latest.ask(Promise.reject(new TypeError("broken")), () => came.push("wrong"))).rejects.toThrow("broken");
  expect(came).toEqual(["no room"]);
});

test("what is dropped is not handed on", async () => {
  const latest = new Latest();
  const came: unknown[] = [];
  const asked = latest.ask(Promise.resolve("answer"), (one) => came.push(one));
  latest.drop();
  await asked;
  expect(came).toEqual([]);
});
