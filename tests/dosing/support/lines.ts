import type { VatEvent, VatWhat } from '../../../shared/dosing/events';
import { EMPTY_LINE } from '../../../shared/dosing/log';
import type { VatSetup } from '../../../shared/dosing/vat';

/** An invented vat, and lines of its log. */
export const SETUP: VatSetup = {
  name: '1',
  litres: 1000,
  celsius: 25,
  material: 'soda ash',
  purity: 1,
  spoons: [5],
  target: 7,
  bottom: 6.5,
  top: 7.5,
  isStocked: false,
  ammonia: null,
  alkalinity: null,
  origin: 'unknown',
  meter: 'good',
  canAir: true,
  sameAs: null,
};
export const event = (what: VatWhat, more: Partial<VatEvent> = {}): VatEvent => ({
  ...EMPTY_LINE,
  vat: '1',
  ...more,
  what,
});
