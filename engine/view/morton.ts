/** Triangle indices in the order of a space-filling curve (Morton) through the triangles' middles, 10 bits to an axis. */
export function mortonOrder(positions: Float64Array, triangles: Uint32Array): Uint32Array {
  const count = triangles.length / 3;
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  for (let i = 0; i < positions.length; i += 1) {
    const k = i % 3;
    const value = positions[i]!;
    if (value < low[k]!) low[k] = value;
    if (value > high[k]!) high[k] = value;
  }
  const span = Math.max(high[0]! - low[0]!, high[1]! - low[1]!, high[2]! - low[2]!, 1e-9);
  const scale = 1023.999 / span / 3;
  const codes = new Uint32Array(count);
  for (let t = 0; t < count; t += 1) {
    const a = 3 * triangles[3 * t]!;
    const b = 3 * triangles[3 * t + 1]!;
    const c = 3 * triangles[3 * t + 2]!;
    const x = (positions[a]! + positions[b]! + positions[c]! - 3 * low[0]!) * scale;
    const y = (positions[a + 1]! + positions[b + 1]! + positions[c + 1]! - 3 * low[1]!) * scale;
    const z = (positions[a + 2]! + positions[b + 2]! + positions[c + 2]! - 3 * low[2]!) * scale;
    codes[t] = spread(x) | (spread(y) << 1) | (spread(z) << 2);
  }
  return sorted(codes);
}

/** The ten bits of a number, each followed by two zeros. */
function spread(value: number): number {
  let x = Math.trunc(value);
  x = (x | (x << 16)) & 0x030000ff;
  x = (x | (x << 8)) & 0x0300f00f;
  x = (x | (x << 4)) & 0x030c30c3;
  return (x | (x << 2)) & 0x09249249;
}

/** Indices by rising code: counting sort, ten bits at a time. */
function sorted(codes: Uint32Array): Uint32Array {
  let from = Uint32Array.from(codes.keys());
  let to = new Uint32Array(codes.length);
  for (let shift = 0; shift < 30; shift += 10) {
    const starts = new Uint32Array(1025);
    for (let i = 0; i < codes.length; i += 1) starts[((codes[i]! >>> shift) & 1023) + 1]! += 1;
    for (let i = 0; i < 1024; i += 1) starts[i + 1]! += starts[i]!;
    for (let i = 0; i < from.length; i += 1) {
      const index = from[i]!;
      to[starts[(codes[index]! >>> shift) & 1023]!++] = index;
    }
    [from, to] = [to, from];
  }
  return from;
}
