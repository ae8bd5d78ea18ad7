import table from '../../../shared/ethernet-frame.json';

const { preambleBytes, headerBytes, dataBytes, checkBytes, gapBytes } = table;

/** Bytes of the longest untagged frame: what it carries, and what it takes on the wire with preamble and gap. */
export const ethernetFrame = {
  dataBytes,
  wireBytes: preambleBytes + headerBytes + dataBytes + checkBytes + gapBytes,
  source: `${table.edition}, ${table.clause}`,
} as const;
