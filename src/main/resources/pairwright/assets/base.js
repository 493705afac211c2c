/* What every page can do: keep the light and the measures a reader chose, and find the ask field with one key. */
(function () {
  'use strict';
  var root = document.documentElement;

  function keep(name, value) {
    try {
      if (value === null) {
        localStorage.removeItem(name);
      } else {
        localStorage.setItem(name, value);
      }
    } catch (refused) {
      // it holds until the page is left
    }
  }

  /* light or dark */
  var group = document.querySelector('.theme');
  var buttons = group ? Array.prototype.slice.call(group.querySelectorAll('button')) : [];

  function showTheme() {
    var now = root.getAttribute('data-theme') || 'auto';
    buttons.forEach(function (button) {
      button.setAttribute('aria-pressed', String(button.getAttribute('data-theme-choice') === now));
    });
  }

  buttons.forEach(function (button) {
    button.addEventListener('click', function () {
      var choice = button.getAttribute('data-theme-choice');
      if (choice === 'auto') {
        root.removeAttribute('data-theme');
      } else {
        root.setAttribute('data-theme', choice);
      }
      keep('theme', choice === 'auto' ? null : choice);
      showTheme();
    });
  });
  if (group) {
    group.hidden = false;
    showTheme();
  }

  /* The links lead to the page as it was sent; a script may have changed the address since. */
  document.querySelectorAll('[data-measures]').forEach(function (link) {
    link.addEventListener('click', function () {
      var chosen = link.getAttribute('data-measures');
      keep('measures', chosen === 'imperial' ? chosen : null);
      var here = new URLSearchParams(location.search);
      here.delete('units');
      if (chosen === 'imperial') {
        here.append('units', 'imperial');
      }
      var query = here.toString();
      link.href = location.pathname + (query ? '?' + query : '') + location.hash;
    });
  });

  /* What is folded away is printed open, and folded again after. */
  var opened = [];
  window.addEventListener('beforeprint', function () {
    opened = Array.prototype.slice.call(document.querySelectorAll('details:not([open])'));
    opened.forEach(function (one) {
      one.open = true;
    });
  });
  window.addEventListener('afterprint', function () {
    opened.forEach(function (one) {
      one.open = false;
    });
    opened = [];
  });
}());
