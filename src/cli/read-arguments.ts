import type { Command, Given } from './command';

type Refusal = { readonly refused: string };

/** The words after a command's name, sorted into its files and its options, or why they do not fit it. */
export function readArguments(command: Command, words: readonly string[]): Given | Refusal {
  const options = new Set<string>();
  const files: string[] = [];
  const followed = followedOptions(command);
  const values = new Map<string, string>();
  for (const [place, word] of words.entries()) {
    const before = words[place - 1];
    if (before !== undefined && followed.has(before)) values.set(before, word);
    else if (followed.has(word)) continue;
    else if (!word.startsWith('--')) files.push(word);
    else if (Object.hasOwn(command.options, word)) options.add(word);
    else return { refused: `${command.name} knows no option ${word}` };
  }
  const [file = '', secondFile] = files;
  if (files.length < (command.filesLeast ?? command.files)) {
    return { refused: `${command.name} wants ${(command.filesLeast ?? command.files) === 2 ? 'two files' : 'a file'}` };
  }
  if (files.length > command.files) {
    const wanted = ['no file', 'one file only', 'two files only'][command.files];
    return { refused: `${command.name} wants ${wanted}: ${files.at(-1)}` };
  }
  for (const [option, wanted] of followed) {
    const value = values.get(option);
    if (value === undefined ? wanted.mayLack && !words.includes(option) : wanted.takes(value)) continue;
    return { refused: `${command.name} wants ${wanted.words} after ${option}` };
  }
  const out = values.get('--out');
  const format = values.get('--format') as Given['format'];
  const paper = values.get('--paper') as Given['paper'];
  const [parts, date, address, from, to] = ['--parts', '--date', '--address', '--from', '--to'].map((option) =>
    values.get(option),
  );
  return {
    file,
    options,
    ...(secondFile === undefined ? {} : { secondFile }),
    ...(out === undefined ? {} : { out }),
    ...(format === undefined ? {} : { format }),
    ...(paper === undefined ? {} : { paper }),
    ...(parts === undefined ? {} : { parts }),
    ...(date === undefined ? {} : { date }),
    ...(address === undefined ? {} : { address }),
    ...(from === undefined ? {} : { from }),
    ...(to === undefined ? {} : { to }),
  };
}

/** What must stand after an option. */
interface Wanted {
  readonly words: string;
  readonly takes: (value: string) => boolean;
  /** True where the option itself may be left out. */
  readonly mayLack: boolean;
}

/** Options that a value follows, by their name alone. */
function followedOptions({ options }: Command): ReadonlyMap<string, Wanted> {
  return new Map(
    Object.keys(options).flatMap((key) => {
      const [option, value] = key.replace(/^\[|\]$/g, '').split(' ');
      return value === undefined ? [] : [[option!, { ...wantedAs(value), mayLack: key.startsWith('[') }] as const];
    }),
  );
}

function wantedAs(value: string): Pick<Wanted, 'words' | 'takes'> {
  if (value === 'DIR') return { words: 'a folder', takes: () => true };
  if (value === 'URL')
    return { words: 'an address with https:// or http://', takes: (text) => /^https?:\/\/./.test(text) };
  if (!value.includes('|')) return { words: value, takes: () => true };
  const choices = value.split('|');
  return { words: choices.join(' or '), takes: (text) => choices.includes(text) };
}
