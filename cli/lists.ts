import { builtInPart, builtInParts } from './find-part.js';

/** What `list` can show: rows of name and description. Tables are loaded when asked for. */
export const lists = {
  parts: async () => {
    const parts = await Promise.all(builtInParts().map(builtInPart));
    return parts.map(({ name, summary }) => [name, summary]);
  },
  fixtures: async () => {
    const { collectFixtures } = await import('./collect-fixtures.js');
    return (await collectFixtures()).map(({ name, summary }) => [name, summary]);
  },
  papers: async () => {
    const { papers } = await import('../templates/papers/index.js');
    return papers.map(({ name, short, long }) => [name, `${String(short)} x ${String(long)} mm`]);
  },
  threads: async () => {
    const { threads } = await import('../engine/trade/threads.js');
    return threads.map(({ designation, series }) => [designation, series]);
  },
  drills: async () => {
    const { drills } = await import('../engine/trade/drills.js');
    return drills.map(({ name, diameter }) => [name, `${String(diameter)} mm`]);
  },
  stock: async () => {
    const { stock } = await import('../engine/trade/stock.js');
    return stock.map(({ name, form }) => [name, form]);
  },
} satisfies Readonly<Record<string, () => Promise<readonly (readonly string[])[]>>>;
