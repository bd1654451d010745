/** What the compiler says of code that stands in no file. */
import ts from 'typescript';

/** Errors of the given files, whose texts are taken from here rather than from the disk. */
export function typeErrors(texts: ReadonlyMap<string, string>, options: ts.CompilerOptions): { readonly path: string; readonly message: string }[] {
  const real = ts.createCompilerHost(options);
  const program = ts.createProgram([...texts.keys()], options, {
    ...real,
    fileExists: (path) => texts.has(path) || real.fileExists(path),
    readFile: (path) => texts.get(path) ?? real.readFile(path),
    getSourceFile: (path, target) => (texts.has(path) ? ts.createSourceFile(path, texts.get(path)!, target, true) : real.getSourceFile(path, target)),
  });
  return ts.getPreEmitDiagnostics(program).map(({ file, messageText }) => ({
    path: file?.fileName ?? '',
    message: ts.flattenDiagnosticMessageText(messageText, '\n'),
  }));
}
