import type { Mode, UnitSystem } from '../core/index.js';
import type { MessageCode, MessageParams } from './params.js';
import type { Message } from './terms.js';
import { type CatalogueOf, inUnitsOf, type Words, type Writer } from './writer.js';

/** Every sentence of a language. */
export type Catalogue = CatalogueOf<MessageParams>;

/** A language: its sentences and how it writes what stands in them. */
export interface Language {
  catalogue: Catalogue;
  write: Writer;
}

/** Puts a language together, so that a sentence can hold another one. */
export function language(words: Words, catalogue: Catalogue): Language {
  const made: Language = {
    catalogue,
    write: { ...words, say: (inner) => say(inner, made) },
  };
  return made;
}

/** The same language with its quantities in another system of units. */
export function withUnits({ catalogue, write }: Language, system: UnitSystem): Language {
  return language({ ...write, inUnits: inUnitsOf(write.short, system) }, catalogue);
}

/** The same language with other names for the modes. */
export function withTerms(
  { catalogue, write }: Language,
  names: Readonly<Record<Mode, string>>,
): Language {
  return language({ ...write, mode: (mode) => names[mode] }, catalogue);
}

/** A sentence in a language. */
export function say({ code, params }: Message, { catalogue, write }: Language): string {
  const sentence = catalogue[code as MessageCode] as (
    params: Message['params'],
    write: Writer,
  ) => string;
  return sentence(params, write);
}

/**
 * A sentence of a document in a language; null where the document holds no params (version 1.0), a code
 * that this version does not know, or params that do not go with it. Its English text then has to do.
 */
export function retell(
  entry: { code?: string | undefined; params?: Record<string, unknown> | undefined },
  into: Language,
): string | null {
  const { code, params } = entry;
  if (code === undefined || params === undefined || !Object.hasOwn(into.catalogue, code))
    return null;
  try {
    return say({ code, params }, into);
  } catch {
    return null;
  }
}
