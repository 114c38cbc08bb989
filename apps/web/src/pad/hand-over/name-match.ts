/** Names a member of staff's match in this page's address, so that a reload finds it again. */
export const nameMatch = (matchId: string): void => {
  const address = new URL(location.href);
  address.searchParams.set("match", matchId);
  history.replaceState(history.state, "", address.pathname + address.search);
};
