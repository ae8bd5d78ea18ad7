import { expect, test } from 'vitest';
import type { OutputsInputs } from '../../src/calc/outputs/outputs-inputs';
import { makeOutputs, type OutputsAsked, type OutputsStep } from '../../src/files/make-outputs';
import { mapFile, meshFiles, pictureFile } from '../../src/files/output-set';
import { cornerNodes, cornerRuns, cornerSurfaces, cornerZones } from '../calc/outputs/corner-stage';

const inputs = { surfaces: cornerSurfaces, zones: cornerZones, runs: cornerRuns, fed: cornerNodes } as OutputsInputs;

function made(asked: OutputsAsked) {
  const steps: OutputsStep[] = [];
  const making = makeOutputs(asked, inputs, 'Corner');
  for (let step = making.next(); ; step = making.next()) {
    if (step.done) return { steps, file: step.value };
    steps.push(step.value);
  }
}

test('makeOutputs makes each file as the command line does', () => {
  expect(made({ make: 'map' }).file).toEqual(mapFile(inputs));
  expect(made({ make: 'gltf' }).file).toEqual(meshFiles(inputs, 'Corner')[0]);
  expect(made({ make: 'picture', node: 1, bits: 16 }).file).toEqual(pictureFile(inputs, 1, 16));
  expect(made({ make: 'obj' }).file!.name).toBe('stage-obj.zip');
});

test('makeOutputs tells of a set how far it is, step by step, up to all of it', () => {
  const { steps, file } = made({ make: 'set' });
  expect(file!.name).toBe('outputs.zip');
  // Notes, map, three of geometry; three nodes of 10 bits with two pictures each.
  expect(steps.map(({ done }) => Math.round(done * 6))).toEqual([0, 0, 0, 0, 0, 1, 2, 3, 4, 5, 6]);
});

test('makeOutputs gives pictures for the screen node by node, none larger than asked', () => {
  const whole = made({ make: 'screen-pictures', mostSide: 4096, mostPixels: 1e6 });
  expect(whole.file).toBeNull();
  expect(whole.steps.map(({ picture }) => [picture!.node, picture!.width, picture!.height])).toEqual([
    [0, 100, 300],
    [1, 100, 300],
    [2, 100, 200],
  ]);
  const bySide = made({ make: 'screen-pictures', mostSide: 150, mostPixels: 1e6 });
  expect(bySide.steps.map(({ picture }) => picture!.height)).toEqual([150, 150, 100]);
  const bySum = made({ make: 'screen-pictures', mostSide: 4096, mostPixels: 10_000 });
  // 80,000 px in all: by 3 there are 2 x 34 x 100 + 34 x 67 = 9,078.
  expect(bySum.steps.map(({ picture }) => picture!.height)).toEqual([100, 100, 67]);
});
