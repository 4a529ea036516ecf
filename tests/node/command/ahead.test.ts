import { expect, test } from "vitest";
import { ahead } from "../../../src/node/command/ahead.ts";

const pause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

test("results come in order, the next is begun when one is ready, and no more than allowed are under way", async () => {
  const log: string[] = [];
  let under = 0;
  const given: number[] = [];
  const results = ahead([40, 5, 20, 1, 1], 3, async (ms, ready) => {
    log.push(`begin ${ms}`);
    under++;
    expect(under).toBeLessThanOrEqual(3);
    await pause(1);
    log.push(`ready ${ms}`);
    ready();
    ready();
    await pause(ms);
    under--;
    return ms;
  });
  for await (const ms of results) given.push(ms);
  expect(given).toEqual([40, 5, 20, 1, 1]);
  expect(log.slice(0, 6)).toEqual(["begin 40", "ready 40", "begin 5", "ready 5", "begin 20", "ready 20"]);
});

test("one at a time where only one is allowed, and where none says that it is ready", async () => {
  for (const most of [1, 3]) {
    let under = 0;
    const results = ahead([1, 2, 3], most, async (n, ready) => {
      expect(++under).toBe(1);
      if (most === 1) ready();
      await pause(2);
      under--;
      return n;
    });
    const given: number[] = [];
    for await (const n of results) given.push(n);
    expect(given).toEqual([1, 2, 3]);
  }
});

test("a failure calls off what is under way, begins nothing more, and is thrown in its turn", async () => {
  const ended: string[] = [];
  const begun: number[] = [];
  const results = ahead([0, 1, 2, 3, 4], 3, async (n, ready, signal) => {
    begun.push(n);
    ready();
    for (let i = 0; i < 50 && !signal.aborted && n > 1; i++) await pause(2);
    if (n === 1) {
      await pause(5);
      throw new Error("the tide is out");
    }
    ended.push(`${n} ${signal.aborted ? "called off" : "done"}`);
    return n;
  });
  const given: number[] = [];
  await expect(
    (async () => {
      for await (const n of results) given.push(n);
    })(),
  ).rejects.toThrow("the tide is out");
  expect(given).toEqual([0]);
  expect(begun.length).toBeLessThan(5);
  expect(ended.slice(1).every((text) => text.endsWith("called off"))).toBe(true);
});
