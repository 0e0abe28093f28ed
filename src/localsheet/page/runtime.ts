import { CustomFunctionError, customFunctions } from '../../officeStandIn/client/customFunctions';
import type { Engine } from '../univer/engine';
import type { Associated, FunctionsMetadata } from '../univer/functions';
import { registerFunctions } from '../univer/functions';

/** The prefix of every function, as the manifest gives it to Excel. */
const NAMESPACE = 'SPAWN';

const loadList = async (): Promise<FunctionsMetadata> => {
  const response = await fetch('functions.json');
  if (!response.ok) throw new Error('The list of functions (functions.json) is missing. Run: npm run build');
  return (await response.json()) as FunctionsMetadata;
};

const loadScript = (address: string): Promise<void> =>
  new Promise((resolve, reject) => {
    const script = document.createElement('script');
    script.src = address;
    script.onload = () => {
      resolve();
    };
    script.onerror = () => {
      reject(new Error('The functions did not load. Reload the page; if it stays so, run: npm run build'));
    };
    document.head.append(script);
  });

/** The functions, from the same bundle that Excel loads; here they run in the page of the sheet. */
export class Runtime {
  private readonly associated = new Map<string, Associated>();
  private readonly later: (() => Promise<void>)[] = [];
  private known: readonly string[] = [];
  private loading: Promise<FunctionsMetadata> | undefined;

  constructor(private readonly engine: Engine) {
    Object.assign(window, { CustomFunctions: customFunctions(this.associated, this.later) });
  }

  /** The functions and their list; fetched when they are asked for first, after the sheet is drawn. */
  load(): Promise<FunctionsMetadata> {
    return (this.loading ??= this.fetchAll());
  }

  private async fetchAll(): Promise<FunctionsMetadata> {
    const [list] = await Promise.all([loadList(), loadScript('functions.js')]);
    await Promise.all(this.later.map((fetchAll) => fetchAll()));
    return list;
  }

  /** Binds the functions; the engine takes them only once a workbook is open. */
  async register(): Promise<void> {
    const metadata = await this.load();
    this.known = registerFunctions(this.engine.injector, {
      namespace: NAMESPACE,
      metadata,
      associated: this.associated,
      makeError: (code) => new CustomFunctionError(code),
    });
  }

  /** Sheet names of the bound functions. */
  names(): readonly string[] {
    return this.known;
  }
}
