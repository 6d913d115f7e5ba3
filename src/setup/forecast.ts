import { type Made, message } from '../messages/index.js';
import { sayAdvice, sayExpected, sayHowTo } from './coach.js';
import { advise } from './process-map/advice.js';
import { type ProcessMap, processMap } from './process-map/boundary-lines.js';
import { howToReach } from './process-map/how-to.js';
import { judgePoint, type PointJudgement } from './process-map/judgement.js';
import { fedWire, type KnownMapPoint, mapPoint } from './process-map/map-point.js';
import { OUTCOME_OF_MODE } from './process-map/outcomes.js';
import { type MapPicture, mapPicture } from './process-map/picture.js';
import type { MapMaterial } from './process-map/wires-of-map.js';
import type { Setup } from './setup-schema.js';

/** What a set-up is expected to give, and the way to the wanted mode, without any recording. */
export interface Forecast {
  map: ProcessMap;
  /** Null where volts or amperes are not known. */
  point: KnownMapPoint | null;
  judgement: PointJudgement | null;
  /** The likeliest outcome with the figure where it flips; null without a point. */
  likeliest: Made | null;
  chances: Made[];
  /** Empty where no mode is wanted. */
  advice: Made[];
  /** Settings that give the wanted mode; empty where none is wanted. */
  howTo: Made[];
}

/** The forecast for a set-up; `material` for wires that only the map knows. */
export function forecast(setup: Setup, material: MapMaterial | null = null): Forecast {
  const wire = fedWire(setup, material);
  const map = processMap({
    material: wire.material,
    diameterMm: wire.diameterMm,
    gas: setup.gas,
  });
  const point = mapPoint(setup, undefined, material);
  const judgement = point === null ? null : judgePoint(map, point);
  const said = point === null || judgement === null ? null : sayExpected(judgement, point, setup);
  return {
    map,
    point,
    judgement,
    likeliest: said?.likeliest ?? null,
    chances: said?.chances ?? [],
    ...wantedOf(setup, map, point, material),
  };
}

function wantedOf(
  setup: Setup,
  map: ProcessMap,
  point: KnownMapPoint | null,
  material: MapMaterial | null,
): Pick<Forecast, 'advice' | 'howTo'> {
  const { expectedMode: wanted, source, polarity, gas } = setup;
  const wire = fedWire(setup, material);
  if (wanted === null) return { advice: [], howTo: [] };
  if (wire.diameterMm === null || gas === null) {
    return { advice: [], howTo: [message('state-wire-and-gas')] };
  }
  const fed = { ...wire, diameterMm: wire.diameterMm };
  const advice =
    point === null
      ? []
      : sayAdvice(advise(map, { wanted, point, wire: fed, source, polarity, seen: null }), setup);
  const howTo = howToReach(map, wanted, fed, { source, polarity });
  // A refusal is said once.
  const again = howTo.kind !== 'settings' && advice.length > 0;
  return { advice, howTo: again ? [] : sayHowTo(howTo, setup) };
}

/** The map of a set-up as numbers to draw; null without a wire diameter. */
export function forecastPicture(
  setup: Setup,
  { map, point }: Pick<Forecast, 'map' | 'point'>,
  grid: { columns: number; rows: number },
  measured: MapPicture['measured'] = null,
): MapPicture | null {
  const wire = fedWire(setup, map.wire.material);
  if (wire.diameterMm === null) return null;
  const { expectedMode: wanted } = setup;
  return mapPicture(map, {
    wire: { ...wire, diameterMm: wire.diameterMm },
    point,
    measured,
    wanted: wanted === null || wanted === 'pulsed-spray' ? null : OUTCOME_OF_MODE[wanted],
    ...grid,
  });
}
