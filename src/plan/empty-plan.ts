import { defaultAddresses } from './addresses';
import { emptyBuildLog } from './build-log';
import { starterCatalogue } from './catalogue/starter-catalogue';
import { defaultDelay } from './delay';
import { defaultFeed } from './feed';
import { defaultMaterials } from './materials';
import { defaultPicture } from './picture';
import { type Plan, planFormat, planVersion } from './plan';
import { defaultPower120, defaultPower230 } from './power';
import { defaultSignal } from './signal';
import { defaultHeat, defaultMasses } from './site';
import { defaultSync } from './sync';
import { defaultWish } from './wish';

/** What only the person who begins a plan can say. */
export interface Beginning {
  readonly id: string;
  readonly name: string;
  /** feet: 120/208 V and dollars as well, until changed; metric: 230/400 V and euros. */
  readonly lengths: Plan['lengths'];
}

/** A new plan: a wish that states nothing yet, the starter catalogue, usual defaults, and no surface. */
export function emptyPlan({ id, name, lengths }: Beginning): Plan {
  const inFeet = lengths === 'feet';
  return {
    format: planFormat,
    version: planVersion,
    id,
    name,
    revision: 'A',
    note: '',
    lengths,
    currency: inFeet ? 'USD' : 'EUR',
    wish: defaultWish,
    catalogue: starterCatalogue,
    walls: [],
    ceilings: [],
    picture: defaultPicture,
    signal: { ...defaultSignal, processorId: 'weir-24', nodeId: 'mill-4' },
    feed: defaultFeed,
    delay: defaultDelay,
    sync: defaultSync,
    addresses: defaultAddresses,
    existingWiring: null,
    handChanges: [],
    power: inFeet ? { ...defaultPower120, distroId: 'wharf-400' } : { ...defaultPower230, distroId: 'quay-125' },
    heat: defaultHeat,
    masses: defaultMasses,
    materials: defaultMaterials,
    alternatives: [],
    names: null,
    revisions: [],
    log: emptyBuildLog,
  };
}
