/* The floor of a line-up: players and gobos are moved and turned by mouse, by touch and by keys. The fields of the form follow, and are what is sent. */
(function () {
  'use strict';

  var THUMB_PX = 22; // half of what a thumb hits
  var STEP_M = 0.1;
  var LONG_STEP_M = 0.5;
  var TURN_DEGREES = 5;
  var SVG = 'http://www.w3.org/2000/svg';
  var MOVES = {ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1]};
  var TURNS = {',': -TURN_DEGREES, '.': TURN_DEGREES};

  var figure = document.querySelector('figure[data-floor]');
  var form = figure && document.getElementById(figure.getAttribute('data-floor'));
  if (!form) {
    return;
  }
  var svg = figure.querySelector('svg');
  var wall = svg.querySelector('.wall');
  var said = document.querySelector('.floor-said');
  var undo = document.querySelector('[data-undo]');
  var turnButtons = Array.prototype.slice.call(document.querySelectorAll('[data-turn]'));
  var unit = figure.getAttribute('data-unit');
  var perM = Number(figure.getAttribute('data-per-m'));
  var sign = figure.getAttribute('data-sign');
  var pxPerM = Number(wall.getAttribute('data-px-per-m'));
  var wideM = Number(wall.getAttribute('data-width-m'));
  var deepM = Number(wall.getAttribute('data-depth-m'));
  var left = Number(wall.getAttribute('x'));
  var bottom = Number(wall.getAttribute('y')) + Number(wall.getAttribute('height'));
  var things = [];
  var chosen = null;
  var history = [];
  var handle = null;
  var drag = null;

  /* ---- numbers ---- */
  function shown(number) {
    return String(Number(number.toFixed(2)) + 0).replace('.', sign);
  }

  /* What a field says, in metres or degrees; NaN for what only the server can read. */
  function read(field, factor) {
    var text = field.value.trim();
    return /^-?\d+([.,]\d+)?$/.test(text) ? Number(text.replace(',', '.')) / factor : NaN;
  }

  function tape(metres) {
    if (unit !== 'ft') {
      return shown(metres) + ' m';
    }
    var inches = Math.round(metres * perM * 12);
    return inches < 24 ? inches + ' in' : inches % 12 === 0 ? inches / 12 + ' ft' : Math.floor(inches / 12) + ' ft ' + inches % 12 + ' in';
  }

  function folded(degrees) {
    return ((degrees % 360) + 360) % 360;
  }

  function within(value, most) {
    return Math.max(0, Math.min(most, value));
  }

  /* ---- what can be moved: {xM, yM, degrees} of its middle ---- */
  function player(group) {
    var names = ['xM', 'yM', 'facingDegrees'].map(function (name) {
      return 'seat.' + group.getAttribute('data-who') + '.' + name;
    });
    return {
      group: group,
      offset: -90,
      fields: names.map(function (name) { return form.elements[name]; }),
      get: function () {
        return {xM: read(this.fields[0], perM), yM: read(this.fields[1], perM), degrees: read(this.fields[2], 1)};
      },
      fit: function (state) {
        return {xM: within(state.xM, wideM), yM: within(state.yM, deepM), degrees: folded(state.degrees)};
      },
      put: function (state) {
        this.fields[0].value = shown(state.xM * perM);
        this.fields[1].value = shown(state.yM * perM);
        this.fields[2].value = shown(Math.round(state.degrees) % 360);
      }
    };
  }

  function gobo(group) {
    var names = ['x1M', 'y1M', 'x2M', 'y2M'].map(function (name) {
      return 'gobo.' + group.getAttribute('data-screen') + '.' + name;
    });
    return {
      group: group,
      offset: 0,
      fields: names.map(function (name) { return form.elements[name]; }),
      get: function () {
        var e = this.fields.map(function (field) { return read(field, perM); });
        return {xM: (e[0] + e[2]) / 2, yM: (e[1] + e[3]) / 2, degrees: Math.atan2(e[1] - e[3], e[2] - e[0]) * 180 / Math.PI, halfM: Math.hypot(e[2] - e[0], e[3] - e[1]) / 2};
      },
      fit: function (state) {
        var acrossM = Math.abs(state.halfM * Math.cos(state.degrees * Math.PI / 180));
        var alongM = Math.abs(state.halfM * Math.sin(state.degrees * Math.PI / 180));
        return {xM: Math.max(acrossM, Math.min(wideM - acrossM, state.xM)), yM: Math.max(alongM, Math.min(deepM - alongM, state.yM)), degrees: state.degrees, halfM: state.halfM};
      },
      put: function (state) {
        var acrossM = state.halfM * Math.cos(state.degrees * Math.PI / 180);
        var alongM = state.halfM * Math.sin(state.degrees * Math.PI / 180);
        [within(state.xM - acrossM, wideM), within(state.yM + alongM, deepM), within(state.xM + acrossM, wideM), within(state.yM - alongM, deepM)].forEach(function (m, i) {
          this.fields[i].value = shown(m * perM);
        }, this);
      }
    };
  }

  function isSound(state) {
    return isFinite(state.xM) && isFinite(state.yM) && isFinite(state.degrees);
  }

  function draw(thing, state) {
    thing.group.setAttribute('transform', 'translate(' + (left + state.xM * pxPerM).toFixed(2) + ' ' + (bottom - state.yM * pxPerM).toFixed(2) + ')');
    thing.group.querySelector('.turns').setAttribute('transform', 'rotate(' + (state.degrees + thing.offset).toFixed(2) + ')');
    thing.group.setAttribute('aria-label', words(thing, state));
    thing.state = state;
    if (thing === chosen) {
      placeHandle();
    }
  }

  function words(thing, state) {
    var turned = thing.offset ? ', facing ' + Math.round(state.degrees) % 360 + ' degrees' : ', turned by ' + Math.round(folded(state.degrees) % 180) + ' degrees';
    return thing.group.getAttribute('data-name') + ': ' + tape(state.xM) + ' from the left wall, ' + tape(state.yM) + ' from the front' + turned;
  }

  function tell(thing) {
    said.textContent = words(thing, thing.state);
  }

  function move(thing, state) {
    var fitting = thing.fit(state);
    thing.put(fitting);
    draw(thing, fitting);
  }

  function remember(thing, state) {
    history.push({thing: thing, state: state});
    undo.disabled = false;
  }

  function takeBack() {
    var last = history.pop();
    if (last) {
      move(last.thing, last.state);
      choose(last.thing);
      tell(last.thing);
    }
    undo.disabled = history.length === 0;
  }

  function turn(thing, degrees) {
    remember(thing, thing.state);
    move(thing, Object.assign({}, thing.state, {degrees: thing.state.degrees + degrees}));
    tell(thing);
  }

  /* ---- the handle that turns what is chosen ---- */
  function unitsOf(px) {
    return px * svg.viewBox.baseVal.width / (svg.getBoundingClientRect().width || svg.viewBox.baseVal.width);
  }

  function element(name, attributes) {
    var made = document.createElementNS(SVG, name);
    Object.keys(attributes).forEach(function (key) {
      made.setAttribute(key, attributes[key]);
    });
    return made;
  }

  function choose(thing) {
    if (chosen === thing) {
      return;
    }
    if (chosen) {
      chosen.group.classList.remove('chosen');
    }
    chosen = thing;
    thing.group.classList.add('chosen');
    turnButtons.forEach(function (button) {
      button.disabled = false;
    });
    if (!handle) {
      handle = element('g', {'class': 'handle', 'aria-hidden': 'true'});
      handle.appendChild(element('line', {}));
      handle.appendChild(element('circle', {'class': 'reach'}));
      handle.appendChild(element('circle', {r: 7}));
      svg.appendChild(handle);
    }
    placeHandle();
  }

  /* Ahead of it, or behind where that is off the picture. */
  function placeHandle() {
    var ahead = Math.max(unitsOf(THUMB_PX) + 14, 40);
    var x = left + chosen.state.xM * pxPerM;
    var y = bottom - chosen.state.yM * pxPerM;
    var angle = (chosen.state.degrees + chosen.offset) * Math.PI / 180;
    var box = svg.viewBox.baseVal;
    var outside = function (side) {
      var toX = x + side * ahead * Math.cos(angle);
      var toY = y + side * ahead * Math.sin(angle);
      return toX < 9 || toX > box.width - 9 || toY < 9 || toY > box.height - 9;
    };
    chosen.side = drag && drag.turning ? chosen.side : outside(1) && !outside(-1) ? -1 : 1;
    handle.setAttribute('transform', 'translate(' + x.toFixed(2) + ' ' + y.toFixed(2) + ') rotate(' + (chosen.state.degrees + chosen.offset).toFixed(2) + ')');
    var at = chosen.side * ahead;
    Array.prototype.forEach.call(handle.querySelectorAll('circle'), function (circle) {
      circle.setAttribute('cx', at);
    });
    handle.querySelector('.reach').setAttribute('r', unitsOf(THUMB_PX));
    handle.querySelector('line').setAttribute('x1', chosen.side * 10);
    handle.querySelector('line').setAttribute('x2', at - chosen.side * 7);
  }

  /* ---- mouse and touch ---- */
  function point(event) {
    var at = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
    return {x: at.x, y: at.y};
  }

  /* Where reaches overlap, whatever is nearest is meant. */
  function nearest(at, target) {
    var best = null;
    var bestAway = unitsOf(THUMB_PX);
    things.forEach(function (thing) {
      var away = Math.hypot(left + thing.state.xM * pxPerM - at.x, bottom - thing.state.yM * pxPerM - at.y);
      if (away <= bestAway) {
        best = thing;
        bestAway = away;
      }
    });
    var group = target.closest('.movable');
    return best || things.find(function (thing) { return thing.group === group; }) || null;
  }

  function isOnHandle(at, target) {
    if (!handle || !target.closest('.handle')) {
      return false;
    }
    var knob = handle.querySelector('circle').getBoundingClientRect();
    var middle = point({clientX: knob.left + knob.width / 2, clientY: knob.top + knob.height / 2});
    return Math.hypot(middle.x - at.x, middle.y - at.y) < Math.hypot(left + chosen.state.xM * pxPerM - at.x, bottom - chosen.state.yM * pxPerM - at.y);
  }

  svg.addEventListener('pointerdown', function (event) {
    var at = point(event);
    var turning = isOnHandle(at, event.target);
    var thing = turning ? chosen : nearest(at, event.target);
    if (!thing || event.button > 0 || drag) {
      return;
    }
    event.preventDefault();
    choose(thing);
    thing.group.focus({preventScroll: true});
    drag = {thing: thing, turning: turning, from: at, state: thing.state, moved: false, pointer: event.pointerId};
    svg.setPointerCapture(event.pointerId);
    svg.classList.add('moving');
  });

  /* A finger on a player moves the player; anywhere else it moves the page. */
  svg.addEventListener('touchstart', function (event) {
    var touch = event.changedTouches[0];
    if (event.touches.length === 1 && (isOnHandle(point(touch), event.target) || nearest(point(touch), event.target))) {
      event.preventDefault();
    }
  }, {passive: false});

  svg.addEventListener('pointermove', function (event) {
    if (!drag || event.pointerId !== drag.pointer) {
      return;
    }
    var at = point(event);
    if (!drag.moved && Math.hypot(at.x - drag.from.x, at.y - drag.from.y) < 1) {
      return;
    }
    if (!drag.moved) {
      drag.moved = true;
      remember(drag.thing, drag.state);
    }
    var state = drag.state;
    if (drag.turning) {
      var degrees = Math.atan2(at.y - (bottom - state.yM * pxPerM), at.x - (left + state.xM * pxPerM)) * 180 / Math.PI;
      move(drag.thing, Object.assign({}, state, {degrees: Math.round(degrees - drag.thing.offset + (drag.thing.side < 0 ? 180 : 0))}));
    } else {
      move(drag.thing, Object.assign({}, state, {xM: state.xM + (at.x - drag.from.x) / pxPerM, yM: state.yM - (at.y - drag.from.y) / pxPerM}));
    }
  });

  function dropped(event) {
    if (!drag || event.pointerId !== drag.pointer) {
      return;
    }
    var thing = drag.thing;
    if (event.type === 'pointercancel' && drag.moved) {
      takeBack(); // the browser took the finger for something else
    }
    drag = null;
    svg.classList.remove('moving');
    placeHandle();
    tell(thing);
  }

  svg.addEventListener('pointerup', dropped);
  svg.addEventListener('pointercancel', dropped);

  /* ---- keys ---- */
  function onKey(event, thing) {
    if (event.altKey || event.metaKey || event.ctrlKey) {
      return;
    }
    if (MOVES[event.key]) {
      var stepM = event.shiftKey ? LONG_STEP_M : STEP_M;
      remember(thing, thing.state);
      move(thing, Object.assign({}, thing.state, {xM: thing.state.xM + MOVES[event.key][0] * stepM, yM: thing.state.yM + MOVES[event.key][1] * stepM}));
      tell(thing);
      event.preventDefault();
    } else if (TURNS[event.key]) {
      turn(thing, TURNS[event.key]);
      event.preventDefault();
    }
  }

  document.addEventListener('keydown', function (event) {
    var inFloor = event.target === document.body || event.target.closest && event.target.closest('section.floor');
    if (inFloor && (event.ctrlKey || event.metaKey) && !event.shiftKey && event.key.toLowerCase() === 'z') {
      event.preventDefault();
      takeBack();
    }
  });

  undo.addEventListener('click', takeBack);
  turnButtons.forEach(function (button) {
    button.addEventListener('click', function () {
      turn(chosen, Number(button.getAttribute('data-turn')));
    });
  });

  /* ---- begin ---- */
  function follow(thing) {
    var state = thing.get();
    if (isSound(state)) {
      draw(thing, thing.fit(state));
    }
  }

  function begin(thing) {
    var state = thing.get();
    if (!thing.fields.every(Boolean) || !isSound(state)) {
      return; // what cannot be read stays as it is drawn
    }
    things.push(thing);
    thing.group.classList.add('movable');
    thing.group.setAttribute('tabindex', '0');
    thing.group.setAttribute('role', 'application');
    thing.group.setAttribute('aria-describedby', 'floor-keys');
    thing.group.insertBefore(element('circle', {'class': 'grip', r: unitsOf(THUMB_PX)}), thing.group.firstChild);
    draw(thing, state);
    thing.group.addEventListener('keydown', function (event) {
      onKey(event, thing);
    });
    thing.group.addEventListener('focus', function () {
      choose(thing);
    });
    thing.fields.forEach(function (field) {
      field.addEventListener('input', function () {
        follow(thing);
      });
    });
  }

  svg.querySelectorAll('[data-who]').forEach(function (group) {
    begin(player(group));
  });
  svg.querySelectorAll('[data-screen]').forEach(function (group) {
    begin(gobo(group));
  });
  window.addEventListener('resize', function () {
    svg.querySelectorAll('.grip').forEach(function (grip) {
      grip.setAttribute('r', unitsOf(THUMB_PX));
    });
    if (chosen) {
      placeHandle();
    }
  });
  if (things.length) {
    svg.setAttribute('role', 'group');
    svg.setAttribute('aria-labelledby', svg.querySelector('title').id); // its words say how it was, and each player says how it is
    document.querySelector('.floor-tools').hidden = false;
  }
}());
