/** Who decides, wherever figures could hurt somebody. Chapter and sheet carry the caution that concerns them. */
export const cautions = {
  general:
    'These figures help to plan. Local code and a licensed electrician, a qualified rigger or a structural engineer decide.',
  electricity:
    'Electricity: these figures help to plan circuits, legs and supply. Local code and a licensed electrician decide on cables, devices, earthing and bonding, and test them before panels are switched on.',
  stackedLoad:
    'Stacked load: these figures help to plan masses and floor pressure. A structural engineer decides on frames, bracing, ballast and the floor.',
  hangingLoad:
    'Hanging load: these figures help to plan. A qualified rigger and a structural engineer decide on points, hoists, slings and the roof.',
  height: 'Work at height: local rules decide on access, guard rails and personal protection, and who may go up.',
  movingParts:
    'Moving parts: nobody stands under a ceiling that moves. A competent person decides on limits, emergency stop and supervision, and tries them first.',
  exits:
    'Exits: a nearly closed ring under a ceiling changes exits, emergency light, smoke detection and sprinkler cover. The fire authority decides.',
} as const;
