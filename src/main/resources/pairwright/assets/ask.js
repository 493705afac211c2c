/* An answer that follows its parts: each change asks the same address for what changes on the page, and keeps the address true. */
(function () {
  'use strict';
  const SURE_AFTER_MS = 350;
  const TYPED_AFTER_MS = 700;
  const byId = id => document.getElementById(id);
  if (!byId('answer')) {
    return;
  }
  document.documentElement.classList.add('live');
  if (document.querySelector('.option') && window.matchMedia('(max-width: 40rem)').matches) {
    byId('parts-fold').open = false; // on a phone the answer is what is wanted first
  }
  let turn = 0;
  let running = null;
  let sureTimer = 0;
  let typedTimer = 0;
  let wanted = location.pathname + location.search; // what is shown, or is on its way

  function fragment(html) {
    const template = document.createElement('template');
    template.innerHTML = html;
    return template.content;
  }

  function withPart(address, part) {
    return address + (address.includes('?') ? '&' : '?') + 'part=' + part;
  }

  function queryOf(form) {
    return new URLSearchParams(Array.from(new FormData(form)).filter(field => field[1] !== '' || field[0].startsWith('near'))).toString();
  }

  const ids = node => Array.from(node.querySelectorAll('[id]'), one => one.id).join(' ');

  /* Everything anew but what is being used, which must not lose its place while somebody is in it. */
  function fill(old, fresh, keep) {
    const here = keep && keep.parentNode === old;
    Array.from(old.children).forEach(child => child === keep || child.remove());
    let passed = !here;
    Array.from(fresh.children).forEach(child => {
      if (here && child.id === keep.id) {
        passed = true;
      } else {
        old.insertBefore(child, passed ? null : keep);
      }
    });
  }

  function swapParts(fresh, mayKeep) {
    const old = byId('parts');
    const used = old.contains(document.activeElement) ? document.activeElement : null;
    let keep = mayKeep && used ? used.closest('[id^="part-"]') : null;
    const twin = keep && fresh.querySelector('#' + keep.id);
    keep = twin && ids(twin) === ids(keep) ? keep : null;
    const open = Array.from(old.querySelectorAll('details[id][open]'), one => one.id);
    ['.parts-first', '.parts-more'].forEach(at => fill(old.querySelector(at), fresh.querySelector(at), keep));
    open.forEach(id => byId(id) && (byId(id).open = true));
    if (used && !used.isConnected) {
      (byId(used.id) || old.querySelector('select')).focus();
    }
  }

  function show(content, push, mayKeep) {
    const answer = content.getElementById('answer');
    byId('notes').replaceWith(content.getElementById('notes'));
    swapParts(content.getElementById('parts'), mayKeep);
    byId('answer').replaceWith(answer);
    if (push) {
      wanted = answer.dataset.address;
    }
    if (wanted !== location.pathname + location.search) {
      history.pushState(null, '', wanted);
    }
    document.title = answer.dataset.title + ' \u00b7 Pairwright';
    byId('told').textContent = answer.dataset.says;
    sure();
  }

  function refused(content, text) {
    const answer = byId('answer');
    answer.replaceChildren(content || text);
    answer.removeAttribute('aria-busy');
    byId('told').textContent = answer.textContent;
  }

  async function ask(address, push, mayKeep) {
    const mine = ++turn;
    wanted = address;
    if (running) {
      running.abort();
    }
    running = new AbortController();
    clearTimeout(sureTimer);
    byId('answer').setAttribute('aria-busy', 'true');
    try {
      const reply = await fetch(withPart(address, 'answer'), {signal: running.signal});
      const html = await reply.text();
      if (mine !== turn) {
        return; // something newer was asked meanwhile
      }
      const isPart = (reply.headers.get('Content-Type') || '').startsWith('text/html');
      if (reply.ok) {
        show(fragment(html), push, mayKeep);
      } else {
        refused(isPart ? fragment(html) : null, 'No answer came (status ' + reply.status + '). Try again.');
      }
    } catch (broken) {
      if (mine === turn && broken.name !== 'AbortError') {
        refused(null, 'The service cannot be reached. Check that it runs, then change something again.');
      }
    }
  }

  /* How sure takes longer, so it comes after the answer, once nothing has changed for a moment. */
  function sure() {
    const section = byId('sure');
    clearTimeout(sureTimer);
    if (!section || !section.dataset.wanted) {
      return;
    }
    const mine = turn;
    sureTimer = setTimeout(async () => {
      section.setAttribute('aria-busy', 'true');
      try {
        const reply = await fetch(withPart(byId('answer').dataset.address, 'sure'));
        const content = fragment(await reply.text());
        if (mine === turn && reply.ok) {
          Array.from(content.children).forEach(one => byId(one.id) && byId(one.id).replaceWith(one));
        }
      } catch (broken) {
        // the link to it is still there
      }
      section.removeAttribute('aria-busy');
    }, SURE_AFTER_MS);
  }

  async function into(form) {
    const target = byId(form.dataset.into);
    target.setAttribute('aria-busy', 'true');
    form.asked = (form.asked || 0) + 1;
    const mine = form.asked;
    try {
      const reply = await fetch(withPart(form.getAttribute('action') + '?' + queryOf(form), form.dataset.part));
      const html = await reply.text();
      if (mine === form.asked) {
        target.replaceChildren(fragment(html));
      }
    } catch (broken) {
      if (mine === form.asked) {
        target.textContent = 'The service cannot be reached. Check that it runs, then try again.';
      }
    }
    target.removeAttribute('aria-busy');
  }

  const askParts = () => ask('/?' + queryOf(byId('parts')), true, true);

  document.addEventListener('change', event => {
    if (event.target.closest('#parts')) {
      clearTimeout(typedTimer);
      if (event.target.type === 'datetime-local') {
        typedTimer = setTimeout(askParts, TYPED_AFTER_MS); // each figure of a year that is typed makes another time
      } else {
        askParts();
      }
    }
  });
  document.addEventListener('submit', event => {
    const form = event.target;
    if (form.id === 'parts') {
      event.preventDefault();
      askParts();
    } else if (form.dataset.into) {
      event.preventDefault();
      into(form);
    }
  });
  window.addEventListener('popstate', () => {
    if (location.pathname === '/' && location.pathname + location.search !== wanted) {
      ask(location.pathname + location.search, false, false);
    }
  });
  sure();
}());
