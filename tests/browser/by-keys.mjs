// A person at the keyboard, who goes from stop to stop and sees where they are.
import assert from "node:assert/strict";

/** What has the focus, how it is marked, and whether any of it is in view. */
export const stop = (page) =>
  page.evaluate(() => {
    const element = document.activeElement;
    const labels = [...(element.labels ?? [])].map((label) => label.textContent);
    const by = (element.getAttribute("aria-labelledby") ?? "").split(" ").filter(Boolean);
    const named = by.map((id) => document.getElementById(id)?.textContent);
    const style = getComputedStyle(element);
    const box = element.getBoundingClientRect();
    return {
      name: [element.getAttribute("aria-label") ?? "", ...labels, ...named, element.textContent]
        .join(" ")
        .trim(),
      kind: element.type ?? element.localName,
      marked: style.outlineStyle !== "none" || style.boxShadow !== "none",
      inView: box.bottom > 0 && box.right > 0 && box.top < innerHeight && box.left < innerWidth,
    };
  });

/** Goes on with Tab until a stop fits; every stop on the way must be seen. */
export async function tabTo(page, fits) {
  for (let n = 0; n < 250; n += 1) {
    await page.keyboard.press("Tab");
    const at = await stop(page);
    if (at.kind === "body") continue;
    assert.ok(at.marked && at.inView, `focus cannot be seen: ${JSON.stringify(at)}`);
    if (fits(at)) return at;
  }
  assert.fail("not reached by Tab");
}

/** On with Tab to a button, fold or box of this name, and presses it. */
export async function press(page, name, key = "Enter") {
  const at = await tabTo(page, (stop) => name.test(stop.name) && stop.kind !== "text");
  await page.keyboard.press(key);
  return at;
}

/** On with Tab to a text field of this name, and types in it instead of what it held. */
export async function type(page, name, text) {
  await tabTo(page, (stop) => stop.kind === "text" && name.test(stop.name));
  await page.keyboard.press("Control+a");
  await page.keyboard.type(text);
}
