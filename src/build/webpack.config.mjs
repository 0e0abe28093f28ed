// The add-in as Excel loads it: functions.js and functions.json, the pane page with both bundles, icons,
// manifest. Output: dist/.
import { existsSync, mkdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import CopyPlugin from 'copy-webpack-plugin';
import { build } from 'esbuild';
import HtmlPlugin from 'html-webpack-plugin';
import webpack from 'webpack';
import { noticesText } from './bundle/notices.mjs';
import { RECORD_FILES } from './bundle/slimRecords.mjs';

const root = resolve(dirname(fileURLToPath(import.meta.url)), '../..');
/** Asked for by its place, as a loader. */
const SLIM_RECORDS = resolve(root, 'src/build/bundle/slimRecords.mjs');
const TARGET = 'es2020';
const PORT = 3000;
const CERTIFICATE_DAYS = 29;

/** Emits what is derived from the catalogue that functions.js registers: functions.json and the help pages. */
class DerivedAssetsPlugin {
  apply(compiler) {
    const { Compilation, sources } = webpack;
    compiler.hooks.thisCompilation.tap('DerivedAssets', (compilation) => {
      const stage = Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL;
      compilation.hooks.processAssets.tapPromise({ name: 'DerivedAssets', stage }, async () => {
        for (const { name, text } of await derivedAssets())
          compilation.emitAsset(name, new sources.RawSource(text));
      });
    });
  }
}

/** NOTICES.txt: whose code the bundles hold, and under what licence. */
class NoticesPlugin {
  apply(compiler) {
    const { Compilation, sources } = webpack;
    compiler.hooks.thisCompilation.tap('Notices', (compilation) => {
      const stage = Compilation.PROCESS_ASSETS_STAGE_REPORT;
      compilation.hooks.processAssets.tap({ name: 'Notices', stage }, () => {
        const files = [...compilation.modules]
          .flatMap((module) => [module, ...(module.modules ?? [])])
          .map((module) => module.resource)
          .filter(Boolean);
        compilation.emitAsset('NOTICES.txt', new sources.RawSource(noticesText(files, root)));
      });
    });
  }
}

async function derivedAssets() {
  const code =
    "import { derivedAssets } from './src/build/derivedAssets'; " +
    `export default derivedAssets('https://localhost:${PORT}');`;
  const { outputFiles } = await build({
    absWorkingDir: root,
    stdin: { contents: code, resolveDir: root, loader: 'ts' },
    bundle: true,
    platform: 'node',
    format: 'esm',
    write: false,
    logLevel: 'error',
    // Everything into one text, because it is imported from there.
    packages: 'bundle',
  });
  const module = await import(
    `data:text/javascript;base64,${Buffer.from(outputFiles[0].contents).toString('base64')}`
  );
  return module.default;
}

/**
 * A certificate for localhost, made on first use, only when serving. On Windows and Mac it is also put among
 * the trusted ones (the system asks); elsewhere, for Excel on the web, the browser asks once.
 */
async function certificate() {
  const { default: certificates } = await import('office-addin-dev-certs');
  if (process.platform === 'win32' || process.platform === 'darwin')
    return certificates.getHttpsServerOptions();
  const folder = resolve(root, '.cache/certificates');
  const file = (name) => resolve(folder, name);
  const isFresh =
    existsSync(file('localhost.crt')) &&
    Date.now() - statSync(file('localhost.crt')).mtimeMs < CERTIFICATE_DAYS * 86_400_000;
  if (!isFresh) {
    mkdirSync(folder, { recursive: true });
    await certificates.generateCertificates(
      file('ca.crt'),
      file('localhost.crt'),
      file('localhost.key'),
      CERTIFICATE_DAYS + 1,
    );
  }
  return {
    ca: readFileSync(file('ca.crt')),
    cert: readFileSync(file('localhost.crt')),
    key: readFileSync(file('localhost.key')),
  };
}

const devServer = async () => ({
  host: 'localhost',
  port: PORT,
  hot: false,
  liveReload: false,
  client: false,
  static: false,
  headers: { 'Access-Control-Allow-Origin': '*' },
  server: { type: 'https', options: await certificate() },
});

export default async (_env, argv) => ({
  context: root,
  // What did not change is not minified again; a change of the build itself makes all of it anew.
  cache: {
    type: 'filesystem',
    cacheDirectory: resolve(root, '.cache/webpack'),
    buildDependencies: {
      config: [fileURLToPath(import.meta.url), SLIM_RECORDS, resolve(root, 'src/build/bundle/notices.mjs')],
    },
  },
  entry: {
    functions: { import: './src/shell/functions.ts', layer: 'calculation' },
    taskpane: './taskpane/pane/main.ts',
  },
  experiments: { layers: true },
  output: { path: resolve(root, 'dist'), filename: '[name].js', clean: true },
  devtool: argv.mode === 'production' ? false : 'source-map',
  resolve: { extensions: ['.ts', '.js'] },
  module: {
    rules: [
      { test: /\.ts$/, loader: 'esbuild-loader', options: { target: TARGET } },
      // Runs before the line above.
      {
        test: RECORD_FILES,
        issuerLayer: 'calculation',
        enforce: 'pre',
        loader: SLIM_RECORDS,
      },
    ],
  },
  performance: false,
  stats: 'errors-warnings',
  plugins: [
    new DerivedAssetsPlugin(),
    new NoticesPlugin(),
    // One page is pane and runtime: it must load the functions itself. They register before the pane draws.
    new HtmlPlugin({
      template: 'taskpane/taskpane.html',
      filename: 'taskpane.html',
      chunks: ['functions', 'taskpane'],
      chunksSortMode: 'manual',
      scriptLoading: 'defer',
    }),
    new CopyPlugin({
      patterns: [
        { from: 'taskpane/styles.css', to: 'styles.css' },
        { from: 'taskpane/help/help.css', to: 'help/help.css' },
        { from: 'taskpane/help/pictures', to: 'help/pictures', noErrorOnMissing: true },
        { from: 'taskpane/assets', to: 'assets', noErrorOnMissing: true },
        { from: 'manifest.xml', to: 'manifest.xml', noErrorOnMissing: true },
      ],
    }),
  ],
  ...(process.env.WEBPACK_SERVE ? { devServer: await devServer() } : {}),
});
