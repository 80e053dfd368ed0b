import { Spinner } from '@fluentui/react-components';
import { lazy, Suspense } from 'react';
import type { ShareProps } from './Share';

/** Few of those who open the panel share: its controls come when the tab is first shown. */
const Share = lazy(() => import('./Share').then((module) => ({ default: module.Share })));

export function ShareTab(props: ShareProps) {
  return (
    <Suspense fallback={<Spinner size="small" label="Loading" />}>
      <Share {...props} />
    </Suspense>
  );
}
