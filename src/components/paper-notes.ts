// Paper can't be clicked: what leads out of the site gets a number there, and the page's end lists the addresses.

export interface Noted {
  html: string;
  /** In the order of the text, each once, escaped as they stand in the HTML */
  addresses: readonly string[];
}

const leadsOut = /<a\b[^>]*\shref="(https?:[^"]+)"[^>]*>.*?<\/a>/gs;

/** Puts the number of its address, for paper only, behind every link that leads out of the site. */
export function withPaperNotes(html: string): Noted {
  const addresses: string[] = [];
  const noted = html.replace(leadsOut, (link, address: string) => {
    if (!addresses.includes(address)) addresses.push(address);
    const number = addresses.indexOf(address) + 1;
    return `${link}<sup class="paper-only" aria-hidden="true">${number}</sup>`;
  });
  return { html: noted, addresses };
}
