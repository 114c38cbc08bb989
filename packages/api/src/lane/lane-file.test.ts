import { MAX_LANE_FILE_BYTES } from "@courtloom/protocol/names";
import { describe, expect, it } from "vitest";
import { ask, readAnswer } from "../testing/ask.ts";
import { makeApi, type Role } from "../testing/make-api.ts";
import { sampleFile } from "../testing/sample-inputs.ts";
import { seedDay } from "../testing/seed-day.ts";

const begin = async () => {
  const api = await makeApi();
  const academyId = await api.setup();
  const { matchId } = await seedDay(api, academyId);
  const { lane } = api.callerAs("coach", academyId);
  api.memory.logs.openFromPhone(matchId, "lane-1", "Ioan P.");
  const idsOf = () => api.memory.logs.logOf(matchId).map(({ entry }) => entry.id);
  return { api, academyId, matchId, lane, idsOf, logs: api.memory.logs };
};

describe("a file of entries", () => {
  it("[AP12] is shown beside what is here already, and writes nothing", async () => {
    const { api, matchId, lane } = await begin();
    await lane.takeInFile({ file: sampleFile(matchId, "lane-1", [1, 2]) });
    const before = api.writeCount();
    const [checked] = (await lane.checkFile({ file: sampleFile(matchId, "lane-1", [1, 2, 3, 4, 5]) })).lanes;
    expect(checked).toMatchObject({
      ...{ chartist: "Ioan P.", entries: 5, points: 0, fresh: 3, alreadyThere: 2, elsewhere: 0 },
      match: { names: { A: "Noor V.", B: "Visitor red" } },
    });
    const [never] = (await lane.checkFile({ file: sampleFile(matchId, "lane-9", [1, 2, 3]) })).lanes;
    expect(never).toMatchObject({ chartist: null, fresh: 1, elsewhere: 2 });
    expect(api.writeCount()).toBe(before);
  });

  it("[AP13] is taken in once, however often it comes, and is noted", async () => {
    const { api, matchId, lane, idsOf } = await begin();
    const numbers = Array.from({ length: 120 }, (_, i) => i + 1);
    const file = sampleFile(matchId, "lane-1", numbers);
    expect((await lane.takeInFile({ file })).lanes).toEqual([{ took: 120, passedOver: 0, beside: false }]);
    expect((await lane.takeInFile({ file })).lanes).toEqual([{ took: 0, passedOver: 120, beside: false }]);
    expect(idsOf()).toHaveLength(120);
    const noted = api.memory.rows.audit.filter(({ action }) => action === "lane.takeInFile");
    expect(noted).toEqual([{ action: "lane.takeInFile", subject: matchId }]);
  });

  it("[AP13] stops a lane at a gap or a conflict, says where, and goes on with the next lane", async () => {
    const { matchId, lane, idsOf, logs } = await begin();
    logs.openFromPhone(matchId, "lane-2", "Rosa T.");
    await lane.takeInFile({ file: sampleFile(matchId, "lane-1", [1]) });
    const gap = sampleFile(matchId, "lane-1", [4, 5]);
    const two = { ...gap, lanes: [...gap.lanes, ...sampleFile(matchId, "lane-2", [1]).lanes] };
    expect((await lane.takeInFile({ file: two })).lanes).toEqual([
      { took: 0, passedOver: 0, beside: false, stop: { code: "gap", n: 2 } },
      { took: 0, passedOver: 0, beside: false, stop: { code: "identity_conflict", n: 1 } },
    ]);
    expect(idsOf()).toHaveLength(1);
  });

  it("[AP15] keeps a lane that no phone ever opened beside the score, for its phone to go on in", async () => {
    const { matchId, lane, logs } = await begin();
    const file = sampleFile(matchId, "lane-7", [1, 2]);
    expect((await lane.takeInFile({ file })).lanes).toEqual([{ took: 2, passedOver: 0, beside: true }]);
    expect(logs.logOf(matchId).map(({ epoch }) => epoch)).toEqual([-1, -1]);
    expect(logs.lanes.at(-1)).toMatchObject({
      laneId: "lane-7",
      owner: "courtside",
      chartist: "From a file",
    });
  });

  it("[AP14] of something else, a newer pad or damaged has a sentence each, and nothing is written", async () => {
    const { api, academyId, matchId } = await begin();
    const file = sampleFile(matchId);
    const cases = [
      [{ hello: 1 }, "not_a_lane_file"],
      [{ ...file, v: 2 }, "newer_file"],
      [{ ...file, extra: 1 }, "bad_file"],
    ] as const;
    const before = api.writeCount();
    for (const path of ["lane.checkFile", "lane.takeInFile"]) {
      for (const [odd, reason] of cases) {
        const request = ask(path, "mutation", { file: odd });
        expect(await readAnswer(await api.handlerAs("coach", academyId)(request))).toMatchObject({
          ...{ status: 422, reason },
        });
      }
    }
    expect(api.writeCount()).toBe(before);
  });

  it("[AP14] may be 2 MB from people who are signed in, and no larger than anything else from others", async () => {
    const { api, academyId, matchId } = await begin();
    const numbers = Array.from({ length: 5_000 }, (_, i) => i + 1);
    const large = { file: sampleFile(matchId, "lane-1", numbers) };
    const answerTo = async (role: Role, input: unknown) => {
      const response = await api.handlerAs(role, academyId)(ask("lane.checkFile", "mutation", input));
      return (await readAnswer(response)).reason;
    };
    expect(JSON.stringify(large).length).toBeGreaterThan(300_000);
    expect(await answerTo("coach", large)).toBeUndefined();
    for (const role of ["nobody", "courtside", "wall"] as const) {
      expect(await answerTo(role, large)).toBe("too_large");
    }
    expect(await answerTo("coach", { file: "a".repeat(MAX_LANE_FILE_BYTES + 2_000) })).toBe("too_large");
  });

  it("[AP14] that is nested too deeply is a damaged file, or none", async () => {
    const { api, academyId, matchId } = await begin();
    const deep = `${"[".repeat(100_000)}${"]".repeat(100_000)}`;
    const nested = JSON.stringify(sampleFile(matchId)).replace(/"entries":\[.*?\}\]/, `"entries":[${deep}]`);
    const sent = async (file: string) => {
      const { url, headers } = ask("lane.takeInFile", "mutation", {});
      const request = new Request(url, { method: "POST", headers, body: `{"file":${file}}` });
      return (await readAnswer(await api.handlerAs("coach", academyId)(request))).reason;
    };
    expect(await sent(deep)).toBe("not_a_lane_file");
    expect(await sent(nested)).toBe("bad_file");
    expect(api.reported).toEqual([]);
  });
});
