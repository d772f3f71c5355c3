import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import DistanceOp from 'jsts/org/locationtech/jts/operation/distance/DistanceOp.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';
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

const polygonOf = (outline: readonly (readonly [number, number])[]): Geometry => {
  const ring = [...outline, outline[0]!].map(([x, y]) => new Coordinate(x, y));
  return new GeometryFactory().createPolygon(ring) as Geometry;
};

interface Geometry {
  getArea(): number;
  getCoordinates(): readonly { readonly x: number; readonly y: number }[];
}

/** What of a polygon is left of a cut (as seen on screen, along the line from one point to the other), by another library. */
export function kept(
  outline: readonly (readonly [number, number])[],
  [[ax, ay], [bx, by]]: readonly [readonly [number, number], readonly [number, number]],
): readonly (readonly [number, number])[] {
  const long = Math.hypot(bx - ax, by - ay);
  const [dx, dy] = [((bx - ax) / long) * 100, ((by - ay) / long) * 100];
  // To the right of the line as seen on screen lies what is inside an outline that runs clockwise there.
  const half = polygonOf([
    [ax - dx, ay - dy],
    [ax + dx, ay + dy],
    [ax + dx - dy, ay + dy + dx],
    [ax - dx - dy, ay - dy + dx],
  ]);
  const rest = OverlayOp.intersection(polygonOf(outline.slice(0, -1)), half) as Geometry;
  return rest.getCoordinates().map(({ x, y }) => [x, y] as const);
}

/** The area by which two polygons differ; `missing`: only what the first lacks of the other. The other one is a closed ring. */
export function areaBetween(
  outline: readonly (readonly [number, number])[],
  other: readonly (readonly [number, number])[],
  which: 'all' | 'missing' = 'all',
): number {
  const [a, b] = [polygonOf(outline), polygonOf(other.slice(0, -1))];
  return (which === 'all' ? OverlayOp.symDifference(a, b) : OverlayOp.difference(b, a)).getArea() as number;
}

/** The area that two polygons have in common, and how far they are apart, by another library. */
export function between(
  outline: readonly (readonly [number, number])[],
  other: readonly (readonly [number, number])[],
): { readonly shared: number; readonly distance: number } {
  const [a, b] = [polygonOf(outline), polygonOf(other)];
  return { shared: OverlayOp.intersection(a, b).getArea() as number, distance: DistanceOp.distance(a, b) as number };
}
