/**
 * Why this version of Node cannot run Voussoir, in one line; null where it can.
 * The bounds are those of the build tools, the same as `engines` in package.json says.
 * @param {string} version as process.versions.node gives it, '20.19.0'
 */
export function whyNodeIsRefused(version) {
  const [major = Number.NaN, minor = Number.NaN] = version.split('.').map(Number);
  if (Number.isNaN(major) || Number.isNaN(minor)) return `Voussoir cannot read the version of Node: "${version}".`;
  const fits = (major === 20 && minor >= 19) || (major === 22 && minor >= 12) || major > 22;
  return fits ? null : `Voussoir needs Node 20.19 or a later 20, or 22.12 and newer; this is Node ${version}.`;
}
