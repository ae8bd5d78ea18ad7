import type { RenderNode } from '../../../calc/nodes/node-result';
import type { OutputsAsked } from '../../../files/make-outputs';
import { counted } from '../../../units/counted';
import { SearchProgress } from '../../bench/SearchProgress';
import type { OutputFile } from '../../bench/use-output-file';
import { useBench } from '../../state/use-bench';
import { useSweep } from '../../state/use-sweep';
import { Button } from '../../widgets/Button';
import { PictureCanvas } from './PictureCanvas';
import type { useFileSizes } from './use-file-sizes';

/** Small enough to be sent at once, large enough to tell where the runs go. */
const small: OutputsAsked = { make: 'screen-pictures', mostSide: 720, mostPixels: 6_000_000 };

/** The test picture of every node, small, with what it is saved as. */
export function NodePictures({
  nodes,
  ask,
  sizeOf,
}: {
  readonly nodes: readonly RenderNode[];
  readonly ask: OutputFile['ask'];
  readonly sizeOf: ReturnType<typeof useFileSizes>;
}) {
  const plan = useBench((state) => state.plan);
  const search = useSweep(plan, 'outputs', nodes.length === 0 ? undefined : small);
  const share = search.isCurrent ? (search.items.at(-1)?.done ?? 0) : 0;
  return (
    <>
      {nodes.length > 0 && share < 1 && <SearchProgress of={search} label="Painting test pictures" share={share} />}
      <ul className={search.isCurrent ? 'node-pictures' : 'node-pictures is-late'}>
        {nodes.map((node, index) => {
          const picture = search.items.find((item) => item.picture?.node === index)?.picture;
          return (
            <li key={node.name}>
              <div className="node-picture" style={{ aspectRatio: `${node.canvasWidth} / ${node.canvasHeight}` }}>
                {picture && <PictureCanvas picture={picture} label={`Test picture of ${node.name}`} />}
              </div>
              <p>
                <strong>{node.name}</strong>{' '}
                <span>
                  surface {node.letter}, {counted(node.crops.length, 'processor')}
                </span>
                <span className="figure">
                  {node.canvasWidth} × {node.canvasHeight}
                </span>
              </p>
              <div className="table-actions">
                {([8, 16] as const).map((bits) => (
                  <Button
                    key={bits}
                    small
                    aria-label={`Save the test picture of ${node.name} in ${bits} bits`}
                    onClick={() => ask({ make: 'picture', node: index, bits }, `Painting ${node.name}`)}
                  >
                    PNG, {bits} bit <span className="quiet">{sizeOf(`picture ${index} ${bits}`)}</span>
                  </Button>
                ))}
              </div>
            </li>
          );
        })}
      </ul>
    </>
  );
}
