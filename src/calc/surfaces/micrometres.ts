/** Whole micrometres of a length of the document, so that lengths add and compare exactly. */
export const toMicrometres = (mm: number): number => Math.round(mm * 1000);

export const fromMicrometres = (um: number): number => um / 1000;
