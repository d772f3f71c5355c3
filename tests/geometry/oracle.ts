import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import type Geometry from 'jsts/org/locationtech/jts/geom/Geometry.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';
import SnapIfNeededOverlayOp from 'jsts/org/locationtech/jts/operation/overlay/snap/SnapIfNeededOverlayOp.js';
import IsValidOp from 'jsts/org/locationtech/jts/operation/valid/IsValidOp.js';
import type { Point } from '../../src/geometry/point.ts';

/*
 * The outside opinion: jsts, the port of the JTS Topology Suite. It works in doubles, so lengths and areas are compared
 * to nine digits; what decides inside src/geometry never sees these numbers.
 */

const factory = new GeometryFactory();

/** Where a point lies, for comparison with a library that has only doubles. */
type Place = readonly [number, number];

export const placeOf = (p: Point): Place => [p.x / p.w, p.y / p.w];

const ring = (points: readonly Place[]): unknown => factory.createLinearRing([...points, points[0]!].map(([x, y]) => new Coordinate(x, y)));

export const polygon = (points: readonly Place[]): Geometry => factory.createPolygon(ring(points), []);
export const lineString = (points: readonly Place[]): Geometry => factory.createLineString(points.map(([x, y]) => new Coordinate(x, y)));
export const nothing = (): Geometry => factory.createPolygon(null, []);

const overlay =
  (code: number) =>
  (a: Geometry, b: Geometry): Geometry =>
    SnapIfNeededOverlayOp.overlayOp(a, b, code) as Geometry;
export const intersection = overlay(OverlayOp.INTERSECTION as number);
export const union = overlay(OverlayOp.UNION as number);
export const difference = overlay(OverlayOp.DIFFERENCE as number);

export const areaOf = (g: Geometry): number => g.getArea() as number;
/** @returns the length of lines, or of the whole outline of polygons, holes included */
export const lengthOf = (g: Geometry): number => g.getLength() as number;

export const isEmpty = (g: Geometry): boolean => (g as unknown as { isEmpty(): boolean }).isEmpty();

/** @returns the outlines of polygons as lines, holes included */
export const outlinesOf = (g: Geometry): Geometry => (g as unknown as { getBoundary(): Geometry }).getBoundary();

/** @returns whether corners make an outline that neither crosses nor touches itself */
export const isSimple = (points: readonly Place[]): boolean => (new IsValidOp(polygon(points)) as { isValid(): boolean }).isValid();
