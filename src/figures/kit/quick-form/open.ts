/** Opens the form with three fields, once at a time. */
import { mount, unmount } from 'svelte';
import QuickForm from './QuickForm.svelte';

let isOpen = false;

/** `bench`: address of the bench, for all that the three fields don't hold. */
export function openQuick(bench: string): void {
  if (isOpen) return;
  isOpen = true;
  const form = mount(QuickForm, {
    target: document.body,
    props: {
      bench,
      onclose: () => {
        isOpen = false;
        void unmount(form);
      },
    },
  });
}
