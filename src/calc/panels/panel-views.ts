import type { Panel } from '../../plan/panel';

/** The parts of a panel's record that each chapter takes, so that a price edit moves no geometry and a mass edit no wiring. */
export type PanelShape = Pick<Panel, 'id' | 'name' | 'size' | 'pixels' | 'lock'>;
export type PanelData = Pick<Panel, 'id' | 'name' | 'pixels' | 'data' | 'light'>;
export type PanelPower = Pick<Panel, 'id' | 'name' | 'size' | 'power'>;
export type PanelMass = Pick<Panel, 'id' | 'name' | 'size' | 'massKg'>;
export type PanelPurchase = Pick<Panel, 'id' | 'name' | 'massKg' | 'purchase'>;
