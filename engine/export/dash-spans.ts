import { dashElements, shortElements, type DashKind } from '../../templates/line-styles.js';

/** A stretch of ink along a line, mm from its start. On a closed line it may run over the start. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

const { dash, longDash, gap, dot } = dashElements;

/** One period of a broken line: ink and gap by turns, in line widths, beginning with the dash that also ends the line. */
const periods: Readonly<Record<Exclude<DashKind, 'continuous'>, readonly number[]>> = {
  dashed: [dash, gap],
  chain: [longDash, gap, dot, gap],
  'double-chain': [longDash, gap, dot, gap, dot, gap],
  'short double-chain': [shortElements.longDash, shortElements.gap, shortElements.dot, shortElements.gap, shortElements.dot, shortElements.gap],
};

/** Patterns are stretched or squeezed by no more than this share where the line is long enough. */
const tolerance = 0.25;
/** A long dash is no shorter than this share of its usual length: rather than that, the line is drawn through. */
const shortestLongDash = 0.3;
/** A dash that is short by nature is at least so long, mm: with dots between, two of them still show what the line is. */
const shortestDash = 0.6;
/** A gap narrower than this, mm, runs together in print. */
const narrowestGap = 0.5;

const sum = (values: readonly number[]): number => values.reduce((total, each) => total + each, 0);

/**
 * Where a line of `length` mm and `width` mm bears ink. An open line begins and ends with a dash, a chain line with a long dash and, where
 * that stays within the tolerance, has a long dash in its middle, so that centre lines cross on ink. A closed line has a dash in the
 * middle of each quarter's start. A line too short for its pattern gets a shorter one, and a very short one is drawn through.
 */
export function dashSpans(kind: DashKind, length: number, closed: boolean, width: number): readonly Span[] {
  if (kind === 'continuous' || length <= 0) return [{ from: 0, to: length }];
  const period = periods[kind].map((element) => element * width);
  return closed ? closedSpans(period, length) : openSpans(kind, period, length);
}

function openSpans(kind: DashKind, period: readonly number[], length: number): readonly Span[] {
  const lead = period[0] ?? 0;
  const step = sum(period);
  const scaleFor = (count: number): number => length / (count * step + lead);
  const misfit = (count: number): number => Math.abs(Math.log(scaleFor(count)));
  const fits = (count: number): boolean => Math.abs(scaleFor(count) - 1) <= tolerance;
  const nearest = Math.floor((length - lead) / step);
  const counts = [nearest, nearest + 1].filter((count) => count > 0);
  const even = [nearest - (nearest % 2), nearest - (nearest % 2) + 2].filter((count) => count > 0);
  const best = (candidates: readonly number[]): number | undefined =>
    candidates.filter(fits).sort((a, b) => misfit(a) - misfit(b))[0];
  const count = (kind === 'dashed' ? undefined : best(even)) ?? best(counts);
  if (count === undefined) return shortSpans(kind, period, length);
  return repeated(period, count, scaleFor(count), 0, true);
}

/** A line too short for its pattern: two dashes (with dots between, if they are short by nature), or for a chain line three with dots between, and gaps that still show in print. */
function shortSpans(kind: DashKind, period: readonly number[], length: number): readonly Span[] {
  const count = kind === 'dashed' || kind === 'short double-chain' ? 1 : 2;
  const gaps = period.filter((_, index) => index % 2 === 1).length * count;
  const dots = sum(period.slice(1).filter((_, index) => index % 2 === 1)) * count;
  const wanted = period[1] ?? 0;
  const narrow = Math.max(narrowestGap, Math.min(wanted, length * (kind === 'dashed' ? 0.2 : 0.06)));
  const lead = (length - gaps * narrow - dots) / (count + 1);
  const leastLead = kind === 'short double-chain' ? shortestDash : kind === 'dashed' ? 2 * narrow : Math.max(2 * narrow, shortestLongDash * (period[0] ?? 0));
  if (lead < leastLead) return [{ from: 0, to: length }];
  return repeated([lead, ...period.slice(1).map((element, index) => (index % 2 === 0 ? narrow : element))], count, 1, 0, true);
}

function closedSpans(period: readonly number[], length: number): readonly Span[] {
  const step = sum(period);
  const quarters = 4 * Math.max(1, Math.round(length / step / 4));
  const within = (count: number): boolean => Math.abs(length / (count * step) - 1) <= tolerance;
  const any = Math.max(2, Math.round(length / step));
  const count = within(quarters) || length < 2 * step ? quarters : any;
  const scale = length / (count * step);
  const narrow = Math.min(...period.filter((_, index) => index % 2 === 1)) * scale;
  if (narrow < narrowestGap) {
    const few = Math.floor((length / step) * ((period[1] ?? 0) / narrowestGap));
    if (few < 2) return [{ from: 0, to: length }];
    const fewScale = length / (Math.min(few, count) * step);
    return repeated(period, Math.min(few, count), fewScale, -((period[0] ?? 0) * fewScale) / 2, false);
  }
  return repeated(period, count, scale, -((period[0] ?? 0) * scale) / 2, false);
}

function repeated(period: readonly number[], count: number, scale: number, start: number, closingDash: boolean): readonly Span[] {
  const spans: Span[] = [];
  let at = start;
  for (let turn = 0; turn < count; turn += 1) {
    period.forEach((element, index) => {
      const next = at + element * scale;
      if (index % 2 === 0) spans.push({ from: at, to: next });
      at = next;
    });
  }
  if (closingDash) spans.push({ from: at, to: at + (period[0] ?? 0) * scale });
  return spans;
}
