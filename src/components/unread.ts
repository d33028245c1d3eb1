// A page is built for the workshop's instrument. Where a link or the device names another, what shows an instrument waits until
// that one is read (data-unread; base.css), and paper until all of the page is awake (data-asleep; awake.ts takes both away).
import { VERSION } from '../instrument/link.ts';
import { REMEMBERED } from '../instrument/storage.ts';

// Where neither does, and the device's region counts in millimetres, the instrument's bar offers them (data-metric): nothing is chosen.

// Whoever follows a link of the page before the bar is alive, which carries the state from there on (carry.ts), takes along what
// the address names.
const onward = `for(const t of['pointerdown','click'])document.addEventListener(t,e=>{const a=e.target.closest('a');if(a&&d.unread&&!a.hash&&!('instrument'in a.dataset)&&a.origin==location.origin&&!/\\.\\w+$/.test(a.pathname))a.hash=location.hash.replace(/\\/at-[^/]+$/,'')},!0)`;

/** Runs in the head before the first paint; constant, so that a content security policy can hash it. A script that fails ends the wait. */
export const unreadBoot = `(()=>{const r=document.documentElement,d=r.dataset;let is=/^#${VERSION}\\//i.test(location.hash);if(is)${onward};try{is||=!('embed' in d)&&localStorage.getItem('${REMEMBERED}')!==null;is||new Intl.Locale(navigator.language).maximize().region=='US'||(d.metric='')}catch{}if(!is)return;d.unread='all';d.asleep='';document.addEventListener('astro:hydration-error',()=>delete d.unread)})()`;
