import { memo, useCallback, useRef, type ReactNode } from 'react';
import type { Block } from '../../block/block.ts';
import { EYES, type Eye } from './eyes.ts';
import { drawRoles, type RoleShapes } from './role-shapes.ts';
import { useDrawn } from './use-drawn.ts';

/** How large each is, in CSS pixels. */
const SIDE = 132;

/** The block as it is now, looked at in several ways side by side. */
export const SeenAs = memo(function SeenAs({ block, shapes }: { readonly block: Block; readonly shapes: RoleShapes }): ReactNode {
  return (
    <ul className="seen-as">
      {EYES.map((eye) => (
        <li key={eye.name}>
          <Seen eye={eye} block={block} shapes={shapes} />
          <span>{eye.name}</span>
          <span className="quiet">{eye.says}</span>
        </li>
      ))}
    </ul>
  );
});

function Seen({ eye, block, shapes }: { readonly eye: Eye; readonly block: Block; readonly shapes: RoleShapes }): ReactNode {
  const canvas = useRef<HTMLCanvasElement>(null);
  const [wide, high] = [SIDE * shapes.width, SIDE * shapes.height];
  const { fabrics } = block;
  const draw = useCallback((place: HTMLCanvasElement): void => {
    const colors = new Map(fabrics.map(({ id, color }) => [id, eye.seen(color)]));
    drawRoles(place, shapes, (role) => colors.get(role) ?? '#ffffff');
  }, [eye, fabrics, shapes]);
  useDrawn(canvas, [wide, high], draw);
  return <canvas ref={canvas} data-squint={eye.squint} style={{ width: wide, height: high }} aria-hidden="true" />;
}
