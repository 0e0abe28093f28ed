// What a screen asks for when it learns from records: the rates, and the sheets they are written to.
export * from '../../learn';
export { rateName, ratesWorkbook, restsOn } from './ratesSheet';
export { trendVerdict, trendsWorkbook } from './trendsSheet';
