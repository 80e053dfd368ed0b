/** Unpacks the program of the page and starts it; where a browser cannot, the values stand and a line says so. */
const state = document.getElementById('state');
const { date = '' } = document.body.dataset;

function stays(why: string): void {
  if (state) state.textContent = `${why} The values are those of ${date}, and nothing can be changed.`;
}

async function start(): Promise<void> {
  const packed = atob(document.getElementById('program')?.textContent.trim() ?? '');
  const bytes = Uint8Array.from(packed, (one) => one.charCodeAt(0));
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip'));
  const script = document.createElement('script');
  script.textContent = await new Response(stream).text();
  document.body.append(script);
}

if (typeof DecompressionStream === 'undefined')
  stays('This browser is too old to calculate here: open the file in a newer one.');
else
  start().catch(() => {
    stays('The calculation did not start: the file may be damaged.');
  });
