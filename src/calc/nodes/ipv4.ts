/** An IPv4 address as a whole number (RFC 791); the schema of the plan has seen to its form. */
export function readIpv4(text: string): number {
  return text.split('.').reduce((whole, part) => whole * 256 + Number(part), 0);
}

export function writeIpv4(address: number): string {
  return [24, 16, 8, 0].map((bits) => Math.floor(address / 2 ** bits) % 256).join('.');
}

/** The network of an address (RFC 4632): its own address, that of broadcasts, and those of the hosts between. */
export interface Network {
  readonly address: number;
  readonly firstHost: number;
  readonly lastHost: number;
  readonly broadcast: number;
}

/** `prefixBits` 8 to 30. */
export function networkOf(address: number, prefixBits: number): Network {
  const size = 2 ** (32 - prefixBits);
  const start = Math.floor(address / size) * size;
  return { address: start, firstHost: start + 1, lastHost: start + size - 2, broadcast: start + size - 1 };
}

const privateBlocks = [
  ['10.0.0.0', 8],
  ['172.16.0.0', 12],
  ['192.168.0.0', 16],
] as const;

/** Whether an address is of the private blocks of RFC 1918, which nobody else answers to. */
export function isPrivateIpv4(address: number): boolean {
  return privateBlocks.some(([block, bits]) => networkOf(address, bits).address === readIpv4(block));
}
