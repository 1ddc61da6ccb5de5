// What a screen reader would say by itself: texts that come into live regions. A
// region that comes together with its text is not heard, nor one that is not shown
// or that an open dialog shuts off; an alert is heard however it comes.
import assert from "node:assert/strict";

/** Begins to write down what is heard on every page of the context opened from now on. */
export const listen = (context) =>
  context.addInitScript(() => {
    const LIVE = "[role=status], [role=alert], [role=log], [aria-live=polite], [aria-live=assertive]";
    const said = [];
    let known = new Map();
    globalThis.heard = said;
    const state = (region) => {
      const shut = document.querySelector("dialog:modal");
      return {
        text: region.textContent.replace(/\s+/g, " ").trim(),
        first: region.firstElementChild ?? region.firstChild,
        shown: region.checkVisibility() && (!shut || shut.contains(region)),
      };
    };
    new MutationObserver(() => {
      const now = new Map([...document.querySelectorAll(LIVE)].map((one) => [one, state(one)]));
      for (const [region, { text, first, shown }] of now) {
        const before = known.get(region);
        const comes = before?.shown
          ? before.text !== text || before.first !== first
          : region.role === "alert";
        if (shown && comes && text !== "") said.push(text);
      }
      known = now;
    }).observe(document, { subtree: true, childList: true, characterData: true });
  });

/** Longer than the page waits for quiet before it says what has come. */
const QUIET_MS = 1000;

/** Everything heard since the last time it was asked, once nothing more comes. */
export async function heard(page) {
  await page.waitForTimeout(QUIET_MS);
  return page.evaluate(() => globalThis.heard.splice(0).map((text) => text.replaceAll("\u2212", "-")));
}

/** Waits until something is heard that fits. */
export async function hears(page, pattern) {
  const source = [pattern.source, pattern.flags];
  const fits = page.waitForFunction(
    ([source, flags]) => globalThis.heard.some((text) => new RegExp(source, flags).test(text)),
    source,
    { timeout: 40_000 },
  );
  await fits.catch(async () =>
    assert.fail(`${pattern} was not heard, but ${JSON.stringify(await heard(page))}`),
  );
}

/** Waits until something is heard that fits, and gives it with all that was heard till nothing more came. */
export async function heardOf(page, pattern) {
  await hears(page, pattern);
  return heard(page);
}

/** Exactly one text that fits among those heard. */
export function once(all, pattern) {
  const fit = all.filter((text) => pattern.test(text));
  assert.equal(fit.length, 1, `${pattern} in ${JSON.stringify(all, null, 1)}`);
  return fit[0];
}

/** Puts one value after the other into a field or slider, as by typing or dragging, however busy the machine is. */
export const inTurn = (input, values) =>
  input.evaluate(async (input, values) => {
    for (const value of values) {
      input.value = value;
      input.dispatchEvent(new InputEvent("input", { bubbles: true }));
      await new Promise((done) => setTimeout(done, 60));
    }
  }, values);
