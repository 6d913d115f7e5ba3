import type { Mode } from '../../core/index.js';
import type { GasName, Message, Nothing, Span } from '../terms.js';

/** Sources by the name that English gives them; works keep their titles in every language. */
export type SourceName =
  | "a gas supplier's welder's handbook, p. 7, chart as read here"
  | "a manufacturer's MAG table (a)"
  | "a manufacturer's data sheet, Table 6-1"
  | "a manufacturer's data sheet, Table 6-2"
  | "a manufacturer's setting guide"
  | "a second manufacturer's table (b)"
  | "a second manufacturer's table (b), whose header may mean cored wire"
  | 'a quiz text on transfer modes'
  | 'a reference note on transfer modes'
  | 'another reference note on transfer modes, which disagrees'
  | 'a welding glossary and a teaching page'
  | 'API RP 577 §11.3'
  | 'API RP 577 §4.4.3'
  | 'AWS D1.1:2025 Table 5.3 as quoted elsewhere; verify in the code'
  | 'AWS Welding Handbook vol. 2 (AWS C5.6)'
  | 'European practice'
  | 'industry guides'
  | 'Methong et al., STWJ 23(1) (2018) 87–94'
  | 'MIG Welding Handbook, ch. 1 p. 7'
  | 'MIG Welding Handbook, Table 1-2'
  | 'Modern Welding (2020), Fig. 8-16'
  | 'Modern Welding (2020), Fig. 8-17'
  | 'Modern Welding (2020), Fig. 8-18'
  | 'Practical Welding Today, question and answer (2014)'
  | 'R. D. Smith, dip-transfer waveform analysis'
  | 'secondary copy of ISO 15614-1:2017+A1:2019 §8.5.2.3'
  | 'shop practice'
  | 'Soderstrom & Mendez, Welding J. (May 2008) 124-s'
  | 'teaching figure'
  | 'Weld. World (2015), review introduction, and a teaching page'
  | 'Welding: Principles and Practices, ch. 21';

/** How well a row of knowledge is backed. */
export type SourceCertainty = 'F' | 'F2' | 'M' | 'CP' | 'X';

/** Gases as tables name them. */
export type BandGas =
  | '80Ar/20CO2'
  | '90Ar/10CO2'
  | '90He/7.5Ar/2.5CO2'
  | '98Ar/2O2'
  | '99Ar/1O2'
  | 'Ar'
  | 'Ar with little CO2 and O2'
  | 'Ar+1–5O2'
  | 'Ar+CO2, ratio not stated'
  | 'Ar-CO2 or CO2'
  | 'argon'
  | 'argon-rich'
  | 'CO2 (mild steel) or Ar-CO2 (low alloy)'
  | 'CO2-rich'
  | 'M21'
  | 'not stated'
  | 'prequalified GMAW'
  | 'pure CO2'
  | 'pure CO2 or mix'
  | 'steel, general';

/** Remarks of tables on single rows. */
export type BandRemark =
  | 'above 230 A and 26 V; the upper ends are open'
  | 'butt, 1.0 mm'
  | 'butt, 1.2 mm'
  | 'butt, 1.6 mm'
  | 'butt, 2.3 mm'
  | 'butt, 3.2 mm'
  | 'butt, 4.0 mm'
  | 'fillet'
  | 'fillet, 1.6 mm'
  | 'fillet, 2.4 mm'
  | 'fillet, 3.2 mm'
  | 'measured on 5 mm plate, top of the dip range';

/** What single sources say of CO2 and axial spray. */
export type Co2Saying =
  | 'globular-stays-above-15'
  | 'spray-needs-80-argon'
  | 'no-spray-above-20-to-25'
  | 'measured-at-20'
  | 'repelled-above-30'
  | '82-18-sold-for-spray'
  | 'pure-never';

export interface Sourcing {
  source: SourceName;
  certainty: SourceCertainty;
}

/** Windows, limits and transition currents of the trade, each with its source. */
export interface KnowledgeParams {
  /** A source, with how well it backs a row where that is not plain reading. */
  authority: Sourcing;
  'band-gas': { gas: BandGas };
  'band-remark': { remark: BandRemark };
  /** A window as a source prints it. */
  'band-row': Sourcing & {
    voltageV: Span | null;
    currentA: Span | null;
    feedMPerMin: Span | null;
    diameterMm: Span | null;
    gas: BandGas;
  };
  'transition-row': Sourcing & { fromA: Span; diameterMm: number; gas: BandGas };
  'co2-row': Sourcing & { saying: Co2Saying };
  /** Can the gas carry axial spray? `limits`: who says so, or who disagrees. */
  'spray-in-gas':
    | { answer: 'yes'; gas: GasName }
    | { answer: 'unknown' }
    | {
        answer: 'no' | 'disputed';
        gas: GasName;
        limits: { saying: Co2Saying; source: SourceName }[];
      };
  /** Where a mode lies, in volts at the feeder and mean amperes; each reads as the end of "lies …". */
  'lies-up-to': { topV: Span };
  'lies-above': { bottomV: Span; belowA: Span | null };
  'lies-in-spray': { bottomV: Span; aboveA: Span | null; disputed: boolean };
  'lies-under-pulses': { disputed: boolean };
  'not-in-this-gas': Nothing;
  'mode-lies': { mode: Mode; where: Message };
  'spray-begins': { currentA: Span };
  /** Wire and gas for which windows are shown. */
  'window-scope': {
    diameterMm: number | null;
    material: 'carbon-steel' | 'stainless-steel' | 'aluminium';
    materialStated: boolean;
    gas: GasName | null;
  };
}
