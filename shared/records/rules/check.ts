import { SOURCES } from '../../families/sources';
import { FIELDS } from '../fields';
import type { Rule } from './rule';

/** What every rule must have before anything is derived from it. Returns sentences, none when all is well. */

const ID = /^[A-Z][A-Z]*(\.[A-Z]+)+$/;

const textFaults = (rule: Rule): string[] => [
  ...(ID.test(rule.id) ? [] : [`${rule.id}: an id is upper-case words joined by dots`]),
  ...(rule.title.length < 5 || rule.title.endsWith('.')
    ? [`${rule.id}: the title is a few words without a full stop`]
    : []),
  ...[rule.checks, rule.why]
    .filter((text) => text.length < 15 || !text.endsWith('.'))
    .map(() => `${rule.id}: says what it checks and why in whole sentences`),
];

const keyFaults = (rule: Rule): string[] => [
  ...(rule.sources.length === 0 ? [`${rule.id}: no source; common practice is PRACTICE`] : []),
  ...rule.sources.filter((key) => !(key in SOURCES)).map((key) => `${rule.id}: unknown source ${key}`),
  ...(rule.needs.length === 0 ? [`${rule.id}: does not say what it needs`] : []),
  ...rule.needs
    .flat()
    .filter((name) => !(name in FIELDS))
    .map((name) => `${rule.id}: needs ${name}, which is no field`),
];

const exampleFaults = (rule: Rule): string[] => {
  const fires = rule.examples.filter(({ says }) => says !== undefined).length;
  return [
    ...(fires > 0 ? [] : [`${rule.id}: no example that fires`]),
    ...(fires < rule.examples.length ? [] : [`${rule.id}: no example that stays silent`]),
    ...rule.examples
      .filter(({ because }) => because.length < 6)
      .map(() => `${rule.id}: an example does not say why`),
  ];
};

const repeated = (rules: readonly Rule[]): string[] => {
  const seen = new Set<string>();
  return rules.flatMap(({ id }) =>
    seen.size === seen.add(id).size ? [`${id}: two rules of that name`] : [],
  );
};

export const checkRules = (rules: readonly Rule[]): string[] => [
  ...rules.flatMap((rule) => [...textFaults(rule), ...keyFaults(rule), ...exampleFaults(rule)]),
  ...repeated(rules),
];
