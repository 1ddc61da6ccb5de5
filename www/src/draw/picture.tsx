import type { ComponentChildren, JSX } from "preact";

interface PictureProps extends Omit<JSX.IntrinsicElements["svg"], "title"> {
  id: string;
  title: ComponentChildren;
  /** The same in words, for those who do not see it. */
  desc: ComponentChildren;
}

/** A drawing with its name and what it shows. */
export function Picture({ id, title, desc, children, ...svg }: PictureProps) {
  return (
    <svg {...svg} role="img" aria-labelledby={`${id}-title ${id}-desc`}>
      <title id={`${id}-title`}>{title}</title>
      <desc id={`${id}-desc`}>{desc}</desc>
      {children}
    </svg>
  );
}
