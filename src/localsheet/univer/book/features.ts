// Long: one feature of the embedded engine's book after the other.
import { serialOfDay } from '../../../../shared/units/dates';
import type { IStyleBase, ISheetDataValidationRule } from '@univerjs/core';
import {
  DataValidationErrorStyle,
  DataValidationOperator,
  DataValidationRenderMode,
  DataValidationType,
  generateRandomId,
} from '@univerjs/core';
import { IDefinedNamesService } from '@univerjs/engine-formula';
import { SCOPE_WORKBOOK_VALUE_DEFINED_NAME } from '@univerjs/sheets';
import {
  CFRuleType,
  CFSubRuleType,
  ConditionalFormattingRuleModel,
} from '@univerjs/sheets-conditional-formatting';
import {
  AddSheetDataValidationCommand,
  ClearRangeDataValidationCommand,
  SheetDataValidationModel,
} from '@univerjs/sheets-data-validation';
import type { StandInBook, ConditionalState, NameState, ValidationState } from '../../../officeStandIn/book';
import type { Context } from './context';
import { toArea, toRange } from './context';
import { overlaps } from '../../../officeStandIn/address';
import { hex } from './formats';
import { given } from '../../files/optional';

/** Names, input rules, colouring rules and notes. */
export type FeaturePart = Pick<
  StandInBook,
  | 'names'
  | 'putName'
  | 'deleteName'
  | 'validation'
  | 'setValidation'
  | 'conditionals'
  | 'putConditional'
  | 'deleteConditional'
  | 'note'
  | 'setNote'
>;

const OPERATORS: Readonly<Record<string, DataValidationOperator>> = {
  Between: DataValidationOperator.BETWEEN,
  NotBetween: DataValidationOperator.NOT_BETWEEN,
  EqualTo: DataValidationOperator.EQUAL,
  NotEqualTo: DataValidationOperator.NOT_EQUAL,
  GreaterThan: DataValidationOperator.GREATER_THAN,
  LessThan: DataValidationOperator.LESS_THAN,
  GreaterThanOrEqualTo: DataValidationOperator.GREATER_THAN_OR_EQUAL,
  LessThanOrEqualTo: DataValidationOperator.LESS_THAN_OR_EQUAL,
};
type BoundKind = Extract<ValidationState['rule'], { operator: string }>['kind'];
const KINDS: Readonly<Record<BoundKind, DataValidationType>> = {
  decimal: DataValidationType.DECIMAL,
  whole: DataValidationType.WHOLE,
  date: DataValidationType.DATE,
  time: DataValidationType.TIME,
  textLength: DataValidationType.TEXT_LENGTH,
};
const ALERTS = {
  Stop: DataValidationErrorStyle.STOP,
  Warning: DataValidationErrorStyle.WARNING,
  Information: DataValidationErrorStyle.INFO,
} as const;

const bound = (value: string | number | undefined): string | undefined =>
  value === undefined ? undefined : String(value);

/** An input rule in the engine's own form, without its cells. */
export function ruleOf(state: ValidationState, id: string): ISheetDataValidationRule {
  const { rule } = state;
  const base: ISheetDataValidationRule = {
    uid: id,
    type: DataValidationType.CUSTOM,
    ranges: [],
    allowBlank: state.ignoreBlanks,
    errorStyle: ALERTS[state.error?.style ?? 'Stop'],
    showErrorMessage: state.error?.show ?? true,
    ...(state.error ? { error: state.error.message } : {}),
    ...(state.prompt ? { prompt: state.prompt.message, showInputMessage: state.prompt.show } : {}),
  };
  if (rule.kind === 'list')
    return {
      ...base,
      type: DataValidationType.LIST,
      formula1: rule.source,
      showDropDown: rule.dropDown,
      renderMode: DataValidationRenderMode.ARROW,
    };
  if (rule.kind === 'custom') return { ...base, formula1: rule.formula };
  const second = bound(rule.formula2);
  return {
    ...base,
    type: KINDS[rule.kind],
    operator: OPERATORS[rule.operator] ?? DataValidationOperator.BETWEEN,
    formula1: String(rule.formula1),
    ...(second === undefined ? {} : { formula2: second }),
  };
}

const reverse = <K extends string, V>(map: Readonly<Record<K, V>>, value: V): K | undefined =>
  (Object.keys(map) as K[]).find((key) => map[key] === value);
