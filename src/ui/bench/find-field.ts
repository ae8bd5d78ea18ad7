/** Paths from the most exact to the widest: 'walls[0].path[2].columns', 'walls[0].path[2]', 'walls[0].path', 'walls[0]', 'walls'. */
export function widenPath(path: string): readonly string[] {
  const paths = [path];
  for (let rest = path.replace(/(\.[^.[]+|\[\d+\])$/, ''); rest !== paths.at(-1); ) {
    paths.push(rest);
    rest = rest.replace(/(\.[^.[]+|\[\d+\])$/, '');
  }
  return paths;
}

/** The field of a page that sets a path, or what comes nearest to it. */
export function findField(page: ParentNode, path: string): HTMLElement | null {
  for (const wide of widenPath(path)) {
    const found = page.querySelector<HTMLElement>(`[data-field="${CSS.escape(wide)}"]`);
    if (found) return found;
  }
  return null;
}
