import type { LimitRow, WeldRecord } from '../../../record/index.js';

type Outcome = LimitRow['outcome'];

/** What a record says around the sentences of the library. */
export interface RecordWords {
  title: string;
  outcomes: Readonly<Record<WeldRecord['outcome'], string>>;
  judged: Readonly<Record<Outcome, string>>;
  limits: Readonly<Record<LimitRow['limit'], string>>;
  heads: {
    limit: string;
    allowed: string;
    found: string;
    spread: string;
    known: string;
    outcome: string;
  };
  spreadNote: string;
  basis: Readonly<Record<NonNullable<LimitRow['basis']>, string>>;
  places: Readonly<Record<'source' | 'feeder' | 'arc', string>>;
  /** Words that figures may be: polarities, programmes, materials, positions. */
  figureWords: Readonly<Record<string, string>>;
  ids: Readonly<Record<string, string>>;
  /** Identifiers that nothing was given for. */
  notGiven: string;
  facts: {
    procedure: string;
    revision: (revision: string) => string;
    joint: string;
    pass: string;
    file: string;
    recording: string;
    weldedAt: string;
    tool: string;
    note: string;
  };
  timeFrom: Readonly<Record<NonNullable<WeldRecord['weldedAt']>['from'], string>>;
  kinds: Readonly<Record<'sound' | 'electrical', string>>;
  atLeast: (text: string) => string;
  atMost: (text: string) => string;
  modes: string;
  wanted: (modes: string) => string;
  seen: (mode: string, sure: string) => string;
  notNamed: string;
  mixed: string;
  longest: (mode: string, lengthS: string, startS: string) => string;
  noDeparture: string;
  unclear: string;
  arcTime: (time: string) => string;
  energy: {
    heading: string;
    power: string;
    byMeans: string;
    energy: string;
    arcEnergy: string;
    byMeansAlong: string;
    heatInput: string;
    melted: string;
    deposited: string;
    unknown: string;
  };
  signature: { heading: string; says: string; name: string; date: string; sign: string };
  index: {
    title: string;
    count: (welds: number) => string;
    heads: {
      weld: string;
      time: string;
      outcome: string;
      mode: string;
      share: string;
      outside: string;
    };
    outcomeHeading: string;
    table: string;
  };
}
