import { existsSync, readFileSync, statSync } from 'node:fs';
import { UserError } from '../engine/units/user-error.js';
import { systemReason } from './system-reason.js';
import type { Shop } from '../engine/trade/shop/shop.js';

/** The shop file that is read where none is named. */
export const USUAL_SHOP = 'shop.yaml';

/** No drawer fills more. */
const MOST_BYTES = 1024 * 1024;

/**
 * The text of a shop file.
 * @param path as the user wrote it; errors name it so.
 * @throws UserError where it cannot be read.
 */
export function shopText(path: string): string {
  try {
    if (path === '') throw new UserError('The name of the file is empty.');
    const stat = statSync(path, { throwIfNoEntry: false });
    if (stat === undefined) throw new UserError(`There is no file ${path}.`);
    if (!stat.isFile()) throw new UserError(`${path} is not a file: give the path of a shop file.`);
    if (stat.size > MOST_BYTES) throw new UserError(`${path} is too large for a shop file: at most 1 MB.`);
    const text = readFileSync(path, 'utf8').replace(/^\uFEFF/, '');
    if (/[\0\uFFFD]/.test(text)) throw new UserError(`${path} is not a text in UTF-8.`);
    return text;
  } catch (error) {
    if (error instanceof UserError) throw error;
    const code = error instanceof Error ? (error as NodeJS.ErrnoException).code : undefined;
    if (code === undefined) throw error;
    throw new UserError(`${path} cannot be read: ${systemReason(code)}.`, { cause: error });
  }
}

/**
 * The shop of the file named; if none is named that of shop.yaml in this folder, or nothing where there is none.
 * @throws UserError for the first thing that is wrong in the file.
 */
export async function shopOf(path: string | undefined): Promise<Shop | undefined> {
  if (path === undefined && !existsSync(USUAL_SHOP)) return undefined;
  const { readShop } = await import('../engine/trade/shop/read-shop.js');
  return readShop(shopText(path ?? USUAL_SHOP), path ?? USUAL_SHOP);
}
