/* global document */
/* Shows of the list of functions what all words of the search occur in. */
const box = document.getElementById('search');
const found = document.getElementById('found');
const entries = [...document.querySelectorAll('[data-words]')].map((element) => ({
  element,
  text: `${element.textContent} ${element.dataset.words}`.toLowerCase(),
}));

function search() {
  const words = box.value
    .toLowerCase()
    .replace(/^=/, '')
    .split(/\s+/)
    .filter((word) => word !== '');
  let count = 0;
  for (const { element, text } of entries) {
    const fits = words.every((word) => text.includes(word));
    element.hidden = !fits;
    if (fits) count += 1;
  }
  for (const family of document.querySelectorAll('[data-family]')) {
    family.hidden = family.querySelector('li:not([hidden])') === null;
  }
  found.textContent = words.length === 0 ? '' : `${count} found`;
}

box.addEventListener('input', search);
search();
