// @ts-check
// The page's own script: what only the page can do. Answers come from Python, on the phone or on the server.
import { watchForm } from './form.js';
import { watchLanguage } from './language.js';
import { watchLinks } from './machines.js';
import { watchPin } from './pinned.js';
import { showRecent } from './recent.js';
import { readPurpose } from './opened.js';
import { keepOnPhone } from './phone.js';
import { watchBack } from './records/back.js';
import { loadRecords } from './records/load.js';
import { watchTheme } from './theme-choice.js';

readPurpose();
for (const element of document.querySelectorAll('[data-needs-script]')) element.removeAttribute('hidden');
const form = document.querySelector('form[data-calculator]');
if (form instanceof HTMLFormElement) watchForm(form);
watchLinks();
watchPin();
showRecent();
document.addEventListener('page:again', showRecent);
window.addEventListener('pageshow', event => event.persisted && showRecent()); // a browser may keep whole pages
watchTheme();
watchLanguage();
loadRecords();
watchBack();
keepOnPhone();
