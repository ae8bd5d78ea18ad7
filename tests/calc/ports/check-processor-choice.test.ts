import { expect, test } from 'vitest';
import { checkProcessorChoice } from '../../../src/calc/ports/check-processor-choice';
import type { PortsInputs } from '../../../src/calc/ports/compute-ports';
import { plainSurface, plainType, setOf } from '../zones/plain-surface';
import { plainPanel, plainProcessor, plainSignal } from './plain-items';
import { plainPorts } from './plain-ports';

const check = (given: PortsInputs) => checkProcessorChoice(given, given.surfaces.surfaces[0]!);
const own = { surfaceId: 'a', processorId: 'gone', nodeId: null, zoneColumnsMost: null, returns: null, zonesUp: null };

test('checkProcessorChoice takes the first processor that the panels name and whose port carries one', () => {
  const weak = plainProcessor({ sheetPixels: 1000 }, { id: 'weak', name: 'Weak' });
  const outlets = { kind: 'breakouts' as const, breakoutId: 'gone', most: 2 };
  const portless = plainProcessor({}, { id: 'portless', name: 'Portless', outlets });
  const stranger = plainProcessor({}, { id: 'stranger', name: 'Stranger' });
  const suits = plainProcessor({}, { id: 'suits', name: 'Suits' });
  const drivenBy = ['weak', 'portless', 'suits'].map((processorId) => ({ processorId, portPixels: null }));
  const given = plainPorts({
    signal: plainSignal({ processorId: null }),
    processors: [stranger, weak, portless, suits],
    panels: [plainPanel(216, { drivenBy })],
  });
  const found = check(given);
  expect(found).toMatchObject({ severity: 'stop', fix: { label: 'Take Suits' } });
  expect(found.fix?.command.args).toMatchObject({ fields: [{ path: ['signal', 'processorId'], value: 'suits' }] });
  expect(found.sentence).toContain('No processor is chosen');
});

test('checkProcessorChoice mends the surface that names a processor of its own', () => {
  const found = check(plainPorts({ signal: plainSignal({ processorId: null, bySurface: [own] }) }));
  expect(found.where).toContainEqual({ kind: 'field', name: 'signal.bySurface[0].processorId' });
  expect(found.fix?.command.args).toMatchObject({
    fields: [{ path: ['signal', 'bySurface', 0, 'processorId'], value: 'proc' }],
  });
  expect(found.sentence).toContain('not in the catalogue');
});

test('checkProcessorChoice gives the stage one that drives all of it, and where none does one to the surface alone', () => {
  const ofWall = plainSurface({ columns: 4, bands: [{ type: plainType(216), rows: 3 }] });
  const ofOther = plainSurface({ id: 'b', letter: 'B', columns: 2, bands: [{ type: plainType(100), rows: 2 }] });
  const driven = (pixels: number, ...ids: string[]) =>
    plainPanel(pixels, { drivenBy: ids.map((processorId) => ({ processorId, portPixels: null })) });
  const processors = ['first', 'second', 'both'].map((id) => plainProcessor({}, { id, name: id }));
  const fieldsOf = (panels: PortsInputs['panels']) => {
    const signal = plainSignal({ processorId: null });
    const given = plainPorts({ signal, processors, panels, surfaces: setOf(ofWall, ofOther) });
    return check(given).fix?.command.args;
  };
  expect(fieldsOf([driven(216, 'first', 'both'), driven(100, 'second', 'both')])).toMatchObject({
    fields: [{ path: ['signal', 'processorId'], value: 'both' }],
  });
  expect(fieldsOf([driven(216, 'first'), driven(100, 'second')])).toMatchObject({
    fields: [{ path: ['signal', 'bySurface'], value: [{ ...own, processorId: 'first' }] }],
  });
});

test('checkProcessorChoice offers nothing where the catalogue has none that suits', () => {
  expect(check(plainPorts({ signal: plainSignal({ processorId: null }), processors: [] })).fix).toBeUndefined();
});
