/**
 * e to the power x, the same to the last bit in every engine (`Math.exp` is not): x is a whole number of times ln 2 and a
 * rest within ln 2 / 2, e to the rest is Taylor's series to the 14th power, and doubling is exact. Within 1e-14 of its
 * value for x from -700 to 700; 0 below, infinite above.
 */
export function exponential(x: number): number {
  if (x < -700) return 0;
  if (x > 700) return Infinity;
  const twos = Math.round(x / Math.LN2);
  // ln 2 in two parts, so that little is lost however many times it is taken off (Cody and Waite).
  const rest = x - twos * 0.693145751953125 - twos * 1.4286068203094173e-6;
  let sum = 1;
  for (let k = 14; k > 0; k--) sum = 1 + (rest / k) * sum;
  for (let k = 0; k < twos; k++) sum *= 2;
  for (let k = 0; k > twos; k--) sum /= 2;
  return sum;
}
