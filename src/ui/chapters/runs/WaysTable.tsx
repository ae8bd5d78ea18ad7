import type { SurfaceRuns, WayFigures } from '../../../calc/runs/run-result';
import { wayCommand } from '../../../calc/runs/way-command';
import type { WayOfWiring } from '../../../plan/hand-change';
import { useSay } from '../../bench/notice-context';
import { selectRecomputing } from '../../state/selectors';
import { useActions, useBench, useBenchStore } from '../../state/use-bench';
import { Button } from '../../widgets/Button';
import { type FigureColumn, FigureTable } from '../../widgets/FigureTable';
import { useFormat } from '../../widgets/use-format';
import { TradeOff } from './TradeOff';
import { wayInShort, wayWords } from './way-words';

/** Ways that the table shows of a surface; the search weighs more. */
const shown = 12;

/** The way that holds first, then those with the fewest ports. */
function waysInOrder({ ways }: SurfaceRuns): readonly WayFigures[] {
  return [...ways]
    .sort(
      (a, b) => Number(b.chosen) - Number(a.chosen) || a.entriesOutOfReach - b.entriesOutOfReach || a.ports - b.ports,
    )
    .slice(0, shown);
}

export interface WaysTableProps {
  readonly surface: SurfaceRuns;
  readonly letter: string;
}

/** Every way of wiring a surface beside the least possible; a press uses one for the whole surface, another leaves it to the search. */
export function WaysTable({ surface, letter }: WaysTableProps) {
  const { surfaceId } = surface;
  const { store } = useBenchStore();
  const { dispatch } = useActions();
  const isLate = useBench(selectRecomputing);
  const isByHand = useBench(({ plan }) =>
    plan.handChanges.some((change) => change.kind === 'way' && change.at.surfaceId === surfaceId),
  );
  const say = useSay();
  const format = useFormat();

  function use(way: WayOfWiring | null): void {
    const { plan, evaluation } = store.getState();
    const command = evaluation && wayCommand(plan, evaluation, { surfaceId }, way);
    if (!command) {
      say(way === null ? 'No zone has a way by hand here now.' : 'No zone of this surface can be wired so.');
      return;
    }
    const outcome = dispatch(command);
    if ('refused' in outcome) say(outcome.refused);
    else if (way === null) say(`${letter} is wired as the search chooses. Undo takes it back.`);
    else say(`${letter}: ${wayWords(way)}, by hand. Undo takes it back.`);
  }

  const columns: readonly FigureColumn<WayFigures>[] = [
    { key: 'way', title: 'Way of wiring', cell: ({ way }) => wayInShort(way) },
    {
      key: 'use',
      title: 'Use',
      cell: ({ way, chosen }) =>
        chosen ? (
          'in use'
        ) : (
          <Button small disabled={isLate} aria-label={`Use on ${letter}: ${wayWords(way)}`} onClick={() => use(way)}>
            Use
          </Button>
        ),
    },
    { key: 'ports', title: 'Ports', cell: ({ ports }) => ports },
    {
      key: 'panels',
      title: 'Panels a port',
      cell: ({ fewest, most }) => (fewest === most ? `${most}` : `${fewest} to ${most}`),
    },
    { key: 'fullest', title: 'Fullest', cell: ({ fullestShare }) => format(fullestShare, 'share') },
    { key: 'figures', title: 'Figures', cell: ({ figures }) => figures },
    { key: 'entry', title: 'Highest entry', cell: ({ highestEntryMm }) => format(highestEntryMm, 'mm') },
    { key: 'cable', title: 'Cable, about', cell: ({ cableMm }) => format(cableMm, 'mm') },
  ];
  return (
    <>
      <FigureTable
        caption={`${letter}: ${surface.ports} ports, least possible ${surface.portsLeast}`}
        captioned
        columns={columns}
        rows={waysInOrder(surface)}
        keyOf={({ way }) => JSON.stringify(way)}
        isChosen={({ chosen }) => chosen}
      />
      <TradeOff ways={waysInOrder(surface)} portsLeast={surface.portsLeast} letter={letter} />
      {isByHand && (
        <p className="table-actions">
          <Button small disabled={isLate} onClick={() => use(null)}>
            {letter} as the search chooses
          </Button>
        </p>
      )}
    </>
  );
}
