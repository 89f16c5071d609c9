import type { Operation, Part } from '../part/part.js';
import type { Solid } from '../solid/model.js';
import type { Extents } from './extents.js';
import { holeSettings } from './hole-settings.js';
import { latheSettings } from './lathe-settings.js';
import type { MachineFrame } from './machine-frame.js';
import { millSettings } from './mill-settings.js';
import type { OperationSettings, Reader } from './setting.js';
import type { CutterPlan } from './speeds.js';
import { stopSettings } from './stop-settings.js';
import { swingSettings } from './swing-settings.js';

/** What is known of an operation when its settings are worked out. */
export interface SettingCase {
  readonly part: Part;
  readonly frame: MachineFrame;
  readonly operation: Operation;
  readonly cutters: readonly CutterPlan[];
  readonly reader: Reader;
  readonly extents?: Extents | undefined;
  readonly before?: Solid | undefined;
}

/** All that is set on the machine for an operation, counted from the zero of its set-up. */
export function settingsOf({ part, frame, operation, cutters, reader, extents, before }: SettingCase): OperationSettings {
  switch (frame.setUp.machine) {
    case 'bench':
      return { settings: [], blocks: [] };
    case 'lathe':
      return latheSettings(part, frame, operation, reader);
    case 'mill':
    case 'drill': {
      const mill = cutters.find(({ kind }) => kind === 'milling' || kind === 'sawing')?.diameter ?? 0;
      const saw = operation.cutter.width;
      const walls = millSettings({ part, frame, reader, radius: mill / 2, ...(saw === undefined ? {} : { saw }), extents, before }, operation);
      const stops = stopSettings(frame, reader, mill / 2, operation.cuts);
      const swings = swingSettings(frame, reader, mill / 2, operation.cuts);
      const holes = holeSettings(part, frame, operation, reader);
      return { settings: [...walls.settings, ...stops.settings, ...swings.settings, ...holes.settings], blocks: [...walls.blocks, ...stops.blocks, ...swings.blocks, ...holes.blocks] };
    }
  }
}