const plain = (text: string | undefined): string | number =>
  text !== undefined && text.trim() !== '' && Number.isFinite(Number(text)) ? Number(text) : (text ?? '');

type Messages = Pick<ValidationState, 'ignoreBlanks' | 'error' | 'prompt'>;
function messagesOf(rule: ISheetDataValidationRule): Messages {
  const {
    error,
    prompt,
    errorStyle = DataValidationErrorStyle.STOP,
    showErrorMessage = true,
    showInputMessage = true,
    allowBlank = true,
  } = rule;
  return {
    ignoreBlanks: allowBlank,
    ...(error
      ? {
          error: {
            title: '',
            message: error,
            style: reverse(ALERTS, errorStyle) ?? ('Stop' as const),
            show: showErrorMessage,
          },
        }
      : {}),
    ...(prompt ? { prompt: { title: '', message: prompt, show: showInputMessage } } : {}),
  };
}

/** The engine keeps the bounds of a date rule as written dates. */
const bounded = (type: string, text: string): string | number => {
  const [, year, month, day] =
    (type === DataValidationType.DATE && /^(\d{4})[-/](\d{1,2})[-/](\d{1,2})$/.exec(text.trim())) || [];
  return year && month && day ? serialOfDay(Number(year), Number(month), Number(day)) : plain(text);
};

function stateOfRule(rule: ISheetDataValidationRule): ValidationState | undefined {
  const messages = messagesOf(rule);
  const { type, formula1 = '', formula2, operator = DataValidationOperator.BETWEEN } = rule;
  if (type === DataValidationType.LIST)
    return { rule: { kind: 'list', source: formula1, dropDown: rule.showDropDown ?? true }, ...messages };
  if (type === DataValidationType.CUSTOM) return { rule: { kind: 'custom', formula: formula1 }, ...messages };
  const kind = reverse(KINDS, type as DataValidationType);
  if (!kind) return undefined;
  return {
    rule: {
      kind,
      operator: reverse(OPERATORS, operator) ?? 'Between',
      formula1: bounded(type, formula1),
      ...(formula2 === undefined ? {} : { formula2: bounded(type, formula2) }),
    },
    ...messages,
  };
}

const isWorkbookScope = (scope: string | undefined): boolean =>
  scope === undefined || scope === SCOPE_WORKBOOK_VALUE_DEFINED_NAME;

const ONE_AREA = /^=\s*('([^']|'')+'|[\w.]+)!\$?[A-Z]{1,3}\$?\d+(:\$?[A-Z]{1,3}\$?\d+)?$/i;
/** What a name means, as the engine keeps it: plain ranges without the sign in front. */
export const refersTo = (formula: string): string => (ONE_AREA.test(formula) ? formula.slice(1) : formula);

/** Names are kept as Excel shows them, with the sign in front; the engine keeps plain ranges without. */
const namePart = (context: Context): Pick<FeaturePart, 'names' | 'putName' | 'deleteName'> => {
  const service = (): IDefinedNamesService => context.engine.injector.get(IDefinedNamesService);
  const all = (): ReturnType<typeof context.book.getDefinedNames> => context.book.getDefinedNames();
  const find = (name: string, scope: string | undefined) =>
    all().find(
      (n) =>
        n.getName().toLowerCase() === name.toLowerCase() &&
        (isWorkbookScope(scope) ? n.isWorkbookScope() : n.getLocalSheetId() === scope),
    );
  return {
    names: () =>
      all().map((n): NameState => {
        const formula = n.getFormulaOrRefString();
        const scope = n.getLocalSheetId();
        return {
          name: n.getName(),
          formula: formula.startsWith('=') ? formula : `=${formula}`,
          comment: n.getComment() ?? '',
          ...(scope !== undefined && !isWorkbookScope(scope) ? { scope } : {}),
        };
      }),
    putName({ name, formula, comment, scope }) {
      const text = refersTo(formula);
      const old = find(name, scope);
      const id = old
        ? Object.values(service().getDefinedNameMap(context.unitId) ?? {}).find(
            (d) => d.name === old.getName(),
          )?.id
        : undefined;
      const param = {
        unitId: context.unitId,
        id: id ?? generateRandomId(10),
        name,
        formulaOrRefString: text,
        comment,
        localSheetId: scope ?? SCOPE_WORKBOOK_VALUE_DEFINED_NAME,
      };
      if (old) context.book.updateDefinedNameBuilder(param);
      else context.book.insertDefinedNameBuilder(param);
    },
    deleteName(name, scope) {
      find(name, scope)?.delete();
    },
  };
};

