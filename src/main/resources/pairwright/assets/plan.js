/* The line check keeps each tick as it is set, and shows what others tick meanwhile. What cannot be sent waits and is sent again. Without script a button sends them all. */
(function () {
  'use strict';
  var EVERY_MS = 5000;
  var form = document.getElementById('check');
  if (!form) {
    return;
  }
  var said = document.getElementById('check-said');
  /* What was ticked here and is not kept yet, by key. */
  var unsent = {};
  var sending = false;
  form.classList.add('scripted');

  function boxes() {
    return Array.prototype.slice.call(form.querySelectorAll('input[name="tick"]'));
  }

  function count() {
    var done = boxes().filter(function (box) { return box.checked; }).length;
    document.getElementById('check-count').textContent = done;
    document.getElementById('check-done').value = done;
  }

  function say(text) {
    if (said.textContent !== text) {
      said.textContent = text;
    }
  }

  function show(state) {
    boxes().forEach(function (box) {
      if (box.value in unsent) {
        return;
      }
      var who = state.ticked[box.value];
      box.checked = who !== undefined;
      box.closest('label').querySelector('.tick-who').textContent = who === undefined ? '' : who;
    });
    count();
    var of = form.getAttribute('data-plan');
    say(of && of !== state.plan ? 'Another plan was taken meanwhile. Load this page again to see it.' : '');
  }

  function told(answer) {
    if (!answer.ok) {
      var refused = new Error(String(answer.status));
      refused.forGood = answer.status >= 400 && answer.status < 500 && answer.status !== 408 && answer.status !== 429;
      throw refused;
    }
    return answer.json();
  }

  function send() {
    var keys = Object.keys(unsent);
    if (sending || keys.length === 0) {
      return;
    }
    var sent = {};
    var body = new URLSearchParams();
    keys.forEach(function (key) {
      sent[key] = unsent[key];
      body.append(sent[key] ? 'tick' : 'was', key);
    });
    sending = true;
    fetch(form.getAttribute('action'), {method: 'POST', body: body, headers: {Accept: 'application/json'}}).then(told).then(function (state) {
      sending = false;
      keys.forEach(function (key) {
        if (unsent[key] === sent[key]) {
          delete unsent[key];
        }
      });
      show(state);
      send();
    }).catch(function (fault) {
      sending = false;
      if (fault.forGood) {
        boxes().forEach(function (box) {
          if (box.value in sent) {
            box.checked = !sent[box.value];
            delete unsent[box.value];
          }
        });
        count();
        say('That tick was refused. Load this page again, and tick it there.');
      } else {
        var waits = Object.keys(unsent).length;
        say((waits === 1 ? 'One tick is' : waits + ' ticks are') + ' not kept yet, as nothing answers. Leave this page open: it tries again by itself.');
      }
    });
  }

  form.addEventListener('change', function (event) {
    var box = event.target;
    if (box.name === 'tick' && form.hasAttribute('data-sends')) {
      unsent[box.value] = box.checked;
      count();
      send();
    }
  });

  addEventListener('beforeunload', function (event) {
    if (Object.keys(unsent).length > 0) {
      event.preventDefault();
    }
  });

  function look() {
    if (document.hidden || sending) {
      return;
    }
    if (Object.keys(unsent).length > 0) {
      send();
      return;
    }
    fetch(form.getAttribute('data-read'), {headers: {Accept: 'application/json'}}).then(told).then(function (state) {
      if (!sending) {
        show(state);
      }
    }).catch(function () {
      // the next look will tell
    });
  }

  setInterval(look, EVERY_MS);
  document.addEventListener('visibilitychange', look);
  addEventListener('online', look);
}());
