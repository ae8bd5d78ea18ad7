/** Keys from the plan's root: ['walls', 0, 'path', 2, 'columns']. */
export type Path = readonly (string | number)[];
