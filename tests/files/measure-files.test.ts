import { expect, test } from 'vitest';
import { createEvaluator } from '../../src/calc/evaluate';
import { filesToZip, type NamedFile } from '../../src/files/files-to-zip';
import { makePlanFile, type PlanFileAsked } from '../../src/files/make-plan-file';
import { measureFiles } from '../../src/files/measure-files';
import { outputSet } from '../../src/files/output-set';
import { outputsOf } from '../../src/sheets/outputs-of';
import { samplePlan } from '../arbitraries/sample-plans';

const plan = samplePlan('flat');
const evaluation = createEvaluator().evaluate(plan);
const sizes = [...measureFiles(plan, evaluation)];
const sizeOf = (of: string) => sizes.find((size) => size.of === of)!;

async function made(asked: PlanFileAsked): Promise<NamedFile> {
  const making = makePlanFile(asked, plan, evaluation);
  for (let step = making.next(); ; step = making.next()) if (step.done) return (await step.value)!;
}

test.each(['map', 'gltf', 'obj'] as const)('measureFiles says exactly how large the file of %s is', async (make) => {
  expect(sizeOf(make)).toEqual({ of: make, bytes: (await made({ make })).bytes.length, isExact: true });
});

test('measureFiles says exactly how large the whole stage and the first picture are', async () => {
  const stage = await made({ make: 'stage', withVehicle: false });
  expect(sizeOf('stage')).toEqual({ of: 'stage', bytes: stage.bytes.length, isExact: true });
  for (const bits of [8, 16] as const) {
    const picture = await made({ make: 'picture', node: 0, bits });
    expect(sizeOf(`picture 0 ${bits}`)).toMatchObject({ bytes: picture.bytes.length, isExact: true });
  }
});

test('measureFiles comes near to the spreadsheet and the set, and says that these are estimates', async () => {
  const workbook = (await made({ make: 'schedules' })).bytes.length;
  expect(sizeOf('schedules').isExact).toBe(false);
  expect(sizeOf('schedules').bytes / workbook).toBeGreaterThan(0.75);
  expect(sizeOf('schedules').bytes / workbook).toBeLessThan(1.3);
  const set = filesToZip([...outputSet(outputsOf(evaluation), plan.name)].map(({ file }) => file)).length;
  expect(sizeOf('set').isExact).toBe(false);
  expect(sizeOf('set').bytes / set).toBeGreaterThan(0.9);
  expect(sizeOf('set').bytes / set).toBeLessThan(1.1);
});
