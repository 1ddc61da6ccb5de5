// What was typed into a field: kept until the tab is closed, a reload and another language leave it.

import { type Signal, useSignal, useSignalEffect } from "@preact/signals";

/** What was typed under a key; `first` is there before anything is, and is not kept. */
export function useTyped(key: string, first: string): Signal<string> {
  const typed = useSignal(remembered(key) ?? first);
  useSignalEffect(() => {
    try {
      if (typed.value === first) sessionStorage.removeItem(key);
      else sessionStorage.setItem(key, typed.value);
    } catch {
      // A browser that keeps nothing: it stays as long as the field.
    }
  });
  return typed;
}

function remembered(key: string): string | null {
  try {
    return sessionStorage.getItem(key);
  } catch {
    return null;
  }
}
