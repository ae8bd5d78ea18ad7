import { useMemo } from 'react';
import type { FileSize } from '../../../files/measure-files';
import { findOpening } from '../../../sheets/find-opening';
import { listSchedules } from '../../../sheets/list-schedules';
import type { Schedule } from '../../../sheets/schedule';
import { counted } from '../../../units/counted';
import { downloadBytes } from '../../bench/download-bytes';
import type { OutputFile } from '../../bench/use-output-file';
import { useBench } from '../../state/use-bench';
import { useEvaluation } from '../../state/use-evaluation';
import { Button } from '../../widgets/Button';
import { FigureTable } from '../../widgets/FigureTable';
import type { useFileSizes } from './use-file-sizes';

interface OutputFilesProps {
  readonly map: Schedule;
  readonly ask: OutputFile['ask'];
  readonly sizeOf: ReturnType<typeof useFileSizes>;
}

interface Row {
  readonly name: string;
  readonly holds: string;
  readonly buttons: readonly {
    readonly label: string;
    readonly does: string;
    readonly save: () => void;
    readonly size?: FileSize['of'];
  }[];
}

const spreadsheet = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

/** What can be taken along for the whole stage, what it holds, and in which forms. */
export function OutputFiles({ map, ask, sizeOf }: OutputFilesProps) {
  const plan = useBench((state) => state.plan);
  const evaluation = useEvaluation((whole) => whole);
  const { surfaces } = evaluation;
  const { nodes } = evaluation.nodes.results;
  const tables = useMemo(() => listSchedules(plan, evaluation).length, [plan, evaluation]);
  const isOpen = findOpening(evaluation.walls.results.walls) !== null;
  const meshes = surfaces.surfaces.filter(({ count }) => count > 0).length;

  async function saveSpreadsheet(): Promise<void> {
    const { schedulesToXlsx } = await import('../../../files/schedules-to-xlsx');
    downloadBytes(await schedulesToXlsx([map], plan.currency), `${plan.name} pixel map.xlsx`, spreadsheet);
  }

  const saveStage = (withVehicle: boolean) => ask({ make: 'stage', withVehicle }, 'Writing the whole stage');

  const panels = counted(surfaces.total, 'panel');
  const rows: readonly Row[] = [
    {
      name: 'Whole set',
      holds: `notes, pixel map, geometry, ${counted(nodes.length, 'picture')}`,
      buttons: [
        {
          label: 'ZIP',
          does: 'Save the whole set',
          save: () => ask({ make: 'set' }, 'Making the whole set'),
          size: 'set',
        },
      ],
    },
    {
      name: 'Schedules',
      holds: `${counted(tables, 'table')}, a sheet each, from bill to pixel map`,
      buttons: [
        {
          label: 'Spreadsheet',
          does: 'Save all schedules as spreadsheet',
          save: () => ask({ make: 'schedules' }, 'Writing the schedules'),
          size: 'schedules',
        },
      ],
    },
    {
      name: 'Pixel map',
      holds: panels,
      buttons: [
        {
          label: 'CSV',
          does: 'Save the pixel map as CSV',
          save: () => ask({ make: 'map' }, 'Writing the pixel map'),
          size: 'map',
        },
        { label: 'Spreadsheet', does: 'Save the pixel map as spreadsheet', save: () => void saveSpreadsheet() },
      ],
    },
    {
      name: 'LED faces',
      holds: `${counted(meshes, 'surface')}, ${panels}, canvas as texture coordinates; metres, y up`,
      buttons: [
        {
          label: 'glTF',
          does: 'Save the geometry as glTF',
          save: () => ask({ make: 'gltf' }, 'Writing the geometry'),
          size: 'gltf',
        },
        {
          label: 'OBJ',
          does: 'Save the geometry as OBJ',
          save: () => ask({ make: 'obj' }, 'Writing the geometry'),
          size: 'obj',
        },
      ],
    },
    {
      name: 'Whole stage',
      holds: `${panels} with their depth, each under its name; floor and hall; metres, y up`,
      buttons: [
        { label: 'glTF', does: 'Save the whole stage as glTF', save: () => saveStage(false), size: 'stage' },
        ...(isOpen
          ? [
              {
                label: 'With vehicle',
                does: 'Save the whole stage with the vehicle as glTF',
                save: () => saveStage(true),
              },
            ]
          : []),
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
              {buttons.map(({ label, does, save, size }) => (
                <span key={label}>
                  <Button small aria-label={does} onClick={save}>
                    {label}
                  </Button>{' '}
                  <span className="quiet">{size === undefined ? '' : sizeOf(size)}</span>
                </span>
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
