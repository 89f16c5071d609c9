import { isAlias, isScalar, visit, type Document, type LineCounter, type YAMLError } from 'yaml';

/** A problem and where it is, counted in characters from the start of the file. */
interface Place {
  readonly at: number;
  readonly says: string;
}

/** What the parser's complaint means to someone who writes a shop file. */
function complaint({ code, message, pos }: YAMLError, text: string): Place {
  const [at, end] = pos;
  if (code === 'DUPLICATE_KEY') return { at, says: `"${/^[^:\s]*/.exec(text.slice(at, Math.max(end, at + 40)))?.[0] ?? ''}" stands here a second time: a key may stand once.` };
  if (code === 'MULTIPLE_DOCS') return { at, says: 'a second document begins here: a shop file is one, so leave out the line of dashes.' };
  if (message.startsWith('Comments must be separated')) return { at, says: 'a # begins a comment: put a name that begins with # in quotes, as in "#53".' };
  if (message.startsWith('Maximum call stack')) return { at, says: 'the file is nested too deeply.' };
  return { at, says: `${(message.split('\n')[0] ?? '').replace(/\.$/, '')}.` };
}

/** Keys that are no words, and references to nothing: what the parser lets pass and no shop file can mean. */
function oddities(document: Document): readonly Place[] {
  const found: Place[] = [];
  visit(document, {
    Alias: (_, node) => {
      if (node.resolve(document) === undefined) found.push({ at: node.range?.[0] ?? 0, says: `*${node.source} refers to nothing: no &${node.source} stands before it.` });
    },
    Pair: (_, { key }) => {
      const range = isScalar(key) || isAlias(key) ? key.range : (key as { readonly range?: readonly number[] } | null)?.range;
      if (!isScalar(key) || typeof key.value === 'object') found.push({ at: range?.[0] ?? 0, says: 'a key must be a word.' });
      else if (key.value === '__proto__') found.push({ at: range?.[0] ?? 0, says: '"__proto__" is not a key of a shop.' });
    },
  });
  return found;
}

/** What keeps a file from being read at all, each a sentence with its line and column. */
export function structureProblems(document: Document, lines: LineCounter, text: string): readonly string[] {
  const faults = [...document.errors, ...document.warnings].map((fault) => complaint(fault, text));
  return (faults.length > 0 ? faults : oddities(document)).map(({ at, says }) => {
    const { line, col } = lines.linePos(at);
    return `line ${line}, column ${col}: ${says}`;
  });
}

/** The file as plain values; undefined where its references multiply beyond use. */
export function plainValue(document: Document): { readonly value: unknown } | undefined {
  try {
    return { value: document.toJS() as unknown };
  } catch (fault) {
    if (fault instanceof ReferenceError) return undefined;
    throw fault;
  }
}
