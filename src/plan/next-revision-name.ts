import type { Plan } from './plan';

/**
 * The name that the next revision would have: the plan's own as long as nothing was issued under it, else the next letter or
 * number after it ('B' after 'A', 'AA' after 'Z', 'Rev 3' after 'Rev 2') that was not issued yet.
 */
export function nextRevisionName({ revision, revisions }: Pick<Plan, 'revision' | 'revisions'>): string {
  const issued = new Set(revisions.map(({ name }) => name.trim().toLowerCase()));
  let name = revision.trim() === '' ? 'A' : revision.trim();
  while (issued.has(name.toLowerCase())) name = nextAfter(name);
  return name;
}

function nextAfter(name: string): string {
  const [, before = '', number] = /^(.*?)(\d+)$/.exec(name) ?? [];
  if (number !== undefined) return `${before}${`${Number(number) + 1}`.padStart(number.length, '0')}`;
  const [, stem = '', letters] = /^(.*[^A-Za-z]|)([A-Za-z]{1,3})$/.exec(name) ?? [];
  return letters === undefined ? `${name} 2` : `${stem}${nextLetters(letters)}`;
}

/** 'B' after 'A', 'BA' after 'AZ', 'AA' after 'Z'. */
function nextLetters(letters: string): string {
  const head = letters.slice(0, -1);
  const last = letters.at(-1)!;
  if (!/z/i.test(last)) return `${head}${String.fromCharCode(last.charCodeAt(0) + 1)}`;
  const first = last === 'z' ? 'a' : 'A';
  return `${head === '' ? first : nextLetters(head)}${first}`;
}
