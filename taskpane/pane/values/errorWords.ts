import { figuresApart } from '../../../shared/units/phrases';
import { withFigures } from '../phrases';
import { labelOf } from './show';

/**
 * The sentence of an error as the pane says it: the argument it begins with by the label that stands on its field,
 * then what is wrong with it. Cells keep the name as formulas write it.
 */
export function errorWords(said: string): readonly string[] {
  const sentence = figuresApart(said);
  const [, name, place, rest] = /^([a-z]\w*)(, .+?)?: (.+)$/s.exec(sentence) ?? [];
  if (name !== undefined && rest !== undefined)
    return [`${labelOf(name)}${place ?? ''}: `, withFigures(rest)];
  const [, lead, open] = /^([a-z]\w*)( (?:is missing|has ).+)$/s.exec(sentence) ?? [];
  return [withFigures(lead !== undefined && open !== undefined ? `${labelOf(lead)}${open}` : sentence)];
}
