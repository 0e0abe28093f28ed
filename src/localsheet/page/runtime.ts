import type { Engine } from '../univer/engine';
import type { FunctionsMetadata } from '../univer/functions';
import { registerFunctions } from '../univer/functions';
import type { PaneSide } from './bridge';
import { bridgeOf } from './bridge';
import { element } from './elements';

/** The prefix of every function, as the manifest gives it to Excel. */
const NAMESPACE = 'SPAWN';
const PATIENCE = 15_000;

const loadList = async (): Promise<FunctionsMetadata> => {
  const response = await fetch('/functions.json');
  if (!response.ok) throw new Error('The list of functions (functions.json) is missing. Run: npm run build');
  return (await response.json()) as FunctionsMetadata;
};

/** Functions live in the pane's page, as in Excel's shared runtime; the sheet calls them there. */
export class Runtime {
  private readonly list = loadList();
  private pane: PaneSide | undefined;
  private known: readonly string[] = [];
  private isStarted = false;
  /** Resolves when the pane's page has loaded its functions. */
  readonly connected: Promise<void>;

  /** `onLate` lays the open workbook out again: the engine remembers formulas it once could not read. */
  constructor(
    private readonly engine: Engine,
    private readonly onLate: () => Promise<void>,
  ) {
    this.connected = new Promise((resolve, reject) => {
      const late = setTimeout(() => {
        reject(new Error('The functions did not load. Reload the page; if it stays so, run: npm run build'));
      }, PATIENCE);
      // Also called after a reload of the pane, which brings new functions.
      const connect = (pane: PaneSide): void => {
        this.pane = pane;
        clearTimeout(late);
        if (this.isStarted) void this.arriveLate();
        resolve();
      };
      bridgeOf(window).connect = connect;
      const waiting = element('pane-frame', HTMLIFrameElement).contentWindow?.spawnbookPane;
      if (waiting) connect(waiting);
    });
  }

  /** Binds the functions; the engine takes them only once a workbook is open. */
  async register(): Promise<void> {
    this.isStarted = true;
    const metadata = await this.list;
    if (this.pane)
      this.known = registerFunctions(this.engine.injector, { namespace: NAMESPACE, metadata, ...this.pane });
  }

  private async arriveLate(): Promise<void> {
    const isFirst = this.known.length === 0;
    await this.register();
    if (isFirst) await this.onLate();
  }

  /** Sheet names of the bound functions. */
  names(): readonly string[] {
    return this.known;
  }
}