/** A colouring rule in the engine's own form. */
export const colouringRule = ({ id, area, formula, fill, color }: ConditionalState) => {
  const style: IStyleBase = {
    ...(fill ? { bg: { rgb: fill } } : {}),
    ...(color ? { cl: { rgb: color } } : {}),
  };
  return {
    cfId: id,
    ranges: [toRange(area)],
    stopIfTrue: false,
    rule: {
      type: CFRuleType.highlightCell as const,
      subType: CFSubRuleType.formula as const,
      value: formula.startsWith('=') ? formula : `=${formula}`,
      style,
    },
  };
};

const conditionalPart = (
  context: Context,
): Pick<FeaturePart, 'conditionals' | 'putConditional' | 'deleteConditional'> => {
  const model = (): ConditionalFormattingRuleModel =>
    context.engine.injector.get(ConditionalFormattingRuleModel);
  return {
    conditionals(sheet) {
      return (model().getSubunitRules(context.unitId, sheet) ?? []).flatMap((r): ConditionalState[] => {
        const [range] = r.ranges;
        if (!range || r.rule.type !== CFRuleType.highlightCell || r.rule.subType !== CFSubRuleType.formula)
          return [];
        const { style } = r.rule;
        const fill = hex(style.bg?.rgb);
        const color = hex(style.cl?.rgb);
        return [
          {
            id: r.cfId,
            area: toArea(range),
            formula: r.rule.value,
            ...(fill ? { fill } : {}),
            ...(color ? { color } : {}),
          },
        ];
      });
    },
    putConditional(sheet, { id, area, formula, fill, color }) {
      if (model().getRule(context.unitId, sheet, id))
        context.facade(sheet).deleteConditionalFormattingRule(id);
      context.ensure(sheet, area);
      context.facade(sheet).addConditionalFormattingRule(
        colouringRule({
          id,
          area: context.clip(sheet, area),
          formula,
          ...given('fill', fill),
          ...given('color', color),
        }),
      );
    },
    deleteConditional(sheet, id) {
      context.facade(sheet).deleteConditionalFormattingRule(id);
    },
  };
};

/** A note in the engine's own form, tall enough for its text. */
export const noteOf = (row: number, column: number, text: string) => ({
  id: generateRandomId(6),
  row,
  col: column,
  note: text,
  width: 240,
  height: Math.min(260, 34 + (Math.ceil(text.length / 32) + text.split('\n').length) * 18),
  show: false,
});

export function featurePart(context: Context): FeaturePart {
  return {
    ...namePart(context),
    ...conditionalPart(context),
    validation(sheet, area) {
      const rules = context.engine.injector.get(SheetDataValidationModel).getRules(context.unitId, sheet);
      const rule = rules.find((r) =>
        r.ranges.some((range) => overlaps(toArea(range), { ...area, rows: 1, columns: 1 })),
      );
      return rule && stateOfRule(rule);
    },
    setValidation(sheet, area, state) {
      context.ensure(sheet, area);
      const ranges = [toRange(context.clip(sheet, area))];
      const at = { unitId: context.unitId, subUnitId: sheet };
      const rules = context.engine.injector.get(SheetDataValidationModel).getRules(context.unitId, sheet);
      if (rules.some((r) => r.ranges.some((range) => overlaps(toArea(range), area))))
        context.run(ClearRangeDataValidationCommand.id, { ...at, ranges });
      if (state)
        context.run(AddSheetDataValidationCommand.id, {
          ...at,
          rule: { ...ruleOf(state, generateRandomId(8)), ranges },
        });
    },
    note: (sheet, row, column) => context.facade(sheet).getRange(row, column).getNote()?.note ?? '',
    setNote(sheet, row, column, text) {
      const range = context.facade(sheet).getRange(row, column);
      if (text === '') {
        if (range.getNote()) range.deleteNote();
        return;
      }
      range.createOrUpdateNote(noteOf(row, column, text));
    },
  };
}
