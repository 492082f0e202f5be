import { DxfWriter, LWPolylineFlags, point2d, point3d, TextHorizontalAlignment, Units } from '@tarikjabiri/dxf';
import type { Draft } from '../../project';
import { layerNumber } from '../content/layers';
import { DXF_LAYERS, dxfPieces } from './drawing';

/**
 * The pieces as DXF of 2007 in millimetres: one block a piece, cut lines closed, layers as in {@link DXF_LAYERS}.
 *
 * @param draft the finished draft; always full size
 */
export function writeDxf(draft: Draft): string {
  const dxf = new DxfWriter();
  dxf.setUnits(Units.Millimeters);
  dxf.setVariable('$MEASUREMENT', { 70: 1 });
  dxf.setVariable('$LASTSAVEDBY', { 1: 'Legwork' });
  for (const { number, colour } of DXF_LAYERS) dxf.addLayer(number, colour, 'Continuous');
  for (const piece of dxfPieces(draft)) {
    const block = dxf.addBlock(piece.name);
    for (const { layer, points, closed } of piece.lines) {
      block.addLWPolyline(
        points.map(({ x, y }) => ({ point: point2d(x, y) })),
        { layerName: layer, flags: closed ? LWPolylineFlags.Closed : LWPolylineFlags.None },
      );
    }
    for (const { x, y } of piece.notches) block.addPoint(x, y, 0, { layerName: layerNumber('notches') });
    for (const { text, at, height, turn } of piece.words) {
      block.addText(point3d(at.x, at.y), height, text, {
        layerName: layerNumber('text'),
        rotation: turn,
        horizontalAlignment: TextHorizontalAlignment.Center,
        secondAlignmentPoint: point3d(at.x, at.y),
      });
    }
    dxf.addInsert(piece.name, point3d(piece.at.x, piece.at.y), { layerName: layerNumber('cut') });
  }
  return dxf.stringify();
}
