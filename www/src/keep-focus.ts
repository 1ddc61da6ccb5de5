// The keyboard keeps its place where what had it goes: a button that does away with
// itself or has nothing more to do. It is on the stop before it then.

const STOPS =
  'a[href], button, input:not([tabindex="-1"]), select, textarea, summary, [tabindex="0"], [role="button"]';

const there = (element: Element): boolean => element.isConnected && !element.matches(":disabled");

/** Keeps the focus on `page` when its element is taken away or disabled. */
export function keepFocus(page: HTMLElement): void {
  let at: Element | null = null;
  let before: HTMLElement[] = [];
  let byKeyboard = false;
  // Under a finger nothing is lost, and a field that got the focus would bring up the keys.
  addEventListener("pointerdown", () => (byKeyboard = false), true);
  addEventListener("keydown", () => (byKeyboard = true), true);
  page.addEventListener("focusin", ({ target }) => {
    const stops = [...page.querySelectorAll<HTMLElement>(STOPS)];
    at = target as Element;
    before = stops.slice(0, Math.max(0, stops.indexOf(target as HTMLElement))).reverse();
  });
  new MutationObserver(() => {
    if (!at || there(at)) return;
    const lost = document.activeElement === document.body || document.activeElement === at;
    at = null;
    if (lost && byKeyboard) before.find((stop) => there(stop) && stop.checkVisibility())?.focus();
  }).observe(page, { childList: true, subtree: true, attributes: true, attributeFilter: ["disabled"] });
}
