import { createRoot } from 'react-dom/client';
import { Circle, Layer, Stage } from 'react-konva';

/** React and the drawing library with one circle: the least that any window made of them has to load. */
createRoot(document.getElementById('window')).render(
  <Stage width={1280} height={800}>
    <Layer>
      <Circle x={640} y={400} radius={100} fill="black" />
    </Layer>
  </Stage>,
);
