/** The same random cases in every run, unless SEED says otherwise: a failure here is a failure everywhere. */
import fc from 'fast-check';

fc.configureGlobal({ seed: Number(process.env['SEED'] ?? 1) });
