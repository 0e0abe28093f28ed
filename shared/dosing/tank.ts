import { materialOf, molesOf } from '../families/water/records/inputs';
import type { DoseReach } from '../families/water/titration/nextDose';
import { airedReach } from '../families/water/titration/nextDose';
import type { VatEvent } from './events';
import { dosingOf } from './events';
import type { Around, VatAdvice, VatSetup } from './vat';
import { vatAdvice, waterOf } from './vat';
import { MIX_MINUTES, mixMinutes } from './waits';

/**
 * A storage tank: dosed once, vats filled from it, topped up with raw water. It is advised as a vat is; what it
 * has beyond that is how much stands in it.
 */
export interface TankAdvice extends VatAdvice {
  readonly litres: number;
  /** Litres drawn off since it was filled. */
  readonly drawn: number;
  /** It may be drawn from now: dosed, mixed, read inside the window. */
  readonly isReady: boolean;
  /** Vats of a size that can still be filled. */
  readonly fillsLeft: (litresEach: number) => number;
  /** pH once aired if so much raw water of the same source comes in now; undefined before a reading. */
  readonly afterTopUp: (litres: number) => DoseReach | undefined;
  readonly mixMinutes: number;
}

interface Held {
  readonly litres: number;
  /** Grams of product still in it: what vats took with them is gone. */
  readonly product: number;
}

/** What is in the tank after each event of the whole log, by its own lines and those of the vats filled from it. */
const contents = (
  setup: VatSetup,
  events: readonly VatEvent[],
  isFilledFrom: (vat: string) => boolean,
): readonly Held[] => {
  let litres = setup.litres;
  let product = 0;
  return events.map((event) => {
    const isOwn = event.vat === setup.name;
    const came = event.litres ?? 0;
    if (isOwn) {
      if (event.what === 'filled') [litres, product] = [event.litres ?? setup.litres, 0];
      if (event.what === 'refill' || event.what === 'rain') litres = Math.min(setup.litres, litres + came);
      if (event.what === 'change') product *= Math.max(0, 1 - came / Math.max(came, litres));
      product += event.grams ?? 0;
    } else if (event.what === 'from tank' && isFilledFrom(event.vat)) {
      const left = Math.max(0, litres - came);
      product *= litres > 0 ? left / litres : 0;
      litres = left;
    }
    return { litres, product };
  });
};

/** Doses as if all had gone into the water that stands there now: what they did to each litre stays the same. */
const scaled = (events: readonly VatEvent[], tank: string, held: readonly Held[]): readonly VatEvent[] => {
  const now = held.at(-1)?.litres ?? 0;
  return events.map((event, i) => {
    const then = held[i]?.litres ?? now;
    return event.vat !== tank || event.grams === null || then <= 0
      ? event
      : { ...event, grams: (event.grams * now) / then };
  });
};

export function tankAdvice(setup: VatSetup, events: readonly VatEvent[], around: Around = {}): TankAdvice {
  const start = events.lastIndexOf(dosingOf(events, setup.name)[0] as VatEvent);
  const since = start < 0 ? events : events.slice(start);
  const isFilledFrom = (vat: string): boolean => {
    const other = around.vats?.find(({ name }) => name === vat);
    return other === undefined || other.sameAs === null || other.sameAs === setup.name;
  };
  const held = contents(setup, since, isFilledFrom);
  const { litres, product } = held.at(-1) ?? { litres: setup.litres, product: 0 };
  const here: VatSetup = { ...setup, litres: litres > 0 ? litres : setup.litres };
  const told = scaled(since, setup.name, held);
  const advice = vatAdvice(here, told, around);
  const drawn = since
    .filter(({ vat, what }) => what === 'from tank' && vat !== setup.name && isFilledFrom(vat))
    .reduce((sum, one) => sum + (one.litres ?? 0), 0);
  const study = waterOf(here, told, around);
  return {
    ...advice,
    total: since.reduce((sum, one) => sum + (one.vat === setup.name ? (one.grams ?? 0) : 0), 0),
    waitMinutes: advice.waitMinutes === MIX_MINUTES ? mixMinutes(litres) : advice.waitMinutes,
    litres,
    drawn,
    isReady: advice.action === 'done' || advice.action === 'watch',
    fillsLeft: (each) => Math.floor(litres / each + 1e-9),
    mixMinutes: mixMinutes(litres),
    afterTopUp: (raw) => {
      if (!study) return undefined;
      const { segment, cloud } = study.advice;
      const share = litres / (litres + raw);
      const given = molesOf(materialOf(here.material), product, here.litres, here.purity);
      // The raw water is the same water without the product: mixing takes that share of the product away.
      const balances = cloud.balances.map(
        (balance) => balance - segment.beliefs.equivalents * given * (1 - share),
      );
      return airedReach(segment.beliefs, { ...cloud, balances }, 0);
    },
  };
}
