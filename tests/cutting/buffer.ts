import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import BufferParameters from 'jsts/org/locationtech/jts/operation/buffer/BufferParameters.js';

/** Offsets a polygon outward with another library (JTS), in floats: tips `whole`, or `round`, which lie exactly within the distance. */
export function offset(
  outline: readonly (readonly [number, number])[],
  distance: number,
  tips: 'whole' | 'round',
): readonly (readonly [number, number])[] {
  const ring = [...outline, outline[0]!].map(([x, y]) => new Coordinate(x, y));
  const parameters = new BufferParameters(
    32,
    BufferParameters.CAP_ROUND,
    tips === 'whole' ? BufferParameters.JOIN_MITRE : BufferParameters.JOIN_ROUND,
    1e6,
  );
  const polygon = new GeometryFactory().createPolygon(ring);
  const coordinates = BufferOp.bufferOp(polygon, distance, parameters).getCoordinates() as { x: number; y: number }[];
  return coordinates.map(({ x, y }) => [x, y] as const);
}

/** How far points reach along a direction of length 1, from the least to the most. */
export function extent(points: readonly (readonly [number, number])[], [dx, dy]: readonly [number, number]): number {
  const along = points.map(([x, y]) => x * dx + y * dy);
  return Math.max(...along) - Math.min(...along);
}
