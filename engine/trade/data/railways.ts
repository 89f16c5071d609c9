/**
 * Gauges of working miniature railways: name, gauge (in), scale in inches to the foot, printed ratio. Live-steam rows as
 * printed by a North American standards page (read), British rows by custom (memory). They disagree at 5 inches: 1 in to
 * the foot there, 1-1/16 in in Britain; both are listed and neither is taken without asking.
 */
export const railwayGauges: readonly (readonly [name: string, gauge: number, scale: string, ratio: number, source: string])[] = [
  ['0', 1.26, '7 mm', 43.5, 'British custom, 32 mm (memory)'],
  ['1', 1.772, '3/8 in', 32, 'live-steam track standard (read)'],
  ['1 (10 mm scale)', 1.772, '10 mm', 30.5, 'British custom (memory)'],
  ['2-1/2 in', 2.5, '17/32 in', 22.6, 'British custom; the live-steam wheel standard prints 1/2 (17/32) (read)'],
  ['3-1/2 in', 3.5, '3/4 in', 16, 'live-steam track standard (read); British custom agrees'],
  ['4-3/4 in', 4.75, '1 in', 12, 'live-steam track standard (read)'],
  ['5 in (North America)', 5, '1 in', 12, 'live-steam track standard (read); prints also 1:11'],
  ['5 in', 5, '1-1/16 in', 11.3, 'British custom (memory)'],
  ['7-1/4 in', 7.25, '1-1/2 in', 8, 'live-steam track standard and British custom (memory)'],
  ['7-1/2 in', 7.5, '1-1/2 in', 8, 'live-steam track standard (read)'],
  ['7-1/2 in fine', 7.5, '1.6 in', 7.5, 'live-steam track standard (read)'],
  ['10-1/4 in', 10.25, '2-1/8 in', 5.6, 'British custom (memory)'],
  ['15 in', 15, '3-3/16 in', 3.8, 'British custom (memory)'],
];

/**
 * Wheels, inches: gauge, least width of the tyre, greatest width and depth of the flange, back to back, its tolerance,
 * wheel gauge, wheel check. As printed on one live-steam standards page; only rows read there are kept.
 */
export const wheelStandards: readonly (readonly [gauge: number, tyre: number, flange: number, depth: number, backToBack: number, wheelGauge: number, check: number, note: string])[] = [
  [2.5, 0.281, 0.063, 0.075, 2.281, 2.469, 2.405, 'the page is inconsistent: back to back and flange make 2.344, and its tolerance is printed +.200'],
  [4.75, 0.505, 0.125, 0.14, 4.437, 4.69, 4.562, ''],
  [5, 0.505, 0.125, 0.14, 4.687, 4.94, 4.812, ''],
  [7.25, 0.75, 0.156, 0.187, 6.87, 7.19, 7.031, ''],
];
