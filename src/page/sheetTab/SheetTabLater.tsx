import { Spinner } from '@fluentui/react-components';
import { lazy, Suspense, type ComponentProps } from 'react';

/** Not everybody changes rules and names: their controls come when the tab is first shown. */
const Tab = lazy(() => import('./SheetTab').then((module) => ({ default: module.SheetTab })));

export function SheetTabLater(props: ComponentProps<typeof Tab>) {
  return (
    <Suspense fallback={<Spinner size="small" label="Loading" />}>
      <Tab {...props} />
    </Suspense>
  );
}
