import about from '../../../../package.json';
import { CATALOGUE } from '../../../../shared/catalogue';
import type { VNode } from '../../../pane/frame/draw';
import { h } from '../../../pane/frame/draw';
import type { Scene } from '../../../pane/frame/parts';
import { facts, section } from '../../../pane/frame/parts';

const LICENCES: readonly (readonly [string, string])[] = [
  ['zod', 'MIT – checks what is typed'],
  ['fflate', 'MIT – packs .xlsx files'],
];

const HOSTS = {
  starting: 'waiting for the workbook',
  ready: 'connected to a workbook',
  old: 'the spreadsheet program is too old',
  absent: 'no workbook',
} as const;

export const aboutView = ({ state }: Scene): readonly VNode[] => [
  h('h2', {}, 'About Spawnbook'),
  h('p', { class: 'lead' }, 'Formulas and plans for small fish hatcheries.'),
  section(
    'Privacy',
    h(
      'p',
      {},
      'Nothing leaves this machine. Spawnbook has no account, sends no numbers anywhere, ' +
        'counts no visits and keeps no copy: what it works out goes into your workbook and ' +
        'nowhere else.',
    ),
    h(
      'p',
      {},
      'Inside Excel the page also loads Microsoft’s own Office library, which is under ' +
        'Microsoft’s privacy terms.',
    ),
  ),
  section(
    'Trust',
    h(
      'p',
      {},
      'Every function names its source and says how far that source can be trusted. ' +
        'Published numbers come from other waters and other fish: measure yours, and let a ' +
        'small trial go first. With hormones, medicines and chemicals a vet, the label and ' +
        'local rules come before anything printed here.',
    ),
  ),
  section(
    'This copy',
    facts([
      ['Version', about.version],
      ['Functions', String(CATALOGUE.length)],
      ['Now', HOSTS[state.host]],
    ]),
  ),
  section(
    'Report a mistake',
    h(
      'p',
      {},
      'Tell whoever gave you this add-in. Send the formula, what it gave, what you ' +
        'expected and from where; leave out what you do not want others to read.',
    ),
  ),
  section('Licences of the parts', facts(LICENCES)),
];
