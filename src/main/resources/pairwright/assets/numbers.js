/* A changed number is worked out at once, in place; without this the form does the same by its button. */
(function () {
  'use strict';
  var WAIT_MS = 60;
  var form = document.querySelector('form[data-worked]');
  var region = form && document.getElementById(form.getAttribute('data-worked'));
  var said = document.getElementById('worked-said');
  if (!form || !region || !window.fetch || !window.URLSearchParams) {
    return;
  }
  var timer = 0;
  var turn = 0;
  var running = null;

  function say(text) {
    if (said && said.textContent !== text) {
      said.textContent = text;
    }
  }

  /* What is wrong stands at its field, and nothing there that no longer is. */
  function markFields() {
    var faults = {};
    region.querySelectorAll('[data-field]').forEach(function (one) {
      faults[one.getAttribute('data-field')] = one.textContent.trim();
    });
    form.querySelectorAll('.field').forEach(function (field) {
      var control = field.querySelector('input, select');
      var words = field.querySelector('.fault');
      var fault = faults[control.name] || '';
      words.textContent = fault;
      words.hidden = !fault;
      if (fault) {
        control.setAttribute('aria-invalid', 'true');
      } else {
        control.removeAttribute('aria-invalid');
      }
    });
    return Object.keys(faults).length;
  }

  function show(html, toResult) {
    region.innerHTML = html;
    region.classList.remove('busy');
    var wrong = markFields();
    var answer = region.querySelector('[data-says]');
    var dangers = region.querySelectorAll('.danger').length;
    say(answer ? (dangers ? 'Danger, see the cautions. ' : '') + answer.textContent : wrong + (wrong === 1 ? ' field' : ' fields') + ' cannot be used.');
    if (toResult) {
      var bad = form.querySelector('[aria-invalid="true"]');
      if (bad) {
        bad.focus();
      } else {
        var heading = region.querySelector('h2');
        heading.setAttribute('tabindex', '-1');
        heading.focus();
      }
    }
  }

  function work(toResult) {
    var mine = ++turn;
    clearTimeout(timer);
    if (running) {
      running.abort();
    }
    running = window.AbortController ? new AbortController() : null;
    var query = new URLSearchParams(new FormData(form)).toString();
    region.classList.add('busy');
    fetch(location.pathname + '?' + query + '&part=worked', {signal: running ? running.signal : undefined, credentials: 'same-origin'}).then(function (reply) {
      return reply.text().then(function (html) {
        if (mine !== turn) {
          return;
        }
        if (reply.status !== 200 && reply.status !== 400 || html.indexOf('<h2>') < 0) {
          throw new Error('status ' + reply.status);
        }
        history.replaceState(history.state, '', location.pathname + '?' + query);
        show(html, toResult);
      });
    }).catch(function (lost) {
      if (mine === turn && lost.name !== 'AbortError') {
        region.classList.remove('busy');
        say('The numbers could not be worked out just now. Try the button.');
      }
    });
  }

  form.addEventListener('input', function () {
    clearTimeout(timer);
    timer = setTimeout(function () {
      work(false);
    }, WAIT_MS);
  });
  form.addEventListener('change', function () {
    work(false);
  });
  form.addEventListener('submit', function (event) {
    event.preventDefault();
    work(true);
  });
}());
