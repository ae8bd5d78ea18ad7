import type { Power } from '../../plan/power';
import type { Check, Fix } from '../chapter';
import type { PanelPower } from '../panels/panel-views';
import { setFieldsFix } from '../set-fields-fix';
import type { PowerInputs } from './compute-power';
import { legScheme } from './leg-scheme';
import { panelCurrent } from './panel-current';
import { fitsWithin } from './panels-within';
import { usedPanels } from './used-panels';

const isAbove = (panel: PanelPower, nominalV: number) => !fitsWithin(nominalV, panel.power.highestV);
const isBelow = (panel: PanelPower, lowestV: number) => !fitsWithin(panel.power.lowestV, lowestV);

/** The other connection, where every panel stands its voltage and fits on a circuit. */
function otherConnection(power: Power, used: readonly PanelPower[]): { readonly fix: Fix } | undefined {
  const connection = power.connection === 'leg-to-leg' ? 'leg-to-neutral' : 'leg-to-leg';
  const { nominalV, lowestV } = legScheme({ ...power, connection });
  const suits = used.every(
    (panel) =>
      !isAbove(panel, nominalV) &&
      !isBelow(panel, lowestV) &&
      panelCurrent(panel.id, used, power.circuit, lowestV).panels > 0,
  );
  if (!suits) return undefined;
  const label = connection === 'leg-to-leg' ? 'Feed from leg to leg' : 'Feed from leg to neutral';
  return { fix: setFieldsFix(label, 'connection', [{ path: ['power', 'connection'], value: connection }]) };
}

/** Panels' supply range against the nominal voltage and the low end of the supply's range; the high end is not in the plan. */
export function checkVoltage({ power, panels, surfaces }: PowerInputs): Check[] {
  const { nominalV, lowestV } = legScheme(power);
  const used = usedPanels({ panels, surfaces });
  if (used.length === 0) return [];
  const above = used.filter((panel) => isAbove(panel, nominalV));
  const below = used.filter((panel) => isBelow(panel, lowestV));
  const highestOfAll = Math.min(...used.map((panel) => panel.power.highestV));
  const lowestOfAll = Math.max(...used.map((panel) => panel.power.lowestV));
  const places = (list: readonly PanelPower[]) =>
    list.slice(0, 50).map((panel) => ({ kind: 'item' as const, name: panel.name }));
  const common = { chapter: 'power', unit: 'V' } as const;
  return [
    {
      ...common,
      id: 'power.voltage-high',
      severity: above.length > 0 ? 'stop' : 'pass',
      measured: nominalV,
      limit: highestOfAll,
      where: places(above.length > 0 ? above : used),
      sentence: 'Panels are fed with {measured} nominal; their sheets allow up to {limit}.',
      ...(above.length > 0 ? otherConnection(power, used) : undefined),
    },
    {
      ...common,
      id: 'power.voltage-low',
      severity: below.length > 0 ? 'stop' : 'pass',
      measured: lowestV,
      limit: lowestOfAll,
      where: places(below.length > 0 ? below : used),
      sentence: 'The supply may fall to {measured}; the panels need at least {limit}.',
      ...(below.length > 0 ? otherConnection(power, used) : undefined),
    },
  ];
}
