import { type ReactNode, useCallback, useEffect, useMemo, useState } from 'react';
import { useStore } from 'zustand/react';
import { BenchContext } from '../state/bench-context';
import type { BenchStore } from '../state/create-bench-store';
import { selectShownPlan } from '../state/selectors';
import type { Desk } from '../storage/create-desk';
import type { Offline } from '../storage/create-offline';
import { DeskContext } from '../storage/desk-context';
import { OfflineContext } from '../storage/offline-context';
import { useDesk } from '../storage/use-desk';
import { DisplayContext } from '../widgets/display-context';
import { applyTheme } from './apply-theme';
import { Bench } from './Bench';
import { FaultBoundary } from './FaultBoundary';
import { NoticeContext, SaidContext } from './notice-context';
import { ProblemPage } from './ProblemPage';
import { useAddress } from './use-address';
import { useBenchCommands } from './use-bench-commands';

/** The program: the desk, and on it the bench or the reason why there is none. */
export function App({ desk, offline }: { readonly desk: Desk; readonly offline: Offline | null }) {
  return (
    <DeskContext value={desk}>
      <OfflineContext value={offline}>
        <Root />
      </OfflineContext>
    </DeskContext>
  );
}

function Root() {
  const bench = useDesk((state) => state.bench);
  const problem = useDesk((state) => state.problem);
  const theme = useDesk((state) => state.memory.theme);
  useEffect(() => applyTheme(theme), [theme]);
  if (problem) return <ProblemPage problem={problem} />;
  if (!bench) {
    return (
      <p className="starting" role="status">
        Opening …
      </p>
    );
  }
  return (
    <BenchContext value={bench}>
      <ShownAs bench={bench}>
        <Noticed>
          <Guarded />
        </Noticed>
      </ShownAs>
    </BenchContext>
  );
}

function Guarded() {
  const { save } = useBenchCommands();
  useAddress();
  return (
    <FaultBoundary of="The program" tryAgainWith={null} onSave={() => void save()}>
      <Bench />
    </FaultBoundary>
  );
}

/** Figures are written as the plan on the bench asks for. */
function ShownAs({ bench, children }: { readonly bench: BenchStore; readonly children: ReactNode }) {
  const lengths = useStore(bench.store, (state) => selectShownPlan(state).lengths);
  const currency = useStore(bench.store, (state) => selectShownPlan(state).currency);
  const locale = useStore(bench.store, (state) => state.locale);
  const options = useMemo(() => ({ lengths, currency, locale }), [lengths, currency, locale]);
  return <DisplayContext value={options}>{children}</DisplayContext>;
}

const noticeMs = 8000;

/** A line that says what belongs to no field, and goes by itself. */
function Noticed({ children }: { readonly children: ReactNode }) {
  const [notice, setNotice] = useState<{ readonly text: string } | null>(null);
  const say = useCallback((text: string) => setNotice({ text }), []);
  useEffect(() => {
    if (!notice) return;
    const timer = setTimeout(() => setNotice(null), noticeMs);
    return () => clearTimeout(timer);
  }, [notice]);
  return (
    <NoticeContext value={say}>
      <SaidContext value={notice?.text ?? null}>{children}</SaidContext>
    </NoticeContext>
  );
}
