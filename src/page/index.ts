/** The first script, small: has the rest fetched while the shell stands, and says so where it does not come. */
import { messageOf } from '../panel/messageOf';

async function open(element: HTMLElement): Promise<void> {
  try {
    const { openPage } = await import(/* webpackChunkName: "page" */ './page');
    await openPage(element);
  } catch (error) {
    sayWhy(error, element);
  }
}

/** In the shell; once the page stands in its place, the page says what goes wrong. */
function sayWhy(error: unknown, element: HTMLElement): void {
  const says = document.getElementById('opening');
  if (!says) throw error;
  const again = document.createElement('button');
  again.textContent = 'Try again';
  again.addEventListener('click', () => {
    says.replaceChildren('It opens…');
    void open(element);
  });
  says.replaceChildren(messageOf(error), document.createElement('br'), again);
}

const element = document.getElementById('page');
if (element) void open(element);
