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
  if (files.length < command.files) {
    return { refused: `${command.name} wants ${command.files === 2 ? 'two files' : 'a file'}` };
  }
  if (files.length > command.files) {
    const wanted = ['no file', 'one file only', 'two files only'][command.files];
    return { refused: `${command.name} wants ${wanted}: ${files.at(-1)}` };
  }
  for (const [option, choices] of followed) {
    const value = values.get(option);
    if (value !== undefined && (choices === null || choices.includes(value))) continue;
    return { refused: `${command.name} wants ${choices?.join(' or ') ?? 'a folder'} after ${option}` };
  }
  const out = values.get('--out');
  const format = values.get('--format') as Given['format'];
  return {
    file,
    options,
    ...(secondFile === undefined ? {} : { secondFile }),
    ...(out === undefined ? {} : { out }),
    ...(format === undefined ? {} : { format }),
  };
}

/** Options that a value must follow, with the words that it may be; null where it is a folder. */
function followedOptions({ options }: Command): ReadonlyMap<string, readonly string[] | null> {
  return new Map(
    Object.keys(options).flatMap((key) => {
      const [option, value] = key.split(' ');
      return value === undefined ? [] : [[option!, value === 'DIR' ? null : value.split('|')] as const];
    }),
  );
}
