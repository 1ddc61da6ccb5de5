// The Shelf keeps what is put on it: across visits, two pages at once, a full or
// forbidden store, broken records and broken files.
import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { after, before, test } from "node:test";
import { accessibilityFaults, launch, NARROW, shoot } from "./harness.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

const toShelf = async (page) => {
  await page
    .getByRole("navigation", { name: /Places|Rooms/ })
    .getByRole("button", { name: "Shelf" })
    .click();
  await page.getByRole("heading", { name: /^On the shelf/ }).waitFor();
};

/** The page with the Shelf in front; `init` runs in it before the page's own code. */
async function shelfOpen({ init, ...options } = {}) {
  const opened = await site.open({ reducedMotion: "reduce", ...options });
  if (init) {
    await opened.context.addInitScript(init);
    await opened.reload();
  }
  await toShelf(opened.page);
  return opened;
}

const said = (page) => page.locator(".shelf-said");
const rows = (page) => page.locator("[data-entry]");
const names = (page) => page.locator("[data-entry] h4").allTextContents();

async function put(page, name, note = "") {
  await page.locator(".put-form").getByLabel("Name").fill(name);
  await page.locator(".put-form").getByLabel("Note").fill(note);
  await page.getByRole("button", { name: "Put on the shelf", exact: true }).click();
  await page.getByText(`: ${name}.`).waitFor();
}

async function more(page, name, action) {
  const row = rows(page).filter({ hasText: name }).first();
  if ((await row.locator("details").getAttribute("open")) === null) await row.locator("summary").click();
  await row.getByRole("button", { name: action }).click();
}

const downloaded = async (page, act) => {
  const [file] = await Promise.all([page.waitForEvent("download"), act()]);
  return { name: file.suggestedFilename(), text: await readFile(await file.path(), "utf8") };
};

const give = (page, name, content) =>
  page.getByLabel("Files to put on the shelf").setInputFiles({
    name,
    mimeType: "application/json",
    buffer: Buffer.from(typeof content === "string" ? content : JSON.stringify(content)),
  });

/** Every record in the store as it is, by name. */
const records = (page) =>
  page.evaluate(
    () =>
      new Promise((done, refuse) => {
        const opening = indexedDB.open("pithball.shelf");
        opening.onerror = () => refuse(opening.error);
        opening.onsuccess = () => {
          const all = opening.result.transaction("entries").objectStore("entries").getAll();
          all.onsuccess = () => {
            opening.result.close();
            done(all.result);
          };
        };
      }),
  );

test("a ball is kept with its shot at once, and is there when the page is gone and comes back", async () => {
  const { page, context } = await shelfOpen();
  await page.getByText("Nothing yet.").waitFor();
  await put(page, "Before the change", "For the Thursday league");
  const [record] = await records(page);
  assert.equal(record.name, "Before the change");
  const shot = JSON.parse(record.shot);
  assert.equal(shot.ball.name, "No. 3, three-piece");
  assert.ok(shot.release && shot.layout && shot.lane);
  assert.doesNotMatch(record.shot, /rg_in|weight_lb/, "what is derived is not stored");
  // A crash: the page is gone without a chance to write anything more.
  const session = await context.newCDPSession(page);
  const gone = page.waitForEvent("crash");
  // Never answered, since nobody is left to answer.
  session.send("Page.crash").catch(() => {});
  await gone;
  const other = await context.newPage();
  await other.goto(site.url);
  await toShelf(other);
  assert.deepEqual(await names(other), ["Before the change"]);
  await other.getByText("For the Thursday league").waitFor();
  await context.close();
});

