/*
 * Konva's core as react-konva asks for it ('konva/lib/Core.js', for which vite.config.ts puts this), without what the table never
 * uses: tweens, groups and fast layers, 3 kB gzipped of the first load.
 */
import { Container } from 'konva/lib/Container.js';
import { Konva as bare } from 'konva/lib/Global.js';
import { Layer } from 'konva/lib/Layer.js';
import { Node } from 'konva/lib/Node.js';
import { Shape, shapes } from 'konva/lib/Shape.js';
import { Stage, stages } from 'konva/lib/Stage.js';
import { Transform, Util } from 'konva/lib/Util.js';

const Konva = Object.assign(bare, {
  beginUpdateBatch: Node._beginUpdateBatch, Container, Layer, Node, Shape, shapes, Stage, stages, Transform, Util,
});

export default Konva;
