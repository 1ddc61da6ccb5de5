// The control in hand keeps its place: what its value changes above it, a mistake, a
// hint of more rows, scrolls away rather than pushing it from under pointer or finger.

/** The nearest box around `element` that scrolls. */
function scrollerOf(element: Element): Element | null {
  let at = element.parentElement;
  while (at && !(at.scrollHeight > at.clientHeight && /auto|scroll/.test(getComputedStyle(at).overflowY)))
    at = at.parentElement;
  return at ?? document.scrollingElement;
}

/** Keeps the slider on `page` that was last taken, by pointer or keyboard, where it is as long as it has the focus. */
export function keepPlace(page: HTMLElement): void {
  let held: Element | null = null;
  let top = 0;
  const look = () => {
    if (held) top = held.getBoundingClientRect().top;
  };
  const take = ({ target }: Event) => {
    held = target instanceof Element && target.matches("input[type=range]") ? target : null;
    look();
  };
  page.addEventListener("pointerdown", take, true);
  page.addEventListener("focusin", take);
  // The reader's own scrolling is never undone.
  page.addEventListener("scroll", look, true);
  addEventListener("scroll", look);
  addEventListener("resize", look);
  new MutationObserver(() => {
    if (!held?.isConnected) return;
    const moved = held.getBoundingClientRect().top - top;
    if (moved === 0) return;
    scrollerOf(held)?.scrollBy({ top: moved, behavior: "instant" });
    look();
  }).observe(page, { childList: true, subtree: true, characterData: true });
}
