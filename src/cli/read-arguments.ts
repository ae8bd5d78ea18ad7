import type { Command, Given } from './command';

/** How a command says that it writes into a folder. */
const folderOption = '--out DIR';

/** The words after a command's name, sorted into its files and its options, or why they do not fit it. */
export function readArguments(command: Command, words: readonly string[]): Given | { readonly refused: string } {
  const options = new Set<string>();
  const files: string[] = [];
  const wantsFolder = Object.hasOwn(command.options, folderOption);
  let out: string | undefined;
  for (const [place, word] of words.entries()) {
    if (wantsFolder && words[place - 1] === '--out') out = word;
    else if (wantsFolder && word === '--out') continue;
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
  if (wantsFolder && out === undefined) return { refused: `${command.name} wants a folder after --out` };
  return {
    file,
    options,
    ...(secondFile === undefined ? {} : { secondFile }),
    ...(out === undefined ? {} : { out }),
  };
}
