/** Where to go after signing in: a page of this site, or the start page when the wish is anything else. */
export const safePath = (wish: string | undefined): string => {
  if (wish === undefined || !wish.startsWith("/")) return "/";
  const here = "http://here.invalid";
  if (!URL.canParse(wish, here)) return "/";
  const url = new URL(wish, here);
  return url.origin === here ? url.pathname + url.search : "/";
};
