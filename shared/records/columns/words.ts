// Long: one list of heading words.
import type { FieldName } from '../fields';

/**
 * Header words of record books, as people write them. Each entry is a list of spellings; words are compared
 * in the short form of WORDS below, so "wt." and "weight" are one. A spelling may end in the unit that makes
 * it mean this field: "dose [mL/kg]".
 */
export const SPELLINGS: Readonly<Partial<Record<FieldName, string>>> = {
  run:
    'run, run number, batch, batch number, spawn, spawn number, lot, lot number, cycle, ' +
    'run id, batch id, spawn id, spawning number, record number',
  date:
    'date, spawn date, spawning date, run date, record date, date spawning, day date, ' +
    'date recorded, date run, sampling date, date sampling',
  species: 'species, fish species, strain, kind fish',
  female:
    'female, female id, female tag, female number, tag, tag number, mother, brooder, ' +
    'broodfish, female fish, fish tag, pit tag',
  male: 'male, male id, male tag, male number, father, milt from, male used, males',
  operator: 'operator, done by, staff, recorded by, worker, technician, name operator, person',
  preparation:
    'hormone, preparation, hormone preparation, hormone type, type hormone, agent, ' +
    'hormone used, inducing agent, kind hormone',
  vat:
    'vat, vat number, tank, tank number, trough, pond, pond number, hapa, incubator, ' +
    'incubator number, container, vat id, tank id, raceway',
  material:
    'product, material, buffer, buffer product, chemical, product used, product given, ' +
    'kind product, buffer used',
  note: 'note, remark, comment, observation, other, memo',

  femaleWeight:
    'female weight, weight female, body weight, female body weight, bw, brood weight, ' +
    'broodfish weight, brooder weight, weight mother, female [kg], weight broodfish, ' +
    'fish weight [kg]',
  hormoneDose:
    'dose [mL/kg], dose, hormone dose, dose per kg, ml per kg, dosage, dose rate, ' +
    'hormone rate, hormone [mL/kg], hormone per kg, hormone dosage, injection dose',
  hormoneVolume:
    'hormone volume, volume injected, ml injected, injected [mL], hormone [mL], hormone ' +
    'given, volume hormone, injection volume, dose [mL], injection [mL], hormone amount, ' +
    'total hormone',
  injected:
    'injected, injection time, time injection, time injected, injected at, injection ' +
    'date, injection, hormone time, injected on, date injection, injection date time, ' +
    'injected date, time hormone, hormone given at',
  stripped:
    'stripped, strip time, stripping time, time stripping, stripped at, stripping, time ' +
    'stripped, stripped on, date stripping, stripping date, time strip, strip, stripping ' +
    'date time',
  temperature:
    'temperature, water temperature, mean temperature, tank temperature, vat ' +
    'temperature, temperature water, temperature mean, average temperature, latency ' +
    'temperature, pond temperature',
  latency: 'latency, latency period, latency time, latency hour, time to strip, hour to strip',

  eggWeight:
    'egg weight, weight egg, stripped weight, weight stripped, egg [g], egg mass, ' +
    'stripped egg weight, weight egg stripped, egg stripped [g], total egg weight, egg ' +
    '[kg], spawn weight',
  eggsPerGram:
    'egg per gram, egg per g, number per gram, number per g, count per gram, egg gram, ' +
    'number egg per gram, egg count per gram, egg number per gram, count per g, number ' +
    'egg per g',
  eggs:
    'egg, number egg, egg number, total egg, egg total, egg count, egg stripped, egg ' +
    'incubated, egg set, total number egg, egg in, egg estimated, estimated egg',
  eggYield:
    'egg yield, yield, egg yield percent, egg percent body weight, relative egg weight, ' +
    'ovulated percent, percent body weight stripped, egg percent bw, egg weight percent ' +
    'body, yield percent, yield percent body weight, egg percent body',

  fertilisedAt:
    'fertilised at, fert time, time fert, time fertilised, mixed at, insemination time, ' +
    'milt added, fert date, fertilised on, date fert, fert at, fert date time, ' +
    'insemination',
  sampleSize:
    'sample, egg looked at, sample size, egg checked, egg sampled, sample egg, egg ' +
    'examined, number checked, sample number, checked, egg sample, sample total, egg in ' +
    'sample',
  sampleGood:
    'good, fertilised in sample, sample fertilised, good egg, clear egg, fertile in ' +
    'sample, good in sample, sample good, fertile sample, live in sample, number good, ' +
    'fertilised sample',
  fertilised:
    'fertilised, number fertilised, fertilised egg, fertile egg, egg fertilised, ' +
    'fertile, total fertilised, number fertile',
  fertilisedShare:
    'fert percent, percent fertilised, fert rate, fert, percent fert, fertilised ' +
    'percent, fertility, fertility percent, fert success, fertilised rate',

  hatchedAt:
    'hatch time, hatched at, time hatch, hatch date, first hatch, date hatched, date ' +
    'hatch, hatched on, hatch date time, time hatched, hatch started, hatch began',
  incubationTemperature:
    'incubation temperature, hatchery temperature, egg temperature, temperature ' +
    'incubation, incubator temperature, hatch temperature, temperature hatch, ' +
    'temperature egg',
  incubationHours:
    'incubation time, incubation hour, incubation period, hour to hatch, incubation, ' +
    'time to hatch, incubation duration',
  hatched:
    'hatched, larva, number hatched, number larva, total hatched, larva hatched, larva ' +
    'number, larva counted, larva count, total larva, egg hatched, hatched larva, number ' +
    'larva hatched',
  hatchShare:
    'hatch percent, percent hatch, hatch rate, hatch, percent hatched, hatched percent, ' +
    'hatch success, hatched rate, hatch share',
  feedingAt:
    'first feed, first feeding, feeding start, start feeding, feeding began, feeding ' +
    'started, feeding from, first fed, date first feed, first feed date',

  fry:
    'fry, number fry, swim up fry, swim up, fry number, fry counted, total fry, fry ' +
    'count, fry alive, number swim up, fry out',
  fingerlings:
    'fingerling, number fingerling, fingerling number, total fingerling, juvenile, ' +
    'fingerling count, fingerling counted, fingerling out, number juvenile',
  stocked:
    'stocked, number stocked, stocking number, fish stocked, initial number, start ' +
    'number, fry stocked, number start, stocked number, number in, larva stocked',
  alive:
    'alive, number alive, survivor, final number, end number, harvested, number ' +
    'harvested, live, number end, fish alive, fry harvested, number out, survived',
  dead:
    'dead, dead number, death, number dead, died, loss, mort, dead fish, mortality, ' +
    'number died, mortality number, dead removed, dead today',
  survival: 'survival, survival rate, percent survival, survival percent, survived percent, percent survived',

  stockedAt:
    'stocking date, date stocked, stocked on, start date, date start, date in, stocked ' +
    'at, date stocking, start, from',
  emptiedAt:
    'end date, harvest date, date harvested, emptied, date out, date end, finish date, ' +
    'harvested on, emptied on, date harvest, end, sale date, until, to',
  startWeight:
    'start weight, initial weight, weight start, stocking weight, weight in, mean weight ' +
    'start, initial mean weight, weight at start, weight stocking, average weight start, ' +
    'mean initial weight, average weight in',
  endWeight:
    'end weight, final weight, harvest weight, weight end, weight out, mean weight end, ' +
    'final mean weight, weight at end, weight harvest, average weight end, mean final ' +
    'weight, average weight out',
  days:
    'day, number day, duration, period, day reared, culture period, rearing day, day ' +
    'culture, rearing period, duration day',
  growthRate:
    'growth rate, sgr, specific growth rate, growth percent per day, daily growth, growth, growth per day',
  fish:
    'fish, number fish, fish number, count, stock, fish in tank, number in tank, fish in ' +
    'vat, fish count, total fish, fish alive today, number in vat',
  weight:
    'mean weight, weight, average weight, fish weight, abw, mbw, individual weight, ' +
    'sample weight, mean body weight, average body weight, weight per fish, weight mean, ' +
    'weight one fish',
  feed:
    'feed, feed given, food, food given, daily feed, feed used, total feed, feed fed, ' +
    'feed amount, feed per day, feed today, amount feed, feed consumed',
  ration:
    'ration, feeding rate, feed rate, percent body weight, ration percent, feed percent, ' +
    'feeding percent, feeding level, percent ration, percent feed, percent bw',
  conversion: 'fcr, feed conversion, feed conversion ratio, conversion, feed per gain, feed ratio',

  ph: 'ph, ph before, initial ph, water ph, ph start, ph water, start ph, ph in, ph morning, before ph',
  phAfter: 'ph after, final ph, ph end, ph after dose, after ph, ph adjusted, ph out, end ph, new ph',
  materialDose:
    'product dose, dose [g], dose, soda ash, buffer dose, product given [g], amount ' +
    'given, soda ash given, buffer given, dose given, lime given, product amount, buffer ' +
    '[g], product [g], dose [kg], soda ash dose, buffer amount, lime, grams given',
  volume:
    'water volume, volume, vat volume, tank volume, litre, volume water, volume tank, volume vat, water [L]',
  alkalinity: 'alkalinity, total alkalinity, alk, water alkalinity',
  oxygen: 'oxygen, dissolved oxygen, do, o2, oxygen level, oxygen water',
  vatsInUse:
    'vat in use, tank in use, number tank used, vat used, tank used, number vat used, ' +
    'vat in use today, occupied vat, occupied tank',
  vatsOwned:
    'vat owned, number vat, tank available, number tank, vat total, tank total, total ' +
    'vat, total tank, vat available, tank owned',
};

