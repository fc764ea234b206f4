/* What the page can do beside being read: zoom and measure the pattern, switch layers, name a piece on a lay; loaded anew, as `watch` does after a save, it is as she left it. */
(() => {
  document.documentElement.classList.add('js');
  const SVG = 'http://www.w3.org/2000/svg';

  const viewers = [...document.querySelectorAll('.viewer')].map(viewer);
  for (const figure of document.querySelectorAll('.lay')) namePieces(figure);
  const KEPT = `as left ${location.pathname}`;
  leftAgain();
  addEventListener('pagehide', asLeft);

  function asLeft() {
    // The last that begins above a fifth of the window: it is what she looks at.
    const under = [...document.querySelectorAll('header, section')].filter((one) => one.getBoundingClientRect().top <= innerHeight / 5).pop();
    const left = { viewers: viewers.map(({ left }) => left()), section: under?.id, off: under?.getBoundingClientRect().top };
    try {
      sessionStorage.setItem(KEPT, JSON.stringify(left));
    } catch {
      // A browser that keeps nothing shows the whole again.
    }
  }

  /* By the section that was in view: a finding more above it, or lays that were not there yet, do not push it away. */
  function leftAgain() {
    if (performance.getEntriesByType('navigation')[0]?.type !== 'reload') return;
    let left;
    try {
      left = JSON.parse(sessionStorage.getItem(KEPT));
    } catch {
      // What cannot be read is as if it had never been kept.
    }
    if (!left) return;
    left.viewers.forEach((own, i) => viewers[i]?.restore(own));
    const section = left.section && document.getElementById(left.section);
    if (!section) return;
    history.scrollRestoration = 'manual';
    scrollBy(0, section.getBoundingClientRect().top - left.off);
  }

  function viewer(figure) {
    const frame = figure.querySelector('.drawing');
    const svg = frame.querySelector('svg');
    const said = figure.querySelector('output');
    const whole = svg.getAttribute('viewBox').split(' ').map(Number);
    let box = [...whole];
    let from;
    let to;
    let measuring = false;
    const ruler = document.createElementNS(SVG, 'path');
    ruler.setAttribute('fill', 'none');
    ruler.setAttribute('stroke', '#b3261e');
    svg.append(ruler);
    svg.removeAttribute('width');
    svg.removeAttribute('height');

    const show = () => {
      svg.setAttribute('viewBox', box.join(' '));
      const fine = Math.max(box[2], box[3]);
      ruler.setAttribute('stroke-width', fine / 500);
      ruler.setAttribute('d', from === undefined ? '' : mark(from, fine) + (to === undefined ? '' : `M${from.x} ${from.y}L${to.x} ${to.y}${mark(to, fine)}`));
    };
    const mark = (at, fine) => {
      const arm = fine / 90;
      return `M${at.x - arm} ${at.y}h${2 * arm}M${at.x} ${at.y - arm}v${2 * arm}`;
    };
    const zoom = (by, at = { x: box[0] + box[2] / 2, y: box[1] + box[3] / 2 }) => {
      const size = Math.min(Math.max(box[2] / by, whole[2] / 200), whole[2] * 2);
      const ratio = size / box[2];
      box = [at.x - (at.x - box[0]) * ratio, at.y - (at.y - box[1]) * ratio, size, box[3] * ratio];
      show();
    };
    const pan = (x, y) => {
      box = [box[0] + x, box[1] + y, box[2], box[3]];
      show();
    };
    const place = (event) => {
      const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
      return { x: at.x, y: at.y };
    };
    const perPixel = () => 1 / svg.getScreenCTM().a;
    const measure = (at) => {
      if (from === undefined || to !== undefined) {
        from = at;
        to = undefined;
        said.textContent = figure.dataset.second;
      } else {
        to = at;
        said.textContent = length(Math.hypot(to.x - from.x, to.y - from.y));
      }
      show();
    };
    const length = (mm) => `${(mm / Number(figure.dataset.mm)).toFixed(Number(figure.dataset.decimals))} ${figure.dataset.unit}`;
    const setMeasuring = (on) => {
      measuring = on;
      frame.classList.toggle('measuring', on);
      figure.querySelector('[data-do=measure]').setAttribute('aria-pressed', String(on));
      from = undefined;
      to = undefined;
      said.textContent = on ? figure.dataset.first : '';
      show();
    };
    const does = {
      in: () => zoom(1.25),
      out: () => zoom(0.8),
      whole: () => {
        box = [...whole];
        show();
      },
      measure: () => setMeasuring(!measuring),
    };
    for (const button of figure.querySelectorAll('[data-do]')) button.addEventListener('click', () => does[button.dataset.do]());
    for (const input of figure.querySelectorAll('[data-layer]')) input.addEventListener('change', switchLayers);
    function switchLayers() {
      const on = [...figure.querySelectorAll('[data-layer]')].filter((one) => one.checked).map((one) => one.dataset.layer);
      for (const piece of svg.querySelectorAll('.piece'))
        piece.style.display = piece.dataset.layers.split(' ').some((layer) => on.includes(layer)) ? '' : 'none';
    }

    frame.addEventListener('wheel', (event) => {
      event.preventDefault();
      zoom(event.deltaY < 0 ? 1.15 : 1 / 1.15, place(event));
    }, { passive: false });
    const held = new Map();
    let moved = 0;
    frame.addEventListener('pointerdown', (event) => {
      held.set(event.pointerId, event);
      moved = 0;
      frame.setPointerCapture(event.pointerId);
    });
    frame.addEventListener('pointermove', (event) => {
      const before = held.get(event.pointerId);
      if (before === undefined) return;
      const [x, y] = [event.clientX - before.clientX, event.clientY - before.clientY];
      moved += Math.abs(x) + Math.abs(y);
      if (held.size === 1) pan(-x * perPixel(), -y * perPixel());
      else {
        const other = [...held.values()].find((one) => one.pointerId !== event.pointerId);
        const apart = (one) => Math.hypot(one.clientX - other.clientX, one.clientY - other.clientY);
        if (apart(before) > 0) zoom(apart(event) / apart(before), place(other));
      }
      held.set(event.pointerId, event);
    });
    frame.addEventListener('pointerup', (event) => {
      held.delete(event.pointerId);
      if (measuring && moved < 6) measure(place(event));
    });
    frame.addEventListener('pointercancel', (event) => held.delete(event.pointerId));
    frame.addEventListener('keydown', (event) => {
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      const step = box[2] / 12;
      const keys = {
        '+': () => zoom(1.25), '=': () => zoom(1.25), '-': () => zoom(0.8), 0: does.whole,
        ArrowLeft: () => pan(-step, 0), ArrowRight: () => pan(step, 0), ArrowUp: () => pan(0, -step), ArrowDown: () => pan(0, step),
        m: does.measure, Escape: () => setMeasuring(false),
        Enter: () => measuring && measure({ x: box[0] + box[2] / 2, y: box[1] + box[3] / 2 }),
      };
      const act = keys[event.key];
      if (act === undefined) return;
      event.preventDefault();
      act();
    });

    return {
      left: () => ({
        box: box.every((own, i) => own === whole[i]) ? undefined : box,
        off: [...figure.querySelectorAll('[data-layer]')].filter((one) => !one.checked).map((one) => one.dataset.layer),
        focused: document.activeElement === frame,
        measuring, from, to, said: said.textContent,
      }),
      restore: (left) => {
        for (const input of figure.querySelectorAll('[data-layer]')) input.checked = !left.off.includes(input.dataset.layer);
        switchLayers();
        setMeasuring(left.measuring);
        ({ from, to } = left);
        said.textContent = left.said;
        box = left.box ?? box;
        if (left.focused) frame.focus({ preventScroll: true });
        show();
      },
    };
  }

  function namePieces(figure) {
    const caption = figure.querySelector('output');
    const name = (event) => {
      const piece = event.target.closest('.placed');
      for (const one of figure.querySelectorAll('.named')) one.classList.remove('named');
      if (piece === null) return;
      piece.classList.add('named');
      const { gore, layer, copy, mirrored } = piece.dataset;
      caption.textContent = [gore, layer, `${figure.dataset.copy} ${copy}`, mirrored === 'true' ? figure.dataset.mirrored : '']
        .filter((part) => part)
        .join(', ');
    };
    figure.addEventListener('pointerover', name);
    figure.addEventListener('click', name);
  }
})();
