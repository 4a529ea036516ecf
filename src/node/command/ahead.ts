/**
 * Does work on items, several at a time, and gives the results in order. The next item is begun when the one before
 * calls `ready`, and no more than `most` are under way. After a failure no other is begun, and `signal` calls off those
 * that are; the failure is thrown when they have ended.
 */
export async function* ahead<T, R>(
  items: readonly T[],
  most: number,
  work: (item: T, ready: () => void, signal: AbortSignal) => Promise<R>,
): AsyncGenerator<R> {
  const controller = new AbortController();
  const begun: Promise<R>[] = [];
  let given = 0;
  let readied = 0; // how many items were begun whose successor may begin
  const beginNext = (): void => {
    const i = begun.length;
    if (i === items.length || i > readied || i - given >= most || controller.signal.aborted) return;
    let told = false;
    const ready = (): void => {
      if (told) return;
      told = true;
      readied = Math.max(readied, i + 1);
      beginNext();
    };
    const result = Promise.resolve().then(() => work(items[i]!, ready, controller.signal));
    begun.push(result);
    // Failures are met when the item's turn comes.
    result.then(ready, () => controller.abort());
  };
  try {
    while (given < items.length) {
      beginNext();
      const result = await begun[given]!;
      given++;
      yield result;
    }
  } finally {
    controller.abort();
    await Promise.allSettled(begun);
  }
}
