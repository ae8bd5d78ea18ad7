import type { ThemeChoice } from '../storage/view-memory';

const darkQuery = '(prefers-color-scheme: dark)';

/** Sets the theme on the page; `system` follows the system until the answer is called. */
export function applyTheme(choice: ThemeChoice): () => void {
  const system = matchMedia(darkQuery);
  const apply = () => {
    const dark = choice === 'system' ? system.matches : choice === 'dark';
    document.documentElement.dataset.theme = dark ? 'dark' : 'light';
  };
  apply();
  system.addEventListener('change', apply);
  return () => system.removeEventListener('change', apply);
}
