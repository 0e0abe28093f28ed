import { find } from '../../taskpane/help/finding/finder';

/** Which function answers a question: npm run find -- "when will they hatch" */

const USAGE = `Finds the function that answers a question, in the words of the farm.
  npm run find -- "when will they hatch"
  npm run find -- "combien de femelles" --json
`;

const args = process.argv.slice(2);
const isJson = args.includes('--json');
const question = args
  .filter((arg) => !arg.startsWith('--'))
  .join(' ')
  .trim();

if (question === '') {
  process.stdout.write(USAGE);
  process.exitCode = args.includes('--help') ? 0 : 2;
} else {
  const { functions, intent, fits } = find(question);
  if (isJson)
    process.stdout.write(
      `${JSON.stringify({ question, fits, intent: intent?.key ?? null, functions: functions.map(({ name, summary }) => ({ name, summary })) })}\n`,
    );
  else {
    if (intent) process.stdout.write(`(${intent.key})\n`);
    if (!fits) process.stdout.write('Nothing fits well; nearest:\n');
    for (const { name, summary } of functions) process.stdout.write(`${name.padEnd(30)} ${summary}\n`);
  }
}
