/** Bytes of whole numbers, each given as value and size in bytes, most significant first. */
function packed(fields: readonly (readonly [value: number, size: 1 | 2 | 4])[]): Uint8Array {
  const bytes: number[] = [];
  for (const [value, size] of fields) {
    for (let shift = 8 * (size - 1); shift >= 0; shift -= 8) bytes.push((value >>> shift) & 0xff);
  }
  return Uint8Array.from(bytes);
}

/** The table `cmap` with one group a character (format 12; OpenType specification), from code points to glyph numbers. */
export function characterMap(glyphs: ReadonlyMap<number, number>): Uint8Array {
  const groups = [...glyphs].sort(([a], [b]) => a - b);
  return packed([
    [0, 2],
    [1, 2],
    [3, 2],
    [10, 2],
    [12, 4],
    [12, 2],
    [0, 2],
    [16 + 12 * groups.length, 4],
    [0, 4],
    [groups.length, 4],
    ...groups.flatMap(([code, glyph]) => [[code, 4], [code, 4], [glyph, 4]] as const),
  ]);
}

const copyright =
  'Copyright (c) 2003 by Bitstream, Inc. All Rights Reserved. Copyright (c) 2006 by Tavmjong Bah. All Rights Reserved. DejaVu changes are in public domain.';

/** The table `name` (OpenType specification): copyright, family, style and full name, in the encoding of platform 3. */
export function nameTable(family: string, style: string): Uint8Array {
  const texts: readonly (readonly [number, string])[] = [
    [0, copyright],
    [1, family],
    [2, style],
    [4, `${family} ${style}`],
    [6, `${family} ${style}`.replaceAll(' ', '')],
  ];
  let offset = 0;
  const records = texts.flatMap(([id, text]) => {
    const record = [[3, 2], [1, 2], [0x409, 2], [id, 2], [2 * text.length, 2], [offset, 2]] as const;
    offset += 2 * text.length;
    return record;
  });
  const storage = texts.flatMap(([, text]) => [...text].map((character) => [character.charCodeAt(0), 2] as const));
  return packed([[0, 2], [texts.length, 2], [6 + 12 * texts.length, 2], ...records, ...storage]);
}

/** The table `post` without glyph names (version 3; OpenType specification). */
export const postTable = (): Uint8Array => packed([[0x00030000, 4], ...Array.from({ length: 7 }, () => [0, 4] as const)]);
