import { createHash } from 'node:crypto';
import client from './gown-page.client.js';
import template from './gown-page.html';
import { html, Markup } from './html.ts';

/** All that the page shows: figures and words already chosen, drawings already written as SVG. */
export interface GownPage {
  readonly gown: string;
  /** Client's code, hash of the content, and whatever else names this version. */
  readonly about: readonly string[];
  /** Said above everything else, where what is below is not the newest: `watch` alone says it. */
  readonly notice?: { readonly says: string; readonly findings: readonly PageFinding[] };
  /** What is still being worked out. */
  readonly status?: string;
  readonly views: readonly PageDrawing[];
  readonly pattern?: {
    readonly svg: string;
    readonly layers: readonly string[];
    /** Unit of the ruler, mm in one of it, decimals that it is read to. */
    readonly unit: string;
    readonly mm: number;
    readonly decimals: number;
  };
  readonly lays: readonly PageDrawing[];
  readonly sheets?: SheetTable;
  readonly tables: readonly PageTable[];
  readonly findings: readonly PageFinding[];
  readonly files: readonly string[];
  readonly words: PageWords;
  /** Where the page asks for news of itself; nothing where it is a file. */
  readonly refreshed?: string;
}

export interface PageDrawing {
  readonly title: string;
  readonly svg: string;
  readonly caption: string;
}

export interface SheetTable {
  readonly paper: string;
  readonly sheets: readonly { readonly page: number; readonly label: string }[];
}

export interface PageTable {
  readonly title: string;
  readonly heads: readonly string[];
  /** Columns from this one on are figures, and stand at the right. */
  readonly figuresFrom: number;
  readonly rows: readonly (readonly string[])[];
  readonly note?: string;
}

export interface PageFinding {
  readonly level: 'error' | 'warning' | 'note';
  readonly place: string;
  readonly message: string;
  readonly why: string;
  readonly hint: string;
}

export interface PageWords {
  readonly language: string;
  readonly contents: string;
  readonly views: string;
  readonly pattern: string;
  readonly patternHelp: string;
  readonly layers: string;
  readonly zoomIn: string;
  readonly zoomOut: string;
  readonly whole: string;
  readonly ruler: string;
  readonly firstPoint: string;
  readonly secondPoint: string;
  readonly lays: string;
  readonly layHelp: string;
  readonly copy: string;
  readonly mirrored: string;
  readonly sheets: string;
  readonly sheetsCaption: (paper: string, count: number) => string;
  readonly page: (page: number) => string;
  readonly findings: string;
  readonly noFindings: string;
  readonly levels: Readonly<Record<PageFinding['level'], string>>;
  readonly files: string;
  readonly footer: string;
}

/** `gown.html`: one file that needs no other and no network, to be read, measured on and printed. */
export function gownPage(page: GownPage): string {
  const { words } = page;
  const sections = sectionsOf(page);
  const script = client + (page.refreshed === undefined ? '' : refreshing(page.refreshed));
  return filled(template, {
    language: html`${words.language}`,
    title: html`${page.gown}`,
    scriptHash: new Markup(`sha256-${createHash('sha256').update(script).digest('base64')}`),
    connect: new Markup(page.refreshed === undefined ? '' : "; connect-src 'self'"),
    header: html`<h1 dir="auto">${page.gown}</h1>
<p class="soft">${page.about.join(' · ')}</p>${page.status === undefined ? html`` : html`<p role="status">${page.status}</p>`}${page.notice && notice(page.notice, words)}`,
    navLabel: html`${words.contents}`,
    nav: html`${sections.map(({ id, title }) => html`<li><a href="#${id}">${title}</a></li>`)}`,
    main: html`${sections.map(section)}`,
    footer: html`<p>${words.footer}</p>`,
    script: new Markup(script),
  });
}

interface Section {
  readonly id: string;
  readonly title: string;
  readonly body: Markup;
}

function section({ id, title, body }: Section): Markup {
  return html`<section id="${id}"><h2>${title}</h2>
${body}
</section>
`;
}

/** What there is of it, in the order in which a gown is made. */
function sectionsOf(page: GownPage): Section[] {
  const { words, views, pattern, lays, sheets, tables, findings, files } = page;
  return [
    ...(findings.length === 0
      ? []
      : [
          {
            id: 'findings',
            title: words.findings,
            body: html`${findings.map((one) => finding(one, words))}`,
          },
        ]),
    ...(views.length === 0
      ? []
      : [{ id: 'views', title: words.views, body: html`${views.map((view) => drawing(view))}` }]),
    ...(pattern === undefined ? [] : [{ id: 'pattern', title: words.pattern, body: viewer(pattern, words) }]),
    ...(lays.length === 0
      ? []
      : [
          {
            id: 'lays',
            title: words.lays,
            body: html`<p class="js-only soft">${words.layHelp}</p>${lays.map((one) => lay(one, words))}`,
          },
        ]),
    ...(sheets === undefined ? [] : [{ id: 'sheets', title: words.sheets, body: sheetMap(sheets, words) }]),
    ...tables.map((table, i) => ({ id: `table-${i + 1}`, title: table.title, body: tableOf(table) })),
    ...(findings.length > 0 || page.notice !== undefined
      ? []
      : [{ id: 'findings', title: words.findings, body: html`<p>${words.noFindings}</p>` }]),
    ...(files.length === 0
      ? []
      : [
          {
            id: 'files',
            title: words.files,
            body: html`<ul>${files.map((name) => html`<li><a href="${encodeURIComponent(name)}">${name}</a></li>`)}</ul>`,
          },
        ]),
  ];
}

