/** Reading of loggers’ files. Needs the package papaparse beside this one: `npm install papaparse`. */
export { loggerBlocks, readLogger, readLoggerText, type ColumnsRead, type LoggerBlock, type LoggerBlocks, type LoggerReading } from './read-logger.js';
export type { KnownColumn } from './known-columns.js';
export type { ColumnName, ColumnRequest, ColumnRequests, LoggerOptions, TimeRequest } from './options.js';
export type { LoggerProblem, ProblemKind } from './problems.js';
export type { LoggerReport, TakenColumn, TakenTime } from './report.js';
export type { LoggerSource } from './source.js';
export type { TimeFormat } from './time-format.js';
