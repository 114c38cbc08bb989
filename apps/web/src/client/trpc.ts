"use client";
import type { AppRouter } from "@courtloom/api";
import { createTRPCContext } from "@trpc/tanstack-react-query";

/** The procedures as options for queries and mutations; inside `ApiProvider` only. */
export const { TRPCProvider, useTRPC } = createTRPCContext<AppRouter>();
