import { lazy, Suspense, useMemo, useState } from 'react';
import { stageParts } from '../../../sheets/stage-parts';
import { downloadBytes } from '../../bench/download-bytes';
import { useSay } from '../../bench/notice-context';
import { useStagePictures } from '../../bench/use-stage-pictures';
import type { PhotoAsked } from '../../drawings/stage/StagePhoto';
import { lastStageView } from '../../state/stage-view';
import { useBench } from '../../state/use-bench';
import { useDrawing } from '../../state/use-drawing';
import { useEvaluation } from '../../state/use-evaluation';
import { Button } from '../../widgets/Button';
import { ChoiceField } from '../../widgets/ChoiceField';
import { CountField } from '../../widgets/CountField';
import { useFormat } from '../../widgets/use-format';

const StagePhoto = lazy(async () => ({ default: (await import('../../drawings/stage/StagePhoto')).StagePhoto }));

type From = 'looked' | 'corner' | 'eye' | 'top';

const froms: readonly { readonly value: From; readonly label: string }[] = [
  { value: 'looked', label: 'as it was last looked at' },
  { value: 'corner', label: 'the corner' },
  { value: 'eye', label: 'eye level' },
  { value: 'top', label: 'above' },
];

/** Sides that a browser still packs; larger ones run out of memory. */
const sides = { least: 16, most: 8192 };

/** A picture of the model at a size of one's own, always on light paper, tinted as the drawing is. */
export function StagePictureFile() {
  const plan = useBench((state) => state.plan);
  const evaluation = useEvaluation((whole) => whole);
  const { tint } = useDrawing();
  const [size, setSize] = useState({ width: 3840, height: 2160 });
  const [from, setFrom] = useState<From>('looked');
  const [asked, setAsked] = useState<PhotoAsked | null>(null);
  const pictures = useStagePictures(asked !== null);
  const isPainted = pictures === null || pictures.pictures.length >= pictures.meshes.nodes.length;
  const say = useSay();
  const format = useFormat();
  const parts = useMemo(() => stageParts(plan, evaluation), [plan, evaluation]);
  const field = (side: 'width' | 'height', label: string) => (
    <CountField
      label={label}
      value={size[side]}
      {...sides}
      onCommit={(value) => {
        setSize({ ...size, [side]: value });
        return null;
      }}
    />
  );

  async function keep({ width, height }: PhotoAsked, picture: Blob | null): Promise<void> {
    setAsked(null);
    if (picture === null) {
      say('The browser could not make a picture of this size; a smaller one may do.');
      return;
    }
    const bytes = new Uint8Array(await picture.arrayBuffer());
    const name = `${plan.name} stage ${width} x ${height}.png`;
    downloadBytes(bytes, name, 'image/png');
    say(`${name}: ${format(Math.ceil(bytes.length / 1000), 'count')} kB`);
  }

  return (
    <>
      <div className="fields">
        {field('width', 'Width, px')}
        {field('height', 'Height, px')}
        <ChoiceField
          label="Seen from"
          value={from}
          choices={froms}
          onCommit={(value) => {
            setFrom(value);
            return null;
          }}
        />
      </div>
      <div className="table-actions">
        <Button
          aria-label="Save the picture of the stage as PNG"
          disabled={asked !== null}
          onClick={() => setAsked({ ...size, from: from === 'looked' ? (lastStageView() ?? 'corner') : from })}
        >
          {asked === null ? 'PNG' : 'Drawing …'}
        </Button>
      </div>
      {asked !== null && isPainted && (
        <Suspense>
          <StagePhoto
            parts={parts}
            tint={tint}
            pictures={pictures}
            asked={asked}
            onDone={(picture) => void keep(asked, picture)}
          />
        </Suspense>
      )}
    </>
  );
}
