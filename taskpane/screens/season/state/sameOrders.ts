import { sameLines } from '../../../../shared/season/book/orderNames';
import { readTypedNumber } from '../../../../shared/units/typedNumber';
import { readTypedDay } from '../../../../shared/units/typedTime';
import type { OrderRow, SeasonForm } from './form';

const samesKnown = new WeakMap<readonly OrderRow[], ReadonlyMap<number, number>>();
/** Orders that say the same as one before them, by the id of the row; with the number of that one. */
export function sameOrders({ orders }: Pick<SeasonForm, 'orders'>): ReadonlyMap<number, number> {
  let same = samesKnown.get(orders);
  if (!same) {
    const filled = orders.map(({ texts, cancelled }) => {
      const fish = readTypedNumber(texts.number, { unit: 'fish', whole: true });
      const due = readTypedDay(texts.due);
      return {
        name: texts.name,
        product: texts.product,
        number: fish.kind === 'number' ? fish.value : NaN,
        due: due.kind === 'time' ? due.value : NaN,
        // An order that is not typed whole says nothing yet.
        cancelled: cancelled === true || fish.kind !== 'number' || due.kind !== 'time',
      };
    });
    same = new Map(
      [...sameLines(filled)].map(([place, first]) => [orders[place]?.id ?? NaN, first + 1] as const),
    );
    samesKnown.set(orders, same);
  }
  return same;
}
