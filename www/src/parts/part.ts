// What comes in files of its own: fetched in the quiet after the first picture.

const all: (() => Promise<unknown>)[] = [];

/** What is loaded by `load` once: when it is first wanted, or by `loadRest` before. */
export function part<T>(load: () => Promise<T>): () => Promise<T> {
  let loading: Promise<T> | null = null;
  const once = () => {
    loading ??= load();
    return loading;
  };
  all.push(once);
  return once;
}

/** Fetches everything that is not there yet; what fails is told where it is missed. */
export async function loadRest(): Promise<void> {
  await Promise.allSettled(all.map((load) => load()));
}
