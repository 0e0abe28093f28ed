import type { ConditionalModel, ValidationModel } from '../../sheet/workbook/model';
import { fromFile } from '../formulas';
import type { Tag } from '../package/events';
import type { FileStyles } from './styles';

/** Input rules and colouring rules of a worksheet; what the model has no word for is named in `lost`. */
export interface Rules {
  readonly validations: readonly ValidationModel[];
  readonly conditionals: readonly ConditionalModel[];
  readonly lost: readonly string[];
}

const COMPARISONS = new Map([
  ['equal', '='],
  ['notEqual', '<>'],
  ['greaterThan', '>'],
  ['lessThan', '<'],
  ['greaterThanOrEqual', '>='],
  ['lessThanOrEqual', '<='],
]);

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
  const sign = COMPARISONS.get(tag.get('operator') ?? '');
  if (sign) return { range, style, formula: fromFile(`${cell}${sign}${first}`) };
  return second !== undefined && tag.get('operator') === 'between'
    ? { range, style, formula: fromFile(`AND(${cell}>=${first},${cell}<=${second})`) }
    : undefined;
}

/** Takes the tags of a sheet as they come. */
export class RulesReader {
  private readonly validations: ValidationModel[] = [];
  private readonly conditionals: ConditionalModel[] = [];
  private readonly lost = new Set<string>();
  private rule: Tag | undefined;
  private sqref = '';
  private formulas: string[] = [];
  private isFormula = false;

  constructor(private readonly styles: FileStyles) {}

  open(tag: Tag): void {
    if (tag.name === 'conditionalFormatting') this.sqref = tag.get('sqref') ?? '';
    else if (tag.name === 'dataValidation' || tag.name === 'cfRule') {
      this.rule = tag;
      this.formulas = [];
    } else if (this.rule && /^formula[12]?$/.test(tag.name)) {
      this.isFormula = true;
      this.formulas.push('');
    }
  }

  text(text: string): void {
    if (this.isFormula) this.formulas[this.formulas.length - 1] += text;
  }

  close(name: string): void {
    if (name.startsWith('formula')) this.isFormula = false;
    const { rule } = this;
    if (!rule || (name !== 'dataValidation' && name !== 'cfRule')) return;
    this.rule = undefined;
    if (name === 'dataValidation') {
      const found = validationOf(rule, this.formulas);
      if (found) this.validations.push(found);
      else if (rule.get('type') !== undefined) this.lost.add('Input rules of other kinds');
    } else {
      const found = conditionalOf(rule, this.sqref, this.formulas, this.styles);
      if (found) this.conditionals.push(found);
      else this.lost.add('Colouring rules of other kinds');
    }
  }

  get rules(): Rules {
    const { validations, conditionals } = this;
    return { validations, conditionals, lost: [...this.lost] };
  }
}
