import { expect, test } from 'vitest';
import { processorFor } from '../../../src/calc/finder/processor-for';
import { emptyPlan } from '../../../src/plan/empty-plan';

const plan = emptyPlan({ id: 'wish', name: 'Wish', lengths: 'metric' });
const [first, second] = plan.catalogue.processors;
const drivenBy = (...ids: string[]) => {
  const [panel] = plan.catalogue.panels;
  return {
    ...panel!,
    data: { ...panel!.data, drivenBy: ids.map((processorId) => ({ processorId, portPixels: null })) },
  };
};

test("processorFor keeps the stage's processor where it drives the panel", () => {
  expect(
    processorFor({ ...plan, signal: { ...plan.signal, processorId: second!.id } }, drivenBy(first!.id, second!.id)),
  ).toBe(second!.id);
});

test('processorFor takes the cheapest that drives the panel otherwise, and none where none does', () => {
  const without = { ...plan, signal: { ...plan.signal, processorId: null } };
  const cheapest = [first!, second!].sort((a, b) => a.purchase.price! - b.purchase.price!)[0]!;
  expect(processorFor(without, drivenBy(first!.id, second!.id))).toBe(cheapest.id);
  expect(processorFor(without, drivenBy('no-such'))).toBeNull();
});
