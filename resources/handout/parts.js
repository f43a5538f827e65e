/* Pieces of the page. Everything that is shown goes through text nodes: words of the coach and of
 * the lifter never become markup. */
function el(tag, attributes, ...children) {
  const node = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes || {})) {
    if (name === 'class') node.className = value;
    else if (name.startsWith('on')) node.addEventListener(name.slice(2), value);
    else if (typeof value === 'boolean') node[name] = value;
    else if (value !== undefined) node.setAttribute(name, value);
  }
  node.append(...children.flat().filter(child => child !== null && child !== ''));
  return node;
}

function words(pattern, ...values) {
  return values.reduce((text, value, i) => text.split('%' + (i + 1)).join(value), pattern);
}

function button(text, act, attributes) {
  return el('button', Object.assign({type: 'button', onclick: act}, attributes), text);
}

/* One of several, as large buttons that are radio buttons to the keyboard and to a reader.
 * A second tap on the chosen one takes it back. */
function choice({name, legend, options, chosen, choose, ends, inWords}) {
  const said = options.find(option => option.value === chosen);
  const chips = options.map(option => {
    const on = option.value === chosen;
    const input = el('input', {type: 'radio', name, id: name + '-' + option.value, checked: on,
      'aria-label': option.words || option.label,
      onclick: () => choose(on ? null : option.value)});
    return el('label', {class: on ? 'chip on' : 'chip'}, input, (on && !ends ? '✓ ' : '') + option.label);
  });
  return el('fieldset', {},
    el('legend', {}, legend, said && said.words && !inWords
      ? el('span', {class: 'said'}, ': ' + said.words) : ''),
    el('div', {class: inWords ? 'chips words' : ends ? 'chips numbers' : 'chips names'}, chips),
    ends ? el('div', {class: 'ends'}, el('span', {}, ends[0]), el('span', {}, ends[1])) : '');
}

/* Five steps, each with its word. */
function scale(name, legend, steps, chosen, choose) {
  const options = steps.map((step, i) => ({value: i + 1, label: String(i + 1), words: step}));
  return choice({name, legend, options, chosen, choose,
    ends: ['1 ' + steps[0], steps[4] + ' 5']});
}

function stepper({id, label, value, step, change, decimal}) {
  const input = el('input', {id, type: 'text', inputmode: decimal ? 'decimal' : 'numeric', value,
    autocomplete: 'off', oninput: () => change(input.value)});
  const move = by => {
    const now = typed(input.value);
    const next = Math.max(0, (isNaN(now) ? 0 : now) + by);
    input.value = plain(next, 2).replace('.', plan.decimal);
    change(input.value);
  };
  return el('div', {}, el('label', {class: 'field', for: id}, label),
    el('div', {class: 'stepper'},
      button('−', () => move(-step), {'aria-label': words(W.less, label), id: id + '-less'}), input,
      button('+', () => move(step), {'aria-label': words(W.more, label), id: id + '-more'})));
}

function textField(id, label, value, change) {
  const input = el('textarea', {id, rows: 2, maxlength: 500, oninput: () => change(input.value)});
  input.value = value;
  return el('label', {class: 'field', for: id}, label, input);
}

function notice(text, danger) {
  return el('p', {class: danger ? 'notice danger' : 'notice', role: danger ? 'alert' : 'note'}, text);
}

/* Words between commas, without the empty ones. */
function listed(...parts) {
  return parts.filter(Boolean).join(', ');
}
