/** Whether a handle is under a pointer now: what need not follow every step of a drag may wait for its end. */

class Moving {
  #any = $state(false);

  get any(): boolean {
    return this.#any;
  }

  begin(): void {
    this.#any = true;
  }

  end(): void {
    this.#any = false;
  }
}

export const moving = new Moving();
