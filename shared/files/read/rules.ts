import type { ConditionalModel, ValidationModel } from '../../sheet/workbook/model';
import { fromFile } from '../formulas';
import type { Tag } from './scan';
import { scan } from './scan';
import type { FileStyles } from './styles';

/** Input rules and colouring rules of a worksheet; what the model has no word for is named in `lost`. */
export interface Rules {
  readonly validations: readonly ValidationModel[];
  readonly conditionals: readonly ConditionalModel[];
  readonly lost: readonly string[];
}

const COMPARISONS: Readonly<Record<string, string>> = {
  equal: '=',
  notEqual: '<>',
  greaterThan: '>',
  lessThan: '<',
  greaterThanOrEqual: '>=',
  lessThanOrEqual: '<=',
};

const KINDS = ['decimal', 'whole', 'date'] as const;
const NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)(E[+-]?\d+)?$/i;

function validationOf(tag: Tag, formulas: readonly string[]): ValidationModel | undefined {
  const range = (tag.get('sqref') ?? '').split(' ')[0] ?? '';
  const message = tag.get('prompt') ?? tag.get('error') ?? '';
  const type = tag.get('type');
  const [first = '', second = ''] = formulas;
  if (type === 'list' && first.startsWith('"'))
    return {
      range,
      message,
      kind: 'list',
      items: first
        .slice(1, -1)
        .replaceAll('""', '"')
        .split(',')
        .map((item) => item.trim()),
    };
  const kind = KINDS.find((k) => k === type);
  const isBetween =
    (tag.get('operator') ?? 'between') === 'between' && NUMBER.test(first) && NUMBER.test(second);
  return kind && isBetween ? { range, message, kind, min: Number(first), max: Number(second) } : undefined;
}

function conditionalOf(
  tag: Tag,
  sqref: string,
  formulas: readonly string[],
  styles: FileStyles,
): ConditionalModel | undefined {
  const range = sqref.split(' ')[0] ?? '';
  const style = styles.rules[tag.number('dxfId') ?? -1];
  const [first, second] = formulas;
  if (!style || first === undefined) return undefined;
  if (tag.get('type') === 'expression') return { range, style, formula: fromFile(first) };
  if (tag.get('type') !== 'cellIs') return undefined;
  const cell = range.split(':')[0] ?? '';
  const sign = COMPARISONS[tag.get('operator') ?? ''];
  if (sign) return { range, style, formula: fromFile(`${cell}${sign}${first}`) };
  return second !== undefined && tag.get('operator') === 'between'
    ? { range, style, formula: fromFile(`AND(${cell}>=${first},${cell}<=${second})`) }
    : undefined;
}

export function readRules(xml: string, styles: FileStyles): Rules {
  const validations: ValidationModel[] = [];
  const conditionals: ConditionalModel[] = [];
  const lost = new Set<string>();
  let rule: Tag | undefined;
  let sqref = '';
  let formulas: string[] = [];
  let isFormula = false;
  scan(xml, {
    open: (tag) => {
      if (tag.name === 'conditionalFormatting') sqref = tag.get('sqref') ?? '';
      else if (tag.name === 'dataValidation' || tag.name === 'cfRule') {
        rule = tag;
        formulas = [];
      } else if (rule && (tag.name === 'formula' || tag.name === 'formula1' || tag.name === 'formula2')) {
        isFormula = true;
        formulas.push('');
      }
    },
    text: (text) => {
      if (isFormula) formulas[formulas.length - 1] += text;
    },
    close: (name) => {
      if (name.startsWith('formula')) isFormula = false;
      if (!rule || (name !== 'dataValidation' && name !== 'cfRule')) return;
      if (name === 'dataValidation') {
        const found = validationOf(rule, formulas);
        if (found) validations.push(found);
        else if (rule.get('type') !== undefined) lost.add('Input rules of other kinds');
      } else {
        const found = conditionalOf(rule, sqref, formulas, styles);
        if (found) conditionals.push(found);
        else lost.add('Colouring rules of other kinds');
      }
      rule = undefined;
    },
  });
  return { validations, conditionals, lost: [...lost] };
}
