import { expect, test } from 'vitest';
import { importViolation } from './import-rules';
import { importsOf } from './imports-of';
import { readText, sourceFiles } from './repository';

const violationsIn = (path: string, text: string) =>
  importsOf(path, text)
    .map(importViolation)
    .filter((violation) => violation !== null);

test('no file of src imports what it must not', () => {
  const imports = sourceFiles.flatMap((path) => importsOf(path, readText(path)));
  expect(imports.length).toBeGreaterThan(100);
  expect(imports.map(importViolation).filter((violation) => violation !== null)).toEqual([]);
});

// One upward import in each form that the language has: the guard sees every one of them.
test.each([
  ["import { Sheet } from '../sheets/sheet';"],
  ["import '../sheets/sheet';"],
  ["import type { Sheet } from '../sheets/sheet';"],
  ["import { type Sheet } from '../sheets/sheet.ts';"],
  ["import sheet = require('../sheets/sheet');"],
  ["export { sheet } from '../sheets/sheet';"],
  ["export * from '../sheets/sheet';"],
  ["export type { Sheet } from '../sheets/sheet';"],
  ["const sheet = await import('../sheets/sheet');"],
  ['const sheet = await import(`../sheets/sheet`);'],
  ["type Sheet = import('../sheets/sheet').Sheet;"],
  ["const worker = new URL('../sheets/sheet.ts', import.meta.url);"],
  ["import worker from '../sheets/sheet?worker';"],
  ['/// <reference path="../sheets/sheet.ts" />'],
])('an upward import written as %s is found', (text) => {
  expect(violationsIn('src/calc/planted.ts', text)).toEqual([
    'src/calc/planted.ts:1 src/calc imports upward: src/sheets/sheet',
  ]);
});

test.each([
  ['src/units/planted.ts', "import '../plan/plan';"],
  ['src/plan/planted.ts', "import '../calc/evaluate';"],
  ['src/plan/commands/planted.ts', "import '../../calc/evaluate';"],
  ['src/calc/walls/planted.ts', "import '../../files/schedule-to-csv';"],
  ['src/sheets/planted.ts', "import '../files/schedule-to-csv';"],
  ['src/files/planted.ts', "import '../cli/check';"],
  ['src/files/planted.ts', "import '../ui/state/store';"],
  ['src/cli/planted.ts', "import '../ui/state/store';"],
  ['src/ui/planted.tsx', "import '../cli/check';"],
  ['src/ui/planted.tsx', "import '../main';"],
  ['src/ui/planted.tsx', "import '../../tests/setup/anything';"],
  ['src/cli/planted.ts', "import '../setup/find-chromium.mjs';"],
  ['src/setup/planted.mjs', "import '../calc/evaluate';"],
  ['src/ui/chapters/power/planted.tsx', "import '../heat/Heat';"],
  ['src/ui/widgets/planted.tsx', "import type { Plan } from '../../plan/plan';"],
  ['src/ui/widgets/planted.tsx', "import { store } from '../state/store';"],
  ['src/elsewhere/planted.ts', "import '../plan/plan';"],
])('%s must not hold: %s', (path, text) => {
  expect(violationsIn(path, text)).toHaveLength(1);
});

test.each([
  ['src/units/planted.ts', 'react'],
  ['src/plan/planted.ts', 'react'],
  ['src/calc/planted.ts', 'zod'],
  ['src/calc/planted.ts', 'node:fs'],
  ['src/calc/planted.ts', 'three'],
  ['src/calc/planted.ts', 'zustand/vanilla'],
  ['src/sheets/planted.ts', 'd3-dsv'],
  ['src/sheets/planted.ts', 'node:path'],
  ['src/files/planted.ts', 'node:fs'],
  ['src/files/planted.ts', 'zod'],
  ['src/cli/planted.ts', 'zod'],
  ['src/cli/planted.ts', '@react-three/fiber'],
  ['src/ui/planted.tsx', 'zod'],
  ['src/ui/planted.tsx', 'node:fs'],
])('%s must not import the package %s', (path, name) => {
  expect(violationsIn(path, `import '${name}';`)).toHaveLength(1);
});

test.each([
  ["const sheet = await import('./' + name);"],
  ['const sheet = await import(name);'],
  ["const fs = require('node:fs');"],
  ["const all = import.meta.glob('./*.ts');"],
])('an import that no reader can follow is found: %s', (text) => {
  expect(violationsIn('src/ui/planted.ts', text)).toHaveLength(1);
});

test.each([
  ['src/plan/allowed.ts', "import { z } from 'zod'; import { metresOf } from '../units/length';"],
  ['src/calc/tables/allowed.ts', "import table from '../../../shared/table.json';"],
  [
    'src/calc/walls/allowed.ts',
    "import type { Wall } from '../../plan/wall'; import { turn } from '../surfaces/turn';",
  ],
  ['src/files/allowed.ts', "import { csvFormatRows } from 'd3-dsv'; import write from 'write-excel-file/universal';"],
  ['src/cli/allowed.ts', "import { readFileSync } from 'node:fs'; import { evaluate } from '../calc/evaluate';"],
  [
    'src/ui/chapters/power/allowed.tsx',
    "import './power.css'; import { Field } from '../../widgets/Field'; import 'react';",
  ],
  [
    'src/ui/widgets/allowed.tsx',
    "import { feet } from '../../units/length'; import { Button } from 'react-aria-components';",
  ],
])('%s may hold: %s', (path, text) => {
  expect(violationsIn(path, text)).toEqual([]);
});
