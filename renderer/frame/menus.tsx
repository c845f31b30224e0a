import { Suspense } from 'react';
import { fetchedLater } from '../fetched';
import { useWorkbench } from '../workbench';

const MenuBar = fetchedLater(() => import('./menu-bar').then((part) => part.MenuBar));

/** The menus where the system draws none. They come a moment after the rest; their place is kept. */
export function Menus() {
  const { about } = useWorkbench();
  if (about.door !== 'browser') return null;
  return (
    <Suspense fallback={<div className="menu-bar" />}>
      <MenuBar />
    </Suspense>
  );
}
