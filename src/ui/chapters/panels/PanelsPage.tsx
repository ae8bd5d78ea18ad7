import { useState } from 'react';
import type { PanelFigures } from '../../../calc/panels/panel-result';
import type { CatalogueList } from '../../../plan/find-item';
import { ChapterPage } from '../../bench/ChapterPage';
import { useEvaluation } from '../../state/use-evaluation';
import { FigureTable } from '../../widgets/FigureTable';
import { SegmentChoice } from '../../widgets/SegmentChoice';
import { useFormat } from '../../widgets/use-format';
import { CatalogueEditor } from './CatalogueEditor';
import { pitchWords } from './pitch-words';

const lists: readonly { readonly value: CatalogueList; readonly label: string }[] = [
  { value: 'panels', label: 'Panels' },
  { value: 'processors', label: 'Processors' },
  { value: 'breakouts', label: 'Breakouts' },
  { value: 'nodes', label: 'Render nodes' },
  { value: 'distros', label: 'Distros' },
  { value: 'cables', label: 'Cables' },
];

/** The catalogue that the plan carries, and what follows from each panel's sheet. */
export function PanelsPage() {
  const [list, setList] = useState<CatalogueList>('panels');
  const figures = useEvaluation((evaluation) => evaluation.panels.results.panels);
  const format = useFormat();
  return (
    <ChapterPage
      page="panels"
      given={
        <>
          <SegmentChoice label="Part of the catalogue" value={list} choices={lists} onChoose={setList} />
          <CatalogueEditor key={list} list={list} />
        </>
      }
      result={
        <FigureTable<PanelFigures>
          caption="What follows from the sheets"
          columns={[
            { key: 'name', title: 'Panel', cell: ({ name }) => name },
            { key: 'pitch', title: 'Pitch, mm', cell: pitchWords },
            { key: 'pixels', title: 'Pixels', cell: ({ pixels }) => format(pixels, 'px') },
            { key: 'density', title: 'Pixels a m²', cell: ({ pixelsPerM2 }) => format(pixelsPerM2, 'px') },
            { key: 'watts', title: 'W a m²', cell: ({ wattsPerM2 }) => format(wattsPerM2, 'W') },
            { key: 'mass', title: 'kg a m²', cell: ({ kgPerM2 }) => format(kgPerM2, 'kg') },
          ]}
          rows={figures}
          keyOf={({ panelId }) => panelId}
        />
      }
    />
  );
}
