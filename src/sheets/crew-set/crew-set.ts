import type { Evaluation } from '../../calc/evaluation';
import type { Plan } from '../../plan/plan';
import { stageParts } from '../stage-parts';
import { billPart } from './bill-part';
import { changesPart } from './changes-part';
import { checkSheetPart } from './check-sheet-part';
import { circuitsPart } from './circuits-part';
import { commissioningPart } from './commissioning-part';
import { countsPart } from './counts-part';
import { coverPart } from './cover-part';
import type { CrewPart } from './crew-part';
import type { CrewSetOptions } from './crew-set-options';
import { portsPart } from './ports-part';
import { elevationPart, fromAbovePart } from './stage-part';
import { surfacesPart } from './surfaces-part';
import { zonesPart } from './zones-part';

/** Everything that a crew needs on paper, in the order in which it stands in the set; parts without content are left out. */
export function crewSet(plan: Plan, evaluation: Evaluation, options: CrewSetOptions): readonly CrewPart[] {
  const parts = stageParts(plan, evaluation);
  return [
    coverPart(plan, evaluation, options),
    changesPart(options),
    billPart(evaluation.materials.results),
    surfacesPart(parts, 'wall', 'behind', options),
    surfacesPart(parts, 'wall', 'inside', options),
    surfacesPart(parts, 'ceiling', 'inside', options),
    surfacesPart(parts, 'ceiling', 'behind', options),
    fromAbovePart(parts, options),
    elevationPart(parts, options),
    zonesPart(parts, evaluation.nodes.results, options),
    portsPart(parts),
    circuitsPart(parts),
    countsPart(parts),
    checkSheetPart(evaluation),
    commissioningPart(plan, evaluation, options.display),
  ].filter((part) => part !== null);
}
