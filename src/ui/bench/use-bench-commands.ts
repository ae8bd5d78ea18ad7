import { useMemo } from 'react';
import { serialisePlan } from '../../plan/serialise-plan';
import { useBenchStore } from '../state/use-bench';
import { FileTooLarge, pickPlanFile, planFileName, readPlanFile, savePlanFile } from '../storage/plan-file';
import { useDeskStore } from '../storage/use-desk';
import { useSay } from './notice-context';

/** What can be done with the plan as a whole; buttons, menus and shortcuts share these. */
export interface BenchCommands {
  startNew(): Promise<void>;
  openFile(): Promise<void>;
  openDropped(file: File): Promise<void>;
  save(): Promise<void>;
  print(): void;
  undo(): void;
  redo(): void;
  toggleLengths(): void;
  toggleTheme(): void;
}

function reasonOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}

export function useBenchCommands(): BenchCommands {
  const { store, actions } = useBenchStore();
  const desk = useDeskStore();
  const say = useSay();
  return useMemo(() => {
    async function openWith(read: () => ReturnType<typeof pickPlanFile>, name: string): Promise<void> {
      try {
        const file = await read();
        if (file) await desk.actions.openFile(file);
      } catch (error) {
        if (!(error instanceof FileTooLarge)) {
          say(`The file could not be read: ${reasonOf(error)}`);
          return;
        }
        const problem = { kind: 'too-large', from: 'file', sentence: error.message, path: null, text: null } as const;
        desk.actions.refuse({ ...problem, name });
      }
    }
    return {
      startNew: () => desk.actions.openBlank(),
      openFile: () => openWith(pickPlanFile, 'the chosen file'),
      openDropped: (file) => openWith(() => readPlanFile(file, null), file.name),
      async save() {
        const { plan } = store.getState();
        const { filed } = desk.store.getState();
        const fileName = planFileName(plan);
        try {
          const saved = await savePlanFile(serialisePlan(plan), fileName, filed?.handle ?? null);
          if (!saved) return;
          desk.actions.noteFiled({ plan, fileName, handle: saved.handle, atMs: Date.now() });
          say(`Saved to a file: ${saved.handle?.name ?? fileName}`);
        } catch (error) {
          say(`The file could not be written: ${reasonOf(error)}`);
        }
      },
      print: () => globalThis.print(),
      undo: actions.undo,
      redo: actions.redo,
      toggleTheme() {
        const isDark = document.documentElement.dataset.theme === 'dark';
        desk.actions.remember({ theme: isDark ? 'light' : 'dark' });
      },
      toggleLengths() {
        const lengths = store.getState().plan.lengths === 'feet' ? 'metric' : 'feet';
        const outcome = actions.setField(
          ['lengths'],
          lengths,
          lengths === 'feet' ? 'lengths in feet' : 'lengths in metres',
        );
        if ('refused' in outcome) say(outcome.refused);
      },
    };
  }, [store, actions, desk, say]);
}
