import type Konva from 'konva/lib/Core';
import { useEffect } from 'react';

/** Keeps the drawing sharp when the page is zoomed or goes to another screen: Konva looks only once. */
export function usePixelRatio(stage: Konva.Stage | null): void {
  useEffect(() => {
    if (!stage) return;
    let stop = () => {};
    const watch = () => {
      const { devicePixelRatio } = window;
      for (const layer of stage.getLayers()) layer.getCanvas().setPixelRatio(devicePixelRatio);
      stage.batchDraw();
      const query = window.matchMedia(`(resolution: ${devicePixelRatio}dppx)`);
      query.addEventListener('change', watch, { once: true });
      stop = () => query.removeEventListener('change', watch);
    };
    watch();
    return () => stop();
  }, [stage]);
}
