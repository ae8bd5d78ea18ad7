import DxfParser, { type IEntity, type IPoint } from 'dxf-parser';

interface Hatch extends IEntity {
  readonly points: readonly IPoint[];
}

export interface ReadText extends IEntity {
  readonly text: string;
  readonly textHeight: number;
  readonly rotation?: number;
  readonly startPoint: IPoint;
}

export interface ReadPolyline extends IEntity {
  readonly vertices: readonly IPoint[];
  readonly shape: boolean;
}

/** What an outside reader finds in a DXF file; it knows no hatches, so their outlines are taken by group codes here. */
export function readDxf(source: string) {
  const parser = new DxfParser();
  // The reader's types list only the entities that it knows itself.
  parser.registerEntityHandler(HatchHandler as never);
  const dxf = parser.parseSync(source);
  if (dxf === null) throw new Error('nothing read');
  const of = <T extends IEntity>(type: string) => dxf.entities.filter((entity) => entity.type === type) as T[];
  return {
    header: dxf.header as Readonly<Record<string, unknown>>,
    layers: Object.keys(dxf.tables.layer.layers),
    lineTypes: dxf.tables.lineType.lineTypes,
    entities: dxf.entities,
    polylines: of<ReadPolyline>('LWPOLYLINE'),
    lines: of<ReadPolyline>('LINE'),
    texts: of<ReadText>('TEXT'),
    hatches: of<Hatch>('HATCH'),
  };
}

/** How many entities each layer has. */
export function countByLayer(entities: readonly { readonly layer: string }[]): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const { layer } of entities) counts[layer] = (counts[layer] ?? 0) + 1;
  return counts;
}

interface Group {
  readonly code: number;
  readonly value: unknown;
}

/** Group codes of HATCH: 8 layer, 420 colour, 93 corners of the outline, then 10 and 20 for each of them. */
class HatchHandler {
  ForEntityName = 'HATCH' as const;

  parseEntity(scanner: { next(): Group; isEOF(): boolean }, first: Group): IEntity {
    const points: { x: number; y: number }[] = [];
    const entity = { type: first.value as string, points, layer: '' };
    let corners = 0;
    for (let group = scanner.next(); group.code !== 0 && !scanner.isEOF(); group = scanner.next()) {
      if (group.code === 8) entity.layer = group.value as string;
      if (group.code === 93) corners = group.value as number;
      if (group.code === 10 && corners > 0) points.push({ x: group.value as number, y: Number.NaN });
      if (group.code === 20 && corners > 0) points.at(-1)!.y = group.value as number;
    }
    if (points.length !== corners) throw new Error(`${corners} corners stated, ${points.length} found`);
    return entity as unknown as IEntity;
  }
}
