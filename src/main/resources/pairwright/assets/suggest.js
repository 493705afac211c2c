/* Suggestions while a sentence is typed, as a combobox with a list. Without them the field is what it is: a field. */
(function () {
  'use strict';

  var PAUSE_MS = 120;
  var PATIENCE_MS = 4000;
  var LONGEST = 300; // longer sentences are not completed

  var WORDS = {
    source: 'source', way: 'way of playing', dynamic: 'how loud', room: 'room', character: 'character', limit: 'limit', wish: 'wish',
    neighbour: 'neighbour', circumstance: 'circumstance', technique: 'technique'
  };

  function element(name, className, text) {
    var made = document.createElement(name);
    made.className = className;
    if (text) {
      made.textContent = text;
    }
    return made;
  }

  function suggest(input, number) {
    var list = element('ul', 'suggest-list');
    var status = element('p', 'visually-hidden');
    var shown = [];
    var active = -1;
    var timer = 0;
    var asked = 0;
    var answeredFor = null;
    var pending = null;

    function build() {
      var frame = element('div', 'suggest');
      list.id = 'suggestions-' + number;
      list.hidden = true;
      list.setAttribute('role', 'listbox');
      list.setAttribute('aria-label', 'Suggestions');
      status.setAttribute('role', 'status');
      status.setAttribute('aria-live', 'polite');
      var focused = document.activeElement === input;
      input.parentNode.insertBefore(frame, input);
      frame.appendChild(input);
      frame.appendChild(list);
      frame.appendChild(status);
      if (focused) {
        input.focus(); // it was lost while the field was moved into its frame
      }
      input.setAttribute('role', 'combobox');
      input.setAttribute('aria-autocomplete', 'list');
      input.setAttribute('aria-expanded', 'false');
      input.setAttribute('aria-controls', list.id);
      input.setAttribute('autocomplete', 'off');
      input.setAttribute('autocapitalize', 'off');
      input.setAttribute('spellcheck', 'false');
    }

    function isOpen() {
      return !list.hidden;
    }

    function close() {
      list.hidden = true;
      active = -1;
      input.setAttribute('aria-expanded', 'false');
      input.removeAttribute('aria-activedescendant');
    }

    /* What is on its way or waits to be asked is no longer wanted. */
    function forget() {
      window.clearTimeout(timer);
      asked += 1;
      if (pending) {
        pending.abort();
        pending = null;
      }
    }

    function say(text) {
      status.textContent = text;
    }

    function choose(at) {
      var options = list.children;
      if (active >= 0) {
        options[active].setAttribute('aria-selected', 'false');
      }
      active = at;
      if (active < 0) {
        input.removeAttribute('aria-activedescendant');
        return;
      }
      options[active].setAttribute('aria-selected', 'true');
      input.setAttribute('aria-activedescendant', options[active].id);
      options[active].scrollIntoView({block: 'nearest'});
    }

    function option(one, at) {
      var made = element('li', 'suggest-option');
      var words = element('span', 'suggest-words');
      var before = one.sentence.slice(0, one.sentence.length - one.text.length);
      made.id = list.id + '-' + at;
      made.setAttribute('role', 'option');
      made.setAttribute('aria-selected', 'false');
      if (before) {
        words.appendChild(element('span', 'suggest-said', before));
      }
      words.appendChild(element('span', 'suggest-new', one.text));
      made.appendChild(words);
      made.appendChild(document.createTextNode(' '));
      made.appendChild(element('span', 'suggest-as', WORDS[one.as] + (one.names ? ': ' + one.names : '')));
      return made;
    }

    function show(suggestions) {
      shown = suggestions;
      choose(-1);
      list.replaceChildren.apply(list, suggestions.map(option));
      if (suggestions.length === 0) {
        close();
        say('No suggestions');
        return;
      }
      list.scrollTop = 0;
      list.hidden = false;
      input.setAttribute('aria-expanded', 'true');
      say(suggestions.length === 1 ? '1 suggestion' : suggestions.length + ' suggestions');
    }

    function ask() {
      var words = input.value;
      forget();
      if (words.trim() === '' || words.length > LONGEST || input.selectionStart !== words.length) {
        close();
        say('');
        return;
      }
      var mine = asked;
      pending = 'AbortController' in window ? new AbortController() : null;
      var stop = pending;
      var patience = window.setTimeout(function () {
        if (stop) {
          stop.abort();
        }
      }, PATIENCE_MS);
      fetch('/api/suggest?words=' + encodeURIComponent(words), {headers: {Accept: 'application/json'}, signal: stop ? stop.signal : undefined})
        .then(function (response) {
          return response.ok ? response.json() : {suggestions: []};
        })
        .then(function (found) {
          if (mine === asked && input.value === words && document.activeElement === input) {
            answeredFor = words;
            show(found.suggestions);
          }
        })
        .catch(function () {
          if (mine === asked) {
            close();
            say(''); // what was said of an earlier list holds no longer
          }
        })
        .finally(function () {
          window.clearTimeout(patience);
        });
    }

    function take(at) {
      forget();
      input.value = shown[at].sentence;
      input.setSelectionRange(input.value.length, input.value.length);
      close();
      input.dispatchEvent(new CustomEvent('suggestion-taken', {bubbles: true, detail: shown[at]}));
      say(shown[at].text + ' taken');
    }

    function step(by) {
      var next = active + by;
      if (next < -1) {
        next = shown.length - 1;
      } else if (next >= shown.length) {
        next = -1; // back in the field, then round again
      }
      choose(next);
    }

    function onKey(event) {
      if (event.isComposing || event.ctrlKey || event.metaKey) {
        return;
      }
      switch (event.key) {
        case 'ArrowDown':
        case 'ArrowUp':
          if (isOpen()) {
            step(event.key === 'ArrowDown' ? 1 : -1);
          } else if (!event.altKey && answeredFor === input.value && shown.length > 0) {
            show(shown);
            step(event.key === 'ArrowDown' ? 1 : -1);
          } else {
            ask();
          }
          event.preventDefault();
          break;
        case 'Enter':
          if (isOpen() && active >= 0) {
            take(active);
            event.preventDefault(); // takes the suggestion; only the next Enter asks
          } else {
            forget();
            close();
          }
          break;
        case 'Escape':
          if (isOpen()) {
            forget();
            close();
            say('');
            event.preventDefault();
          }
          break;
        case 'Tab':
          forget();
          close();
          break;
        case 'Home':
        case 'End':
        case 'ArrowLeft':
        case 'ArrowRight':
          choose(-1); // the cursor moves in the sentence
          break;
        default:
      }
    }

    build();
    input.addEventListener('input', function () {
      forget();
      timer = window.setTimeout(ask, PAUSE_MS);
    });
    input.addEventListener('keydown', onKey);
    input.addEventListener('blur', function () {
      forget();
      close();
    });
    list.addEventListener('mousedown', function (event) {
      event.preventDefault(); // the field keeps the focus, with a finger too
    });
    list.addEventListener('click', function (event) {
      var at = Array.prototype.indexOf.call(list.children, event.target.closest('.suggest-option'));
      if (at >= 0) {
        take(at);
      }
    });
    if (input.form) {
      input.form.addEventListener('submit', function () {
        forget();
        close();
      });
    }
  }

  if (!('fetch' in window) || !('closest' in Element.prototype)) {
    return;
  }
  document.querySelectorAll('input[data-suggest]').forEach(suggest);
}());
