import fc from "fast-check";
import { expect, it } from "vitest";
import { canonicalJson, deepFreeze } from "../../src/params/canonical.ts";

it("gives equal data equal text, in whatever order the names were written", () => {
  expect(canonicalJson({ b: 1, a: [{ d: null, c: "x" }] })).toBe('{"a":[{"c":"x","d":null}],"b":1}');
  fc.assert(
    fc.property(fc.dictionary(fc.string(), fc.jsonValue()), (value) => {
      const turned = Object.fromEntries(Object.entries(value).reverse());
      expect(canonicalJson(turned)).toBe(canonicalJson(value));
    }),
    { seed: 4 },
  );
});

it("is JSON: it reads back as the same data", () => {
  fc.assert(
    fc.property(fc.jsonValue(), (value) => {
      expect(JSON.parse(canonicalJson(value))).toEqual(JSON.parse(JSON.stringify(value)));
    }),
    { seed: 5 },
  );
});

it("leaves out what is undefined", () => {
  expect(canonicalJson({ a: undefined, b: [undefined] })).toBe('{"b":[null]}');
});

it("freezes plain data through and through", () => {
  const data = deepFreeze({ a: [{ b: 1 }], c: "x" });
  for (const part of [data, data.a, data.a[0]]) expect(Object.isFrozen(part)).toBe(true);
});