test("renamed, duplicated, sorted, taken off and put back; on the bench again as one step", async () => {
  const { page, context, reload, check } = await shelfOpen();
  const bench = page.locator(".ball-name input");
  await put(page, "Three-piece", "first note");
  await page.getByRole("button", { name: "Put on the bench: No. 1, simple" }).click();
  await put(page, "Simple");
  assert.deepEqual(await names(page), ["Simple", "Three-piece"]);

  await more(page, "Three-piece", "Name and note");
  await page.locator(".edit-form").getByLabel("Name").fill("Three pieces");
  await page.locator(".edit-form").getByLabel("Note").fill("second note");
  await page.getByRole("button", { name: "Done" }).click();
  await page.getByText("Changed: Three pieces.").waitFor();
  await page.getByText("second note").waitFor();
  await more(page, "Three pieces", "Duplicate");
  await page.getByText("once more: Three pieces, copy.").waitFor();

  const order = page.getByLabel("Sorted by");
  await order.selectOption("RG, lowest first");
  assert.deepEqual((await names(page)).at(-1), "Simple", "its RG is the highest");
  await order.selectOption("weight, heaviest first");
  assert.deepEqual((await names(page)).at(-1), "Simple", "it is the lightest");
  await order.selectOption("differential, lowest first");
  assert.deepEqual((await names(page))[0], "Simple");
  await order.selectOption("name");
  assert.deepEqual(await names(page), ["Simple", "Three pieces", "Three pieces, copy"]);

  await more(page, "Simple", "Take off the shelf");
  await said(page).getByText("Taken off the shelf: Simple.").waitFor();
  assert.deepEqual(await names(page), ["Three pieces", "Three pieces, copy"]);
  await page.waitForFunction(() => document.activeElement?.classList.contains("put-back"));
  await page.keyboard.press("Enter");
  await page.getByText("Put back: Simple.").waitFor();
  await reload();
  await toShelf(page);
  assert.equal(await rows(page).count(), 3);

  await page.getByRole("button", { name: "Put on the bench: Three pieces", exact: true }).click();
  assert.match(await bench.inputValue(), /^No\. 3/);
  await page.keyboard.press("Control+z");
  assert.match(await bench.inputValue(), /^No\. 1/);
  assert.deepEqual(await accessibilityFaults(page), []);
  await shoot(page, "shelf-desktop");
  await check();
  await context.close();
});

test("a note that is being typed is kept when the room is left", async () => {
  const { page, context, check } = await shelfOpen();
  await put(page, "One");
  await more(page, "One", "Name and note");
  await page.locator(".edit-form").getByLabel("Note").fill("half a thought");
  await page.getByRole("button", { name: "Workshop" }).click();
  await toShelf(page);
  await page.getByText("half a thought").waitFor();
  await more(page, "One", "Name and note");
  await page.locator(".edit-form").getByLabel("Note").fill("never mind");
  // What is typed is undone as text; the bench is not.
  await page.keyboard.press("Control+z");
  assert.equal(await page.locator(".edit-form").getByLabel("Note").inputValue(), "half a thought");
  await page.locator(".edit-form").getByLabel("Note").fill("never mind");
  await page.keyboard.press("Escape");
  assert.equal(await page.getByText("never mind").count(), 0);
  assert.equal((await records(page))[0].note, "half a thought");
  await check();
  await context.close();
});

test("two pages at once: each sees the other's work, and neither writes over it", async () => {
  const { page, context, check } = await shelfOpen();
  await put(page, "Shared");
  const other = await context.newPage();
  await other.goto(site.url);
  await toShelf(other);
  assert.deepEqual(await names(other), ["Shared"]);
  await put(other, "From the other");
  await page.getByRole("heading", { name: "From the other" }).waitFor();

  // Both begin to change the same entry; both changes are there in the end, in both pages.
  await more(page, "Shared", "Name and note");
  await more(other, "Shared", "Name and note");
  await page.locator(".edit-form").getByLabel("Note").fill("said here");
  await other.locator(".edit-form").getByLabel("Note").fill("said there");
  await page.getByRole("button", { name: "Done" }).click();
  await page.getByText("Changed: Shared.").waitFor();
  await other.getByRole("button", { name: "Done" }).click();
  await other.getByText("yours is kept beside it").waitFor();
  for (const one of [page, other]) {
    await one.getByText("said here").waitFor();
    await one.getByText("said there").waitFor();
    assert.equal(await rows(one).count(), 3);
  }

  // One is taken off here while it is being changed there: the change is not lost.
  await more(other, "said here", "Name and note");
  await other.locator(".edit-form").getByLabel("Note").fill("said last");
  await more(page, "said here", "Take off the shelf");
  await said(page).getByText("Taken off").waitFor();
  await page.getByText("said here").waitFor({ state: "detached" });
  await page.getByText("said last").waitFor();
  assert.equal((await records(page)).length, 3);
  await check();
  await context.close();
});

