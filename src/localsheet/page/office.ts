import type { Associated } from '../univer/functions';

/**
 * The stand-in for Excel's own script, in the pane's page. This part gives what functions use; the object model follows when the
 * page asks for it.
 */
class FunctionError extends Error {
  constructor(readonly code: string, message = '') { super(message); }
}

const associated = new Map<string, Associated>();
const ErrorCode = {
  divisionByZero: '#DIV/0!', invalidName: '#NAME?', invalidNumber: '#NUM!', invalidReference: '#REF!', invalidValue: '#VALUE!', notAvailable: '#N/A', nullReference: '#NULL!',
} as const;

Object.assign(window, {
  CustomFunctions: { associate: (id: string, body: Associated) => { associated.set(id, body); }, Error: FunctionError, ErrorCode },
  Office: { onReady: (done?: (info: object) => void) => { const info = { host: 'Excel', platform: 'OfficeOnline' }; done?.(info); return Promise.resolve(info); } },
});

window.addEventListener('load', () => {
  window.spawnbookPane = { associated, makeError: (code) => new FunctionError(code) };
  window.parent.spawnbookBridge?.connect(window.spawnbookPane);
});
