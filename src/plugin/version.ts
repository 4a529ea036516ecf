const VERSION_TEXT = /^(\d{1,6})\.(\d{1,6})\.(\d{1,6})$/;

/** Whether a text is a semantic version of three numbers. */
export const isVersion = (text: unknown): text is string =>
  typeof text === "string" && VERSION_TEXT.test(text);

/** Whether `have` serves where `need` is asked for: not older, and with no breaking change between (semver.org). */
export function fits(have: string, need: string): boolean {
  const [h, n] = [have, need].map((text) => VERSION_TEXT.exec(text)!.slice(1).map(Number)) as [
    number[],
    number[],
  ];
  const breaking = n[0] === 0 ? 2 : 1;
  for (let i = 0; i < breaking; i++) if (h[i] !== n[i]) return false;
  for (let i = breaking; i < 3; i++) if (h[i] !== n[i]) return h[i]! > n[i]!;
  return true;
}
