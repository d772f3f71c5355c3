/* The few parts of Konva the table needs: its core and the bare shape; the dozens of ready-made shapes stay out of the first load. */
export { Layer, Shape, Stage } from 'react-konva/lib/ReactKonvaCore.js';
