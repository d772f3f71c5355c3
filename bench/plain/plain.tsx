import { useState, type ReactNode } from 'react';
import { createRoot } from 'react-dom/client';
import { Layer, Line, Stage } from 'react-konva';

/** A drawing of cells in the plain way: one shape for each patch, all of them in the state, told again with every move of the pointer. */
interface Patch {
  readonly fabric: string;
  readonly points: readonly (readonly [number, number])[];
}

const SIDE = 480;
const COLORS: Readonly<Record<string, string>> = { chalk: '#f4f1ea', lamp: '#f2c230' };
const OTHERS: Readonly<Record<string, string>> = { chalk: '#f2c230', lamp: '#f4f1ea' };
const cells = Number(new URLSearchParams(location.search).get('cells'));

const begun: readonly Patch[] = Array.from({ length: cells * cells }, (_, i) => {
  const [x, y] = [i % cells, Math.floor(i / cells)];
  return { fabric: (x + y) % 2 === 0 ? 'chalk' : 'lamp', points: [[x, y], [x + 1, y], [x, y + 1]] };
});

function Plain(): ReactNode {
  const [patches, setPatches] = useState(begun);
  const [painting, setPainting] = useState(false);
  const [colors, setColors] = useState(COLORS);
  const paint = (px: number, py: number): void => {
    const [x, y] = [Math.floor((px * cells) / SIDE), Math.floor((py * cells) / SIDE)];
    setPatches((now) => [...now, { fabric: 'chalk', points: [[x, y], [x + 1, y], [x + 1, y + 1], [x, y + 1]] }]);
  };
  return (
    <div
      id="table"
      onDoubleClick={() => setColors((now) => (now === COLORS ? OTHERS : COLORS))}
      data-patches={patches.length}
      onPointerDown={() => setPainting(true)}
      onPointerUp={() => setPainting(false)}
      onPointerMove={({ nativeEvent }) => painting && paint(nativeEvent.offsetX, nativeEvent.offsetY)}
    >
      <Stage width={SIDE} height={SIDE}>
        <Layer>
          {patches.map(({ fabric, points }, i) => (
            <Line key={i} closed points={points.flat().map((at) => (at * SIDE) / cells)} fill={colors[fabric]!} />
          ))}
        </Layer>
      </Stage>
    </div>
  );
}

createRoot(document.getElementById('root')!).render(<Plain />);
