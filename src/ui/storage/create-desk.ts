import { createStore, type StoreApi } from 'zustand/vanilla';
import type { LinkedTicks } from '../../files/tick-link';
import type { ParsedPlan } from '../../plan/parse-plan';
import { parseTickList } from '../../plan/parse-tick-list';
import type { Plan } from '../../plan/plan';
import type { TickList } from '../../plan/tick-list';
import { isCopyKey } from '../state/copy-key';
import type { BenchStore, FirstDocument } from '../state/create-bench-store';
import type { PageId } from '../state/pages';
import { type Address, readAddress } from './address';
import { createAutosave } from './autosave';
import type { DeskActions, DeskState, Filed, Problem } from './desk-state';
import type { DocumentChannel } from './document-channel';
import type { DocumentLock } from './document-lock';
import { findByPlanId } from './find-by-plan-id';
import type { PlanShelf } from './plan-shelf';
import type { ReadShare } from './read-share';
import { ticksKept } from './ticks-kept';
import { readViewMemory, type TextStore, writeViewMemory } from './view-memory';

export interface DeskParts {
  readonly shelf: PlanShelf;
  readonly lock: DocumentLock;
  readonly channel: DocumentChannel;
  readonly createBench: (first: FirstDocument) => BenchStore;
  readonly parse: (text: string) => ParsedPlan;
  readonly serialise: (plan: Plan) => string;
  /** The plan that the signs of a link carry. */
  readonly readShare: (signs: string) => Promise<ReadShare>;
  /** The ticks that the signs of a link carry. */
  readonly readTicks: (signs: string) => Promise<LinkedTicks>;
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
  /** Name of what is to be picked. */
  readonly sought?: string | null;
  readonly filed?: Filed;
}

const nothingKept: Pick<Problem, 'kind' | 'sentence' | 'path'> = {
  kind: 'missing',
  sentence: 'Nothing is kept under this address. It may have been kept by another browser, or cleared.',
  path: null,
};

const ofNoneKept: Problem = {
  kind: 'not-kept',
  from: 'link',
  name: 'an item of a plan',
  sentence: 'This browser keeps no copy of the plan that the link or code belongs to.',
  path: null,
  text: null,
};

type Refused = Extract<ReadShare | LinkedTicks, { readonly refused: unknown }>;

