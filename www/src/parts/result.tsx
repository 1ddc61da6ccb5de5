import { useAloud } from "../aloud";

interface ResultProps {
  /** Another one each time there is something new to say. */
  of: unknown;
  class?: string;
  children: string;
}

/** What came of something, in words: in view where it stands, and said aloud when it is new. */
export function Result({ of, children, ...rest }: ResultProps) {
  useAloud(of, children);
  return <p {...rest}>{children}</p>;
}
