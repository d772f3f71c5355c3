import type Konva from 'konva';
import { memo, type ReactNode } from 'react';
import { Layer, Shape, Stage } from './konva.ts';

/** Draws one layer, in CSS pixels. */
export type Painter = (pen: CanvasRenderingContext2D) => void;

/** The layers of the table, from the cloth up. */
export type LayerName = 'cloth' | 'sweep' | 'grid' | 'marks';

/** Called with a layer when it is there, and with null when it goes. */
export type LayerKeeper = (name: LayerName, layer: Konva.Layer | null) => void;

const NAMES: readonly LayerName[] = ['cloth', 'sweep', 'grid', 'marks'];

/** Four layers of one custom shape each; whoever keeps them says when one is to be drawn again. */
export const TableLayers = memo(function TableLayers({ width, height, painters, keep }: {
  readonly width: number;
  readonly height: number;
  /** Must stay the same functions, or every layer is drawn anew. */
  readonly painters: Readonly<Record<LayerName, Painter>>;
  readonly keep: LayerKeeper;
}): ReactNode {
  return (
    <Stage width={width} height={height} listening={false}>
      {NAMES.map((name) => (
        <Layer key={name} listening={false} ref={(layer: Konva.Layer | null) => keep(name, layer)}>
          <Shape listening={false} perfectDrawEnabled={false} sceneFunc={(context) => painters[name](context._context)} />
        </Layer>
      ))}
    </Stage>
  );
});
