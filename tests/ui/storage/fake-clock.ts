export interface FakeClock {
  readonly now: () => number;
  readonly wait: (ms: number, call: () => void) => () => void;
  /** Moves on, lets what is due happen in order, and lets promises settle. */
  pass(ms: number): Promise<void>;
}

export function createFakeClock(): FakeClock {
  let now = 0;
  let waiting: { readonly at: number; readonly call: () => void }[] = [];
  const settle = () => new Promise<void>((resolve) => setTimeout(resolve));
  return {
    now: () => now,
    wait(ms, call) {
      const one = { at: now + ms, call };
      waiting.push(one);
      return () => {
        waiting = waiting.filter((other) => other !== one);
      };
    },
    async pass(ms) {
      const until = now + ms;
      for (;;) {
        const next = waiting.filter(({ at }) => at <= until).toSorted((one, other) => one.at - other.at)[0];
        if (!next) break;
        waiting = waiting.filter((one) => one !== next);
        now = next.at;
        next.call();
        await settle();
      }
      now = until;
      await settle();
    },
  };
}
