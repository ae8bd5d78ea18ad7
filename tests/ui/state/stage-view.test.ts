import { expect, test } from 'vitest';
import { keepStageView, lastStageView } from '../../../src/ui/state/stage-view';

test('lastStageView is nothing before anybody looked, then what was kept last', () => {
  expect(lastStageView()).toBeNull();
  keepStageView({ position: [1, 2, 3], target: [0, 0, 0] });
  keepStageView({ position: [4, 5, 6], target: [0, 1, 0] });
  expect(lastStageView()).toEqual({ position: [4, 5, 6], target: [0, 1, 0] });
});
