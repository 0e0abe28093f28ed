// shared/families/learning/rates.ts
var SHARE = { unit: "share", format: "0.0%", scale: "share", runsFactor: 1.8 };
var CHOSEN = "Spreads are chosen here, no source.";
var RATES = {
  latencyOffset: {
    key: "latencyOffset",
    label: "Strip later than the table by",
    unit: "h",
    format: "0.0",
    scale: "difference",
    literature: 0,
    farms: 2,
    runs: 0.7,
    runsFactor: 2,
    kinds: { by: "preparation", spread: 1, factor: 2 },
    assumption: "latencyOffset",
    sources: ["GRAAF96", "OKER15", "CLARIIDPAGE", "PRACTICE"],
    note: "Hours after the table of the preparation. Published strips lie 0.2 to 4.5 h after the handbook table, hence a farm spread of 2 h; the other spreads are chosen here, no source."
  },
  incubationFactor: {
    key: "incubationFactor",
    label: "Incubation, times the table",
    unit: "",
    format: "0.00",
    scale: "log",
    literature: 1,
    farms: 0.12,
    runs: 0.06,
    runsFactor: 2,
    sources: ["GRAAF96", "AMPCLARIAS", "ACEH19"],
    note: "Hours taken \xF7 hours of the table. Two published durations are 1.10 and 1.11 times the handbook table, hence a farm spread of 12 %; the spread of runs is chosen here, no source."
  },
  eggShare: {
    key: "eggShare",
    label: "Egg weight of body weight",
    unit: "share",
    format: "0.0%",
    scale: "log",
    literature: 0.1,
    farms: 0.6,
    runs: 0.3,
    runsFactor: 2,
    kinds: { by: "month", spread: 0.5, factor: 2 },
    most: 0.3,
    assumption: "eggShare",
    sources: ["GRAAF95"],
    note: "Dry season 1.3 %, rainy season 14.3 %; 10 % is chosen between them and a quarter of their distance on a logarithmic scale is the spread of farms. The other spreads, and the 30 % nothing may pass, are chosen here, no source."
  },
  eggsPerGram: {
    key: "eggsPerGram",
    label: "Eggs in a gram",
    unit: "per g",
    format: "#,##0",
    scale: "log",
    literature: 669,
    farms: 0.25,
    runs: 0.15,
    runsFactor: 2,
    assumption: "eggsPerGram",
    sources: ["DADEBO00", "AUDU23"],
    note: "Mean of 40 females, 435 to 1,176, preserved ovaries; five stripped groups elsewhere gave 692 to 847. A quarter of the range on a logarithmic scale is the spread of farms; the spread of runs is chosen here, no source."
  },
  ovulating: {
    ...SHARE,
    key: "ovulating",
    label: "Injected females that give eggs",
    literature: 0.875,
    farms: 1,
    runs: 0.2,
    assumption: "ovulating",
    sources: ["BRZUSKA03"],
    note: `87.5 % after a ready-made solution, all after carp pituitary. ${CHOSEN}`
  },
  fertilisation: {
    ...SHARE,
    key: "fertilisation",
    label: "Eggs fertilised",
    literature: 0.836,
    farms: 1,
    runs: 0.3,
    sources: ["WORLDAQ25", "RURANGWA98", "AUDU23"],
    note: `83.6 % at the best hour of one trial; 80 % and 98 to 99 % elsewhere. ${CHOSEN}`
  },
  hatch: {
    ...SHARE,
    key: "hatch",
    label: "Eggs that hatch",
    literature: 0.59,
    farms: 0.7,
    runs: 0.3,
    assumption: "hatch",
    sources: ["GRAAF95", "TP62"],
    note: "Of all eggs set. Rainy season 59 %, dry 28 %, best month of another station 86 %: a quarter of that range is the spread of farms. The spread of runs is chosen here, no source."
  },
  larvaeToFry: {
    ...SHARE,
    key: "larvaeToFry",
    label: "Hatched larvae that become fry",
    literature: 0.6,
    farms: 0.9,
    runs: 0.3,
    sources: ["OKER15", "CHEP11", "HYBRIDLARVAE"],
    note: `80 % alive at first feed times 75 % weaned. ${CHOSEN}`
  },
  frySurvival: {
    ...SHARE,
    key: "frySurvival",
    label: "Larvae stocked that become weaned fry",
    literature: 0.75,
    farms: 0.9,
    runs: 0.3,
    assumption: "frySurvival",
    sources: ["CHEP11", "HYBRIDLARVAE"],
    note: "Below 75 % with sudden dry feed, above 90 % with half live food; 33 % on dry feed alone. About a quarter of 33 to 93 % is the spread of farms; the spread of runs is chosen here, no source."
  },
  nurserySurvival: {
    ...SHARE,
    key: "nurserySurvival",
    label: "Fry that become fingerlings",
    literature: 0.76,
    farms: 0.8,
    runs: 0.3,
    assumption: "nurserySurvival",
    sources: ["MAKERERE"],
    note: `88 % at 50 per litre, 64 % at 150 per litre. ${CHOSEN}`
  },
  fryGrowth: {
    key: "fryGrowth",
    label: "Growth of larvae and fry",
    unit: "%/d",
    format: "0.0",
    scale: "log",
    literature: 16,
    farms: 0.35,
    runs: 0.15,
    runsFactor: 2,
    assumption: "fryGrowth",
    sources: ["HYBRIDLARVAE"],
    note: "16.1 % a day on decapsulated cysts, 7.0 % on dry feed alone. Spreads are chosen here, no source."
  },
  nurseryGrowth: {
    key: "nurseryGrowth",
    label: "Growth while nursing",
    unit: "%/d",
    format: "0.0",
    scale: "log",
    literature: 12,
    farms: 0.3,
    runs: 0.15,
    runsFactor: 2,
    assumption: "nurseryGrowth",
    sources: ["MAKERERE", "AJANI15"],
    note: "12.5 % a day at 50 per litre, 11.1 % at 150; 8.5 % at 100 in another trial. Spreads are chosen here, no source."
  }
};
var RATE_KEYS = Object.keys(RATES);
var rateSpec = (key) => RATES[key];

// shared/families/learning/kernels/belief.ts
var logBell = (u, { mean, sd }) => -0.5 * ((u - mean) / sd) ** 2 - Math.log(sd);
var REACH = 6;
var fromBells = (bells) => ({
  logDensity: (u) => {
    let log = -Infinity;
    for (const bell of bells) {
      const next = Math.log(bell.weight) + logBell(u, bell);
      log = Math.max(log, next) + Math.log1p(Math.exp(-Math.abs(log - next)));
    }
    return log;
  },
  from: Math.min(...bells.map(({ mean, sd }) => mean - REACH * sd)),
  to: Math.max(...bells.map(({ mean, sd }) => mean + REACH * sd))
});
var UNLIKE_SHARE = 0.1;
var UNLIKE_TIMES = 3;
var literatureBells = (mean, sd) => [
  { weight: 1 - UNLIKE_SHARE, mean, sd },
  { weight: UNLIKE_SHARE, mean, sd: UNLIKE_TIMES * sd }
];
var scaleBelief = (median, factor) => fromBells([{ weight: 1, mean: Math.log(median), sd: Math.log(factor) }]);
var grid = (from, to, points) => Array.from({ length: points }, (_, i) => from + (to - from) * i / (points - 1));
var NOTHING = 16;
function narrow(from, to, points, logWeight) {
  let low = from;
  let high = to;
  for (let look = 0; look < 8; look++) {
    const at = grid(low, high, points);
    const logs = at.map(logWeight);
    const top = Math.max(...logs);
    const first = logs.findIndex((x) => x > top - NOTHING);
    const last = logs.findLastIndex((x) => x > top - NOTHING);
    const a = at[Math.max(0, first - 1)] ?? low;
    const b = at[Math.min(points - 1, last + 1)] ?? high;
    const stays = b - a > 0.6 * (high - low);
    low = a;
    high = b;
    if (stays) break;
  }
  return [low, high];
}

// shared/maths/normalQuantile.ts
var CENTRE = [
  3.3871328727963665,
  133.14166789178438,
  1971.5909503065513,
  13731.69376550946,
  45921.95393154987,
  67265.7709270087,
  33430.57558358813,
  2509.0809287301227
];
var CENTRE_BELOW = [
  1,
  42.31333070160091,
  687.1870074920579,
  5394.196021424751,
  21213.794301586597,
  39307.89580009271,
  28729.085735721943,
  5226.495278852546
];
var MIDDLE = [
  1.4234371107496835,
  4.630337846156546,
  5.769497221460691,
  3.6478483247632045,
  1.2704582524523684,
  0.2417807251774506,
  0.022723844989269184,
  7745450142783414e-19
];
var MIDDLE_BELOW = [
  1,
  2.053191626637759,
  1.6763848301838038,
  0.6897673349851,
  0.14810397642748008,
  0.015198666563616457,
  5475938084995345e-19,
  10507500716444169e-25
];
var TAIL = [
  6.657904643501103,
  5.463784911164114,
  1.7848265399172913,
  0.29656057182850487,
  0.026532189526576124,
  0.0012426609473880784,
  27115555687434876e-21,
  20103343992922881e-23
];
var TAIL_BELOW = [
  1,
  0.599832206555888,
  0.1369298809227358,
  0.014875361290850615,
  7868691311456133e-19,
  18463183175100548e-21,
  1421511758316446e-22,
  20442631033899397e-31
];
var horner = (coefficients, x) => {
  let sum = 0;
  for (let i = coefficients.length - 1; i >= 0; i--) sum = sum * x + (coefficients[i] ?? 0);
  return sum;
};
var normalQuantile = (p) => {
  if (!(p > 0 && p < 1)) return NaN;
  const q = p - 0.5;
  if (Math.abs(q) <= 0.425) {
    const r2 = 0.180625 - q * q;
    return q * horner(CENTRE, r2) / horner(CENTRE_BELOW, r2);
  }
  const r = Math.sqrt(-Math.log(Math.min(p, 1 - p)));
  const size = r <= 5 ? horner(MIDDLE, r - 1.6) / horner(MIDDLE_BELOW, r - 1.6) : horner(TAIL, r - 5) / horner(TAIL_BELOW, r - 5);
  return q < 0 ? -size : size;
};

// shared/families/learning/kernels/normalMixture.ts
var FAR = 8;
var ROOT_TWO_PI = Math.sqrt(2 * Math.PI);
var normalShare = (z) => {
  if (z >= FAR) return 1;
  if (z <= -FAR) return 0;
  const zz = z * z;
  let term = z;
  let sum = z;
  for (let odd = 3; Math.abs(term) > 1e-16 * Math.abs(sum); odd += 2) {
    term *= zz / odd;
    sum += term;
  }
  return 0.5 + sum * Math.exp(-0.5 * zz) / ROOT_TWO_PI;
};
var MOST_STEPS = 200;
function mixtureQuantile(bells, share) {
  const total = bells.reduce((sum, b) => sum + b.weight, 0);
  const used = bells.filter((b) => b.weight > total * 1e-10);
  let low = Math.min(...used.map((b) => b.mean - FAR * b.sd));
  let high = Math.max(...used.map((b) => b.mean + FAR * b.sd));
  const middle = used.reduce((sum, b) => sum + b.weight * b.mean, 0) / total;
  const variance = used.reduce((sum, b) => sum + b.weight * (b.sd * b.sd + (b.mean - middle) ** 2), 0) / total;
  let x = middle + normalQuantile(share) * Math.sqrt(variance);
  for (let step = 0; step < MOST_STEPS; step++) {
    let below = -share * total;
    let density = 0;
    for (const { weight, mean, sd } of used) {
      const z = (x - mean) / sd;
      below += weight * normalShare(z);
      density += weight * Math.exp(-0.5 * z * z) / (sd * ROOT_TWO_PI);
    }
    if (below > 0) high = x;
    else low = x;
    let next = x - below / density;
    if (!(next > low && next < high)) next = (low + high) / 2;
    if (Math.abs(next - x) <= 1e-9 * Math.sqrt(variance) || high - low <= 1e-12 * (1 + Math.abs(x)))
      return next;
    x = next;
  }
  return x;
}

// shared/families/learning/kernels/poolNormal.ts
function summed({ values, errors }, variance) {
  if (values.length === 0) return { precision: 0, mean: 0, logLikelihood: 0 };
  let precision = 0;
  let weighted2 = 0;
  let logs = 0;
  for (let i = 0; i < values.length; i++) {
    const v = variance + (errors?.[i] ?? 0);
    precision += 1 / v;
    weighted2 += (values[i] ?? NaN) / v;
    logs += Math.log(v);
  }
  const mean = weighted2 / precision;
  let squares = 0;
  for (let i = 0; i < values.length; i++)
    squares += ((values[i] ?? NaN) - mean) ** 2 / (variance + (errors?.[i] ?? 0));
  return { precision, mean, logLikelihood: -0.5 * (logs + squares + Math.log(precision)) };
}
function joined(sums, kindVariance) {
  let precision = 0;
  let weighted2 = 0;
  let squared = 0;
  let log = 0;
  for (const s of sums) {
    if (s.precision === 0) continue;
    const v = kindVariance + 1 / s.precision;
    precision += 1 / v;
    weighted2 += s.mean / v;
    squared += s.mean * s.mean / v;
    log += s.logLikelihood - 0.5 * Math.log(v);
  }
  if (precision === 0) return { precision, own: 0, log: 0 };
  const own = weighted2 / precision;
  return { precision, own, log: log - 0.5 * (Math.max(0, squared - own * weighted2) + Math.log(precision)) };
}
var bellLog = ({ precision, own, log }, bell) => {
  if (precision === 0) return Math.log(bell.weight);
  const spread2 = bell.sd * bell.sd + 1 / precision;
  return log + Math.log(bell.weight) - 0.5 * (Math.log(spread2) + (own - bell.mean) ** 2 / spread2);
};
function caseOf(sums, { precision, own }, bell, runSd, kindSd) {
  const prior = bell.sd * bell.sd;
  const pull = precision > 0 ? prior / (prior + 1 / precision) : 0;
  const farm = {
    weight: 1,
    mean: bell.mean + pull * (own - bell.mean),
    sd: Math.sqrt(1 / (1 / prior + precision))
  };
  return {
    runSd,
    kindSd,
    farm,
    pull,
    kinds: kindSd === 0 ? [] : [...sums, void 0].map((s) => kindBell(s, farm, kindSd))
  };
}
function kindBell(s, farm, kindSd) {
  const own = s && s.precision > 0 ? s.precision / (s.precision + 1 / kindSd ** 2) : 0;
  return {
    weight: 1,
    mean: own * (s?.mean ?? 0) + (1 - own) * farm.mean,
    sd: Math.sqrt((1 - own) * kindSd ** 2 + ((1 - own) * farm.sd) ** 2)
  };
}
var POINTS_ALONE = 41;
var POINTS_EACH = 17;
var LEAST_WEIGHT = 1e-7;
function poolNormal(kinds, model) {
  const { mean: bells, runs } = model;
  const between = model.kinds;
  const sumsAt = (logRun) => kinds.map((kind) => summed(kind, Math.exp(2 * logRun)));
  const kindLog = (u) => between?.logDensity(u) ?? 0;
  const kindSd = (u) => between ? Math.exp(u) : 0;
  const best = (sums, kindLogs) => {
    let most = -Infinity;
    for (const k of kindLogs) {
      const all = joined(sums, kindSd(k) ** 2);
      for (const bell of bells) most = Math.max(most, kindLog(k) + bellLog(all, bell));
    }
    return most;
  };
  const roughKinds = between ? grid(between.from, between.to, POINTS_EACH) : [0];
  const [low, high] = narrow(
    runs.from,
    runs.to,
    between ? POINTS_EACH : POINTS_ALONE,
    (u) => runs.logDensity(u) + best(sumsAt(u), roughKinds)
  );
  const runAt = grid(low, high, between ? POINTS_EACH : POINTS_ALONE).map((u) => ({
    u,
    log: runs.logDensity(u),
    sums: sumsAt(u)
  }));
  const kindAt = between ? grid(
    ...narrow(
      between.from,
      between.to,
      POINTS_EACH,
      (k) => runAt.reduce((most, { log, sums }) => Math.max(most, log + best(sums, [k])), -Infinity)
    ),
    POINTS_EACH
  ) : [0];
  const found = [];
  for (const { u, log, sums } of runAt)
    for (const k of kindAt) {
      const all = joined(sums, kindSd(k) ** 2);
      for (const bell of bells)
        found.push({
          log: log + kindLog(k) + bellLog(all, bell),
          build: () => caseOf(sums, all, bell, Math.exp(u), kindSd(k))
        });
    }
  const top = found.reduce((most, { log }) => Math.max(most, log), -Infinity);
  const total = found.reduce((sum, { log }) => sum + Math.exp(log - top), 0);
  return found.map(({ log, build }) => ({ weight: Math.exp(log - top) / total, build })).filter(({ weight }) => weight > LEAST_WEIGHT).map(({ weight, build }) => ({ ...build(), weight }));
}

// shared/maths/logGammaFast.ts
var S1 = 1 / 12;
var S2 = -1 / 360;
var S3 = 1 / 1260;
var S4 = -1 / 1680;
var S5 = 1 / 1188;
var HALF_LOG_TWO_PI = 0.5 * Math.log(2 * Math.PI);
var LARGE = 9;
var logGammaFast = (x) => {
  if (!(x > 0)) return NaN;
  let climbed = 1;
  let at = x;
  while (at < LARGE) climbed *= at++;
  const inverse = 1 / at;
  const q = inverse * inverse;
  const series = inverse * (S1 + q * (S2 + q * (S3 + q * (S4 + q * S5))));
  return (at - 0.5) * Math.log(at) - at + HALF_LOG_TWO_PI + series - (climbed === 1 ? 0 : Math.log(climbed));
};

// shared/families/learning/kernels/poolShares.ts
var shareOf = (logit3) => 1 / (1 + Math.exp(-logit3));
function likelihood(runs, phi) {
  const lg = logGammaFast;
  const fixed = runs.reduce((sum, { n }) => sum - lg(n + phi), runs.length * lg(phi));
  return (mean) => {
    const a = mean * phi;
    const b = phi - a;
    let sum = fixed - runs.length * (lg(a) + lg(b));
    for (const { k, n } of runs) sum += lg(k + a) + lg(n - k + b);
    return sum;
  };
}
function slice(runs, model, logPhi, points) {
  const of = likelihood(runs, Math.exp(logPhi));
  const logAt = (x) => {
    const log = model.mean.logDensity(x) + of(shareOf(x));
    return Number.isNaN(log) ? -Infinity : log;
  };
  const [low, high] = narrow(model.mean.from, model.mean.to, 17, logAt);
  const at = grid(low, high, points);
  const logs = at.map(logAt);
  const top = Math.max(...logs);
  const step = (high - low) / (points - 1);
  const sum = logs.reduce((total, x) => total + Math.exp(x - top), 0) * step;
  return { log: model.steadiness.logDensity(logPhi) + top + Math.log(sum), at, logs, step };
}
var LOOK = 13;
var SLICES = 21;
var POINTS = 41;
function poolShares(runs, model) {
  const [low, high] = narrow(
    model.steadiness.from,
    model.steadiness.to,
    LOOK,
    (u) => slice(runs, model, u, 17).log
  );
  const found = [];
  for (const u of grid(low, high, SLICES)) {
    const { at, logs, step } = slice(runs, model, u, POINTS);
    const prior = model.steadiness.logDensity(u) + Math.log(step);
    at.forEach(
      (logit3, i) => found.push({
        log: prior + (logs[i] ?? -Infinity),
        mean: shareOf(logit3),
        logit: logit3,
        steadiness: Math.exp(u),
        halfStep: step / 2
      })
    );
  }
  const top = found.reduce((most, { log }) => Math.max(most, log), -Infinity);
  const kept = found.filter(({ log }) => log > top - NOTHING);
  const total = kept.reduce((sum, { log }) => sum + Math.exp(log - top), 0);
  return kept.map(({ log, ...point }) => ({ ...point, weight: Math.exp(log - top) / total }));
}

// shared/families/learning/kernels/shareQuantiles.ts
var shareOf2 = (logit3) => 1 / (1 + Math.exp(-logit3));
var END = 36;
function crossing(low, high, wanted, below) {
  let a = low;
  let b = high;
  while (b - a > 1e-6) {
    const x = (a + b) / 2;
    if (below(x) > wanted) b = x;
    else a = x;
  }
  return (a + b) / 2;
}
function meanShareAt(points, wanted) {
  const low = Math.min(...points.map((p) => p.logit - p.halfStep));
  const high = Math.max(...points.map((p) => p.logit + p.halfStep));
  const below = (x) => points.reduce(
    (sum, p) => sum + p.weight * Math.min(1, Math.max(0, (x - p.logit + p.halfStep) / (2 * p.halfStep))),
    0
  );
  return shareOf2(crossing(low, high, wanted, below));
}
var AT_ONCE = 4;
function together(points, phi) {
  const weight = points.reduce((sum, p) => sum + p.weight, 0);
  const mean = points.reduce((sum, p) => sum + p.weight * p.mean, 0) / weight;
  const between = points.reduce((sum, p) => sum + p.weight * (p.mean - mean) ** 2, 0) / weight;
  const variance = (mean * (1 - mean) - between) / (phi + 1) + between;
  const size = Math.max(1e-6, mean * (1 - mean) / variance - 1);
  return { weight, a: mean * size, b: (1 - mean) * size };
}
function betasOf(points) {
  const betas = [];
  for (let i = 0; i < points.length; ) {
    const phi = points[i]?.steadiness ?? NaN;
    const near = points.slice(i, i + AT_ONCE).filter((p) => p.steadiness === phi);
    i += near.length;
    betas.push(together(near, phi));
  }
  return betas.filter(({ weight }) => weight > 1e-6);
}
var reach = ({ a, b }) => {
  const middle = Math.log(a / b);
  const sd = Math.sqrt(1 / a + 1 / b);
  return [
    Math.max(-END, middle - Math.max(7 * sd, 20 / a)),
    Math.min(END, middle + Math.max(7 * sd, 20 / b))
  ];
};
var STEPS = 800;
function nextShareAt(points, wanted) {
  const betas = betasOf(points);
  const reaches = betas.map(reach);
  const low = Math.min(...reaches.map(([l]) => l));
  const high = Math.max(...reaches.map(([, h]) => h));
  const step = (high - low) / STEPS;
  const density = new Float64Array(STEPS + 1);
  const logP = density.map(
    (_, i) => Math.min(0, low + step * i) - Math.log1p(Math.exp(-Math.abs(low + step * i)))
  );
  const logQ = density.map(
    (_, i) => Math.min(0, -low - step * i) - Math.log1p(Math.exp(-Math.abs(low + step * i)))
  );
  let tail = 0;
  let rest = 0;
  for (const { weight, a, b } of betas) {
    const log = Math.log(weight) + logGammaFast(a + b) - logGammaFast(a) - logGammaFast(b);
    for (let i = 0; i <= STEPS; i++) {
      const f = Math.exp(log + a * (logP[i] ?? 0) + b * (logQ[i] ?? 0));
      density[i] = (density[i] ?? 0) + f;
      if (i === 0) tail += f / a;
      if (i === STEPS) rest += f / b;
    }
  }
  const sums = new Float64Array(STEPS + 1);
  sums[0] = tail;
  for (let i = 1; i <= STEPS; i++)
    sums[i] = (sums[i - 1] ?? 0) + step * ((density[i - 1] ?? 0) + (density[i] ?? 0)) / 2;
  const total = (sums[STEPS] ?? 0) + rest;
  return wanted.map((part2) => {
    const i = sums.findIndex((sum) => sum >= part2 * total);
    if (i === 0) return low <= -END ? 0 : shareOf2(low);
    if (i < 0) return high >= END ? 1 : shareOf2(high);
    const before = sums[i - 1] ?? 0;
    return shareOf2(low + step * (i - 1 + (part2 * total - before) / ((sums[i] ?? 0) - before)));
  });
}

// shared/families/learning/kernels/estimate.ts
var tails = (confidence) => [(1 - confidence) / 2, (1 + confidence) / 2];
var SCALES = {
  log: { to: Math.log, from: Math.exp, lift: 0.5 },
  difference: { to: (x) => x, from: (x) => x, lift: 0 }
};
var weighted = (cases, of) => cases.reduce((sum, one) => sum + one.weight * of(one), 0);
function answer(cases, { from, lift }, asked, confidence) {
  const means = cases.map((one) => {
    const b2 = asked.bell(one);
    return { weight: one.weight, mean: b2.mean + lift * asked.spread(one) ** 2, sd: b2.sd };
  });
  const next = cases.map((one) => {
    const b2 = asked.bell(one);
    return { weight: one.weight, mean: b2.mean, sd: Math.hypot(b2.sd, asked.spread(one)) };
  });
  const [a, b] = tails(confidence);
  return {
    value: from(mixtureQuantile(means, 0.5)),
    low: from(mixtureQuantile(means, a)),
    high: from(mixtureQuantile(means, b)),
    nextLow: from(mixtureQuantile(next, a)),
    nextHigh: from(mixtureQuantile(next, b)),
    ownWeight: weighted(cases, asked.pull),
    runs: asked.runs
  };
}
var normalModel = (spec, scale) => ({
  // The literature gives means; the middle of runs that spread on logarithms lies below their mean.
  mean: literatureBells(
    scale.to(spec.literature) - scale.lift * (spec.runs ** 2 + (spec.kinds?.spread ?? 0) ** 2),
    spec.farms
  ),
  runs: scaleBelief(spec.runs, spec.runsFactor),
  ...spec.kinds ? { kinds: scaleBelief(spec.kinds.spread, spec.kinds.factor) } : {}
});
function estimateMeasured(spec, kinds, confidence = 0.95) {
  const scale = SCALES[spec.scale === "log" ? "log" : "difference"];
  const scaled = kinds.map(({ values, errors }) => ({
    values: values.map(scale.to),
    ...errors ? { errors } : {}
  }));
  const cases = poolNormal(scaled, normalModel(spec, scale));
  const all = kinds.reduce((sum, { values }) => sum + values.length, 0);
  const farm = answer(
    cases,
    scale,
    { bell: (c) => c.farm, spread: (c) => Math.hypot(c.runSd, c.kindSd), runs: all, pull: (c) => c.pull },
    confidence
  );
  if (!spec.kinds) return { farm, kinds: [] };
  const each = [...kinds, { values: [] }].map(
    ({ values }, i) => answer(
      cases,
      scale,
      {
        bell: (c) => c.kinds[i] ?? c.farm,
        spread: (c) => c.runSd,
        runs: values.length,
        pull: (c) => {
          const own = values.length / (values.length + (c.runSd / c.kindSd) ** 2);
          return own + (1 - own) * c.pull;
        }
      },
      confidence
    )
  );
  return { farm, kinds: each };
}
var logit = (p) => Math.log(p / (1 - p));
var steadiness = (part2) => 1 / (part2 * part2) - 1;
var sharePull = (points, runs, farms2) => points.reduce((sum, { weight, mean, steadiness: phi }) => {
  const information = runs.reduce((total, { n }) => total + n / (1 + (n - 1) / (phi + 1)), 0) * mean * (1 - mean);
  return sum + weight * information / (information + 1 / (farms2 * farms2));
}, 0);
function estimateCounted(spec, runs, confidence = 0.95) {
  const points = poolShares(runs, {
    mean: fromBells(literatureBells(logit(spec.literature), spec.farms)),
    steadiness: scaleBelief(steadiness(spec.runs), spec.runsFactor ** 2)
  });
  const [a, b] = tails(confidence);
  const [nextLow = NaN, nextHigh = NaN] = nextShareAt(points, [a, b]);
  return {
    value: meanShareAt(points, 0.5),
    low: meanShareAt(points, a),
    high: meanShareAt(points, b),
    nextLow,
    nextHigh,
    ownWeight: sharePull(points, runs, spec.farms),
    runs: runs.length
  };
}

// tests/learn/farms.ts
var Chance = class {
  state;
  spare;
  constructor(seed) {
    this.state = seed >>> 0;
  }
  /** Between 0 and 1, neither included. */
  next() {
    this.state = this.state + 2654435769 >>> 0;
    let x = this.state;
    x = Math.imul(x ^ x >>> 16, 2246822507);
    x = Math.imul(x ^ x >>> 13, 3266489909);
    return (((x ^ x >>> 16) >>> 0) + 0.5) / 4294967296;
  }
  /** Standard normal, polar method. */
  bell() {
    if (this.spare !== void 0) {
      const kept = this.spare;
      this.spare = void 0;
      return kept;
    }
    for (; ; ) {
      const u = 2 * this.next() - 1;
      const v = 2 * this.next() - 1;
      const s = u * u + v * v;
      if (s === 0 || s >= 1) continue;
      const f = Math.sqrt(-2 * Math.log(s) / s);
      this.spare = v * f;
      return u * f;
    }
  }
  /** Gamma with scale 1, squeeze-free rejection on a cubed normal; shapes below 1 by the power trick. */
  gamma(shape) {
    if (shape < 1) return this.gamma(shape + 1) * this.next() ** (1 / shape);
    const d = shape - 1 / 3;
    const c = 1 / Math.sqrt(9 * d);
    for (; ; ) {
      const z = this.bell();
      const v = (1 + c * z) ** 3;
      if (v > 0 && Math.log(this.next()) < 0.5 * z * z + d - d * v + d * Math.log(v)) return d * v;
    }
  }
  beta(a, b) {
    const x = this.gamma(a);
    const y = this.gamma(b);
    return x / (x + y);
  }
  binomial(n, p) {
    let k = 0;
    for (let i = 0; i < n; i++) if (this.next() < p) k++;
    return k;
  }
};
var SAME_QUARTILES = 0.9856;
function farmMean(chance, world, middle, sd) {
  if (world === "assumed") return middle + chance.bell() * (chance.next() < 0.1 ? 3 : 1) * sd;
  if (world === "far") return middle + (chance.next() < 0.5 ? -2 : 2) * sd;
  return middle + SAME_QUARTILES * sd * (chance.bell() / Math.sqrt(chance.gamma(2) / 2));
}
var spread = (chance, world, median, factor) => median * factor ** (world === "assumed" ? chance.bell() : Math.sqrt(3) * (2 * chance.next() - 1));

// tests/learn/coverage.ts
var logit2 = (p) => Math.log(p / (1 - p));
var shareOf3 = (x) => 1 / (1 + Math.exp(-x));
var inside = (x, low, high) => x >= low && x <= high ? 1 : 0;
var NODES = 400;
var meanOfLogits = (mu, sd) => {
  let sum = 0;
  let weight = 0;
  for (let i = 0; i <= NODES; i++) {
    const z = -6 + 12 * i / NODES;
    const w = Math.exp(-0.5 * z * z);
    sum += w * shareOf3(mu + sd * z);
    weight += w;
  }
  return sum / weight;
};
var sampleOf = (key, chance) => key === "ovulating" ? 3 + Math.floor(chance.next() * 8) : 60 + Math.floor(chance.next() ** 2 * 300);
function sharesOf(spec, world, chance) {
  const mu = farmMean(chance, world, logit2(spec.literature), spec.farms);
  const middle = shareOf3(mu);
  if (world === "assumed") {
    const phi = spread(chance, world, 1 / spec.runs ** 2 - 1, spec.runsFactor ** 2);
    return { truth: middle, draw: () => chance.beta(middle * phi, (1 - middle) * phi) };
  }
  const sd = spread(chance, world, spec.runs, spec.runsFactor) / Math.sqrt(middle * (1 - middle));
  return { truth: meanOfLogits(mu, sd), draw: () => shareOf3(mu + sd * chance.bell()) };
}
function countedFarm(key, world, runs, chance) {
  const spec = rateSpec(key);
  const { truth, draw } = sharesOf(spec, world, chance);
  const seen = Array.from({ length: runs }, () => {
    const n = sampleOf(key, chance);
    return { n, k: chance.binomial(n, draw()) };
  });
  const got = estimateCounted(spec, seen);
  return {
    mean: inside(truth, got.low, got.high),
    next: inside(draw(), got.nextLow, got.nextHigh),
    kindMean: 0,
    kindNext: 0,
    width: got.high - got.low
  };
}
var PREPARATIONS = 3;
var MONTHS = 12;
var kindsOf = (spec) => spec.kinds ? spec.kinds.by === "month" ? MONTHS : PREPARATIONS : 1;
function farmOf(spec, world, chance) {
  const isLog = spec.scale === "log";
  const middle = isLog ? Math.log(spec.literature) - (spec.runs ** 2 + (spec.kinds?.spread ?? 0) ** 2) / 2 : spec.literature;
  const mu = farmMean(chance, world, middle, spec.farms);
  const runSd = spread(chance, world, spec.runs, spec.runsFactor);
  const kindSd = spec.kinds ? spread(chance, world, spec.kinds.spread, spec.kinds.factor) : 0;
  return {
    mu,
    runSd,
    kindSd,
    thetas: Array.from({ length: kindsOf(spec) }, () => mu + kindSd * chance.bell()),
    scaled: isLog ? Math.exp : (x) => x,
    lift: isLog ? 0.5 : 0
  };
}
function measuredFarm(key, world, runs, chance) {
  const spec = rateSpec(key);
  const { mu, runSd, kindSd, thetas, scaled, lift } = farmOf(spec, world, chance);
  const kindOf = () => Math.floor(chance.next() ** 1.7 * thetas.length);
  const lists = thetas.map(() => []);
  for (let i = 0; i < runs; i++) {
    const g2 = kindOf();
    lists[g2]?.push(scaled((thetas[g2] ?? NaN) + runSd * chance.bell()));
  }
  const { farm, kinds } = estimateMeasured(
    spec,
    lists.map((values) => ({ values }))
  );
  const truth = scaled(mu + lift * (runSd ** 2 + kindSd ** 2));
  const mean = inside(truth, farm.low, farm.high);
  const next = inside(scaled(mu + Math.hypot(kindSd, runSd) * chance.bell()), farm.nextLow, farm.nextHigh);
  const g = kindOf();
  const kind = kinds[g];
  const theta = thetas[g] ?? NaN;
  return {
    mean,
    next,
    width: farm.high - farm.low,
    kindMean: kind ? inside(scaled(theta + lift * runSd ** 2), kind.low, kind.high) : 0,
    kindNext: kind ? inside(scaled(theta + runSd * chance.bell()), kind.nextLow, kind.nextHigh) : 0
  };
}
function coverage(rate, world, runs, farms2, seed) {
  const spec = rateSpec(rate);
  const chance = new Chance(seed);
  const total = { mean: 0, next: 0, kindMean: 0, kindNext: 0, width: 0 };
  for (let i = 0; i < farms2; i++) {
    const hit = (spec.scale === "share" ? countedFarm : measuredFarm)(rate, world, runs, chance);
    for (const key of Object.keys(total)) total[key] += hit[key];
  }
  return { rate, world, runs, farms: farms2, seed, ...total };
}

