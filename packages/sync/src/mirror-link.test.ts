import { describe, expect, it } from "vitest";
import { createBench } from "./mirror-bench.ts";
import { ASK_AFTER_MS, createLink, mirrorStateOf, SERVER_SILENT_MS } from "./mirror-link.ts";

const live = { everRead: true, subscribed: true, open: true, silentMs: 0, refusal: null } as const;

describe("state of a mirror", () => {
  it("[MR1] is live only when subscribed on an open connection whose server was heard lately", () => {
    expect(mirrorStateOf(live)).toBe("live");
    expect(mirrorStateOf({ ...live, silentMs: SERVER_SILENT_MS - 1 })).toBe("live");
    expect(mirrorStateOf({ ...live, silentMs: SERVER_SILENT_MS })).toBe("stale");
    expect(mirrorStateOf({ ...live, open: false })).toBe("stale");
    expect(mirrorStateOf({ ...live, subscribed: false })).toBe("stale");
  });

  it("[MR1] is loading until something was read, and refused whatever else holds", () => {
    expect(mirrorStateOf({ ...live, everRead: false })).toBe("loading");
    expect(mirrorStateOf({ ...live, everRead: false, refusal: "forbidden" })).toBe("refused");
  });
});

const createTrial = () => {
  let answers = true;
  let reads = 0;
  const bench = createBench(() => ({}));
  let told = 0;
  const link = createLink({
    channel: bench.channel,
    ...bench.deps,
    read: async () => {
      reads += 1;
      return answers ? "read" : { ok: false, code: "unavailable", retry: true };
    },
    changed: () => {
      told += 1;
    },
  });
  link.start();
  const silence = () => {
    answers = false;
  };
  return { bench, link, silence, reads: () => reads, told: () => told };
};

describe("link", () => {
  it("[MR2] asks a silent server again, and stays live on its answer", async () => {
    const { bench, link, reads } = createTrial();
    await bench.settle();
    expect(link.state()).toBe("live");
    await bench.pass(ASK_AFTER_MS);
    expect(reads()).toBe(2);
    expect(link.state()).toBe("live");
  });

  it("[MR2] says stale, once, when the server no longer answers, though the connection looks open", async () => {
    const { bench, link, silence, told } = createTrial();
    await bench.settle();
    const before = told();
    silence();
    await bench.pass(SERVER_SILENT_MS);
    expect(link.state()).toBe("stale");
    expect(link.reachable()).toBe(true);
    expect(told()).toBe(before + 1);
  });

  it("[MR1] is stale at once when the connection is lost and keeps when it last heard", async () => {
    const { bench, link } = createTrial();
    await bench.settle();
    await bench.pass(2_000);
    bench.become("lost");
    expect(link.state()).toBe("stale");
    expect(link.lastHeardMs()).toBe(1_000);
  });

  it("[MR4] does nothing more once closed", async () => {
    const { bench, link, reads } = createTrial();
    await bench.settle();
    link.close();
    bench.become("lost");
    bench.become("open");
    await bench.pass(20_000);
    expect(reads()).toBe(1);
  });
});
