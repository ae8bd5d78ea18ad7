/** A path as people read it: walls[0].path[2].columns. */
export function pathText(path: readonly (string | number)[]): string {
  return path.reduce<string>(
    (text, key) => (typeof key === 'number' ? `${text}[${key}]` : text === '' ? key : `${text}.${key}`),
    '',
  );
}
