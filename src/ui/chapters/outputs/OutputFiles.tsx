import type { Schedule } from '../../../sheets/schedule';
import { counted } from '../../../units/counted';
import { downloadBytes } from '../../bench/download-bytes';
import { useEvaluation } from '../../state/use-evaluation';
import { usePlan } from '../../state/use-plan';
import { Button } from '../../widgets/Button';
import { FigureTable } from '../../widgets/FigureTable';
import type { OutputFile } from './use-output-file';

interface OutputFilesProps {
  readonly map: Schedule;
  readonly ask: OutputFile['ask'];
}

interface Row {
  readonly name: string;
  readonly holds: string;
  readonly buttons: readonly { readonly label: string; readonly does: string; readonly save: () => void }[];
}

const spreadsheet = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

/** What can be taken along for the whole stage, what it holds, and in which forms. */
export function OutputFiles({ map, ask }: OutputFilesProps) {
  const surfaces = useEvaluation((evaluation) => evaluation.surfaces);
  const nodes = useEvaluation((evaluation) => evaluation.nodes.results.nodes);
  const name = usePlan((plan) => plan.name);
  const currency = usePlan((plan) => plan.currency);
  const meshes = surfaces.surfaces.filter(({ count }) => count > 0).length;

  async function saveSpreadsheet(): Promise<void> {
    const { schedulesToXlsx } = await import('../../../files/schedules-to-xlsx');
    downloadBytes(await schedulesToXlsx([map], currency), `${name} pixel map.xlsx`, spreadsheet);
  }

  const panels = counted(surfaces.total, 'panel');
  const rows: readonly Row[] = [
    {
      name: 'Whole set',
      holds: `notes, pixel map, geometry, ${counted(nodes.length, 'picture')}`,
      buttons: [{ label: 'ZIP', does: 'Save the whole set', save: () => ask({ make: 'set' }, 'Making the whole set') }],
    },
    {
      name: 'Pixel map',
      holds: panels,
      buttons: [
        { label: 'CSV', does: 'Save the pixel map as CSV', save: () => ask({ make: 'map' }, 'Writing the pixel map') },
        { label: 'Spreadsheet', does: 'Save the pixel map as spreadsheet', save: () => void saveSpreadsheet() },
      ],
    },
    {
      name: 'Geometry',
      holds: `${counted(meshes, 'surface')}, ${panels}, metres, y up`,
      buttons: [
        { label: 'glTF', does: 'Save the geometry as glTF', save: () => ask({ make: 'gltf' }, 'Writing the geometry') },
        { label: 'OBJ', does: 'Save the geometry as OBJ', save: () => ask({ make: 'obj' }, 'Writing the geometry') },
      ],
    },
  ];
  return (
    <FigureTable
      caption="Files for the whole stage"
      columns={[
        { key: 'name', title: 'File', cell: (row) => row.name },
        { key: 'holds', title: 'Holds', cell: ({ holds }) => holds, words: true },
        {
          key: 'save',
          title: 'Save as',
          words: true,
          cell: ({ buttons }) => (
            <span className="output-buttons">
              {buttons.map(({ label, does, save }) => (
                <Button key={label} small aria-label={does} onClick={save}>
                  {label}
                </Button>
              ))}
            </span>
          ),
        },
      ]}
      rows={rows}
      keyOf={(row) => row.name}
    />
  );
}
