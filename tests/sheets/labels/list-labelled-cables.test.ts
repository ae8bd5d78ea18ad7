import { describe, expect, it } from 'vitest';
import { createEvaluator } from '../../../src/calc/evaluate';
import { listLabelledCables } from '../../../src/sheets/labels/list-labelled-cables';
import { sampleNames, samplePlan } from '../../arbitraries/sample-plans';
import { allLabels, labelInputsOf, smallStage } from './labelled-fixture';

const said = ({ kind, name, from, to, count }: ReturnType<typeof allLabels>[number]) =>
  `${kind} ${name}: ${from.words} to ${to.words}, ${count}`;

describe('listLabelledCables', () => {
  it('names every cable of a small stage from where it comes to where it goes', () => {
    const stage = smallStage();
    const [first, second, folded] = stage.runs.runs.map(({ port }) => port);
    expect(allLabels(stage).map(said)).toEqual([
      'trunk 1A: Processor 1 to Breakout 1A, 1',
      // The runs go up from row 3 of each column, and fold down and up over the two rows below.
      `home-run ${first}: Port ${first} to C1 R3, 1`,
      `home-run ${second}: Port ${second} to C2 R3, 1`,
      `home-run ${folded}: Port ${folded} to C1 R2, 1`,
      `data-jumper ${folded}: C1 R2 to C2 R2, 3`,
      ...stage.power.circuits.map(({ name }, i) => `circuit ${name}: Distro 1 to C${i + 1} R1, 1`),
      ...stage.power.circuits.map(({ name }, i) => `power-jumper ${name}: C${i + 1} R1 to C${i + 1} R3, 2`),
    ]);
  });
  it('leads a return from the last panel back to its port, and its trunk to that breakout', () => {
    const { runs, ...rest } = smallStage();
    const returned = runs.runs.map((run, i) => ({ ...run, returnPort: `2B-0${i + 1}` }));
    const cables = allLabels({ ...rest, runs: { ...runs, runs: returned } });
    expect(cables.filter(({ kind }) => kind === 'return').map(said)).toEqual([
      'return 2B-01: C1 R3 to Port 2B-01, 1',
      'return 2B-02: C2 R3 to Port 2B-02, 1',
      'return 2B-03: C2 R2 to Port 2B-03, 1',
    ]);
    expect(cables.filter(({ kind }) => kind === 'trunk').map(({ name }) => name)).toEqual(['1A', '2B']);
  });
  it('knows no trunk where processors have ports of their own', () => {
    const { runs, ...rest } = smallStage();
    const direct = runs.runs.map((run, i) => ({ ...run, port: `1-0${i + 1}` }));
    expect(allLabels({ ...rest, runs: { ...runs, runs: direct } }).filter(({ kind }) => kind === 'trunk')).toEqual([]);
  });
  it('puts breakouts in the order of processors and letters', () => {
    const { runs, ...rest } = smallStage();
    const ports = ['10A-01', '2AA-01', '2Z-01'];
    const moved = runs.runs.map((run, i) => ({ ...run, port: ports[i]! }));
    const cables = allLabels({ ...rest, runs: { ...runs, runs: moved } });
    expect(cables.flatMap(({ kind, name }) => (kind === 'trunk' ? [name] : []))).toEqual(['2Z', '2AA', '10A']);
  });
  it('takes the length class from the first cable of its kind in the catalogue, home runs with their stock length', () => {
    const { cables } = samplePlan('horseshoe').catalogue;
    const classes = new Map(allLabels(smallStage({ cables })).map(({ kind, lengthClass }) => [kind, lengthClass]));
    for (const kind of ['trunk', 'home-run', 'data-jumper', 'circuit', 'power-jumper'] as const) {
      const name = cables.find((cable) => cable.kind === kind)?.name;
      expect(classes.get(kind)).toBe(kind === 'home-run' ? `2 m, ${name}` : name);
    }
  });
  it('lists the kinds that are asked for alone', () => {
    expect(new Set(listLabelledCables(smallStage(), new Set(['circuit'])).map(({ kind }) => kind))).toEqual(
      new Set(['circuit']),
    );
  });
  it.each(sampleNames)('comes to as many cables of each kind as stand on the bill of %s', (name) => {
    const plan = samplePlan(name);
    const bill = createEvaluator().evaluate(plan).materials.results.lines;
    const needed = (kind: string) => {
      const item = plan.catalogue.cables.find((cable) => cable.kind === kind)!;
      return bill.find(({ itemId }) => itemId === item.id)?.needed ?? 0;
    };
    const cables = allLabels(labelInputsOf(plan));
    const sum = (...kinds: readonly string[]) =>
      cables.filter(({ kind }) => kinds.includes(kind)).reduce((total, { count }) => total + count, 0);
    expect(sum('home-run', 'return')).toBe(needed('home-run'));
    expect(sum('trunk')).toBe(needed('trunk'));
    expect(sum('data-jumper')).toBe(needed('data-jumper'));
    expect(sum('circuit')).toBe(needed('circuit'));
    expect(sum('power-jumper')).toBe(needed('power-jumper'));
    expect(cables.length).toBeGreaterThan(10);
  });
});
