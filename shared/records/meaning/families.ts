import type { FieldName } from '../fields';

/** Meanings that are met together in one table. */
const LISTS: Readonly<Record<string, readonly FieldName[]>> = {
  spawning: [
    'serial', 'run', 'date', 'species', 'female', 'male', 'preparation', 'femaleWeight', 'maleWeight', 'females', 'males',
    'hormoneDose', 'hormoneVolume', 'doseFirst', 'doseSecond', 'rateFirst', 'rateSecond', 'injected', 'injectedOn',
    'injectedFirst', 'stripped', 'strippedOn', 'latency', 'degreeHours', 'temperature', 'eggWeight', 'eggVolume',
    'eggsPerGram', 'eggsPerMl', 'eggs', 'eggYield', 'fertilisedAt', 'sampleSize', 'sampleGood', 'fertilised',
    'fertilisedShare', 'hatchedAt', 'hatchedOn', 'incubationHours', 'incubationTemperature', 'hatched', 'hatchShare',
    'eggsDead', 'fry', 'femaleAfter',
  ],
  water: ['date', 'clock', 'vat', 'temperature', 'temperatureLow', 'temperatureHigh', 'ph', 'phAfter', 'materialDose', 'volume', 'alkalinity', 'oxygen', 'ammonia', 'nitrite', 'nitrate', 'hardness', 'salinity'],
  treatment: ['date', 'vat', 'material', 'treatRate', 'treatAmount', 'volume', 'startTime', 'endTime', 'minutes', 'dead'],
  stock: ['date', 'vat', 'opening', 'stocked', 'movedIn', 'movedOut', 'dead', 'sold', 'closing', 'alive', 'fish', 'deadRunning', 'deadTotal'],
  rearing: ['date', 'week', 'vat', 'fish', 'stocked', 'alive', 'weight', 'length', 'biomass', 'feed', 'feedType', 'feedTotal', 'ration', 'meals', 'sampleCount', 'sampleWeight', 'days', 'survival', 'dead', 'growthRate', 'conversion', 'startWeight', 'endWeight'],
  grading: ['date', 'vat', 'graded', 'gradeSmall', 'gradeMiddle', 'gradeBig', 'gradeCull'],
  sales: ['serial', 'date', 'receipt', 'customer', 'sold', 'size', 'priceEach', 'priceThousand', 'amount', 'deposit', 'paid', 'due', 'dueRunning', 'deliveryDate'],
  cash: ['serial', 'month', 'date', 'receipt', 'category', 'description', 'income', 'expense', 'balance'],
  purchase: ['date', 'description', 'quantity', 'unitPrice', 'amount', 'packWeight'],
  brood: ['female', 'sex', 'species', 'origin', 'status', 'femaleWeight', 'weight', 'length', 'date'],
};
const BY_FIELD = new Map<FieldName, string[]>();
for (const [family, fields] of Object.entries(LISTS))
  for (const field of fields) BY_FIELD.set(field, [...(BY_FIELD.get(field) ?? []), family]);

export const FAMILIES = { of: (field: FieldName): readonly string[] => BY_FIELD.get(field) ?? [] };
