/**
 * How figures are read: asked at once also without a network, so that the screen can say so, and not asked again
 * while a person reads them.
 */
export const READING = {
  networkMode: "always",
  refetchOnReconnect: true,
  refetchOnWindowFocus: false,
  staleTime: 60_000,
} as const;
