/** Where a logger's file comes from: chunks of text or of bytes, to text. */
import { quoted } from '../units/quoted.js';
import { refuse } from './refuse.js';

type Chunk = string | Uint8Array;

/** A web stream, of which nothing but its reader is used. */
interface ReadableLike {
  getReader(): { read(): Promise<{ readonly done: boolean; readonly value?: Chunk | undefined }>; cancel(): Promise<unknown> };
}

/** A whole text, its bytes, or either in chunks: a web stream (the `body` of a response, the `stream()` of a file), an async iterator such as a stream of Node, an array. */
export type LoggerSource = string | Uint8Array | Iterable<Chunk> | AsyncIterable<Chunk> | ReadableLike;

async function* chunksOf(source: LoggerSource): AsyncGenerator<Chunk> {
  if (typeof source === 'string' || source instanceof Uint8Array) yield source;
  else if (typeof source !== 'object' || source === null) refuse(['source'], 'a text, bytes, a stream or an iterator of chunks', quoted(source));
  else if (Symbol.asyncIterator in source || Symbol.iterator in source) yield* source;
  else if ('getReader' in source) yield* chunksOfStream(source);
  else refuse(['source'], 'a text, bytes, a stream or an iterator of chunks', quoted(source));
}

/** For browsers whose streams are no iterators. */
async function* chunksOfStream(source: ReadableLike): AsyncGenerator<Chunk> {
  const reader = source.getReader();
  try {
    for (;;) {
      const { done, value } = await reader.read();
      if (done) return;
      if (value !== undefined) yield value;
    }
  } finally {
    await reader.cancel();
  }
}

export interface TextSource {
  readonly text: AsyncIterable<string>;
  /** Encoding of the bytes; undefined for text. */
  readonly encoding: () => string | undefined;
}

/** The text of a source. @throws InputError for an encoding that is none and for chunks that are neither text nor bytes */
export function textOf(source: LoggerSource, asked: string | undefined): TextSource {
  const decoder = bytesReader(asked);
  async function* text(): AsyncGenerator<string> {
    for await (const chunk of chunksOf(source)) {
      if (typeof chunk === 'string') yield chunk;
      else if (chunk instanceof Uint8Array) yield decoder.push(chunk);
      else refuse(['source'], 'chunks of text or bytes', quoted(chunk));
    }
    yield decoder.end();
  }
  return { text: text(), encoding: decoder.encoding };
}

/** Bytes that are looked at to find their encoding. */
const headSize = 65_536;

function bytesReader(asked: string | undefined) {
  let decoder: InstanceType<typeof TextDecoder> | undefined = asked === undefined ? undefined : decoderNamed(asked);
  let held = new Uint8Array(0);

  function start(): string {
    const bytes = held;
    held = new Uint8Array(0);
    decoder = new TextDecoder(encodingOf(bytes.subarray(0, headSize)));
    return decoder.decode(bytes, { stream: true });
  }

  return {
    push(chunk: Uint8Array): string {
      if (decoder) return decoder.decode(chunk, { stream: true });
      const longer = new Uint8Array(held.length + chunk.length);
      longer.set(held);
      longer.set(chunk, held.length);
      held = longer;
      return held.length < headSize ? '' : start();
    },
    end: (): string => (held.length > 0 ? start() : '') + (decoder?.decode() ?? ''),
    encoding: (): string | undefined => decoder?.encoding,
  };
}

function encodingOf(head: Uint8Array): string {
  if (head[0] === 0xff && head[1] === 0xfe) return 'utf-16le';
  if (head[0] === 0xfe && head[1] === 0xff) return 'utf-16be';
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(head, { stream: true });
    return 'utf-8';
  } catch {
    return 'windows-1252';
  }
}

function decoderNamed(encoding: string): InstanceType<typeof TextDecoder> {
  try {
    return new TextDecoder(encoding);
  } catch {
    return refuse(['encoding'], "the name of an encoding, as 'utf-8'", quoted(encoding));
  }
}
