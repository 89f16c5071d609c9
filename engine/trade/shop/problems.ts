import { isMap, isScalar, isSeq, type Document, type LineCounter, type Node } from 'yaml';
import type * as z from 'zod';
import { nearestClause } from '../../units/nearest-name.js';

type Path = readonly PropertyKey[];

/** "machines 1, dials, cross, per-turn": the place in words, lists counted from one. */
function place(path: Path): string {
  return path.map((step) => (typeof step === 'number' ? ` ${step + 1}` : `, ${String(step)}`)).join('').replace(/^, /, '') || 'the file';
}

function nodeAt(document: Document, path: Path): Node | undefined {
  for (let length = path.length; length >= 0; length -= 1) {
    const node = length === 0 ? document.contents : document.getIn(path.slice(0, length), true);
    if (typeof node === 'object' && node !== null && 'range' in node) return node as Node;
  }
  return undefined;
}

/** The node of a key itself, for a key that should not be there. */
function keyNode(document: Document, path: Path, key: string): Node | undefined {
  const map = path.length === 0 ? document.contents : document.getIn(path, true);
  if (!isMap(map)) return undefined;
  const found = map.items.find((item) => isScalar(item.key) && String(item.key.value) === key)?.key;
  return isScalar(found) ? found : undefined;
}

function shown(document: Document, path: Path): string {
  const value: unknown = document.getIn(path);
  return isSeq(value) ? 'a list' : typeof value === 'object' && value !== null ? 'a group of keys' : value === null ? 'nothing (names that begin with # need quotes)' : `"${String(value)}"`;
}

const wanted: Readonly<Record<string, string>> = { string: 'a text', number: 'a number', int: 'a whole number', boolean: 'true or false', array: 'a list', object: 'a group of keys', record: 'a group of keys' };

function sentence(document: Document, issue: z.core.$ZodIssue): string {
  const where = place(issue.path);
  const found = shown(document, issue.path);
  switch (issue.code) {
    case 'custom':
      return `${where}: ${issue.message}`;
    case 'invalid_value': {
      const allowed = issue.values.map(String);
      return `${where} is ${found}: allowed are ${allowed.join(', ')}${nearestClause(String(document.getIn(issue.path)), allowed)}.`;
    }
    case 'invalid_type':
      return document.hasIn(issue.path) ? `${where} is ${found}: it must be ${wanted[issue.expected] ?? issue.expected}.` : `${where} is missing: it must be ${wanted[issue.expected] ?? issue.expected}.`;
    case 'too_small':
      return issue.origin === 'number' || issue.origin === 'int' ? `${where} is ${found}: it must be more than ${String(issue.minimum)}.` : `${where} is empty.`;
    case 'invalid_union':
      return document.hasIn(issue.path) ? `${where} is ${found}: it must be a text or a number.` : `${where} is missing.`;
    case 'invalid_key':
      return `${where} is no slide: allowed are x, y, z on a mill and cross, top, saddle on a lathe.`;
    case 'too_big':
    case 'invalid_format':
    case 'not_multiple_of':
    case 'invalid_element':
    case 'unrecognized_keys':
      return `${where} is ${found}: ${issue.message}.`;
  }
}

/** Where a value may have one of several forms and is plainly meant to be one of them, the problems inside that form. */
function unfold(issue: z.core.$ZodIssue): readonly z.core.$ZodIssue[] {
  if (issue.code !== 'invalid_union') return [issue];
  const meant = issue.errors.find((inside) => inside.length > 0 && inside.every(({ path, code }) => path.length > 0 || code === 'unrecognized_keys' || code === 'too_small' || code === 'custom'));
  return meant === undefined ? [issue] : meant.flatMap((inside) => unfold({ ...inside, path: [...issue.path, ...inside.path] }));
}

/** One sentence for each problem that the schema found, with the line and column in front, from the top down. */
export function problemSentences(document: Document, lines: LineCounter, issues: readonly z.core.$ZodIssue[], allowedKeys: (path: Path) => readonly string[]): readonly string[] {
  const at = (node: Node | undefined): number => node?.range?.[0] ?? 0;
  const found = issues.flatMap(unfold).flatMap((issue): readonly (readonly [at: number, says: string])[] => {
    if (issue.code !== 'unrecognized_keys') return [[at(nodeAt(document, issue.path)), sentence(document, issue)]];
    const allowed = allowedKeys(issue.path);
    const inside = issue.path.length === 0 ? 'a shop' : place(issue.path);
    return issue.keys.map((key) => [at(keyNode(document, issue.path, key)), `${inside} has no "${key}": allowed are ${allowed.join(', ')}${nearestClause(key, allowed)}.`]);
  });
  return [...found]
    .sort(([a], [b]) => a - b)
    .map(([place, says]) => {
      const { line, col } = lines.linePos(place);
      return `line ${line}, column ${col}: ${says}`;
    });
}
