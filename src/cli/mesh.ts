import { createEvaluator } from '../calc/evaluate';
import { meshFiles, stageFile } from '../files/output-set';
import { outputsOf } from '../sheets/outputs-of';
import { stageParts } from '../sheets/stage-parts';
import { type Command, exitCodes } from './command';
import { complainOfStops } from './complain-of-stops';
import { readPlan } from './read-plan';
import { writeFile } from './write-file';

export const mesh: Command = {
  name: 'mesh',
  usage: 'mesh PLAN.json --out DIR [--vehicle]',
  files: 1,
  options: {
    '--out DIR': 'folder to write into; it is made where there is none',
    '--vehicle': 'the vehicle that must drive in stands before the opening of the whole stage',
  },
  summary:
    'The LED faces of every surface as glTF and as OBJ, in metres from the origin of the stage with y up; texture coordinates are the canvas of the surface, in glTF also that of the node. And the whole stage as glTF: every panel with its depth and under its name, floor and hall.',
  run({ file, options, out = '.' }, terminal) {
    const plan = readPlan(file, terminal);
    if (plan === null) return exitCodes.refused;
    const evaluation = createEvaluator().evaluate(plan);
    const whole = stageFile(stageParts(plan, evaluation), plan.name, options.has('--vehicle'));
    for (const made of [...meshFiles(outputsOf(evaluation), plan.name), whole]) {
      if (!writeFile(out, made, terminal)) return exitCodes.refused;
    }
    complainOfStops(evaluation.checks, terminal);
    return exitCodes.ok;
  },
};
