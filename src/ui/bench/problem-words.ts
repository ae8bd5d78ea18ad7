import type { Problem } from '../storage/desk-state';

export interface ProblemWords {
  readonly title: string;
  /** What to do about it. */
  readonly advice: string;
}

const words: Readonly<Record<Problem['kind'], ProblemWords>> = {
  'too-large': {
    title: 'This file is too large',
    advice: 'Look whether it is the file you mean: a plan of 250,000 panels stays far below this size.',
  },
  'too-deep': {
    title: 'This is not a plan',
    advice: 'Look whether it is the file you mean. If it was changed by hand, compare it with an earlier copy.',
  },
  empty: {
    title: 'The file is empty',
    advice: 'It may not have been written to the end. Fetch it again, or open an earlier copy.',
  },
  'cut-short': {
    title: 'The file is not whole',
    advice: 'It may have been cut while it was copied or sent. Fetch it again, or open an earlier copy.',
  },
  'not-json': {
    title: 'The file cannot be read',
    advice: 'A plan is a JSON text. If it was changed by hand, look at the place that is named.',
  },
  'not-a-plan': {
    title: 'This is not a plan',
    advice: 'Look whether it is the file you mean: plans of this program begin with "format": "voussoir-plan".',
  },
  newer: {
    title: 'This plan was written by a newer version',
    advice: 'Open it with that version, or ask for a file saved by this one. It was not changed.',
  },
  invalid: {
    title: 'A value in this plan cannot stand',
    advice: 'Correct the value at the place that is named and open the file again. Nothing else was touched.',
  },
  cut: {
    title: 'The link is not whole',
    advice:
      'Mail and chat may cut a long link. Have it sent again on a line of its own, scan its code, or ask for a file.',
  },
  damaged: {
    title: 'The link cannot be read',
    advice: 'Copy it again as a whole, without a sign before or after it, scan its code, or ask for a file.',
  },
  'newer-form': {
    title: 'This link was made by a newer version',
    advice: 'Reload this page while you are on the network and open the link again, or ask for a file.',
  },
  'not-kept': {
    title: 'This plan is not on this device',
    advice:
      'Scan the code on the cover of the crew set: it holds the whole plan, which is then kept here. After that scan this code again.',
  },
  'not-ticks': {
    title: 'These are no ticks of the build log',
    advice: 'Ask for them again: a phone saves them to a file or sends them as a link from its build log.',
  },
  missing: {
    title: 'This plan is not here',
    advice: 'Open its file, choose another plan that this browser keeps, or begin a new one.',
  },
};

/** Title and advice for what could not be opened. */
export function problemWords({ kind }: Pick<Problem, 'kind'>): ProblemWords {
  return words[kind];
}
