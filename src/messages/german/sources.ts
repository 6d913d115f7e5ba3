import type { SourceCertainty, SourceName, Sourcing } from '../rooms/knowledge.js';

const CERTAINTY: Readonly<Record<SourceCertainty, string>> = {
  F: 'in der genannten Quelle gelesen',
  F2: 'in zweiter Hand gelesen; vor Gebrauch in der Quelle selbst nachsehen',
  M: 'aus dem Gedächtnis nach der genannten Quelle',
  CP: 'übliche Praxis, ohne Quelle',
  X: 'hier aus anderen Zeilen berechnet',
};

/** Sources in German; works keep their titles. */
export const SOURCES: Readonly<Record<SourceName, string>> = {
  "a gas supplier's welder's handbook, p. 7, chart as read here":
    'Schweißerhandbuch eines Gaslieferanten, S. 7, aus dem Schaubild abgelesen',
  "a manufacturer's MAG table (a)": 'MAG-Tabelle eines Herstellers (a)',
  "a manufacturer's data sheet, Table 6-1": 'Datenblatt eines Herstellers, Tabelle 6-1',
  "a manufacturer's data sheet, Table 6-2": 'Datenblatt eines Herstellers, Tabelle 6-2',
  "a manufacturer's setting guide": 'Einstellhilfe eines Herstellers',
  "a second manufacturer's table (b)": 'Tabelle eines zweiten Herstellers (b)',
  "a second manufacturer's table (b), whose header may mean cored wire":
    'Tabelle eines zweiten Herstellers (b), deren Kopf vielleicht Fülldraht meint',
  'a quiz text on transfer modes': 'Übungstext zu den Lichtbogenarten',
  'a reference note on transfer modes': 'Merkblatt zu den Lichtbogenarten',
  'another reference note on transfer modes, which disagrees':
    'anderes Merkblatt zu den Lichtbogenarten, das widerspricht',
  'a welding glossary and a teaching page': 'schweißtechnisches Glossar und eine Lehrseite',
  'API RP 577 §11.3': 'API RP 577 §11.3',
  'API RP 577 §4.4.3': 'API RP 577 §4.4.3',
  'AWS D1.1:2025 Table 5.3 as quoted elsewhere; verify in the code':
    'AWS D1.1:2025 Tabelle 5.3, wie anderswo zitiert; im Regelwerk nachsehen',
  'AWS Welding Handbook vol. 2 (AWS C5.6)': 'AWS Welding Handbook, Bd. 2 (AWS C5.6)',
  'European practice': 'europäische Praxis',
  'industry guides': 'Leitfäden der Industrie',
  'Methong et al., STWJ 23(1) (2018) 87–94': 'Methong et al., STWJ 23(1) (2018) 87–94',
  'MIG Welding Handbook, ch. 1 p. 7': 'MIG Welding Handbook, Kap. 1, S. 7',
  'MIG Welding Handbook, Table 1-2': 'MIG Welding Handbook, Tabelle 1-2',
  'Modern Welding (2020), Fig. 8-16': 'Modern Welding (2020), Bild 8-16',
  'Modern Welding (2020), Fig. 8-17': 'Modern Welding (2020), Bild 8-17',
  'Modern Welding (2020), Fig. 8-18': 'Modern Welding (2020), Bild 8-18',
  'Practical Welding Today, question and answer (2014)':
    'Practical Welding Today, Frage und Antwort (2014)',
  'R. D. Smith, dip-transfer waveform analysis': 'R. D. Smith, Stromverläufe im Kurzlichtbogen',
  'secondary copy of ISO 15614-1:2017+A1:2019 §8.5.2.3':
    'Abschrift von ISO 15614-1:2017+A1:2019 §8.5.2.3',
  'shop practice': 'Werkstattpraxis',
  'Soderstrom & Mendez, Welding J. (May 2008) 124-s':
    'Soderstrom & Mendez, Welding J. (Mai 2008) 124-s',
  'teaching figure': 'Zahl aus der Lehre',
  'Weld. World (2015), review introduction, and a teaching page':
    'Weld. World (2015), Einleitung einer Übersicht, und eine Lehrseite',
  'Welding: Principles and Practices, ch. 21': 'Welding: Principles and Practices, Kap. 21',
};

/** A source, with how well it backs a row where that is not plain reading. */
export const authority = ({ source, certainty }: Sourcing): string =>
  certainty === 'F' ? SOURCES[source] : `${SOURCES[source]} (${CERTAINTY[certainty]})`;