function problemOf(parsed: Refused): Pick<Problem, 'kind' | 'sentence' | 'path'> {
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
    ticks: null,
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

  function show(claimed: Claim, { plan, page, sought, filed }: Opening): void {
    const { key, held } = claimed;
    const { bench } = getState();
    shown?.release();
    shown = claimed;
    setState({ problem: null, filed: filed ?? null });
    if (bench) {
      bench.actions.open(key, plan, { follows: !held, ...(page ? { page } : {}) });
      if (sought) bench.actions.seek(sought);
      return;
    }
    const first = parts.createBench({ documentKey: key, plan, page: page ?? 'summary' });
    if (!held) first.actions.setFollows(true);
    if (sought) first.actions.seek(sought);
    first.store.subscribe((state, before) => {
      if (state.plan !== before.plan && state.loads === before.loads) autosave.changed(state.documentKey, state.plan);
    });
    setState({ bench: first });
  }

  async function openAsNew(opening: Opening, key = parts.newKey()): Promise<void> {
    show(await claim(key), opening);
    autosave.changed(key, opening.plan);
    await autosave.flush();
  }

  async function openKept(key: string, page?: PageId, sought: string | null = null): Promise<void> {
    if (shown?.key === key) {
      actions.closeProblem();
      turnTo(page ?? null, sought);
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
    show(claimed, { plan: parsed.plan, page, sought });
    setState({ kept: { kind: 'kept', atMs: entry?.keptAtMs ?? parts.now() } });
  }

  /** Turns the bench as it is to a page, and picks what has this name. */
  function turnTo(page: PageId | null, sought: string | null): void {
    const bench = getState().bench?.actions;
    if (page !== null && page !== open()?.page) bench?.goTo(page);
    if (sought !== null) bench?.seek(sought);
  }

  /** Opens the copy of a shared plan, which is made where the link is opened for the first time. Replaces nothing. */
  async function openShared(signs: string, { page, sought }: Address): Promise<void> {
    const shared = await parts.readShare(signs);
    if ('refused' in shared) {
      actions.refuse({ ...problemOf(shared), from: 'link', name: 'a shared plan', text: null });
      return;
    }
    const kept = await shelf.read(shared.key).catch(() => null);
    if (kept !== null || shown?.key === shared.key) await openKept(shared.key, page ?? undefined, sought);
    else {
      // What was ticked on an earlier copy is built, whatever the newer plan says.
      await autosave.flush();
      const ticks = await ticksKept(shelf, parts.parse, shared.plan.id).catch(() => []);
      const plan = ticks.length === 0 ? shared.plan : { ...shared.plan, log: { ticks: [...ticks] } };
      await openAsNew({ plan, page: page ?? undefined, sought }, shared.key);
    }
  }

  /** Opens the kept document of a plan, whatever its key. */
  async function openOf(planId: string, { page, sought }: Address): Promise<void> {
    const isOpen = open()?.plan.id === planId;
    if (isOpen && shown !== null && !isCopyKey(shown.key)) {
      await openKept(shown.key, page ?? undefined, sought);
      return;
    }
    const found = await findByPlanId(shelf, parts.parse, planId).catch(() => null);
    const key = found ?? (isOpen ? shown?.key : undefined);
    if (key === undefined) actions.refuse(ofNoneKept);
    else await openKept(key, page ?? undefined, sought);
  }

  /** Holds ticks for the bench, and opens the plan that they belong to where it is kept. */
  async function holdTicks(list: TickList): Promise<void> {
    if (getState().bench) actions.closeProblem();
    if (open()?.plan.id !== list.planId) {
      const kept = await findByPlanId(shelf, parts.parse, list.planId).catch(() => null);
      if (kept !== null) await openKept(kept);
    }
    setState({ ticks: list });
  }

  async function openTicks(signs: string): Promise<void> {
    const read = await parts.readTicks(signs);
    if ('refused' in read)
      actions.refuse({ ...problemOf(read), from: 'link', name: 'ticks of the build log', text: null });
    else await holdTicks(read.list);
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
      const address = readAddress(hash);
      const { key, page, sought, share, of, ticks } = address;
      if (ticks !== null) {
        await openTicks(ticks);
        if (getState().bench || getState().problem) return;
      }
      try {
        const entries = await shelf.list();
        setState({ firstVisit: entries.length === 0 && share === null });
        const kept = key ?? entries[0]?.key;
        if (share === null && of === null && kept !== undefined) {
          await openKept(kept, page ?? undefined, sought);
          return;
        }
      } catch {
        // Storage is refused: the sample opens, and its first write says that nothing is kept.
        setState({ firstVisit: share === null });
      }
      if (share !== null) await openShared(share, address);
      else if (of !== null) await openOf(of, address);
      else await openAsNew({ plan: await parts.sample(), page: page ?? undefined, sought });
    },
    async visit(hash) {
      const address = readAddress(hash);
      const { key, page, sought, share, of, ticks } = address;
      if (ticks !== null) await openTicks(ticks);
      else if (share !== null) await openShared(share, address);
      else if (of !== null) await openOf(of, address);
      else if (key !== null && key !== open()?.documentKey) await openKept(key, page ?? undefined, sought);
      else turnTo(page, sought);
    },
    openKept,
    async openFile(file) {
      const parsed = parts.parse(file.text);
      const ticks = 'refused' in parsed && parsed.refused === 'not-a-plan' ? parseTickList(file.text) : null;
      if (ticks && 'list' in ticks) {
        await holdTicks(ticks.list);
        return;
      }
      if (ticks && ticks.refused !== 'not-ticks') {
        actions.refuse({ ...problemOf(ticks), from: 'file', name: file.name, text: file.text });
        return;
      }
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
    async makeMine() {
      const plan = open()?.plan;
      if (plan) await openAsNew({ plan: { ...plan, id: parts.newKey() } });
    },
    dropTicks: () => setState({ ticks: null }),
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
