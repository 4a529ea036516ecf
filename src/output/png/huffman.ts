/**
 * Lengths, in bits, of a prefix code in which frequent symbols are short (Huffman, 1952), none over `limit`.
 * A symbol that does not occur gets 0; a lone symbol gets 1. Where the code would be too long, the counts are
 * halved and it is made again: a hair longer than the best, and simple.
 */
export function codeLengths(counts: Uint32Array, limit: number): Uint8Array {
  let weights = Array.from(counts);
  for (;;) {
    const lengths = unlimited(weights);
    if (lengths.every((length) => length <= limit)) return lengths;
    weights = weights.map((weight) => Math.ceil(weight / 2));
  }
}

function unlimited(weights: readonly number[]): Uint8Array {
  const lengths = new Uint8Array(weights.length);
  const leaves: number[] = [];
  for (let symbol = 0; symbol < weights.length; symbol++) if (weights[symbol]! > 0) leaves.push(symbol);
  leaves.sort((a, b) => weights[a]! - weights[b]! || a - b);
  const n = leaves.length;
  if (n === 1) lengths[leaves[0]!] = 1;
  if (n < 2) return lengths;
  // Two queues: leaves by weight, then the nodes made of them, whose weights only rise.
  const weight = new Float64Array(2 * n - 1);
  for (let i = 0; i < n; i++) weight[i] = weights[leaves[i]!]!;
  const parent = new Uint16Array(2 * n - 1);
  let leaf = 0;
  let node = n;
  for (let made = n; made < weight.length; made++)
    for (let child = 0; child < 2; child++) {
      const next = leaf < n && (node >= made || weight[leaf]! <= weight[node]!) ? leaf++ : node++;
      parent[next] = made;
      weight[made] = weight[made]! + weight[next]!;
    }
  const depth = new Uint8Array(2 * n - 1);
  for (let i = 2 * n - 3; i >= 0; i--) depth[i] = depth[parent[i]!]! + 1;
  for (let i = 0; i < n; i++) lengths[leaves[i]!] = depth[i]!;
  return lengths;
}

/** The codes for given lengths (RFC 1951, 3.2.2), bits reversed, since deflate sends a code's first bit first. */
export function codesFor(lengths: Uint8Array): Uint16Array {
  const perLength = new Uint16Array(17);
  for (const length of lengths) if (length > 0) perLength[length]!++;
  const next = new Uint16Array(17);
  for (let bits = 1; bits < 16; bits++) next[bits + 1] = (next[bits]! + perLength[bits]!) << 1;
  return Uint16Array.from(lengths, (length) => (length > 0 ? reversed(next[length]!++, length) : 0));
}

function reversed(code: number, length: number): number {
  let out = 0;
  for (let i = 0; i < length; i++) out |= ((code >> i) & 1) << (length - 1 - i);
  return out;
}
