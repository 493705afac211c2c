/* Runs before anything is shown, so that nothing is seen to jump: the chosen light, and the measures this reader likes. */
(function () {
  'use strict';
  var store = function (name) {
    try {
      return localStorage.getItem(name);
    } catch (kept) {
      return null; // a browser that keeps nothing still shows the page
    }
  };
  var theme = store('theme');
  if (theme === 'light' || theme === 'dark') {
    document.documentElement.setAttribute('data-theme', theme);
  }
  if (store('measures') === 'imperial' && !new URLSearchParams(location.search).has('units')) {
    location.replace(location.pathname + (location.search ? location.search + '&' : '?') + 'units=imperial' + location.hash);
  }
}());
