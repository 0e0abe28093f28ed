import { mkdirSync, writeFileSync } from 'node:fs';
import { chromium } from 'playwright-core';
import { ICON_SIZES, iconFile, iconSvg } from './iconDrawing';

// `npm run icons`: draws the icons once; the pictures are kept in the repository, so building needs no
// browser.
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: [
    '--no-sandbox',
    '--disable-gpu',
    '--disable-quic',
    '--no-first-run',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
  ],
});
try {
  mkdirSync('taskpane/assets', { recursive: true });
  for (const size of ICON_SIZES) {
    const page = await browser.newPage({ viewport: { width: size, height: size } });
    await page.setContent(
      `<style>body{margin:0;background:transparent}svg{display:block}</style>${iconSvg(size)}`,
    );
    writeFileSync(iconFile(size), await page.screenshot({ omitBackground: true }));
    await page.close();
    console.log(`wrote ${iconFile(size)}`);
  }
} finally {
  await browser.close();
}
