import type { Block, CrewPart, CrewPartId } from './crew-part';

/** A part of one sheet without a drawing, of which nothing has sides. `caution`: the one that concerns it. */
export function blocksPart(id: CrewPartId, title: string, caution: string | null, blocks: readonly Block[]): CrewPart {
  return { id, title, sheets: [{ kind: 'blocks', title, side: null, caution, blocks }] };
}
