/** What links of ticks are packed against. Part of form 1: it never changes, what sits at its end is cheapest. */
export const tickDictionary1 =
  '{"format":"voussoir-ticks","version":1,"planId":"","planName":"","ticks":[{"step":"powered","of":"circuit","name":"D1-1","done":false,"who":"","atMs":18},{"step":"tested","of":"port","name":"1A-01","done":true,"who":"","atMs":17},{"step":"wired","of":"port","name":"2B-10","done":true,"who":"","atMs":1},{"step":"stands","of":"column","name":"A C1","done":true,"who":"","atMs":176';
