import { isRecord } from './is-record';
import type { Migration, UncheckedRecord } from './migration';

/**
 * Version 1 knew one node a zone and no return paths: neither the feed of the nodes nor delay, sync and addresses. What it
 * meant is said here in full, for these values must not follow the defaults of later versions.
 */
export const fromVersion1: Migration = {
  from: 1,
  migrate: (document) => ({
    feed: {
      zonesANode: 1,
      equalCanvases: true,
      spareNodes: 0,
      timing: 'reduced-2',
      containerId: null,
      linkId: null,
      bySurface: [],
    },
    delay: { steps: [], mostMs: null },
    sync: {
      reference: 'tri-level',
      outletsASplitter: 8,
      trackers: 0,
      phase: { nodes: inPhase, processors: inPhase, cameras: inPhase, trackers: inPhase },
    },
    addresses: {
      prefixBits: 24,
      nodes: '10.20.0.11',
      processors: '10.20.0.101',
      cameras: '10.20.0.201',
      trackers: '10.20.0.221',
      portsASwitch: 24,
    },
    ...document,
    ...(isRecord(document.signal) ? { signal: withoutReturns(document.signal) } : {}),
    ...(isRecord(document.catalogue) ? { catalogue: withNodeOutputs(document.catalogue) } : {}),
  }),
};

const inPhase = { amount: 0, unit: 'ms' };

function withoutReturns(signal: UncheckedRecord): UncheckedRecord {
  return { returns: 'none', ...signal, bySurface: each(signal.bySurface, { returns: null }) };
}

function withNodeOutputs(catalogue: UncheckedRecord): UncheckedRecord {
  return { ...catalogue, nodes: each(catalogue.nodes, { outputs: 1, canvasPixels: null }) };
}

function each(entries: unknown, missing: UncheckedRecord): unknown {
  if (!Array.isArray(entries)) return entries;
  return entries.map((entry: unknown) => (isRecord(entry) ? { ...missing, ...entry } : entry));
}
