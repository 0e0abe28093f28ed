import type { Water } from '../carbonate/carbonate';

/**
 * Two waters poured together, before any gas is lost: strong ions and carbon are conserved, temperature by
 * volume.
 */
export const mixed = (a: Water, volumeA: number, b: Water, volumeB: number): Water => {
  const share = volumeA / (volumeA + volumeB);
  const blend = (x: number, y: number): number => share * x + (1 - share) * y;
  return {
    temperature: blend(a.temperature, b.temperature),
    sodium: blend(a.sodium, b.sodium),
    calcium: blend(a.calcium, b.calcium),
    chloride: blend(a.chloride, b.chloride),
    sulfate: blend(a.sulfate, b.sulfate),
    carbon: blend(a.carbon, b.carbon),
  };
};

export type ExchangeMethod = 'drain' | 'flow';

/**
 * What is left of a difference to the new water: drained and refilled once, or pushed out by a steady flow
 * into a mixed vat.
 */
const kept = (volumes: number, method: ExchangeMethod): number =>
  method === 'drain' ? 1 - volumes : Math.exp(-volumes);

/**
 * Concentration after an exchange of `exchanged` litres; NaN when a drain asks for more than the vat holds.
 */
export const afterExchange = (
  volume: number,
  exchanged: number,
  present: number,
  incoming: number,
  method: ExchangeMethod,
): number =>
  method === 'drain' && exchanged > volume
    ? NaN
    : incoming + (present - incoming) * kept(exchanged / volume, method);

/** Litres to exchange for a wished concentration; NaN when the new water cannot bring it there. */
export const exchangeFor = (
  volume: number,
  present: number,
  wanted: number,
  incoming: number,
  method: ExchangeMethod,
): number => {
  const left = (wanted - incoming) / (present - incoming);
  if (!(left > 0 || (left === 0 && method === 'drain')) || left > 1) return NaN;
  return volume * (method === 'drain' ? 1 - left : -Math.log(left));
};
