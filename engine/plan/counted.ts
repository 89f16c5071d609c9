import type { Part } from '../part/part.js';
import { defaultShop, type Shop } from '../trade/shop/shop.js';
import { machinesOf } from './plan.js';
import { countingSentences, countingWords } from './set-up-plan.js';
import { shopMachine } from './shop-machine.js';

/** How the settings of some parts are counted, in sentences said once for all of them. */
export function countedFor(parts: readonly Part[], shop: Shop | undefined): readonly string[] {
  const setUps = parts.flatMap((part) => part.setUps.filter(({ id }) => part.operations.some(({ setUp }) => setUp === id)));
  return [`Machines: ${machinesOf(shop)}.`, ...countingSentences(setUps.flatMap((setUp) => countingWords(setUp, shopMachine(shop ?? defaultShop, setUp.machine)) ?? []))];
}
