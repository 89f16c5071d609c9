import { parseFraction } from './number.js';
import { UserError } from './user-error.js';

/**
 * An angle in degrees: "15", "15 deg", "5.75°", "5° 45'", `5°45'30"`, "1 1/2 deg". A lone number is degrees.
 * @throws UserError where the text is no angle, or minutes or seconds reach 60.
 */
export function parseAngle(text: string, options: { readonly what?: string } = {}): number {
  const what = options.what ?? 'angle';
  const match = /^\s*([+-]?)\s*([^°'′"″a-z]+?)\s*(?:(?:°|deg(?:rees?)?\.?|d)\s*(?:(\d+(?:\.\d+)?)\s*(?:'|′|min)\s*)?(?:(\d+(?:\.\d+)?)\s*(?:"|″|''|sec)\s*)?)?\s*$/iu.exec(text);
  if (match?.[2] === undefined) {
    throw new UserError(`${what} "${text.trim()}" is not an angle: write degrees, such as 15, 5.75 deg or 5° 45'.`);
  }
  const [, sign, degrees, minutes = '0', seconds = '0'] = match;
  if (Number(minutes) >= 60 || Number(seconds) >= 60) {
    throw new UserError(`${what} "${text.trim()}" has 60 or more minutes or seconds.`);
  }
  const size = parseFraction(degrees, what).add(parseFraction(minutes).div(60)).add(parseFraction(seconds).div(3600)).valueOf();
  return sign === '-' ? 0 - size : size;
}
