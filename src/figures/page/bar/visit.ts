/** Puts the bar of a visit on the page, once; it shows itself while there is a visit. */
import { mount } from 'svelte';
import VisitBar from './VisitBar.svelte';

mount(VisitBar, { target: document.body });
