import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

/**
 * The exact kernel that the tests compare with. Its binding has no usable types, so it is taken as a bag of
 * constructors and functions; a constructor's number picks the overload, in the order of the kernel's header files.
 */
// eslint-disable-next-line @typescript-eslint/no-explicit-any
export type OpenCascade = Record<string, any>;
// eslint-disable-next-line @typescript-eslint/no-explicit-any
export type Shape = any;

type Loader = (options: { wasmBinary: Uint8Array }) => Promise<OpenCascade>;

let loading: Promise<OpenCascade> | undefined;

/** Loads the exact kernel once for a test file; takes one to two seconds. */
export function loadOpenCascade(): Promise<OpenCascade> {
  loading ??= load();
  return loading;
}

async function load(): Promise<OpenCascade> {
  const require = createRequire(import.meta.url);
  const folder = join(dirname(require.resolve('opencascade.js/package.json')), 'dist');
  const file = join(folder, 'opencascade.wasm.js');
  // The file ends in an ES export, but its package does not declare ES modules: run it as a function instead.
  const source = readFileSync(file, 'utf8').replace(/export default opencascade;\s*$/, 'return opencascade;');
  const make = new Function('require', '__dirname', '__filename', 'process', source) as (
    ...names: unknown[]
  ) => Loader;
  const loader = make(require, folder, file, process);
  return loader({ wasmBinary: readFileSync(join(folder, 'opencascade.wasm.wasm')) });
}

/** Volume of a shape, mm3. */
export function shapeVolume(oc: OpenCascade, shape: Shape): number {
  const properties = new oc.GProp_GProps_1();
  oc.BRepGProp.prototype.constructor.VolumeProperties_1(shape, properties, false, false, false);
  const volume = properties.Mass() as number;
  properties.delete();
  return volume;
}

/** Exact box of a shape, without the tolerance gap that the kernel adds by default. */
export function shapeBox(oc: OpenCascade, shape: Shape): { readonly low: number[]; readonly high: number[] } {
  const box = new oc.Bnd_Box_1();
  oc.BRepBndLib.prototype.constructor.AddOptimal(shape, box, false, false);
  const low = box.CornerMin();
  const high = box.CornerMax();
  const result = { low: [low.X(), low.Y(), low.Z()], high: [high.X(), high.Y(), high.Z()] };
  for (const used of [low, high, box]) used.delete();
  return result;
}

/** True when the kernel's own check finds no fault in the shape. */
export function shapeIsValid(oc: OpenCascade, shape: Shape): boolean {
  const check = new oc.BRepCheck_Analyzer(shape, true);
  const valid = check.IsValid_2() as boolean;
  check.delete();
  return valid;
}