test("a full store: what is put there stays for the visit, says so, saves to a file, and is kept once there is room", async () => {
  const { page, context, check } = await shelfOpen({
    init: () => {
      const real = IDBObjectStore.prototype.put;
      globalThis.full = false;
      IDBObjectStore.prototype.put = function (...given) {
        if (globalThis.full) throw new DOMException("full", "QuotaExceededError");
        return real.apply(this, given);
      };
    },
  });
  await put(page, "Fits");
  await page.evaluate(() => {
    globalThis.full = true;
  });
  await put(page, "Does not fit", "of great worth");
  await page.getByText("One entry is not kept. The browser's storage for this page is full.").waitFor();
  assert.deepEqual(await names(page), ["Does not fit", "Fits"]);
  assert.deepEqual(
    (await records(page)).map(({ name }) => name),
    ["Fits"],
  );
  const file = await downloaded(page, () => page.getByRole("button", { name: "to a file now" }).click());
  const { entries } = JSON.parse(file.text);
  assert.deepEqual(entries.map(({ name, note }) => [name, note]).sort(), [
    ["Does not fit", "of great worth"],
    ["Fits", undefined],
  ]);
  // A change that does not fit leaves what is kept as it was.
  await more(page, "Fits", "Name and note");
  await page.locator(".edit-form").getByLabel("Name").fill("Fits no longer");
  await page.getByRole("button", { name: "Done" }).click();
  await page.getByText("2 entries are not kept.").waitFor();
  assert.deepEqual(
    (await records(page)).map(({ name }) => name),
    ["Fits"],
  );
  await page.evaluate(() => {
    globalThis.full = false;
  });
  await page.getByRole("button", { name: "Try again" }).click();
  await page.getByText("All of the shelf is kept now.").waitFor();
  assert.equal(await page.locator(".stale").count(), 0);
  assert.deepEqual((await records(page)).map(({ name }) => name).sort(), ["Does not fit", "Fits no longer"]);
  await check();
  await context.close();
});

for (const [how, init] of Object.entries({
  refused: () => {
    Object.defineProperty(globalThis, "indexedDB", {
      get: () => {
        throw new DOMException("denied", "SecurityError");
      },
    });
  },
  "not there": () => Object.defineProperty(globalThis, "indexedDB", { value: undefined }),
})) {
  test(`storage ${how}: the shelf works for this visit and says so`, async () => {
    const { page, context, check } = await shelfOpen({ init });
    await page.getByText("lasts for this visit only").waitFor();
    await put(page, "For now");
    assert.deepEqual(await names(page), ["For now"]);
    await page.getByRole("button", { name: "Workshop" }).click();
    await toShelf(page);
    assert.deepEqual(await names(page), ["For now"]);
    const file = await downloaded(page, () =>
      page.getByRole("button", { name: "Save the shelf to a file", exact: true }).click(),
    );
    assert.equal(JSON.parse(file.text).entries.length, 1);
    await more(page, "For now", "Take off the shelf");
    await page.getByRole("button", { name: "Put back For now" }).click();
    await page.getByText("Put back: For now.").waitFor();
    assert.deepEqual(await accessibilityFaults(page), []);
    await check();
    await context.close();
  });
}

test("a record that cannot be read is shown as such, saved as it is, taken off and put back; a store in ruins can be begun anew", async () => {
  const { page, context, reload, check } = await shelfOpen();
  await put(page, "Whole");
  const spoil = (page, change) =>
    page.evaluate(
      (change) =>
        new Promise((done) => {
          const opening = indexedDB.open("pithball.shelf");
          opening.onsuccess = () => {
            const tx = opening.result.transaction("entries", "readwrite");
            for (const record of change) tx.objectStore("entries").put(record);
            tx.oncomplete = () => {
              opening.result.close();
              done();
            };
          };
        }),
      change,
    );
  const [whole] = await records(page);
  const shot = JSON.parse(whole.shot);
  const wrong = { ...shot, ball: { ...shot.ball, diameter_in: -8 } };
  await spoil(page, [
    { ...whole, id: "wrong", shot: JSON.stringify(wrong) },
    { ...whole, id: "cut", shot: whole.shot.slice(0, 100) },
    { id: "alien", colour: "blue" },
  ]);
  await reload();
  await toShelf(page);
  await page.getByText("(Where: ball.diameter_in.)").waitFor();
  assert.equal(await page.locator(".row-broken").count(), 3);
  assert.deepEqual(await names(page), ["Whole", ...Array(3).fill("One that cannot be read")]);
  const alien = page.locator('[data-entry="alien"]');
  const file = await downloaded(page, () => alien.getByRole("button", { name: "Save it as it is" }).click());
  assert.deepEqual(JSON.parse(file.text), { id: "alien", colour: "blue" });
  await alien.getByRole("button", { name: "Take off the shelf" }).click();
  await alien.waitFor({ state: "detached" });
  await page.getByRole("button", { name: "Put back what could not be read" }).click();
  await alien.waitFor();
  assert.deepEqual(await accessibilityFaults(page), []);

  // A store without what this page keeps in it, as another program may have left it.
  await context.addInitScript(() => {
    if (sessionStorage.getItem("ruined")) return;
    sessionStorage.setItem("ruined", "yes");
    indexedDB.deleteDatabase("pithball.shelf");
    indexedDB.open("pithball.shelf", 1).onsuccess = (event) => event.target.result.close();
  });
  await reload();
  await toShelf(page);
  await page.getByText("cannot be opened").waitFor();
  await put(page, "Meanwhile");
  await page.getByRole("button", { name: "begin a new shelf" }).click();
  await page.getByText("A new shelf is begun.").waitFor();
  assert.deepEqual(
    (await records(page)).map(({ name }) => name),
    ["Meanwhile"],
  );
  await check();
  await context.close();
});

