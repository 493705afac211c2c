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
