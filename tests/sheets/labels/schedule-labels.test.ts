import { describe, expect, it } from 'vitest';
import { scheduleLabels } from '../../../src/sheets/labels/schedule-labels';
import { allLabels, smallStage } from './labelled-fixture';

const cables = allLabels(smallStage());

describe('scheduleLabels', () => {
  it('has a row for each end, both ends of a cable one after the other', () => {
    const schedule = scheduleLabels(cables, { address: null, planId: 'p' });
    expect(schedule.count).toBe(2 * cables.length);
    expect(schedule.row(0)).toEqual(['Trunk', '1A', 'from', 'Processor 1', 'Breakout 1A', 'Fibre trunk', 1, null]);
    expect(schedule.row(1)).toEqual(['Trunk', '1A', 'to', 'Processor 1', 'Breakout 1A', 'Fibre trunk', 1, null]);
    expect([schedule.panelOf(0), schedule.panelOf(2)]).toEqual([null, cables[1]!.panel]);
  });
  it('leads to the item where the address of the page is known', () => {
    const { row } = scheduleLabels(cables, { address: 'https://plan.example/', planId: 'p' });
    expect(row(0).at(-1)).toBe('https://plan.example/#of=p&breakout=1A');
    expect(row(2).at(-1)).toBe(`https://plan.example/#of=p&port=${cables[1]!.name}`);
  });
});
