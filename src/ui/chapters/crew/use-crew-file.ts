import { useEffect, useRef, useState } from 'react';
import type { CrewSetAsked } from '../../../files/make-crew-set';
import { downloadBytes } from '../../bench/download-bytes';
import { useSay } from '../../bench/notice-context';
import { loadPrintFonts } from '../../state/load-print-fonts';
import { useBench } from '../../state/use-bench';
import { type Sweep, useSweep } from '../../state/use-sweep';
import { useFormat } from '../../widgets/use-format';

export interface CrewFile {
  /** Makes the PDF of these choices in the worker and hands it to the browser. */
  readonly save: (asked: CrewSetAsked) => void;
  readonly search: Sweep<'crew'>;
  /** Part done, 0 to 1; null while nothing is made. */
  readonly share: number | null;
}

/** The set as a file, made one at a time. */
export function useCrewFile(): CrewFile {
  const plan = useBench((state) => state.plan);
  const say = useSay();
  const format = useFormat();
  const [wanted, setWanted] = useState<CrewSetAsked | null>(null);
  const search = useSweep(plan, 'crew', wanted ?? undefined);
  const made = wanted !== null && search.isCurrent ? search.answer : null;
  const latest = useRef({ say, format, name: plan.name });
  useEffect(() => {
    latest.current = { say, format, name: plan.name };
  });
  useEffect(() => {
    if (made === null) return;
    const { name, say: tell, format: write } = latest.current;
    downloadBytes(made.bytes, `${name} ${made.name}`, 'application/pdf');
    tell(`${made.name}: ${write(Math.ceil(made.bytes.length / 1000), 'count')} kB`);
    setWanted(null);
  }, [made]);
  const save = (asked: CrewSetAsked) => {
    loadPrintFonts().then(
      (fonts) => setWanted({ ...asked, fonts }),
      (error: unknown) => say(`The PDF could not be made: ${error instanceof Error ? error.message : String(error)}`),
    );
  };
  return { save, search, share: wanted === null ? null : search.isCurrent ? (search.items.at(-1)?.done ?? 0) : 0 };
}
