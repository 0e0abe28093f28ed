/** SHA-256 (FIPS 180-4), fed piece by piece. */

const PRIMES: readonly number[] = (() => {
  const found: number[] = [];
  for (let n = 2; found.length < 64; n++) if (found.every((p) => n % p !== 0)) found.push(n);
  return found;
})();
/**
 * First 32 bits of the fraction of a root of a prime: the standard's constants, from their definition (4.2.2,
 * 5.3.3).
 */
const fraction = (x: number): number => Math.floor((x - Math.floor(x)) * 2 ** 32) | 0;
const K = Int32Array.from(PRIMES, (p) => fraction(Math.cbrt(p)));
const START = Int32Array.from(PRIMES.slice(0, 8), (p) => fraction(Math.sqrt(p)));

const rotate = (x: number, n: number): number => (x >>> n) | (x << (32 - n));

export class Sha256 {
  private readonly state = START.slice();
  private readonly block = new Uint8Array(64);
  private readonly words = new Int32Array(64);
  private filled = 0;
  private length = 0;

  update(bytes: Uint8Array): this {
    this.length += bytes.length;
    let at = 0;
    if (this.filled > 0) {
      at = Math.min(64 - this.filled, bytes.length);
      this.block.set(bytes.subarray(0, at), this.filled);
      this.filled += at;
      if (this.filled < 64) return this;
      this.mix(this.block, 0);
      this.filled = 0;
    }
    for (; at + 64 <= bytes.length; at += 64) this.mix(bytes, at);
    this.block.set(bytes.subarray(at));
    this.filled = bytes.length - at;
    return this;
  }

  /** Sixty-four hexadecimal digits. Ends the feeding. */
  hex(): string {
    const { length } = this;
    const padding = new Uint8Array(72 - ((length + 8) % 64));
    padding[0] = 0x80;
    const view = new DataView(padding.buffer);
    view.setUint32(padding.length - 8, Math.floor(length / 2 ** 29));
    view.setUint32(padding.length - 4, (length * 8) >>> 0);
    this.update(padding);
    return [...this.state].map((word) => (word >>> 0).toString(16).padStart(8, '0')).join('');
  }

  private mix(bytes: Uint8Array, from: number): void {
    const w = this.words as unknown as number[];
    const k = K as unknown as number[];
    for (let i = 0, at = from; i < 16; i++, at += 4)
      w[i] =
        ((bytes[at] as number) << 24) |
        ((bytes[at + 1] as number) << 16) |
        ((bytes[at + 2] as number) << 8) |
        (bytes[at + 3] as number);
    for (let i = 16; i < 64; i++) {
      const x = w[i - 15] as number;
      const y = w[i - 2] as number;
      w[i] =
        ((rotate(x, 7) ^ rotate(x, 18) ^ (x >>> 3)) +
          (w[i - 16] as number) +
          (rotate(y, 17) ^ rotate(y, 19) ^ (y >>> 10)) +
          (w[i - 7] as number)) |
        0;
    }
    const s = this.state as unknown as [number, number, number, number, number, number, number, number];
    let a = s[0],
      b = s[1],
      c = s[2],
      d = s[3],
      e = s[4],
      f = s[5],
      g = s[6],
      h = s[7];
    for (let i = 0; i < 64; i++) {
      const one =
        (h +
          (rotate(e, 6) ^ rotate(e, 11) ^ rotate(e, 25)) +
          ((e & f) ^ (~e & g)) +
          (k[i] as number) +
          (w[i] as number)) |
        0;
      const two = ((rotate(a, 2) ^ rotate(a, 13) ^ rotate(a, 22)) + ((a & b) ^ (a & c) ^ (b & c))) | 0;
      h = g;
      g = f;
      f = e;
      e = (d + one) | 0;
      d = c;
      c = b;
      b = a;
      a = (one + two) | 0;
    }
    s[0] += a;
    s[1] += b;
    s[2] += c;
    s[3] += d;
    s[4] += e;
    s[5] += f;
    s[6] += g;
    s[7] += h;
  }
}
