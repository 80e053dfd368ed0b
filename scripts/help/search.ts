import { searchOf, type SearchDocument } from '../../src/derive/search';

/** Runs in the help's list of functions: shows first what the words of the search mean. */

/** Put in by the build. */
declare const DOCUMENTS: readonly SearchDocument[];

const search = searchOf(DOCUMENTS);
const box = document.querySelector<HTMLInputElement>('#search');
const found = document.querySelector('#found');
const results = document.querySelector<HTMLElement>('#results');
const entries = new Map(
  [...document.querySelectorAll<HTMLElement>('[data-function]')].map((entry) => [
    entry.dataset.function,
    entry,
  ]),
);

function show(): void {
  const words = box?.value.trim() ?? '';
  const ids = search(words);
  const isAll = words === '';
  if (found) found.textContent = isAll ? '' : `${ids.length} found`;
  if (results) {
    results.hidden = isAll;
    results.replaceChildren(...(isAll ? [] : ids.flatMap((id) => entries.get(id)?.cloneNode(true) ?? [])));
  }
  for (const part of document.querySelectorAll<HTMLElement>('[data-listed]')) part.hidden = !isAll;
}

box?.addEventListener('input', show);
show();
