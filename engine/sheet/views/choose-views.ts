import { UserError } from '../../units/user-error.js';
import type { Home, PrintItem } from '../say/item.js';
import type { ViewPlan } from './plan.js';

/** Where an item is drawn. */
export interface Housed {
  readonly item: PrintItem;
  readonly plan: ViewPlan;
  readonly home: Home;
}

export interface ChosenViews {
  readonly plans: readonly ViewPlan[];
  readonly housed: readonly Housed[];
  readonly cost: number;
}

/** What a view costs beside the items in it: more paper, more to compare. House values. */
const viewCost: Readonly<Record<ViewPlan['place'], number>> = {
  front: 0,
  right: 10,
  left: 10,
  above: 10,
  below: 11,
  rear: 14,
  section: 8,
};

/** Weight of an item's own cost against a view's. */
const itemWeight = 2;

/** How many sets of views are offered, and how much dearer than the best one the others may be. */
const mostSets = 6;
const dearer = 16;

/**
 * The least sets of views, with the front view in them, in which every item has a place, best first: exact set cover over all
 * subsets, so that leaving out any view of the best would cost more or leave something unsaid. The others serve where the
 * best does not fit a sheet. Throws UserError naming the first item that no view shows.
 */
export function chooseViews(items: readonly PrintItem[], plans: readonly ViewPlan[], partName: string): readonly ChosenViews[] {
  const homes = items.map((item) => plans.map((plan) => item.find(plan)));
  const lost = items.find((_, i) => homes[i]!.every((home) => home === undefined));
  if (lost !== undefined)
    throw new UserError(`the print of the ${partName} cannot show "${lost.lines.join(' ')}" of the ${lost.record.feature}: no view or section shows it in true shape`);
  const front = plans.findIndex((plan) => plan.place === 'front');
  const sets: { mask: number; cost: number }[] = [];
  let limit = Infinity;
  for (let mask = 0; mask < 1 << plans.length; mask += 1) {
    if ((mask & (1 << front)) === 0) continue;
    let cost = 0;
    for (let p = 0; p < plans.length; p += 1) if ((mask & (1 << p)) !== 0) cost += viewCost[plans[p]!.place] + p * 1e-3;
    for (const row of homes) {
      if (cost >= limit) break;
      cost += itemWeight * cheapest(row, mask).cost;
    }
    if (!(cost < limit)) continue;
    sets.push({ mask, cost });
    sets.sort((a, b) => a.cost - b.cost || a.mask - b.mask);
    if (sets.length > mostSets) sets.pop();
    limit = Math.min(sets[0]!.cost + dearer, sets.length === mostSets ? sets[sets.length - 1]!.cost : Infinity);
  }
  return sets
    .filter(({ cost }) => cost <= sets[0]!.cost + dearer)
    .map(({ mask, cost }) => {
      const housed = items.map((item, i): Housed => {
        const { index } = cheapest(homes[i]!, mask);
        return { item, plan: plans[index]!, home: homes[i]![index]! };
      });
      // A view in which nothing is housed adds nothing, but for the front view.
      const used = new Set(housed.map(({ plan }) => plan));
      return { plans: plans.filter((plan, p) => (mask & (1 << p)) !== 0 && (p === front || used.has(plan))), housed, cost };
    });
}

function cheapest(row: readonly (Home | undefined)[], mask: number): { readonly index: number; readonly cost: number } {
  let index = -1;
  let cost = Infinity;
  row.forEach((home, p) => {
    if ((mask & (1 << p)) === 0 || home === undefined || home.cost >= cost - 1e-12) return;
    index = p;
    cost = home.cost;
  });
  return { index, cost };
}
