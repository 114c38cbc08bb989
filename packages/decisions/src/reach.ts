/** As much of a map as reaching needs. */
interface Reachable<K, V> {
  get(key: K): V | undefined;
  set(key: K, value: V): unknown;
}

/** The value at `key`, made and kept when it is first asked for. */
export const reach = <K, V>(map: Reachable<K, V>, key: K, make: () => V): V => {
  const known = map.get(key);
  if (known !== undefined) return known;
  const made = make();
  map.set(key, made);
  return made;
};
