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
