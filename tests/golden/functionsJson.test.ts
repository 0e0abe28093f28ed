import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { generateCustomFunctionsMetadata } from 'custom-functions-metadata';
import { CATALOGUE } from '../../shared/catalogue';
import type { JsonFunction } from '../../src/shell/functionsJson';
import { functionsJson, functionsJsonFaults, functionsJsonText } from '../../src/shell/functionsJson';

const json = functionsJson(CATALOGUE);

test('functions.json is the one kept in the repository (npm run gen refreshes it)', () => {
  expect(functionsJsonText(CATALOGUE)).toBe(readFileSync('tests/golden/functions.json', 'utf8'));
});

test("keeps to Excel's limits", () => {
  expect(functionsJsonFaults(json)).toEqual([]);
});

test('says so when a limit is broken', () => {
  const [first] = json.functions;
  if (!first) throw new Error('no functions');
  const [parameter] = first.parameters;
  if (!parameter) throw new Error('no parameters');
  const broken = {
    ...first,
    id: 'a_b',
    description: 'x'.repeat(256),
    parameters: [{ ...parameter, description: 'y'.repeat(300) }],
  };
  expect(functionsJsonFaults({ ...json, functions: [broken] })).toHaveLength(3);
  expect(functionsJsonFaults({ ...json, functions: Array.from({ length: 4000 }, () => first) })).toContain(
    'functions.json is larger than Excel accepts (1 MB)',
  );
});

/** The same declarations as a source file that the official generator reads. */
const typeOf = (dimensionality: 'matrix' | undefined): string =>
  dimensionality === 'matrix' ? 'any[][]' : 'any';
const asSource = (fn: JsonFunction, i: number): string => `
/**
 * ${fn.description}
 * @customfunction ${fn.id} ${fn.name}
${fn.parameters.map((p) => ` * @param ${p.name} ${p.description}`).join('\n')}
 * @param invocation the call
 * @returns the answer
 * @requiresAddress
 */
export function f${i}(${fn.parameters.map((p) => `${p.name}${p.optional ? '?' : ''}: ${typeOf(p.dimensionality)}, `).join('')}${
  fn.parameters.some((p) => p.optional) ? 'invocation?' : 'invocation'
}: CustomFunctions.Invocation): any[][] { return []; }
`;

test('the official metadata tool writes the same functions from the same declarations', async () => {
  const file = join(mkdtempSync(join(tmpdir(), 'spawnbook-')), 'functions.ts');
  writeFileSync(file, json.functions.map(asSource).join('\n'));
  const result = await generateCustomFunctionsMetadata(file);
  expect(result.errors).toEqual([]);
  const official = JSON.parse(result.metadataJson) as { functions: unknown[] };
  expect(official.functions).toEqual(json.functions);
});

test("the official tool's own rules still bite: a duplicate and a bad id are refused", async () => {
  const [first] = json.functions;
  if (!first) throw new Error('no functions');
  const file = join(mkdtempSync(join(tmpdir(), 'spawnbook-')), 'functions.ts');
  writeFileSync(file, [first, first, { ...first, id: 'BAD-ID', name: '1BAD' }].map(asSource).join('\n'));
  const result = await generateCustomFunctionsMetadata(file);
  expect(result.errors.length).toBeGreaterThanOrEqual(2);
});
