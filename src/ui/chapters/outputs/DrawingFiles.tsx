import { type ListedDrawing, listDrawings } from '../../../sheets/list-drawings';
import { stageParts } from '../../../sheets/stage-parts';
import { downloadBytes } from '../../bench/download-bytes';
import { useBench } from '../../state/use-bench';
import { useEvaluation } from '../../state/use-evaluation';
import { Button } from '../../widgets/Button';
import { FigureTable } from '../../widgets/FigureTable';
import { useFormat } from '../../widgets/use-format';

const types = { dxf: 'image/vnd.dxf', svg: 'image/svg+xml' } as const;
const kinds = ['dxf', 'svg'] as const;

/** Every drawing of the stage, to save for another program. */
export function DrawingFiles() {
  const plan = useBench((state) => state.plan);
  const evaluation = useEvaluation((whole) => whole);
  const format = useFormat();

  async function save(listed: ListedDrawing, kind: keyof typeof types): Promise<void> {
    const { drawingFile } = await import('../../../files/drawing-files');
    const { name, bytes } = drawingFile(listed, stageParts(plan, evaluation), format, kind);
    downloadBytes(bytes, `${plan.name} ${name}`, types[kind]);
  }

  return (
    <FigureTable
      caption="Drawings for other programs"
      columns={[
        { key: 'label', title: 'Drawing', cell: ({ label }) => label },
        {
          key: 'save',
          title: 'Save as',
          words: true,
          cell: (listed) => (
            <span className="output-buttons">
              {kinds.map((kind) => (
                <Button
                  key={kind}
                  small
                  aria-label={`Save ${listed.label} as ${kind.toUpperCase()}`}
                  onClick={() => void save(listed, kind)}
                >
                  {kind.toUpperCase()}
                </Button>
              ))}
            </span>
          ),
        },
      ]}
      rows={listDrawings(evaluation.surfaces)}
      keyOf={({ name }) => name}
    />
  );
}
