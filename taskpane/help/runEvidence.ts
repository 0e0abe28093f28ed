// Long: one row a figure of a run.
import { evaluate } from '../../shared/catalogue/calculation';
import { isGrid } from '../../shared/base/values';
import { LivingPages } from '../../shared/books/living';
import { hardestDay } from '../../shared/books/living/workings/stillWater';
import { SOURCES } from '../../shared/families/sources';
import { runNow } from '../../shared/base/steps';
import { planBatches } from '../../shared/season/batches';
import { femalesForNineSteps, readOneOrder } from '../../shared/season/one';
import { verdictText } from '../../shared/maths/verdict';
import { TRUST } from './functionPage';

/** One figure of the run, and what was printed about it. */
export interface EvidenceRow {
  readonly what: string;
  readonly plan: string;
  readonly printed: string;
  /** Keys of shared/families/sources.ts. */
  readonly sources: readonly string[];
  /** Whether the figure lies within what was printed; judged by `span` where there is one. */
  readonly value?: number;
  readonly span?: readonly [number, number];
}

/** The run that the page is about: 30,000 fry from females of 1.2 kg, water of 27 °C. */
const RUN = {
  hatchery: 'Reed Bend Hatchery',
  buyer: 'Hill ponds',
  product: 'fry',
  wanted: 30_000,
  wantedOn: '2027-04-24',
  plannedOn: '2027-02-15',
  femaleWeight: 1.2,
  females: 4,
  males: 4,
  vats: 4,
  vatLitres: 1000,
  temperature: 27,
  ph: 6.4,
  phWanted: 7,
  alkalinity: 0.4,
  material: 'soda ash',
  preparation: 'ready-made solution',
  stripHour: '7:00',
  certainty: 90,
};

const fixed = (value: number, digits: number): string =>
  value.toLocaleString('en', { minimumFractionDigits: digits, maximumFractionDigits: digits });
const percent = (share: number, digits = 0): string => `${fixed(100 * share, digits)} %`;
const first = (formula: string, column = 0): number => {
  const got = evaluate(formula);
  return Number(isGrid(got) ? got[0]?.[column] : got);
};

/** The run planned, with the number of females that nine runs in ten take. */
function planned(females: number) {
  const read = readOneOrder({ ...RUN, females, males: females });
  if ('faults' in read) throw new Error(read.faults.map(({ message }) => message).join(' '));
  const plan = planBatches(read.book, { draws: 2000, explains: false });
  return { book: read.book, plan, pages: new LivingPages(read.book, plan) };
}

