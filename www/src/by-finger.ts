/** Whether what points on this device is a finger: it taps, and has no wheel. */
export const byFinger = (): boolean => matchMedia("(pointer: coarse)").matches;
