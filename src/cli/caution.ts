/** Stands below every list of figures that somebody may build from. */
export const caution =
  'These figures help to plan. Local code and a licensed electrician, a qualified rigger or a structural engineer decide.';