/** Short and plural forms → the word of the lists above. '' drops the word. */
export const WORDS: Readonly<Record<string, string>> = {
  wt: 'weight',
  wgt: 'weight',
  weights: 'weight',
  wts: 'weight',
  temp: 'temperature',
  temps: 'temperature',
  tmp: 'temperature',
  temperatures: 'temperature',
  no: 'number',
  nos: 'number',
  num: 'number',
  nr: 'number',
  qty: 'number',
  quantity: 'number',
  '#': 'number',
  numbers: 'number',
  n: 'number',
  amt: 'amount',
  avg: 'average',
  av: 'average',
  ave: 'average',
  vol: 'volume',
  volumes: 'volume',
  inj: 'injection',
  inject: 'injection',
  injections: 'injection',
  eggs: 'egg',
  ova: 'egg',
  larvae: 'larva',
  larval: 'larva',
  hatchling: 'larva',
  hatchlings: 'larva',
  frys: 'fry',
  fries: 'fry',
  fingerlings: 'fingerling',
  fngl: 'fingerling',
  fings: 'fingerling',
  females: 'female',
  fem: 'female',
  hen: 'female',
  hens: 'female',
  mothers: 'mother',
  brooders: 'brooder',
  broodstock: 'broodfish',
  brood: 'brood',
  fertilization: 'fert',
  fertilisation: 'fert',
  fertilized: 'fertilised',
  fertilise: 'fert',
  fertilize: 'fert',
  fertn: 'fert',
  hatching: 'hatch',
  hatches: 'hatch',
  hatchability: 'hatch percent',
  hatchery: 'hatchery',
  percentage: 'percent',
  pct: 'percent',
  '%': 'percent',
  perc: 'percent',
  grams: 'gram',
  gm: 'gram',
  gr: 'gram',
  gramme: 'gram',
  litres: 'litre',
  liters: 'litre',
  liter: 'litre',
  ltrs: 'litre',
  hrs: 'hour',
  hours: 'hour',
  hr: 'hour',
  days: 'day',
  vats: 'vat',
  tanks: 'tank',
  troughs: 'trough',
  ponds: 'pond',
  incubators: 'incubator',
  notes: 'note',
  remarks: 'remark',
  comments: 'comment',
  observations: 'observation',
  mortalities: 'mortality',
  morts: 'mort',
  deaths: 'death',
  losses: 'loss',
  survivors: 'survivor',
  hormones: 'hormone',
  swimup: 'swim up',
  'swim-up': 'swim up',
  inc: 'incubation',
  incub: 'incubation',
  lat: 'latency',
  spec: 'specific',
  feeds: 'feed',
  ratio: 'ratio',
  ltr: 'litre',
  sample: 'sample',
  samples: 'sample',
  juveniles: 'juvenile',
  fishes: 'fish',
  surv: 'survival',
  sr: 'survival rate',
  strp: 'strip',
  of: '',
  the: '',
  a: '',
  an: '',
  for: '',
  and: '',
  '&': '',
  '-': '',
  total: 'total',
  est: 'estimated',
  dt: 'date',
  dob: 'date',
  batches: 'batch',
  runs: 'run',
  spawns: 'spawn',
  ml: 'ml',
  kg: 'kg',
  g: 'g',
};
