import { describe, expect, test } from 'vitest';
import { checkCanvases } from '../../../src/calc/nodes/check-canvases';
import type { NodesInputs } from '../../../src/calc/nodes/compute-nodes';
import { setFieldsIn } from '../../../src/calc/set-fields-in';
import { plainSurface, plainType } from '../zones/plain-surface';
import { plainNode, plainNodes, zonesOf } from './plain-nodes';

const wall = plainSurface({ columns: 10, bands: [{ type: plainType(100), rows: 8 }] });
const stage = { tables: [wall], zones: zonesOf(wall, 4) };
const checkOf = (inputs: NodesInputs, id: string) =>
  checkCanvases(inputs, inputs.laid).find((check) => check.id === id);
const canvasOf = (width: number, height: number) => ({
  bySurface: [{ surfaceId: 'a', zonesANode: 1, linkId: null, canvas: { width, height } }],
});

describe('checkCanvases', () => {
  test('passes equal canvases', () => {
    expect(checkOf(plainNodes(stage), 'nodes.equal.A')).toMatchObject({ severity: 'pass', measured: 0, limit: 0 });
  });

  test('says which canvas differs, and the fix makes all equal', () => {
    const unequal = { equalCanvases: false };
    const check = checkOf(plainNodes({ ...stage, feed: unequal }), 'nodes.equal.A');
    expect(check).toMatchObject({
      severity: 'watch',
      measured: 1,
      where: [{ kind: 'node', name: 'N3' }],
      values: { wide: { value: 400 }, high: { value: 800 }, oddWide: { value: 200 }, oddHigh: { value: 800 } },
    });
    const { fields } = check!.fix!.command.args as { fields: { path: (string | number)[]; value: unknown }[] };
    const { feed } = setFieldsIn({ feed: unequal }, fields);
    expect(checkOf(plainNodes({ ...stage, feed }), 'nodes.equal.A')?.severity).toBe('pass');
  });

  test('stops at a stated canvas that does not hold the crops, and offers one that does', () => {
    const check = checkOf(plainNodes({ ...stage, feed: canvasOf(300, 900) }), 'nodes.stated-canvas.A');
    expect(check).toMatchObject({ severity: 'stop', measured: 400, limit: 300 });
    expect(check?.sentence).toContain('wide');
    expect(check?.fix?.command.args).toMatchObject({
      fields: [{ path: ['feed', 'bySurface', 0, 'canvas'], value: { width: 400, height: 900 } }],
    });
    const short = checkOf(plainNodes({ ...stage, feed: canvasOf(500, 700) }), 'nodes.stated-canvas.A');
    expect(short).toMatchObject({ severity: 'stop', measured: 800, limit: 700 });
    expect(short?.sentence).toContain('high');
    expect(checkOf(plainNodes({ ...stage, feed: canvasOf(400, 800) }), 'nodes.stated-canvas.A')?.severity).toBe('pass');
    expect(checkOf(plainNodes(stage), 'nodes.stated-canvas.A')).toBeUndefined();
  });

  test('holds the canvas against the sheet of the node, and says so where the sheet says nothing', () => {
    const at = (canvasPixels: number | null) =>
      checkOf(plainNodes({ ...stage, nodeItems: [{ ...plainNode, canvasPixels }] }), 'nodes.canvas.A');
    expect(at(320_000)).toMatchObject({ severity: 'pass', measured: 320_000, limit: 320_000 });
    expect(at(319_999)).toMatchObject({ severity: 'stop', measured: 320_000, limit: 319_999 });
    expect(at(null)).toMatchObject({ severity: 'offer', measured: 320_000, limit: null });
    // 1000 x 800 on one node for all three zones.
    const nodeItems = [{ ...plainNode, canvasPixels: 400_000 }];
    const shared = checkOf(plainNodes({ ...stage, feed: { zonesANode: null }, nodeItems }), 'nodes.canvas.A');
    expect(shared).toMatchObject({ severity: 'stop', measured: 800_000 });
    expect(shared?.sentence).toContain('Fewer zones');
  });

  // Common practice, no source: four processors are given the same canvas by one computer; where it has fewer outputs, the
  // picture is distributed.
  test('says that the picture must be distributed where a node feeds more processors than it has outputs', () => {
    const at = (outputs: number) =>
      checkOf(
        plainNodes({ ...stage, feed: { zonesANode: null }, nodeItems: [{ ...plainNode, outputs }] }),
        'nodes.outputs.A',
      );
    expect(at(3)).toMatchObject({ severity: 'pass', measured: 3, limit: 3 });
    expect(at(2)).toMatchObject({ severity: 'watch', measured: 3, limit: 2, where: [{ kind: 'node', name: 'N1' }] });
    expect(at(2)?.sentence).toContain('distributed');
  });

  test('asks for a node where none is chosen, and lets go of one that is not in the catalogue', () => {
    const none = checkOf(plainNodes({ ...stage, signal: { nodeId: null, bySurface: [] } }), 'nodes.item.A');
    expect(none).toMatchObject({ severity: 'offer', measured: null, limit: null });
    expect(none?.fix).toBeUndefined();
    const gone = checkOf(plainNodes({ ...stage, signal: { nodeId: 'gone', bySurface: [] } }), 'nodes.item.A');
    expect(gone).toMatchObject({ severity: 'watch' });
    expect(gone?.fix?.command.args).toMatchObject({ fields: [{ path: ['signal', 'nodeId'], value: null }] });
    const own = {
      surfaceId: 'a',
      processorId: 'p',
      nodeId: 'gone',
      zoneColumnsMost: null,
      returns: null,
      zonesUp: null,
    };
    const goneHere = checkOf(plainNodes({ ...stage, signal: { nodeId: 'node', bySurface: [own] } }), 'nodes.item.A');
    expect(goneHere?.fix?.command.args).toMatchObject({
      fields: [{ path: ['signal', 'bySurface', 0, 'nodeId'], value: null }],
    });
    // Without its own the surface would have the stage's, which is gone too.
    const goneTwice = checkOf(plainNodes({ ...stage, signal: { nodeId: 'lost', bySurface: [own] } }), 'nodes.item.A');
    expect(goneTwice?.fix?.command.args).toMatchObject({
      fields: [
        { path: ['signal', 'bySurface', 0, 'nodeId'], value: null },
        { path: ['signal', 'nodeId'], value: null },
      ],
    });
  });

  test('says nothing of a surface without nodes', () => {
    expect(checkCanvases(plainNodes({ tables: [wall], zones: [] }), { nodes: [], surfaces: [] })).toEqual([]);
  });
});
