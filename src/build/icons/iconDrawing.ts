/**
 * The add-in's picture, our own: a fish egg just before hatching, the embryo curled inside with its eye
 * showing.
 */
export const ICON_SIZES = [16, 20, 24, 32, 40, 48, 64, 80, 96, 128] as const;

const SHELL = '#0B6E75';
const WATER = '#D6EEF0';
const YOLK = '#F2A33A';
const EMBRYO = '#12343B';

/** Drawn on a square of 32 units; small sizes get bolder lines and leave out what would blur. */
export function iconSvg(size: number): string {
  const isSmall = size < 24;
  const rim = isSmall ? 3.2 : 2.2;
  const body = isSmall ? 4.4 : 3.4;
  const parts = [
    `<circle cx="16" cy="16" r="${15 - rim / 2}" fill="${WATER}" stroke="${SHELL}" stroke-width="${rim}"/>`,
    `<circle cx="15" cy="17.5" r="${isSmall ? 5.2 : 5.8}" fill="${YOLK}"/>`,
    // From the head at the right, over the yolk, down to the tail.
    `<path d="M 23.2 12.6 C 20.5 6.8 12.2 6.2 8.6 11.4 C 5.6 15.8 7.2 22.6 12.6 25.2" fill="none" stroke="${EMBRYO}" stroke-width="${body}" stroke-linecap="round"/>`,
    `<circle cx="22.6" cy="12.8" r="${isSmall ? 3.4 : 3.3}" fill="${EMBRYO}"/>`,
    ...(isSmall ? [] : [`<circle cx="23.2" cy="12.2" r="1.15" fill="#FFFFFF"/>`]),
  ];
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${size}" height="${size}" viewBox="0 0 32 32">${parts.join('')}</svg>`;
}

export const iconFile = (size: number): string => `taskpane/assets/icon-${size}.png`;

/** Sizes a phone or a desktop asks for when the page is put among its programs. */
export const APP_ICON_SIZES = [192, 512] as const;
export const appIconFile = (size: number): string => `src/localsheet/site/assets/icon-${size}.png`;
