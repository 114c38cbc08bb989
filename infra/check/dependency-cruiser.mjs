/** Import direction: a package may import only packages of a lower level. Siblings never import each other. */
const LEVELS = [
  ["packages/core"],
  ["packages/tennis", "packages/stats"],
  ["packages/match-log"],
  ["packages/decisions", "packages/protocol"],
  ["packages/demo"],
  ["packages/sync", "packages/api", "packages/auth", "packages/db"],
  ["apps/web", "apps/live"],
];
const PURE = LEVELS.slice(0, 5).flat();
const TESTS = "\\.(test|contract)\\.tsx?$|/testing/";
const anyOf = (rooms) => `^(${rooms.join("|")})/`;

const direction = LEVELS.flatMap((rooms, level) =>
  rooms.map((room) => ({
    name: `${room} imports only downward`,
    severity: "error",
    from: { path: `^${room}/` },
    to: { path: "^(apps|packages|infra|e2e)/", pathNot: anyOf([room, ...LEVELS.slice(0, level).flat()]) },
  })),
);

export default {
  forbidden: [
    ...direction,
    { name: "no cycles", severity: "error", from: {}, to: { circular: true } },
    { name: "no unresolved import", severity: "error", from: {}, to: { couldNotResolve: true } },
    {
      name: "pure packages use no Node built-in and no React",
      severity: "error",
      from: { path: anyOf(PURE), pathNot: TESTS },
      to: { dependencyTypes: ["core"] },
    },
    {
      name: "pure packages know no React",
      severity: "error",
      from: { path: anyOf(PURE) },
      to: { path: "node_modules/(react|react-dom|next)/" },
    },
    {
      name: "e2e knows no app source",
      severity: "error",
      from: { path: "^e2e/" },
      to: { path: "^(apps|infra|packages/(db|auth|api|sync|demo))/" },
    },
    {
      // The simulator drives the live server's core in its own process; nothing that runs the product does.
      name: "infra imports no app",
      severity: "error",
      from: { path: "^infra/", pathNot: `${TESTS}|^infra/simulate/` },
      to: { path: "^apps/" },
    },
    {
      name: "only auth imports the account library",
      severity: "error",
      from: { pathNot: "^packages/auth/" },
      to: { path: "node_modules/better-auth/" },
    },
    {
      name: "the pad is light: no tRPC, component kit, charts or schemas",
      severity: "error",
      from: { path: "^apps/web/src/(pad|app/pad)/", pathNot: TESTS },
      to: { path: "node_modules/(@trpc|@tanstack|zod|recharts|superjson)/|^packages/(api|db|auth)/" },
    },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    exclude: { path: "(^|/)(\\.next[^/]*|out)/" },
    tsPreCompilationDeps: false,
    tsConfig: { fileName: "tsconfig.json" },
    enhancedResolveOptions: {
      exportsFields: ["exports"],
      conditionNames: ["import", "require", "node", "default", "types"],
      extensions: [".ts", ".tsx", ".mjs", ".js", ".json"],
    },
  },
};
