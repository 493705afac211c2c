/* While recordings are sent and measured the page says so; it stays as it is until the answer comes. */
(function () {
  'use strict';
  document.querySelectorAll('form[data-listening]').forEach(function (form) {
    var said = form.querySelector('[role="status"]');
    form.addEventListener('submit', function () {
      var bytes = 0;
      form.querySelectorAll('input[type="file"]').forEach(function (input) {
        Array.prototype.forEach.call(input.files, function (file) {
          bytes += file.size;
        });
      });
      said.textContent = 'Sending ' + (bytes < 1e6 ? 'less than 1 MB' : Math.round(bytes / 1e6) + ' MB') + ' and measuring it. This page changes when that is done.';
    });
    window.addEventListener('pageshow', function () {
      said.textContent = '';
    });
  });
})();
