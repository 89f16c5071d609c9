import type { OperationFacts } from './facts.js';

/** What a machinist calls a cut. */
export const cutName = ({ part }: Pick<OperationFacts, 'part'>, id: string): string => (id === 'stock' ? 'face of the bar' : (part.operations.flatMap(({ cuts }) => cuts).find((cut) => cut.id === id)?.name ?? id));
