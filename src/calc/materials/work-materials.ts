import type { Materials } from '../../plan/materials';
import type { Step } from '../chapter';
import type { MaterialsInputs } from './compute-materials';
import type { MaterialLine, MaterialsResults } from './material-result';
import { spareRule } from './spare-count';
import { workNetwork } from './work-network';

/** `a1 * b1 + a2 * b2 + ..` over the lines that have both figures. */
function products(
  lines: readonly MaterialLine[],
  amount: (line: MaterialLine) => number,
  each: (line: MaterialLine) => number | null,
  symbol: string,
): Pick<Step, 'expression' | 'numbers'> {
  const numbers: Record<string, number> = {};
  const terms: string[] = [];
  for (const line of lines) {
    const one = each(line);
    if (one === null || one === 0) continue;
    const i = terms.length + 1;
    numbers[`n${i}`] = amount(line);
    numbers[`${symbol}${i}`] = one;
    terms.push(`n${i} * ${symbol}${i}`);
  }
  return { expression: terms.join(' + ') || '0', numbers };
}

function workSpares(materials: Materials, line: MaterialLine): Step {
  const { share, least } = spareRule(materials, line.itemId);
  return {
    figure: `spares, ${line.name}`,
    symbol: 'spare',
    expression: 'max(ceil(share * needed - 1e-9), least)',
    numbers: { share, needed: line.needed, least },
    value: line.spare,
    unit: 'count',
    source: { kind: 'given', text: 'share and least number as planned; the last term keeps exact shares whole' },
  };
}

/** Jumpers, which nobody types in: every panel is fed from the one before, but the first of a run or circuit. */
function workJumpers(
  { cables, wiring }: Pick<MaterialsInputs, 'cables' | 'wiring'>,
  lines: readonly MaterialLine[],
): Step[] {
  const kinds = [
    { kind: 'data-jumper', chain: 'runs', panels: wiring.panelsOnRuns, chains: wiring.runs },
    { kind: 'power-jumper', chain: 'circuits', panels: wiring.panelsOnCircuits, chains: wiring.circuits },
  ] as const;
  return kinds.flatMap(({ kind, chain, panels, chains }): Step[] => {
    const id = cables.find((cable) => cable.kind === kind)?.id ?? kind;
    const line = lines.find(({ itemId }) => itemId === id);
    if (line === undefined) return [];
    return [
      {
        figure: `needed, ${line.name}`,
        symbol: 'needed',
        expression: `panels - ${chain}`,
        numbers: { panels, [chain]: chains },
        value: line.needed,
        unit: 'count',
        source: {
          kind: 'practice',
          text: `panels of a chain feed one another, the first of the ${chain} hangs on its own cable`,
        },
      },
    ];
  });
}

/** Cases of one panel type: full ones and the last. */
function workCases(panels: MaterialsInputs['panels'], lines: readonly MaterialLine[]): Step[] {
  return panels.flatMap(({ id, purchase }): Step[] => {
    const line = lines.find(({ itemId }) => itemId === id);
    const cases = lines.find(({ group, itemId }) => group === 'cases' && itemId === `${id}/case`);
    if (line === undefined || cases === undefined) return [];
    return [
      {
        figure: `needed, ${cases.name}`,
        symbol: 'needed',
        expression: 'ceil((panels + spare) / each)',
        numbers: { panels: line.needed, spare: line.spare, each: purchase.perCase },
        value: cases.needed,
        unit: 'count',
        source: { kind: 'sheet', text: 'panels to a case from the catalogue' },
      },
    ];
  });
}

/** Jumpers, cables of sync and network, and cases as they are counted, spares of every item, then mass and both prices as sums over the lines. */
export function workMaterials(
  { materials, cables, wiring, panels }: Pick<MaterialsInputs, 'materials' | 'cables' | 'wiring' | 'panels'>,
  results: MaterialsResults,
): Step[] {
  const { lines, massKg, priceTotal, priceToGet } = results;
  const wanted = (line: MaterialLine) => line.needed + line.spare;
  const price = (line: MaterialLine) => line.priceEach;
  const sheet = { kind: 'sheet', text: 'mass and price of each from the catalogue' } as const;
  return [
    ...workJumpers({ cables, wiring }, lines),
    ...workNetwork(wiring.network),
    ...workCases(panels, lines),
    ...lines.filter(({ group }) => group !== 'cases').map((line) => workSpares(materials, line)),
    {
      figure: 'mass',
      symbol: 'm',
      ...products(lines, wanted, (line) => line.massKgEach, 'm'),
      value: massKg,
      unit: 'kg',
      source: sheet,
    },
    {
      figure: 'price, all new',
      symbol: 'price',
      ...products(lines, wanted, price, 'p'),
      value: priceTotal,
      unit: 'money',
      source: sheet,
    },
    {
      figure: 'price of what is to be got',
      symbol: 'price',
      ...products(lines, (line) => line.toGet, price, 'p'),
      value: priceToGet,
      unit: 'money',
      source: sheet,
    },
  ];
}
