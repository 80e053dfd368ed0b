import { makeStyles, tokens } from '@fluentui/react-components';

export const useFormStyles = makeStyles({
  form: { display: 'flex', flexDirection: 'column', gap: '8px', paddingBottom: '10px' },
  row: { display: 'flex', flexWrap: 'wrap', gap: '6px', alignItems: 'center' },
  list: { listStyle: 'none', margin: 0, padding: 0 },
  line: {
    display: 'flex',
    gap: '6px',
    alignItems: 'center',
    justifyContent: 'space-between',
    paddingBlock: '4px',
    borderTop: `1px solid ${tokens.colorNeutralStroke3}`,
    overflowWrap: 'anywhere',
  },
  says: { color: tokens.colorNeutralForeground2, fontSize: tokens.fontSizeBase200 },
});
