import fc from 'fast-check';
import type { Command } from '../../src/plan/commands';
import type { Path } from '../../src/plan/commands/path';
import { anchor, frameRate, idOf, mode, nullable, surfaceId, whole } from './plan-fields';

const setting = (path: Path, value: fc.Arbitrary<unknown>): fc.Arbitrary<Command> =>
  value.map((to) => ({ name: 'set-fields', args: { fields: [{ path, value: to }] } }));

/** What a person does to a plan of tests/arbitraries, chapter by chapter; what does not apply to it is refused. */
export const edit: fc.Arbitrary<Command> = fc.oneof(
  setting(['walls', 0, 'path', 0, 'jointDeg'], fc.constantFrom(0, 2.5, 5, -5)),
  setting(['walls', 0, 'path', 0, 'columns'], whole(1, 6)),
  setting(['walls', 0, 'bands', 0, 'rows'], whole(1, 5)),
  setting(['walls', 0, 'baseMm'], whole(0, 3000)),
  setting(['walls', 0, 'support'], fc.constantFrom('stands', 'hangs')),
  setting(['ceilings', 0, 'height', 'trimMm'], whole(2000, 9000)),
  setting(['ceilings', 0, 'rule'], fc.constantFrom('whole', 'centre', 'any')),
  setting(['catalogue', 'panels', 0, 'purchase', 'price'], whole(0, 5000)),
  setting(['catalogue', 'panels', 0, 'power', 'fullWhiteW'], whole(80, 350)),
  setting(['catalogue', 'panels', 0, 'massKg'], whole(5, 15)),
  setting(['catalogue', 'panels', 0, 'pixels', 'wide'], fc.constantFrom(96, 128)),
  setting(['catalogue', 'processors', 0, 'port', 'counting'], fc.constantFrom('panels', 'rectangle')),
  setting(['picture', 'base', 'rate'], frameRate),
  setting(['picture', 'base', 'depthBits'], fc.constantFrom(8, 10, 12)),
  setting(['signal', 'freeShare'], fc.constantFrom(0, 0.1, 0.4)),
  setting(['signal', 'reachMm'], whole(0, 3000)),
  setting(['signal', 'panelsMost'], nullable(whole(1, 12))),
  setting(['signal', 'processorId'], nullable(idOf('processor'))),
  setting(['power', 'connection'], fc.constantFrom('leg-to-neutral', 'leg-to-leg')),
  setting(['power', 'distroId'], nullable(idOf('distro', 3))),
  setting(['heat', 'people'], whole(0, 60)),
  setting(['masses', 'columnsAFrame'], whole(1, 4)),
  setting(['materials', 'spareLeast'], whole(0, 4)),
  setting(['wish', 'hall', 'clearHeightMm'], nullable(whole(3000, 12_000))),
  mode.map((to): Command => ({ name: 'set-mode', args: { surfaceIds: null, mode: to } })),
  surfaceId.map((wallId): Command => ({ name: 'mirror-wall', args: { wallId } })),
  surfaceId.map((id): Command => ({ name: 'remove-surface', args: { surfaceId: id } })),
  idOf('panel').map((itemId): Command => ({ name: 'remove-item', args: { itemId } })),
  fc
    .tuple(idOf('panel'), whole(0, 40))
    .map(([itemId, owned]): Command => ({ name: 'set-stock', args: { itemId, owned } })),
  anchor.map((at): Command => ({ name: 'put-way', args: { id: 'way-new', at, way: { kind: 'rows' } } })),
  idOf('change', 5).map((id): Command => ({ name: 'clear-hand-change', args: { ids: [id] } })),
);
