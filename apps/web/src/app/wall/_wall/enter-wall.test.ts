import type { SetCookie } from "@courtloom/auth";
import { type CourtsidePrincipal, err, ok, type WallPrincipal } from "@courtloom/core";
import { describe, expect, it } from "vitest";
import { enterWall, problemSentence, WALL_PROBLEMS } from "./enter-wall.ts";

const wall: WallPrincipal = { kind: "wall", academyId: "a", sessionId: "s", dayId: "day-1" };
const court: CourtsidePrincipal = { ...wall, kind: "courtside", name: "Wall", courtId: "c" };
const setCookie: SetCookie = {
  name: "courtside",
  value: "x",
  options: { httpOnly: true, sameSite: "lax", path: "/", secure: false, maxAge: 60 },
  header: "courtside=x; Path=/; Max-Age=60; HttpOnly; SameSite=Lax",
};

const createAuth = (answer: typeof wall | typeof court | keyof typeof WALL_PROBLEMS | "bad_name") => {
  const revoked: string[] = [];
  return {
    revoked,
    auth: {
      enterWithCode: async () =>
        typeof answer === "string" ? err(answer as "expired") : ok({ principal: answer, setCookie }),
      revokeCourtside: async (_academyId: string, sessionId: string) => {
        revoked.push(sessionId);
        return true;
      },
    },
  };
};

const input = { code: "QWERTY", address: "192.0.2.7" };

describe("entering a wall", () => {
  it("[BD14] leads to the day that the code is for, with its session", async () => {
    expect(await enterWall(createAuth(wall).auth, input)).toEqual({ location: "/wall/day-1", setCookie });
  });

  it("[BD14] opens no wall with a court's code and ends its session", async () => {
    const { auth, revoked } = createAuth(court);
    expect(await enterWall(auth, input)).toEqual({ location: "/wall?problem=court_code" });
    expect(revoked).toEqual(["s"]);
  });

  it("[BD14] says why not, and nothing that it was not asked to say", async () => {
    expect(await enterWall(createAuth("expired").auth, input)).toEqual({ location: "/wall?problem=expired" });
    expect(problemSentence("expired")).toBe(WALL_PROBLEMS.expired);
    expect(problemSentence("<script>")).toBeUndefined();
    expect(problemSentence("toString")).toBeUndefined();
    expect(problemSentence(undefined)).toBeUndefined();
  });
});
