import type { Check } from '../chapter';
import { setFieldsFix } from '../set-fields-fix';
import type { LinksInputs } from './compute-links';
import { linkById } from './link-by-id';

/** Links stated for the stage or a surface that the table does not have. */
export function checkKnown({ linkId, bySurface }: Pick<LinksInputs, 'linkId' | 'bySurface'>): Check[] {
  const stated = [
    { path: ['feed', 'linkId'], name: 'feed.linkId', id: linkId },
    ...bySurface.map((own, i) => ({
      path: ['feed', 'bySurface', i, 'linkId'],
      name: `feed.bySurface[${i}].linkId`,
      id: own.linkId,
    })),
  ];
  const unknown = stated.filter(({ id }) => id !== null && linkById(id) === undefined);
  if (unknown.length === 0) return [];
  return [
    {
      id: 'links.known',
      chapter: 'links',
      severity: 'watch',
      measured: unknown.length,
      limit: 0,
      unit: 'count',
      where: unknown.slice(0, 50).map(({ name }) => ({ kind: 'field', name })),
      sentence: 'Links chosen that are not in the table: {measured}, so nothing is said of what they carry.',
      fix: setFieldsFix(
        'Choose none',
        'link',
        unknown.map(({ path }) => ({ path, value: null })),
      ),
    },
  ];
}
