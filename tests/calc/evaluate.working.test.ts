import { all, create, type MathNode } from 'mathjs';
import { expect, test } from 'vitest';
import type { ChapterId, Step } from '../../src/calc/chapter';
import { createEvaluator } from '../../src/calc/evaluate';
import type { Evaluation } from '../../src/calc/evaluation';
import { sampleNames, samplePlan } from '../arbitraries/sample-plans';

/** What Step allows in an expression. */
const functions = ['floor', 'ceil', 'round', 'min', 'max', 'abs', 'sqrt', 'sin', 'cos', 'tan'];
const operators = ['+', '-', '*', '/', '^'];

const { parse } = create(all!, {});

/** Chapters that have figures worked out in every sample; the wish only holds figures of others against what is wished. */
const worked = {
  panels: 'panels',
  walls: 'walls',
  picture: 'picture',
  ports: 'ports',
  zones: 'zones',
  runs: 'runs',
  nodes: 'nodes',
  links: 'links',
  power: 'power',
  faults: 'faults',
  heat: 'heat',
  masses: 'masses',
  materials: 'materials',
} as const satisfies Partial<Record<ChapterId, ChapterId>>;

function stepsOf(evaluation: Evaluation): { chapter: string; step: Step }[] {
  const chapters = [...Object.keys(worked), 'wish', 'ceilings'] as ChapterId[];
  return chapters.flatMap((chapter) => evaluation[chapter].working.map((step) => ({ chapter, step })));
}

function words(node: MathNode): string[] {
  return node.filter((each) => each.type === 'SymbolNode').map((each) => each.toString());
}

/** What of an expression is more than plain arithmetic. */
function fancy(root: MathNode): string[] {
  return root
    .filter((node) => {
      if (node.type === 'FunctionNode') return !functions.includes((node as MathNode & { fn: MathNode }).fn.toString());
      if (node.type === 'OperatorNode') return !operators.includes((node as MathNode & { op: string }).op);
      return !['SymbolNode', 'ConstantNode', 'ParenthesisNode'].includes(node.type);
    })
    .map((node) => node.toString());
}

test.each(sampleNames)('evaluate of the sample %s prints working that mathjs comes to as well', (name) => {
  const evaluation = createEvaluator().evaluate(samplePlan(name));
  for (const chapter of Object.values(worked)) expect(evaluation[chapter].working.length, chapter).toBeGreaterThan(0);
  const wrong: string[] = [];
  for (const { chapter, step } of stepsOf(evaluation)) {
    const { figure, symbol, expression, numbers, value } = step;
    const found: unknown = parse(expression).evaluate({ ...numbers });
    const holds = typeof found === 'number' && Math.abs(found - value) <= 1e-9 * Math.abs(value);
    if (!holds) wrong.push(`${chapter}, ${figure}: ${symbol} = ${expression} is ${String(found)}, printed ${value}`);
  }
  expect(wrong).toEqual([]);
});

test.each(sampleNames)('evaluate of the sample %s prints plain arithmetic over the very numbers beside it', (name) => {
  const wrong: string[] = [];
  for (const { chapter, step } of stepsOf(createEvaluator().evaluate(samplePlan(name)))) {
    const root = parse(step.expression);
    const named = new Set(words(root).filter((word) => word !== 'pi' && !functions.includes(word)));
    const odd = [...fancy(root), ...[...named].filter((word) => !(word in step.numbers))];
    const idle = Object.keys(step.numbers).filter((given) => !named.has(given));
    if (odd.length + idle.length > 0) {
      wrong.push(`${chapter}, ${step.figure}: ${step.symbol} = ${step.expression}; odd ${odd}; not used ${idle}`);
    }
  }
  expect(wrong).toEqual([]);
});

/** The headline figures that are measured; the others count what is listed one by one. */
const measured = [
  'insideDiameterMm',
  'openingMm',
  'wallHeightMm',
  'pixels',
  'fullestPortShare',
  'worstLegA',
  'neutralA',
  'powerMaxW',
  'heatTons',
  'massKg',
  'priceTotal',
] as const satisfies readonly (keyof Evaluation['headline'])[];

test.each(sampleNames)('evaluate of the sample %s works out every headline figure that is measured', (name) => {
  const evaluation = createEvaluator().evaluate(samplePlan(name));
  const printed = stepsOf(evaluation).map(({ step }) => step.value);
  const missing = measured.filter((figure) => {
    const value = evaluation.headline[figure];
    return value !== null && !printed.some((each) => Math.abs(each - value) <= 1e-9 * Math.abs(value));
  });
  expect(missing).toEqual([]);
});
