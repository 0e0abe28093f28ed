import { centimetre, litre } from '../../../units/quantities';
import { noSolution } from '../../../base/values';
import { coneBottom, lyingDrum, oval, rectangle, round, tapered } from '../kernels/vats';
import type { FunctionSpec, SheetFunction, ValueReturn } from '../../../functions/define';
import { defineFunction, value } from '../../../functions/define';
import type { Params } from '../../../functions/params';
import { choice, num } from '../../../functions/params';

/** cm: no vat is narrower; a smaller number was measured in metres. */
const SMALLEST = 10;
/** cm: no water in a vat is shallower. */
const SHALLOWEST = 3;

const size = (doc: string): ReturnType<typeof num<'cm'>> => num(centimetre, { min: SMALLEST, max: 1e5, doc });
const depthParam = num(centimetre, {
  min: SHALLOWEST,
  max: 1e4,
  doc: 'Depth of the water as filled, not of the wall.',
});

const vat = <const P extends Params>(
  spec: Pick<
    FunctionSpec<P, ValueReturn>,
    'id' | 'summary' | 'questions' | 'params' | 'examples' | 'compute'
  >,
): SheetFunction =>
  defineFunction<P, ValueReturn>({
    ...spec,
    family: 'Water',
    returns: value(litre, 'Litres in the vat.'),
    valid: 'Exact for the shape, inside measures; stones, pipes and dead corners hold less',
    sources: ['DEFINITION'],
  });

const tooDeep = (what: string): ReturnType<typeof noSolution> =>
  noSolution(`depth: the water cannot stand higher than ${what}. Measure the depth again.`);

export const vatRectangle = vat({
  id: 'VAT.RECTANGLE',
  summary: 'Litres in a rectangular vat.',
  questions: [
    'how many litres is my tank',
    'calculate water volume',
    'pond volume length width depth',
    'litters in tank',
    'how many litre dey my vat',
    'feet to litres',
    'tank size',
  ],
  params: { length: size('Inside length.'), width: size('Inside width.'), depth: depthParam },
  examples: [
    { args: [200, 100, 50], gives: '1000', because: 'Two metres by one by half.' },
    {
      args: [2, 1, 0.5],
      fails: { code: '#VALUE!', says: 'looks like metres: 2 m is 200 cm' },
      because: 'Measured in metres.',
    },
    { args: [200, -100, 50], fails: { code: '#VALUE!', says: 'from 10' }, because: 'A width is above 0.' },
  ],
  compute: ({ length, width, depth }) => rectangle(length, width, depth),
});

export const vatRound = vat({
  id: 'VAT.ROUND',
  summary: 'Litres in a round vat with a flat bottom.',
  questions: [
    'litres in a round tank',
    'volume of a circular tank',
    'water in a round tank from diameter and depth',
    'volume of round tank',
  ],
  params: { diameter: size('Inside diameter.'), depth: depthParam },
  examples: [
    { args: [150, 60], gives: '1060.3', because: 'π/4 × 150² × 60 cm³.' },
    { args: [0, 60], fails: { code: '#VALUE!', says: 'from 10' }, because: 'A diameter is above 0.' },
  ],
  compute: ({ diameter, depth }) => round(diameter, depth),
});

export const vatOval = vat({
  id: 'VAT.OVAL',
  summary: 'Litres in an oval vat: an ellipse, or straight sides with half-round ends.',
  questions: ['litres in an oval tank', 'volume of an oval vat', 'water in a bathtub shaped tank'],
  params: {
    length: size('Longest inside length.'),
    width: size('Widest inside width.'),
    depth: depthParam,
    ends: choice(['straight sides', 'ellipse'] as const, {
      default: 'straight sides',
      doc: '"straight sides" with half-round ends, or a true "ellipse".',
    }),
  },
  examples: [
    {
      args: [200, 100, 50],
      gives: '892.7',
      because: 'A square metre and a circle of one metre, half a metre deep.',
    },
    { args: [200, 100, 50, 'ellipse'], gives: '785.4', because: 'π/4 × 200 × 100 × 50 cm³.' },
    {
      args: [100, 200, 50],
      fails: { code: '#NUM!', says: 'length' },
      because: 'With straight sides the length is the longer.',
    },
  ],
  compute: ({ length, width, depth, ends }) =>
    ends === 'straight sides' && length < width
      ? noSolution('length: is shorter than the width. Give the longer side as length.')
      : oval(length, width, depth, ends === 'straight sides'),
});

