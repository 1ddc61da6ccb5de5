// The contract between the WebAssembly module and the page. Files as kept on
// disk (ball, shot) use the same keys as the files themselves; every key ends
// in its unit. What the module returns is derived and never stored.

export type * from "./types/ball";
export type * from "./types/file";
export type * from "./types/lane";
export type * from "./types/lesson";
export type * from "./types/look";
export type * from "./types/maker";
export type * from "./types/module";
