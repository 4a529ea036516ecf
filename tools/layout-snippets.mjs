/**
 * The patterns that the snippets of docs/layouts.md define, in order. The first snippet is the stock that all others go
 * on from; each of them runs by itself. A pattern that two of them define is there once.
 */
export async function patternsOf(page, library) {
  const found = new Map();
  const definePattern = (input) => {
    const pattern = library.definePattern(input);
    found.set(pattern.name, pattern);
    return pattern;
  };
  const doors = { ...library, definePattern };
  const [stock, ...snippets] = [...page.matchAll(/```js\n([\s\S]*?)```/g)].map((match) => match[1]);
  const AsyncFunction = (async () => {}).constructor;
  for (const snippet of snippets)
    await new AsyncFunction(...Object.keys(doors), `${stock}\n{\n${snippet}\n}`)(...Object.values(doors));
  return [...found.values()];
}