export const vatCone = vat({
  id: 'VAT.CONE',
  summary: 'Litres in a round vat with a conical bottom, full or part filled.',
  questions: [
    'litres in a cone bottom tank',
    'volume of a conical tank',
    'water in a funnel tank',
    'cone bottom tank litres',
  ],
  params: {
    diameter: size('Inside diameter of the round wall.'),
    cone: size('Height of the cone, from outlet to wall.'),
    depth: num(centimetre, { min: SHALLOWEST, max: 1e4, doc: 'Depth of water over the outlet.' }),
    outlet: num(centimetre, {
      min: 0,
      max: 1e4,
      default: 0,
      doc: 'Diameter of the flat or the outlet at the bottom. 0 when left out.',
    }),
  },
  examples: [
    { args: [60, 40, 100], gives: '207.3', because: 'A cone of 37.7 L under 169.6 L of cylinder.' },
    { args: [60, 40, 20], gives: '4.71', because: 'Half up the cone is an eighth of it.' },
    {
      args: [60, 40, 20, 70],
      fails: { code: '#NUM!', says: 'outlet' },
      because: 'An outlet is narrower than the vat.',
    },
  ],
  compute: ({ diameter, cone, depth, outlet }) =>
    outlet >= diameter
      ? noSolution('outlet: is as wide as the vat. Use VAT.ROUND.')
      : coneBottom(diameter, cone, depth, outlet),
});

export const vatTapered = vat({
  id: 'VAT.TAPERED',
  summary: 'Litres in a vat or lined pond with sloping sides, full or part filled.',
  questions: ['capacity of concrete pond', 'how much water in my pond', 'how much water this pond fit carry'],
  params: {
    topLength: size('Length at the rim.'),
    topWidth: size('Width at the rim.'),
    bottomLength: size('Length at the bottom.'),
    bottomWidth: size('Width at the bottom.'),
    height: size('Height of the rim over the bottom.'),
    depth: depthParam,
  },
  examples: [
    {
      args: [200, 100, 180, 80, 60, 60],
      gives: '1028',
      because: 'Prismoid: (14400 + 4 × 17100 + 20000) × 60/6 cm³.',
    },
    {
      args: [200, 100, 180, 80, 60, 70],
      fails: { code: '#NUM!', says: 'rim' },
      because: 'Deeper than the vat.',
    },
  ],
  compute: ({ topLength, topWidth, bottomLength, bottomWidth, height, depth }) =>
    depth > height
      ? tooDeep('the rim')
      : tapered(topLength, topWidth, bottomLength, bottomWidth, height, depth),
});

export const vatDrum = vat({
  id: 'VAT.DRUM',
  summary: 'Litres in a drum or pipe lying on its side, full or part filled.',
  questions: [
    'litres in a drum lying down',
    'volume of a barrel on its side',
    'water in a pipe',
    'volume of drum lying down',
  ],
  params: { diameter: size('Inside diameter.'), length: size('Inside length.'), depth: depthParam },
  examples: [
    { args: [60, 90, 30], gives: '127.2', because: 'Half of a 254 L drum.' },
    {
      args: [60, 90, 70],
      fails: { code: '#NUM!', says: 'the top of the drum' },
      because: 'Deeper than the drum.',
    },
  ],
  compute: ({ diameter, length, depth }) =>
    depth > diameter ? tooDeep('the top of the drum') : lyingDrum(diameter, length, depth),
});
