// Contrast as WCAG 2.2 defines it, of colours in bytes of sRGB.

function luminance(colour) {
  const [r, g, b] = colour.map((byte) => {
    const part = byte / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

/** From 1 to 21. */
export function contrast(a, b) {
  const [low, high] = [luminance(a), luminance(b)].sort((p, q) => p - q);
  return (high + 0.05) / (low + 0.05);
}
