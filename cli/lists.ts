import { builtInPart, builtInParts } from './find-part.js';

/** What `list` can show: rows of name and description. Tables are loaded when asked for. */
export const lists = {
  parts: async () => {
    const parts = await Promise.all(builtInParts().map(builtInPart));
    return parts.map(({ name, summary }) => [name, summary]);
  },
  threads: async () => {
    const { threads } = await import('../engine/trade/threads.js');
    return threads.map(({ designation, series }) => [designation, series]);
  },
  drills: async () => {
    const { drills } = await import('../engine/trade/drills.js');
    return drills.map(({ name, diameter }) => [name, `${String(diameter)} mm`]);
  },
} satisfies Readonly<Record<string, () => Promise<readonly (readonly string[])[]>>>;
