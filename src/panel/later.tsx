import { Button, makeStyles, MessageBar, MessageBarBody, Spinner } from '@fluentui/react-components';
import { useEffect, useState, type ComponentType } from 'react';
import { messageOf } from './messageOf';

const useStyles = makeStyles({
  loading: { padding: '12px' },
  failed: { display: 'flex', flexDirection: 'column', alignItems: 'start', gap: '8px', padding: '12px' },
});

/** A component whose script is fetched when it is first shown. Where it does not come, that stands there in words. */
export function later<P extends object>(load: () => Promise<ComponentType<P>>): ComponentType<P> {
  let Loaded: ComponentType<P> | undefined;
  return function Later(props: P) {
    const [, setIsThere] = useState(false);
    const [problem, setProblem] = useState('');
    useEffect(() => {
      if (Loaded || problem !== '') return undefined;
      let isGone = false;
      load().then(
        (component) => {
          Loaded = component;
          if (!isGone) setIsThere(true);
        },
        (error: unknown) => {
          if (!isGone) setProblem(messageOf(error));
        },
      );
      return () => {
        isGone = true;
      };
    }, [problem]);
    if (Loaded) return <Loaded {...props} />;
    if (problem === '') return <Loading />;
    return (
      <Failed
        problem={problem}
        onAgain={() => {
          setProblem('');
        }}
      />
    );
  };
}

function Loading() {
  const styles = useStyles();
  // Its label comes after the delay: until then it has a name of its own.
  return <Spinner className={styles.loading} size="small" label="Loading" aria-label="Loading" delay={300} />;
}

function Failed({ problem, onAgain }: { readonly problem: string; readonly onAgain: () => void }) {
  const styles = useStyles();
  return (
    <div className={styles.failed}>
      <MessageBar intent="error" layout="multiline">
        <MessageBarBody>{problem}</MessageBarBody>
      </MessageBar>
      <Button onClick={onAgain}>Try again</Button>
    </div>
  );
}
