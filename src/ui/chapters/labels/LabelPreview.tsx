import { useMemo, useState } from 'react';
import type { LabelSheets } from '../../../sheets/labels/lay-out-labels';
import { PageView } from '../../drawings/PageView';
import { Button } from '../../widgets/Button';

/** One sheet of labels as it will be printed, and the way to the others. */
export function LabelPreview({ sheets }: { readonly sheets: LabelSheets }) {
  const [wanted, setWanted] = useState(0);
  const index = Math.min(wanted, sheets.count - 1);
  const page = useMemo(() => sheets.page(index), [sheets, index]);
  return (
    <figure className="label-preview">
      <figcaption>
        <span>
          Sheet {index + 1} of {sheets.count}
        </span>
        <Button small disabled={index === 0} onClick={() => setWanted(index - 1)}>
          Sheet before
        </Button>
        <Button small disabled={index === sheets.count - 1} onClick={() => setWanted(index + 1)}>
          Next sheet
        </Button>
      </figcaption>
      <PageView page={page} />
    </figure>
  );
}
