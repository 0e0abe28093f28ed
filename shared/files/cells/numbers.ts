import { textBetween } from '../package/xml';

const POWERS = Array.from({ length: 23 }, (_, i) => 10 ** i);

const longNumber = (bytes: Uint8Array, from: number, to: number): number => {
  const text = textBetween(bytes, from, to).trim();
  return text === '' ? NaN : Number(text);
};

/**
 * A number as files write it. Up to 15 digits are exact as digits ÷ power of ten; anything else goes the long
 * way. NaN for what is no number.
 */
export const numberAt = (bytes: Uint8Array, from: number, to: number): number =>
  bytes[from] === 0x2d ? -positive(bytes, from + 1, to) : positive(bytes, from, to);

function positive(bytes: Uint8Array, from: number, to: number): number {
  let mantissa = 0;
  let point = -1;
  if (to - from > 16 || from >= to) return longNumber(bytes, from, to);
  for (let i = from; i < to; i++) {
    const byte = bytes[i] ?? 0;
    if (byte >= 0x30 && byte <= 0x39) mantissa = mantissa * 10 + byte - 0x30;
    else if (byte === 0x2e && point < 0) point = i;
    else return longNumber(bytes, from, to);
  }
  if (point < 0) return mantissa;
  return to - from === 1 ? NaN : mantissa / (POWERS[to - point - 1] ?? NaN);
}
