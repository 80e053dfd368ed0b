import { makeStyles, mergeClasses, tokens } from '@fluentui/react-components';
import { useEffect, useRef, useState } from 'react';

const useStyles = makeStyles({
  equation: {
    display: 'block',
    maxWidth: '100%',
    padding: '3px 0',
    overflowX: 'auto',
    overflowY: 'hidden',
    lineHeight: '1.9',
    ':focus-visible': { outline: `2px solid ${tokens.colorStrokeFocus2}` },
  },
  inline: { display: 'inline', padding: 0, lineHeight: '1.2', overflowX: 'visible', overflowY: 'visible' },
});

interface Props {
  readonly tex: string;
  /** A name of the equation for readers that come to it by the Tab key, which they do where it is too long to show whole. */
  readonly label: string;
  readonly inline?: boolean;
}

/** An equation, typeset as soon as the typesetting is loaded. It breaks at its signs and scrolls where that is not enough. */
export function Equation({ tex, label, inline = false }: Props) {
  const styles = useStyles();
  const ref = useRef<HTMLSpanElement>(null);
  const [scrolls, setScrolls] = useState(false);
  useEffect(() => {
    const { current: element } = ref;
    if (!element) return;
    const look = () => {
      setScrolls(element.scrollWidth > element.clientWidth);
    };
    const observer = new ResizeObserver(look);
    let isWanted = true;
    void import('./katex').then(async ({ typeset }) => {
      if (!isWanted) return;
      typeset(tex, element);
      observer.observe(element);
      // Its fonts, asked for by now, are wider or narrower than what stood in for them.
      await document.fonts.ready;
      look();
    });
    return () => {
      isWanted = false;
      observer.disconnect();
    };
  }, [tex]);
  return (
    <span
      ref={ref}
      className={mergeClasses(styles.equation, inline && styles.inline)}
      {...(scrolls && !inline ? { tabIndex: 0, role: 'group', 'aria-label': label } : {})}
    />
  );
}
