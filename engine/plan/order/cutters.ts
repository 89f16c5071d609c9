import { cutterPlans, type CutterPlan } from '../speeds.js';
import type { OperationState } from '../states/state.js';
import { frameOf, type OrderContext } from './context.js';

/** The cutters of an operation as the plan of the shop has them. */
export const cuttersOf = (context: OrderContext, state: OperationState): readonly CutterPlan[] => cutterPlans(context.part, state.setUp, state.operation, frameOf(context, state), context);

/** The end mill of an operation, where it mills; its diameter in mm. */
export const endMillOf = (context: OrderContext, state: OperationState): number | undefined =>
  state.setUp.machine === 'mill' || state.setUp.machine === 'drill' ? cuttersOf(context, state).find(({ kind }) => kind === 'milling')?.diameter : undefined;
