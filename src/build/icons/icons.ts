import { mkdirSync, writeFileSync } from 'node:fs';
import { chromium } from 'playwright-core';
import { CHROMIUM, CHROMIUM_ARGS } from '../chromium';
import { APP_ICON_SIZES, appIconFile, ICON_SIZES, iconFile, iconSvg } from './iconDrawing';

// `npm run icons`: draws the icons once; the pictures are kept in the repository, so building needs no
// browser.
const browser = await chromium.launch({
  executablePath: CHROMIUM,
  args: CHROMIUM_ARGS,
});
try {
  mkdirSync('taskpane/assets', { recursive: true });
  mkdirSync('src/localsheet/site/assets', { recursive: true });
  const files = [
    ...ICON_SIZES.map((size) => ({ size, file: iconFile(size) })),
    ...APP_ICON_SIZES.map((size) => ({ size, file: appIconFile(size) })),
  ];
  for (const { size, file } of files) {
    const page = await browser.newPage({ viewport: { width: size, height: size } });
    await page.setContent(
      `<style>body{margin:0;background:transparent}svg{display:block}</style>${iconSvg(size)}`,
    );
    writeFileSync(file, await page.screenshot({ omitBackground: true }));
    await page.close();
    console.log(`wrote ${file}`);
  }
} finally {
  await browser.close();
}
