/** 'A Horseshoe'; the letter alone where a surface has no name. */
export function surfaceName({ letter, name }: { readonly letter: string; readonly name: string }): string {
  return `${letter} ${name}`.trim();
}
