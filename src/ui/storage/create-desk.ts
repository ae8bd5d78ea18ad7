import { createStore, type StoreApi } from 'zustand/vanilla';
import type { ParsedPlan } from '../../plan/parse-plan';
import type { Plan } from '../../plan/plan';
import type { BenchStore, FirstDocument } from '../state/create-bench-store';
import type { PageId } from '../state/pages';
import { readAddress } from './address';
import { createAutosave } from './autosave';
import type { DeskActions, DeskState, Filed, Problem } from './desk-state';
import type { DocumentChannel } from './document-channel';
import type { DocumentLock } from './document-lock';
import type { PlanShelf } from './plan-shelf';
import { readViewMemory, type TextStore, writeViewMemory } from './view-memory';

export interface DeskParts {
  readonly shelf: PlanShelf;
  readonly lock: DocumentLock;
  readonly channel: DocumentChannel;
  readonly createBench: (first: FirstDocument) => BenchStore;
  readonly parse: (text: string) => ParsedPlan;
  readonly serialise: (plan: Plan) => string;
  /** Where small habits are remembered; null where the browser has no such place. */
  readonly localStore: TextStore | null;
  readonly sample: () => Promise<Plan>;
  readonly blank: () => Plan;
  /** A key that no document has yet. */
  readonly newKey: () => string;
  readonly now: () => number;
  readonly wait: (ms: number, call: () => void) => () => void;
}

export interface Desk {
  readonly store: StoreApi<DeskState>;
  readonly actions: DeskActions;
}

interface Claim {
  readonly key: string;
  readonly held: boolean;
  readonly release: () => void;
}

interface Opening {
  readonly plan: Plan;
  readonly page?: PageId | undefined;
  /** Name of a panel to pick. */
  readonly panel?: string | null;
  readonly filed?: Filed;
}

const nothingKept: Pick<Problem, 'kind' | 'sentence' | 'path'> = {
  kind: 'missing',
  sentence: 'Nothing is kept under this address. It may have been kept by another browser, or cleared.',
  path: null,
};

function problemOf(parsed: Exclude<ParsedPlan, { readonly plan: Plan }>): Pick<Problem, 'kind' | 'sentence' | 'path'> {
  return { kind: parsed.refused, sentence: parsed.sentence, path: parsed.path ?? null };
}

