/* A place in a picture of a room can be pressed instead of typed: press where it stands, drag to where it points. The fields say the same and are what is sent. */
(function () {
  'use strict';
  var SVG = 'http://www.w3.org/2000/svg';
  var FAR_PX = 12;

  document.querySelectorAll('fieldset[data-spot]').forEach(function (asked) {
    var shown = document.getElementById(asked.getAttribute('data-spot'));
    var svg = shown && shown.querySelector('svg.drawing');
    var wall = svg && svg.querySelector('[data-px-per-m]');
    if (!wall) {
      return;
    }
    var field = {};
    asked.querySelectorAll('[data-axis]').forEach(function (input) {
      field[input.getAttribute('data-axis')] = input;
    });
    var pxPerM = Number(wall.getAttribute('data-px-per-m'));
    var wideM = Number(wall.getAttribute('data-width-m'));
    var deepM = Number(wall.getAttribute('data-depth-m'));
    var left = Number(wall.getAttribute('x'));
    var bottom = Number(wall.getAttribute('y')) + Number(wall.getAttribute('height'));
    var mark = document.createElementNS(SVG, 'path');
    mark.setAttribute('class', 'one');
    mark.setAttribute('fill', 'none');
    mark.setAttribute('stroke', '#0072b2');
    mark.setAttribute('stroke-width', '2.5');
    svg.appendChild(mark);
    svg.classList.add('pressed');
    var how = document.createElement('p');
    how.className = 'basis press-said';
    how.setAttribute('role', 'status');
    var stays = field.x.type === 'hidden';
    how.textContent = stays ? 'Or press in the picture where it looks.' : 'Or press the place in the picture, and drag to where it looks.';
    asked.appendChild(how);

    function number(input) {
      var text = input.value.trim().replace(',', '.').replace('\u2212', '-');
      return /^[-+]?\d+(\.\d+)?$/.test(text) ? Number(text) : NaN;
    }

    function draw() {
      var x = left + number(field.x) * pxPerM;
      var y = bottom - number(field.y) * pxPerM;
      var turn = number(field.aim) * Math.PI / 180;
      if (isNaN(x) || isNaN(y)) {
        mark.removeAttribute('d');
        return;
      }
      var ring = 'M' + (x - 6) + ' ' + y + 'a6 6 0 1 0 12 0a6 6 0 1 0 -12 0';
      mark.setAttribute('d', isNaN(turn) ? ring : ring + 'M' + x + ' ' + y + 'l' + 34 * Math.sin(turn) + ' ' + -34 * Math.cos(turn));
    }

    function at(event) {
      var point = svg.createSVGPoint();
      point.x = event.clientX;
      point.y = event.clientY;
      return point.matrixTransform(svg.getScreenCTM().inverse());
    }

    function within(value, most) {
      return Math.max(0, Math.min(most, value));
    }

    var from = null;

    function look(to) {
      if (Math.hypot(to.x - from.x, to.y - from.y) >= FAR_PX) {
        field.aim.value = String(Math.round(Math.atan2(to.x - from.x, from.y - to.y) * 180 / Math.PI));
      }
      draw();
    }

    svg.addEventListener('pointerdown', function (event) {
      var to = at(event);
      from = stays ? {x: left + number(field.x) * pxPerM, y: bottom - number(field.y) * pxPerM} : to;
      svg.setPointerCapture(event.pointerId);
      if (!stays) {
        field.x.value = within((from.x - left) / pxPerM, wideM).toFixed(2);
        field.y.value = within((bottom - from.y) / pxPerM, deepM).toFixed(2);
      }
      look(to);
      event.preventDefault();
    });
    svg.addEventListener('pointermove', function (event) {
      if (from) {
        look(at(event));
      }
    });
    svg.addEventListener('pointerup', function () {
      from = null;
      how.textContent = 'It stands at x ' + field.x.value + ' m, y ' + field.y.value + ' m'
        + (field.aim.value ? ', and looks to ' + field.aim.value + ' degrees.' : '. Drag from there to where it looks.');
    });
    Object.keys(field).forEach(function (axis) {
      field[axis].addEventListener('input', draw);
    });
    draw();
  });
}());