/** Every figure of the run beside what was printed of it. */
export function evidenceRows(): readonly EvidenceRow[] {
  const start = planned(RUN.females);
  const nine = runNow(femalesForNineSteps(start.book, start.plan)) ?? RUN.females;
  const { pages, plan } = planned(nine);
  const [batch] = plan.batches;
  const [order] = plan.orders;
  if (!batch || !order) throw new Error('The run was not planned.');
  const of = pages.reader(batch);
  const a = pages.assumed;
  const hours = (from: string, to: string): number => 24 * (of.number(to) - of.number(from));
  const day = (n: number) => pages.day(batch, n);
  const milligrams = (n: number): number => 1000 * day(n).number('gramsNow');
  const dying = (n: number): number => 1 - day(n + 1).number('fishNow') / day(n).number('fishNow');
  const withoutAir = first('=SPAWN.AIR.MINUTES(30000,0.05,1000,7)', 2);
  const stripped = 24 * (batch.stripAt - of.number('inject'));
  const perKilogram = 1000 * a.eggShare * a.eggsPerGram * a.ovulating;
  const larvaeInLitre = Math.max(
    ...plan.stays.filter(({ stage }) => stage === 'fry').map(({ perLitre }) => perLitre),
  );
  const eggsInLitre = Math.max(
    ...plan.stays.filter(({ stage }) => stage === 'eggs').map(({ perLitre }) => perLitre),
  );
  const weaned = a.yolkSurvival * a.frySurvival;
  const hardest = hardestDay(pages, batch);
  const row = (
    what: string,
    plan: string,
    printed: string,
    sources: readonly string[],
    value?: number,
    span?: readonly [number, number],
  ): EvidenceRow => ({
    what,
    plan,
    printed,
    sources,
    ...(value === undefined || !span ? {} : { value, span }),
  });
  return [
    row(
      'Hormone for a kilogram of female',
      `${fixed(of.number('hormone') / of.number('kilograms'), 2)} mL of ready-made solution`,
      '0.4 to 0.5 mL usual, 0.2 has worked',
      ['BRZUSKA03', 'OLUBIYI05'],
      of.number('hormone') / of.number('kilograms'),
      [0.2, 0.5],
    ),
    row(
      'First look after the injection',
      `${fixed(hours('inject', 'look'), 1)} h`,
      'at 26 to 27 °C eggs were had at 8, 10 and 12 h',
      ['WORLDAQ25'],
      hours('inject', 'look'),
      [7.5, 10],
    ),
    row(
      'Strip after the injection',
      `${fixed(stripped, 1)} h`,
      '10.2 h at 26 °C; at 26 to 27 °C best at 12 h, the last hour tested',
      ['OKER15', 'WORLDAQ25'],
      stripped,
      [8, 12],
    ),
    row(
      'Nobody has tested later than',
      `${fixed(hours('inject', 'late'), 1)} h`,
      '12 h at 26 to 27 °C; 99 % fertilised at 15 h at a temperature not told',
      ['WORLDAQ25', 'AUDU23'],
      hours('inject', 'late'),
      [11.5, 15],
    ),
    row(
      'Eggs from a kilogram of female injected',
      fixed(perKilogram, 0),
      '28,000 to 37,600 stripped, by the month',
      ['GRAAF95', 'TP62'],
      perKilogram,
      [28_000, 37_600],
    ),
    row(
      'Eggs in a litre of still water',
      fixed(eggsInLitre, 0),
      '480 is the most; hatch falls as eggs lie closer',
      ['YONG08'],
      eggsInLitre,
      [0, 480],
    ),
    row(
      'First hatch after the strip',
      `${fixed(24 * (of.number('hatchAt') - batch.stripAt), 1)} h`,
      '23.5 to 25 h at 28 °C, 22 to 30 h at 25.5 to 26.1 °C',
      ['ACEH19', 'OLUBIYI05'],
      24 * (of.number('hatchAt') - batch.stripAt),
      [22, 30],
    ),
    row(
      'First to last hatch',
      `${fixed(hours('hatchAt', 'hatchEnd'), 1)} h`,
      '2 to 9 h; the last over the first 1.1 to 1.36',
      ['SPREAD01'],
      hours('hatchAt', 'hatchEnd'),
      [2, 9],
    ),
    row(
      'Eggs that hatch',
      percent(a.hatch),
      '59 % in the rains, 28 % in the dry season, best month 86 %',
      ['GRAAF95', 'TP62'],
      a.hatch,
      [0.28, 0.864],
    ),
    row(
      'First food after the hatch',
      `${fixed(hours('hatchAt', 'feed'), 0)} h`,
      'able at 36 h, yolk gone at 68 h (27.5 to 28.6 °C); trials begin at 72 h',
      ['KAWAMURA17'],
      hours('hatchAt', 'feed'),
      [36, 96],
    ),
    row(
      'Alive at first food',
      percent(a.yolkSurvival),
      '78 to 93 % in hormone trials, 44 to 98 % by the water',
      ['OKER15', 'OLUBIYI05', 'EBONYI'],
      a.yolkSurvival,
      [0.44, 0.98],
    ),
    row(
      'Weight at first food',
      `${fixed(milligrams(0), 1)} mg`,
      '2 to 3 mg; 2.8 mg',
      ['JANSSEN85', 'KAWAMURA17'],
      milligrams(0),
      [2, 3],
    ),
    row(
      'Weight after 7 days of food',
      `${fixed(milligrams(7), 0)} mg until they are weighed`,
      'ordinary 8 mg; with Artemia in plenty 50 to 60 mg: only a weighing tells',
      ['KAWAMURA17', 'VERRETH99'],
      milligrams(7),
      [7, 60],
    ),
    row(
      'Larvae in a litre',
      fixed(larvaeInLitre, 0),
      '88 % alive at 50, 64 % at 150; 100 to 150 recommended once',
      ['MAKERERE', 'AJANI15'],
      larvaeInLitre,
      [0, 150],
    ),
    row(
      'Larvae that become weaned fry',
      percent(a.frySurvival),
      'to day 14: 79 to 92 % in one run, 61 to 73 % in the next',
      ['HLREAR94'],
      a.frySurvival,
      [0.61, 0.92],
    ),
    row(
      'Dead in a day: first day of food, the next three, then',
      [0, 2, 8].map((n) => percent(dying(n), 1)).join(', '),
      'heavy losses on days 5 to 8 in a relative; to day 3 up to 8 %, from day 7 0.3 to 1.6 % in good trials',
      ['KISANGANI', 'OKER15', 'MAKERERE'],
      dying(8),
      [0.003, 0.016],
    ),
    row(
      'From hatch to weaned',
      percent(weaned),
      'six farms to week 6: 61 ± 7.5 % and 71 ± 6.7 %',
      ['LAGOSGRADE'],
      weaned,
      [0.535, 0.777],
    ),
    row(
      'Food they can eat at first food, dry, of body weight',
      percent(day(0).number('eaten'), 1),
      '13 % at 2.5 mg, worked out from the printed law at 28 °C',
      ['CONC98'],
      day(0).number('eaten'),
      [0.12, 0.14],
    ),
    row(
      'Dry feed on the last day, of body weight',
      percent(day(11).number('ration'), 1),
      'eaten: 9 % at 18 mg, of dry matter; 25 % from memory is more than they can eat',
      ['CONC98', 'UYS85'],
      day(11).number('ration'),
      [0.06, 0.13],
    ),
    row(
      'Nauplii for a larva on the first day',
      fixed(a.naupliiPerLarva, 0),
      '110 at 2.5 mg, 340 at 10 mg, worked out from what is eaten',
      ['CONC98', 'KKT1'],
      a.naupliiPerLarva,
      [110, 350],
    ),
    row(
      'New water on the hardest day',
      `${fixed(hardest.litres, 0)} L, ${fixed(hardest.times, 1)} times the vats`,
      'from ammonia of what is eaten; no figure in print for larvae',
      ['TIMM10'],
    ),
    row(
      'Minutes without air on the hardest day, act within',
      fixed(hardest.minutes, 0),
      '30,000 fry of 50 mg in 1,000 L: about 2 h to 3 mg/L, act at half',
      ['CONC98'],
    ),
    row(
      'The function for that case, minutes to 3 mg/L',
      fixed(withoutAir, 0),
      'about 120',
      ['CONC98'],
      withoutAir,
      [115, 120],
    ),
    row(
      'Females for nine runs in ten',
      `${nine} (eggs of ${fixed(RUN.wanted / (a.hatch * weaned * a.gradingShare * perKilogram * RUN.femaleWeight), 1)} on average)`,
      'spread between females 19 to 32 %, 87.5 % give eggs, one run in ten fails (a judgement)',
      ['DADEBO00', 'BRZUSKA03', 'PRACTICE'],
    ),
    row(
      'All 30,000 in',
      `${percent(order.certainty)} of such runs: ${verdictText(order.verdict)}`,
      'drawn runs, simulated; the spreads are printed',
      ['LAGOSGRADE', 'HLREAR94'],
    ),
  ];
}

const cell = (text: string): string => text.replaceAll('|', '\\|');
/** The page "One run beside the evidence" as Markdown. */
export function runEvidenceText(): string {
  const rows = evidenceRows().map(
    ({ what, plan, printed, sources }) =>
      `| ${[
        what,
        plan,
        printed,
        sources
          .map((key) => {
            const { citation = key, standing = 'memory' } = SOURCES[key] ?? {};
            const title = citation.split(/[.(]/)[0]?.trim() ?? key;
            return standing === 'seen' || standing === 'practice' ? title : `${title} (${TRUST[standing]})`;
          })
          .join('; '),
      ]
        .map(cell)
        .join(' | ')} |`,
  );
  return `# One run beside the evidence

30,000 fry from females of 1.2 kg in water of 27 °C, as the plan of one run works them out with nothing of the farm's own: figure by figure beside what was printed. Most papers were seen as abstracts; what was not seen says so. What your own notes say is better than any of it.

| Figure | In the plan | In print | Where |
| --- | --- | --- | --- |
${rows.join('\n')}
`;
}
