/** The stations that can be used so far, in the order of the work. */
export const STATIONS = ['body', 'blocks', 'leg', 'edges', 'check', 'paper'] as const;

export type Station = (typeof STATIONS)[number];

export const STATION_NAMES: Readonly<Record<Station, string>> = {
  body: 'Body',
  blocks: 'Blocks',
  leg: 'Leg',
  edges: 'Edges',
  check: 'Check',
  paper: 'Paper',
};

const STATION_OF_GROUP: Readonly<Record<string, Station>> = {
  body: 'body',
  cloth: 'body',
  use: 'body',
  block: 'blocks',
  leg: 'leg',
  waist: 'edges',
  hem: 'edges',
  allowances: 'edges',
  paper: 'paper',
};

/** The station at which a field of the project is set; undefined for fields of no station, such as the name. */
export function stationOf(path: string): Station | undefined {
  return STATION_OF_GROUP[path.split('.')[0] ?? ''];
}
