/** Tables of a TrueType font by their four-letter names. */
export type FontTables = ReadonlyMap<string, Uint8Array>;

/** Reads the tables of a TrueType font file. */
export function readTables(bytes: Uint8Array): FontTables {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const tables = new Map<string, Uint8Array>();
  for (let index = 0; index < view.getUint16(4); index += 1) {
    const entry = 12 + 16 * index;
    const name = String.fromCharCode(...bytes.subarray(entry, entry + 4));
    const start = view.getUint32(entry + 8);
    tables.set(name, bytes.subarray(start, start + view.getUint32(entry + 12)));
  }
  return tables;
}

const padded = (size: number): number => Math.ceil(size / 4) * 4;

/** Sum of a table's 32-bit words, as the OpenType specification defines a checksum. */
function checksum(table: Uint8Array): number {
  const words = new Uint8Array(padded(table.length));
  words.set(table);
  const view = new DataView(words.buffer);
  let total = 0;
  for (let at = 0; at < words.length; at += 4) total = (total + view.getUint32(at)) >>> 0;
  return total;
}

/** Writes tables as a TrueType font file, in the order of their names. */
export function writeTables(tables: FontTables): Uint8Array {
  const entries = [...tables].sort(([a], [b]) => (a < b ? -1 : 1));
  const power = Math.floor(Math.log2(entries.length));
  let at = 12 + 16 * entries.length;
  const size = entries.reduce((sum, [, table]) => sum + padded(table.length), at);
  const bytes = new Uint8Array(size);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, 0x00010000);
  view.setUint16(4, entries.length);
  view.setUint16(6, 16 * 2 ** power);
  view.setUint16(8, power);
  view.setUint16(10, 16 * (entries.length - 2 ** power));
  let headAt = 0;
  entries.forEach(([name, table], index) => {
    const entry = 12 + 16 * index;
    for (let letter = 0; letter < 4; letter += 1) view.setUint8(entry + letter, name.charCodeAt(letter));
    bytes.set(table, at);
    if (name === 'head') {
      headAt = at;
      view.setUint32(at + 8, 0);
    }
    view.setUint32(entry + 4, checksum(bytes.subarray(at, at + table.length)));
    view.setUint32(entry + 8, at);
    view.setUint32(entry + 12, table.length);
    at += padded(table.length);
  });
  // The whole file's checksum is set against this constant: OpenType specification, table "head".
  view.setUint32(headAt + 8, (0xb1b0afba - checksum(bytes)) >>> 0);
  return bytes;
}
