import { z } from 'zod';
import { planContent } from './plan-content';
import { id, longText, shortLabel } from './primitives';

/** A day on the user's calendar: '2026-11-25'. */
export const day = z.iso.date();

/** The plan as it was given to the crew: its content on that day, under the name that their sheets carry. */
export const revision = z.strictObject({
  id,
  name: shortLabel.min(1),
  issuedOn: day,
  note: longText,
  content: planContent,
});
export type Revision = z.infer<typeof revision>;
