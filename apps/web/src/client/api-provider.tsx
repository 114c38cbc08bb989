"use client";
import type { AppRouter } from "@courtloom/api";
import { QueryClient, QueryClientProvider } from "@tanstack/react-query";
import { createTRPCClient, httpLink } from "@trpc/client";
import { type ReactNode, useState } from "react";
import { TRPCProvider } from "./trpc.ts";

const createClients = () => ({
  // A refused change is shown at once; only the person decides to try it again.
  query: new QueryClient({ defaultOptions: { queries: { retry: 1 }, mutations: { retry: false } } }),
  trpc: createTRPCClient<AppRouter>({ links: [httpLink({ url: "/api/trpc" })] }),
});

/** Lets the screens below it call the procedures. The pad has none of this. */
export function ApiProvider({ children }: { readonly children: ReactNode }) {
  const [clients] = useState(createClients);
  return (
    <QueryClientProvider client={clients.query}>
      <TRPCProvider trpcClient={clients.trpc} queryClient={clients.query}>
        {children}
      </TRPCProvider>
    </QueryClientProvider>
  );
}
