import { bench, describe } from 'vitest';
import { pictureFiles } from '../../src/files/output-set';
import { wallOfNodes } from './wall-of-nodes';

const few = { warmupIterations: 1, iterations: 3 };

/** A set of twelve takes twelve times as long: nodes are painted one by one. */
describe('test picture of one node of 2,880 x 2,688 px', () => {
  bench('in 8 bits', () => void [...pictureFiles(wallOfNodes(1, 8))], few);
  bench('in 8 bits and in 16', () => void [...pictureFiles(wallOfNodes(1, 10))], few);
});
