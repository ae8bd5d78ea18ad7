import type { Tint } from '../../sheets/tint-panels';
import type { From } from '../../sheets/unrolled-grid';
import type { DrawingView } from '../state/bench-state';
import { useActions } from '../state/use-bench';
import { useDrawing } from '../state/use-drawing';
import { useEvaluation } from '../state/use-evaluation';
import { Button } from '../widgets/Button';
import { SegmentChoice } from '../widgets/SegmentChoice';

const views: readonly { readonly value: DrawingView; readonly label: string }[] = [
  { value: 'stage', label: 'Stage' },
  { value: 'unrolled', label: 'Unrolled' },
  { value: 'above', label: 'From above' },
];

const tints: readonly { readonly value: Tint; readonly label: string }[] = [
  { value: 'none', label: 'none' },
  { value: 'processor', label: 'processor' },
  { value: 'port', label: 'port' },
  { value: 'circuit', label: 'circuit' },
  { value: 'leg', label: 'leg' },
];

/** How the drawing is looked at: which view, which surface, from which side, tinted by what. */
export function DrawingToolbar() {
  const drawing = useDrawing();
  const surfaces = useEvaluation((evaluation) => evaluation.surfaces.surfaces);
  const { setDrawing } = useActions();
  const shown = surfaces.find((surface) => surface.surfaceId === drawing.surfaceId) ?? surfaces[0];
  const ceiling = shown?.kind === 'ceiling';
  return (
    <div className="views" role="toolbar" aria-label="Drawing">
      <SegmentChoice
        label="View"
        value={drawing.view}
        choices={views}
        onChoose={(view) => setDrawing({ ...drawing, follows: false, view })}
      />
      {drawing.view === 'unrolled' && shown && (
        <>
          {surfaces.length > 1 && (
            <select
              aria-label="Surface"
              value={shown.surfaceId}
              onChange={(event) => setDrawing({ surfaceId: event.target.value })}
            >
              {surfaces.map((surface) => (
                <option key={surface.surfaceId} value={surface.surfaceId}>
                  {surface.letter} {surface.name}
                </option>
              ))}
            </select>
          )}
          <label className="by">
            From
            <select value={drawing.from} onChange={(event) => setDrawing({ from: event.target.value as From })}>
              <option value="behind">{ceiling ? 'above' : 'behind'}</option>
              <option value="inside">{ceiling ? 'below' : 'inside'}</option>
            </select>
          </label>
        </>
      )}
      <label className="by tint">
        Tint
        <select
          value={drawing.tint}
          onChange={(event) => setDrawing({ ...drawing, follows: false, tint: event.target.value as Tint })}
        >
          {tints.map((tint) => (
            <option key={tint.value} value={tint.value}>
              {tint.label}
            </option>
          ))}
        </select>
      </label>
      <Button
        small
        className="follow"
        aria-label="Follow the chapter"
        aria-pressed={drawing.follows}
        title={
          drawing.follows ? 'View and tint follow the chapter in view' : 'Let view and tint follow the chapter in view'
        }
        onClick={() => setDrawing({ follows: !drawing.follows })}
      >
        <svg className="glyph" viewBox="0 0 14 14" aria-hidden="true">
          <path d="M2 2.5h4v9H2zM8.5 7h4M10.5 5l2 2-2 2" />
        </svg>
      </Button>
    </div>
  );
}
