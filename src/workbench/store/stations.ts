import type { Station } from '../../project';

const STATION_OF_GROUP: Readonly<Record<string, Station>> = {
  body: 'body',
  cloth: 'cloth',
  use: 'body',
  block: 'blocks',
  leg: 'leg',
  waist: 'edges',
  hem: 'edges',
  allowances: 'edges',
  sides: 'check',
  paper: 'paper',
  projector: 'paper',
  sewing: 'sew',
};

/** The cloth is known before the body is drafted; how it lies is asked only when the pieces are finished. */
const ASKED_WITH_BODY: readonly string[] = ['cloth.kind', 'cloth.stretch', 'cloth.washFirst'];

/** The station at which a field of the project is set; undefined for fields of no station, such as the name. */
export function stationOf(path: string): Station | undefined {
  if (ASKED_WITH_BODY.includes(path)) return 'body';
  return STATION_OF_GROUP[path.split('.')[0] ?? ''];
}
