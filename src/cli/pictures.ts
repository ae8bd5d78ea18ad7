import { createEvaluator } from '../calc/evaluate';
import { filesToZip } from '../files/files-to-zip';
import { outputSet, pictureFiles } from '../files/output-set';
import { outputsOf } from '../sheets/outputs-of';
import { type Command, exitCodes } from './command';
import { complainOfStops } from './complain-of-stops';
import { readPlan } from './read-plan';
import { writeFile } from './write-file';

export const pictures: Command = {
  name: 'pictures',
  usage: 'pictures PLAN.json --out DIR [--zip]',
  files: 1,
  options: {
    '--out DIR': 'folder to write into; it is made where there is none',
    '--zip': 'one file, outputs.zip, with pixel map, geometry and notes beside the pictures',
  },
  summary:
    'The test picture of every render node as PNG, at the exact size of its canvas: in 8 bits, and in 16 where the node sends more. Ends with 1 where no node feeds a panel.',
  run({ file, options, out = '.' }, terminal) {
    const plan = readPlan(file, terminal);
    if (plan === null) return exitCodes.refused;
    const evaluation = createEvaluator().evaluate(plan);
    const inputs = outputsOf(evaluation);
    if (inputs.fed.nodes.length === 0) {
      terminal.complain('voussoir: no node feeds a panel of this plan, so there is no picture; see check\n');
      return exitCodes.stopped;
    }
    if (options.has('--zip')) {
      const bytes = filesToZip([...outputSet(inputs, plan.name)].map((made) => made.file));
      if (!writeFile(out, { name: 'outputs.zip', bytes }, terminal)) return exitCodes.refused;
    } else {
      for (const made of pictureFiles(inputs)) if (!writeFile(out, made.file, terminal)) return exitCodes.refused;
    }
    complainOfStops(evaluation.checks, terminal);
    return exitCodes.ok;
  },
};
