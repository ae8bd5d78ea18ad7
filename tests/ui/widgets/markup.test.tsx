import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import { CheckItem } from '../../../src/ui/widgets/CheckItem';
import { ChoiceField } from '../../../src/ui/widgets/ChoiceField';
import { DisplayContext } from '../../../src/ui/widgets/display-context';
import { FigureTable } from '../../../src/ui/widgets/FigureTable';
import { FoldingFigure } from '../../../src/ui/widgets/FoldingFigure';
import { ProgressBar } from '../../../src/ui/widgets/ProgressBar';
import { StatusGlyph } from '../../../src/ui/widgets/StatusGlyph';
import { UnitField } from '../../../src/ui/widgets/UnitField';
import { WorkingBlock } from '../../../src/ui/widgets/WorkingBlock';

const nothing = () => null;

test('each status has a shape of its own and a word for it', () => {
  const marks = (['pass', 'offer', 'watch', 'stop'] as const).map((status) =>
    renderToStaticMarkup(<StatusGlyph status={status} />),
  );
  const shapes = marks.map((mark) => /d="([^"]+)"/.exec(mark)?.[1]);
  expect(new Set(shapes).size).toBe(4);
  expect(marks.map((mark) => /unseen">([^<]+)/.exec(mark)?.[1])).toEqual(['passes', 'offer', 'watch', 'stop']);
});

test('UnitField is a spinbutton with its figure and unit in words', () => {
  const markup = renderToStaticMarkup(
    <UnitField label="Reach" value={2100} unit="mm" least={0} most={6000} field="signal.reachMm" onCommit={nothing} />,
  );
  expect(markup).toContain('role="spinbutton"');
  expect(markup).toContain('aria-valuenow="2100"');
  expect(markup).toContain('value="2.10"');
  expect(markup).toContain('data-field="signal.reachMm"');
});

test('UnitField of a length between the marks of a tape reads rounded and says so; in words it stays exact', () => {
  // 20 m is 787.4016 in: 65' 7.4016", to the sixteenth 65' 7 3/8".
  const inFeet = (mm: number) =>
    renderToStaticMarkup(
      <DisplayContext.Provider value={{ lengths: 'feet', locale: 'en-US', currency: 'USD' }}>
        <UnitField label="Across" value={mm} unit="mm" onCommit={nothing} />
      </DisplayContext.Provider>,
    )
      .replaceAll('&quot;', '"')
      .replaceAll('&#x27;', "'");
  expect(inFeet(20_000)).toContain(`value="≈ 65' 7 3/8""`);
  expect(inFeet(20_000)).toContain(`aria-valuetext="65' 7.401575""`);
  expect(inFeet(7315.2)).toContain(`value="24' 0""`);
});

test('UnitField of what nobody stated is empty and says so', () => {
  const markup = renderToStaticMarkup(
    <UnitField label="Budget" value={null} unit="money" absent="not stated" onCommit={nothing} />,
  );
  expect(markup).toContain('placeholder="not stated"');
  expect(markup).toContain('value=""');
  expect(markup).not.toContain('aria-valuenow');
  expect(markup).not.toContain('Infinity');
});

test('ChoiceField shows a value that is no choice any more as missing', () => {
  const markup = renderToStaticMarkup(
    <ChoiceField label="Panel" value="gone" choices={[{ value: 'here', label: 'Here' }]} onCommit={nothing} />,
  );
  expect(markup).toContain('missing: gone');
});

test('CheckItem lists its places, says how many are left, and offers its repair', () => {
  const places = Array.from({ length: 9 }, (_, i) => ({ name: `C${i + 1} R1`, onGo: () => undefined }));
  const markup = renderToStaticMarkup(
    <CheckItem
      status="stop"
      sentence="Too many."
      figures="9 / 3"
      places={places}
      fix={{ label: 'Use fewer', onApply: () => undefined }}
    />,
  );
  expect(markup).toContain('C6 R1');
  expect(markup).not.toContain('C7 R1');
  expect(markup).toContain('and 3 more');
  expect(markup).toContain('Use fewer');
});

test('FigureTable marks the row that holds and heads its rows', () => {
  const markup = renderToStaticMarkup(
    <FigureTable
      caption="Ways"
      columns={[
        { key: 'way', title: 'Way', cell: (row: { way: string }) => row.way },
        { key: 'ports', title: 'Ports', cell: () => 12 },
      ]}
      rows={[{ way: 'columns' }, { way: 'folded' }]}
      keyOf={({ way }) => way}
      isChosen={({ way }) => way === 'folded'}
    />,
  );
  expect(markup.match(/data-chosen/g)).toHaveLength(1);
  expect(markup).toContain('<th scope="row">folded');
});

test('ProgressBar says how far it is, and nothing where that cannot be told', () => {
  expect(renderToStaticMarkup(<ProgressBar label="Searching" share={0.42} onStop={() => undefined} />)).toContain(
    'aria-valuenow="42"',
  );
  expect(renderToStaticMarkup(<ProgressBar label="Searching" share={null} onStop={() => undefined} />)).not.toContain(
    'aria-valuenow',
  );
});

test('WorkingBlock prints formula, numbers, value and each source once', () => {
  const line = {
    symbol: 'panels',
    expression: 'floor(c / p)',
    numbers: { c: 10, p: 3 },
    value: '3',
    source: 'Given by you',
  };
  const markup = renderToStaticMarkup(
    <WorkingBlock figure="Panels a port" lines={[line, { ...line, symbol: 'again' }]} writeNumber={String} />,
  );
  expect(markup).toContain('⌊ c ÷ p ⌋');
  expect(markup).toContain('⌊ 10 ÷ 3 ⌋ = 3');
  expect(markup.match(/Given by you/g)).toHaveLength(1);
});

test('FoldingFigure breaks a figure in two units before the second and nowhere else', () => {
  const markup = renderToStaticMarkup(<FoldingFigure>8352 kg (18 413 lb)</FoldingFigure>);
  const words = /">([^<]+)</.exec(markup)?.[1];
  expect(words?.split(' ')).toEqual(['8352\u00a0kg', '(18\u00a0413\u00a0lb)']);
  expect(renderToStaticMarkup(<FoldingFigure>6 to 12</FoldingFigure>)).toBe('6 to 12');
});
