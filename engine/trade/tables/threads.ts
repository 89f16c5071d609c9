import { UserError } from '../../units/user-error.js';
import { findThread, threads, type Thread } from '../threads.js';
import { filterRows, type Table, type TableRow } from './table.js';

function threadRow(thread: Thread): TableRow {
  const nut = thread.classes.find(({ of }) => of === 'minorInternal');
  const millimetres = (value: number): number => Number(value.toFixed(6));
  return {
    name: thread.designation,
    designation: thread.designation,
    series: thread.series,
    major: millimetres(thread.major),
    pitch: millimetres(thread.pitch),
    tpi: thread.threadsPerInch ?? null,
    pitchDiameter: millimetres(thread.pitchDiameter),
    minorInternal: {
      basic: millimetres(thread.minorInternal),
      ...(nut === undefined ? {} : { min: millimetres(nut.min), max: millimetres(nut.max), class: nut.name }),
    },
    minorExternal: millimetres(thread.minorExternal),
    formAngle: thread.formAngle,
    depth: millimetres(thread.depth),
    stressArea: Number(thread.stressArea.toPrecision(6)),
    acrossFlats: thread.acrossFlats === undefined ? null : millimetres(thread.acrossFlats),
    classes: thread.classes.map(({ name, of, min, max }) => ({ name, of, min: millimetres(min), max: millimetres(max) })),
    source: thread.source,
  };
}

const rows = threads.map(threadRow);

/** Words for a whole series. */
const seriesWords: Readonly<Record<string, readonly string[]>> = {
  unified: ['unified-coarse', 'unified-fine', 'unified-extra-fine', 'unified-constant', 'unified-special'],
  unc: ['unified-coarse'],
  unf: ['unified-fine'],
  unef: ['unified-extra-fine'],
  un: ['unified-constant'],
  metric: ['metric-coarse', 'metric-fine', 'miniature'],
  ba: ['british-association'],
  bsw: ['whitworth'],
  bsf: ['whitworth-fine'],
  brass: ['brass-26'],
  me: ['model-32', 'model-40'],
  model: ['model-32', 'model-40'],
};

export const threadTable: Table = {
  name: 'threads',
  summary: 'screw threads by name (0-80, M3, 4BA, 1/4x40) or series (unc, unf, unef, un, metric, ba, bsw, bsf, brass, me)',
  rows,
  find(filter) {
    if (filter === undefined || filter.trim() === '') return { kind: 'rows', rows };
    const series = seriesWords[filter.trim().toLowerCase()];
    if (Array.isArray(series)) return { kind: 'rows', rows: rows.filter((row) => series.includes(row['series'])) };
    try {
      return { kind: 'row', row: threadRow(findThread(filter)) };
    } catch (fault) {
      if (!(fault instanceof UserError)) throw fault;
      if (threads.some((thread) => thread.series === filter.trim().toLowerCase())) return { kind: 'rows', rows: filterRows('threads', rows, filter) };
      throw fault;
    }
  },
};
