/** Linear equations by elimination, each row with its right side at the end; undefined when they do not decide. */
export function solve(rows: Float64Array[]): number[] | undefined {
  const n = rows.length;
  for (let i = 0; i < n; i++) {
    let pivot = i;
    for (let k = i + 1; k < n; k++) if (Math.abs(rows[k]![i]!) > Math.abs(rows[pivot]![i]!)) pivot = k;
    const row = rows[pivot]!;
    if (Math.abs(row[i]!) < 1e-9) return undefined;
    [rows[pivot], rows[i]] = [rows[i]!, row];
    for (let k = i + 1; k < n; k++) {
      const share = rows[k]![i]! / row[i]!;
      for (let j = i; j <= n; j++) rows[k]![j] = rows[k]![j]! - share * row[j]!;
    }
  }
  const found: number[] = new Array(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    let sum = rows[i]![n]!;
    for (let j = i + 1; j < n; j++) sum -= rows[i]![j]! * found[j]!;
    found[i] = sum / rows[i]![i]!;
  }
  return found;
}
