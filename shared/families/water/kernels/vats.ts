/**
 * Water in vats, from inside measures in centimetres to litres: exact geometry. A fill above the rim gives
 * NaN.
 */

const LITRES_PER_CM3 = 1e-3;
const litres = (cm3: number): number => cm3 * LITRES_PER_CM3;

export const rectangle = (length: number, width: number, depth: number): number =>
  litres(length * width * depth);

export const round = (diameter: number, depth: number): number =>
  litres((Math.PI / 4) * diameter ** 2 * depth);

/** Ellipse, or two half circles joined by straight sides. */
export const oval = (length: number, width: number, depth: number, hasStraightSides: boolean): number =>
  litres(
    depth *
      (hasStraightSides
        ? width * (length - width) + (Math.PI / 4) * width ** 2
        : (Math.PI / 4) * length * width),
  );

/** Frustum between two diameters. */
const frustum = (d1: number, d2: number, height: number): number =>
  (Math.PI / 12) * height * (d1 * d1 + d1 * d2 + d2 * d2);

/** Round wall over a cone; `depth` is measured over the outlet, `outlet` is its diameter. */
export const coneBottom = (diameter: number, coneHeight: number, depth: number, outlet: number): number => {
  if (depth >= coneHeight)
    return litres(frustum(outlet, diameter, coneHeight)) + round(diameter, depth - coneHeight);
  const across = outlet + ((diameter - outlet) * depth) / coneHeight;
  return litres(frustum(outlet, across, depth));
};

/** A vat with sloping sides, wider at the rim; filled to `depth` of its `height`. */
export const tapered = (
  topLength: number,
  topWidth: number,
  bottomLength: number,
  bottomWidth: number,
  height: number,
  depth: number,
): number => {
  if (depth > height) return NaN;
  const length = bottomLength + ((topLength - bottomLength) * depth) / height;
  const width = bottomWidth + ((topWidth - bottomWidth) * depth) / height;
  const middle = ((bottomLength + length) / 2) * ((bottomWidth + width) / 2);
  return litres((depth / 6) * (bottomLength * bottomWidth + 4 * middle + length * width));
};

/** A drum lying on its side, flat ends. */
export const lyingDrum = (diameter: number, length: number, depth: number): number => {
  const r = diameter / 2;
  if (depth > diameter) return NaN;
  const h = r - depth;
  return litres(length * (r * r * Math.acos(h / r) - h * Math.sqrt(Math.max(0, r * r - h * h))));
};
