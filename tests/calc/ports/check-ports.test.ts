import { expect, test } from 'vitest';
import { checkPorts } from '../../../src/calc/ports/check-ports';
import { computePorts, type PortsInputs } from '../../../src/calc/ports/compute-ports';
import { mode, plainPanel, plainProcessor, plainSignal } from './plain-items';
import { plainPorts } from './plain-ports';

const checks = (given: PortsInputs) => checkPorts(given, computePorts(given));
const named = (given: PortsInputs, id: string) => checks(given).find((check) => check.id === id);

test('checkPorts passes what fits and says how many panels a port carries', () => {
  const found = named(plainPorts(), 'ports.one-panel.A');
  expect(found).toMatchObject({ severity: 'pass', measured: 46_656, limit: 585_000, unit: 'px' });
  expect(found?.values?.panels).toEqual({ value: 12, unit: 'count' });
  expect(checks(plainPorts()).map(({ severity }) => severity)).not.toContain('stop');
});

test('checkPorts stops where not one panel fits a port', () => {
  const found = named(plainPorts({ base: mode(1000) }), 'ports.one-panel.A');
  expect(found).toMatchObject({ severity: 'stop', measured: 46_656 });
  expect(found!.limit!).toBeLessThan(46_656);
  expect(found?.sentence).toContain('not even one');
  // 100 fps leaves room for several panels, 300 fps for two, 600 for one.
  for (const fps of [100, 300, 600]) {
    expect(named(plainPorts({ base: mode(fps) }), 'ports.one-panel.A')?.sentence).toContain(
      fps === 600 ? 'one panel' : '{panels} panels',
    );
  }
});

test('checkPorts reads a sheet without pixels a port as not stated', () => {
  const found = named(plainPorts({ processors: [plainProcessor({ sheetPixels: null })] }), 'ports.sheet.A');
  expect(found).toMatchObject({ severity: 'offer', limit: null, measured: 677_286 });
  expect(named(plainPorts(), 'ports.sheet.A')).toBeUndefined();
});

test('checkPorts reads a chain limit that nobody stated as not stated', () => {
  expect(named(plainPorts(), 'ports.chain.A')).toMatchObject({ severity: 'offer', limit: null, measured: 12 });
  expect(named(plainPorts({ panels: [plainPanel(216, { chainPanels: 20 })] }), 'ports.chain.A')).toBeUndefined();
  expect(named(plainPorts({ signal: plainSignal({ panelsMost: 20 }) }), 'ports.chain.A')).toBeUndefined();
});

test('checkPorts names a choice for a surface that is not there and drops it', () => {
  const own = {
    surfaceId: 'a',
    processorId: 'proc',
    nodeId: null,
    zoneColumnsMost: null,
    returns: null,
    zonesUp: null,
  };
  const given = plainPorts({ signal: plainSignal({ bySurface: [{ ...own, surfaceId: 'gone' }, own] }) });
  const found = named(given, 'ports.surface-names');
  expect(found).toMatchObject({ severity: 'watch', measured: 1 });
  expect(found?.where).toEqual([{ kind: 'field', name: 'signal.bySurface[0].surfaceId' }]);
  expect(found?.fix?.command.args).toMatchObject({ fields: [{ path: ['signal', 'bySurface'], value: [own] }] });
});

test('checkPorts asks for a processor before anything else', () => {
  const given = plainPorts({ signal: plainSignal({ processorId: null }) });
  expect(checks(given).map(({ id }) => id)).toEqual(['ports.processor.A']);
});
