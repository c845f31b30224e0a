import { Suspense } from 'react';
import { WireArea } from '../areas/wire/wire-area';
import { fetchedLater } from '../fetched';
import type { Area } from '../store/session';
import { useSession } from '../workbench';
import { Rail } from './rail';
import { Strip } from './strip';
import { TopBar } from './top-bar';

const DocumentArea = fetchedLater(() =>
  import('../areas/document/document-area').then((part) => part.DocumentArea),
);

const RouteArea = fetchedLater(() => import('../areas/route/route-area').then((part) => part.RouteArea));

const DiagnoseArea = fetchedLater(() =>
  import('../areas/diagnose/diagnose-area').then((part) => part.DiagnoseArea),
);

const HandOverArea = fetchedLater(() =>
  import('../areas/hand-over/hand-over-area').then((part) => part.HandOverArea),
);

/** The one frame of all areas: top bar, rail, the area, the strip. */
export function Frame() {
  const area = useSession((session) => session.area);
  return (
    <div className="frame">
      <TopBar />
      <Rail />
      <div className="frame-area">
        <Suspense fallback={<div className="area" />}>
          <Shown area={area} />
        </Suspense>
      </div>
      <Strip />
    </div>
  );
}

function Shown({ area }: { readonly area: Area }) {
  switch (area) {
    case 'document':
      return <DocumentArea />;
    case 'wire':
      return <WireArea />;
    case 'route':
      return <RouteArea />;
    case 'diagnose':
      return <DiagnoseArea />;
    case 'hand-over':
      return <HandOverArea />;
  }
}
