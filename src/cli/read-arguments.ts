import type { Command, Given } from './command';

/** The words after a command's name, sorted into its file and its options, or why they do not fit it. */
export function readArguments(command: Command, words: readonly string[]): Given | { readonly refused: string } {
  const options = new Set<string>();
  const files: string[] = [];
  for (const word of words) {
    if (!word.startsWith('--')) files.push(word);
    else if (Object.hasOwn(command.options, word)) options.add(word);
    else return { refused: `${command.name} knows no option ${word}` };
  }
  if (files.length < command.files) return { refused: `${command.name} wants a file` };
  if (files.length > command.files) {
    return { refused: `${command.name} wants ${command.files === 0 ? 'no file' : 'one file only'}: ${files.at(-1)}` };
  }
  return { file: files[0] ?? '', options };
}
