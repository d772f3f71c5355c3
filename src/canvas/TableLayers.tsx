import { Layer } from 'konva/lib/Layer.js';
import { Shape } from 'konva/lib/Shape.js';
import { Stage } from 'konva/lib/Stage.js';
import { memo, useLayoutEffect, useRef, type ReactNode } from 'react';

/** Draws one layer, in CSS pixels. */
export type Painter = (pen: CanvasRenderingContext2D) => void;

/** The layers of the table, from the cloth up. */
export type LayerName = 'cloth' | 'sweep' | 'grid' | 'marks';

/** Called with a layer when it is there, and with null when it goes. */
export type LayerKeeper = (name: LayerName, layer: Layer | null) => void;

const NAMES: readonly LayerName[] = ['cloth', 'sweep', 'grid', 'marks'];

/**
 * Four layers of one custom shape each; whoever keeps them says when one is to be drawn again. They are made once and never change,
 * so that no second renderer is needed to keep them up to date.
 */
export const TableLayers = memo(function TableLayers({ width, height, painters, keep }: {
  readonly width: number;
  readonly height: number;
  /** Must stay the same functions, or every layer is made anew. */
  readonly painters: Readonly<Record<LayerName, Painter>>;
  readonly keep: LayerKeeper;
}): ReactNode {
  const element = useRef<HTMLDivElement>(null);
  const stage = useRef<Stage | null>(null);
  useLayoutEffect(() => {
    const made = new Stage({ container: element.current!, listening: false });
    stage.current = made;
    for (const name of NAMES) {
      const layer = new Layer({ listening: false });
      layer.add(new Shape({ listening: false, perfectDrawEnabled: false, sceneFunc: (context) => painters[name](context._context) }));
      made.add(layer);
      keep(name, layer);
    }
    return () => {
      for (const name of NAMES) keep(name, null);
      made.destroy();
    };
  }, [painters, keep]);
  useLayoutEffect(() => {
    stage.current?.size({ width, height });
  }, [width, height, painters, keep]);
  return <div ref={element} />;
});
