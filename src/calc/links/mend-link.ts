import type { Fix } from '../chapter';
import { setFieldsFix } from '../set-fields-fix';
import { setFieldsIn } from '../set-fields-in';
import { computeLinks, type LinksInputs } from './compute-links';
import type { LinksResults } from './link-result';

type Field = { readonly path: readonly (string | number)[]; readonly value: unknown };

/**
 * The smallest change of the feed after which a surface is sent over a link that carries it, and no other surface loses its own:
 * the least link instead of the one stated, the least container instead of the one named, the least blanking, or both.
 * Null where none of them helps.
 */
export function mendLink(inputs: LinksInputs, results: LinksResults, surfaceId: string): Fix | null {
  const asLeast = leastFields(inputs, surfaceId);
  const container: Field[] = inputs.containerId === null ? [] : [{ path: ['containerId'], value: null }];
  const blanking: Field[] = inputs.timing === 'reduced-2' ? [] : [{ path: ['timing'], value: 'reduced-2' }];
  const ways: readonly (readonly [string, string, readonly Field[]])[] = [
    ['Use the least link that carries it', 'link', asLeast],
    ['Use the least fixed mode that holds it', 'fixed mode', inputs.timing === 'container' ? container : []],
    ['Use the least blanking', 'timing', blanking],
    [
      'Use the least blanking and the least link',
      'timing and link',
      blanking.length === 0 ? [] : [...blanking, ...asLeast],
    ],
  ];
  for (const [label, undoLabel, fields] of ways) {
    if (fields.length > 0 && helps(inputs, results, surfaceId, fields)) {
      return setFieldsFix(
        label,
        undoLabel,
        fields.map(({ path, value }) => ({ path: ['feed', ...path], value })),
      );
    }
  }
  return null;
}

/** The fields that state the surface's link, set to the least. */
function leastFields({ linkId, bySurface }: LinksInputs, surfaceId: string): readonly Field[] {
  const own = bySurface.findIndex((entry) => entry.surfaceId === surfaceId);
  return [
    ...(own >= 0 && bySurface[own]!.linkId !== null ? [{ path: ['bySurface', own, 'linkId'], value: null }] : []),
    ...(linkId !== null && (bySurface[own]?.linkId ?? null) === null ? [{ path: ['linkId'], value: null }] : []),
  ];
}

function helps(inputs: LinksInputs, before: LinksResults, surfaceId: string, fields: readonly Field[]): boolean {
  const after = computeLinks(setFieldsIn(inputs, fields));
  return after.surfaces.every((links, i) => {
    const stood = before.surfaces[i]!.chosen?.fits === true;
    const mustStand = stood || links.surfaceId === surfaceId;
    return !mustStand || (links.chosen?.fits === true && (links.noTiming === null || stood));
  });
}
