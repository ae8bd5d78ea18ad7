import { z } from 'zod';

/** An IPv4 address in dotted decimals (RFC 791). */
export const ipAddress = z
  .string()
  .regex(
    /^(?:(?:25[0-5]|2[0-4]\d|1\d\d|[1-9]?\d)\.){3}(?:25[0-5]|2[0-4]\d|1\d\d|[1-9]?\d)$/,
    'an address has four numbers from 0 to 255 with dots between',
  );

/** Networks of the stage: the first address of each kind of device, the next ones follow. */
export const addresses = z.strictObject({
  /** Bits of the network part. */
  prefixBits: z.int().min(8).max(30),
  nodes: ipAddress,
  processors: ipAddress,
  cameras: ipAddress,
  trackers: ipAddress,
  /** Ports of one network switch. */
  portsASwitch: z.int().min(4).max(1000),
});
export type Addresses = z.infer<typeof addresses>;

/** A private network (RFC 1918), a decade of addresses for each kind. */
export const defaultAddresses: Addresses = {
  prefixBits: 24,
  nodes: '10.20.0.11',
  processors: '10.20.0.101',
  cameras: '10.20.0.201',
  trackers: '10.20.0.221',
  portsASwitch: 24,
};
