// What the screens need from the browser and .NET does not reach by itself.

export function read(key) {
  try { return localStorage.getItem(key); } catch { return null; }
}

export function write(key, value) {
  try {
    if (value === null) localStorage.removeItem(key);
    else localStorage.setItem(key, value);
  } catch { /* private windows may have no storage: drafts are then kept in memory only */ }
}

export function focus(element, select) {
  if (!element) return;
  element.focus();
  if (select && element.select) element.select();
}

export function focusById(id) {
  const element = document.getElementById(id);
  if (element) element.focus();
}

export function printScreen() {
  window.print();
}

export function showDialog(dialog) {
  if (dialog && !dialog.open) dialog.showModal();
}

export function closeDialog(dialog) {
  if (dialog && dialog.open) dialog.close();
}

// Ctrl+Z outside of a text field takes the last delete back; inside a field with text it stays the field's own undo.
export function listenForUndo(page) {
  const onKey = event => {
    if (!(event.ctrlKey || event.metaKey) || event.shiftKey || event.altKey || event.key.toLowerCase() !== 'z') return;
    const target = event.target;
    const typing = target.matches && target.matches('input, textarea') && target.type !== 'checkbox' && target.value !== '';
    if (typing) return;
    event.preventDefault();
    page.invokeMethodAsync('UndoFromKeyboard');
  };
  document.addEventListener('keydown', onKey);
}

// Several lines pasted into a one-line field would be run together by the browser; they go to the paste list instead.
export function listenForLines(input, page) {
  input.addEventListener('paste', event => {
    const text = (event.clipboardData || window.clipboardData).getData('text');
    if (!/[\r\n]/.test(text.trim())) return;
    event.preventDefault();
    page.invokeMethodAsync('LinesPasted', text);
  });
}

// Items of a list are dragged up and down; the others make room. The order itself is .NET's: it is told each new place, and where the item was let go.
export function listenForStrips(list, page) {
  if (!list) return;
  let drag = null;

  const show = () => {
    const { items, from, to, offset } = drag;
    const room = items[from].offsetHeight;
    items.forEach((item, i) => {
      const shift = i === from ? offset : i > from && i <= to ? -room : i < from && i >= to ? room : 0;
      item.style.transform = shift ? `translateY(${shift}px)` : '';
    });
  };

  const placeOf = () => {
    const { items, from, offset } = drag;
    const top = items[from].offsetTop + offset;
    const bottom = top + items[from].offsetHeight;
    const middle = item => item.offsetTop + item.offsetHeight / 2;
    let place = from;
    while (place > 0 && top < middle(items[place - 1])) place--;
    while (place < items.length - 1 && bottom > middle(items[place + 1])) place++;
    return place;
  };

  const end = async stays => {
    const ended = drag;
    drag = null;
    if (!ended || !ended.moves) return;
    list.classList.remove('dragging');
    await page.invokeMethodAsync('StripDropped', ended.to, stays);
    ended.items.forEach(item => { item.style.transform = ''; item.classList.remove('dragged'); });
  };

  list.addEventListener('pointerdown', event => {
    const item = event.target.closest('li');
    if (!item || !event.isPrimary || event.button !== 0) return;
    const items = [...list.children];
    drag = { items, from: items.indexOf(item), to: items.indexOf(item), start: event.clientY + window.scrollY, offset: 0, moves: false };
  });

  list.addEventListener('pointermove', event => {
    if (!drag || !event.isPrimary) return;
    drag.offset = event.clientY + window.scrollY - drag.start;
    if (!drag.moves) {
      // A trembling finger that taps is not a drag. Captured only now, so that a tap stays a tap.
      if (Math.abs(drag.offset) < 6) return;
      drag.moves = true;
      drag.items[drag.from].setPointerCapture(event.pointerId);
      drag.items[drag.from].classList.add('dragged');
      list.classList.add('dragging');
    }

    const place = placeOf();
    if (place !== drag.to) {
      drag.to = place;
      page.invokeMethodAsync('StripOver', drag.from, place);
    }

    show();
  });

  list.addEventListener('pointerup', () => end(true));
  list.addEventListener('pointercancel', () => end(false));
  // A finger is held by what it first touched until the item takes it over: that loss is none.
  list.addEventListener('lostpointercapture', event => { if (drag && event.target === drag.items[drag.from]) end(false); });

  list.addEventListener('keydown', event => {
    if (!['ArrowUp', 'ArrowDown', 'Home', 'End', 'Escape'].includes(event.key) || event.ctrlKey || event.altKey || event.metaKey) return;
    event.preventDefault();
    if (event.key === 'Escape' && drag && drag.moves) {
      event.stopPropagation();
      end(false);
    }
  });
}

