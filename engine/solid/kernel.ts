import type { Manifold, ManifoldToplevel } from 'manifold-3d/manifold';
import { loadSweeper, type Sweeper } from './sweep.js';

/** What makes and cuts bodies: one library sweeps outlines, the other adds and subtracts closed meshes. */
export interface Kernel {
  readonly sweep: Sweeper;
  readonly booleans: ManifoldToplevel;
}

let loading: Promise<Kernel> | undefined;

/** Loads the modelling libraries, once for the process; all work with the kernel is synchronous afterwards. */
export function loadKernel(): Promise<Kernel> {
  loading ??= load();
  return loading;
}

async function load(): Promise<Kernel> {
  const [sweep, module] = await Promise.all([loadSweeper(), import('manifold-3d/manifold')]);
  const booleans = await module.default();
  booleans.setup();
  return { sweep, booleans };
}

/**
 * Runs `work`, which hands every body that it makes to `keep`; all are freed at the end, also when it throws. The bodies
 * live outside the memory that JavaScript clears by itself.
 */
export function withBodies<T>(work: (keep: (body: Manifold) => Manifold) => T): T {
  const kept: Manifold[] = [];
  try {
    return work((body) => {
      kept.push(body);
      return body;
    });
  } finally {
    for (const body of kept) body.delete();
  }
}
