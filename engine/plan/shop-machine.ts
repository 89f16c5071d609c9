import type { SetUp } from '../part/part.js';
import type { LengthUnit } from '../units/length.js';
import type { Machine, MachineKind, Shop } from '../trade/shop/shop.js';

const kinds: Readonly<Record<SetUp['machine'], readonly MachineKind[]>> = { lathe: ['lathe'], mill: ['mill'], drill: ['drill', 'mill'], bench: [] };

/** The machine of the shop on which a set-up is done; undefined on the bench, and where the shop has none of its kind. */
export const shopMachine = (shop: Shop, machine: SetUp['machine']): Machine | undefined =>
  kinds[machine].map((kind) => shop.machines.find((candidate) => candidate.kind === kind)).find((candidate) => candidate !== undefined);

/** For whom a plan is made: the shop, and the unit in which it is told. */
export interface Listener {
  readonly shop: Shop;
  readonly unit: LengthUnit;
}
