/* The line check remembers each tick as it is set, and shows what others tick meanwhile. Without script a button sends them all. */
(function () {
  'use strict';
  var EVERY_MS = 5000;
  var form = document.getElementById('check');
  if (!form) {
    return;
  }
  var said = document.getElementById('check-said');
  var waiting = {};
  var pending = 0;
  form.classList.add('scripted');

  function boxes() {
    return Array.prototype.slice.call(form.querySelectorAll('input[name="tick"]'));
  }

  function show(state) {
    document.getElementById('check-count').textContent = state.done;
    document.getElementById('check-done').value = state.done;
    boxes().forEach(function (box) {
      if (waiting[box.value]) {
        return;
      }
      var who = state.ticked[box.value];
      box.checked = who !== undefined;
      box.closest('label').querySelector('.tick-who').textContent = who === undefined ? '' : who;
    });
  }

  function told(answer) {
    if (!answer.ok) {
      throw new Error(String(answer.status));
    }
    return answer.json();
  }

  form.addEventListener('change', function (event) {
    var box = event.target;
    if (box.name !== 'tick' || !form.hasAttribute('data-sends')) {
      return;
    }
    var key = box.value;
    var body = new URLSearchParams();
    body.append(box.checked ? 'tick' : 'was', key);
    waiting[key] = (waiting[key] || 0) + 1;
    pending += 1;
    fetch(form.getAttribute('action'), {method: 'POST', body: body, headers: {Accept: 'application/json'}}).then(told).then(function (state) {
      waiting[key] -= 1;
      pending -= 1;
      said.textContent = '';
      show(state);
    }).catch(function () {
      waiting[key] -= 1;
      pending -= 1;
      box.checked = !box.checked;
      said.textContent = 'That tick could not be kept. Try again in a moment.';
    });
  });

  setInterval(function () {
    if (document.hidden || pending > 0) {
      return;
    }
    fetch(form.getAttribute('data-read'), {headers: {Accept: 'application/json'}}).then(told).then(function (state) {
      if (pending === 0) {
        show(state);
      }
    }).catch(function () {
      // the next look will tell
    });
  }, EVERY_MS);
}());
