import { writeFileSync } from 'node:fs';
import { TEMPLATES, buildTemplate } from '.';

/** Writes the template files: npm run templates. */
for (const [name, model] of Object.entries(TEMPLATES)) {
  const bytes = buildTemplate(model());
  writeFileSync(`templates/${name}`, bytes);
  process.stdout.write(`templates/${name}: ${bytes.length.toLocaleString('en')} bytes\n`);
}