test("out to files and in again: a shelf, a shot, a ball; a broken entry is named and the rest comes in", async () => {
  const { page, context, check } = await shelfOpen();
  await put(page, "Alpha", "first");
  await page.getByRole("button", { name: "Put on the bench: No. 4, nested core" }).click();
  await put(page, "Beta");
  const shelf = await downloaded(page, () =>
    page.getByRole("button", { name: "Save the shelf to a file", exact: true }).click(),
  );
  assert.match(shelf.name, /^shelf-\d{4}-\d\d-\d\d\.shelf\.json$/);
  const shot = await downloaded(page, () => more(page, "Alpha", "Save as shot file"));
  assert.equal(shot.name, "alpha.shot.json");
  const ball = await downloaded(page, () => more(page, "Beta", "Save as ball file"));
  assert.equal(ball.name, "beta.ball.json");

  await give(page, "again.shelf.json", shelf.text);
  await page.getByText("Nothing new in again.shelf.json. 2 were there already").waitFor();

  await more(page, "Alpha", "Take off the shelf");
  await said(page).getByText("Taken off").waitFor();
  const file = JSON.parse(shelf.text);
  file.entries.push({ ...file.entries[0], name: "Gamma" });
  file.entries[2].shot = { ...file.entries[2].shot, hand: "both" };
  await give(page, "club.shelf.json", file);
  await page.getByText('"Gamma" could not be read.').waitFor();
  assert.match(await said(page).textContent(), /^1 put on the shelf from club\.shelf\.json\. 1 was there/);
  assert.match(await said(page).textContent(), /entries\[2\]\.shot\.hand/);
  assert.deepEqual((await names(page)).sort(), ["Alpha", "Beta"]);
  await page.getByText("first", { exact: true }).waitFor();

  await give(page, "one.shot.json", { ...JSON.parse(shot.text), name: "A shot" });
  await page.getByText("1 put on the shelf from one.shot.json.").waitFor();
  await give(page, "one.ball.json", { ...JSON.parse(ball.text), name: "A ball" });
  await page.getByText("it stands with the one on the Lane now").waitFor();
  assert.deepEqual((await names(page)).sort(), ["A ball", "A shot", "Alpha", "Beta"]);

  for (const [content, says] of [
    ["not json", /was not read\. The file is not JSON/],
    [{ format: "pithball.shelf/9", entries: [] }, /was not read\. The format must be/],
    [{ ...JSON.parse(ball.text), diameter_in: 99 }, /was not read\. The diameter/],
    [{ ...JSON.parse(shot.text), ball: "a.ball.json" }, /Its ball is in another file, a\.ball\.json/],
  ]) {
    await give(page, "bad.json", content);
    await page.waitForFunction(
      (text) => new RegExp(text).test(document.querySelector(".shelf-said").textContent),
      says.source,
    );
  }
  // Made in the page, since handing over so much takes long.
  await page.getByLabel("Files to put on the shelf").evaluate((input) => {
    const handed = new DataTransfer();
    handed.items.add(new File([new Uint8Array(32 * 1024 * 1024 + 1)], "huge.shelf.json"));
    input.files = handed.files;
    input.dispatchEvent(new Event("change", { bubbles: true }));
  });
  await page.getByText("huge.shelf.json was not read. It is larger than 32 MiB.").waitFor();
  assert.equal(await rows(page).count(), 4);

  // The bar's Open takes a shelf to the Shelf, whatever room is in front.
  await page.getByRole("button", { name: "Workshop" }).click();
  await page.getByLabel("File to open").setInputFiles({
    name: "delta.shelf.json",
    mimeType: "application/json",
    buffer: Buffer.from(JSON.stringify({ ...file, entries: [{ ...file.entries[0], name: "Delta" }] })),
  });
  await page.getByRole("heading", { name: "Delta" }).waitFor();
  await check();
  await context.close();
});

test("an entry's text is shown as text, long as it may be, on a narrow screen", async () => {
  const { page, context, check } = await shelfOpen({ viewport: NARROW });
  const name = `<img src=x onerror="alert(1)">${"long".repeat(30)}`;
  await put(page, name, "line");
  assert.deepEqual(await names(page), [name]);
  assert.equal(await page.locator("img").count(), 0);
  const wide = await page.evaluate(() => document.querySelector(".rooms").scrollWidth);
  assert.ok(wide <= NARROW.width, `${wide} px wide`);
  assert.deepEqual(await accessibilityFaults(page), []);
  await shoot(page, "shelf-narrow");
  await check();
  await context.close();
});
