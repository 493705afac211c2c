/* A file with a table goes into the field for it, where it can be read before it is sent. Without script it is pasted there. */
(function () {
  'use strict';
  document.querySelectorAll('input[type="file"][data-into]').forEach(function (file) {
    var into = document.getElementById(file.getAttribute('data-into'));
    var said = document.getElementById('file-said');
    file.closest('.file').hidden = false;
    file.addEventListener('change', function () {
      if (!file.files.length) {
        return;
      }
      file.files[0].arrayBuffer().then(function (bytes) {
        into.value = new TextDecoder('utf-8', {fatal: true}).decode(bytes);
        said.textContent = '';
        into.focus();
      }).catch(function () {
        said.textContent = 'This file is not in UTF-8. Save it as CSV in UTF-8, and choose it again.';
      });
    });
  });
}());

/* At the desk what is scanned next takes the place of what stands in the field. */
(function () {
  'use strict';
  var scan = document.querySelector('input[data-scan]');
  if (scan && document.activeElement === scan) {
    scan.select();
  } else if (scan) {
    scan.addEventListener('focus', function () {
      scan.select();
    }, {once: true});
  }
}());

/* What the server is still working out is looked at again, until it is there. Without script a link does the same. */
(function () {
  'use strict';
  var EVERY_MS = 700;
  function again(place) {
    setTimeout(function () {
      fetch(place.getAttribute('data-again')).then(function (answer) {
        return answer.text();
      }).then(function (text) {
        var next = new DOMParser().parseFromString(text, 'text/html').getElementById(place.id);
        if (!next) {
          return;
        }
        var waits = next.hasAttribute('data-again');
        if (waits && place.querySelector('progress')) {
          place.querySelector('progress').value = next.querySelector('progress').value;
          place.querySelector('label').textContent = next.querySelector('label').textContent;
          again(place);
        } else {
          place.replaceWith(document.adoptNode(next));
          document.getElementById(place.id + '-said').textContent = next.getAttribute('data-said');
        }
      }).catch(function () {
        again(place);
      });
    }, EVERY_MS);
  }
  document.querySelectorAll('[data-again]').forEach(again);
}());