// Lines of a calendar are dragged onto days where the days stand side by side; a finger takes hold of the grip, so that the page can still be scrolled.
export function listenForDays(weeks, page) {
  if (!weeks) return;
  const wide = window.matchMedia('(min-width: 50rem)');
  let drag = null;

  const dayAt = event => {
    const found = document.elementsFromPoint(event.clientX, event.clientY).filter(e => !drag.line.contains(e)).map(e => e.closest('[data-day]')).find(e => e);
    return found && found.classList.contains('open') ? found : null;
  };

  const end = (event, stays) => {
    const ended = drag;
    drag = null;
    if (!ended || !ended.moves) return;
    ended.line.style.transform = '';
    ended.line.classList.remove('dragged');
    if (ended.day) ended.day.classList.remove('drop-here');
    // What was dragged is not also chosen by the click that follows.
    const swallow = click => { click.stopPropagation(); click.preventDefault(); };
    weeks.addEventListener('click', swallow, { capture: true, once: true });
    setTimeout(() => weeks.removeEventListener('click', swallow, { capture: true }), 0);
    const home = ended.line.closest('[data-day]');
    if (stays && ended.day && ended.day !== home) page.invokeMethodAsync('LineDropped', ended.line.dataset.line, ended.day.dataset.day);
  };

  weeks.addEventListener('pointerdown', event => {
    const line = event.target.closest('[data-line]');
    if (!line || !wide.matches || !event.isPrimary || event.button !== 0) return;
    if (event.pointerType !== 'mouse' && !event.target.closest('.day-grip')) return;
    drag = { line, x: event.clientX + window.scrollX, y: event.clientY + window.scrollY, day: null, moves: false };
  });

  weeks.addEventListener('pointermove', event => {
    if (!drag || !event.isPrimary) return;
    const x = event.clientX + window.scrollX - drag.x;
    const y = event.clientY + window.scrollY - drag.y;
    if (!drag.moves) {
      // A trembling finger that taps is not a drag. Captured only now, so that a tap stays a tap.
      if (Math.hypot(x, y) < 6) return;
      drag.moves = true;
      drag.line.setPointerCapture(event.pointerId);
      drag.line.classList.add('dragged');
    }

    drag.line.style.transform = `translate(${x}px, ${y}px)`;
    const day = dayAt(event);
    if (day === drag.day) return;
    if (drag.day) drag.day.classList.remove('drop-here');
    if (day) day.classList.add('drop-here');
    drag.day = day;
  });

  weeks.addEventListener('pointerup', event => end(event, true));
  weeks.addEventListener('pointercancel', event => end(event, false));
  // A finger is held by what it first touched until the line takes it over: that loss is none.
  weeks.addEventListener('lostpointercapture', event => { if (drag && event.target === drag.line) end(event, false); });

  weeks.addEventListener('keydown', event => {
    if (event.ctrlKey || event.altKey || event.metaKey) return;
    if (event.key === 'Escape') end(event, false);
    const line = event.target.closest('[data-line]');
    if (line && line.getAttribute('aria-pressed') === 'true' && ['ArrowUp', 'ArrowDown', 'ArrowLeft', 'ArrowRight'].includes(event.key)) event.preventDefault();
  });
}

const streams = new Map();
let lastStream = 0;

export function openEvents(address, name, page) {
  const source = new EventSource(address);
  source.addEventListener(name, event => page.invokeMethodAsync('EventArrived', event.data));
  source.addEventListener('open', () => page.invokeMethodAsync('EventsOpen', true));
  source.addEventListener('error', () => page.invokeMethodAsync('EventsOpen', false));
  streams.set(++lastStream, source);
  return lastStream;
}

export function closeEvents(id) {
  const source = streams.get(id);
  if (source) source.close();
  streams.delete(id);
}

export function save(name, type, text) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type }));
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(link.href), 10000);
}

export function setTitle(title) {
  document.title = title;
}
