/** What the page tells a service worker that waits: to take the older one's place. */
export const TAKE_OVER = "take over";
