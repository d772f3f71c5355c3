import { memo, type ReactNode } from 'react';
import type { Item, Page } from '../../../pattern/pages/page.ts';
import { FAMILIES, svgNumber, svgPath, WEIGHTS } from '../../../pattern/pages/page-svg.ts';

/** A page as it will be printed, as large as there is room. */
export const PagePicture = memo(function PagePicture({ page, says }: { readonly page: Page; readonly says: string }): ReactNode {
  return (
    <svg className="page-picture" viewBox={`0 0 ${svgNumber(page.width)} ${svgNumber(page.height)}`} role="img" aria-label={says}>
      {page.items.map((item, i) => (
        <ItemPicture key={i} item={item} />
      ))}
    </svg>
  );
});

function ItemPicture({ item }: { readonly item: Item }): ReactNode {
  if (item.kind === 'text') {
    const { text, x, y, size, weight, color, width, turn } = item;
    const turned = turn ? `rotate(${turn * 90} ${x} ${y})` : undefined;
    return (
      <text
        x={x}
        y={y}
        fontFamily={FAMILIES}
        fontSize={size}
        fontWeight={WEIGHTS[weight]}
        fill={color}
        textLength={width}
        lengthAdjust="spacingAndGlyphs"
        transform={turned}
        // A space at the end is part of the width.
        xmlSpace="preserve"
      >
        {text}
      </text>
    );
  }
  if (item.kind === 'link' || item.kind === 'place') return null;
  if (item.kind === 'image') {
    const { left, top, width, height } = item.area;
    return <image x={left} y={top} width={width} height={height} href={`data:image/jpeg;base64,${item.picture.jpeg}`} />;
  }
  const { steps, stroke, fill } = item;
  return <path d={svgPath(steps)} fill={fill ?? 'none'} stroke={stroke?.color} strokeWidth={stroke?.width} strokeDasharray={stroke?.dash?.join(' ')} />;
}
