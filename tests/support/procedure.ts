/** An invented procedure, for tests; not a qualified one. */
export const PROCEDURE_DOCUMENT = {
  format: 'arc-transfer procedure 1',
  name: 'INVENTED-1',
  revision: 'A',
  mode: 'GMAW-S',
  wire: { diameter: '0.045 in', material: 'carbon-steel' },
  gas: 'Ar+18CO2',
  polarity: 'dcep',
  source: 'steady',
  position: ['1G', '2F'],
  plate: { min: '3 mm', max: '1/4 in' },
  volts: { nominal: '20 V', tolerance: '10 %', at: 'feeder' },
  amperes: { min: '150 A', max: '210 A' },
  wireFeed: { nominal: '177 in/min', tolerance: '0.5 m/min' },
  travelSpeed: { min: '12 in/min' },
  stickOut: { max: '5/8 in' },
  heatInput: { max: '30 kJ/in', countedBy: 'aws' },
};