// tests/learn/coverageRun.ts
var FIRST = 10;
var WORLDS = ["assumed", "other", "far"];
var RUNS = [1, 2, 4, 10, 30];
var [farms = FIRST, part = 0, parts = 1] = process.argv.slice(2).map(Number);
var cell = 0;
for (const [r, rate] of RATE_KEYS.entries())
  for (const [w, world] of WORLDS.entries())
    for (const runs of RUNS) {
      if (cell++ % parts !== part) continue;
      const seed = 1 + 7919 * (100 * r + 10 * w) + runs;
      const first = coverage(rate, world, runs, FIRST, seed);
      console.log(
        JSON.stringify({
          ...farms > FIRST ? coverage(rate, world, runs, farms, seed) : first,
          first: {
            mean: first.mean,
            next: first.next,
            kindMean: first.kindMean,
            kindNext: first.kindNext,
            width: Number(first.width.toPrecision(8))
          }
        })
      );
    }
export {
  FIRST
};
//# sourceMappingURL=data:application/json;base64,ewogICJ2ZXJzaW9uIjogMywKICAic291cmNlcyI6IFsiLi4vc2hhcmVkL2ZhbWlsaWVzL2xlYXJuaW5nL3JhdGVzLnRzIiwgIi4uL3NoYXJlZC9mYW1pbGllcy9sZWFybmluZy9rZXJuZWxzL2JlbGllZi50cyIsICIuLi9zaGFyZWQvbWF0aHMvbm9ybWFsUXVhbnRpbGUudHMiLCAiLi4vc2hhcmVkL2ZhbWlsaWVzL2xlYXJuaW5nL2tlcm5lbHMvbm9ybWFsTWl4dHVyZS50cyIsICIuLi9zaGFyZWQvZmFtaWxpZXMvbGVhcm5pbmcva2VybmVscy9wb29sTm9ybWFsLnRzIiwgIi4uL3NoYXJlZC9tYXRocy9sb2dHYW1tYUZhc3QudHMiLCAiLi4vc2hhcmVkL2ZhbWlsaWVzL2xlYXJuaW5nL2tlcm5lbHMvcG9vbFNoYXJlcy50cyIsICIuLi9zaGFyZWQvZmFtaWxpZXMvbGVhcm5pbmcva2VybmVscy9zaGFyZVF1YW50aWxlcy50cyIsICIuLi9zaGFyZWQvZmFtaWxpZXMvbGVhcm5pbmcva2VybmVscy9lc3RpbWF0ZS50cyIsICIuLi90ZXN0cy9sZWFybi9mYXJtcy50cyIsICIuLi90ZXN0cy9sZWFybi9jb3ZlcmFnZS50cyIsICIuLi90ZXN0cy9sZWFybi9jb3ZlcmFnZVJ1bi50cyJdLAogICJzb3VyY2VzQ29udGVudCI6IFsiaW1wb3J0IHR5cGUgeyBBc3N1bXB0aW9uS2V5IH0gZnJvbSAnLi4vYXNzdW1wdGlvbnMnO1xuXG4vKipcbiAqIFdoYXQgYSBoYXRjaGVyeSBsZWFybnMgZnJvbSBpdHMgcnVucywgd2l0aCB3aGF0IGlzIGJlbGlldmVkIGJlZm9yZSBpdHMgZmlyc3Qgb25lLiBTcHJlYWRzIHN0YW5kIG9uIHRoZVxuICogc2NhbGUgb2YgdGhlIHJhdGU6IHNoYXJlIFx1MjAxMyBsbihwLygxIFx1MjIxMiBwKSkgZm9yIGZhcm1zOyBydW5zIGFzIHRoZWlyIHN0YW5kYXJkIGRldmlhdGlvbiBcdTAwRjcgXHUyMjFBKE0oMSBcdTIyMTIgTSkpLCB3aGljaFxuICogaXMgYmV0d2VlbiAwIGFuZCAxIGxvZyAgIFx1MjAxMyBuYXR1cmFsIGxvZ2FyaXRobSBcdTAwQjcgZGlmZmVyZW5jZSBcdTIwMTMgdGhlIHVuaXQgaXRzZWxmXG4gKi9cbmV4cG9ydCBpbnRlcmZhY2UgUmF0ZVNwZWMge1xuICByZWFkb25seSBrZXk6IHN0cmluZztcbiAgcmVhZG9ubHkgbGFiZWw6IHN0cmluZztcbiAgLyoqIEFzIHRoZSBzaGVldCBwcmludHMgaXQuICovXG4gIHJlYWRvbmx5IHVuaXQ6IHN0cmluZztcbiAgcmVhZG9ubHkgZm9ybWF0OiBzdHJpbmc7XG4gIHJlYWRvbmx5IHNjYWxlOiAnc2hhcmUnIHwgJ2xvZycgfCAnZGlmZmVyZW5jZSc7XG4gIHJlYWRvbmx5IGxpdGVyYXR1cmU6IG51bWJlcjtcbiAgLyoqIFN0YW5kYXJkIGRldmlhdGlvbiBvZiBmYXJtIG1lYW5zIGFyb3VuZCB0aGUgbGl0ZXJhdHVyZS4gKi9cbiAgcmVhZG9ubHkgZmFybXM6IG51bWJlcjtcbiAgLyoqIFVzdWFsIHNwcmVhZCBiZXR3ZWVuIHJ1bnMgb2Ygb25lIGZhcm0sIGFuZCB0aGUgZmFjdG9yIGl0IGlzIGtub3duIHRvLiAqL1xuICByZWFkb25seSBydW5zOiBudW1iZXI7XG4gIHJlYWRvbmx5IHJ1bnNGYWN0b3I6IG51bWJlcjtcbiAgLyoqIFJ1bnMgY29tZSBpbiBraW5kcyB0aGF0IGRpZmZlciBtb3JlIHRoYW4gcnVucyBvZiBvbmUga2luZCBkby4gKi9cbiAgcmVhZG9ubHkga2luZHM/OiB7IHJlYWRvbmx5IGJ5OiAncHJlcGFyYXRpb24nIHwgJ21vbnRoJzsgcmVhZG9ubHkgc3ByZWFkOiBudW1iZXI7IHJlYWRvbmx5IGZhY3RvcjogbnVtYmVyIH07XG4gIC8qKiBOb3RoaW5nIGFib3ZlIHRoaXMgY2FuIGJlOyBlbmRzIG9mIGludGVydmFscyBhcmUgY3V0IHRoZXJlLiAqL1xuICByZWFkb25seSBtb3N0PzogbnVtYmVyO1xuICAvKiogVGhlIGZpZ3VyZSBvZiB0aGUgc2Vhc29uIHBsYW4gaXQgcmVwbGFjZXMuICovXG4gIHJlYWRvbmx5IGFzc3VtcHRpb24/OiBBc3N1bXB0aW9uS2V5O1xuICAvKiogS2V5cyBvZiBzaGFyZWQvc291cmNlcy50cy4gKi9cbiAgcmVhZG9ubHkgc291cmNlczogcmVhZG9ubHkgc3RyaW5nW107XG4gIC8qKiBXaGF0IHRoZSBsaXRlcmF0dXJlIHZhbHVlIGlzLCBhbmQgaG93IHRoZSBzcHJlYWRzIHdlcmUgcmVhY2hlZC4gKi9cbiAgcmVhZG9ubHkgbm90ZTogc3RyaW5nO1xufVxuXG5jb25zdCBTSEFSRSA9IHsgdW5pdDogJ3NoYXJlJywgZm9ybWF0OiAnMC4wJScsIHNjYWxlOiAnc2hhcmUnLCBydW5zRmFjdG9yOiAxLjggfSBhcyBjb25zdDtcbmNvbnN0IENIT1NFTiA9ICdTcHJlYWRzIGFyZSBjaG9zZW4gaGVyZSwgbm8gc291cmNlLic7XG5cbmV4cG9ydCBjb25zdCBSQVRFUyA9IHtcbiAgbGF0ZW5jeU9mZnNldDoge1xuICAgIGtleTogJ2xhdGVuY3lPZmZzZXQnLFxuICAgIGxhYmVsOiAnU3RyaXAgbGF0ZXIgdGhhbiB0aGUgdGFibGUgYnknLFxuICAgIHVuaXQ6ICdoJyxcbiAgICBmb3JtYXQ6ICcwLjAnLFxuICAgIHNjYWxlOiAnZGlmZmVyZW5jZScsXG4gICAgbGl0ZXJhdHVyZTogMCxcbiAgICBmYXJtczogMixcbiAgICBydW5zOiAwLjcsXG4gICAgcnVuc0ZhY3RvcjogMixcbiAgICBraW5kczogeyBieTogJ3ByZXBhcmF0aW9uJywgc3ByZWFkOiAxLCBmYWN0b3I6IDIgfSxcbiAgICBhc3N1bXB0aW9uOiAnbGF0ZW5jeU9mZnNldCcsXG4gICAgc291cmNlczogWydHUkFBRjk2JywgJ09LRVIxNScsICdDTEFSSUlEUEFHRScsICdQUkFDVElDRSddLFxuICAgIG5vdGU6XG4gICAgICAnSG91cnMgYWZ0ZXIgdGhlIHRhYmxlIG9mIHRoZSBwcmVwYXJhdGlvbi4gUHVibGlzaGVkIHN0cmlwcyBsaWUgMC4yIHRvIDQuNSBoIGFmdGVyICcgK1xuICAgICAgJ3RoZSBoYW5kYm9vayB0YWJsZSwgaGVuY2UgYSBmYXJtIHNwcmVhZCBvZiAyIGg7IHRoZSBvdGhlciBzcHJlYWRzIGFyZSBjaG9zZW4gaGVyZSwgJyArXG4gICAgICAnbm8gc291cmNlLicsXG4gIH0sXG4gIGluY3ViYXRpb25GYWN0b3I6IHtcbiAgICBrZXk6ICdpbmN1YmF0aW9uRmFjdG9yJyxcbiAgICBsYWJlbDogJ0luY3ViYXRpb24sIHRpbWVzIHRoZSB0YWJsZScsXG4gICAgdW5pdDogJycsXG4gICAgZm9ybWF0OiAnMC4wMCcsXG4gICAgc2NhbGU6ICdsb2cnLFxuICAgIGxpdGVyYXR1cmU6IDEsXG4gICAgZmFybXM6IDAuMTIsXG4gICAgcnVuczogMC4wNixcbiAgICBydW5zRmFjdG9yOiAyLFxuICAgIHNvdXJjZXM6IFsnR1JBQUY5NicsICdBTVBDTEFSSUFTJywgJ0FDRUgxOSddLFxuICAgIG5vdGU6XG4gICAgICAnSG91cnMgdGFrZW4gXHUwMEY3IGhvdXJzIG9mIHRoZSB0YWJsZS4gVHdvIHB1Ymxpc2hlZCBkdXJhdGlvbnMgYXJlIDEuMTAgYW5kIDEuMTEgdGltZXMgJyArXG4gICAgICAndGhlIGhhbmRib29rIHRhYmxlLCBoZW5jZSBhIGZhcm0gc3ByZWFkIG9mIDEyICU7IHRoZSBzcHJlYWQgb2YgcnVucyBpcyBjaG9zZW4gaGVyZSwgJyArXG4gICAgICAnbm8gc291cmNlLicsXG4gIH0sXG4gIGVnZ1NoYXJlOiB7XG4gICAga2V5OiAnZWdnU2hhcmUnLFxuICAgIGxhYmVsOiAnRWdnIHdlaWdodCBvZiBib2R5IHdlaWdodCcsXG4gICAgdW5pdDogJ3NoYXJlJyxcbiAgICBmb3JtYXQ6ICcwLjAlJyxcbiAgICBzY2FsZTogJ2xvZycsXG4gICAgbGl0ZXJhdHVyZTogMC4xLFxuICAgIGZhcm1zOiAwLjYsXG4gICAgcnVuczogMC4zLFxuICAgIHJ1bnNGYWN0b3I6IDIsXG4gICAga2luZHM6IHsgYnk6ICdtb250aCcsIHNwcmVhZDogMC41LCBmYWN0b3I6IDIgfSxcbiAgICBtb3N0OiAwLjMsXG4gICAgYXNzdW1wdGlvbjogJ2VnZ1NoYXJlJyxcbiAgICBzb3VyY2VzOiBbJ0dSQUFGOTUnXSxcbiAgICBub3RlOlxuICAgICAgJ0RyeSBzZWFzb24gMS4zICUsIHJhaW55IHNlYXNvbiAxNC4zICU7IDEwICUgaXMgY2hvc2VuIGJldHdlZW4gdGhlbSBhbmQgYSBxdWFydGVyIG9mICcgK1xuICAgICAgJ3RoZWlyIGRpc3RhbmNlIG9uIGEgbG9nYXJpdGhtaWMgc2NhbGUgaXMgdGhlIHNwcmVhZCBvZiBmYXJtcy4gVGhlIG90aGVyIHNwcmVhZHMsICcgK1xuICAgICAgJ2FuZCB0aGUgMzAgJSBub3RoaW5nIG1heSBwYXNzLCBhcmUgY2hvc2VuIGhlcmUsIG5vIHNvdXJjZS4nLFxuICB9LFxuICBlZ2dzUGVyR3JhbToge1xuICAgIGtleTogJ2VnZ3NQZXJHcmFtJyxcbiAgICBsYWJlbDogJ0VnZ3MgaW4gYSBncmFtJyxcbiAgICB1bml0OiAncGVyIGcnLFxuICAgIGZvcm1hdDogJyMsIyMwJyxcbiAgICBzY2FsZTogJ2xvZycsXG4gICAgbGl0ZXJhdHVyZTogNjY5LFxuICAgIGZhcm1zOiAwLjI1LFxuICAgIHJ1bnM6IDAuMTUsXG4gICAgcnVuc0ZhY3RvcjogMixcbiAgICBhc3N1bXB0aW9uOiAnZWdnc1BlckdyYW0nLFxuICAgIHNvdXJjZXM6IFsnREFERUJPMDAnLCAnQVVEVTIzJ10sXG4gICAgbm90ZTpcbiAgICAgICdNZWFuIG9mIDQwIGZlbWFsZXMsIDQzNSB0byAxLDE3NiwgcHJlc2VydmVkIG92YXJpZXM7IGZpdmUgc3RyaXBwZWQgZ3JvdXBzIGVsc2V3aGVyZSAnICtcbiAgICAgICdnYXZlIDY5MiB0byA4NDcuIEEgcXVhcnRlciBvZiB0aGUgcmFuZ2Ugb24gYSBsb2dhcml0aG1pYyBzY2FsZSBpcyB0aGUgc3ByZWFkIG9mICcgK1xuICAgICAgJ2Zhcm1zOyB0aGUgc3ByZWFkIG9mIHJ1bnMgaXMgY2hvc2VuIGhlcmUsIG5vIHNvdXJjZS4nLFxuICB9LFxuICBvdnVsYXRpbmc6IHtcbiAgICAuLi5TSEFSRSxcbiAgICBrZXk6ICdvdnVsYXRpbmcnLFxuICAgIGxhYmVsOiAnSW5qZWN0ZWQgZmVtYWxlcyB0aGF0IGdpdmUgZWdncycsXG4gICAgbGl0ZXJhdHVyZTogMC44NzUsXG4gICAgZmFybXM6IDEsXG4gICAgcnVuczogMC4yLFxuICAgIGFzc3VtcHRpb246ICdvdnVsYXRpbmcnLFxuICAgIHNvdXJjZXM6IFsnQlJaVVNLQTAzJ10sXG4gICAgbm90ZTogYDg3LjUgJSBhZnRlciBhIHJlYWR5LW1hZGUgc29sdXRpb24sIGFsbCBhZnRlciBjYXJwIHBpdHVpdGFyeS4gJHtDSE9TRU59YCxcbiAgfSxcbiAgZmVydGlsaXNhdGlvbjoge1xuICAgIC4uLlNIQVJFLFxuICAgIGtleTogJ2ZlcnRpbGlzYXRpb24nLFxuICAgIGxhYmVsOiAnRWdncyBmZXJ0aWxpc2VkJyxcbiAgICBsaXRlcmF0dXJlOiAwLjgzNixcbiAgICBmYXJtczogMSxcbiAgICBydW5zOiAwLjMsXG4gICAgc291cmNlczogWydXT1JMREFRMjUnLCAnUlVSQU5HV0E5OCcsICdBVURVMjMnXSxcbiAgICBub3RlOiBgODMuNiAlIGF0IHRoZSBiZXN0IGhvdXIgb2Ygb25lIHRyaWFsOyA4MCAlIGFuZCA5OCB0byA5OSAlIGVsc2V3aGVyZS4gJHtDSE9TRU59YCxcbiAgfSxcbiAgaGF0Y2g6IHtcbiAgICAuLi5TSEFSRSxcbiAgICBrZXk6ICdoYXRjaCcsXG4gICAgbGFiZWw6ICdFZ2dzIHRoYXQgaGF0Y2gnLFxuICAgIGxpdGVyYXR1cmU6IDAuNTksXG4gICAgZmFybXM6IDAuNyxcbiAgICBydW5zOiAwLjMsXG4gICAgYXNzdW1wdGlvbjogJ2hhdGNoJyxcbiAgICBzb3VyY2VzOiBbJ0dSQUFGOTUnLCAnVFA2MiddLFxuICAgIG5vdGU6XG4gICAgICAnT2YgYWxsIGVnZ3Mgc2V0LiBSYWlueSBzZWFzb24gNTkgJSwgZHJ5IDI4ICUsIGJlc3QgbW9udGggb2YgYW5vdGhlciBzdGF0aW9uIDg2ICU6IGEgJyArXG4gICAgICAncXVhcnRlciBvZiB0aGF0IHJhbmdlIGlzIHRoZSBzcHJlYWQgb2YgZmFybXMuIFRoZSBzcHJlYWQgb2YgcnVucyBpcyBjaG9zZW4gaGVyZSwgbm8gJyArXG4gICAgICAnc291cmNlLicsXG4gIH0sXG4gIGxhcnZhZVRvRnJ5OiB7XG4gICAgLi4uU0hBUkUsXG4gICAga2V5OiAnbGFydmFlVG9GcnknLFxuICAgIGxhYmVsOiAnSGF0Y2hlZCBsYXJ2YWUgdGhhdCBiZWNvbWUgZnJ5JyxcbiAgICBsaXRlcmF0dXJlOiAwLjYsXG4gICAgZmFybXM6IDAuOSxcbiAgICBydW5zOiAwLjMsXG4gICAgc291cmNlczogWydPS0VSMTUnLCAnQ0hFUDExJywgJ0hZQlJJRExBUlZBRSddLFxuICAgIG5vdGU6IGA4MCAlIGFsaXZlIGF0IGZpcnN0IGZlZWQgdGltZXMgNzUgJSB3ZWFuZWQuICR7Q0hPU0VOfWAsXG4gIH0sXG4gIGZyeVN1cnZpdmFsOiB7XG4gICAgLi4uU0hBUkUsXG4gICAga2V5OiAnZnJ5U3Vydml2YWwnLFxuICAgIGxhYmVsOiAnTGFydmFlIHN0b2NrZWQgdGhhdCBiZWNvbWUgd2VhbmVkIGZyeScsXG4gICAgbGl0ZXJhdHVyZTogMC43NSxcbiAgICBmYXJtczogMC45LFxuICAgIHJ1bnM6IDAuMyxcbiAgICBhc3N1bXB0aW9uOiAnZnJ5U3Vydml2YWwnLFxuICAgIHNvdXJjZXM6IFsnQ0hFUDExJywgJ0hZQlJJRExBUlZBRSddLFxuICAgIG5vdGU6XG4gICAgICAnQmVsb3cgNzUgJSB3aXRoIHN1ZGRlbiBkcnkgZmVlZCwgYWJvdmUgOTAgJSB3aXRoIGhhbGYgbGl2ZSBmb29kOyAzMyAlIG9uIGRyeSBmZWVkICcgK1xuICAgICAgJ2Fsb25lLiBBYm91dCBhIHF1YXJ0ZXIgb2YgMzMgdG8gOTMgJSBpcyB0aGUgc3ByZWFkIG9mIGZhcm1zOyB0aGUgc3ByZWFkIG9mIHJ1bnMgaXMgJyArXG4gICAgICAnY2hvc2VuIGhlcmUsIG5vIHNvdXJjZS4nLFxuICB9LFxuICBudXJzZXJ5U3Vydml2YWw6IHtcbiAgICAuLi5TSEFSRSxcbiAgICBrZXk6ICdudXJzZXJ5U3Vydml2YWwnLFxuICAgIGxhYmVsOiAnRnJ5IHRoYXQgYmVjb21lIGZpbmdlcmxpbmdzJyxcbiAgICBsaXRlcmF0dXJlOiAwLjc2LFxuICAgIGZhcm1zOiAwLjgsXG4gICAgcnVuczogMC4zLFxuICAgIGFzc3VtcHRpb246ICdudXJzZXJ5U3Vydml2YWwnLFxuICAgIHNvdXJjZXM6IFsnTUFLRVJFUkUnXSxcbiAgICBub3RlOiBgODggJSBhdCA1MCBwZXIgbGl0cmUsIDY0ICUgYXQgMTUwIHBlciBsaXRyZS4gJHtDSE9TRU59YCxcbiAgfSxcbiAgZnJ5R3Jvd3RoOiB7XG4gICAga2V5OiAnZnJ5R3Jvd3RoJyxcbiAgICBsYWJlbDogJ0dyb3d0aCBvZiBsYXJ2YWUgYW5kIGZyeScsXG4gICAgdW5pdDogJyUvZCcsXG4gICAgZm9ybWF0OiAnMC4wJyxcbiAgICBzY2FsZTogJ2xvZycsXG4gICAgbGl0ZXJhdHVyZTogMTYsXG4gICAgZmFybXM6IDAuMzUsXG4gICAgcnVuczogMC4xNSxcbiAgICBydW5zRmFjdG9yOiAyLFxuICAgIGFzc3VtcHRpb246ICdmcnlHcm93dGgnLFxuICAgIHNvdXJjZXM6IFsnSFlCUklETEFSVkFFJ10sXG4gICAgbm90ZTogJzE2LjEgJSBhIGRheSBvbiBkZWNhcHN1bGF0ZWQgY3lzdHMsIDcuMCAlIG9uIGRyeSBmZWVkIGFsb25lLiBTcHJlYWRzIGFyZSBjaG9zZW4gaGVyZSwgbm8gc291cmNlLicsXG4gIH0sXG4gIG51cnNlcnlHcm93dGg6IHtcbiAgICBrZXk6ICdudXJzZXJ5R3Jvd3RoJyxcbiAgICBsYWJlbDogJ0dyb3d0aCB3aGlsZSBudXJzaW5nJyxcbiAgICB1bml0OiAnJS9kJyxcbiAgICBmb3JtYXQ6ICcwLjAnLFxuICAgIHNjYWxlOiAnbG9nJyxcbiAgICBsaXRlcmF0dXJlOiAxMixcbiAgICBmYXJtczogMC4zLFxuICAgIHJ1bnM6IDAuMTUsXG4gICAgcnVuc0ZhY3RvcjogMixcbiAgICBhc3N1bXB0aW9uOiAnbnVyc2VyeUdyb3d0aCcsXG4gICAgc291cmNlczogWydNQUtFUkVSRScsICdBSkFOSTE1J10sXG4gICAgbm90ZTpcbiAgICAgICcxMi41ICUgYSBkYXkgYXQgNTAgcGVyIGxpdHJlLCAxMS4xICUgYXQgMTUwOyA4LjUgJSBhdCAxMDAgaW4gYW5vdGhlciB0cmlhbC4gU3ByZWFkcyAnICtcbiAgICAgICdhcmUgY2hvc2VuIGhlcmUsIG5vIHNvdXJjZS4nLFxuICB9LFxufSBhcyBjb25zdCBzYXRpc2ZpZXMgUmVhZG9ubHk8UmVjb3JkPHN0cmluZywgUmF0ZVNwZWM+PjtcblxuZXhwb3J0IHR5cGUgUmF0ZUtleSA9IGtleW9mIHR5cGVvZiBSQVRFUztcbmV4cG9ydCBjb25zdCBSQVRFX0tFWVMgPSBPYmplY3Qua2V5cyhSQVRFUykgYXMgcmVhZG9ubHkgUmF0ZUtleVtdO1xuZXhwb3J0IGNvbnN0IHJhdGVTcGVjID0gKGtleTogUmF0ZUtleSk6IFJhdGVTcGVjID0+IFJBVEVTW2tleV07XG4iLCAiLyoqXG4gKiBXaGF0IGlzIGJlbGlldmVkIG9mIGFuIHVua25vd24gYmVmb3JlIHRoZSBmYXJtJ3Mgb3duIHJ1bnMgYXJlIHNlZW46IGEgZGVuc2l0eSBvbiBhIGxpbmUsIGFzIGl0cyBsb2dhcml0aG1cbiAqIHVwIHRvIGEgY29uc3RhbnQsIGFuZCB0aGUgc3RyZXRjaCBvdXRzaWRlIHdoaWNoIGl0IGlzIG5vdGhpbmcuIFNjYWxlcyAoc3ByZWFkIGJldHdlZW4gcnVucykgYXJlIHdyaXR0ZW4gb25cbiAqIHRoZSBsb2dhcml0aG0gb2YgdGhlIHNjYWxlLlxuICovXG5leHBvcnQgaW50ZXJmYWNlIEJlbGllZiB7XG4gIHJlYWRvbmx5IGxvZ0RlbnNpdHk6ICh1OiBudW1iZXIpID0+IG51bWJlcjtcbiAgcmVhZG9ubHkgZnJvbTogbnVtYmVyO1xuICByZWFkb25seSB0bzogbnVtYmVyO1xufVxuXG4vKiogQmVsbCBjdXJ2ZXMgc2lkZSBieSBzaWRlOiB3ZWlnaHQsIG1pZGRsZSwgc3ByZWFkLiAqL1xuZXhwb3J0IGludGVyZmFjZSBCZWxsIHtcbiAgcmVhZG9ubHkgd2VpZ2h0OiBudW1iZXI7XG4gIHJlYWRvbmx5IG1lYW46IG51bWJlcjtcbiAgcmVhZG9ubHkgc2Q6IG51bWJlcjtcbn1cblxuY29uc3QgbG9nQmVsbCA9ICh1OiBudW1iZXIsIHsgbWVhbiwgc2QgfTogQmVsbCk6IG51bWJlciA9PiAtMC41ICogKCh1IC0gbWVhbikgLyBzZCkgKiogMiAtIE1hdGgubG9nKHNkKTtcblxuY29uc3QgUkVBQ0ggPSA2O1xuZXhwb3J0IGNvbnN0IGZyb21CZWxscyA9IChiZWxsczogcmVhZG9ubHkgQmVsbFtdKTogQmVsaWVmID0+ICh7XG4gIGxvZ0RlbnNpdHk6ICh1KSA9PiB7XG4gICAgLy8gRnJvbSB0aGUgbmVhcmVzdCBiZWxsIG91dHdhcmRzLCBzbyB0aGF0IGZhciBmcm9tIGFsbCBvZiB0aGVtIG5vdGhpbmcgaXMgbG9zdCB0byAwLlxuICAgIGxldCBsb2cgPSAtSW5maW5pdHk7XG4gICAgZm9yIChjb25zdCBiZWxsIG9mIGJlbGxzKSB7XG4gICAgICBjb25zdCBuZXh0ID0gTWF0aC5sb2coYmVsbC53ZWlnaHQpICsgbG9nQmVsbCh1LCBiZWxsKTtcbiAgICAgIGxvZyA9IE1hdGgubWF4KGxvZywgbmV4dCkgKyBNYXRoLmxvZzFwKE1hdGguZXhwKC1NYXRoLmFicyhsb2cgLSBuZXh0KSkpO1xuICAgIH1cbiAgICByZXR1cm4gbG9nO1xuICB9LFxuICBmcm9tOiBNYXRoLm1pbiguLi5iZWxscy5tYXAoKHsgbWVhbiwgc2QgfSkgPT4gbWVhbiAtIFJFQUNIICogc2QpKSxcbiAgdG86IE1hdGgubWF4KC4uLmJlbGxzLm1hcCgoeyBtZWFuLCBzZCB9KSA9PiBtZWFuICsgUkVBQ0ggKiBzZCkpLFxufSk7XG5cbi8qKiBPbmUgZmFybSBpbiB0ZW4gaXMgdW5saWtlIHRob3NlIHRoYXQgd2VyZSBwdWJsaXNoZWQ6IGl0cyBtZWFuIG1heSBsaWUgdGhpcyBtYW55IHRpbWVzIGZ1cnRoZXIgb2ZmLiAqL1xuY29uc3QgVU5MSUtFX1NIQVJFID0gMC4xO1xuY29uc3QgVU5MSUtFX1RJTUVTID0gMztcbi8qKlxuICogVGhlIGxpdGVyYXR1cmUgYXMgYSBiZWxsIHdpdGggaGVhdnkgdGFpbHMsIHNvIHRoYXQgYSBmYXJtIHRoYXQgaXMgdW5saWtlIHRoZSBwdWJsaXNoZWQgb25lcyBpcyBiZWxpZXZlZCxcbiAqIG5vdCBwdWxsZWQgYmFjay5cbiAqXG4gKiBQdWJsaXNoZWQgZm9ybTogYSBtaXh0dXJlIG9mIHRoZSBpbmZvcm1hdGl2ZSBwcmlvciBhbmQgYSB3aWRlciBvbmUgKFNDSE1JRExJMTQpLiBXZWlnaHQgMC4xIGFuZCB3aWR0aCAzIGFyZVxuICogY2hvc2VuIGhlcmUuXG4gKi9cbmV4cG9ydCBjb25zdCBsaXRlcmF0dXJlQmVsbHMgPSAobWVhbjogbnVtYmVyLCBzZDogbnVtYmVyKTogcmVhZG9ubHkgQmVsbFtdID0+IFtcbiAgeyB3ZWlnaHQ6IDEgLSBVTkxJS0VfU0hBUkUsIG1lYW4sIHNkIH0sXG4gIHsgd2VpZ2h0OiBVTkxJS0VfU0hBUkUsIG1lYW4sIHNkOiBVTkxJS0VfVElNRVMgKiBzZCB9LFxuXTtcblxuLyoqXG4gKiBBIHNjYWxlIGtub3duIHRvIGEgZmFjdG9yOiBsb2ctbm9ybWFsLCB0d28gdGhpcmRzIG9mIHRoZSBiZWxpZWYgYmV0d2VlbiBtZWRpYW4gXHUwMEY3IGZhY3RvciBhbmQgbWVkaWFuIFx1MDBEN1xuICogZmFjdG9yLlxuICovXG5leHBvcnQgY29uc3Qgc2NhbGVCZWxpZWYgPSAobWVkaWFuOiBudW1iZXIsIGZhY3RvcjogbnVtYmVyKTogQmVsaWVmID0+XG4gIGZyb21CZWxscyhbeyB3ZWlnaHQ6IDEsIG1lYW46IE1hdGgubG9nKG1lZGlhbiksIHNkOiBNYXRoLmxvZyhmYWN0b3IpIH1dKTtcblxuLyoqIEV2ZW5seSBzcGFjZWQgcG9pbnRzIGZyb20gYSB0byBiLiAqL1xuZXhwb3J0IGNvbnN0IGdyaWQgPSAoZnJvbTogbnVtYmVyLCB0bzogbnVtYmVyLCBwb2ludHM6IG51bWJlcik6IG51bWJlcltdID0+XG4gIEFycmF5LmZyb20oeyBsZW5ndGg6IHBvaW50cyB9LCAoXywgaSkgPT4gZnJvbSArICgodG8gLSBmcm9tKSAqIGkpIC8gKHBvaW50cyAtIDEpKTtcblxuLyoqIExvZ2FyaXRobXMgYmVsb3cgdGhlIHRvcCBieSBtb3JlIHRoYW4gdGhpcyBjYXJyeSBubyB3ZWlnaHQ6IGVeXHUyMjEyMTYgaXMgYSB0ZW4tbWlsbGlvbnRoLiAqL1xuZXhwb3J0IGNvbnN0IE5PVEhJTkcgPSAxNjtcblxuLyoqXG4gKiBOYXJyb3dzIGEgc3RyZXRjaCB0byB3aGVyZSBhIGZ1bmN0aW9uIG9mIGxvZyB3ZWlnaHQgaXMgbm90IG5vdGhpbmc6IGxvb2tzIGF0IGBwb2ludHNgLCBrZWVwcyB0aG9zZSBuZWFyIHRoZVxuICogdG9wIGFuZCBvbmUgc3RlcCBiZXlvbmQsIGFuZCBsb29rcyBhZ2FpbiB1bnRpbCB0aGUgc3RyZXRjaCBzdGF5cy4gVGhlIHN0ZXAgYmV0d2VlbiBwb2ludHMgbXVzdCBzdGF5IGZpbmVyXG4gKiB0aGFuIHRoZSBmdW5jdGlvbiBpcyBuYXJyb3csIHdoaWNoIHRoZSByZXBlYXRlZCBsb29rIHRha2VzIGNhcmUgb2YuXG4gKi9cbmV4cG9ydCBmdW5jdGlvbiBuYXJyb3coXG4gIGZyb206IG51bWJlcixcbiAgdG86IG51bWJlcixcbiAgcG9pbnRzOiBudW1iZXIsXG4gIGxvZ1dlaWdodDogKHU6IG51bWJlcikgPT4gbnVtYmVyLFxuKTogcmVhZG9ubHkgW251bWJlciwgbnVtYmVyXSB7XG4gIGxldCBsb3cgPSBmcm9tO1xuICBsZXQgaGlnaCA9IHRvO1xuICBmb3IgKGxldCBsb29rID0gMDsgbG9vayA8IDg7IGxvb2srKykge1xuICAgIGNvbnN0IGF0ID0gZ3JpZChsb3csIGhpZ2gsIHBvaW50cyk7XG4gICAgY29uc3QgbG9ncyA9IGF0Lm1hcChsb2dXZWlnaHQpO1xuICAgIGNvbnN0IHRvcCA9IE1hdGgubWF4KC4uLmxvZ3MpO1xuICAgIGNvbnN0IGZpcnN0ID0gbG9ncy5maW5kSW5kZXgoKHgpID0+IHggPiB0b3AgLSBOT1RISU5HKTtcbiAgICBjb25zdCBsYXN0ID0gbG9ncy5maW5kTGFzdEluZGV4KCh4KSA9PiB4ID4gdG9wIC0gTk9USElORyk7XG4gICAgY29uc3QgYSA9IGF0W01hdGgubWF4KDAsIGZpcnN0IC0gMSldID8/IGxvdztcbiAgICBjb25zdCBiID0gYXRbTWF0aC5taW4ocG9pbnRzIC0gMSwgbGFzdCArIDEpXSA/PyBoaWdoO1xuICAgIGNvbnN0IHN0YXlzID0gYiAtIGEgPiAwLjYgKiAoaGlnaCAtIGxvdyk7XG4gICAgbG93ID0gYTtcbiAgICBoaWdoID0gYjtcbiAgICBpZiAoc3RheXMpIGJyZWFrO1xuICB9XG4gIHJldHVybiBbbG93LCBoaWdoXTtcbn1cbiIsICIvKiogQ29lZmZpY2llbnRzIGJ5IHJpc2luZyBwb3dlcjsgV0lDSDg4LCBQUE5EMTYuICovXG5jb25zdCBDRU5UUkUgPSBbXG4gIDMuMzg3MTMyODcyNzk2MzY2NjA4LCAxMzMuMTQxNjY3ODkxNzg0Mzc3NDUsIDE5NzEuNTkwOTUwMzA2NTUxNDQyNywgMTM3MzEuNjkzNzY1NTA5NDYxMTI1LFxuICA0NTkyMS45NTM5MzE1NDk4NzE0NTcsIDY3MjY1Ljc3MDkyNzAwODcwMDg1MywgMzM0MzAuNTc1NTgzNTg4MTI4MTA1LCAyNTA5LjA4MDkyODczMDEyMjY3MjcsXG5dO1xuY29uc3QgQ0VOVFJFX0JFTE9XID0gW1xuICAxLCA0Mi4zMTMzMzA3MDE2MDA5MTEyNTIsIDY4Ny4xODcwMDc0OTIwNTc5MDgzLCA1Mzk0LjE5NjAyMTQyNDc1MTEwNzcsIDIxMjEzLjc5NDMwMTU4NjU5NTg2NyxcbiAgMzkzMDcuODk1ODAwMDkyNzEwNjEsIDI4NzI5LjA4NTczNTcyMTk0MjY3NCwgNTIyNi40OTUyNzg4NTI1NDU5MjUsXG5dO1xuY29uc3QgTUlERExFID0gW1xuICAxLjQyMzQzNzExMDc0OTY4MzU3NzM0LCA0LjYzMDMzNzg0NjE1NjU0NTI5NTksIDUuNzY5NDk3MjIxNDYwNjkxNDA1NSwgMy42NDc4NDgzMjQ3NjMyMDQ2MDUwNCxcbiAgMS4yNzA0NTgyNTI0NTIzNjgzODI1OCwgMC4yNDE3ODA3MjUxNzc0NTA2MTE3NywgMC4wMjI3MjM4NDQ5ODkyNjkxODQ1ODMzLCA3Ljc0NTQ1MDE0Mjc4MzQxNDA3NjRlLTQsXG5dO1xuY29uc3QgTUlERExFX0JFTE9XID0gW1xuICAxLCAyLjA1MzE5MTYyNjYzNzc1ODgyMTg3LCAxLjY3NjM4NDgzMDE4MzgwMzg0OTQsIDAuNjg5NzY3MzM0OTg1MTAwMDA0NTUsIDAuMTQ4MTAzOTc2NDI3NDgwMDc0NTksXG4gIDAuMDE1MTk4NjY2NTYzNjE2NDU3MTk2NiwgNS40NzU5MzgwODQ5OTUzNDQ5NDZlLTQsIDEuMDUwNzUwMDcxNjQ0NDE2ODQzMjRlLTksXG5dO1xuY29uc3QgVEFJTCA9IFtcbiAgNi42NTc5MDQ2NDM1MDExMDM3NzcyLCA1LjQ2Mzc4NDkxMTE2NDExNDM2OTksIDEuNzg0ODI2NTM5OTE3MjkxMzM1OCwgMC4yOTY1NjA1NzE4Mjg1MDQ4OTEyMyxcbiAgMC4wMjY1MzIxODk1MjY1NzYxMjMwOTMsIDAuMDAxMjQyNjYwOTQ3Mzg4MDc4NDM4NiwgMi43MTE1NTU1Njg3NDM0ODc1NzgxNWUtNSwgMi4wMTAzMzQzOTkyOTIyODgxMzI2NWUtNyxcbl07XG5jb25zdCBUQUlMX0JFTE9XID0gW1xuICAxLCAwLjU5OTgzMjIwNjU1NTg4NzkzNzY5LCAwLjEzNjkyOTg4MDkyMjczNTgwNTMxLCAwLjAxNDg3NTM2MTI5MDg1MDYxNDg1MjUsIDcuODY4NjkxMzExNDU2MTMyNTkxZS00LFxuICAxLjg0NjMxODMxNzUxMDA1NDY4MThlLTUsIDEuNDIxNTExNzU4MzE2NDQ1ODg4N2UtNywgMi4wNDQyNjMxMDMzODk5Mzk3ODU2NGUtMTUsXG5dO1xuXG5jb25zdCBob3JuZXIgPSAoY29lZmZpY2llbnRzOiByZWFkb25seSBudW1iZXJbXSwgeDogbnVtYmVyKTogbnVtYmVyID0+IHtcbiAgbGV0IHN1bSA9IDA7XG4gIGZvciAobGV0IGkgPSBjb2VmZmljaWVudHMubGVuZ3RoIC0gMTsgaSA+PSAwOyBpLS0pIHN1bSA9IHN1bSAqIHggKyAoY29lZmZpY2llbnRzW2ldID8/IDApO1xuICByZXR1cm4gc3VtO1xufTtcblxuLyoqXG4gKiBTdGFuZGFyZCBub3JtYWwgcXVhbnRpbGU6IHRoZSB6IGJlbG93IHdoaWNoIGEgc2hhcmUgcCBvZiB0aGUgZGlzdHJpYnV0aW9uIGxpZXMuXG4gKlxuICogUmF0aW9uYWwgYXBwcm94aW1hdGlvbiBpbiB0aHJlZSBwaWVjZXMuIEluOiBzaGFyZS4gT3V0OiB6LiBWYWxpZGl0eTogMCA8IHAgPCAxLCBOYU4gb3V0c2lkZTsgcmVsYXRpdmUgZXJyb3JcbiAqIG5lYXIgMWUtMTYuIFNvdXJjZTogV0lDSDg4LiBFeGFtcGxlOiAwLjk3NSBcdTIxOTIgMS45NTk5NjQuXG4gKi9cbmV4cG9ydCBjb25zdCBub3JtYWxRdWFudGlsZSA9IChwOiBudW1iZXIpOiBudW1iZXIgPT4ge1xuICBpZiAoIShwID4gMCAmJiBwIDwgMSkpIHJldHVybiBOYU47XG4gIGNvbnN0IHEgPSBwIC0gMC41O1xuICBpZiAoTWF0aC5hYnMocSkgPD0gMC40MjUpIHtcbiAgICBjb25zdCByID0gMC4xODA2MjUgLSBxICogcTtcbiAgICByZXR1cm4gKHEgKiBob3JuZXIoQ0VOVFJFLCByKSkgLyBob3JuZXIoQ0VOVFJFX0JFTE9XLCByKTtcbiAgfVxuICBjb25zdCByID0gTWF0aC5zcXJ0KC1NYXRoLmxvZyhNYXRoLm1pbihwLCAxIC0gcCkpKTtcbiAgY29uc3Qgc2l6ZSA9XG4gICAgciA8PSA1XG4gICAgICA/IGhvcm5lcihNSURETEUsIHIgLSAxLjYpIC8gaG9ybmVyKE1JRERMRV9CRUxPVywgciAtIDEuNilcbiAgICAgIDogaG9ybmVyKFRBSUwsIHIgLSA1KSAvIGhvcm5lcihUQUlMX0JFTE9XLCByIC0gNSk7XG4gIHJldHVybiBxIDwgMCA/IC1zaXplIDogc2l6ZTtcbn07XG5cbi8qKiB6IGZvciBhIHR3by1zaWRlZCBpbnRlcnZhbDogMC45NSBcdTIxOTIgMS45NTk5NjQuICovXG5leHBvcnQgY29uc3QgdHdvU2lkZWROb3JtYWwgPSAoY29uZmlkZW5jZTogbnVtYmVyKTogbnVtYmVyID0+IG5vcm1hbFF1YW50aWxlKCgxICsgY29uZmlkZW5jZSkgLyAyKTtcbiIsICJpbXBvcnQgeyBub3JtYWxRdWFudGlsZSB9IGZyb20gJy4uLy4uLy4uL21hdGhzL25vcm1hbFF1YW50aWxlJztcbmltcG9ydCB0eXBlIHsgQmVsbCB9IGZyb20gJy4vYmVsaWVmJztcblxuLyoqIEJleW9uZCB0aGlzIG1hbnkgc3RhbmRhcmQgZGV2aWF0aW9ucyB0aGUgdGFpbCBpcyBiZWxvdyAxZS0xNS4gKi9cbmNvbnN0IEZBUiA9IDg7XG5jb25zdCBST09UX1RXT19QSSA9IE1hdGguc3FydCgyICogTWF0aC5QSSk7XG5cbi8qKlxuICogU2hhcmUgb2YgdGhlIHN0YW5kYXJkIG5vcm1hbCBkaXN0cmlidXRpb24gYmVsb3cgei5cbiAqXG4gKiBcdTAzQTYoeikgPSBcdTAwQkQgKyBcdTAzQzYoeilcdTAwQjcoeiArIHpcdTAwQjMvMyArIHpcdTIwNzUvKDNcdTAwQjc1KSArIHpcdTIwNzcvKDNcdTAwQjc1XHUwMEI3NykgKyBcdTIwMjYpLiBJbjogYW55IHouIE91dDogc2hhcmU7IGVycm9yIGJlbG93IDFlLTEzLlxuICogU291cmNlOiBNQVJTQUdMSUEwNC4gRXhhbXBsZTogMS45NTk5NjQgXHUyMTkyIDAuOTc1LlxuICovXG5leHBvcnQgY29uc3Qgbm9ybWFsU2hhcmUgPSAoejogbnVtYmVyKTogbnVtYmVyID0+IHtcbiAgaWYgKHogPj0gRkFSKSByZXR1cm4gMTtcbiAgaWYgKHogPD0gLUZBUikgcmV0dXJuIDA7XG4gIGNvbnN0IHp6ID0geiAqIHo7XG4gIGxldCB0ZXJtID0gejtcbiAgbGV0IHN1bSA9IHo7XG4gIGZvciAobGV0IG9kZCA9IDM7IE1hdGguYWJzKHRlcm0pID4gMWUtMTYgKiBNYXRoLmFicyhzdW0pOyBvZGQgKz0gMikge1xuICAgIHRlcm0gKj0genogLyBvZGQ7XG4gICAgc3VtICs9IHRlcm07XG4gIH1cbiAgcmV0dXJuIDAuNSArIChzdW0gKiBNYXRoLmV4cCgtMC41ICogenopKSAvIFJPT1RfVFdPX1BJO1xufTtcblxuY29uc3QgTU9TVF9TVEVQUyA9IDIwMDtcbi8qKlxuICogVGhlIHZhbHVlIGJlbG93IHdoaWNoIGEgc2hhcmUgb2YgYSBtaXh0dXJlIG9mIGJlbGxzIGxpZXMuXG4gKlxuICogTmV3dG9uIHN0ZXBzIG9uIHRoZSBtaXh0dXJlJ3Mgb3duIGRpc3RyaWJ1dGlvbiwga2VwdCBpbnNpZGUgYSBjbG9zaW5nIGJyYWNrZXQuIFdlaWdodHMgbmVlZCBub3QgYWRkIHVwIHRvXG4gKiBvbmUuIEV4YW1wbGU6IG9uZSBiZWxsIDAgXHUwMEIxIDEgYXQgMC45NzUgXHUyMTkyIDEuOTU5OTY0LlxuICovXG5leHBvcnQgZnVuY3Rpb24gbWl4dHVyZVF1YW50aWxlKGJlbGxzOiByZWFkb25seSBCZWxsW10sIHNoYXJlOiBudW1iZXIpOiBudW1iZXIge1xuICBjb25zdCB0b3RhbCA9IGJlbGxzLnJlZHVjZSgoc3VtLCBiKSA9PiBzdW0gKyBiLndlaWdodCwgMCk7XG4gIGNvbnN0IHVzZWQgPSBiZWxscy5maWx0ZXIoKGIpID0+IGIud2VpZ2h0ID4gdG90YWwgKiAxZS0xMCk7XG4gIGxldCBsb3cgPSBNYXRoLm1pbiguLi51c2VkLm1hcCgoYikgPT4gYi5tZWFuIC0gRkFSICogYi5zZCkpO1xuICBsZXQgaGlnaCA9IE1hdGgubWF4KC4uLnVzZWQubWFwKChiKSA9PiBiLm1lYW4gKyBGQVIgKiBiLnNkKSk7XG4gIGNvbnN0IG1pZGRsZSA9IHVzZWQucmVkdWNlKChzdW0sIGIpID0+IHN1bSArIGIud2VpZ2h0ICogYi5tZWFuLCAwKSAvIHRvdGFsO1xuICBjb25zdCB2YXJpYW5jZSA9XG4gICAgdXNlZC5yZWR1Y2UoKHN1bSwgYikgPT4gc3VtICsgYi53ZWlnaHQgKiAoYi5zZCAqIGIuc2QgKyAoYi5tZWFuIC0gbWlkZGxlKSAqKiAyKSwgMCkgLyB0b3RhbDtcbiAgbGV0IHggPSBtaWRkbGUgKyBub3JtYWxRdWFudGlsZShzaGFyZSkgKiBNYXRoLnNxcnQodmFyaWFuY2UpO1xuICBmb3IgKGxldCBzdGVwID0gMDsgc3RlcCA8IE1PU1RfU1RFUFM7IHN0ZXArKykge1xuICAgIGxldCBiZWxvdyA9IC1zaGFyZSAqIHRvdGFsO1xuICAgIGxldCBkZW5zaXR5ID0gMDtcbiAgICBmb3IgKGNvbnN0IHsgd2VpZ2h0LCBtZWFuLCBzZCB9IG9mIHVzZWQpIHtcbiAgICAgIGNvbnN0IHogPSAoeCAtIG1lYW4pIC8gc2Q7XG4gICAgICBiZWxvdyArPSB3ZWlnaHQgKiBub3JtYWxTaGFyZSh6KTtcbiAgICAgIGRlbnNpdHkgKz0gKHdlaWdodCAqIE1hdGguZXhwKC0wLjUgKiB6ICogeikpIC8gKHNkICogUk9PVF9UV09fUEkpO1xuICAgIH1cbiAgICBpZiAoYmVsb3cgPiAwKSBoaWdoID0geDtcbiAgICBlbHNlIGxvdyA9IHg7XG4gICAgbGV0IG5leHQgPSB4IC0gYmVsb3cgLyBkZW5zaXR5O1xuICAgIGlmICghKG5leHQgPiBsb3cgJiYgbmV4dCA8IGhpZ2gpKSBuZXh0ID0gKGxvdyArIGhpZ2gpIC8gMjtcbiAgICBpZiAoTWF0aC5hYnMobmV4dCAtIHgpIDw9IDFlLTkgKiBNYXRoLnNxcnQodmFyaWFuY2UpIHx8IGhpZ2ggLSBsb3cgPD0gMWUtMTIgKiAoMSArIE1hdGguYWJzKHgpKSlcbiAgICAgIHJldHVybiBuZXh0O1xuICAgIHggPSBuZXh0O1xuICB9XG4gIHJldHVybiB4O1xufVxuIiwgImltcG9ydCB0eXBlIHsgQmVsbCwgQmVsaWVmIH0gZnJvbSAnLi9iZWxpZWYnO1xuaW1wb3J0IHsgZ3JpZCwgbmFycm93IH0gZnJvbSAnLi9iZWxpZWYnO1xuXG4vKipcbiAqIFJ1bnMgb2Ygb25lIGtpbmQgKGEgaG9ybW9uZSBwcmVwYXJhdGlvbiwgYSBtb250aCk6IHdoYXQgd2FzIG1lYXN1cmVkLCBhbmQgdGhlIHZhcmlhbmNlIG9mIHRoZSBtZWFzdXJpbmcsIDBcbiAqIHdoZXJlIHVua25vd24uXG4gKi9cbmV4cG9ydCBpbnRlcmZhY2UgS2luZCB7XG4gIHJlYWRvbmx5IHZhbHVlczogcmVhZG9ubHkgbnVtYmVyW107XG4gIHJlYWRvbmx5IGVycm9ycz86IHJlYWRvbmx5IG51bWJlcltdO1xufVxuXG5leHBvcnQgaW50ZXJmYWNlIE5vcm1hbE1vZGVsIHtcbiAgLyoqIEZhcm0gbWVhbiwgZnJvbSB0aGUgbGl0ZXJhdHVyZTogYmVsbHMuICovXG4gIHJlYWRvbmx5IG1lYW46IHJlYWRvbmx5IEJlbGxbXTtcbiAgLyoqIFNwcmVhZCBiZXR3ZWVuIHJ1bnMgb2Ygb25lIGtpbmQsIG9uIGl0cyBsb2dhcml0aG0uICovXG4gIHJlYWRvbmx5IHJ1bnM6IEJlbGllZjtcbiAgLyoqIFNwcmVhZCBiZXR3ZWVuIGtpbmRzLCBvbiBpdHMgbG9nYXJpdGhtOyBsZWZ0IG91dCB3aGVuIGFsbCBydW5zIGFyZSBvZiBvbmUga2luZC4gKi9cbiAgcmVhZG9ubHkga2luZHM/OiBCZWxpZWY7XG59XG5cbi8qKiBPbmUgY2FzZSBvZiB0aGUgdW5rbm93biBzcHJlYWRzOiBpdHMgd2VpZ2h0IGFuZCB3aGF0IHRoZW4gZm9sbG93cywgYWxsIG5vcm1hbC4gKi9cbmV4cG9ydCBpbnRlcmZhY2UgQ2FzZSB7XG4gIHJlYWRvbmx5IHdlaWdodDogbnVtYmVyO1xuICByZWFkb25seSBydW5TZDogbnVtYmVyO1xuICByZWFkb25seSBraW5kU2Q6IG51bWJlcjtcbiAgcmVhZG9ubHkgZmFybTogQmVsbDtcbiAgLyoqIE1lYW4gb2YgZWFjaCBraW5kLCBpbiB0aGUgb3JkZXIgZ2l2ZW47IG9uZSBtb3JlIGF0IHRoZSBlbmQgZm9yIGEga2luZCBuZXZlciBzZWVuLiAqL1xuICByZWFkb25seSBraW5kczogcmVhZG9ubHkgQmVsbFtdO1xuICAvKiogUHVsbCBvZiB0aGUgb3duIHJ1bnMgYWdhaW5zdCB0aGUgbGl0ZXJhdHVyZSBpbiB0aGlzIGNhc2UsIDAgdG8gMS4gKi9cbiAgcmVhZG9ubHkgcHVsbDogbnVtYmVyO1xufVxuXG5pbnRlcmZhY2UgU3VtbWVkIHtcbiAgcmVhZG9ubHkgcHJlY2lzaW9uOiBudW1iZXI7XG4gIHJlYWRvbmx5IG1lYW46IG51bWJlcjtcbiAgcmVhZG9ubHkgbG9nTGlrZWxpaG9vZDogbnVtYmVyO1xufVxuXG4vKipcbiAqIEEga2luZCdzIHJ1bnMgZm9yIG9uZSBzcHJlYWQ6IHdlaWdodGVkIG1lYW4sIGl0cyBwcmVjaXNpb24sIGFuZCB0aGUgbGlrZWxpaG9vZCBsZWZ0IHdoZW4gdGhlIGtpbmQncyBtZWFuIGlzXG4gKiB0YWtlbiBvdXQuXG4gKi9cbmZ1bmN0aW9uIHN1bW1lZCh7IHZhbHVlcywgZXJyb3JzIH06IEtpbmQsIHZhcmlhbmNlOiBudW1iZXIpOiBTdW1tZWQge1xuICBpZiAodmFsdWVzLmxlbmd0aCA9PT0gMCkgcmV0dXJuIHsgcHJlY2lzaW9uOiAwLCBtZWFuOiAwLCBsb2dMaWtlbGlob29kOiAwIH07XG4gIGxldCBwcmVjaXNpb24gPSAwO1xuICBsZXQgd2VpZ2h0ZWQgPSAwO1xuICBsZXQgbG9ncyA9IDA7XG4gIGZvciAobGV0IGkgPSAwOyBpIDwgdmFsdWVzLmxlbmd0aDsgaSsrKSB7XG4gICAgY29uc3QgdiA9IHZhcmlhbmNlICsgKGVycm9ycz8uW2ldID8/IDApO1xuICAgIHByZWNpc2lvbiArPSAxIC8gdjtcbiAgICB3ZWlnaHRlZCArPSAodmFsdWVzW2ldID8/IE5hTikgLyB2O1xuICAgIGxvZ3MgKz0gTWF0aC5sb2codik7XG4gIH1cbiAgY29uc3QgbWVhbiA9IHdlaWdodGVkIC8gcHJlY2lzaW9uO1xuICBsZXQgc3F1YXJlcyA9IDA7XG4gIGZvciAobGV0IGkgPSAwOyBpIDwgdmFsdWVzLmxlbmd0aDsgaSsrKVxuICAgIHNxdWFyZXMgKz0gKCh2YWx1ZXNbaV0gPz8gTmFOKSAtIG1lYW4pICoqIDIgLyAodmFyaWFuY2UgKyAoZXJyb3JzPy5baV0gPz8gMCkpO1xuICAvLyBUYWtpbmcgb3V0IHRoZSBraW5kJ3Mgb3duIG1lYW4gY29zdHMgb25lIGRlZ3JlZSBvZiBmcmVlZG9tLCBoZW5jZSB0aGUgbGFzdCB0ZXJtLlxuICByZXR1cm4geyBwcmVjaXNpb24sIG1lYW4sIGxvZ0xpa2VsaWhvb2Q6IC0wLjUgKiAobG9ncyArIHNxdWFyZXMgKyBNYXRoLmxvZyhwcmVjaXNpb24pKSB9O1xufVxuXG4vKiogTWVhbnMgb2YgdGhlIGtpbmRzIHB1dCB0b2dldGhlciBmb3Igb25lIHNwcmVhZCBiZXR3ZWVuIGtpbmRzLiAqL1xuaW50ZXJmYWNlIEpvaW5lZCB7XG4gIHJlYWRvbmx5IHByZWNpc2lvbjogbnVtYmVyO1xuICByZWFkb25seSBvd246IG51bWJlcjtcbiAgcmVhZG9ubHkgbG9nOiBudW1iZXI7XG59XG5cbmZ1bmN0aW9uIGpvaW5lZChzdW1zOiByZWFkb25seSBTdW1tZWRbXSwga2luZFZhcmlhbmNlOiBudW1iZXIpOiBKb2luZWQge1xuICBsZXQgcHJlY2lzaW9uID0gMDtcbiAgbGV0IHdlaWdodGVkID0gMDtcbiAgbGV0IHNxdWFyZWQgPSAwO1xuICBsZXQgbG9nID0gMDtcbiAgZm9yIChjb25zdCBzIG9mIHN1bXMpIHtcbiAgICBpZiAocy5wcmVjaXNpb24gPT09IDApIGNvbnRpbnVlO1xuICAgIGNvbnN0IHYgPSBraW5kVmFyaWFuY2UgKyAxIC8gcy5wcmVjaXNpb247XG4gICAgcHJlY2lzaW9uICs9IDEgLyB2O1xuICAgIHdlaWdodGVkICs9IHMubWVhbiAvIHY7XG4gICAgc3F1YXJlZCArPSAocy5tZWFuICogcy5tZWFuKSAvIHY7XG4gICAgbG9nICs9IHMubG9nTGlrZWxpaG9vZCAtIDAuNSAqIE1hdGgubG9nKHYpO1xuICB9XG4gIGlmIChwcmVjaXNpb24gPT09IDApIHJldHVybiB7IHByZWNpc2lvbiwgb3duOiAwLCBsb2c6IDAgfTtcbiAgY29uc3Qgb3duID0gd2VpZ2h0ZWQgLyBwcmVjaXNpb247XG4gIHJldHVybiB7IHByZWNpc2lvbiwgb3duLCBsb2c6IGxvZyAtIDAuNSAqIChNYXRoLm1heCgwLCBzcXVhcmVkIC0gb3duICogd2VpZ2h0ZWQpICsgTWF0aC5sb2cocHJlY2lzaW9uKSkgfTtcbn1cblxuLyoqIExpa2VsaWhvb2Qgb2YgYSBiZWxsIG9mIHRoZSBsaXRlcmF0dXJlLCBvbiBpdHMgbG9nYXJpdGhtLiAqL1xuY29uc3QgYmVsbExvZyA9ICh7IHByZWNpc2lvbiwgb3duLCBsb2cgfTogSm9pbmVkLCBiZWxsOiBCZWxsKTogbnVtYmVyID0+IHtcbiAgaWYgKHByZWNpc2lvbiA9PT0gMCkgcmV0dXJuIE1hdGgubG9nKGJlbGwud2VpZ2h0KTtcbiAgY29uc3Qgc3ByZWFkID0gYmVsbC5zZCAqIGJlbGwuc2QgKyAxIC8gcHJlY2lzaW9uO1xuICByZXR1cm4gbG9nICsgTWF0aC5sb2coYmVsbC53ZWlnaHQpIC0gMC41ICogKE1hdGgubG9nKHNwcmVhZCkgKyAob3duIC0gYmVsbC5tZWFuKSAqKiAyIC8gc3ByZWFkKTtcbn07XG5cbmZ1bmN0aW9uIGNhc2VPZihcbiAgc3VtczogcmVhZG9ubHkgU3VtbWVkW10sXG4gIHsgcHJlY2lzaW9uLCBvd24gfTogSm9pbmVkLFxuICBiZWxsOiBCZWxsLFxuICBydW5TZDogbnVtYmVyLFxuICBraW5kU2Q6IG51bWJlcixcbik6IE9taXQ8Q2FzZSwgJ3dlaWdodCc+IHtcbiAgY29uc3QgcHJpb3IgPSBiZWxsLnNkICogYmVsbC5zZDtcbiAgY29uc3QgcHVsbCA9IHByZWNpc2lvbiA+IDAgPyBwcmlvciAvIChwcmlvciArIDEgLyBwcmVjaXNpb24pIDogMDtcbiAgY29uc3QgZmFybSA9IHtcbiAgICB3ZWlnaHQ6IDEsXG4gICAgbWVhbjogYmVsbC5tZWFuICsgcHVsbCAqIChvd24gLSBiZWxsLm1lYW4pLFxuICAgIHNkOiBNYXRoLnNxcnQoMSAvICgxIC8gcHJpb3IgKyBwcmVjaXNpb24pKSxcbiAgfTtcbiAgcmV0dXJuIHtcbiAgICBydW5TZCxcbiAgICBraW5kU2QsXG4gICAgZmFybSxcbiAgICBwdWxsLFxuICAgIGtpbmRzOiBraW5kU2QgPT09IDAgPyBbXSA6IFsuLi5zdW1zLCB1bmRlZmluZWRdLm1hcCgocykgPT4ga2luZEJlbGwocywgZmFybSwga2luZFNkKSksXG4gIH07XG59XG5cbmZ1bmN0aW9uIGtpbmRCZWxsKHM6IFN1bW1lZCB8IHVuZGVmaW5lZCwgZmFybTogQmVsbCwga2luZFNkOiBudW1iZXIpOiBCZWxsIHtcbiAgY29uc3Qgb3duID0gcyAmJiBzLnByZWNpc2lvbiA+IDAgPyBzLnByZWNpc2lvbiAvIChzLnByZWNpc2lvbiArIDEgLyBraW5kU2QgKiogMikgOiAwO1xuICByZXR1cm4ge1xuICAgIHdlaWdodDogMSxcbiAgICBtZWFuOiBvd24gKiAocz8ubWVhbiA/PyAwKSArICgxIC0gb3duKSAqIGZhcm0ubWVhbixcbiAgICBzZDogTWF0aC5zcXJ0KCgxIC0gb3duKSAqIGtpbmRTZCAqKiAyICsgKCgxIC0gb3duKSAqIGZhcm0uc2QpICoqIDIpLFxuICB9O1xufVxuXG5jb25zdCBQT0lOVFNfQUxPTkUgPSA0MTtcbmNvbnN0IFBPSU5UU19FQUNIID0gMTc7XG5jb25zdCBMRUFTVF9XRUlHSFQgPSAxZS03O1xuXG4vKipcbiAqIFBhcnRpYWwgcG9vbGluZyBvZiBtZWFzdXJlZCBydW5zIHdpdGggdGhlIGxpdGVyYXR1cmUuXG4gKlxuICogTW9kZWwgYXMgcHVibGlzaGVkIChyYW5kb20gZWZmZWN0cywgbm9ybWFsLW5vcm1hbCk6IHkgPSBcdTAzQjggKyBlLCBlIH4gTigwLCBcdTAzQzRcdTAwQjIgKyB2KTsgXHUwM0I4IG9mIGEga2luZCB+IE4oXHUwM0JDLCBcdTAzQzNcdTAwQjIpO1xuICogaGVyZSBcdTAzQkMgaGFzIHRoZSBsaXRlcmF0dXJlIGFzIHByaW9yLCBcdTAzQzQgYW5kIFx1MDNDMyBhcmUgdW5rbm93bi4gR2l2ZW4gXHUwM0M0IGFuZCBcdTAzQzMgZXZlcnl0aGluZyBpcyBub3JtYWw7IFx1MDNDNCBhbmQgXHUwM0MzIGFyZVxuICogc3VtbWVkIG92ZXIgYSBncmlkIG9mIHRoZWlyIGxvZ2FyaXRobXMgKEdFTE1BTjEzIHNlY3Rpb24gNS40LCBST1ZFUjIwKSwgc28gdGhlIGFuc3dlciBpcyBhIG1peHR1cmUgb2ZcbiAqIGJlbGxzLiBObyByYW5kb20gbnVtYmVycy4gSW46IHJ1bnMgYnkga2luZCBpbiBhbnkgdW5pdCAobG9nYXJpdGhtcyBmb3Igd2hhdCBjYW5ub3QgYmUgbmVnYXRpdmUpLCB2IHRoZVxuICoga25vd24gdmFyaWFuY2Ugb2YgYSBtZWFzdXJlbWVudC4gT3V0OiBjYXNlcyB3aXRoIHdlaWdodHMgdGhhdCBhZGQgdXAgdG8gMS4gV2l0aCBubyBydW4gYXQgYWxsIHRoZVxuICogbGl0ZXJhdHVyZSBjb21lcyBiYWNrLiBWYWxpZGl0eToga2luZHMgYW5kIHJ1bnMgZXhjaGFuZ2VhYmxlLiBFeGFtcGxlOiB0aGUgZWlnaHQgc2Nob29scyBvZiBSVUJJTjgxIFx1MjE5MiBtZWFuXG4gKiA3Ljk5LCBzdGFuZGFyZCBkZXZpYXRpb24gNS4wMC5cbiAqL1xuZXhwb3J0IGZ1bmN0aW9uIHBvb2xOb3JtYWwoa2luZHM6IHJlYWRvbmx5IEtpbmRbXSwgbW9kZWw6IE5vcm1hbE1vZGVsKTogcmVhZG9ubHkgQ2FzZVtdIHtcbiAgY29uc3QgeyBtZWFuOiBiZWxscywgcnVucyB9ID0gbW9kZWw7XG4gIGNvbnN0IGJldHdlZW4gPSBtb2RlbC5raW5kcztcbiAgY29uc3Qgc3Vtc0F0ID0gKGxvZ1J1bjogbnVtYmVyKTogcmVhZG9ubHkgU3VtbWVkW10gPT5cbiAgICBraW5kcy5tYXAoKGtpbmQpID0+IHN1bW1lZChraW5kLCBNYXRoLmV4cCgyICogbG9nUnVuKSkpO1xuICBjb25zdCBraW5kTG9nID0gKHU6IG51bWJlcik6IG51bWJlciA9PiBiZXR3ZWVuPy5sb2dEZW5zaXR5KHUpID8/IDA7XG4gIGNvbnN0IGtpbmRTZCA9ICh1OiBudW1iZXIpOiBudW1iZXIgPT4gKGJldHdlZW4gPyBNYXRoLmV4cCh1KSA6IDApO1xuICBjb25zdCBiZXN0ID0gKHN1bXM6IHJlYWRvbmx5IFN1bW1lZFtdLCBraW5kTG9nczogcmVhZG9ubHkgbnVtYmVyW10pOiBudW1iZXIgPT4ge1xuICAgIGxldCBtb3N0ID0gLUluZmluaXR5O1xuICAgIGZvciAoY29uc3QgayBvZiBraW5kTG9ncykge1xuICAgICAgY29uc3QgYWxsID0gam9pbmVkKHN1bXMsIGtpbmRTZChrKSAqKiAyKTtcbiAgICAgIGZvciAoY29uc3QgYmVsbCBvZiBiZWxscykgbW9zdCA9IE1hdGgubWF4KG1vc3QsIGtpbmRMb2coaykgKyBiZWxsTG9nKGFsbCwgYmVsbCkpO1xuICAgIH1cbiAgICByZXR1cm4gbW9zdDtcbiAgfTtcbiAgY29uc3Qgcm91Z2hLaW5kcyA9IGJldHdlZW4gPyBncmlkKGJldHdlZW4uZnJvbSwgYmV0d2Vlbi50bywgUE9JTlRTX0VBQ0gpIDogWzBdO1xuICBjb25zdCBbbG93LCBoaWdoXSA9IG5hcnJvdyhcbiAgICBydW5zLmZyb20sXG4gICAgcnVucy50byxcbiAgICBiZXR3ZWVuID8gUE9JTlRTX0VBQ0ggOiBQT0lOVFNfQUxPTkUsXG4gICAgKHUpID0+IHJ1bnMubG9nRGVuc2l0eSh1KSArIGJlc3Qoc3Vtc0F0KHUpLCByb3VnaEtpbmRzKSxcbiAgKTtcbiAgY29uc3QgcnVuQXQgPSBncmlkKGxvdywgaGlnaCwgYmV0d2VlbiA/IFBPSU5UU19FQUNIIDogUE9JTlRTX0FMT05FKS5tYXAoKHUpID0+ICh7XG4gICAgdSxcbiAgICBsb2c6IHJ1bnMubG9nRGVuc2l0eSh1KSxcbiAgICBzdW1zOiBzdW1zQXQodSksXG4gIH0pKTtcbiAgY29uc3Qga2luZEF0ID0gYmV0d2VlblxuICAgID8gZ3JpZChcbiAgICAgICAgLi4ubmFycm93KGJldHdlZW4uZnJvbSwgYmV0d2Vlbi50bywgUE9JTlRTX0VBQ0gsIChrKSA9PlxuICAgICAgICAgIHJ1bkF0LnJlZHVjZSgobW9zdCwgeyBsb2csIHN1bXMgfSkgPT4gTWF0aC5tYXgobW9zdCwgbG9nICsgYmVzdChzdW1zLCBba10pKSwgLUluZmluaXR5KSxcbiAgICAgICAgKSxcbiAgICAgICAgUE9JTlRTX0VBQ0gsXG4gICAgICApXG4gICAgOiBbMF07XG4gIGNvbnN0IGZvdW5kOiB7IGxvZzogbnVtYmVyOyBidWlsZDogKCkgPT4gT21pdDxDYXNlLCAnd2VpZ2h0Jz4gfVtdID0gW107XG4gIGZvciAoY29uc3QgeyB1LCBsb2csIHN1bXMgfSBvZiBydW5BdClcbiAgICBmb3IgKGNvbnN0IGsgb2Yga2luZEF0KSB7XG4gICAgICBjb25zdCBhbGwgPSBqb2luZWQoc3Vtcywga2luZFNkKGspICoqIDIpO1xuICAgICAgZm9yIChjb25zdCBiZWxsIG9mIGJlbGxzKVxuICAgICAgICBmb3VuZC5wdXNoKHtcbiAgICAgICAgICBsb2c6IGxvZyArIGtpbmRMb2coaykgKyBiZWxsTG9nKGFsbCwgYmVsbCksXG4gICAgICAgICAgYnVpbGQ6ICgpID0+IGNhc2VPZihzdW1zLCBhbGwsIGJlbGwsIE1hdGguZXhwKHUpLCBraW5kU2QoaykpLFxuICAgICAgICB9KTtcbiAgICB9XG4gIGNvbnN0IHRvcCA9IGZvdW5kLnJlZHVjZSgobW9zdCwgeyBsb2cgfSkgPT4gTWF0aC5tYXgobW9zdCwgbG9nKSwgLUluZmluaXR5KTtcbiAgY29uc3QgdG90YWwgPSBmb3VuZC5yZWR1Y2UoKHN1bSwgeyBsb2cgfSkgPT4gc3VtICsgTWF0aC5leHAobG9nIC0gdG9wKSwgMCk7XG4gIHJldHVybiBmb3VuZFxuICAgIC5tYXAoKHsgbG9nLCBidWlsZCB9KSA9PiAoeyB3ZWlnaHQ6IE1hdGguZXhwKGxvZyAtIHRvcCkgLyB0b3RhbCwgYnVpbGQgfSkpXG4gICAgLmZpbHRlcigoeyB3ZWlnaHQgfSkgPT4gd2VpZ2h0ID4gTEVBU1RfV0VJR0hUKVxuICAgIC5tYXAoKHsgd2VpZ2h0LCBidWlsZCB9KSA9PiAoeyAuLi5idWlsZCgpLCB3ZWlnaHQgfSkpO1xufVxuIiwgIi8qKiBCZXJub3VsbGkgdGVybXMgb2YgdGhlIHNlcmllcyBvZiBTdGlybGluZzogMS8xMiwgXHUyMjEyMS8zNjAsIDEvMTI2MCwgXHUyMjEyMS8xNjgwLCAxLzExODguICovXG5jb25zdCBTMSA9IDEgLyAxMixcbiAgUzIgPSAtMSAvIDM2MCxcbiAgUzMgPSAxIC8gMTI2MCxcbiAgUzQgPSAtMSAvIDE2ODAsXG4gIFM1ID0gMSAvIDExODg7XG5jb25zdCBIQUxGX0xPR19UV09fUEkgPSAwLjUgKiBNYXRoLmxvZygyICogTWF0aC5QSSk7XG5jb25zdCBMQVJHRSA9IDk7XG5cbi8qKlxuICogbG4gXHUwMzkzKHgpIGZvciBzdW1zIG92ZXIgbWFueSBydW5zLCB3aGVyZSB0aGUgc2xvd2VyIHJvdXRpbmUgd291bGQgYmUgZmVsdC5cbiAqXG4gKiBTdGlybGluZydzIHNlcmllcyBmcm9tIDkgdXB3YXJkczsgc21hbGxlciB4IGNsaW1iIHRoZXJlIGJ5IFx1MDM5Myh4ICsgMSkgPSB4XHUwMEI3XHUwMzkzKHgpLiBJbjogeCA+IDAuIE91dDogZXJyb3IgYmVsb3dcbiAqIDFlLTEyLCBhYnNvbHV0ZSBmb3Igc21hbGwgdmFsdWVzLiBTb3VyY2U6IEFicmFtb3dpdHogYW5kIFN0ZWd1biAxOTY0LCA2LjEuNDEsIGZyb20gbWVtb3J5OyBjaGVja2VkIGFnYWluc3RcbiAqIHRoZSBvdGhlciByb3V0aW5lLiBFeGFtcGxlOiA1IFx1MjE5MiBsbiAyNC5cbiAqL1xuZXhwb3J0IGNvbnN0IGxvZ0dhbW1hRmFzdCA9ICh4OiBudW1iZXIpOiBudW1iZXIgPT4ge1xuICBpZiAoISh4ID4gMCkpIHJldHVybiBOYU47XG4gIGxldCBjbGltYmVkID0gMTtcbiAgbGV0IGF0ID0geDtcbiAgd2hpbGUgKGF0IDwgTEFSR0UpIGNsaW1iZWQgKj0gYXQrKztcbiAgY29uc3QgaW52ZXJzZSA9IDEgLyBhdDtcbiAgY29uc3QgcSA9IGludmVyc2UgKiBpbnZlcnNlO1xuICBjb25zdCBzZXJpZXMgPSBpbnZlcnNlICogKFMxICsgcSAqIChTMiArIHEgKiAoUzMgKyBxICogKFM0ICsgcSAqIFM1KSkpKTtcbiAgcmV0dXJuIChhdCAtIDAuNSkgKiBNYXRoLmxvZyhhdCkgLSBhdCArIEhBTEZfTE9HX1RXT19QSSArIHNlcmllcyAtIChjbGltYmVkID09PSAxID8gMCA6IE1hdGgubG9nKGNsaW1iZWQpKTtcbn07XG4iLCAiaW1wb3J0IHR5cGUgeyBCZWxpZWYgfSBmcm9tICcuL2JlbGllZic7XG5pbXBvcnQgeyBOT1RISU5HLCBncmlkLCBuYXJyb3cgfSBmcm9tICcuL2JlbGllZic7XG5pbXBvcnQgeyBsb2dHYW1tYUZhc3QgfSBmcm9tICcuLi8uLi8uLi9tYXRocy9sb2dHYW1tYUZhc3QnO1xuXG4vKiogayBvZiBuIGluIG9uZSBydW4uICovXG5leHBvcnQgaW50ZXJmYWNlIENvdW50ZWQge1xuICByZWFkb25seSBrOiBudW1iZXI7XG4gIHJlYWRvbmx5IG46IG51bWJlcjtcbn1cblxuZXhwb3J0IGludGVyZmFjZSBTaGFyZXNNb2RlbCB7XG4gIC8qKiBGYXJtIG1lYW4gc2hhcmUgTSBhcyBsbihNLygxIFx1MjIxMiBNKSkuICovXG4gIHJlYWRvbmx5IG1lYW46IEJlbGllZjtcbiAgLyoqIFN0ZWFkaW5lc3MgXHUwM0M2IG9mIHRoZSBydW5zLCBvbiBpdHMgbG9nYXJpdGhtOiBydW5zIHZhcnkgd2l0aCB2YXJpYW5jZSBNKDEgXHUyMjEyIE0pLyhcdTAzQzYgKyAxKS4gKi9cbiAgcmVhZG9ubHkgc3RlYWRpbmVzczogQmVsaWVmO1xufVxuXG4vKiogT25lIHBvaW50IG9mIHRoZSBhbnN3ZXI6IG1lYW4gc2hhcmUsIHN0ZWFkaW5lc3MsIHdlaWdodCAoYWxsIHdlaWdodHMgYWRkIHVwIHRvIDEpLiAqL1xuZXhwb3J0IGludGVyZmFjZSBTaGFyZVBvaW50IHtcbiAgcmVhZG9ubHkgd2VpZ2h0OiBudW1iZXI7XG4gIHJlYWRvbmx5IG1lYW46IG51bWJlcjtcbiAgcmVhZG9ubHkgc3RlYWRpbmVzczogbnVtYmVyO1xuICByZWFkb25seSBsb2dpdDogbnVtYmVyO1xuICByZWFkb25seSBoYWxmU3RlcDogbnVtYmVyO1xufVxuXG5jb25zdCBzaGFyZU9mID0gKGxvZ2l0OiBudW1iZXIpOiBudW1iZXIgPT4gMSAvICgxICsgTWF0aC5leHAoLWxvZ2l0KSk7XG5cbi8qKiBMaWtlbGlob29kIG9mIHRoZSBjb3VudHMsIGJldGEtYmlub21pYWwsIHVwIHRvIHdoYXQgZG9lcyBub3QgZGVwZW5kIG9uIE0gb3IgXHUwM0M2LiAqL1xuZnVuY3Rpb24gbGlrZWxpaG9vZChydW5zOiByZWFkb25seSBDb3VudGVkW10sIHBoaTogbnVtYmVyKTogKG1lYW46IG51bWJlcikgPT4gbnVtYmVyIHtcbiAgLy8gQSBsb2NhbCBuYW1lOiByZWFjaGVkIHRocm91Z2ggaXRzIG1vZHVsZSBpdCBpcyBzZXZlcmFsIHRpbWVzIHNsb3dlciB3aGVyZSBtb2R1bGVzIGFyZSB3cmFwcGVkLlxuICBjb25zdCBsZyA9IGxvZ0dhbW1hRmFzdDtcbiAgY29uc3QgZml4ZWQgPSBydW5zLnJlZHVjZSgoc3VtLCB7IG4gfSkgPT4gc3VtIC0gbGcobiArIHBoaSksIHJ1bnMubGVuZ3RoICogbGcocGhpKSk7XG4gIHJldHVybiAobWVhbikgPT4ge1xuICAgIGNvbnN0IGEgPSBtZWFuICogcGhpO1xuICAgIGNvbnN0IGIgPSBwaGkgLSBhO1xuICAgIGxldCBzdW0gPSBmaXhlZCAtIHJ1bnMubGVuZ3RoICogKGxnKGEpICsgbGcoYikpO1xuICAgIGZvciAoY29uc3QgeyBrLCBuIH0gb2YgcnVucykgc3VtICs9IGxnKGsgKyBhKSArIGxnKG4gLSBrICsgYik7XG4gICAgcmV0dXJuIHN1bTtcbiAgfTtcbn1cblxuaW50ZXJmYWNlIFNsaWNlIHtcbiAgcmVhZG9ubHkgbG9nOiBudW1iZXI7XG4gIHJlYWRvbmx5IGF0OiByZWFkb25seSBudW1iZXJbXTtcbiAgcmVhZG9ubHkgbG9nczogcmVhZG9ubHkgbnVtYmVyW107XG4gIHJlYWRvbmx5IHN0ZXA6IG51bWJlcjtcbn1cblxuLyoqIFRoZSBtZWFuIHNoYXJlIHN1bW1lZCBvdXQgZm9yIG9uZSBzdGVhZGluZXNzLiAqL1xuZnVuY3Rpb24gc2xpY2UocnVuczogcmVhZG9ubHkgQ291bnRlZFtdLCBtb2RlbDogU2hhcmVzTW9kZWwsIGxvZ1BoaTogbnVtYmVyLCBwb2ludHM6IG51bWJlcik6IFNsaWNlIHtcbiAgY29uc3Qgb2YgPSBsaWtlbGlob29kKHJ1bnMsIE1hdGguZXhwKGxvZ1BoaSkpO1xuICBjb25zdCBsb2dBdCA9ICh4OiBudW1iZXIpOiBudW1iZXIgPT4ge1xuICAgIGNvbnN0IGxvZyA9IG1vZGVsLm1lYW4ubG9nRGVuc2l0eSh4KSArIG9mKHNoYXJlT2YoeCkpO1xuICAgIHJldHVybiBOdW1iZXIuaXNOYU4obG9nKSA/IC1JbmZpbml0eSA6IGxvZztcbiAgfTtcbiAgY29uc3QgW2xvdywgaGlnaF0gPSBuYXJyb3cobW9kZWwubWVhbi5mcm9tLCBtb2RlbC5tZWFuLnRvLCAxNywgbG9nQXQpO1xuICBjb25zdCBhdCA9IGdyaWQobG93LCBoaWdoLCBwb2ludHMpO1xuICBjb25zdCBsb2dzID0gYXQubWFwKGxvZ0F0KTtcbiAgY29uc3QgdG9wID0gTWF0aC5tYXgoLi4ubG9ncyk7XG4gIGNvbnN0IHN0ZXAgPSAoaGlnaCAtIGxvdykgLyAocG9pbnRzIC0gMSk7XG4gIGNvbnN0IHN1bSA9IGxvZ3MucmVkdWNlKCh0b3RhbCwgeCkgPT4gdG90YWwgKyBNYXRoLmV4cCh4IC0gdG9wKSwgMCkgKiBzdGVwO1xuICByZXR1cm4geyBsb2c6IG1vZGVsLnN0ZWFkaW5lc3MubG9nRGVuc2l0eShsb2dQaGkpICsgdG9wICsgTWF0aC5sb2coc3VtKSwgYXQsIGxvZ3MsIHN0ZXAgfTtcbn1cblxuY29uc3QgTE9PSyA9IDEzO1xuY29uc3QgU0xJQ0VTID0gMjE7XG5jb25zdCBQT0lOVFMgPSA0MTtcblxuLyoqXG4gKiBQYXJ0aWFsIHBvb2xpbmcgb2YgY291bnRlZCBzaGFyZXMgKGZlcnRpbGlzZWQsIGhhdGNoZWQsIGFsaXZlKSB3aXRoIHRoZSBsaXRlcmF0dXJlLlxuICpcbiAqIE1vZGVsIGFzIHB1Ymxpc2hlZDogayB+IEJpbm9taWFsKG4sIHApLCBwIG9mIGEgcnVuIH4gQmV0YShNXHUwM0M2LCAoMSBcdTIyMTIgTSlcdTAzQzYpOyBwcmlvcnMgb24gbG4oTS8oMSBcdTIyMTIgTSkpIGFuZCBsbiBcdTAzQzYuXG4gKiBUaGUgdHdvIHVua25vd25zIGFyZSBzdW1tZWQgb3ZlciBhIGdyaWQgKEdFTE1BTjEzIHNlY3Rpb24gNS4zOyBiZXRhLWJpbm9taWFsIGFmdGVyIFNLRUxMQU00OCBhbmRcbiAqIFdJTExJQU1TNzUpOiBvbmUgZ3JpZCBvdmVyIGxuIFx1MDNDNiBhbmQgZm9yIGVhY2ggb2YgaXRzIHBvaW50cyBvbmUgb2YgaXRzIG93biBvdmVyIHRoZSBtZWFuLCBiZWNhdXNlIGEgc3RlYWR5XG4gKiBmYXJtIHBpbnMgdGhlIG1lYW4gZmFyIGNsb3NlciB0aGFuIGFuIHVuc3RlYWR5IG9uZS4gTm8gcmFuZG9tIG51bWJlcnMuIEluOiBjb3VudHMgcGVyIHJ1biwgMCBcdTIyNjQgayBcdTIyNjQgbi4gT3V0OlxuICogcG9pbnRzIHdpdGggd2VpZ2h0cy4gV2l0aCBubyBydW4gdGhlIGxpdGVyYXR1cmUgY29tZXMgYmFjay4gVmFsaWRpdHk6IHJ1bnMgZXhjaGFuZ2VhYmxlLCBhbmltYWxzIG9mIGEgcnVuXG4gKiBhbGlrZS4gRXhhbXBsZTogdGhlIDcxIHJhdCBleHBlcmltZW50cyBvZiBUQVJPTkU4MiBcdTIxOTIgXHUwM0IxIDIuNCwgXHUwM0IyIDE0LjMuXG4gKi9cbmV4cG9ydCBmdW5jdGlvbiBwb29sU2hhcmVzKHJ1bnM6IHJlYWRvbmx5IENvdW50ZWRbXSwgbW9kZWw6IFNoYXJlc01vZGVsKTogcmVhZG9ubHkgU2hhcmVQb2ludFtdIHtcbiAgY29uc3QgW2xvdywgaGlnaF0gPSBuYXJyb3coXG4gICAgbW9kZWwuc3RlYWRpbmVzcy5mcm9tLFxuICAgIG1vZGVsLnN0ZWFkaW5lc3MudG8sXG4gICAgTE9PSyxcbiAgICAodSkgPT4gc2xpY2UocnVucywgbW9kZWwsIHUsIDE3KS5sb2csXG4gICk7XG4gIGNvbnN0IGZvdW5kOiB7IGxvZzogbnVtYmVyOyBtZWFuOiBudW1iZXI7IGxvZ2l0OiBudW1iZXI7IHN0ZWFkaW5lc3M6IG51bWJlcjsgaGFsZlN0ZXA6IG51bWJlciB9W10gPSBbXTtcbiAgZm9yIChjb25zdCB1IG9mIGdyaWQobG93LCBoaWdoLCBTTElDRVMpKSB7XG4gICAgY29uc3QgeyBhdCwgbG9ncywgc3RlcCB9ID0gc2xpY2UocnVucywgbW9kZWwsIHUsIFBPSU5UUyk7XG4gICAgY29uc3QgcHJpb3IgPSBtb2RlbC5zdGVhZGluZXNzLmxvZ0RlbnNpdHkodSkgKyBNYXRoLmxvZyhzdGVwKTtcbiAgICBhdC5mb3JFYWNoKChsb2dpdCwgaSkgPT5cbiAgICAgIGZvdW5kLnB1c2goe1xuICAgICAgICBsb2c6IHByaW9yICsgKGxvZ3NbaV0gPz8gLUluZmluaXR5KSxcbiAgICAgICAgbWVhbjogc2hhcmVPZihsb2dpdCksXG4gICAgICAgIGxvZ2l0LFxuICAgICAgICBzdGVhZGluZXNzOiBNYXRoLmV4cCh1KSxcbiAgICAgICAgaGFsZlN0ZXA6IHN0ZXAgLyAyLFxuICAgICAgfSksXG4gICAgKTtcbiAgfVxuICBjb25zdCB0b3AgPSBmb3VuZC5yZWR1Y2UoKG1vc3QsIHsgbG9nIH0pID0+IE1hdGgubWF4KG1vc3QsIGxvZyksIC1JbmZpbml0eSk7XG4gIGNvbnN0IGtlcHQgPSBmb3VuZC5maWx0ZXIoKHsgbG9nIH0pID0+IGxvZyA+IHRvcCAtIE5PVEhJTkcpO1xuICBjb25zdCB0b3RhbCA9IGtlcHQucmVkdWNlKChzdW0sIHsgbG9nIH0pID0+IHN1bSArIE1hdGguZXhwKGxvZyAtIHRvcCksIDApO1xuICByZXR1cm4ga2VwdC5tYXAoKHsgbG9nLCAuLi5wb2ludCB9KSA9PiAoeyAuLi5wb2ludCwgd2VpZ2h0OiBNYXRoLmV4cChsb2cgLSB0b3ApIC8gdG90YWwgfSkpO1xufVxuIiwgImltcG9ydCB7IGxvZ0dhbW1hRmFzdCB9IGZyb20gJy4uLy4uLy4uL21hdGhzL2xvZ0dhbW1hRmFzdCc7XG5pbXBvcnQgdHlwZSB7IFNoYXJlUG9pbnQgfSBmcm9tICcuL3Bvb2xTaGFyZXMnO1xuXG5jb25zdCBzaGFyZU9mID0gKGxvZ2l0OiBudW1iZXIpOiBudW1iZXIgPT4gMSAvICgxICsgTWF0aC5leHAoLWxvZ2l0KSk7XG4vKiogQmV5b25kIHRoaXMgbG9naXQgYSBzaGFyZSBjYW5ub3QgYmUgdG9sZCBmcm9tIDAgb3IgMS4gKi9cbmNvbnN0IEVORCA9IDM2O1xuXG4vKiogRmluZHMgd2hlcmUgYSByaXNpbmcgZnVuY3Rpb24gY3Jvc3NlcyBhIHZhbHVlLCB0byBhIG1pbGxpb250aCBvZiBhIGxvZ2l0LiAqL1xuZnVuY3Rpb24gY3Jvc3NpbmcobG93OiBudW1iZXIsIGhpZ2g6IG51bWJlciwgd2FudGVkOiBudW1iZXIsIGJlbG93OiAobG9naXQ6IG51bWJlcikgPT4gbnVtYmVyKTogbnVtYmVyIHtcbiAgbGV0IGEgPSBsb3c7XG4gIGxldCBiID0gaGlnaDtcbiAgd2hpbGUgKGIgLSBhID4gMWUtNikge1xuICAgIGNvbnN0IHggPSAoYSArIGIpIC8gMjtcbiAgICBpZiAoYmVsb3coeCkgPiB3YW50ZWQpIGIgPSB4O1xuICAgIGVsc2UgYSA9IHg7XG4gIH1cbiAgcmV0dXJuIChhICsgYikgLyAyO1xufVxuXG4vKipcbiAqIFRoZSBmYXJtJ3MgbWVhbiBzaGFyZSBiZWxvdyB3aGljaCB0aGUgd2FudGVkIHBhcnQgb2YgdGhlIGJlbGllZiBsaWVzOyBldmVyeSBwb2ludCBzdGFuZHMgZm9yIGl0cyBvd24gc3RlcFxuICogb2YgdGhlIGdyaWQuXG4gKi9cbmV4cG9ydCBmdW5jdGlvbiBtZWFuU2hhcmVBdChwb2ludHM6IHJlYWRvbmx5IFNoYXJlUG9pbnRbXSwgd2FudGVkOiBudW1iZXIpOiBudW1iZXIge1xuICBjb25zdCBsb3cgPSBNYXRoLm1pbiguLi5wb2ludHMubWFwKChwKSA9PiBwLmxvZ2l0IC0gcC5oYWxmU3RlcCkpO1xuICBjb25zdCBoaWdoID0gTWF0aC5tYXgoLi4ucG9pbnRzLm1hcCgocCkgPT4gcC5sb2dpdCArIHAuaGFsZlN0ZXApKTtcbiAgY29uc3QgYmVsb3cgPSAoeDogbnVtYmVyKTogbnVtYmVyID0+XG4gICAgcG9pbnRzLnJlZHVjZShcbiAgICAgIChzdW0sIHApID0+IHN1bSArIHAud2VpZ2h0ICogTWF0aC5taW4oMSwgTWF0aC5tYXgoMCwgKHggLSBwLmxvZ2l0ICsgcC5oYWxmU3RlcCkgLyAoMiAqIHAuaGFsZlN0ZXApKSksXG4gICAgICAwLFxuICAgICk7XG4gIHJldHVybiBzaGFyZU9mKGNyb3NzaW5nKGxvdywgaGlnaCwgd2FudGVkLCBiZWxvdykpO1xufVxuXG5pbnRlcmZhY2UgQmV0YSB7XG4gIHJlYWRvbmx5IHdlaWdodDogbnVtYmVyO1xuICByZWFkb25seSBhOiBudW1iZXI7XG4gIHJlYWRvbmx5IGI6IG51bWJlcjtcbn1cbmNvbnN0IEFUX09OQ0UgPSA0O1xuXG4vKipcbiAqIE9uZSBiZXRhIGluIHBsYWNlIG9mIG5laWdoYm91cmluZyBwb2ludHM6IHRoZWlyIG1lYW4gYW5kIHRoZWlyIHZhcmlhbmNlLCBNKDEgXHUyMjEyIE0pLyhcdTAzQzYgKyAxKSB3aXRoaW4gYW5kIFx1MDNDNi8oXHUwM0M2ICtcbiAqIDEpIG9mIHRoZSB2YXJpYW5jZSBvZiBNIGJldHdlZW4uXG4gKi9cbmZ1bmN0aW9uIHRvZ2V0aGVyKHBvaW50czogcmVhZG9ubHkgU2hhcmVQb2ludFtdLCBwaGk6IG51bWJlcik6IEJldGEge1xuICBjb25zdCB3ZWlnaHQgPSBwb2ludHMucmVkdWNlKChzdW0sIHApID0+IHN1bSArIHAud2VpZ2h0LCAwKTtcbiAgY29uc3QgbWVhbiA9IHBvaW50cy5yZWR1Y2UoKHN1bSwgcCkgPT4gc3VtICsgcC53ZWlnaHQgKiBwLm1lYW4sIDApIC8gd2VpZ2h0O1xuICBjb25zdCBiZXR3ZWVuID0gcG9pbnRzLnJlZHVjZSgoc3VtLCBwKSA9PiBzdW0gKyBwLndlaWdodCAqIChwLm1lYW4gLSBtZWFuKSAqKiAyLCAwKSAvIHdlaWdodDtcbiAgY29uc3QgdmFyaWFuY2UgPSAobWVhbiAqICgxIC0gbWVhbikgLSBiZXR3ZWVuKSAvIChwaGkgKyAxKSArIGJldHdlZW47XG4gIGNvbnN0IHNpemUgPSBNYXRoLm1heCgxZS02LCAobWVhbiAqICgxIC0gbWVhbikpIC8gdmFyaWFuY2UgLSAxKTtcbiAgcmV0dXJuIHsgd2VpZ2h0LCBhOiBtZWFuICogc2l6ZSwgYjogKDEgLSBtZWFuKSAqIHNpemUgfTtcbn1cblxuLyoqIEJldGEgZGlzdHJpYnV0aW9ucyBvZiB0aGUgbmV4dCBydW46IHBvaW50cyBvZiBvbmUgc3RlYWRpbmVzcyB0YWtlbiB0b2dldGhlciBhIGZldyBhdCBhIHRpbWUuICovXG5mdW5jdGlvbiBiZXRhc09mKHBvaW50czogcmVhZG9ubHkgU2hhcmVQb2ludFtdKTogQmV0YVtdIHtcbiAgY29uc3QgYmV0YXM6IEJldGFbXSA9IFtdO1xuICBmb3IgKGxldCBpID0gMDsgaSA8IHBvaW50cy5sZW5ndGg7KSB7XG4gICAgY29uc3QgcGhpID0gcG9pbnRzW2ldPy5zdGVhZGluZXNzID8/IE5hTjtcbiAgICBjb25zdCBuZWFyID0gcG9pbnRzLnNsaWNlKGksIGkgKyBBVF9PTkNFKS5maWx0ZXIoKHApID0+IHAuc3RlYWRpbmVzcyA9PT0gcGhpKTtcbiAgICBpICs9IG5lYXIubGVuZ3RoO1xuICAgIGJldGFzLnB1c2godG9nZXRoZXIobmVhciwgcGhpKSk7XG4gIH1cbiAgcmV0dXJuIGJldGFzLmZpbHRlcigoeyB3ZWlnaHQgfSkgPT4gd2VpZ2h0ID4gMWUtNik7XG59XG5cbi8qKiBIb3cgZmFyIGZyb20gaXRzIG1pZGRsZSBhIGJldGEgc3RpbGwgY2FycmllcyB3ZWlnaHQsIG9uIGxvZ2l0czogaXRzIHRhaWxzIGZhbGwgYXMgZV4oYVx1MDBCN3gpIGFuZCBlXihcdTIyMTJiXHUwMEI3eCkuICovXG5jb25zdCByZWFjaCA9ICh7IGEsIGIgfTogQmV0YSk6IHJlYWRvbmx5IFtudW1iZXIsIG51bWJlcl0gPT4ge1xuICBjb25zdCBtaWRkbGUgPSBNYXRoLmxvZyhhIC8gYik7XG4gIGNvbnN0IHNkID0gTWF0aC5zcXJ0KDEgLyBhICsgMSAvIGIpO1xuICByZXR1cm4gW1xuICAgIE1hdGgubWF4KC1FTkQsIG1pZGRsZSAtIE1hdGgubWF4KDcgKiBzZCwgMjAgLyBhKSksXG4gICAgTWF0aC5taW4oRU5ELCBtaWRkbGUgKyBNYXRoLm1heCg3ICogc2QsIDIwIC8gYikpLFxuICBdO1xufTtcblxuY29uc3QgU1RFUFMgPSA4MDA7XG4vKipcbiAqIFF1YW50aWxlcyBvZiB0aGUgc2hhcmUgb2YgdGhlIG5leHQgcnVuOiBhIG1peHR1cmUgb2YgYmV0YSBkaXN0cmlidXRpb25zLCBpdHMgZGVuc2l0eSBzdW1tZWQgYWxvbmcgbG9naXRzLFxuICogd2hlcmUgaXQgaXMgc21vb3RoIGV2ZW4gd2hlbiBydW5zIGFyZSBvZnRlbiBuZWFyIDAgb3IgMTAwICUuIFdoYXQgbGllcyBiZXlvbmQgdGhlIGVuZHMgaXMgYWRkZWQgZnJvbSB0aGVcbiAqIHRhaWxzLiBJbjogcG9pbnRzIG9mIHBvb2xTaGFyZXMsIHdhbnRlZCBwYXJ0cy4gT3V0OiBvbmUgc2hhcmUgZm9yIGVhY2guIEV4YW1wbGU6IG9uZSBiZXRhICgxLCAxKSBhdCAwLjk3NSBcdTIxOTJcbiAqIDAuOTc1LlxuICovXG5leHBvcnQgZnVuY3Rpb24gbmV4dFNoYXJlQXQocG9pbnRzOiByZWFkb25seSBTaGFyZVBvaW50W10sIHdhbnRlZDogcmVhZG9ubHkgbnVtYmVyW10pOiByZWFkb25seSBudW1iZXJbXSB7XG4gIGNvbnN0IGJldGFzID0gYmV0YXNPZihwb2ludHMpO1xuICBjb25zdCByZWFjaGVzID0gYmV0YXMubWFwKHJlYWNoKTtcbiAgY29uc3QgbG93ID0gTWF0aC5taW4oLi4ucmVhY2hlcy5tYXAoKFtsXSkgPT4gbCkpO1xuICBjb25zdCBoaWdoID0gTWF0aC5tYXgoLi4ucmVhY2hlcy5tYXAoKFssIGhdKSA9PiBoKSk7XG4gIGNvbnN0IHN0ZXAgPSAoaGlnaCAtIGxvdykgLyBTVEVQUztcbiAgY29uc3QgZGVuc2l0eSA9IG5ldyBGbG9hdDY0QXJyYXkoU1RFUFMgKyAxKTtcbiAgLy8gbG4gcCBhbmQgbG4oMSBcdTIyMTIgcCkgd2l0aG91dCBsb3NzIGF0IGVpdGhlciBlbmQuXG4gIGNvbnN0IGxvZ1AgPSBkZW5zaXR5Lm1hcChcbiAgICAoXywgaSkgPT4gTWF0aC5taW4oMCwgbG93ICsgc3RlcCAqIGkpIC0gTWF0aC5sb2cxcChNYXRoLmV4cCgtTWF0aC5hYnMobG93ICsgc3RlcCAqIGkpKSksXG4gICk7XG4gIGNvbnN0IGxvZ1EgPSBkZW5zaXR5Lm1hcChcbiAgICAoXywgaSkgPT4gTWF0aC5taW4oMCwgLWxvdyAtIHN0ZXAgKiBpKSAtIE1hdGgubG9nMXAoTWF0aC5leHAoLU1hdGguYWJzKGxvdyArIHN0ZXAgKiBpKSkpLFxuICApO1xuICBsZXQgdGFpbCA9IDA7XG4gIGxldCByZXN0ID0gMDtcbiAgZm9yIChjb25zdCB7IHdlaWdodCwgYSwgYiB9IG9mIGJldGFzKSB7XG4gICAgY29uc3QgbG9nID0gTWF0aC5sb2cod2VpZ2h0KSArIGxvZ0dhbW1hRmFzdChhICsgYikgLSBsb2dHYW1tYUZhc3QoYSkgLSBsb2dHYW1tYUZhc3QoYik7XG4gICAgZm9yIChsZXQgaSA9IDA7IGkgPD0gU1RFUFM7IGkrKykge1xuICAgICAgY29uc3QgZiA9IE1hdGguZXhwKGxvZyArIGEgKiAobG9nUFtpXSA/PyAwKSArIGIgKiAobG9nUVtpXSA/PyAwKSk7XG4gICAgICBkZW5zaXR5W2ldID0gKGRlbnNpdHlbaV0gPz8gMCkgKyBmO1xuICAgICAgaWYgKGkgPT09IDApIHRhaWwgKz0gZiAvIGE7XG4gICAgICBpZiAoaSA9PT0gU1RFUFMpIHJlc3QgKz0gZiAvIGI7XG4gICAgfVxuICB9XG4gIGNvbnN0IHN1bXMgPSBuZXcgRmxvYXQ2NEFycmF5KFNURVBTICsgMSk7XG4gIHN1bXNbMF0gPSB0YWlsO1xuICBmb3IgKGxldCBpID0gMTsgaSA8PSBTVEVQUzsgaSsrKVxuICAgIHN1bXNbaV0gPSAoc3Vtc1tpIC0gMV0gPz8gMCkgKyAoc3RlcCAqICgoZGVuc2l0eVtpIC0gMV0gPz8gMCkgKyAoZGVuc2l0eVtpXSA/PyAwKSkpIC8gMjtcbiAgY29uc3QgdG90YWwgPSAoc3Vtc1tTVEVQU10gPz8gMCkgKyByZXN0O1xuICByZXR1cm4gd2FudGVkLm1hcCgocGFydCkgPT4ge1xuICAgIGNvbnN0IGkgPSBzdW1zLmZpbmRJbmRleCgoc3VtKSA9PiBzdW0gPj0gcGFydCAqIHRvdGFsKTtcbiAgICBpZiAoaSA9PT0gMCkgcmV0dXJuIGxvdyA8PSAtRU5EID8gMCA6IHNoYXJlT2YobG93KTtcbiAgICBpZiAoaSA8IDApIHJldHVybiBoaWdoID49IEVORCA/IDEgOiBzaGFyZU9mKGhpZ2gpO1xuICAgIGNvbnN0IGJlZm9yZSA9IHN1bXNbaSAtIDFdID8/IDA7XG4gICAgcmV0dXJuIHNoYXJlT2YobG93ICsgc3RlcCAqIChpIC0gMSArIChwYXJ0ICogdG90YWwgLSBiZWZvcmUpIC8gKChzdW1zW2ldID8/IDApIC0gYmVmb3JlKSkpO1xuICB9KTtcbn1cbiIsICJpbXBvcnQgdHlwZSB7IEJlbGwgfSBmcm9tICcuL2JlbGllZic7XG5pbXBvcnQgeyBmcm9tQmVsbHMsIGxpdGVyYXR1cmVCZWxscywgc2NhbGVCZWxpZWYgfSBmcm9tICcuL2JlbGllZic7XG5pbXBvcnQgeyBtaXh0dXJlUXVhbnRpbGUgfSBmcm9tICcuL25vcm1hbE1peHR1cmUnO1xuaW1wb3J0IHR5cGUgeyBDYXNlLCBLaW5kIH0gZnJvbSAnLi9wb29sTm9ybWFsJztcbmltcG9ydCB7IHBvb2xOb3JtYWwgfSBmcm9tICcuL3Bvb2xOb3JtYWwnO1xuaW1wb3J0IHR5cGUgeyBDb3VudGVkLCBTaGFyZVBvaW50IH0gZnJvbSAnLi9wb29sU2hhcmVzJztcbmltcG9ydCB7IHBvb2xTaGFyZXMgfSBmcm9tICcuL3Bvb2xTaGFyZXMnO1xuaW1wb3J0IHR5cGUgeyBSYXRlU3BlYyB9IGZyb20gJy4uL3JhdGVzJztcbmltcG9ydCB7IG1lYW5TaGFyZUF0LCBuZXh0U2hhcmVBdCB9IGZyb20gJy4vc2hhcmVRdWFudGlsZXMnO1xuXG5leHBvcnQgaW50ZXJmYWNlIEVzdGltYXRlIHtcbiAgLyoqIE1lYW4gb3ZlciBydW5zIHRvIGNvbWU6IHRoZSBtaWRkbGUgb2Ygd2hhdCBpcyBiZWxpZXZlZCwgYW5kIHRoZSBlbmRzIG9mIGl0cyBpbnRlcnZhbC4gKi9cbiAgcmVhZG9ubHkgdmFsdWU6IG51bWJlcjtcbiAgcmVhZG9ubHkgbG93OiBudW1iZXI7XG4gIHJlYWRvbmx5IGhpZ2g6IG51bWJlcjtcbiAgLyoqIFdoZXJlIGEgc2luZ2xlIGZ1cnRoZXIgcnVuIHdpbGwgbGllLiAqL1xuICByZWFkb25seSBuZXh0TG93OiBudW1iZXI7XG4gIHJlYWRvbmx5IG5leHRIaWdoOiBudW1iZXI7XG4gIC8qKiBXZWlnaHQgb2YgdGhlIG93biBydW5zIGFnYWluc3QgdGhlIGxpdGVyYXR1cmUsIDAgdG8gMS4gKi9cbiAgcmVhZG9ubHkgb3duV2VpZ2h0OiBudW1iZXI7XG4gIHJlYWRvbmx5IHJ1bnM6IG51bWJlcjtcbn1cblxuZXhwb3J0IGludGVyZmFjZSBFc3RpbWF0ZXMge1xuICByZWFkb25seSBmYXJtOiBFc3RpbWF0ZTtcbiAgLyoqIEluIHRoZSBvcmRlciBvZiB0aGUga2luZHMgZ2l2ZW4sIHRoZW4gb25lIGZvciBhIGtpbmQgbmV2ZXIgc2Vlbi4gKi9cbiAgcmVhZG9ubHkga2luZHM6IHJlYWRvbmx5IEVzdGltYXRlW107XG59XG5cbmNvbnN0IHRhaWxzID0gKGNvbmZpZGVuY2U6IG51bWJlcik6IHJlYWRvbmx5IFtudW1iZXIsIG51bWJlcl0gPT4gWygxIC0gY29uZmlkZW5jZSkgLyAyLCAoMSArIGNvbmZpZGVuY2UpIC8gMl07XG5cbmludGVyZmFjZSBTY2FsZSB7XG4gIHJlYWRvbmx5IHRvOiAodmFsdWU6IG51bWJlcikgPT4gbnVtYmVyO1xuICByZWFkb25seSBmcm9tOiAoc2NhbGVkOiBudW1iZXIpID0+IG51bWJlcjtcbiAgLyoqXG4gICAqIFJ1bnMgdGhhdCBzcHJlYWQgb24gbG9nYXJpdGhtcyBoYXZlIGEgbWVhbiBhYm92ZSB0aGVpciBtaWRkbGU6IGhhbGYgdGhlaXIgdmFyaWFuY2UuXG4gICAqLyByZWFkb25seSBsaWZ0OiBudW1iZXI7XG59XG5jb25zdCBTQ0FMRVM6IFJlYWRvbmx5PFJlY29yZDwnbG9nJyB8ICdkaWZmZXJlbmNlJywgU2NhbGU+PiA9IHtcbiAgbG9nOiB7IHRvOiBNYXRoLmxvZywgZnJvbTogTWF0aC5leHAsIGxpZnQ6IDAuNSB9LFxuICBkaWZmZXJlbmNlOiB7IHRvOiAoeCkgPT4geCwgZnJvbTogKHgpID0+IHgsIGxpZnQ6IDAgfSxcbn07XG5cbmNvbnN0IHdlaWdodGVkID0gKGNhc2VzOiByZWFkb25seSBDYXNlW10sIG9mOiAob25lOiBDYXNlKSA9PiBudW1iZXIpOiBudW1iZXIgPT5cbiAgY2FzZXMucmVkdWNlKChzdW0sIG9uZSkgPT4gc3VtICsgb25lLndlaWdodCAqIG9mKG9uZSksIDApO1xuXG5pbnRlcmZhY2UgQXNrZWQge1xuICByZWFkb25seSBiZWxsOiAob25lOiBDYXNlKSA9PiBCZWxsO1xuICByZWFkb25seSBzcHJlYWQ6IChvbmU6IENhc2UpID0+IG51bWJlcjtcbiAgcmVhZG9ubHkgcnVuczogbnVtYmVyO1xuICByZWFkb25seSBwdWxsOiAob25lOiBDYXNlKSA9PiBudW1iZXI7XG59XG5cbmZ1bmN0aW9uIGFuc3dlcihjYXNlczogcmVhZG9ubHkgQ2FzZVtdLCB7IGZyb20sIGxpZnQgfTogU2NhbGUsIGFza2VkOiBBc2tlZCwgY29uZmlkZW5jZTogbnVtYmVyKTogRXN0aW1hdGUge1xuICBjb25zdCBtZWFucyA9IGNhc2VzLm1hcCgob25lKSA9PiB7XG4gICAgY29uc3QgYiA9IGFza2VkLmJlbGwob25lKTtcbiAgICByZXR1cm4geyB3ZWlnaHQ6IG9uZS53ZWlnaHQsIG1lYW46IGIubWVhbiArIGxpZnQgKiBhc2tlZC5zcHJlYWQob25lKSAqKiAyLCBzZDogYi5zZCB9O1xuICB9KTtcbiAgY29uc3QgbmV4dCA9IGNhc2VzLm1hcCgob25lKSA9PiB7XG4gICAgY29uc3QgYiA9IGFza2VkLmJlbGwob25lKTtcbiAgICByZXR1cm4geyB3ZWlnaHQ6IG9uZS53ZWlnaHQsIG1lYW46IGIubWVhbiwgc2Q6IE1hdGguaHlwb3QoYi5zZCwgYXNrZWQuc3ByZWFkKG9uZSkpIH07XG4gIH0pO1xuICBjb25zdCBbYSwgYl0gPSB0YWlscyhjb25maWRlbmNlKTtcbiAgcmV0dXJuIHtcbiAgICB2YWx1ZTogZnJvbShtaXh0dXJlUXVhbnRpbGUobWVhbnMsIDAuNSkpLFxuICAgIGxvdzogZnJvbShtaXh0dXJlUXVhbnRpbGUobWVhbnMsIGEpKSxcbiAgICBoaWdoOiBmcm9tKG1peHR1cmVRdWFudGlsZShtZWFucywgYikpLFxuICAgIG5leHRMb3c6IGZyb20obWl4dHVyZVF1YW50aWxlKG5leHQsIGEpKSxcbiAgICBuZXh0SGlnaDogZnJvbShtaXh0dXJlUXVhbnRpbGUobmV4dCwgYikpLFxuICAgIG93bldlaWdodDogd2VpZ2h0ZWQoY2FzZXMsIGFza2VkLnB1bGwpLFxuICAgIHJ1bnM6IGFza2VkLnJ1bnMsXG4gIH07XG59XG5cbi8qKiBXaGF0IGFuIGVzdGltYXRlIG5lZWRzIG9mIGEgcmF0ZS4gKi9cbmV4cG9ydCB0eXBlIENvdW50ZWRTcGVjID0gUGljazxSYXRlU3BlYywgJ2xpdGVyYXR1cmUnIHwgJ2Zhcm1zJyB8ICdydW5zJyB8ICdydW5zRmFjdG9yJz47XG5leHBvcnQgdHlwZSBNZWFzdXJlZFNwZWMgPSBDb3VudGVkU3BlYyAmIFBpY2s8UmF0ZVNwZWMsICdzY2FsZScgfCAna2luZHMnPjtcblxuLyoqIFdoYXQgaXMgYmVsaWV2ZWQgb2YgdGhlIHNwcmVhZHMgb2YgYSByYXRlLiAqL1xuY29uc3Qgbm9ybWFsTW9kZWwgPSAoc3BlYzogTWVhc3VyZWRTcGVjLCBzY2FsZTogU2NhbGUpOiBQYXJhbWV0ZXJzPHR5cGVvZiBwb29sTm9ybWFsPlsxXSA9PiAoe1xuICAvLyBUaGUgbGl0ZXJhdHVyZSBnaXZlcyBtZWFuczsgdGhlIG1pZGRsZSBvZiBydW5zIHRoYXQgc3ByZWFkIG9uIGxvZ2FyaXRobXMgbGllcyBiZWxvdyB0aGVpciBtZWFuLlxuICBtZWFuOiBsaXRlcmF0dXJlQmVsbHMoXG4gICAgc2NhbGUudG8oc3BlYy5saXRlcmF0dXJlKSAtIHNjYWxlLmxpZnQgKiAoc3BlYy5ydW5zICoqIDIgKyAoc3BlYy5raW5kcz8uc3ByZWFkID8/IDApICoqIDIpLFxuICAgIHNwZWMuZmFybXMsXG4gICksXG4gIHJ1bnM6IHNjYWxlQmVsaWVmKHNwZWMucnVucywgc3BlYy5ydW5zRmFjdG9yKSxcbiAgLi4uKHNwZWMua2luZHMgPyB7IGtpbmRzOiBzY2FsZUJlbGllZihzcGVjLmtpbmRzLnNwcmVhZCwgc3BlYy5raW5kcy5mYWN0b3IpIH0gOiB7fSksXG59KTtcblxuLyoqXG4gKiBNZWFzdXJlZCByYXRlczogb25lIHZhbHVlIHBlciBydW4sIGFscmVhZHkgaW4gdGhlIHVuaXQgb2YgdGhlIHJhdGU7IGxvZyByYXRlcyBhYm92ZSAwLiBPbmUgbGlzdCBmb3IgZWFjaFxuICoga2luZCBvZiBydW4uXG4gKi9cbmV4cG9ydCBmdW5jdGlvbiBlc3RpbWF0ZU1lYXN1cmVkKHNwZWM6IE1lYXN1cmVkU3BlYywga2luZHM6IHJlYWRvbmx5IEtpbmRbXSwgY29uZmlkZW5jZSA9IDAuOTUpOiBFc3RpbWF0ZXMge1xuICBjb25zdCBzY2FsZSA9IFNDQUxFU1tzcGVjLnNjYWxlID09PSAnbG9nJyA/ICdsb2cnIDogJ2RpZmZlcmVuY2UnXTtcbiAgY29uc3Qgc2NhbGVkID0ga2luZHMubWFwKCh7IHZhbHVlcywgZXJyb3JzIH0pOiBLaW5kID0+ICh7XG4gICAgdmFsdWVzOiB2YWx1ZXMubWFwKHNjYWxlLnRvKSxcbiAgICAuLi4oZXJyb3JzID8geyBlcnJvcnMgfSA6IHt9KSxcbiAgfSkpO1xuICBjb25zdCBjYXNlcyA9IHBvb2xOb3JtYWwoc2NhbGVkLCBub3JtYWxNb2RlbChzcGVjLCBzY2FsZSkpO1xuICBjb25zdCBhbGwgPSBraW5kcy5yZWR1Y2UoKHN1bSwgeyB2YWx1ZXMgfSkgPT4gc3VtICsgdmFsdWVzLmxlbmd0aCwgMCk7XG4gIGNvbnN0IGZhcm0gPSBhbnN3ZXIoXG4gICAgY2FzZXMsXG4gICAgc2NhbGUsXG4gICAgeyBiZWxsOiAoYykgPT4gYy5mYXJtLCBzcHJlYWQ6IChjKSA9PiBNYXRoLmh5cG90KGMucnVuU2QsIGMua2luZFNkKSwgcnVuczogYWxsLCBwdWxsOiAoYykgPT4gYy5wdWxsIH0sXG4gICAgY29uZmlkZW5jZSxcbiAgKTtcbiAgaWYgKCFzcGVjLmtpbmRzKSByZXR1cm4geyBmYXJtLCBraW5kczogW10gfTtcbiAgY29uc3QgZWFjaCA9IFsuLi5raW5kcywgeyB2YWx1ZXM6IFtdIH1dLm1hcCgoeyB2YWx1ZXMgfSwgaSkgPT5cbiAgICBhbnN3ZXIoXG4gICAgICBjYXNlcyxcbiAgICAgIHNjYWxlLFxuICAgICAge1xuICAgICAgICBiZWxsOiAoYykgPT4gYy5raW5kc1tpXSA/PyBjLmZhcm0sXG4gICAgICAgIHNwcmVhZDogKGMpID0+IGMucnVuU2QsXG4gICAgICAgIHJ1bnM6IHZhbHVlcy5sZW5ndGgsXG4gICAgICAgIHB1bGw6IChjKSA9PiB7XG4gICAgICAgICAgY29uc3Qgb3duID0gdmFsdWVzLmxlbmd0aCAvICh2YWx1ZXMubGVuZ3RoICsgKGMucnVuU2QgLyBjLmtpbmRTZCkgKiogMik7XG4gICAgICAgICAgcmV0dXJuIG93biArICgxIC0gb3duKSAqIGMucHVsbDtcbiAgICAgICAgfSxcbiAgICAgIH0sXG4gICAgICBjb25maWRlbmNlLFxuICAgICksXG4gICk7XG4gIHJldHVybiB7IGZhcm0sIGtpbmRzOiBlYWNoIH07XG59XG5cbmNvbnN0IGxvZ2l0ID0gKHA6IG51bWJlcik6IG51bWJlciA9PiBNYXRoLmxvZyhwIC8gKDEgLSBwKSk7XG5cbi8qKiBNZWRpYW4gc3RlYWRpbmVzcyBcdTAzQzYgZm9yIHJ1bnMgd2hvc2Ugc3RhbmRhcmQgZGV2aWF0aW9uIGlzIHRoaXMgcGFydCBvZiBcdTIyMUEoTSgxIFx1MjIxMiBNKSk6IDEvKFx1MDNDNiArIDEpID0gcGFydFx1MDBCMi4gKi9cbmNvbnN0IHN0ZWFkaW5lc3MgPSAocGFydDogbnVtYmVyKTogbnVtYmVyID0+IDEgLyAocGFydCAqIHBhcnQpIC0gMTtcblxuLyoqXG4gKiBQdWxsIG9mIG93biBydW5zOiBpbmZvcm1hdGlvbiBpbiB0aGUgY291bnRzIGFnYWluc3QgdGhlIGxpdGVyYXR1cmUsIG9uIHRoZSBsb2dpdCBzY2FsZSwgYXZlcmFnZWQgb3ZlciB3aGF0XG4gKiBpcyBiZWxpZXZlZC5cbiAqL1xuY29uc3Qgc2hhcmVQdWxsID0gKHBvaW50czogcmVhZG9ubHkgU2hhcmVQb2ludFtdLCBydW5zOiByZWFkb25seSBDb3VudGVkW10sIGZhcm1zOiBudW1iZXIpOiBudW1iZXIgPT5cbiAgcG9pbnRzLnJlZHVjZSgoc3VtLCB7IHdlaWdodCwgbWVhbiwgc3RlYWRpbmVzczogcGhpIH0pID0+IHtcbiAgICBjb25zdCBpbmZvcm1hdGlvbiA9XG4gICAgICBydW5zLnJlZHVjZSgodG90YWwsIHsgbiB9KSA9PiB0b3RhbCArIG4gLyAoMSArIChuIC0gMSkgLyAocGhpICsgMSkpLCAwKSAqIG1lYW4gKiAoMSAtIG1lYW4pO1xuICAgIHJldHVybiBzdW0gKyAod2VpZ2h0ICogaW5mb3JtYXRpb24pIC8gKGluZm9ybWF0aW9uICsgMSAvIChmYXJtcyAqIGZhcm1zKSk7XG4gIH0sIDApO1xuXG4vKiogQ291bnRlZCByYXRlczogayBvZiBuIGluIGVhY2ggcnVuLiAqL1xuZXhwb3J0IGZ1bmN0aW9uIGVzdGltYXRlQ291bnRlZChzcGVjOiBDb3VudGVkU3BlYywgcnVuczogcmVhZG9ubHkgQ291bnRlZFtdLCBjb25maWRlbmNlID0gMC45NSk6IEVzdGltYXRlIHtcbiAgY29uc3QgcG9pbnRzID0gcG9vbFNoYXJlcyhydW5zLCB7XG4gICAgbWVhbjogZnJvbUJlbGxzKGxpdGVyYXR1cmVCZWxscyhsb2dpdChzcGVjLmxpdGVyYXR1cmUpLCBzcGVjLmZhcm1zKSksXG4gICAgc3RlYWRpbmVzczogc2NhbGVCZWxpZWYoc3RlYWRpbmVzcyhzcGVjLnJ1bnMpLCBzcGVjLnJ1bnNGYWN0b3IgKiogMiksXG4gIH0pO1xuICBjb25zdCBbYSwgYl0gPSB0YWlscyhjb25maWRlbmNlKTtcbiAgY29uc3QgW25leHRMb3cgPSBOYU4sIG5leHRIaWdoID0gTmFOXSA9IG5leHRTaGFyZUF0KHBvaW50cywgW2EsIGJdKTtcbiAgcmV0dXJuIHtcbiAgICB2YWx1ZTogbWVhblNoYXJlQXQocG9pbnRzLCAwLjUpLFxuICAgIGxvdzogbWVhblNoYXJlQXQocG9pbnRzLCBhKSxcbiAgICBoaWdoOiBtZWFuU2hhcmVBdChwb2ludHMsIGIpLFxuICAgIG5leHRMb3csXG4gICAgbmV4dEhpZ2gsXG4gICAgb3duV2VpZ2h0OiBzaGFyZVB1bGwocG9pbnRzLCBydW5zLCBzcGVjLmZhcm1zKSxcbiAgICBydW5zOiBydW5zLmxlbmd0aCxcbiAgfTtcbn1cbiIsICIvKipcbiAqIEludmVudGVkIGZhcm1zIGZvciB0aGUgY2hlY2sgb2YgdGhlIGVzdGltYXRvciwgc2VlZGVkLiBFdmVyeSBmYXJtIGhhcyB0cnVlIHZhbHVlcyBvZiBpdHMgb3duLCBkcmF3biBmcm9tXG4gKiBvbmUgb2YgdGhlc2Ugd29ybGRzOiBhc3N1bWVkIFx1MjAxMyBhcyB0aGUgZXN0aW1hdG9yIGJlbGlldmVzIGZhcm1zIHRvIGJlOiBjaGVja3MgdGhlIGFyaXRobWV0aWMsIGNvdmVyYWdlIG11c3RcbiAqIGJlIDk1ICUgb3RoZXIgICBcdTIwMTMgZmFybSBtZWFucyBzcHJlYWQgYnkgYW5vdGhlciBsYXcgKFN0dWRlbnQncyB0IHdpdGggNCBkZWdyZWVzIG9mIGZyZWVkb20sIHNhbWUgcXVhcnRpbGVzKSxcbiAqIHNwcmVhZHMgb2YgcnVucyBldmVuIG9uIGEgbG9nYXJpdGhtLCBzaGFyZXMgdmFyeSBvbiBsb2dpdHMgaW5zdGVhZCBvZiBhcyBhIGJldGEgZGlzdHJpYnV0aW9uOiBjaGVja3MgdGhhdFxuICogdGhlIGJlbGllZiBuZWVkIG5vdCBiZSByaWdodCBmYXIgICAgIFx1MjAxMyBldmVyeSBmYXJtIGxpZXMgdHdvIGZhcm0tc3ByZWFkcyBmcm9tIHRoZSBsaXRlcmF0dXJlOiB3aGF0IGhhcHBlbnNcbiAqIHRvIGEgZmFybSB1bmxpa2UgdGhlIHB1Ymxpc2hlZCBvbmVzXG4gKi9cbmV4cG9ydCB0eXBlIFdvcmxkID0gJ2Fzc3VtZWQnIHwgJ290aGVyJyB8ICdmYXInO1xuXG4vKiogU3BsaXRzIGEgc2VlZCBpbnRvIGEgc3RyZWFtIG9mIG51bWJlcnMgaW4gKDAsIDEpOiBhIDMyLWJpdCBtaXhlciB3aXRoIGEgV2V5bCBzdGVwLCBvd24gYXJyYW5nZW1lbnQuICovXG5leHBvcnQgY2xhc3MgQ2hhbmNlIHtcbiAgcHJpdmF0ZSBzdGF0ZTogbnVtYmVyO1xuICBwcml2YXRlIHNwYXJlOiBudW1iZXIgfCB1bmRlZmluZWQ7XG4gIGNvbnN0cnVjdG9yKHNlZWQ6IG51bWJlcikge1xuICAgIHRoaXMuc3RhdGUgPSBzZWVkID4+PiAwO1xuICB9XG5cbiAgLyoqIEJldHdlZW4gMCBhbmQgMSwgbmVpdGhlciBpbmNsdWRlZC4gKi9cbiAgbmV4dCgpOiBudW1iZXIge1xuICAgIHRoaXMuc3RhdGUgPSAodGhpcy5zdGF0ZSArIDB4OWUzNzc5YjkpID4+PiAwO1xuICAgIGxldCB4ID0gdGhpcy5zdGF0ZTtcbiAgICB4ID0gTWF0aC5pbXVsKHggXiAoeCA+Pj4gMTYpLCAweDg1ZWJjYTZiKTtcbiAgICB4ID0gTWF0aC5pbXVsKHggXiAoeCA+Pj4gMTMpLCAweGMyYjJhZTM1KTtcbiAgICByZXR1cm4gKCgoeCBeICh4ID4+PiAxNikpID4+PiAwKSArIDAuNSkgLyA0Mjk0OTY3Mjk2O1xuICB9XG5cbiAgLyoqIFN0YW5kYXJkIG5vcm1hbCwgcG9sYXIgbWV0aG9kLiAqL1xuICBiZWxsKCk6IG51bWJlciB7XG4gICAgaWYgKHRoaXMuc3BhcmUgIT09IHVuZGVmaW5lZCkge1xuICAgICAgY29uc3Qga2VwdCA9IHRoaXMuc3BhcmU7XG4gICAgICB0aGlzLnNwYXJlID0gdW5kZWZpbmVkO1xuICAgICAgcmV0dXJuIGtlcHQ7XG4gICAgfVxuICAgIGZvciAoOzspIHtcbiAgICAgIGNvbnN0IHUgPSAyICogdGhpcy5uZXh0KCkgLSAxO1xuICAgICAgY29uc3QgdiA9IDIgKiB0aGlzLm5leHQoKSAtIDE7XG4gICAgICBjb25zdCBzID0gdSAqIHUgKyB2ICogdjtcbiAgICAgIGlmIChzID09PSAwIHx8IHMgPj0gMSkgY29udGludWU7XG4gICAgICBjb25zdCBmID0gTWF0aC5zcXJ0KCgtMiAqIE1hdGgubG9nKHMpKSAvIHMpO1xuICAgICAgdGhpcy5zcGFyZSA9IHYgKiBmO1xuICAgICAgcmV0dXJuIHUgKiBmO1xuICAgIH1cbiAgfVxuXG4gIC8qKiBHYW1tYSB3aXRoIHNjYWxlIDEsIHNxdWVlemUtZnJlZSByZWplY3Rpb24gb24gYSBjdWJlZCBub3JtYWw7IHNoYXBlcyBiZWxvdyAxIGJ5IHRoZSBwb3dlciB0cmljay4gKi9cbiAgZ2FtbWEoc2hhcGU6IG51bWJlcik6IG51bWJlciB7XG4gICAgaWYgKHNoYXBlIDwgMSkgcmV0dXJuIHRoaXMuZ2FtbWEoc2hhcGUgKyAxKSAqIHRoaXMubmV4dCgpICoqICgxIC8gc2hhcGUpO1xuICAgIGNvbnN0IGQgPSBzaGFwZSAtIDEgLyAzO1xuICAgIGNvbnN0IGMgPSAxIC8gTWF0aC5zcXJ0KDkgKiBkKTtcbiAgICBmb3IgKDs7KSB7XG4gICAgICBjb25zdCB6ID0gdGhpcy5iZWxsKCk7XG4gICAgICBjb25zdCB2ID0gKDEgKyBjICogeikgKiogMztcbiAgICAgIGlmICh2ID4gMCAmJiBNYXRoLmxvZyh0aGlzLm5leHQoKSkgPCAwLjUgKiB6ICogeiArIGQgLSBkICogdiArIGQgKiBNYXRoLmxvZyh2KSkgcmV0dXJuIGQgKiB2O1xuICAgIH1cbiAgfVxuXG4gIGJldGEoYTogbnVtYmVyLCBiOiBudW1iZXIpOiBudW1iZXIge1xuICAgIGNvbnN0IHggPSB0aGlzLmdhbW1hKGEpO1xuICAgIGNvbnN0IHkgPSB0aGlzLmdhbW1hKGIpO1xuICAgIHJldHVybiB4IC8gKHggKyB5KTtcbiAgfVxuXG4gIGJpbm9taWFsKG46IG51bWJlciwgcDogbnVtYmVyKTogbnVtYmVyIHtcbiAgICBsZXQgayA9IDA7XG4gICAgZm9yIChsZXQgaSA9IDA7IGkgPCBuOyBpKyspIGlmICh0aGlzLm5leHQoKSA8IHApIGsrKztcbiAgICByZXR1cm4gaztcbiAgfVxufVxuXG4vKipcbiAqIFF1YXJ0aWxlIG9mIHRoZSBiZWxpZWYgKG5pbmUgYmVsbHMgaW4gdGVuIG9mIHdpZHRoIDEsIG9uZSBvZiB3aWR0aCAzKSBcdTAwRjcgcXVhcnRpbGUgb2YgU3R1ZGVudCdzIHQgd2l0aCA0XG4gKiBkZWdyZWVzIG9mIGZyZWVkb206IDAuNzMwLzAuNzQwNy5cbiAqL1xuY29uc3QgU0FNRV9RVUFSVElMRVMgPSAwLjk4NTY7XG4vKiogRmFybSBtZWFuIG9uIGl0cyBzY2FsZS4gKi9cbmV4cG9ydCBmdW5jdGlvbiBmYXJtTWVhbihjaGFuY2U6IENoYW5jZSwgd29ybGQ6IFdvcmxkLCBtaWRkbGU6IG51bWJlciwgc2Q6IG51bWJlcik6IG51bWJlciB7XG4gIGlmICh3b3JsZCA9PT0gJ2Fzc3VtZWQnKSByZXR1cm4gbWlkZGxlICsgY2hhbmNlLmJlbGwoKSAqIChjaGFuY2UubmV4dCgpIDwgMC4xID8gMyA6IDEpICogc2Q7XG4gIGlmICh3b3JsZCA9PT0gJ2ZhcicpIHJldHVybiBtaWRkbGUgKyAoY2hhbmNlLm5leHQoKSA8IDAuNSA/IC0yIDogMikgKiBzZDtcbiAgcmV0dXJuIG1pZGRsZSArIFNBTUVfUVVBUlRJTEVTICogc2QgKiAoY2hhbmNlLmJlbGwoKSAvIE1hdGguc3FydChjaGFuY2UuZ2FtbWEoMikgLyAyKSk7XG59XG5cbi8qKlxuICogU3ByZWFkIGJldHdlZW4gcnVuczogZXZlbiBvbiB0aGUgbG9nYXJpdGhtIHdpdGggdGhlIHN0YW5kYXJkIGRldmlhdGlvbiB0aGUgZXN0aW1hdG9yIGJlbGlldmVzLCBvciBhcyBpdFxuICogYmVsaWV2ZXMuXG4gKi9cbmV4cG9ydCBjb25zdCBzcHJlYWQgPSAoY2hhbmNlOiBDaGFuY2UsIHdvcmxkOiBXb3JsZCwgbWVkaWFuOiBudW1iZXIsIGZhY3RvcjogbnVtYmVyKTogbnVtYmVyID0+XG4gIG1lZGlhbiAqIGZhY3RvciAqKiAod29ybGQgPT09ICdhc3N1bWVkJyA/IGNoYW5jZS5iZWxsKCkgOiBNYXRoLnNxcnQoMykgKiAoMiAqIGNoYW5jZS5uZXh0KCkgLSAxKSk7XG4iLCAiaW1wb3J0IHsgZXN0aW1hdGVDb3VudGVkLCBlc3RpbWF0ZU1lYXN1cmVkIH0gZnJvbSAnLi4vLi4vc2hhcmVkL2ZhbWlsaWVzL2xlYXJuaW5nL2tlcm5lbHMvZXN0aW1hdGUnO1xuaW1wb3J0IHR5cGUgeyBSYXRlS2V5LCBSYXRlU3BlYyB9IGZyb20gJy4uLy4uL3NoYXJlZC9mYW1pbGllcy9sZWFybmluZy9yYXRlcyc7XG5pbXBvcnQgeyByYXRlU3BlYyB9IGZyb20gJy4uLy4uL3NoYXJlZC9mYW1pbGllcy9sZWFybmluZy9yYXRlcyc7XG5pbXBvcnQgdHlwZSB7IFdvcmxkIH0gZnJvbSAnLi9mYXJtcyc7XG5pbXBvcnQgeyBDaGFuY2UsIGZhcm1NZWFuLCBzcHJlYWQgfSBmcm9tICcuL2Zhcm1zJztcblxuLyoqIEhvdyBvZnRlbiB0aGUgaW50ZXJ2YWxzIGhvbGQgdGhlIHRydXRoLCBvdmVyIHNpbXVsYXRlZCBmYXJtcyBvZiBvbmUgd29ybGQgd2l0aCBhIG51bWJlciBvZiBydW5zIGVhY2guICovXG5leHBvcnQgaW50ZXJmYWNlIENvdmVyZWQge1xuICByZWFkb25seSByYXRlOiBSYXRlS2V5O1xuICByZWFkb25seSB3b3JsZDogV29ybGQ7XG4gIHJlYWRvbmx5IHJ1bnM6IG51bWJlcjtcbiAgcmVhZG9ubHkgZmFybXM6IG51bWJlcjtcbiAgcmVhZG9ubHkgc2VlZDogbnVtYmVyO1xuICAvKiogSGl0cyBvZiB0aGUgaW50ZXJ2YWwgZm9yIHRoZSBmYXJtJ3MgbWVhbiBhbmQgZm9yIHRoZSBuZXh0IHJ1bi4gKi9cbiAgcmVhZG9ubHkgbWVhbjogbnVtYmVyO1xuICByZWFkb25seSBuZXh0OiBudW1iZXI7XG4gIC8qKiBUaGUgc2FtZSBmb3Igb25lIGtpbmQgb2YgcnVuIChhIHByZXBhcmF0aW9uLCBhIG1vbnRoKSwgd2hlcmUgdGhlIHJhdGUgaGFzIGtpbmRzOyBlbHNlIDAuICovXG4gIHJlYWRvbmx5IGtpbmRNZWFuOiBudW1iZXI7XG4gIHJlYWRvbmx5IGtpbmROZXh0OiBudW1iZXI7XG4gIC8qKiBXaWR0aHMgb2YgdGhlIG1lYW4ncyBpbnRlcnZhbHMgYWRkZWQgdXAsIGluIHRoZSB1bml0IG9mIHRoZSByYXRlLiAqL1xuICByZWFkb25seSB3aWR0aDogbnVtYmVyO1xufVxuXG5jb25zdCBsb2dpdCA9IChwOiBudW1iZXIpOiBudW1iZXIgPT4gTWF0aC5sb2cocCAvICgxIC0gcCkpO1xuY29uc3Qgc2hhcmVPZiA9ICh4OiBudW1iZXIpOiBudW1iZXIgPT4gMSAvICgxICsgTWF0aC5leHAoLXgpKTtcbmNvbnN0IGluc2lkZSA9ICh4OiBudW1iZXIsIGxvdzogbnVtYmVyLCBoaWdoOiBudW1iZXIpOiBudW1iZXIgPT4gKHggPj0gbG93ICYmIHggPD0gaGlnaCA/IDEgOiAwKTtcbmNvbnN0IE5PREVTID0gNDAwO1xuLyoqIE1lYW4gb2Ygc2hhcmVzIHRoYXQgdmFyeSBhcyBhIGJlbGwgb24gbG9naXRzLiAqL1xuY29uc3QgbWVhbk9mTG9naXRzID0gKG11OiBudW1iZXIsIHNkOiBudW1iZXIpOiBudW1iZXIgPT4ge1xuICBsZXQgc3VtID0gMDtcbiAgbGV0IHdlaWdodCA9IDA7XG4gIGZvciAobGV0IGkgPSAwOyBpIDw9IE5PREVTOyBpKyspIHtcbiAgICBjb25zdCB6ID0gLTYgKyAoMTIgKiBpKSAvIE5PREVTO1xuICAgIGNvbnN0IHcgPSBNYXRoLmV4cCgtMC41ICogeiAqIHopO1xuICAgIHN1bSArPSB3ICogc2hhcmVPZihtdSArIHNkICogeik7XG4gICAgd2VpZ2h0ICs9IHc7XG4gIH1cbiAgcmV0dXJuIHN1bSAvIHdlaWdodDtcbn07XG5cbmludGVyZmFjZSBIaXQge1xuICByZWFkb25seSBtZWFuOiBudW1iZXI7XG4gIHJlYWRvbmx5IG5leHQ6IG51bWJlcjtcbiAgcmVhZG9ubHkga2luZE1lYW46IG51bWJlcjtcbiAgcmVhZG9ubHkga2luZE5leHQ6IG51bWJlcjtcbiAgcmVhZG9ubHkgd2lkdGg6IG51bWJlcjtcbn1cblxuLyoqIFNhbXBsZXMgYXMgZmFybXMgdGFrZSB0aGVtOiBmZXcgZmVtYWxlcywgb3Igc29tZSBkb3plbnMgdG8gaHVuZHJlZHMgb2YgZWdncy4gKi9cbmNvbnN0IHNhbXBsZU9mID0gKGtleTogUmF0ZUtleSwgY2hhbmNlOiBDaGFuY2UpOiBudW1iZXIgPT5cbiAga2V5ID09PSAnb3Z1bGF0aW5nJyA/IDMgKyBNYXRoLmZsb29yKGNoYW5jZS5uZXh0KCkgKiA4KSA6IDYwICsgTWF0aC5mbG9vcihjaGFuY2UubmV4dCgpICoqIDIgKiAzMDApO1xuXG4vKiogTWVhbiBzaGFyZSBvZiBhIGZhcm0gYW5kIGl0cyBydW5zOiBiZXRhIGFzIHRoZSBlc3RpbWF0b3IgYmVsaWV2ZXMsIG9yIGJlbGxzIG9uIGxvZ2l0cy4gKi9cbmZ1bmN0aW9uIHNoYXJlc09mKFxuICBzcGVjOiBSYXRlU3BlYyxcbiAgd29ybGQ6IFdvcmxkLFxuICBjaGFuY2U6IENoYW5jZSxcbik6IHsgcmVhZG9ubHkgdHJ1dGg6IG51bWJlcjsgcmVhZG9ubHkgZHJhdzogKCkgPT4gbnVtYmVyIH0ge1xuICBjb25zdCBtdSA9IGZhcm1NZWFuKGNoYW5jZSwgd29ybGQsIGxvZ2l0KHNwZWMubGl0ZXJhdHVyZSksIHNwZWMuZmFybXMpO1xuICBjb25zdCBtaWRkbGUgPSBzaGFyZU9mKG11KTtcbiAgaWYgKHdvcmxkID09PSAnYXNzdW1lZCcpIHtcbiAgICBjb25zdCBwaGkgPSBzcHJlYWQoY2hhbmNlLCB3b3JsZCwgMSAvIHNwZWMucnVucyAqKiAyIC0gMSwgc3BlYy5ydW5zRmFjdG9yICoqIDIpO1xuICAgIHJldHVybiB7IHRydXRoOiBtaWRkbGUsIGRyYXc6ICgpID0+IGNoYW5jZS5iZXRhKG1pZGRsZSAqIHBoaSwgKDEgLSBtaWRkbGUpICogcGhpKSB9O1xuICB9XG4gIC8vIE9uIGxvZ2l0cyBhIHNwcmVhZCBvZiBzL1x1MjIxQShNKDEgXHUyMjEyIE0pKSBnaXZlcyBhYm91dCBzXHUwMEI3XHUyMjFBKE0oMSBcdTIyMTIgTSkpIG9uIHNoYXJlcy5cbiAgY29uc3Qgc2QgPSBzcHJlYWQoY2hhbmNlLCB3b3JsZCwgc3BlYy5ydW5zLCBzcGVjLnJ1bnNGYWN0b3IpIC8gTWF0aC5zcXJ0KG1pZGRsZSAqICgxIC0gbWlkZGxlKSk7XG4gIHJldHVybiB7IHRydXRoOiBtZWFuT2ZMb2dpdHMobXUsIHNkKSwgZHJhdzogKCkgPT4gc2hhcmVPZihtdSArIHNkICogY2hhbmNlLmJlbGwoKSkgfTtcbn1cblxuZnVuY3Rpb24gY291bnRlZEZhcm0oa2V5OiBSYXRlS2V5LCB3b3JsZDogV29ybGQsIHJ1bnM6IG51bWJlciwgY2hhbmNlOiBDaGFuY2UpOiBIaXQge1xuICBjb25zdCBzcGVjID0gcmF0ZVNwZWMoa2V5KTtcbiAgY29uc3QgeyB0cnV0aCwgZHJhdyB9ID0gc2hhcmVzT2Yoc3BlYywgd29ybGQsIGNoYW5jZSk7XG4gIGNvbnN0IHNlZW4gPSBBcnJheS5mcm9tKHsgbGVuZ3RoOiBydW5zIH0sICgpID0+IHtcbiAgICBjb25zdCBuID0gc2FtcGxlT2Yoa2V5LCBjaGFuY2UpO1xuICAgIHJldHVybiB7IG4sIGs6IGNoYW5jZS5iaW5vbWlhbChuLCBkcmF3KCkpIH07XG4gIH0pO1xuICBjb25zdCBnb3QgPSBlc3RpbWF0ZUNvdW50ZWQoc3BlYywgc2Vlbik7XG4gIHJldHVybiB7XG4gICAgbWVhbjogaW5zaWRlKHRydXRoLCBnb3QubG93LCBnb3QuaGlnaCksXG4gICAgbmV4dDogaW5zaWRlKGRyYXcoKSwgZ290Lm5leHRMb3csIGdvdC5uZXh0SGlnaCksXG4gICAga2luZE1lYW46IDAsXG4gICAga2luZE5leHQ6IDAsXG4gICAgd2lkdGg6IGdvdC5oaWdoIC0gZ290LmxvdyxcbiAgfTtcbn1cblxuaW50ZXJmYWNlIE1lYXN1cmVkIHtcbiAgcmVhZG9ubHkgbXU6IG51bWJlcjtcbiAgcmVhZG9ubHkgcnVuU2Q6IG51bWJlcjtcbiAgcmVhZG9ubHkga2luZFNkOiBudW1iZXI7XG4gIHJlYWRvbmx5IHRoZXRhczogcmVhZG9ubHkgbnVtYmVyW107XG4gIHJlYWRvbmx5IHNjYWxlZDogKHg6IG51bWJlcikgPT4gbnVtYmVyO1xuICByZWFkb25seSBsaWZ0OiBudW1iZXI7XG59XG5jb25zdCBQUkVQQVJBVElPTlMgPSAzO1xuY29uc3QgTU9OVEhTID0gMTI7XG5jb25zdCBraW5kc09mID0gKHNwZWM6IFJhdGVTcGVjKTogbnVtYmVyID0+XG4gIHNwZWMua2luZHMgPyAoc3BlYy5raW5kcy5ieSA9PT0gJ21vbnRoJyA/IE1PTlRIUyA6IFBSRVBBUkFUSU9OUykgOiAxO1xuXG5mdW5jdGlvbiBmYXJtT2Yoc3BlYzogUmF0ZVNwZWMsIHdvcmxkOiBXb3JsZCwgY2hhbmNlOiBDaGFuY2UpOiBNZWFzdXJlZCB7XG4gIGNvbnN0IGlzTG9nID0gc3BlYy5zY2FsZSA9PT0gJ2xvZyc7XG4gIGNvbnN0IG1pZGRsZSA9IGlzTG9nXG4gICAgPyBNYXRoLmxvZyhzcGVjLmxpdGVyYXR1cmUpIC0gKHNwZWMucnVucyAqKiAyICsgKHNwZWMua2luZHM/LnNwcmVhZCA/PyAwKSAqKiAyKSAvIDJcbiAgICA6IHNwZWMubGl0ZXJhdHVyZTtcbiAgY29uc3QgbXUgPSBmYXJtTWVhbihjaGFuY2UsIHdvcmxkLCBtaWRkbGUsIHNwZWMuZmFybXMpO1xuICBjb25zdCBydW5TZCA9IHNwcmVhZChjaGFuY2UsIHdvcmxkLCBzcGVjLnJ1bnMsIHNwZWMucnVuc0ZhY3Rvcik7XG4gIGNvbnN0IGtpbmRTZCA9IHNwZWMua2luZHMgPyBzcHJlYWQoY2hhbmNlLCB3b3JsZCwgc3BlYy5raW5kcy5zcHJlYWQsIHNwZWMua2luZHMuZmFjdG9yKSA6IDA7XG4gIHJldHVybiB7XG4gICAgbXUsXG4gICAgcnVuU2QsXG4gICAga2luZFNkLFxuICAgIHRoZXRhczogQXJyYXkuZnJvbSh7IGxlbmd0aDoga2luZHNPZihzcGVjKSB9LCAoKSA9PiBtdSArIGtpbmRTZCAqIGNoYW5jZS5iZWxsKCkpLFxuICAgIHNjYWxlZDogaXNMb2cgPyBNYXRoLmV4cCA6ICh4KSA9PiB4LFxuICAgIGxpZnQ6IGlzTG9nID8gMC41IDogMCxcbiAgfTtcbn1cblxuZnVuY3Rpb24gbWVhc3VyZWRGYXJtKGtleTogUmF0ZUtleSwgd29ybGQ6IFdvcmxkLCBydW5zOiBudW1iZXIsIGNoYW5jZTogQ2hhbmNlKTogSGl0IHtcbiAgY29uc3Qgc3BlYyA9IHJhdGVTcGVjKGtleSk7XG4gIGNvbnN0IHsgbXUsIHJ1blNkLCBraW5kU2QsIHRoZXRhcywgc2NhbGVkLCBsaWZ0IH0gPSBmYXJtT2Yoc3BlYywgd29ybGQsIGNoYW5jZSk7XG4gIC8vIFJ1bnMgZmFsbCBpbnRvIGEgZmV3IGtpbmRzIG11Y2ggbW9yZSBvZnRlbiB0aGFuIGludG8gdGhlIG90aGVycywgYXMgbW9udGhzIGFuZCBwcmVwYXJhdGlvbnMgZG8uXG4gIGNvbnN0IGtpbmRPZiA9ICgpOiBudW1iZXIgPT4gTWF0aC5mbG9vcihjaGFuY2UubmV4dCgpICoqIDEuNyAqIHRoZXRhcy5sZW5ndGgpO1xuICBjb25zdCBsaXN0czogbnVtYmVyW11bXSA9IHRoZXRhcy5tYXAoKCkgPT4gW10pO1xuICBmb3IgKGxldCBpID0gMDsgaSA8IHJ1bnM7IGkrKykge1xuICAgIGNvbnN0IGcgPSBraW5kT2YoKTtcbiAgICBsaXN0c1tnXT8ucHVzaChzY2FsZWQoKHRoZXRhc1tnXSA/PyBOYU4pICsgcnVuU2QgKiBjaGFuY2UuYmVsbCgpKSk7XG4gIH1cbiAgY29uc3QgeyBmYXJtLCBraW5kcyB9ID0gZXN0aW1hdGVNZWFzdXJlZChcbiAgICBzcGVjLFxuICAgIGxpc3RzLm1hcCgodmFsdWVzKSA9PiAoeyB2YWx1ZXMgfSkpLFxuICApO1xuICBjb25zdCB0cnV0aCA9IHNjYWxlZChtdSArIGxpZnQgKiAocnVuU2QgKiogMiArIGtpbmRTZCAqKiAyKSk7XG4gIGNvbnN0IG1lYW4gPSBpbnNpZGUodHJ1dGgsIGZhcm0ubG93LCBmYXJtLmhpZ2gpO1xuICBjb25zdCBuZXh0ID0gaW5zaWRlKHNjYWxlZChtdSArIE1hdGguaHlwb3Qoa2luZFNkLCBydW5TZCkgKiBjaGFuY2UuYmVsbCgpKSwgZmFybS5uZXh0TG93LCBmYXJtLm5leHRIaWdoKTtcbiAgY29uc3QgZyA9IGtpbmRPZigpO1xuICBjb25zdCBraW5kID0ga2luZHNbZ107XG4gIGNvbnN0IHRoZXRhID0gdGhldGFzW2ddID8/IE5hTjtcbiAgcmV0dXJuIHtcbiAgICBtZWFuLFxuICAgIG5leHQsXG4gICAgd2lkdGg6IGZhcm0uaGlnaCAtIGZhcm0ubG93LFxuICAgIGtpbmRNZWFuOiBraW5kID8gaW5zaWRlKHNjYWxlZCh0aGV0YSArIGxpZnQgKiBydW5TZCAqKiAyKSwga2luZC5sb3csIGtpbmQuaGlnaCkgOiAwLFxuICAgIGtpbmROZXh0OiBraW5kID8gaW5zaWRlKHNjYWxlZCh0aGV0YSArIHJ1blNkICogY2hhbmNlLmJlbGwoKSksIGtpbmQubmV4dExvdywga2luZC5uZXh0SGlnaCkgOiAwLFxuICB9O1xufVxuXG5leHBvcnQgZnVuY3Rpb24gY292ZXJhZ2UocmF0ZTogUmF0ZUtleSwgd29ybGQ6IFdvcmxkLCBydW5zOiBudW1iZXIsIGZhcm1zOiBudW1iZXIsIHNlZWQ6IG51bWJlcik6IENvdmVyZWQge1xuICBjb25zdCBzcGVjID0gcmF0ZVNwZWMocmF0ZSk7XG4gIGNvbnN0IGNoYW5jZSA9IG5ldyBDaGFuY2Uoc2VlZCk7XG4gIGNvbnN0IHRvdGFsID0geyBtZWFuOiAwLCBuZXh0OiAwLCBraW5kTWVhbjogMCwga2luZE5leHQ6IDAsIHdpZHRoOiAwIH07XG4gIGZvciAobGV0IGkgPSAwOyBpIDwgZmFybXM7IGkrKykge1xuICAgIGNvbnN0IGhpdCA9IChzcGVjLnNjYWxlID09PSAnc2hhcmUnID8gY291bnRlZEZhcm0gOiBtZWFzdXJlZEZhcm0pKHJhdGUsIHdvcmxkLCBydW5zLCBjaGFuY2UpO1xuICAgIGZvciAoY29uc3Qga2V5IG9mIE9iamVjdC5rZXlzKHRvdGFsKSBhcyAoa2V5b2YgdHlwZW9mIHRvdGFsKVtdKSB0b3RhbFtrZXldICs9IGhpdFtrZXldO1xuICB9XG4gIHJldHVybiB7IHJhdGUsIHdvcmxkLCBydW5zLCBmYXJtcywgc2VlZCwgLi4udG90YWwgfTtcbn1cbiIsICIvKipcbiAqIFNpbXVsYXRlcyBmYXJtcyBhbmQgcHJpbnRzIGhvdyBvZnRlbiB0aGUgaW50ZXJ2YWxzIGhvbGQgdGhlIHRydXRoLCBvbmUgSlNPTiBsaW5lIGZvciBlYWNoIGNlbGwuXG4gKiAgIG5vZGUgc3JjL2J1aWxkL3J1bi5tanMgdGVzdHMvbGVhcm4vY292ZXJhZ2VSdW4udHMgMjAwMCA+IHRlc3RzL2RhdGEvbGVhcm5fY292ZXJhZ2UuanNvbmwgICB3cml0ZXMgdGhlXG4gKiB0YWJsZSBhZ2FpbiAobG9uZykgbm9kZSBzcmMvYnVpbGQvcnVuLm1qcyB0ZXN0cy9sZWFybi9jb3ZlcmFnZVJ1bi50cyAxMCAgXG4gKiAgICB3aGF0IHRoZSB0ZXN0IHJlcGVhdHMgb2YgaXQgRWFjaCBsaW5lIGFsc28gaG9sZHMgdGhlIGhpdHMgb2YgdGhlIGZpcnN0IGZhcm1zLCBzbyB0aGF0IHRoZSB0ZXN0IGNhbiBzZWVcbiAqIHdoZXRoZXIgdGhlIHRhYmxlIGlzIHN0aWxsIHRoYXQgb2YgdGhpcyBlc3RpbWF0b3IuXG4gKi9cbmltcG9ydCB7IFJBVEVfS0VZUyB9IGZyb20gJy4uLy4uL3NoYXJlZC9mYW1pbGllcy9sZWFybmluZy9yYXRlcyc7XG5pbXBvcnQgeyBjb3ZlcmFnZSB9IGZyb20gJy4vY292ZXJhZ2UnO1xuaW1wb3J0IHR5cGUgeyBXb3JsZCB9IGZyb20gJy4vZmFybXMnO1xuXG5leHBvcnQgY29uc3QgRklSU1QgPSAxMDtcbmNvbnN0IFdPUkxEUzogcmVhZG9ubHkgV29ybGRbXSA9IFsnYXNzdW1lZCcsICdvdGhlcicsICdmYXInXTtcbmNvbnN0IFJVTlMgPSBbMSwgMiwgNCwgMTAsIDMwXTtcblxuY29uc3QgW2Zhcm1zID0gRklSU1QsIHBhcnQgPSAwLCBwYXJ0cyA9IDFdID0gcHJvY2Vzcy5hcmd2LnNsaWNlKDIpLm1hcChOdW1iZXIpO1xubGV0IGNlbGwgPSAwO1xuZm9yIChjb25zdCBbciwgcmF0ZV0gb2YgUkFURV9LRVlTLmVudHJpZXMoKSlcbiAgZm9yIChjb25zdCBbdywgd29ybGRdIG9mIFdPUkxEUy5lbnRyaWVzKCkpXG4gICAgZm9yIChjb25zdCBydW5zIG9mIFJVTlMpIHtcbiAgICAgIGlmIChjZWxsKysgJSBwYXJ0cyAhPT0gcGFydCkgY29udGludWU7XG4gICAgICBjb25zdCBzZWVkID0gMSArIDc5MTkgKiAoMTAwICogciArIDEwICogdykgKyBydW5zO1xuICAgICAgY29uc3QgZmlyc3QgPSBjb3ZlcmFnZShyYXRlLCB3b3JsZCwgcnVucywgRklSU1QsIHNlZWQpO1xuICAgICAgY29uc29sZS5sb2coXG4gICAgICAgIEpTT04uc3RyaW5naWZ5KHtcbiAgICAgICAgICAuLi4oZmFybXMgPiBGSVJTVCA/IGNvdmVyYWdlKHJhdGUsIHdvcmxkLCBydW5zLCBmYXJtcywgc2VlZCkgOiBmaXJzdCksXG4gICAgICAgICAgZmlyc3Q6IHtcbiAgICAgICAgICAgIG1lYW46IGZpcnN0Lm1lYW4sXG4gICAgICAgICAgICBuZXh0OiBmaXJzdC5uZXh0LFxuICAgICAgICAgICAga2luZE1lYW46IGZpcnN0LmtpbmRNZWFuLFxuICAgICAgICAgICAga2luZE5leHQ6IGZpcnN0LmtpbmROZXh0LFxuICAgICAgICAgICAgd2lkdGg6IE51bWJlcihmaXJzdC53aWR0aC50b1ByZWNpc2lvbig4KSksXG4gICAgICAgICAgfSxcbiAgICAgICAgfSksXG4gICAgICApO1xuICAgIH1cbiJdLAogICJtYXBwaW5ncyI6ICI7QUFnQ0EsSUFBTSxRQUFRLEVBQUUsTUFBTSxTQUFTLFFBQVEsUUFBUSxPQUFPLFNBQVMsWUFBWSxJQUFJO0FBQy9FLElBQU0sU0FBUztBQUVSLElBQU0sUUFBUTtBQUFBLEVBQ25CLGVBQWU7QUFBQSxJQUNiLEtBQUs7QUFBQSxJQUNMLE9BQU87QUFBQSxJQUNQLE1BQU07QUFBQSxJQUNOLFFBQVE7QUFBQSxJQUNSLE9BQU87QUFBQSxJQUNQLFlBQVk7QUFBQSxJQUNaLE9BQU87QUFBQSxJQUNQLE1BQU07QUFBQSxJQUNOLFlBQVk7QUFBQSxJQUNaLE9BQU8sRUFBRSxJQUFJLGVBQWUsUUFBUSxHQUFHLFFBQVEsRUFBRTtBQUFBLElBQ2pELFlBQVk7QUFBQSxJQUNaLFNBQVMsQ0FBQyxXQUFXLFVBQVUsZUFBZSxVQUFVO0FBQUEsSUFDeEQsTUFDRTtBQUFBLEVBR0o7QUFBQSxFQUNBLGtCQUFrQjtBQUFBLElBQ2hCLEtBQUs7QUFBQSxJQUNMLE9BQU87QUFBQSxJQUNQLE1BQU07QUFBQSxJQUNOLFFBQVE7QUFBQSxJQUNSLE9BQU87QUFBQSxJQUNQLFlBQVk7QUFBQSxJQUNaLE9BQU87QUFBQSxJQUNQLE1BQU07QUFBQSxJQUNOLFlBQVk7QUFBQSxJQUNaLFNBQVMsQ0FBQyxXQUFXLGNBQWMsUUFBUTtBQUFBLElBQzNDLE1BQ0U7QUFBQSxFQUdKO0FBQUEsRUFDQSxVQUFVO0FBQUEsSUFDUixLQUFLO0FBQUEsSUFDTCxPQUFPO0FBQUEsSUFDUCxNQUFNO0FBQUEsSUFDTixRQUFRO0FBQUEsSUFDUixPQUFPO0FBQUEsSUFDUCxZQUFZO0FBQUEsSUFDWixPQUFPO0FBQUEsSUFDUCxNQUFNO0FBQUEsSUFDTixZQUFZO0FBQUEsSUFDWixPQUFPLEVBQUUsSUFBSSxTQUFTLFFBQVEsS0FBSyxRQUFRLEVBQUU7QUFBQSxJQUM3QyxNQUFNO0FBQUEsSUFDTixZQUFZO0FBQUEsSUFDWixTQUFTLENBQUMsU0FBUztBQUFBLElBQ25CLE1BQ0U7QUFBQSxFQUdKO0FBQUEsRUFDQSxhQUFhO0FBQUEsSUFDWCxLQUFLO0FBQUEsSUFDTCxPQUFPO0FBQUEsSUFDUCxNQUFNO0FBQUEsSUFDTixRQUFRO0FBQUEsSUFDUixPQUFPO0FBQUEsSUFDUCxZQUFZO0FBQUEsSUFDWixPQUFPO0FBQUEsSUFDUCxNQUFNO0FBQUEsSUFDTixZQUFZO0FBQUEsSUFDWixZQUFZO0FBQUEsSUFDWixTQUFTLENBQUMsWUFBWSxRQUFRO0FBQUEsSUFDOUIsTUFDRTtBQUFBLEVBR0o7QUFBQSxFQUNBLFdBQVc7QUFBQSxJQUNULEdBQUc7QUFBQSxJQUNILEtBQUs7QUFBQSxJQUNMLE9BQU87QUFBQSxJQUNQLFlBQVk7QUFBQSxJQUNaLE9BQU87QUFBQSxJQUNQLE1BQU07QUFBQSxJQUNOLFlBQVk7QUFBQSxJQUNaLFNBQVMsQ0FBQyxXQUFXO0FBQUEsSUFDckIsTUFBTSxpRUFBaUUsTUFBTTtBQUFBLEVBQy9FO0FBQUEsRUFDQSxlQUFlO0FBQUEsSUFDYixHQUFHO0FBQUEsSUFDSCxLQUFLO0FBQUEsSUFDTCxPQUFPO0FBQUEsSUFDUCxZQUFZO0FBQUEsSUFDWixPQUFPO0FBQUEsSUFDUCxNQUFNO0FBQUEsSUFDTixTQUFTLENBQUMsYUFBYSxjQUFjLFFBQVE7QUFBQSxJQUM3QyxNQUFNLHdFQUF3RSxNQUFNO0FBQUEsRUFDdEY7QUFBQSxFQUNBLE9BQU87QUFBQSxJQUNMLEdBQUc7QUFBQSxJQUNILEtBQUs7QUFBQSxJQUNMLE9BQU87QUFBQSxJQUNQLFlBQVk7QUFBQSxJQUNaLE9BQU87QUFBQSxJQUNQLE1BQU07QUFBQSxJQUNOLFlBQVk7QUFBQSxJQUNaLFNBQVMsQ0FBQyxXQUFXLE1BQU07QUFBQSxJQUMzQixNQUNFO0FBQUEsRUFHSjtBQUFBLEVBQ0EsYUFBYTtBQUFBLElBQ1gsR0FBRztBQUFBLElBQ0gsS0FBSztBQUFBLElBQ0wsT0FBTztBQUFBLElBQ1AsWUFBWTtBQUFBLElBQ1osT0FBTztBQUFBLElBQ1AsTUFBTTtBQUFBLElBQ04sU0FBUyxDQUFDLFVBQVUsVUFBVSxjQUFjO0FBQUEsSUFDNUMsTUFBTSwrQ0FBK0MsTUFBTTtBQUFBLEVBQzdEO0FBQUEsRUFDQSxhQUFhO0FBQUEsSUFDWCxHQUFHO0FBQUEsSUFDSCxLQUFLO0FBQUEsSUFDTCxPQUFPO0FBQUEsSUFDUCxZQUFZO0FBQUEsSUFDWixPQUFPO0FBQUEsSUFDUCxNQUFNO0FBQUEsSUFDTixZQUFZO0FBQUEsSUFDWixTQUFTLENBQUMsVUFBVSxjQUFjO0FBQUEsSUFDbEMsTUFDRTtBQUFBLEVBR0o7QUFBQSxFQUNBLGlCQUFpQjtBQUFBLElBQ2YsR0FBRztBQUFBLElBQ0gsS0FBSztBQUFBLElBQ0wsT0FBTztBQUFBLElBQ1AsWUFBWTtBQUFBLElBQ1osT0FBTztBQUFBLElBQ1AsTUFBTTtBQUFBLElBQ04sWUFBWTtBQUFBLElBQ1osU0FBUyxDQUFDLFVBQVU7QUFBQSxJQUNwQixNQUFNLGdEQUFnRCxNQUFNO0FBQUEsRUFDOUQ7QUFBQSxFQUNBLFdBQVc7QUFBQSxJQUNULEtBQUs7QUFBQSxJQUNMLE9BQU87QUFBQSxJQUNQLE1BQU07QUFBQSxJQUNOLFFBQVE7QUFBQSxJQUNSLE9BQU87QUFBQSxJQUNQLFlBQVk7QUFBQSxJQUNaLE9BQU87QUFBQSxJQUNQLE1BQU07QUFBQSxJQUNOLFlBQVk7QUFBQSxJQUNaLFlBQVk7QUFBQSxJQUNaLFNBQVMsQ0FBQyxjQUFjO0FBQUEsSUFDeEIsTUFBTTtBQUFBLEVBQ1I7QUFBQSxFQUNBLGVBQWU7QUFBQSxJQUNiLEtBQUs7QUFBQSxJQUNMLE9BQU87QUFBQSxJQUNQLE1BQU07QUFBQSxJQUNOLFFBQVE7QUFBQSxJQUNSLE9BQU87QUFBQSxJQUNQLFlBQVk7QUFBQSxJQUNaLE9BQU87QUFBQSxJQUNQLE1BQU07QUFBQSxJQUNOLFlBQVk7QUFBQSxJQUNaLFlBQVk7QUFBQSxJQUNaLFNBQVMsQ0FBQyxZQUFZLFNBQVM7QUFBQSxJQUMvQixNQUNFO0FBQUEsRUFFSjtBQUNGO0FBR08sSUFBTSxZQUFZLE9BQU8sS0FBSyxLQUFLO0FBQ25DLElBQU0sV0FBVyxDQUFDLFFBQTJCLE1BQU0sR0FBRzs7O0FDaE03RCxJQUFNLFVBQVUsQ0FBQyxHQUFXLEVBQUUsTUFBTSxHQUFHLE1BQW9CLFNBQVMsSUFBSSxRQUFRLE9BQU8sSUFBSSxLQUFLLElBQUksRUFBRTtBQUV0RyxJQUFNLFFBQVE7QUFDUCxJQUFNLFlBQVksQ0FBQyxXQUFvQztBQUFBLEVBQzVELFlBQVksQ0FBQyxNQUFNO0FBRWpCLFFBQUksTUFBTTtBQUNWLGVBQVcsUUFBUSxPQUFPO0FBQ3hCLFlBQU0sT0FBTyxLQUFLLElBQUksS0FBSyxNQUFNLElBQUksUUFBUSxHQUFHLElBQUk7QUFDcEQsWUFBTSxLQUFLLElBQUksS0FBSyxJQUFJLElBQUksS0FBSyxNQUFNLEtBQUssSUFBSSxDQUFDLEtBQUssSUFBSSxNQUFNLElBQUksQ0FBQyxDQUFDO0FBQUEsSUFDeEU7QUFDQSxXQUFPO0FBQUEsRUFDVDtBQUFBLEVBQ0EsTUFBTSxLQUFLLElBQUksR0FBRyxNQUFNLElBQUksQ0FBQyxFQUFFLE1BQU0sR0FBRyxNQUFNLE9BQU8sUUFBUSxFQUFFLENBQUM7QUFBQSxFQUNoRSxJQUFJLEtBQUssSUFBSSxHQUFHLE1BQU0sSUFBSSxDQUFDLEVBQUUsTUFBTSxHQUFHLE1BQU0sT0FBTyxRQUFRLEVBQUUsQ0FBQztBQUNoRTtBQUdBLElBQU0sZUFBZTtBQUNyQixJQUFNLGVBQWU7QUFRZCxJQUFNLGtCQUFrQixDQUFDLE1BQWMsT0FBZ0M7QUFBQSxFQUM1RSxFQUFFLFFBQVEsSUFBSSxjQUFjLE1BQU0sR0FBRztBQUFBLEVBQ3JDLEVBQUUsUUFBUSxjQUFjLE1BQU0sSUFBSSxlQUFlLEdBQUc7QUFDdEQ7QUFNTyxJQUFNLGNBQWMsQ0FBQyxRQUFnQixXQUMxQyxVQUFVLENBQUMsRUFBRSxRQUFRLEdBQUcsTUFBTSxLQUFLLElBQUksTUFBTSxHQUFHLElBQUksS0FBSyxJQUFJLE1BQU0sRUFBRSxDQUFDLENBQUM7QUFHbEUsSUFBTSxPQUFPLENBQUMsTUFBYyxJQUFZLFdBQzdDLE1BQU0sS0FBSyxFQUFFLFFBQVEsT0FBTyxHQUFHLENBQUMsR0FBRyxNQUFNLFFBQVMsS0FBSyxRQUFRLEtBQU0sU0FBUyxFQUFFO0FBRzNFLElBQU0sVUFBVTtBQU9oQixTQUFTLE9BQ2QsTUFDQSxJQUNBLFFBQ0EsV0FDMkI7QUFDM0IsTUFBSSxNQUFNO0FBQ1YsTUFBSSxPQUFPO0FBQ1gsV0FBUyxPQUFPLEdBQUcsT0FBTyxHQUFHLFFBQVE7QUFDbkMsVUFBTSxLQUFLLEtBQUssS0FBSyxNQUFNLE1BQU07QUFDakMsVUFBTSxPQUFPLEdBQUcsSUFBSSxTQUFTO0FBQzdCLFVBQU0sTUFBTSxLQUFLLElBQUksR0FBRyxJQUFJO0FBQzVCLFVBQU0sUUFBUSxLQUFLLFVBQVUsQ0FBQyxNQUFNLElBQUksTUFBTSxPQUFPO0FBQ3JELFVBQU0sT0FBTyxLQUFLLGNBQWMsQ0FBQyxNQUFNLElBQUksTUFBTSxPQUFPO0FBQ3hELFVBQU0sSUFBSSxHQUFHLEtBQUssSUFBSSxHQUFHLFFBQVEsQ0FBQyxDQUFDLEtBQUs7QUFDeEMsVUFBTSxJQUFJLEdBQUcsS0FBSyxJQUFJLFNBQVMsR0FBRyxPQUFPLENBQUMsQ0FBQyxLQUFLO0FBQ2hELFVBQU0sUUFBUSxJQUFJLElBQUksT0FBTyxPQUFPO0FBQ3BDLFVBQU07QUFDTixXQUFPO0FBQ1AsUUFBSSxNQUFPO0FBQUEsRUFDYjtBQUNBLFNBQU8sQ0FBQyxLQUFLLElBQUk7QUFDbkI7OztBQzFGQSxJQUFNLFNBQVM7QUFBQSxFQUNiO0FBQUEsRUFBc0I7QUFBQSxFQUF1QjtBQUFBLEVBQXVCO0FBQUEsRUFDcEU7QUFBQSxFQUF1QjtBQUFBLEVBQXVCO0FBQUEsRUFBdUI7QUFDdkU7QUFDQSxJQUFNLGVBQWU7QUFBQSxFQUNuQjtBQUFBLEVBQUc7QUFBQSxFQUF1QjtBQUFBLEVBQXNCO0FBQUEsRUFBdUI7QUFBQSxFQUN2RTtBQUFBLEVBQXNCO0FBQUEsRUFBdUI7QUFDL0M7QUFDQSxJQUFNLFNBQVM7QUFBQSxFQUNiO0FBQUEsRUFBd0I7QUFBQSxFQUF1QjtBQUFBLEVBQXVCO0FBQUEsRUFDdEU7QUFBQSxFQUF3QjtBQUFBLEVBQXdCO0FBQUEsRUFBMEI7QUFDNUU7QUFDQSxJQUFNLGVBQWU7QUFBQSxFQUNuQjtBQUFBLEVBQUc7QUFBQSxFQUF3QjtBQUFBLEVBQXVCO0FBQUEsRUFBd0I7QUFBQSxFQUMxRTtBQUFBLEVBQTBCO0FBQUEsRUFBeUI7QUFDckQ7QUFDQSxJQUFNLE9BQU87QUFBQSxFQUNYO0FBQUEsRUFBdUI7QUFBQSxFQUF1QjtBQUFBLEVBQXVCO0FBQUEsRUFDckU7QUFBQSxFQUF5QjtBQUFBLEVBQTBCO0FBQUEsRUFBMkI7QUFDaEY7QUFDQSxJQUFNLGFBQWE7QUFBQSxFQUNqQjtBQUFBLEVBQUc7QUFBQSxFQUF3QjtBQUFBLEVBQXdCO0FBQUEsRUFBMEI7QUFBQSxFQUM3RTtBQUFBLEVBQTBCO0FBQUEsRUFBMEI7QUFDdEQ7QUFFQSxJQUFNLFNBQVMsQ0FBQyxjQUFpQyxNQUFzQjtBQUNyRSxNQUFJLE1BQU07QUFDVixXQUFTLElBQUksYUFBYSxTQUFTLEdBQUcsS0FBSyxHQUFHLElBQUssT0FBTSxNQUFNLEtBQUssYUFBYSxDQUFDLEtBQUs7QUFDdkYsU0FBTztBQUNUO0FBUU8sSUFBTSxpQkFBaUIsQ0FBQyxNQUFzQjtBQUNuRCxNQUFJLEVBQUUsSUFBSSxLQUFLLElBQUksR0FBSSxRQUFPO0FBQzlCLFFBQU0sSUFBSSxJQUFJO0FBQ2QsTUFBSSxLQUFLLElBQUksQ0FBQyxLQUFLLE9BQU87QUFDeEIsVUFBTUEsS0FBSSxXQUFXLElBQUk7QUFDekIsV0FBUSxJQUFJLE9BQU8sUUFBUUEsRUFBQyxJQUFLLE9BQU8sY0FBY0EsRUFBQztBQUFBLEVBQ3pEO0FBQ0EsUUFBTSxJQUFJLEtBQUssS0FBSyxDQUFDLEtBQUssSUFBSSxLQUFLLElBQUksR0FBRyxJQUFJLENBQUMsQ0FBQyxDQUFDO0FBQ2pELFFBQU0sT0FDSixLQUFLLElBQ0QsT0FBTyxRQUFRLElBQUksR0FBRyxJQUFJLE9BQU8sY0FBYyxJQUFJLEdBQUcsSUFDdEQsT0FBTyxNQUFNLElBQUksQ0FBQyxJQUFJLE9BQU8sWUFBWSxJQUFJLENBQUM7QUFDcEQsU0FBTyxJQUFJLElBQUksQ0FBQyxPQUFPO0FBQ3pCOzs7QUMvQ0EsSUFBTSxNQUFNO0FBQ1osSUFBTSxjQUFjLEtBQUssS0FBSyxJQUFJLEtBQUssRUFBRTtBQVFsQyxJQUFNLGNBQWMsQ0FBQyxNQUFzQjtBQUNoRCxNQUFJLEtBQUssSUFBSyxRQUFPO0FBQ3JCLE1BQUksS0FBSyxDQUFDLElBQUssUUFBTztBQUN0QixRQUFNLEtBQUssSUFBSTtBQUNmLE1BQUksT0FBTztBQUNYLE1BQUksTUFBTTtBQUNWLFdBQVMsTUFBTSxHQUFHLEtBQUssSUFBSSxJQUFJLElBQUksUUFBUSxLQUFLLElBQUksR0FBRyxHQUFHLE9BQU8sR0FBRztBQUNsRSxZQUFRLEtBQUs7QUFDYixXQUFPO0FBQUEsRUFDVDtBQUNBLFNBQU8sTUFBTyxNQUFNLEtBQUssSUFBSSxPQUFPLEVBQUUsSUFBSztBQUM3QztBQUVBLElBQU0sYUFBYTtBQU9aLFNBQVMsZ0JBQWdCLE9BQXdCLE9BQXVCO0FBQzdFLFFBQU0sUUFBUSxNQUFNLE9BQU8sQ0FBQyxLQUFLLE1BQU0sTUFBTSxFQUFFLFFBQVEsQ0FBQztBQUN4RCxRQUFNLE9BQU8sTUFBTSxPQUFPLENBQUMsTUFBTSxFQUFFLFNBQVMsUUFBUSxLQUFLO0FBQ3pELE1BQUksTUFBTSxLQUFLLElBQUksR0FBRyxLQUFLLElBQUksQ0FBQyxNQUFNLEVBQUUsT0FBTyxNQUFNLEVBQUUsRUFBRSxDQUFDO0FBQzFELE1BQUksT0FBTyxLQUFLLElBQUksR0FBRyxLQUFLLElBQUksQ0FBQyxNQUFNLEVBQUUsT0FBTyxNQUFNLEVBQUUsRUFBRSxDQUFDO0FBQzNELFFBQU0sU0FBUyxLQUFLLE9BQU8sQ0FBQyxLQUFLLE1BQU0sTUFBTSxFQUFFLFNBQVMsRUFBRSxNQUFNLENBQUMsSUFBSTtBQUNyRSxRQUFNLFdBQ0osS0FBSyxPQUFPLENBQUMsS0FBSyxNQUFNLE1BQU0sRUFBRSxVQUFVLEVBQUUsS0FBSyxFQUFFLE1BQU0sRUFBRSxPQUFPLFdBQVcsSUFBSSxDQUFDLElBQUk7QUFDeEYsTUFBSSxJQUFJLFNBQVMsZUFBZSxLQUFLLElBQUksS0FBSyxLQUFLLFFBQVE7QUFDM0QsV0FBUyxPQUFPLEdBQUcsT0FBTyxZQUFZLFFBQVE7QUFDNUMsUUFBSSxRQUFRLENBQUMsUUFBUTtBQUNyQixRQUFJLFVBQVU7QUFDZCxlQUFXLEVBQUUsUUFBUSxNQUFNLEdBQUcsS0FBSyxNQUFNO0FBQ3ZDLFlBQU0sS0FBSyxJQUFJLFFBQVE7QUFDdkIsZUFBUyxTQUFTLFlBQVksQ0FBQztBQUMvQixpQkFBWSxTQUFTLEtBQUssSUFBSSxPQUFPLElBQUksQ0FBQyxLQUFNLEtBQUs7QUFBQSxJQUN2RDtBQUNBLFFBQUksUUFBUSxFQUFHLFFBQU87QUFBQSxRQUNqQixPQUFNO0FBQ1gsUUFBSSxPQUFPLElBQUksUUFBUTtBQUN2QixRQUFJLEVBQUUsT0FBTyxPQUFPLE9BQU8sTUFBTyxTQUFRLE1BQU0sUUFBUTtBQUN4RCxRQUFJLEtBQUssSUFBSSxPQUFPLENBQUMsS0FBSyxPQUFPLEtBQUssS0FBSyxRQUFRLEtBQUssT0FBTyxPQUFPLFNBQVMsSUFBSSxLQUFLLElBQUksQ0FBQztBQUMzRixhQUFPO0FBQ1QsUUFBSTtBQUFBLEVBQ047QUFDQSxTQUFPO0FBQ1Q7OztBQ2hCQSxTQUFTLE9BQU8sRUFBRSxRQUFRLE9BQU8sR0FBUyxVQUEwQjtBQUNsRSxNQUFJLE9BQU8sV0FBVyxFQUFHLFFBQU8sRUFBRSxXQUFXLEdBQUcsTUFBTSxHQUFHLGVBQWUsRUFBRTtBQUMxRSxNQUFJLFlBQVk7QUFDaEIsTUFBSUMsWUFBVztBQUNmLE1BQUksT0FBTztBQUNYLFdBQVMsSUFBSSxHQUFHLElBQUksT0FBTyxRQUFRLEtBQUs7QUFDdEMsVUFBTSxJQUFJLFlBQVksU0FBUyxDQUFDLEtBQUs7QUFDckMsaUJBQWEsSUFBSTtBQUNqQixJQUFBQSxjQUFhLE9BQU8sQ0FBQyxLQUFLLE9BQU87QUFDakMsWUFBUSxLQUFLLElBQUksQ0FBQztBQUFBLEVBQ3BCO0FBQ0EsUUFBTSxPQUFPQSxZQUFXO0FBQ3hCLE1BQUksVUFBVTtBQUNkLFdBQVMsSUFBSSxHQUFHLElBQUksT0FBTyxRQUFRO0FBQ2pDLGlCQUFhLE9BQU8sQ0FBQyxLQUFLLE9BQU8sU0FBUyxLQUFLLFlBQVksU0FBUyxDQUFDLEtBQUs7QUFFNUUsU0FBTyxFQUFFLFdBQVcsTUFBTSxlQUFlLFFBQVEsT0FBTyxVQUFVLEtBQUssSUFBSSxTQUFTLEdBQUc7QUFDekY7QUFTQSxTQUFTLE9BQU8sTUFBeUIsY0FBOEI7QUFDckUsTUFBSSxZQUFZO0FBQ2hCLE1BQUlBLFlBQVc7QUFDZixNQUFJLFVBQVU7QUFDZCxNQUFJLE1BQU07QUFDVixhQUFXLEtBQUssTUFBTTtBQUNwQixRQUFJLEVBQUUsY0FBYyxFQUFHO0FBQ3ZCLFVBQU0sSUFBSSxlQUFlLElBQUksRUFBRTtBQUMvQixpQkFBYSxJQUFJO0FBQ2pCLElBQUFBLGFBQVksRUFBRSxPQUFPO0FBQ3JCLGVBQVksRUFBRSxPQUFPLEVBQUUsT0FBUTtBQUMvQixXQUFPLEVBQUUsZ0JBQWdCLE1BQU0sS0FBSyxJQUFJLENBQUM7QUFBQSxFQUMzQztBQUNBLE1BQUksY0FBYyxFQUFHLFFBQU8sRUFBRSxXQUFXLEtBQUssR0FBRyxLQUFLLEVBQUU7QUFDeEQsUUFBTSxNQUFNQSxZQUFXO0FBQ3ZCLFNBQU8sRUFBRSxXQUFXLEtBQUssS0FBSyxNQUFNLE9BQU8sS0FBSyxJQUFJLEdBQUcsVUFBVSxNQUFNQSxTQUFRLElBQUksS0FBSyxJQUFJLFNBQVMsR0FBRztBQUMxRztBQUdBLElBQU0sVUFBVSxDQUFDLEVBQUUsV0FBVyxLQUFLLElBQUksR0FBVyxTQUF1QjtBQUN2RSxNQUFJLGNBQWMsRUFBRyxRQUFPLEtBQUssSUFBSSxLQUFLLE1BQU07QUFDaEQsUUFBTUMsVUFBUyxLQUFLLEtBQUssS0FBSyxLQUFLLElBQUk7QUFDdkMsU0FBTyxNQUFNLEtBQUssSUFBSSxLQUFLLE1BQU0sSUFBSSxPQUFPLEtBQUssSUFBSUEsT0FBTSxLQUFLLE1BQU0sS0FBSyxTQUFTLElBQUlBO0FBQzFGO0FBRUEsU0FBUyxPQUNQLE1BQ0EsRUFBRSxXQUFXLElBQUksR0FDakIsTUFDQSxPQUNBLFFBQ3NCO0FBQ3RCLFFBQU0sUUFBUSxLQUFLLEtBQUssS0FBSztBQUM3QixRQUFNLE9BQU8sWUFBWSxJQUFJLFNBQVMsUUFBUSxJQUFJLGFBQWE7QUFDL0QsUUFBTSxPQUFPO0FBQUEsSUFDWCxRQUFRO0FBQUEsSUFDUixNQUFNLEtBQUssT0FBTyxRQUFRLE1BQU0sS0FBSztBQUFBLElBQ3JDLElBQUksS0FBSyxLQUFLLEtBQUssSUFBSSxRQUFRLFVBQVU7QUFBQSxFQUMzQztBQUNBLFNBQU87QUFBQSxJQUNMO0FBQUEsSUFDQTtBQUFBLElBQ0E7QUFBQSxJQUNBO0FBQUEsSUFDQSxPQUFPLFdBQVcsSUFBSSxDQUFDLElBQUksQ0FBQyxHQUFHLE1BQU0sTUFBUyxFQUFFLElBQUksQ0FBQyxNQUFNLFNBQVMsR0FBRyxNQUFNLE1BQU0sQ0FBQztBQUFBLEVBQ3RGO0FBQ0Y7QUFFQSxTQUFTLFNBQVMsR0FBdUIsTUFBWSxRQUFzQjtBQUN6RSxRQUFNLE1BQU0sS0FBSyxFQUFFLFlBQVksSUFBSSxFQUFFLGFBQWEsRUFBRSxZQUFZLElBQUksVUFBVSxLQUFLO0FBQ25GLFNBQU87QUFBQSxJQUNMLFFBQVE7QUFBQSxJQUNSLE1BQU0sT0FBTyxHQUFHLFFBQVEsTUFBTSxJQUFJLE9BQU8sS0FBSztBQUFBLElBQzlDLElBQUksS0FBSyxNQUFNLElBQUksT0FBTyxVQUFVLE1BQU0sSUFBSSxPQUFPLEtBQUssT0FBTyxDQUFDO0FBQUEsRUFDcEU7QUFDRjtBQUVBLElBQU0sZUFBZTtBQUNyQixJQUFNLGNBQWM7QUFDcEIsSUFBTSxlQUFlO0FBYWQsU0FBUyxXQUFXLE9BQXdCLE9BQXFDO0FBQ3RGLFFBQU0sRUFBRSxNQUFNLE9BQU8sS0FBSyxJQUFJO0FBQzlCLFFBQU0sVUFBVSxNQUFNO0FBQ3RCLFFBQU0sU0FBUyxDQUFDLFdBQ2QsTUFBTSxJQUFJLENBQUMsU0FBUyxPQUFPLE1BQU0sS0FBSyxJQUFJLElBQUksTUFBTSxDQUFDLENBQUM7QUFDeEQsUUFBTSxVQUFVLENBQUMsTUFBc0IsU0FBUyxXQUFXLENBQUMsS0FBSztBQUNqRSxRQUFNLFNBQVMsQ0FBQyxNQUF1QixVQUFVLEtBQUssSUFBSSxDQUFDLElBQUk7QUFDL0QsUUFBTSxPQUFPLENBQUMsTUFBeUIsYUFBd0M7QUFDN0UsUUFBSSxPQUFPO0FBQ1gsZUFBVyxLQUFLLFVBQVU7QUFDeEIsWUFBTSxNQUFNLE9BQU8sTUFBTSxPQUFPLENBQUMsS0FBSyxDQUFDO0FBQ3ZDLGlCQUFXLFFBQVEsTUFBTyxRQUFPLEtBQUssSUFBSSxNQUFNLFFBQVEsQ0FBQyxJQUFJLFFBQVEsS0FBSyxJQUFJLENBQUM7QUFBQSxJQUNqRjtBQUNBLFdBQU87QUFBQSxFQUNUO0FBQ0EsUUFBTSxhQUFhLFVBQVUsS0FBSyxRQUFRLE1BQU0sUUFBUSxJQUFJLFdBQVcsSUFBSSxDQUFDLENBQUM7QUFDN0UsUUFBTSxDQUFDLEtBQUssSUFBSSxJQUFJO0FBQUEsSUFDbEIsS0FBSztBQUFBLElBQ0wsS0FBSztBQUFBLElBQ0wsVUFBVSxjQUFjO0FBQUEsSUFDeEIsQ0FBQyxNQUFNLEtBQUssV0FBVyxDQUFDLElBQUksS0FBSyxPQUFPLENBQUMsR0FBRyxVQUFVO0FBQUEsRUFDeEQ7QUFDQSxRQUFNLFFBQVEsS0FBSyxLQUFLLE1BQU0sVUFBVSxjQUFjLFlBQVksRUFBRSxJQUFJLENBQUMsT0FBTztBQUFBLElBQzlFO0FBQUEsSUFDQSxLQUFLLEtBQUssV0FBVyxDQUFDO0FBQUEsSUFDdEIsTUFBTSxPQUFPLENBQUM7QUFBQSxFQUNoQixFQUFFO0FBQ0YsUUFBTSxTQUFTLFVBQ1g7QUFBQSxJQUNFLEdBQUc7QUFBQSxNQUFPLFFBQVE7QUFBQSxNQUFNLFFBQVE7QUFBQSxNQUFJO0FBQUEsTUFBYSxDQUFDLE1BQ2hELE1BQU0sT0FBTyxDQUFDLE1BQU0sRUFBRSxLQUFLLEtBQUssTUFBTSxLQUFLLElBQUksTUFBTSxNQUFNLEtBQUssTUFBTSxDQUFDLENBQUMsQ0FBQyxDQUFDLEdBQUcsU0FBUztBQUFBLElBQ3hGO0FBQUEsSUFDQTtBQUFBLEVBQ0YsSUFDQSxDQUFDLENBQUM7QUFDTixRQUFNLFFBQThELENBQUM7QUFDckUsYUFBVyxFQUFFLEdBQUcsS0FBSyxLQUFLLEtBQUs7QUFDN0IsZUFBVyxLQUFLLFFBQVE7QUFDdEIsWUFBTSxNQUFNLE9BQU8sTUFBTSxPQUFPLENBQUMsS0FBSyxDQUFDO0FBQ3ZDLGlCQUFXLFFBQVE7QUFDakIsY0FBTSxLQUFLO0FBQUEsVUFDVCxLQUFLLE1BQU0sUUFBUSxDQUFDLElBQUksUUFBUSxLQUFLLElBQUk7QUFBQSxVQUN6QyxPQUFPLE1BQU0sT0FBTyxNQUFNLEtBQUssTUFBTSxLQUFLLElBQUksQ0FBQyxHQUFHLE9BQU8sQ0FBQyxDQUFDO0FBQUEsUUFDN0QsQ0FBQztBQUFBLElBQ0w7QUFDRixRQUFNLE1BQU0sTUFBTSxPQUFPLENBQUMsTUFBTSxFQUFFLElBQUksTUFBTSxLQUFLLElBQUksTUFBTSxHQUFHLEdBQUcsU0FBUztBQUMxRSxRQUFNLFFBQVEsTUFBTSxPQUFPLENBQUMsS0FBSyxFQUFFLElBQUksTUFBTSxNQUFNLEtBQUssSUFBSSxNQUFNLEdBQUcsR0FBRyxDQUFDO0FBQ3pFLFNBQU8sTUFDSixJQUFJLENBQUMsRUFBRSxLQUFLLE1BQU0sT0FBTyxFQUFFLFFBQVEsS0FBSyxJQUFJLE1BQU0sR0FBRyxJQUFJLE9BQU8sTUFBTSxFQUFFLEVBQ3hFLE9BQU8sQ0FBQyxFQUFFLE9BQU8sTUFBTSxTQUFTLFlBQVksRUFDNUMsSUFBSSxDQUFDLEVBQUUsUUFBUSxNQUFNLE9BQU8sRUFBRSxHQUFHLE1BQU0sR0FBRyxPQUFPLEVBQUU7QUFDeEQ7OztBQy9MQSxJQUFNLEtBQUssSUFBSTtBQUFmLElBQ0UsS0FBSyxLQUFLO0FBRFosSUFFRSxLQUFLLElBQUk7QUFGWCxJQUdFLEtBQUssS0FBSztBQUhaLElBSUUsS0FBSyxJQUFJO0FBQ1gsSUFBTSxrQkFBa0IsTUFBTSxLQUFLLElBQUksSUFBSSxLQUFLLEVBQUU7QUFDbEQsSUFBTSxRQUFRO0FBU1AsSUFBTSxlQUFlLENBQUMsTUFBc0I7QUFDakQsTUFBSSxFQUFFLElBQUksR0FBSSxRQUFPO0FBQ3JCLE1BQUksVUFBVTtBQUNkLE1BQUksS0FBSztBQUNULFNBQU8sS0FBSyxNQUFPLFlBQVc7QUFDOUIsUUFBTSxVQUFVLElBQUk7QUFDcEIsUUFBTSxJQUFJLFVBQVU7QUFDcEIsUUFBTSxTQUFTLFdBQVcsS0FBSyxLQUFLLEtBQUssS0FBSyxLQUFLLEtBQUssS0FBSyxJQUFJO0FBQ2pFLFVBQVEsS0FBSyxPQUFPLEtBQUssSUFBSSxFQUFFLElBQUksS0FBSyxrQkFBa0IsVUFBVSxZQUFZLElBQUksSUFBSSxLQUFLLElBQUksT0FBTztBQUMxRzs7O0FDQ0EsSUFBTSxVQUFVLENBQUNDLFdBQTBCLEtBQUssSUFBSSxLQUFLLElBQUksQ0FBQ0EsTUFBSztBQUduRSxTQUFTLFdBQVcsTUFBMEIsS0FBdUM7QUFFbkYsUUFBTSxLQUFLO0FBQ1gsUUFBTSxRQUFRLEtBQUssT0FBTyxDQUFDLEtBQUssRUFBRSxFQUFFLE1BQU0sTUFBTSxHQUFHLElBQUksR0FBRyxHQUFHLEtBQUssU0FBUyxHQUFHLEdBQUcsQ0FBQztBQUNsRixTQUFPLENBQUMsU0FBUztBQUNmLFVBQU0sSUFBSSxPQUFPO0FBQ2pCLFVBQU0sSUFBSSxNQUFNO0FBQ2hCLFFBQUksTUFBTSxRQUFRLEtBQUssVUFBVSxHQUFHLENBQUMsSUFBSSxHQUFHLENBQUM7QUFDN0MsZUFBVyxFQUFFLEdBQUcsRUFBRSxLQUFLLEtBQU0sUUFBTyxHQUFHLElBQUksQ0FBQyxJQUFJLEdBQUcsSUFBSSxJQUFJLENBQUM7QUFDNUQsV0FBTztBQUFBLEVBQ1Q7QUFDRjtBQVVBLFNBQVMsTUFBTSxNQUEwQixPQUFvQixRQUFnQixRQUF1QjtBQUNsRyxRQUFNLEtBQUssV0FBVyxNQUFNLEtBQUssSUFBSSxNQUFNLENBQUM7QUFDNUMsUUFBTSxRQUFRLENBQUMsTUFBc0I7QUFDbkMsVUFBTSxNQUFNLE1BQU0sS0FBSyxXQUFXLENBQUMsSUFBSSxHQUFHLFFBQVEsQ0FBQyxDQUFDO0FBQ3BELFdBQU8sT0FBTyxNQUFNLEdBQUcsSUFBSSxZQUFZO0FBQUEsRUFDekM7QUFDQSxRQUFNLENBQUMsS0FBSyxJQUFJLElBQUksT0FBTyxNQUFNLEtBQUssTUFBTSxNQUFNLEtBQUssSUFBSSxJQUFJLEtBQUs7QUFDcEUsUUFBTSxLQUFLLEtBQUssS0FBSyxNQUFNLE1BQU07QUFDakMsUUFBTSxPQUFPLEdBQUcsSUFBSSxLQUFLO0FBQ3pCLFFBQU0sTUFBTSxLQUFLLElBQUksR0FBRyxJQUFJO0FBQzVCLFFBQU0sUUFBUSxPQUFPLFFBQVEsU0FBUztBQUN0QyxRQUFNLE1BQU0sS0FBSyxPQUFPLENBQUMsT0FBTyxNQUFNLFFBQVEsS0FBSyxJQUFJLElBQUksR0FBRyxHQUFHLENBQUMsSUFBSTtBQUN0RSxTQUFPLEVBQUUsS0FBSyxNQUFNLFdBQVcsV0FBVyxNQUFNLElBQUksTUFBTSxLQUFLLElBQUksR0FBRyxHQUFHLElBQUksTUFBTSxLQUFLO0FBQzFGO0FBRUEsSUFBTSxPQUFPO0FBQ2IsSUFBTSxTQUFTO0FBQ2YsSUFBTSxTQUFTO0FBWVIsU0FBUyxXQUFXLE1BQTBCLE9BQTJDO0FBQzlGLFFBQU0sQ0FBQyxLQUFLLElBQUksSUFBSTtBQUFBLElBQ2xCLE1BQU0sV0FBVztBQUFBLElBQ2pCLE1BQU0sV0FBVztBQUFBLElBQ2pCO0FBQUEsSUFDQSxDQUFDLE1BQU0sTUFBTSxNQUFNLE9BQU8sR0FBRyxFQUFFLEVBQUU7QUFBQSxFQUNuQztBQUNBLFFBQU0sUUFBOEYsQ0FBQztBQUNyRyxhQUFXLEtBQUssS0FBSyxLQUFLLE1BQU0sTUFBTSxHQUFHO0FBQ3ZDLFVBQU0sRUFBRSxJQUFJLE1BQU0sS0FBSyxJQUFJLE1BQU0sTUFBTSxPQUFPLEdBQUcsTUFBTTtBQUN2RCxVQUFNLFFBQVEsTUFBTSxXQUFXLFdBQVcsQ0FBQyxJQUFJLEtBQUssSUFBSSxJQUFJO0FBQzVELE9BQUc7QUFBQSxNQUFRLENBQUNBLFFBQU8sTUFDakIsTUFBTSxLQUFLO0FBQUEsUUFDVCxLQUFLLFNBQVMsS0FBSyxDQUFDLEtBQUs7QUFBQSxRQUN6QixNQUFNLFFBQVFBLE1BQUs7QUFBQSxRQUNuQixPQUFBQTtBQUFBLFFBQ0EsWUFBWSxLQUFLLElBQUksQ0FBQztBQUFBLFFBQ3RCLFVBQVUsT0FBTztBQUFBLE1BQ25CLENBQUM7QUFBQSxJQUNIO0FBQUEsRUFDRjtBQUNBLFFBQU0sTUFBTSxNQUFNLE9BQU8sQ0FBQyxNQUFNLEVBQUUsSUFBSSxNQUFNLEtBQUssSUFBSSxNQUFNLEdBQUcsR0FBRyxTQUFTO0FBQzFFLFFBQU0sT0FBTyxNQUFNLE9BQU8sQ0FBQyxFQUFFLElBQUksTUFBTSxNQUFNLE1BQU0sT0FBTztBQUMxRCxRQUFNLFFBQVEsS0FBSyxPQUFPLENBQUMsS0FBSyxFQUFFLElBQUksTUFBTSxNQUFNLEtBQUssSUFBSSxNQUFNLEdBQUcsR0FBRyxDQUFDO0FBQ3hFLFNBQU8sS0FBSyxJQUFJLENBQUMsRUFBRSxLQUFLLEdBQUcsTUFBTSxPQUFPLEVBQUUsR0FBRyxPQUFPLFFBQVEsS0FBSyxJQUFJLE1BQU0sR0FBRyxJQUFJLE1BQU0sRUFBRTtBQUM1Rjs7O0FDckdBLElBQU1DLFdBQVUsQ0FBQ0MsV0FBMEIsS0FBSyxJQUFJLEtBQUssSUFBSSxDQUFDQSxNQUFLO0FBRW5FLElBQU0sTUFBTTtBQUdaLFNBQVMsU0FBUyxLQUFhLE1BQWMsUUFBZ0IsT0FBMEM7QUFDckcsTUFBSSxJQUFJO0FBQ1IsTUFBSSxJQUFJO0FBQ1IsU0FBTyxJQUFJLElBQUksTUFBTTtBQUNuQixVQUFNLEtBQUssSUFBSSxLQUFLO0FBQ3BCLFFBQUksTUFBTSxDQUFDLElBQUksT0FBUSxLQUFJO0FBQUEsUUFDdEIsS0FBSTtBQUFBLEVBQ1g7QUFDQSxVQUFRLElBQUksS0FBSztBQUNuQjtBQU1PLFNBQVMsWUFBWSxRQUErQixRQUF3QjtBQUNqRixRQUFNLE1BQU0sS0FBSyxJQUFJLEdBQUcsT0FBTyxJQUFJLENBQUMsTUFBTSxFQUFFLFFBQVEsRUFBRSxRQUFRLENBQUM7QUFDL0QsUUFBTSxPQUFPLEtBQUssSUFBSSxHQUFHLE9BQU8sSUFBSSxDQUFDLE1BQU0sRUFBRSxRQUFRLEVBQUUsUUFBUSxDQUFDO0FBQ2hFLFFBQU0sUUFBUSxDQUFDLE1BQ2IsT0FBTztBQUFBLElBQ0wsQ0FBQyxLQUFLLE1BQU0sTUFBTSxFQUFFLFNBQVMsS0FBSyxJQUFJLEdBQUcsS0FBSyxJQUFJLElBQUksSUFBSSxFQUFFLFFBQVEsRUFBRSxhQUFhLElBQUksRUFBRSxTQUFTLENBQUM7QUFBQSxJQUNuRztBQUFBLEVBQ0Y7QUFDRixTQUFPRCxTQUFRLFNBQVMsS0FBSyxNQUFNLFFBQVEsS0FBSyxDQUFDO0FBQ25EO0FBT0EsSUFBTSxVQUFVO0FBTWhCLFNBQVMsU0FBUyxRQUErQixLQUFtQjtBQUNsRSxRQUFNLFNBQVMsT0FBTyxPQUFPLENBQUMsS0FBSyxNQUFNLE1BQU0sRUFBRSxRQUFRLENBQUM7QUFDMUQsUUFBTSxPQUFPLE9BQU8sT0FBTyxDQUFDLEtBQUssTUFBTSxNQUFNLEVBQUUsU0FBUyxFQUFFLE1BQU0sQ0FBQyxJQUFJO0FBQ3JFLFFBQU0sVUFBVSxPQUFPLE9BQU8sQ0FBQyxLQUFLLE1BQU0sTUFBTSxFQUFFLFVBQVUsRUFBRSxPQUFPLFNBQVMsR0FBRyxDQUFDLElBQUk7QUFDdEYsUUFBTSxZQUFZLFFBQVEsSUFBSSxRQUFRLFlBQVksTUFBTSxLQUFLO0FBQzdELFFBQU0sT0FBTyxLQUFLLElBQUksTUFBTyxRQUFRLElBQUksUUFBUyxXQUFXLENBQUM7QUFDOUQsU0FBTyxFQUFFLFFBQVEsR0FBRyxPQUFPLE1BQU0sSUFBSSxJQUFJLFFBQVEsS0FBSztBQUN4RDtBQUdBLFNBQVMsUUFBUSxRQUF1QztBQUN0RCxRQUFNLFFBQWdCLENBQUM7QUFDdkIsV0FBUyxJQUFJLEdBQUcsSUFBSSxPQUFPLFVBQVM7QUFDbEMsVUFBTSxNQUFNLE9BQU8sQ0FBQyxHQUFHLGNBQWM7QUFDckMsVUFBTSxPQUFPLE9BQU8sTUFBTSxHQUFHLElBQUksT0FBTyxFQUFFLE9BQU8sQ0FBQyxNQUFNLEVBQUUsZUFBZSxHQUFHO0FBQzVFLFNBQUssS0FBSztBQUNWLFVBQU0sS0FBSyxTQUFTLE1BQU0sR0FBRyxDQUFDO0FBQUEsRUFDaEM7QUFDQSxTQUFPLE1BQU0sT0FBTyxDQUFDLEVBQUUsT0FBTyxNQUFNLFNBQVMsSUFBSTtBQUNuRDtBQUdBLElBQU0sUUFBUSxDQUFDLEVBQUUsR0FBRyxFQUFFLE1BQXVDO0FBQzNELFFBQU0sU0FBUyxLQUFLLElBQUksSUFBSSxDQUFDO0FBQzdCLFFBQU0sS0FBSyxLQUFLLEtBQUssSUFBSSxJQUFJLElBQUksQ0FBQztBQUNsQyxTQUFPO0FBQUEsSUFDTCxLQUFLLElBQUksQ0FBQyxLQUFLLFNBQVMsS0FBSyxJQUFJLElBQUksSUFBSSxLQUFLLENBQUMsQ0FBQztBQUFBLElBQ2hELEtBQUssSUFBSSxLQUFLLFNBQVMsS0FBSyxJQUFJLElBQUksSUFBSSxLQUFLLENBQUMsQ0FBQztBQUFBLEVBQ2pEO0FBQ0Y7QUFFQSxJQUFNLFFBQVE7QUFPUCxTQUFTLFlBQVksUUFBK0IsUUFBOEM7QUFDdkcsUUFBTSxRQUFRLFFBQVEsTUFBTTtBQUM1QixRQUFNLFVBQVUsTUFBTSxJQUFJLEtBQUs7QUFDL0IsUUFBTSxNQUFNLEtBQUssSUFBSSxHQUFHLFFBQVEsSUFBSSxDQUFDLENBQUMsQ0FBQyxNQUFNLENBQUMsQ0FBQztBQUMvQyxRQUFNLE9BQU8sS0FBSyxJQUFJLEdBQUcsUUFBUSxJQUFJLENBQUMsQ0FBQyxFQUFFLENBQUMsTUFBTSxDQUFDLENBQUM7QUFDbEQsUUFBTSxRQUFRLE9BQU8sT0FBTztBQUM1QixRQUFNLFVBQVUsSUFBSSxhQUFhLFFBQVEsQ0FBQztBQUUxQyxRQUFNLE9BQU8sUUFBUTtBQUFBLElBQ25CLENBQUMsR0FBRyxNQUFNLEtBQUssSUFBSSxHQUFHLE1BQU0sT0FBTyxDQUFDLElBQUksS0FBSyxNQUFNLEtBQUssSUFBSSxDQUFDLEtBQUssSUFBSSxNQUFNLE9BQU8sQ0FBQyxDQUFDLENBQUM7QUFBQSxFQUN4RjtBQUNBLFFBQU0sT0FBTyxRQUFRO0FBQUEsSUFDbkIsQ0FBQyxHQUFHLE1BQU0sS0FBSyxJQUFJLEdBQUcsQ0FBQyxNQUFNLE9BQU8sQ0FBQyxJQUFJLEtBQUssTUFBTSxLQUFLLElBQUksQ0FBQyxLQUFLLElBQUksTUFBTSxPQUFPLENBQUMsQ0FBQyxDQUFDO0FBQUEsRUFDekY7QUFDQSxNQUFJLE9BQU87QUFDWCxNQUFJLE9BQU87QUFDWCxhQUFXLEVBQUUsUUFBUSxHQUFHLEVBQUUsS0FBSyxPQUFPO0FBQ3BDLFVBQU0sTUFBTSxLQUFLLElBQUksTUFBTSxJQUFJLGFBQWEsSUFBSSxDQUFDLElBQUksYUFBYSxDQUFDLElBQUksYUFBYSxDQUFDO0FBQ3JGLGFBQVMsSUFBSSxHQUFHLEtBQUssT0FBTyxLQUFLO0FBQy9CLFlBQU0sSUFBSSxLQUFLLElBQUksTUFBTSxLQUFLLEtBQUssQ0FBQyxLQUFLLEtBQUssS0FBSyxLQUFLLENBQUMsS0FBSyxFQUFFO0FBQ2hFLGNBQVEsQ0FBQyxLQUFLLFFBQVEsQ0FBQyxLQUFLLEtBQUs7QUFDakMsVUFBSSxNQUFNLEVBQUcsU0FBUSxJQUFJO0FBQ3pCLFVBQUksTUFBTSxNQUFPLFNBQVEsSUFBSTtBQUFBLElBQy9CO0FBQUEsRUFDRjtBQUNBLFFBQU0sT0FBTyxJQUFJLGFBQWEsUUFBUSxDQUFDO0FBQ3ZDLE9BQUssQ0FBQyxJQUFJO0FBQ1YsV0FBUyxJQUFJLEdBQUcsS0FBSyxPQUFPO0FBQzFCLFNBQUssQ0FBQyxLQUFLLEtBQUssSUFBSSxDQUFDLEtBQUssS0FBTSxTQUFTLFFBQVEsSUFBSSxDQUFDLEtBQUssTUFBTSxRQUFRLENBQUMsS0FBSyxNQUFPO0FBQ3hGLFFBQU0sU0FBUyxLQUFLLEtBQUssS0FBSyxLQUFLO0FBQ25DLFNBQU8sT0FBTyxJQUFJLENBQUNFLFVBQVM7QUFDMUIsVUFBTSxJQUFJLEtBQUssVUFBVSxDQUFDLFFBQVEsT0FBT0EsUUFBTyxLQUFLO0FBQ3JELFFBQUksTUFBTSxFQUFHLFFBQU8sT0FBTyxDQUFDLE1BQU0sSUFBSUYsU0FBUSxHQUFHO0FBQ2pELFFBQUksSUFBSSxFQUFHLFFBQU8sUUFBUSxNQUFNLElBQUlBLFNBQVEsSUFBSTtBQUNoRCxVQUFNLFNBQVMsS0FBSyxJQUFJLENBQUMsS0FBSztBQUM5QixXQUFPQSxTQUFRLE1BQU0sUUFBUSxJQUFJLEtBQUtFLFFBQU8sUUFBUSxZQUFZLEtBQUssQ0FBQyxLQUFLLEtBQUssUUFBUTtBQUFBLEVBQzNGLENBQUM7QUFDSDs7O0FDM0ZBLElBQU0sUUFBUSxDQUFDLGVBQWtELEVBQUUsSUFBSSxjQUFjLElBQUksSUFBSSxjQUFjLENBQUM7QUFTNUcsSUFBTSxTQUF3RDtBQUFBLEVBQzVELEtBQUssRUFBRSxJQUFJLEtBQUssS0FBSyxNQUFNLEtBQUssS0FBSyxNQUFNLElBQUk7QUFBQSxFQUMvQyxZQUFZLEVBQUUsSUFBSSxDQUFDLE1BQU0sR0FBRyxNQUFNLENBQUMsTUFBTSxHQUFHLE1BQU0sRUFBRTtBQUN0RDtBQUVBLElBQU0sV0FBVyxDQUFDLE9BQXdCLE9BQ3hDLE1BQU0sT0FBTyxDQUFDLEtBQUssUUFBUSxNQUFNLElBQUksU0FBUyxHQUFHLEdBQUcsR0FBRyxDQUFDO0FBUzFELFNBQVMsT0FBTyxPQUF3QixFQUFFLE1BQU0sS0FBSyxHQUFVLE9BQWMsWUFBOEI7QUFDekcsUUFBTSxRQUFRLE1BQU0sSUFBSSxDQUFDLFFBQVE7QUFDL0IsVUFBTUMsS0FBSSxNQUFNLEtBQUssR0FBRztBQUN4QixXQUFPLEVBQUUsUUFBUSxJQUFJLFFBQVEsTUFBTUEsR0FBRSxPQUFPLE9BQU8sTUFBTSxPQUFPLEdBQUcsS0FBSyxHQUFHLElBQUlBLEdBQUUsR0FBRztBQUFBLEVBQ3RGLENBQUM7QUFDRCxRQUFNLE9BQU8sTUFBTSxJQUFJLENBQUMsUUFBUTtBQUM5QixVQUFNQSxLQUFJLE1BQU0sS0FBSyxHQUFHO0FBQ3hCLFdBQU8sRUFBRSxRQUFRLElBQUksUUFBUSxNQUFNQSxHQUFFLE1BQU0sSUFBSSxLQUFLLE1BQU1BLEdBQUUsSUFBSSxNQUFNLE9BQU8sR0FBRyxDQUFDLEVBQUU7QUFBQSxFQUNyRixDQUFDO0FBQ0QsUUFBTSxDQUFDLEdBQUcsQ0FBQyxJQUFJLE1BQU0sVUFBVTtBQUMvQixTQUFPO0FBQUEsSUFDTCxPQUFPLEtBQUssZ0JBQWdCLE9BQU8sR0FBRyxDQUFDO0FBQUEsSUFDdkMsS0FBSyxLQUFLLGdCQUFnQixPQUFPLENBQUMsQ0FBQztBQUFBLElBQ25DLE1BQU0sS0FBSyxnQkFBZ0IsT0FBTyxDQUFDLENBQUM7QUFBQSxJQUNwQyxTQUFTLEtBQUssZ0JBQWdCLE1BQU0sQ0FBQyxDQUFDO0FBQUEsSUFDdEMsVUFBVSxLQUFLLGdCQUFnQixNQUFNLENBQUMsQ0FBQztBQUFBLElBQ3ZDLFdBQVcsU0FBUyxPQUFPLE1BQU0sSUFBSTtBQUFBLElBQ3JDLE1BQU0sTUFBTTtBQUFBLEVBQ2Q7QUFDRjtBQU9BLElBQU0sY0FBYyxDQUFDLE1BQW9CLFdBQW9EO0FBQUE7QUFBQSxFQUUzRixNQUFNO0FBQUEsSUFDSixNQUFNLEdBQUcsS0FBSyxVQUFVLElBQUksTUFBTSxRQUFRLEtBQUssUUFBUSxLQUFLLEtBQUssT0FBTyxVQUFVLE1BQU07QUFBQSxJQUN4RixLQUFLO0FBQUEsRUFDUDtBQUFBLEVBQ0EsTUFBTSxZQUFZLEtBQUssTUFBTSxLQUFLLFVBQVU7QUFBQSxFQUM1QyxHQUFJLEtBQUssUUFBUSxFQUFFLE9BQU8sWUFBWSxLQUFLLE1BQU0sUUFBUSxLQUFLLE1BQU0sTUFBTSxFQUFFLElBQUksQ0FBQztBQUNuRjtBQU1PLFNBQVMsaUJBQWlCLE1BQW9CLE9BQXdCLGFBQWEsTUFBaUI7QUFDekcsUUFBTSxRQUFRLE9BQU8sS0FBSyxVQUFVLFFBQVEsUUFBUSxZQUFZO0FBQ2hFLFFBQU0sU0FBUyxNQUFNLElBQUksQ0FBQyxFQUFFLFFBQVEsT0FBTyxPQUFhO0FBQUEsSUFDdEQsUUFBUSxPQUFPLElBQUksTUFBTSxFQUFFO0FBQUEsSUFDM0IsR0FBSSxTQUFTLEVBQUUsT0FBTyxJQUFJLENBQUM7QUFBQSxFQUM3QixFQUFFO0FBQ0YsUUFBTSxRQUFRLFdBQVcsUUFBUSxZQUFZLE1BQU0sS0FBSyxDQUFDO0FBQ3pELFFBQU0sTUFBTSxNQUFNLE9BQU8sQ0FBQyxLQUFLLEVBQUUsT0FBTyxNQUFNLE1BQU0sT0FBTyxRQUFRLENBQUM7QUFDcEUsUUFBTSxPQUFPO0FBQUEsSUFDWDtBQUFBLElBQ0E7QUFBQSxJQUNBLEVBQUUsTUFBTSxDQUFDLE1BQU0sRUFBRSxNQUFNLFFBQVEsQ0FBQyxNQUFNLEtBQUssTUFBTSxFQUFFLE9BQU8sRUFBRSxNQUFNLEdBQUcsTUFBTSxLQUFLLE1BQU0sQ0FBQyxNQUFNLEVBQUUsS0FBSztBQUFBLElBQ3BHO0FBQUEsRUFDRjtBQUNBLE1BQUksQ0FBQyxLQUFLLE1BQU8sUUFBTyxFQUFFLE1BQU0sT0FBTyxDQUFDLEVBQUU7QUFDMUMsUUFBTSxPQUFPLENBQUMsR0FBRyxPQUFPLEVBQUUsUUFBUSxDQUFDLEVBQUUsQ0FBQyxFQUFFO0FBQUEsSUFBSSxDQUFDLEVBQUUsT0FBTyxHQUFHLE1BQ3ZEO0FBQUEsTUFDRTtBQUFBLE1BQ0E7QUFBQSxNQUNBO0FBQUEsUUFDRSxNQUFNLENBQUMsTUFBTSxFQUFFLE1BQU0sQ0FBQyxLQUFLLEVBQUU7QUFBQSxRQUM3QixRQUFRLENBQUMsTUFBTSxFQUFFO0FBQUEsUUFDakIsTUFBTSxPQUFPO0FBQUEsUUFDYixNQUFNLENBQUMsTUFBTTtBQUNYLGdCQUFNLE1BQU0sT0FBTyxVQUFVLE9BQU8sVUFBVSxFQUFFLFFBQVEsRUFBRSxXQUFXO0FBQ3JFLGlCQUFPLE9BQU8sSUFBSSxPQUFPLEVBQUU7QUFBQSxRQUM3QjtBQUFBLE1BQ0Y7QUFBQSxNQUNBO0FBQUEsSUFDRjtBQUFBLEVBQ0Y7QUFDQSxTQUFPLEVBQUUsTUFBTSxPQUFPLEtBQUs7QUFDN0I7QUFFQSxJQUFNLFFBQVEsQ0FBQyxNQUFzQixLQUFLLElBQUksS0FBSyxJQUFJLEVBQUU7QUFHekQsSUFBTSxhQUFhLENBQUNDLFVBQXlCLEtBQUtBLFFBQU9BLFNBQVE7QUFNakUsSUFBTSxZQUFZLENBQUMsUUFBK0IsTUFBMEJDLFdBQzFFLE9BQU8sT0FBTyxDQUFDLEtBQUssRUFBRSxRQUFRLE1BQU0sWUFBWSxJQUFJLE1BQU07QUFDeEQsUUFBTSxjQUNKLEtBQUssT0FBTyxDQUFDLE9BQU8sRUFBRSxFQUFFLE1BQU0sUUFBUSxLQUFLLEtBQUssSUFBSSxNQUFNLE1BQU0sS0FBSyxDQUFDLElBQUksUUFBUSxJQUFJO0FBQ3hGLFNBQU8sTUFBTyxTQUFTLGVBQWdCLGNBQWMsS0FBS0EsU0FBUUE7QUFDcEUsR0FBRyxDQUFDO0FBR0MsU0FBUyxnQkFBZ0IsTUFBbUIsTUFBMEIsYUFBYSxNQUFnQjtBQUN4RyxRQUFNLFNBQVMsV0FBVyxNQUFNO0FBQUEsSUFDOUIsTUFBTSxVQUFVLGdCQUFnQixNQUFNLEtBQUssVUFBVSxHQUFHLEtBQUssS0FBSyxDQUFDO0FBQUEsSUFDbkUsWUFBWSxZQUFZLFdBQVcsS0FBSyxJQUFJLEdBQUcsS0FBSyxjQUFjLENBQUM7QUFBQSxFQUNyRSxDQUFDO0FBQ0QsUUFBTSxDQUFDLEdBQUcsQ0FBQyxJQUFJLE1BQU0sVUFBVTtBQUMvQixRQUFNLENBQUMsVUFBVSxLQUFLLFdBQVcsR0FBRyxJQUFJLFlBQVksUUFBUSxDQUFDLEdBQUcsQ0FBQyxDQUFDO0FBQ2xFLFNBQU87QUFBQSxJQUNMLE9BQU8sWUFBWSxRQUFRLEdBQUc7QUFBQSxJQUM5QixLQUFLLFlBQVksUUFBUSxDQUFDO0FBQUEsSUFDMUIsTUFBTSxZQUFZLFFBQVEsQ0FBQztBQUFBLElBQzNCO0FBQUEsSUFDQTtBQUFBLElBQ0EsV0FBVyxVQUFVLFFBQVEsTUFBTSxLQUFLLEtBQUs7QUFBQSxJQUM3QyxNQUFNLEtBQUs7QUFBQSxFQUNiO0FBQ0Y7OztBQ3JKTyxJQUFNLFNBQU4sTUFBYTtBQUFBLEVBQ1Y7QUFBQSxFQUNBO0FBQUEsRUFDUixZQUFZLE1BQWM7QUFDeEIsU0FBSyxRQUFRLFNBQVM7QUFBQSxFQUN4QjtBQUFBO0FBQUEsRUFHQSxPQUFlO0FBQ2IsU0FBSyxRQUFTLEtBQUssUUFBUSxlQUFnQjtBQUMzQyxRQUFJLElBQUksS0FBSztBQUNiLFFBQUksS0FBSyxLQUFLLElBQUssTUFBTSxJQUFLLFVBQVU7QUFDeEMsUUFBSSxLQUFLLEtBQUssSUFBSyxNQUFNLElBQUssVUFBVTtBQUN4QyxjQUFVLElBQUssTUFBTSxRQUFTLEtBQUssT0FBTztBQUFBLEVBQzVDO0FBQUE7QUFBQSxFQUdBLE9BQWU7QUFDYixRQUFJLEtBQUssVUFBVSxRQUFXO0FBQzVCLFlBQU0sT0FBTyxLQUFLO0FBQ2xCLFdBQUssUUFBUTtBQUNiLGFBQU87QUFBQSxJQUNUO0FBQ0EsZUFBUztBQUNQLFlBQU0sSUFBSSxJQUFJLEtBQUssS0FBSyxJQUFJO0FBQzVCLFlBQU0sSUFBSSxJQUFJLEtBQUssS0FBSyxJQUFJO0FBQzVCLFlBQU0sSUFBSSxJQUFJLElBQUksSUFBSTtBQUN0QixVQUFJLE1BQU0sS0FBSyxLQUFLLEVBQUc7QUFDdkIsWUFBTSxJQUFJLEtBQUssS0FBTSxLQUFLLEtBQUssSUFBSSxDQUFDLElBQUssQ0FBQztBQUMxQyxXQUFLLFFBQVEsSUFBSTtBQUNqQixhQUFPLElBQUk7QUFBQSxJQUNiO0FBQUEsRUFDRjtBQUFBO0FBQUEsRUFHQSxNQUFNLE9BQXVCO0FBQzNCLFFBQUksUUFBUSxFQUFHLFFBQU8sS0FBSyxNQUFNLFFBQVEsQ0FBQyxJQUFJLEtBQUssS0FBSyxNQUFNLElBQUk7QUFDbEUsVUFBTSxJQUFJLFFBQVEsSUFBSTtBQUN0QixVQUFNLElBQUksSUFBSSxLQUFLLEtBQUssSUFBSSxDQUFDO0FBQzdCLGVBQVM7QUFDUCxZQUFNLElBQUksS0FBSyxLQUFLO0FBQ3BCLFlBQU0sS0FBSyxJQUFJLElBQUksTUFBTTtBQUN6QixVQUFJLElBQUksS0FBSyxLQUFLLElBQUksS0FBSyxLQUFLLENBQUMsSUFBSSxNQUFNLElBQUksSUFBSSxJQUFJLElBQUksSUFBSSxJQUFJLEtBQUssSUFBSSxDQUFDLEVBQUcsUUFBTyxJQUFJO0FBQUEsSUFDN0Y7QUFBQSxFQUNGO0FBQUEsRUFFQSxLQUFLLEdBQVcsR0FBbUI7QUFDakMsVUFBTSxJQUFJLEtBQUssTUFBTSxDQUFDO0FBQ3RCLFVBQU0sSUFBSSxLQUFLLE1BQU0sQ0FBQztBQUN0QixXQUFPLEtBQUssSUFBSTtBQUFBLEVBQ2xCO0FBQUEsRUFFQSxTQUFTLEdBQVcsR0FBbUI7QUFDckMsUUFBSSxJQUFJO0FBQ1IsYUFBUyxJQUFJLEdBQUcsSUFBSSxHQUFHLElBQUssS0FBSSxLQUFLLEtBQUssSUFBSSxFQUFHO0FBQ2pELFdBQU87QUFBQSxFQUNUO0FBQ0Y7QUFNQSxJQUFNLGlCQUFpQjtBQUVoQixTQUFTLFNBQVMsUUFBZ0IsT0FBYyxRQUFnQixJQUFvQjtBQUN6RixNQUFJLFVBQVUsVUFBVyxRQUFPLFNBQVMsT0FBTyxLQUFLLEtBQUssT0FBTyxLQUFLLElBQUksTUFBTSxJQUFJLEtBQUs7QUFDekYsTUFBSSxVQUFVLE1BQU8sUUFBTyxVQUFVLE9BQU8sS0FBSyxJQUFJLE1BQU0sS0FBSyxLQUFLO0FBQ3RFLFNBQU8sU0FBUyxpQkFBaUIsTUFBTSxPQUFPLEtBQUssSUFBSSxLQUFLLEtBQUssT0FBTyxNQUFNLENBQUMsSUFBSSxDQUFDO0FBQ3RGO0FBTU8sSUFBTSxTQUFTLENBQUMsUUFBZ0IsT0FBYyxRQUFnQixXQUNuRSxTQUFTLFdBQVcsVUFBVSxZQUFZLE9BQU8sS0FBSyxJQUFJLEtBQUssS0FBSyxDQUFDLEtBQUssSUFBSSxPQUFPLEtBQUssSUFBSTs7O0FDaEVoRyxJQUFNQyxTQUFRLENBQUMsTUFBc0IsS0FBSyxJQUFJLEtBQUssSUFBSSxFQUFFO0FBQ3pELElBQU1DLFdBQVUsQ0FBQyxNQUFzQixLQUFLLElBQUksS0FBSyxJQUFJLENBQUMsQ0FBQztBQUMzRCxJQUFNLFNBQVMsQ0FBQyxHQUFXLEtBQWEsU0FBMEIsS0FBSyxPQUFPLEtBQUssT0FBTyxJQUFJO0FBQzlGLElBQU0sUUFBUTtBQUVkLElBQU0sZUFBZSxDQUFDLElBQVksT0FBdUI7QUFDdkQsTUFBSSxNQUFNO0FBQ1YsTUFBSSxTQUFTO0FBQ2IsV0FBUyxJQUFJLEdBQUcsS0FBSyxPQUFPLEtBQUs7QUFDL0IsVUFBTSxJQUFJLEtBQU0sS0FBSyxJQUFLO0FBQzFCLFVBQU0sSUFBSSxLQUFLLElBQUksT0FBTyxJQUFJLENBQUM7QUFDL0IsV0FBTyxJQUFJQSxTQUFRLEtBQUssS0FBSyxDQUFDO0FBQzlCLGNBQVU7QUFBQSxFQUNaO0FBQ0EsU0FBTyxNQUFNO0FBQ2Y7QUFXQSxJQUFNLFdBQVcsQ0FBQyxLQUFjLFdBQzlCLFFBQVEsY0FBYyxJQUFJLEtBQUssTUFBTSxPQUFPLEtBQUssSUFBSSxDQUFDLElBQUksS0FBSyxLQUFLLE1BQU0sT0FBTyxLQUFLLEtBQUssSUFBSSxHQUFHO0FBR3BHLFNBQVMsU0FDUCxNQUNBLE9BQ0EsUUFDeUQ7QUFDekQsUUFBTSxLQUFLLFNBQVMsUUFBUSxPQUFPRCxPQUFNLEtBQUssVUFBVSxHQUFHLEtBQUssS0FBSztBQUNyRSxRQUFNLFNBQVNDLFNBQVEsRUFBRTtBQUN6QixNQUFJLFVBQVUsV0FBVztBQUN2QixVQUFNLE1BQU0sT0FBTyxRQUFRLE9BQU8sSUFBSSxLQUFLLFFBQVEsSUFBSSxHQUFHLEtBQUssY0FBYyxDQUFDO0FBQzlFLFdBQU8sRUFBRSxPQUFPLFFBQVEsTUFBTSxNQUFNLE9BQU8sS0FBSyxTQUFTLE1BQU0sSUFBSSxVQUFVLEdBQUcsRUFBRTtBQUFBLEVBQ3BGO0FBRUEsUUFBTSxLQUFLLE9BQU8sUUFBUSxPQUFPLEtBQUssTUFBTSxLQUFLLFVBQVUsSUFBSSxLQUFLLEtBQUssVUFBVSxJQUFJLE9BQU87QUFDOUYsU0FBTyxFQUFFLE9BQU8sYUFBYSxJQUFJLEVBQUUsR0FBRyxNQUFNLE1BQU1BLFNBQVEsS0FBSyxLQUFLLE9BQU8sS0FBSyxDQUFDLEVBQUU7QUFDckY7QUFFQSxTQUFTLFlBQVksS0FBYyxPQUFjLE1BQWMsUUFBcUI7QUFDbEYsUUFBTSxPQUFPLFNBQVMsR0FBRztBQUN6QixRQUFNLEVBQUUsT0FBTyxLQUFLLElBQUksU0FBUyxNQUFNLE9BQU8sTUFBTTtBQUNwRCxRQUFNLE9BQU8sTUFBTSxLQUFLLEVBQUUsUUFBUSxLQUFLLEdBQUcsTUFBTTtBQUM5QyxVQUFNLElBQUksU0FBUyxLQUFLLE1BQU07QUFDOUIsV0FBTyxFQUFFLEdBQUcsR0FBRyxPQUFPLFNBQVMsR0FBRyxLQUFLLENBQUMsRUFBRTtBQUFBLEVBQzVDLENBQUM7QUFDRCxRQUFNLE1BQU0sZ0JBQWdCLE1BQU0sSUFBSTtBQUN0QyxTQUFPO0FBQUEsSUFDTCxNQUFNLE9BQU8sT0FBTyxJQUFJLEtBQUssSUFBSSxJQUFJO0FBQUEsSUFDckMsTUFBTSxPQUFPLEtBQUssR0FBRyxJQUFJLFNBQVMsSUFBSSxRQUFRO0FBQUEsSUFDOUMsVUFBVTtBQUFBLElBQ1YsVUFBVTtBQUFBLElBQ1YsT0FBTyxJQUFJLE9BQU8sSUFBSTtBQUFBLEVBQ3hCO0FBQ0Y7QUFVQSxJQUFNLGVBQWU7QUFDckIsSUFBTSxTQUFTO0FBQ2YsSUFBTSxVQUFVLENBQUMsU0FDZixLQUFLLFFBQVMsS0FBSyxNQUFNLE9BQU8sVUFBVSxTQUFTLGVBQWdCO0FBRXJFLFNBQVMsT0FBTyxNQUFnQixPQUFjLFFBQTBCO0FBQ3RFLFFBQU0sUUFBUSxLQUFLLFVBQVU7QUFDN0IsUUFBTSxTQUFTLFFBQ1gsS0FBSyxJQUFJLEtBQUssVUFBVSxLQUFLLEtBQUssUUFBUSxLQUFLLEtBQUssT0FBTyxVQUFVLE1BQU0sS0FBSyxJQUNoRixLQUFLO0FBQ1QsUUFBTSxLQUFLLFNBQVMsUUFBUSxPQUFPLFFBQVEsS0FBSyxLQUFLO0FBQ3JELFFBQU0sUUFBUSxPQUFPLFFBQVEsT0FBTyxLQUFLLE1BQU0sS0FBSyxVQUFVO0FBQzlELFFBQU0sU0FBUyxLQUFLLFFBQVEsT0FBTyxRQUFRLE9BQU8sS0FBSyxNQUFNLFFBQVEsS0FBSyxNQUFNLE1BQU0sSUFBSTtBQUMxRixTQUFPO0FBQUEsSUFDTDtBQUFBLElBQ0E7QUFBQSxJQUNBO0FBQUEsSUFDQSxRQUFRLE1BQU0sS0FBSyxFQUFFLFFBQVEsUUFBUSxJQUFJLEVBQUUsR0FBRyxNQUFNLEtBQUssU0FBUyxPQUFPLEtBQUssQ0FBQztBQUFBLElBQy9FLFFBQVEsUUFBUSxLQUFLLE1BQU0sQ0FBQyxNQUFNO0FBQUEsSUFDbEMsTUFBTSxRQUFRLE1BQU07QUFBQSxFQUN0QjtBQUNGO0FBRUEsU0FBUyxhQUFhLEtBQWMsT0FBYyxNQUFjLFFBQXFCO0FBQ25GLFFBQU0sT0FBTyxTQUFTLEdBQUc7QUFDekIsUUFBTSxFQUFFLElBQUksT0FBTyxRQUFRLFFBQVEsUUFBUSxLQUFLLElBQUksT0FBTyxNQUFNLE9BQU8sTUFBTTtBQUU5RSxRQUFNLFNBQVMsTUFBYyxLQUFLLE1BQU0sT0FBTyxLQUFLLEtBQUssTUFBTSxPQUFPLE1BQU07QUFDNUUsUUFBTSxRQUFvQixPQUFPLElBQUksTUFBTSxDQUFDLENBQUM7QUFDN0MsV0FBUyxJQUFJLEdBQUcsSUFBSSxNQUFNLEtBQUs7QUFDN0IsVUFBTUMsS0FBSSxPQUFPO0FBQ2pCLFVBQU1BLEVBQUMsR0FBRyxLQUFLLFFBQVEsT0FBT0EsRUFBQyxLQUFLLE9BQU8sUUFBUSxPQUFPLEtBQUssQ0FBQyxDQUFDO0FBQUEsRUFDbkU7QUFDQSxRQUFNLEVBQUUsTUFBTSxNQUFNLElBQUk7QUFBQSxJQUN0QjtBQUFBLElBQ0EsTUFBTSxJQUFJLENBQUMsWUFBWSxFQUFFLE9BQU8sRUFBRTtBQUFBLEVBQ3BDO0FBQ0EsUUFBTSxRQUFRLE9BQU8sS0FBSyxRQUFRLFNBQVMsSUFBSSxVQUFVLEVBQUU7QUFDM0QsUUFBTSxPQUFPLE9BQU8sT0FBTyxLQUFLLEtBQUssS0FBSyxJQUFJO0FBQzlDLFFBQU0sT0FBTyxPQUFPLE9BQU8sS0FBSyxLQUFLLE1BQU0sUUFBUSxLQUFLLElBQUksT0FBTyxLQUFLLENBQUMsR0FBRyxLQUFLLFNBQVMsS0FBSyxRQUFRO0FBQ3ZHLFFBQU0sSUFBSSxPQUFPO0FBQ2pCLFFBQU0sT0FBTyxNQUFNLENBQUM7QUFDcEIsUUFBTSxRQUFRLE9BQU8sQ0FBQyxLQUFLO0FBQzNCLFNBQU87QUFBQSxJQUNMO0FBQUEsSUFDQTtBQUFBLElBQ0EsT0FBTyxLQUFLLE9BQU8sS0FBSztBQUFBLElBQ3hCLFVBQVUsT0FBTyxPQUFPLE9BQU8sUUFBUSxPQUFPLFNBQVMsQ0FBQyxHQUFHLEtBQUssS0FBSyxLQUFLLElBQUksSUFBSTtBQUFBLElBQ2xGLFVBQVUsT0FBTyxPQUFPLE9BQU8sUUFBUSxRQUFRLE9BQU8sS0FBSyxDQUFDLEdBQUcsS0FBSyxTQUFTLEtBQUssUUFBUSxJQUFJO0FBQUEsRUFDaEc7QUFDRjtBQUVPLFNBQVMsU0FBUyxNQUFlLE9BQWMsTUFBY0MsUUFBZSxNQUF1QjtBQUN4RyxRQUFNLE9BQU8sU0FBUyxJQUFJO0FBQzFCLFFBQU0sU0FBUyxJQUFJLE9BQU8sSUFBSTtBQUM5QixRQUFNLFFBQVEsRUFBRSxNQUFNLEdBQUcsTUFBTSxHQUFHLFVBQVUsR0FBRyxVQUFVLEdBQUcsT0FBTyxFQUFFO0FBQ3JFLFdBQVMsSUFBSSxHQUFHLElBQUlBLFFBQU8sS0FBSztBQUM5QixVQUFNLE9BQU8sS0FBSyxVQUFVLFVBQVUsY0FBYyxjQUFjLE1BQU0sT0FBTyxNQUFNLE1BQU07QUFDM0YsZUFBVyxPQUFPLE9BQU8sS0FBSyxLQUFLLEVBQTZCLE9BQU0sR0FBRyxLQUFLLElBQUksR0FBRztBQUFBLEVBQ3ZGO0FBQ0EsU0FBTyxFQUFFLE1BQU0sT0FBTyxNQUFNLE9BQUFBLFFBQU8sTUFBTSxHQUFHLE1BQU07QUFDcEQ7OztBQ2hKTyxJQUFNLFFBQVE7QUFDckIsSUFBTSxTQUEyQixDQUFDLFdBQVcsU0FBUyxLQUFLO0FBQzNELElBQU0sT0FBTyxDQUFDLEdBQUcsR0FBRyxHQUFHLElBQUksRUFBRTtBQUU3QixJQUFNLENBQUMsUUFBUSxPQUFPLE9BQU8sR0FBRyxRQUFRLENBQUMsSUFBSSxRQUFRLEtBQUssTUFBTSxDQUFDLEVBQUUsSUFBSSxNQUFNO0FBQzdFLElBQUksT0FBTztBQUNYLFdBQVcsQ0FBQyxHQUFHLElBQUksS0FBSyxVQUFVLFFBQVE7QUFDeEMsYUFBVyxDQUFDLEdBQUcsS0FBSyxLQUFLLE9BQU8sUUFBUTtBQUN0QyxlQUFXLFFBQVEsTUFBTTtBQUN2QixVQUFJLFNBQVMsVUFBVSxLQUFNO0FBQzdCLFlBQU0sT0FBTyxJQUFJLFFBQVEsTUFBTSxJQUFJLEtBQUssS0FBSztBQUM3QyxZQUFNLFFBQVEsU0FBUyxNQUFNLE9BQU8sTUFBTSxPQUFPLElBQUk7QUFDckQsY0FBUTtBQUFBLFFBQ04sS0FBSyxVQUFVO0FBQUEsVUFDYixHQUFJLFFBQVEsUUFBUSxTQUFTLE1BQU0sT0FBTyxNQUFNLE9BQU8sSUFBSSxJQUFJO0FBQUEsVUFDL0QsT0FBTztBQUFBLFlBQ0wsTUFBTSxNQUFNO0FBQUEsWUFDWixNQUFNLE1BQU07QUFBQSxZQUNaLFVBQVUsTUFBTTtBQUFBLFlBQ2hCLFVBQVUsTUFBTTtBQUFBLFlBQ2hCLE9BQU8sT0FBTyxNQUFNLE1BQU0sWUFBWSxDQUFDLENBQUM7QUFBQSxVQUMxQztBQUFBLFFBQ0YsQ0FBQztBQUFBLE1BQ0g7QUFBQSxJQUNGOyIsCiAgIm5hbWVzIjogWyJyIiwgIndlaWdodGVkIiwgInNwcmVhZCIsICJsb2dpdCIsICJzaGFyZU9mIiwgImxvZ2l0IiwgInBhcnQiLCAiYiIsICJwYXJ0IiwgImZhcm1zIiwgImxvZ2l0IiwgInNoYXJlT2YiLCAiZyIsICJmYXJtcyJdCn0K