function notice({ says, findings }: NonNullable<GownPage['notice']>, words: PageWords): Markup {
  return html`<div class="notice" role="alert"><p>${says}</p>${findings.map((one) => finding(one, words))}</div>`;
}

function drawing({ title, svg, caption }: PageDrawing): Markup {
  return html`<figure><div class="drawing" role="img" aria-label="${title}">${new Markup(svg)}</div><figcaption>${caption}</figcaption></figure>`;
}

function viewer(pattern: NonNullable<GownPage['pattern']>, words: PageWords): Markup {
  const tool = (does: string, name: string, more?: Markup) =>
    html`<button type="button" data-do="${does}"${more}>${name}</button>`;
  return html`<figure class="viewer" data-unit="${pattern.unit}" data-mm="${pattern.mm}" data-decimals="${pattern.decimals}" data-first="${words.firstPoint}" data-second="${words.secondPoint}">
<fieldset class="tools js-only"><legend>${words.layers}</legend>${pattern.layers.map(
    (layer) =>
      html`<label><input type="checkbox" checked data-layer="${layer}"> <span dir="auto">${layer}</span></label>`,
  )}</fieldset>
<div class="tools js-only">${tool('in', words.zoomIn)}${tool('out', words.zoomOut)}${tool('whole', words.whole)}${tool('measure', words.ruler, html` aria-pressed="false"`)}<output aria-live="polite"></output></div>
<div class="drawing" style="aspect-ratio: ${ratioOf(pattern.svg)}" tabindex="0" role="application" aria-label="${words.pattern}. ${words.patternHelp}">${new Markup(pattern.svg)}</div>
<figcaption class="js-only">${words.patternHelp}</figcaption></figure>`;
}

/** Width to height of a drawing, for the room that it is given. */
function ratioOf(svg: string): string {
  const [, width = '1', height = '1'] = /viewBox="\S+ \S+ (\S+) (\S+)"/.exec(svg) ?? [];
  return `${width} / ${height}`;
}

function lay({ title, svg, caption }: PageDrawing, words: PageWords): Markup {
  return html`<h3>${title}</h3><figure class="lay" data-copy="${words.copy}" data-mirrored="${words.mirrored}"><div class="drawing" role="img" aria-label="${title}">${new Markup(svg)}</div><figcaption><output aria-live="polite"></output> ${caption}</figcaption></figure>`;
}

/** The grid of sheets by row letter and column number, each with its page. */
function sheetMap({ paper, sheets }: SheetTable, words: PageWords): Markup {
  const cells = sheets.map(({ page, label }) => ({ page, label, ...gridPlace(label) }));
  const rows = [...new Set(cells.map(({ row }) => row))];
  const columns = [...new Set(cells.map(({ column }) => column))].sort((a, b) => a - b);
  return html`<p>${words.sheetsCaption(paper, sheets.length)}</p><div class="wide"><table class="sheets">${rows.map(
    (row) =>
      html`<tr>${columns.map((column) => {
        const cell = cells.find((one) => one.row === row && one.column === column);
        return html`<td>${cell && html`<b>${cell.label}</b><br><span class="soft">${words.page(cell.page)}</span>`}</td>`;
      })}</tr>`,
  )}</table></div>`;
}

function gridPlace(label: string): { row: string; column: number } {
  const [, row = label, column = '0'] = /^([A-Z]+)(\d+)$/.exec(label) ?? [];
  return { row, column: Number(column) };
}

function tableOf({ heads, figuresFrom, rows, note }: PageTable): Markup {
  const kind = (i: number) => (i >= figuresFrom ? html` class="figure"` : html``);
  return html`<div class="wide"><table><thead><tr>${heads.map((head, i) => html`<th scope="col"${kind(i)}>${head}</th>`)}</tr></thead><tbody>${rows.map(
    (row) => html`<tr>${row.map((cell, i) => html`<td${kind(i)}>${cell}</td>`)}</tr>`,
  )}</tbody></table></div>${note === undefined ? html`` : html`<p class="soft">${note}</p>`}`;
}

function finding({ level, place, message, why, hint }: PageFinding, words: PageWords): Markup {
  return html`<div class="finding ${level}"><p><b>${words.levels[level]}</b> <span class="soft">${place}</span></p><p>${said(message)}</p><p>${said(why)}</p><p>${said(hint)}</p></div>`;
}

/** What stands between backquotes is written as in the spec. */
function said(text: string): Markup {
  const parts = text.split('`');
  if (parts.length % 2 === 0) return html`${text}`;
  return html`${parts.map((part, i) => (i % 2 === 1 ? html`<code>${part}</code>` : part))}`;
}

/** Loads the page anew when the draft beneath it is a newer one. The address is a constant of the program's own. */
function refreshing(address: string): string {
  return `\nnew EventSource(${JSON.stringify(address)}).onmessage=()=>location.reload();\n`;
}

function filled(text: string, slots: Readonly<Record<string, Markup>>): string {
  return text.replace(/\{\{(\w+)\}\}/g, (_whole, name: string) => {
    const slot = slots[name];
    if (slot === undefined) throw new Error(`the page has no ${name}`);
    return slot.text;
  });
}