/** Decides which document is on the bench, where it is kept, and which tab writes it. */
export function createDesk(parts: DeskParts): Desk {
  const { shelf, channel } = parts;
  const store = createStore<DeskState>(() => ({
    bench: null,
    problem: null,
    kept: { kind: 'changed' },
    filed: null,
    firstVisit: false,
    memory: readViewMemory(parts.localStore),
  }));
  const { getState, setState } = store;
  const autosave = createAutosave({
    ...parts,
    onState: (kept) => setState({ kept }),
    onWritten: (key) => channel.tell(key),
  });
  /** Claim of the document on the bench. */
  let shown: Claim | null = null;

  const open = () => getState().bench?.store.getState();

  /** Takes over what another tab wrote. A load, not a change: it is not written again. */
  async function followShelf(claimed: Claim, mayWrite: boolean): Promise<void> {
    const text = await shelf.read(claimed.key).catch(() => null);
    const { bench } = getState();
    const state = bench?.store.getState();
    if (!bench || !state?.follows || claimed !== shown) return;
    const parsed = text === null ? null : parts.parse(text);
    if (parsed && 'plan' in parsed && parts.serialise(parsed.plan) !== parts.serialise(state.plan)) {
      bench.actions.follow(parsed.plan);
    }
    if (mayWrite) bench.actions.setFollows(false);
  }

  /** Asks for the right to write a document. What is open is written first; it stays claimed until `show` lets it go. */
  async function claim(key: string): Promise<Claim> {
    await autosave.flush();
    const mine: { claim: Claim | null } = { claim: null };
    const claimed = await parts.lock.claim(key, () => {
      if (mine.claim) void followShelf(mine.claim, true);
    });
    mine.claim = { key, held: claimed.held, release: claimed.release };
    return mine.claim;
  }

  function show(claimed: Claim, { plan, page, panel, filed }: Opening): void {
    const { key, held } = claimed;
    const { bench } = getState();
    shown?.release();
    shown = claimed;
    setState({ problem: null, filed: filed ?? null });
    if (bench) {
      bench.actions.open(key, plan, { follows: !held, ...(page ? { page } : {}) });
      if (panel) bench.actions.seek(panel);
      return;
    }
    const first = parts.createBench({ documentKey: key, plan, page: page ?? 'summary' });
    if (!held) first.actions.setFollows(true);
    if (panel) first.actions.seek(panel);
    first.store.subscribe((state, before) => {
      if (state.plan !== before.plan && state.loads === before.loads) autosave.changed(state.documentKey, state.plan);
    });
    setState({ bench: first });
  }

  async function openAsNew(opening: Opening): Promise<void> {
    const key = parts.newKey();
    show(await claim(key), opening);
    autosave.changed(key, opening.plan);
    await autosave.flush();
  }

  async function openKept(key: string, page?: PageId, panel: string | null = null): Promise<void> {
    if (shown?.key === key) {
      actions.closeProblem();
      if (panel) getState().bench?.actions.seek(panel);
      return;
    }
    const claimed = await claim(key);
    const entry = (await shelf.list().catch(() => [])).find((one) => one.key === key);
    const name = entry?.name ?? 'a plan of this browser';
    const text = await shelf.read(key).catch(() => null);
    const parsed = text === null ? null : parts.parse(text);
    if (!parsed || 'refused' in parsed) {
      claimed.release();
      actions.refuse({ ...(parsed ? problemOf(parsed) : nothingKept), from: 'browser', name, text });
      return;
    }
    show(claimed, { plan: parsed.plan, page, panel });
    setState({ kept: { kind: 'kept', atMs: entry?.keptAtMs ?? parts.now() } });
  }

  /** The kept document that holds exactly this text, so that opening a file twice does not keep it twice. */
  async function findTwin(plan: Plan, text: string): Promise<string | null> {
    for (const entry of await shelf.list()) {
      if (entry.name === plan.name && (await shelf.read(entry.key)) === text) return entry.key;
    }
    return null;
  }

  const actions: DeskActions = {
    async start(hash) {
      const { key, page, panel } = readAddress(hash);
      try {
        const entries = await shelf.list();
        setState({ firstVisit: entries.length === 0 });
        const kept = key ?? entries[0]?.key;
        if (kept !== undefined) {
          await openKept(kept, page ?? undefined, panel);
          return;
        }
      } catch {
        // Storage is refused: the sample opens, and its first write says that nothing is kept.
        setState({ firstVisit: true });
      }
      await openAsNew({ plan: await parts.sample(), page: page ?? undefined, panel });
    },
    async visit(hash) {
      const { key, page, panel } = readAddress(hash);
      const state = open();
      if (key !== null && key !== state?.documentKey) {
        await openKept(key, page ?? undefined, panel);
        return;
      }
      const bench = getState().bench?.actions;
      if (page !== null && page !== state?.page) bench?.goTo(page);
      if (panel !== null) bench?.seek(panel);
    },
    openKept,
    async openFile(file) {
      const parsed = parts.parse(file.text);
      if ('refused' in parsed) {
        actions.refuse({ ...problemOf(parsed), from: 'file', name: file.name, text: file.text });
        return;
      }
      const { plan } = parsed;
      const filed: Filed = { plan, fileName: file.name, handle: file.handle, atMs: parts.now() };
      const twin = await findTwin(plan, parts.serialise(plan)).catch(() => null);
      if (twin === null) {
        await openAsNew({ plan, filed });
        return;
      }
      await openKept(twin);
      const opened = open();
      if (opened) setState({ filed: { ...filed, plan: opened.plan } });
    },
    openSample: async () => openAsNew({ plan: await parts.sample() }),
    openBlank: () => openAsNew({ plan: parts.blank(), page: 'wish' }),
    async takeCopy() {
      const plan = open()?.plan;
      if (plan) await openAsNew({ plan: { ...plan, name: `${plan.name.slice(0, 190)}, copy` } });
    },
    refuse: (problem) => setState({ problem }),
    closeProblem: () => setState({ problem: null }),
    noteFiled: (filed) => setState({ filed }),
    remember(change) {
      const memory = { ...getState().memory, ...change };
      setState({ memory });
      writeViewMemory(parts.localStore, memory);
    },
    list: () => shelf.list(),
    forget: (key) => shelf.remove(key),
    flush: () => autosave.flush(),
  };

  channel.hear((key) => {
    if (shown?.key === key && open()?.follows) void followShelf(shown, false);
  });

  return { store, actions };
}
