/** Takes out, in place, what `isOut` names. A list of which nothing goes is not written to, so that a draft keeps its identity. */
export function removeWhere<Item>(list: Item[], isOut: (item: Item) => boolean): void {
  for (let place = list.length - 1; place >= 0; place -= 1) {
    if (isOut(list[place]!)) list.splice(place, 1);
  }
}
