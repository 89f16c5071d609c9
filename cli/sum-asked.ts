/**
 * The sum that a command line of `reckon` names, if it names one: the first word after the command that is no option and no
 * option's value.
 * @param words the command line.
 */
export function sumAsked(words: readonly string[]): string | undefined {
  const plain = words.filter((word, index) => !word.startsWith('-') && !takesNext(words[index - 1]));
  return plain[plain.indexOf('reckon') + 1];
}

/** Options without a value. */
const FLAGS = ['--json', '--help', '--version'];

const takesNext = (word: string | undefined): boolean => word?.startsWith('--') === true && word !== '--' && !word.includes('=') && !FLAGS.includes(word);
