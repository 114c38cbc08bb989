import { X509Certificate } from "node:crypto";
import { readFileSync, statSync } from "node:fs";
import { type Browser, expect, type Page, test } from "@playwright/test";
import { EVERYWHERE, lookAt } from "../fixtures/look-at.ts";
import { makeOneCourtDay, openPhone, startCharting } from "../fixtures/one-court-day.ts";
import { type RunningProduct, startProduct } from "../fixtures/product.ts";
import { DIRECTOR, setUpAcademy } from "../fixtures/set-up-day.ts";
import { askOverHttps, fetchAuthority, trustingArgument } from "./over-https.ts";

const NOT_YET = "This device does not trust the machine yet.";
const PLAIN_NOTICE = "This address is plain http.";

/** Addresses of the sockets that a page opens. */
const watchSockets = (page: Page): string[] => {
  const urls: string[] = [];
  page.on("websocket", (socket) => {
    socket.on("framereceived", () => urls.push(socket.url()));
  });
  return urls;
};

test.describe("started with --https", () => {
  test.describe.configure({ mode: "serial" });
  let product: RunningProduct;
  let ca: string;
  let trusting: Browser;

  test.beforeAll(async ({ playwright, launchOptions }) => {
    test.setTimeout(600_000);
    product = await startProduct("https", { https: true, env: { TRUSTED_PROXY: "127.0.0.1" } });
    ca = (await fetchAuthority(product)).pem;
    const args = [...(launchOptions.args ?? []), trustingArgument(product)];
    trusting = await playwright.chromium.launch({ ...launchOptions, args });
  });
  test.afterAll(async () => {
    await trusting?.close();
    await product?.stop();
  });

  test("[ST32, ST23] the chain holds for who knows the authority, and for nobody else", async () => {
    expect((await fetchAuthority(product)).type).toBe("application/x-x509-ca-cert");
    const answer = await askOverHttps(product, ca, "/healthz");
    expect([answer.status, JSON.parse(answer.text)]).toEqual([200, expect.objectContaining({ ok: true })]);
    await expect(askOverHttps(product, undefined, "/healthz")).rejects.toThrow("unable to verify");
    expect(statSync(`${product.dataDir}/tls/authority.pem`).mode & 0o777).toBe(0o600);
    expect(ca).not.toContain("PRIVATE KEY");
    const printed = () => readFileSync(`${product.dataDir}/start.log`, "utf8");
    await expect.poll(printed).toContain(`Courtloom is running: https://localhost:`);
    expect(printed()).toContain(new X509Certificate(ca).fingerprint256);
  });

  test("[WB11, WB12, ST26] a device that does not trust yet gets the certificate and the steps by plain http", async ({
    page,
  }) => {
    const errors: string[] = [];
    page.on("pageerror", (error) => errors.push(error.message));
    await page.goto(`${product.plainUrl}/trust`);
    await expect(page.getByRole("status")).toContainText(NOT_YET);
    const shown = await page.getByText(/^(?:[0-9A-F]{2}:?){4}$/).allTextContents();
    expect(shown.join("")).toBe(new X509Certificate(ca).fingerprint256);
    for (const name of ["iPhone and iPad", "Android", "Windows", "Mac", /^Linux/])
      await expect(page.getByRole("group").filter({ hasText: name }).first()).toBeVisible();
    await expect(page.getByRole("link", { name: "Get the certificate" })).toHaveAttribute(
      "href",
      "/trust/courtloom.crt",
    );
    await lookAt(page, "trust", EVERYWHERE);
    await expect(page.goto(`${product.plainUrl}/pad`)).rejects.toThrow("ERR_CERT_AUTHORITY_INVALID");
    expect(errors).toEqual([]);
  });

  test("[ST32, AU6, WB10] the pad is a secure context with its own cookies and socket", async () => {
    const director = await trusting.newPage();
    await setUpAcademy(director, product.url);
    const day = await makeOneCourtDay(director, product.url, {
      name: "Estuary morning",
      own: "Noor V.",
      opponent: "Elsbeth K.",
    });
    await expect(
      director.getByText(`begins at ${product.plainUrl.replace("127.0.0.1", "localhost")}/trust`),
    ).toBeVisible();
    const { context, phone } = await openPhone(trusting);
    const sockets = watchSockets(phone);
    await phone.goto(`${product.plainUrl}/trust`);
    await expect(phone.getByRole("status")).toHaveText("This device trusts the machine.");
    await lookAt(phone, "trust-trusted", [{ size: "phone", scheme: "light", thorough: true }]);
    await phone.getByRole("link", { name: "Open the pad" }).click();
    await expect(phone).toHaveURL(`${product.url}/pad`);
    await startCharting(phone, product.url, day, "Ada");
    expect(await phone.evaluate(() => window.isSecureContext)).toBe(true);
    await expect(phone.getByText(PLAIN_NOTICE)).toHaveCount(0);
    await expect.poll(() => sockets.length).toBeGreaterThan(0);
    expect(sockets.every((url) => url.startsWith(product.url.replace("https:", "wss:")))).toBe(true);
    const cookies = [...(await context.cookies()), ...(await director.context().cookies())].filter(
      ({ name }) => name.includes("courtloom_"),
    );
    expect(cookies.map(({ name, secure, httpOnly }) => [name, secure, httpOnly])).toEqual([
      ["__Host-courtloom_courtside", true, true],
      ["__Host-courtloom_account", true, true],
    ]);
    const response = await phone.goto(`${product.url}/pad`);
    expect(response?.headers()["strict-transport-security"]).toBeUndefined();
    await phone.goto(`${product.url}/trust`);
    await expect(phone.getByText("This page came by https.")).toBeVisible();
    await phone.goto(`${product.url}/sign-in`);
    await expect(phone.getByText(PLAIN_NOTICE)).toHaveCount(0);
    await context.close();
  });

  test("[ST33] behind a trusted proxy a page of its host may sign in, and no other's", async () => {
    const { email, password } = DIRECTOR;
    const signIn = (origin: string, forwarded: Record<string, string>) =>
      askOverHttps(product, ca, "/api/auth/sign-in/email", {
        method: "POST",
        headers: { "content-type": "application/json", origin, ...forwarded },
        body: { email, password },
      });
    const proxied = { "x-forwarded-host": "courts.example", "x-forwarded-proto": "https" };
    const own = await signIn("https://courts.example", proxied);
    expect(own.status).toBe(200);
    expect(own.cookies.join()).toMatch(/^__Host-courtloom_account=.*Secure/);
    expect((await signIn("https://evil.example", proxied)).status).toBe(403);
    expect((await signIn("https://courts.example", {})).status).toBe(403);
  });
});
