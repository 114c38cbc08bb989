/** The value of one cookie in a `Cookie` header; undefined when it is absent or cannot be read. The first one counts. */
export const readCookie = (header: string | undefined, name: string): string | undefined => {
  const found = header
    ?.split(";")
    .map((pair) => pair.trim())
    .find((pair) => pair.startsWith(`${name}=`));
  if (found === undefined) return undefined;
  try {
    return decodeURIComponent(found.slice(name.length + 1));
  } catch (error) {
    if (error instanceof URIError) return undefined;
    throw error;
  }
};
