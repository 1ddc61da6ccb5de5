// Nothing on the Shelf is lost in silence: texts longer than it takes, a note half
// typed, a store that is deleted while the page is open.
import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { after, before, test } from "node:test";
import { launch } from "./harness.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

const toShelf = async (page) => {
  await page.getByRole("navigation").getByRole("button", { name: "Shelf" }).click();
  await page.getByRole("heading", { name: /^On the shelf/ }).waitFor();
};

async function shelfOpen() {
  const opened = await site.open({ reducedMotion: "reduce" });
  await toShelf(opened.page);
  return opened;
}

const form = (page) => page.locator(".put-form");
const said = (page, text) => page.locator(".shelf-said").getByText(text).waitFor();
const names = (page) => page.locator("[data-entry] h4").allTextContents();
const put = (page) => page.getByRole("button", { name: "Put on the shelf", exact: true }).click();

const give = (page, name, content) =>
  page.getByLabel("Files to put on the shelf").setInputFiles({
    name,
    mimeType: "application/json",
    buffer: Buffer.from(JSON.stringify(content)),
  });

async function savedShot(page) {
  await page.locator("[data-entry] summary").first().click();
  const [file] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save as shot file" }).first().click(),
  ]);
  return JSON.parse(await readFile(await file.path(), "utf8"));
}

test("a name or a note that is too long is refused with its place, and stays where it is", async () => {
  const { page, context, check } = await shelfOpen();
  await form(page).getByLabel("Name").fill("n".repeat(10_000));
  await form(page).getByLabel("Note").fill("of worth");
  await put(page);
  await said(
    page,
    "It was not put on the shelf. Its name has 10,000 characters; the shelf takes at most 200.",
  );
  assert.equal((await form(page).getByLabel("Name").inputValue()).length, 10_000);
  assert.equal(await form(page).getByLabel("Note").inputValue(), "of worth");
  await form(page).getByLabel("Name").fill("Short");
  await put(page);
  await said(page, "Put on the shelf: Short.");
  assert.equal(await form(page).getByLabel("Note").inputValue(), "");

  // What the shot itself is called is not lost beside what it is called here.
  const shot = await savedShot(page);
  assert.equal(shot.name, "Short");
  assert.match(shot.note, /^of worth\nOpening shot\nA medium hook/);
  await give(page, "own.shot.json", { ...shot, name: "Its own", note: "its own note" });
  await said(page, "1 put on the shelf");
  const own = page.locator("[data-entry]", { hasText: "Its own" });
  await own.locator("summary").click();
  await own.getByRole("button", { name: "Name and note" }).click();
  await page.locator(".edit-form").getByLabel("Name").fill("Renamed");
  await page.locator(".edit-form").getByLabel("Note").fill("said here");
  await page.getByRole("button", { name: "Done" }).click();
  await said(page, "Changed: Renamed.");
  const saved = await savedShot(page);
  assert.deepEqual([saved.name, saved.note], ["Renamed", "said here\nIts own\nits own note"]);

  for (const [change, says] of [
    [{ name: "n".repeat(201) }, /Its name has 201 characters; the shelf takes at most 200\./],
    [{ note: "n".repeat(4001) }, /Its note has 4,001 characters; the shelf takes at most 4,000\./],
    [
      { name: undefined, ball: { ...shot.ball, name: "n".repeat(300) } },
      /Its name has 300 characters.*\(Where in the file: ball\.name\.\)/,
    ],
  ]) {
    await give(page, "long.shot.json", { ...shot, ...change });
    await said(page, says);
  }
  await give(page, "long.shelf.json", {
    format: "pithball.shelf/1",
    entries: [{ name: "m".repeat(10_000), shot }],
  });
  await said(page, "could not be read");
  const text = await page.locator(".shelf-said").textContent();
  assert.match(text, /"m+…" could not be read/);
  assert.ok(text.length < 500, text);
  assert.deepEqual((await names(page)).sort(), ["Renamed", "Short"]);
  await check();
  await context.close();
});

test("a note half typed is there when the room is left, and in another language", async () => {
  const { page, context, check } = await shelfOpen();
  await form(page).getByLabel("Name").fill("My ball");
  await form(page).getByLabel("Note").fill("half a thought");
  await page.getByRole("button", { name: "Workshop" }).click();
  await toShelf(page);
  assert.equal(await form(page).getByLabel("Note").inputValue(), "half a thought");
  await page.getByLabel("Language").selectOption("es");
  await page.getByLabel("Nota").first().waitFor();
  assert.equal(await form(page).getByLabel("Nombre").inputValue(), "My ball");
  assert.equal(await form(page).getByLabel("Nota").inputValue(), "half a thought");
  await check();
  await context.close();
});

/** How the store goes while the page is open: the reader clears what the browser keeps, or another tab deletes it. */
const DELETED = {
  "cleared by the reader": async (page, context) => {
    const session = await context.newCDPSession(page);
    const { origin } = new URL(site.url);
    await session.send("Storage.clearDataForOrigin", { origin, storageTypes: "indexeddb" });
  },
  "deleted by another tab": async (_, context) => {
    const other = await context.newPage();
    await other.goto(`${site.url}LICENSE-MIT.txt`).catch(() => {});
    await other.evaluate(
      () =>
        new Promise((done, refuse) => {
          const deleting = indexedDB.deleteDatabase("pithball.shelf");
          deleting.onsuccess = done;
          deleting.onerror = refuse;
        }),
    );
    await other.close();
  },
};

for (const [how, clear] of Object.entries(DELETED)) {
  test(`a store ${how}: that is said, and what is in view is kept again, once`, async () => {
    const { page, context, reload, check } = await shelfOpen();
    await form(page).getByLabel("Name").fill("First");
    await put(page);
    await said(page, "Put on the shelf: First.");
    const second = await context.newPage();
    await second.goto(site.url);
    await toShelf(second);
    await second.getByRole("heading", { name: "First" }).waitFor();

    await clear(page, context);
    await said(
      page,
      "What the browser kept of the shelf was deleted meanwhile. What is seen here is kept anew.",
    );
    await said(second, "is kept anew");
    assert.equal(await page.locator(".stale").count(), 0);
    await form(page).getByLabel("Name").fill("Second");
    await put(page);
    await said(page, "Put on the shelf: Second.");
    await reload();
    await toShelf(page);
    await page.getByRole("heading", { name: "Second" }).waitFor();
    assert.deepEqual((await names(page)).sort(), ["First", "Second"]);
    await check();
    await context.close();
  });
}

test("a store that is deleted and then keeps nothing: what is in view is not kept, and says why", async () => {
  const { page, context, check } = await shelfOpen();
  await form(page).getByLabel("Name").fill("First");
  await put(page);
  await said(page, "Put on the shelf: First.");
  await page.evaluate(() => {
    globalThis.realPut = IDBObjectStore.prototype.put;
    IDBObjectStore.prototype.put = () => {
      throw new DOMException("full", "QuotaExceededError");
    };
  });
  await DELETED["cleared by the reader"](page, context);
  await said(page, "Still not kept.");
  await page.getByText("One entry is not kept.").waitFor();
  await page.locator("[data-entry] .out").waitFor();
  await page.evaluate(() => {
    IDBObjectStore.prototype.put = globalThis.realPut;
  });
  await page.getByRole("button", { name: "Try again" }).click();
  await said(page, "All of the shelf is kept now.");
  await check();
  await context.close();
});
