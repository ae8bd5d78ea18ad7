import { z } from 'zod';
import { buildLog } from './build-log';
import { findTwinSurface } from './find-twin-surface';
import { planContent } from './plan-content';
import { id } from './primitives';
import { revision } from './revision';
import { uniqueList } from './unique-list';

export const planFormat = 'voussoir-plan';
export const planVersion = 3;

/** The whole document. Unknown keys are errors; a dangling id is not: the evaluation reports it as a check. */
export const plan = z
  .strictObject({
    format: z.literal(planFormat),
    version: z.literal(planVersion),
    id,
    ...planContent.shape,
    /** What was given to the crew, the oldest first. */
    revisions: uniqueList(revision, 100),
    log: buildLog,
  })
  .superRefine((document, context) => {
    const twin = findTwinSurface(document);
    if (twin !== undefined) context.addIssue({ code: 'custom', path: twin.path, message: twin.reason });
  });
export type Plan = z.infer<typeof plan>;
