// What the browser keeps of the bench from one visit to the next.

const KEY = "pithball.bench/1";

/** All of it, as it is kept now. */
export const kept = (page) => page.evaluate((key) => JSON.parse(localStorage.getItem(key)), KEY);

/** Waits until a ball of this name has been kept, and resolves to what is on the bench. */
export async function keptAs(page, name) {
  await page.waitForFunction(
    ([key, name]) => JSON.parse(localStorage.getItem(key) ?? "null")?.doc.ball.name === name,
    [KEY, name],
  );
  return (await kept(page)).doc;
}
