/** Panels by id; the first of several with one id counts. */
export function panelsById<Panel extends { readonly id: string }>(
  panels: readonly Panel[],
): ReadonlyMap<string, Panel> {
  const byId = new Map<string, Panel>();
  for (const panel of panels) if (!byId.has(panel.id)) byId.set(panel.id, panel);
  return byId;
}
