import { useEffect, useRef, useState } from 'react';
import type { PlanFileAsked } from '../../files/make-plan-file';
import { useBench } from '../state/use-bench';
import { type Sweep, useSweep } from '../state/use-sweep';
import { useFormat } from '../widgets/use-format';
import { downloadBytes } from './download-bytes';
import { useSay } from './notice-context';

export interface OutputFile {
  /** Asks the worker for a file, which is handed to the browser once it is made; another one asked before takes its place. */
  readonly ask: (asked: PlanFileAsked, label: string) => void;
  /** What is being made, for the bar that shows how far it is; null while nothing is. */
  readonly label: string | null;
  readonly search: Sweep<'outputs'>;
  readonly share: number;
}

/** Files of the plan, made one at a time in the worker. */
export function useOutputFile(): OutputFile {
  const plan = useBench((state) => state.plan);
  const say = useSay();
  const format = useFormat();
  const [wanted, setWanted] = useState<{ readonly asked: PlanFileAsked; readonly label: string } | null>(null);
  const search = useSweep(plan, 'outputs', wanted?.asked);
  const made = wanted !== null && search.isCurrent ? search.answer : null;
  const latest = useRef({ say, format, name: plan.name });
  useEffect(() => {
    latest.current = { say, format, name: plan.name };
  });
  useEffect(() => {
    if (made === null) return;
    const { name } = latest.current;
    downloadBytes(made.bytes, `${name} ${made.name}`, typeOf(made.name));
    latest.current.say(`${made.name}: ${latest.current.format(Math.ceil(made.bytes.length / 1000), 'count')} kB`);
    setWanted(null);
  }, [made]);
  return {
    ask: (asked, label) => setWanted({ asked, label }),
    label: wanted?.label ?? null,
    search,
    share: search.isCurrent ? (search.items.at(-1)?.done ?? 0) : 0,
  };
}

const types: Readonly<Record<string, string>> = {
  png: 'image/png',
  csv: 'text/csv',
  pdf: 'application/pdf',
  glb: 'model/gltf-binary',
  zip: 'application/zip',
  xlsx: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
};

function typeOf(name: string): string {
  return types[name.slice(name.lastIndexOf('.') + 1)] ?? 'application/octet-stream';
}
