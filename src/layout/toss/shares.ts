/**
 * Whole numbers that add up to `total` in the proportion of `shares` (not all 0), by the method of the largest
 * remainder (Hamilton); of equal remainders the earlier entry comes first.
 */
export function apportion(total: number, shares: readonly number[]): number[] {
  const sum = shares.reduce((a, b) => a + b, 0);
  const exact = shares.map((share) => (total * share) / sum);
  const counts = exact.map(Math.floor);
  const left = total - counts.reduce((a, b) => a + b, 0);
  const order = exact.map((value, index) => ({ rest: value - Math.floor(value), index }));
  order.sort((a, b) => b.rest - a.rest || a.index - b.index);
  for (const { index } of order.slice(0, left)) counts[index]!++;
  return counts;
}

/** How far the entry that is most over its share of all is over it; below 1 the shares are kept. */
export function excess(used: readonly number[], shares: readonly number[]): { entry: number; over: number } {
  const total = used.reduce((a, b) => a + b, 0);
  const sum = shares.reduce((a, b) => a + b, 0);
  let entry = 0;
  let over = Number.NEGATIVE_INFINITY;
  used.forEach((count, index) => {
    const beyond = count - (total * shares[index]!) / sum;
    if (beyond > over) {
      over = beyond;
      entry = index;
    }
  });
  return { entry, over };
}
