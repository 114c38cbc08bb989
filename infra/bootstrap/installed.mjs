/**
 * Compares what npm says it installed (`node_modules/.package-lock.json`) with `package-lock.json`, so that a
 * person who ran `npm install` does not wait for a second installation.
 * @param {string} lockText package-lock.json
 * @param {string} installedText node_modules/.package-lock.json
 * @returns {boolean} true if every package that has to be there is, in the same version, and no other
 */
export function sameInstallation(lockText, installedText) {
  const wanted = packagesOf(lockText);
  const found = packagesOf(installedText);
  if (wanted === undefined || found === undefined) return false;
  const isPackage = (path) => path.includes("node_modules/");
  const missing = Object.entries(wanted).filter(([path, entry]) => {
    if (!isPackage(path) || found[path]) return false;
    return !(entry.optional || entry.devOptional || entry.peer);
  });
  const different = Object.entries(found).filter(
    ([path, entry]) => isPackage(path) && wanted[path]?.version !== entry.version,
  );
  return missing.length === 0 && different.length === 0;
}

function packagesOf(text) {
  try {
    return JSON.parse(text).packages;
  } catch {
    // Cut off by a crash: not an installation to trust.
    return undefined;
  }
}
