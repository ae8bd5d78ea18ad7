import type { TimingChoice } from '../../../src/calc/links/time-canvas';

/** The timing that a plan has unless it says otherwise. */
export const leastBlanking: TimingChoice = { timing: 'reduced-2', containerId: null };
