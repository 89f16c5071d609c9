import { feedRange } from '../trade/cutting.js';
import type { Machine } from '../trade/shop/shop.js';
import { formatLength } from '../units/format.js';
import type { LengthUnit } from '../units/length.js';
import { roundTo } from '../units/rounding.js';
import type { WorkKind } from './work.js';

/** A drill thinner than this is fed by feel alone, mm. */
const thin = 3;

interface FeedCase {
  readonly kind: WorkKind;
  /** Of the cutter, or of the work on a lathe, mm. */
  readonly diameter: number;
  readonly unit: LengthUnit;
  /** Turns a minute; undefined where no speed is known. */
  readonly speed: number | undefined;
  readonly teeth: number;
  readonly machine: Machine | undefined;
}

/** How fast to feed, in the words of the shop: a range for each turn, or how it should feel. */
export function feedWords(feed: FeedCase): string {
  switch (feed.kind) {
    case 'drilling':
      return feed.diameter < thin ? 'by feel; clear the chips each \u2300' : `${perTurn('drilling', feed)}; clear the chips`;
    case 'centring':
      return 'by feel, with oil';
    case 'reaming':
      return `${perTurn('reaming', feed)}, oil; out still turning`;
    case 'countersinking':
      return 'by hand, steadily';
    case 'counterboring':
      return 'by hand, steadily, with oil';
    case 'tapping':
      return 'oil; half a turn, then back';
    case 'threading':
      return 'oil; a turn, then half back';
    case 'screw-cutting':
      return 'a light cut each pass, with oil; stop in the groove';
    case 'sawing':
      return 'by hand, slowly, with oil';
    case 'turning':
      return `rough ${perTurn('roughing', feed)}, finish ${perTurn('finishing', feed)}`;
    case 'chamfering':
      return 'by hand, steadily';
    case 'facing':
    case 'boring':
    case 'parting':
      return perTurn(feed.kind, feed);
    case 'milling':
      return millingFeed(feed);
  }
}

function perTurn(operation: string, { diameter, unit }: FeedCase): string {
  const [low, high] = feedRange(operation, diameter).map((mm) => formatLength(mm, unit, unit === 'in' ? 3 : 2));
  return `${low ?? ''} to ${high ?? ''} a turn`;
}

/** The low end of the range of a tooth (the machines are small), for a minute; and how long a turn of the handwheel takes. */
function millingFeed({ diameter, unit, speed, teeth, machine }: FeedCase): string {
  if (speed === undefined) return '';
  const [low] = feedRange('milling', diameter);
  const minute = low * teeth * speed;
  const shown = unit === 'in' ? minute / 25.4 : minute;
  const text = roundTo(shown, shown < 10 ? 1 : 0);
  const dial = machine?.dials.x;
  const lead = dial === undefined ? undefined : dial.reads === 'diameter' ? dial.perTurn / 2 : dial.perTurn;
  const seconds = lead === undefined ? 0 : roundTo((60 * lead) / minute, 0);
  return `about ${text} ${unit} a minute${seconds < 1 ? '' : `: a turn in ${seconds} s`}`;
}
